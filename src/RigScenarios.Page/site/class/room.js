// The lesson: the address to hand out, what was handed in, and the word that shows the answer to all.
import { byId } from "../shared/elements.js";
import { el, prose } from "../shared/parts.js";
import { ask } from "../shared/program.js";
import { inWords, say } from "../shared/tell.js";
import { tableOf, withoutFormulas } from "./task.js";

/** @import { KeptTask, LessonNow } from "../shared/requests.js" */

const BETWEEN_LOOKS = 4000;

export class Room {
  /** @type {KeptTask | null} */
  #kept = null;
  /** @type {LessonNow | null} */
  #now = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;

  constructor() {
    const sure = byId("clear-sure");
    byId("reveal").addEventListener("click", () => this.#tell({ revealed: !this.#now?.isRevealed }));
    byId("clear").addEventListener("click", () => { sure.hidden = false; byId("clear-yes").focus(); });
    byId("clear-no").addEventListener("click", () => { sure.hidden = true; });
    byId("clear-yes").addEventListener("click", () => { sure.hidden = true; this.#tell({ clear: true }); });
    byId("save-hand-ins").addEventListener("click", () => {
      if (this.#now) window.rigKeep.saveNumbers(window.rigKeep.csvOfTable(withoutFormulas(tableOf(this.#now))), "handed-in");
    });
  }

  /** @param {KeptTask} kept */
  open(kept) {
    this.#kept = kept;
    byId("lesson").hidden = false;
    const [first, ...others] = kept.addresses;
    // It breaks behind a stroke, if anywhere.
    byId("address").replaceChildren(...(first ?? "").split(/(?<=\/)/).flatMap(piece => [piece, el("wbr")]));
    byId("others").hidden = others.length === 0;
    byId("addresses").replaceChildren(...others.map(address => el("li", {}, address)));
    byId("as-class").setAttribute("href", kept.path ?? "");
    byId("network").textContent = kept.isOnNetwork ? "It opens this task and nothing else. Do not hand out the address in the "
      + "terminal: that one opens everything." : "Only this machine can open it now. For tablets on the same network end the "
      + "program and start it with: rigscenarios open --listen";
    clearTimeout(this.#timer);
    this.#look();
  }

  async #look() {
    if (!document.hidden && this.#kept) await this.#ask(() => ask("class-lesson", { name: this.#kept?.name ?? "" }));
    this.#timer = setTimeout(() => this.#look(), BETWEEN_LOOKS);
  }

  /** @param {{ revealed?: boolean, clear?: boolean }} what */
  #tell(what) { return this.#ask(() => ask("tell-class", { name: this.#kept?.name ?? "", ...what })); }

  /** @param {() => Promise<LessonNow>} asking */
  async #ask(asking) {
    try {
      this.#show(await asking());
    } catch (error) {
      if (!error.problems) throw error;
      say(byId("lesson-told"), error.problems.map(inWords).join(" "));
    }
  }

  /** @param {LessonNow} now */
  #show(now) {
    const isSame = JSON.stringify(now) === JSON.stringify(this.#now);
    this.#now = now;
    const reveal = byId("reveal"), count = now.handIns.length;
    reveal.classList.toggle("primary", !now.isRevealed);
    reveal.textContent = now.isRevealed ? "Hide the answer again" : "Show the answer to all";
    say(byId("lesson-told"), `${count === 0 ? "Nobody has handed in yet." : count === 1 ? "One has handed in."
      : `${count} have handed in.`} ${now.isRevealed ? "All of them see the answer." : ""}`.trim());
    byId("save-hand-ins").hidden = count === 0;
    if (isSame) return;
    byId("hand-ins").replaceChildren(...count === 0 ? [] : [handed(now)]);
    byId("answers").hidden = now.isRevealed;
    byId("answers").querySelector("div")?.replaceChildren(el("p", {}, prose(now.headline)), el("ul", {}, now.asked
      .filter(one => one.answer !== null).map(one => el("li", {}, `${one.question} `, prose(one.answer)))));
  }
}

/**
 * What was handed in, question by question, as a class talks it over. The program's answers stand there only once all may see
 * them: this page may be on the wall.
 * @param {LessonNow} now
 */
function handed({ asked, handIns, isRevealed, headline }) {
  /** @param {string} who @param {import("../shared/parts.js").Child[]} words */
  const line = (who, ...words) => el("li", {}, el("span", { class: "who" }, `${who}: `), ...words);
  const changed = handIns.filter(one => one.changes.length > 0);
  return el("div", { class: "handed" }, asked.map(one => [
    el("h3", {}, one.question, one.unit ? ` (${one.unit})` : ""),
    isRevealed && one.answer !== null ? el("p", { class: "model" }, prose(`The program: ${one.answer}`)) : null,
    el("ul", {}, handIns.map(by => line(by.name, by.estimates[one.name] ?? "nothing"))),
  ]), asked.length === 0 ? el("ul", {}, handIns.map(by => line(by.name, by.at))) : null,
  changed.length > 0 ? [el("h3", {}, "What they changed"), isRevealed ? el("p", { class: "model" },
    prose(`The rig as it was given: ${headline}`)) : null,
  el("ul", {}, changed.map(by => line(by.name, by.changes.join("; "), isRevealed ? prose(`. ${by.outcome}`) : null)))] : null);
}
