// Side by side: a copy of the rig is changed, and the verdicts of both are seen. Up to four; each keeps what was given and its
// own steps back.
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { say } from "../shared/tell.js";
import { History } from "./history.js";
import { namedPath } from "./paths.js";
import { isSameRig } from "./state.js";
import { Versions } from "./versions.js";

/** @typedef {{ title: string, verdict: string, words: string, mark: string }} Line one question of an answer */
/** @typedef {{ sentence: string, lines: Line[], mass: string, price: string }} Compared */

export class Compare {
  #versions = new Versions();
  /** @type {Compared | null} */
  #answer = null;

  /**
   * @param {import("./state.js").Rig} rig
   * @param {import("./answer.js").Answer} answer
   */
  constructor(rig, answer) {
    this.rig = rig;
    this.answer = answer;
    this.element = byId("compare");
    this.table = byId("compare-table");
    this.told = byId("compare-told");
    this.more = byId("compare-more", HTMLButtonElement);
    this.more.addEventListener("click", () => this.#duplicate());
    rig.addEventListener("opened", () => {
      this.#versions.bringBack(rig.beside, fresh);
      this.#show();
    });
    answer.onAnswered((detail) => {
      this.#answer = comparedOf(detail);
      if (!answer.isBehind) this.#versions.answered(this.#answer);
      this.more.hidden = this.#answer === null;
      this.#show();
    });
  }

  #duplicate() {
    this.#versions.duplicate(this.rig.shown, this.#answer, this.rig.history, fresh());
    this.#enter();
    say(this.told, `This is ${this.#versions.present.name} now, a copy. Change one thing in it.`);
  }

  /** @param {number} at */
  #turnTo(at) {
    this.#versions.keep(this.rig.shown, this.rig.history);
    this.#versions.turnTo(at);
    this.#enter();
    say(this.told, `The form shows ${this.#versions.present.name}.`);
  }

  /** @param {number} at */
  #forget(at) {
    this.#versions.keep(this.rig.shown, this.rig.history);
    if (this.#versions.forget(at) && this.#versions.present) this.#enter();
    if (this.#versions.all.length === 1) this.#versions.all = [];
    this.rig.keepBeside(this.#versions.toKeep());
    this.#show();
    this.more.focus();
  }

  #enter() {
    const { given, view, history } = this.#versions.present;
    this.rig.keepBeside(this.#versions.toKeep());
    this.rig.turnTo({ given, view }, history);
    this.#show();
  }

  #show() {
    const { all, now } = this.#versions;
    this.table.hidden = all.length === 0;
    this.element.classList.toggle("is-begun", all.length > 0);
    this.more.disabled = all.length > 0 && !this.#versions.hasRoom;
    this.more.textContent = all.length > 0 ? "One more copy beside it" : "Compare: a copy beside it";
    const titles = [...new Set(all.flatMap(({ answer }) => answer?.lines.map((/** @type {Line} */ line) => line.title) ?? []))];
    /** @type {[string, (answer: Compared) => any][]} */
    const rows = [["Answer", (answer) => answer.sentence], ...titles.map((title) => /** @type {[string, any]} */ ([title,
      (/** @type {Compared} */ answer) => verdictOf(answer.lines.find((line) => line.title === title))])),
    ["Mass", (answer) => answer.mass], ["Price", (answer) => answer.price]];
    this.table.replaceChildren(
      el("thead", {}, el("tr", {}, el("td", {}), all.map(({ name }, at) => this.#head(name, at, at === now)))),
      el("tbody", {}, rows.filter(([, tell]) => all.some(({ answer }) => answer && tell(answer)))
        .map(([title, tell]) => el("tr", {}, el("th", { scope: "row" }, title),
          all.map(({ answer }, at) => el("td", { class: at === now ? "compare-now" : null },
            answer ? tell(answer) || "—" : at === now ? "…" : "—"))))));
  }

  /** @param {string} name @param {number} at @param {boolean} isNow */
  #head(name, at, isNow) {
    return el("th", { scope: "col", class: isNow ? "compare-now" : null }, el("span", { class: "compare-name" }, name), " ",
      isNow ? el("span", { class: "compare-here" }, "in the form")
        : el("button", { type: "button", class: "quiet", "aria-label": `Change it: ${name}`,
          onclick: () => this.#turnTo(at) }, "Change it"),
      el("button", { type: "button", class: "quiet", "aria-label": `Forget ${name}`, onclick: () => this.#forget(at) },
        "Forget"));
  }
}

/** @returns {History<import("./state.js").Shown>} */
function fresh() { return new History(isSameRig); }

/** @param {Line | undefined} line */
function verdictOf(line) {
  return line ? [el("strong", { class: line.mark }, line.verdict), " ", line.words] : "";
}

// The verdicts are read from the block that is shown: one figure, one source.
/** @param {any} answer @returns {Compared | null} */
function comparedOf({ first, answer, mass, price }) {
  if (!first) return null;
  const block = new DOMParser().parseFromString(first.html ?? "", "text/html");
  const lines = [...block.querySelectorAll(".rs-questions tr")].map((row) => ({
    title: row.querySelector("th")?.textContent.trim() ?? "", verdict: row.querySelector(".rs-verdict")?.textContent.trim() ?? "",
    words: (row.querySelector("td:last-child")?.textContent.trim() ?? "").replaceAll(namedPath, ""), mark: row.className,
  }));
  return { sentence: answer?.text ?? first.text ?? "", lines, mass, price };
}
