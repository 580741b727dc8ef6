// A power log of the battery: chosen or dropped on the page, read and fitted by the program, and taken into the rig as one step.
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { Newest } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { inWords, say } from "../shared/tell.js";
import { today, withAge } from "./age.js";
import { filled, withAt } from "./tree.js";

/** What is sent at most: see PageLimits.cs. */
const LARGEST = 64 * 1024 * 1024;

/** @typedef {{ says: string[], cautions: string[], read: string[], take: { [field: string]: string } | null }} LogAnswer */

export class PowerLog {
  #newest = new Newest();
  /** @type {File | null} */
  #log = null;
  /** @type {LogAnswer["take"]} */
  #take = null;

  /** @param {import("./state.js").Rig} rig @param {any} knowledge with the paths of the form's fields */
  constructor(rig, knowledge) {
    this.rig = rig;
    this.paths = new Map(knowledge.fields.map((/** @type {any} */ field) => [field.key, field.path]));
    this.box = byId("power-log", HTMLDetailsElement);
    this.file = byId("log-file", HTMLInputElement);
    this.air = byId("log-air", HTMLInputElement);
    this.charge = byId("log-charge", HTMLInputElement);
    this.told = byId("log-told");
    this.answer = byId("log-answer");
    this.file.addEventListener("change", () => this.#read(this.file.files?.[0] ?? null));
    for (const figure of [this.air, this.charge]) figure.addEventListener("change", () => this.#read(this.#log));
    byId("log-take").addEventListener("click", () => this.#taken());
    this.#dropsOnPage();
    rig.addEventListener("opened", () => this.#forget());
  }

  // Anywhere on the page: a file that is dropped beside its place would otherwise take the place of the page.
  #dropsOnPage() {
    const drop = byId("log-drop"), over = (/** @type {boolean} */ is) => drop.classList.toggle("over", is);
    addEventListener("dragover", (event) => {
      if (!event.dataTransfer?.types.includes("Files")) return;
      event.preventDefault();
      this.box.open = true;
      over(true);
    });
    addEventListener("dragleave", (event) => { if (event.relatedTarget === null) over(false); });
    addEventListener("drop", (event) => {
      const log = event.dataTransfer?.files[0];
      over(false);
      if (!log) return;
      event.preventDefault();
      this.file.value = "";
      this.box.open = true;
      this.box.scrollIntoView({ block: "nearest" });
      this.#read(log);
    });
  }

  #forget() {
    this.#log = this.#take = null;
    this.file.value = "";
    this.answer.hidden = true;
    say(this.told, "");
  }

  /** @param {File | null} log */
  async #read(log) {
    this.#log = log;
    this.#take = null;
    this.answer.hidden = true;
    if (!log) return;
    const refused = refusal(log, this.air, this.charge);
    if (refused) { say(this.told, refused); return; }
    say(this.told, `Reading ${log.name} …`);
    await this.rig.settled();
    const { file, build, day } = this.rig.place;
    try {
      const answer = await this.#newest.ask("rig-log", { given: this.rig.given, file, build, day, log, name: log.name,
        air: this.air.valueAsNumber, charge: this.charge.valueAsNumber });
      if (answer) this.#show(log.name, answer);
    } catch (error) {
      if (!(error instanceof ProgramProblem)) throw error;
      say(this.told, error.problems.map(atLine).join(" "));
    }
  }

  /** @param {string} name @param {LogAnswer} answer */
  #show(name, { says, cautions, read, take }) {
    this.#take = take;
    say(this.told, `${name} is read. ${says[0]}`);
    byId("log-says").replaceChildren(...says.slice(1).map((words) => el("li", {}, words)),
      ...cautions.map((words) => el("li", {}, el("strong", {}, words))));
    byId("log-read").replaceChildren(...read.map((words) => el("li", {}, words)));
    byId("log-take").hidden = take === null;
    this.answer.hidden = false;
  }

  #taken() {
    const take = this.#take, names = this.rig.names;
    if (!take) return;
    const fields = Object.entries(take).map(([key, text]) => ({ path: filled(this.paths.get(key), names), text }));
    this.rig.change((given) => withMeasured(given, fields), { name: "what the power log says" });
    say(this.told, "Taken into the rig, under “How old is it?”. Undo takes it back.");
  }
}

/**
 * The tree with what was measured, and the day of it.
 * @param {import("./tree.js").Tree} given
 * @param {{ path: string | null, text: string }[]} fields the capacity first: with it comes the day
 */
export function withMeasured(given, fields) {
  return fields.reduce((tree, { path, text }, index) => path === null ? tree
    : index === 0 ? withAge(tree, path, text, today()) : withAt(tree, path, text), given);
}

/** @param {import("../shared/requests.js").Problem} problem */
const atLine = (problem) => `${problem.line ? `Line ${problem.line}: ` : ""}${inWords(problem)}`;

/**
 * Why a log isn't even sent, in words; null if it is.
 * @param {File} log
 * @param {HTMLInputElement} air
 * @param {HTMLInputElement} charge
 */
function refusal(log, air, charge) {
  if (/\.ya?ml$/i.test(log.name))
    return `${log.name} looks like a scenario file. A power log is read here; scenario files are opened from the shelf.`;
  if (log.size > LARGEST)
    return `${log.name} has ${Math.ceil(log.size / 1024 / 1024)} MB; at most 64 MB are read. Accepted: one discharge, or `
      + "the mean of every second.";
  if (!air.validity.valid || air.value === "") return "Air then: a number from −40 to 60 is needed.";
  if (!charge.validity.valid || charge.value === "") return "Charge at its begin: a number from 1 to 100 is needed.";
  return null;
}
