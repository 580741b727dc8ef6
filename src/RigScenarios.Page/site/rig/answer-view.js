// How an answer is shown: the verdict, which stays in sight; what it rests on; what is missing; below it the details.
import { byId } from "../shared/elements.js";
import { addKeepTools } from "../shared/keep-tools.js";
import { el, makeCautions, showParts } from "../shared/parts.js";
import { keepReachable } from "../shared/reachable.js";
import { takeAlong } from "../shared/take-along.js";
import { say } from "../shared/tell.js";
import { SpokenAnswer } from "./spoken.js";
import { namedPath } from "./paths.js";
import { goTo, hasField } from "./problems.js";

export class AnswerView {
  /** @param {import("./state.js").Rig} rig @param {HTMLElement} form */
  constructor(rig, form) {
    this.rig = rig;
    this.form = form;
    this.element = byId("answer");
    this.sight = byId("answer-sight");
    this.line = byId("answer-line");
    this.lineText = byId("answer-line-text");
    this.missing = byId("answer-missing");
    this.missingTitle = byId("answer-missing-title");
    this.missingList = byId("answer-missing-list");
    this.stale = byId("answer-stale");
    this.away = byId("answer-away");
    this.first = byId("answer-first");
    this.rests = byId("answer-rests");
    this.restsList = byId("answer-rests-list");
    this.cautions = byId("answer-cautions");
    this.figures = byId("answer-figures");
    this.assumed = byId("answer-assumed");
    this.assumedTitle = byId("assumed-title");
    this.assumedList = byId("assumed-list");
    this.text = byId("file-text");
    this.spoken = new SpokenAnswer(byId("answer-spoken"));
    this.parts = byId("answer-parts");
    this.file = byId("answer-file", HTMLDetailsElement);
    for (const box of [this.sight, byId("answer-whole")]) keepReachable(box, () => "The answer");
    this.sheets = takeAlong(async () => {
      await rig.settled();
      return { request: "rig-sheet", asks: { given: rig.given, ...rig.place } };
    });
    this.file.before(this.sheets);
    // What is scrolled to comes below it.
    new ResizeObserver(() => this.element.style.setProperty("--sight", `${this.sight.offsetHeight}px`)).observe(this.sight);
    // On a phone the verdict is one line that opens the whole.
    this.line.addEventListener("click", () => this.#open(this.line.getAttribute("aria-expanded") !== "true"));
    byId("answer-more").addEventListener("click", (event) => {
      event.preventDefault();
      this.#open(false);
      const rest = byId("answer-rest");
      rest.scrollIntoView();
      rest.focus({ preventScroll: true });
    });
    this.sight.addEventListener("keydown", (event) => { if (event.key === "Escape") this.#open(false); });
    // A link to a field goes there, and opens what it is folded in.
    this.element.addEventListener("click", (event) => {
      /** @type {HTMLElement | null} */
      const link = /** @type {HTMLElement} */ (event.target).closest?.("[data-to]");
      if (!link || !goTo(rig, form, link.dataset.to ?? "")) return;
      event.preventDefault();
      this.#open(false);
    });
  }

  /** @param {boolean} isBusy */
  set isBusy(isBusy) {
    if (isBusy) this.element.setAttribute("aria-busy", "true"); else this.element.removeAttribute("aria-busy");
  }

  /** Why there is no newer answer; "" when there is one. @param {string} words */
  tellAway(words) {
    this.away.hidden = words === "";
    say(this.away, words);
  }

  /**
   * Shows an answer; true if what is shown is still the answer from before, because something is to be put right.
   * @param {any} answer
   */
  show(answer) {
    const errors = answer.problems.filter((/** @type {any} */ problem) => problem.severity !== "warning").length;
    this.#showMissing(answer.missing, Boolean(answer.first));
    const spoken = answer.answer?.text ?? "";
    const toDo = errors > 0 ? `${errors === 1 ? "One thing" : `${errors} things`} to put right in the form.`
      : !spoken && answer.missing.length > 0 ? `Still to say: ${answer.missing.map(labelOf).join(", ")}.` : "";
    this.#showLine(errors > 0 ? "" : answer.first?.line ?? "",
      (errors > 0 && toDo) || spoken || toDo || "The answer appears here.");
    const isStale = this.#showFirst(answer, errors);
    this.spoken.tell([toDo, spoken].filter(Boolean).join(" "), isStale ? null : verdictsIn(this.first));
    this.#showFigures(answer);
    this.#showAssumed(answer.assumed);
    this.file.hidden = !answer.isWhole;
    this.sheets.hidden = !answer.isWhole || !answer.answer;
    if (answer.text !== null || !answer.isWhole) say(this.text, answer.text ?? "");
    return isStale;
  }

  // The line with its sign is markup that the server made from escaped text.
  /** @param {string} markup @param {string} words */
  #showLine(markup, words) {
    if (!markup) say(this.lineText, words);
    else if (this.lineText.innerHTML !== markup) this.lineText.innerHTML = markup;
  }

  /** @param {boolean} isOpen */
  #open(isOpen) {
    this.line.setAttribute("aria-expanded", String(isOpen));
    this.sight.classList.toggle("is-open", isOpen);
  }

  // What was shown stays while something is to be put right, and says that it is from before.
  /** @param {any} answer @param {number} errors */
  #showFirst(answer, errors) {
    // While there is no picture yet, the list of what is still to say says it all.
    const isBegun = answer.first || answer.missing.length === 0;
    const first = answer.first ?? (isBegun && answer.answer ? { type: "answer", text: answer.answer.text, cautions: [] } : null);
    const isStale = errors > 0 && !answer.first && this.parts.querySelector("figure") !== null;
    this.element.classList.toggle("answer-old", isStale);
    this.stale.hidden = !isStale;
    if (isStale) return true;
    showParts(this.first, first ? [first] : []);
    // Where a sentence names a field of the file, the form leads there. The markup is the server's, made from escaped text.
    for (const cell of this.first.querySelectorAll("td")) {
      const markup = cell.innerHTML.replaceAll(namedPath, ' (<a href="#rig" data-to="$1">say it</a>)');
      if (markup !== cell.innerHTML) cell.innerHTML = markup;
    }
    this.showRests([]);
    this.cautions.replaceChildren(...[first && makeCautions(answer.answer?.cautions)].filter(Boolean));
    if (answer.parts) this.showParts(answer.parts);
    return false;
  }

  /** Charts and drawings, which may come by themselves. @param {any[]} parts */
  showParts(parts) {
    showParts(this.parts, parts);
    addKeepTools(this.parts);
  }

  // It takes many runs, and so comes after the answer.
  /** @param {{ path: string, text: string }[]} restsOn */
  showRests(restsOn) {
    this.rests.hidden = restsOn.length === 0;
    this.restsList.replaceChildren(...restsOn.map(({ path, text }) =>
      el("li", {}, text, " ",
        hasField(this.rig, this.form, path) ? el("a", { href: "#rig", "data-to": path }, "Change it") : null)));
  }

  /** @param {any} answer */
  #showFigures({ mass, price }) {
    this.figures.replaceChildren(...[["Mass", mass], ["Price", price]].filter(([, value]) => value)
      .map(([name, value]) => el("div", {}, el("dt", {}, name), el("dd", {}, value))));
  }

  /** @param {import("./field.js").Assumed[]} assumed */
  #showAssumed(assumed) {
    this.assumed.hidden = assumed.length === 0;
    say(this.assumedTitle, assumed.length === 1 ? "One value was left open and is assumed"
      : `${assumed.length} values were left open and are assumed`);
    this.assumedList.replaceChildren(...assumed.map(({ name, value, why, source }) =>
      el("li", {}, el("span", { class: "assumed-name" }, name), ": ", el("strong", {}, value), why ? `. ${why}` : null,
        source ? el("span", { class: "assumed-source" }, ` (${source})`) : null)));
  }

  // What is missing is a list of places to go to, not a list of faults.
  /** @param {{ path: string, label: string }[]} missing @param {boolean} isBegun */
  #showMissing(missing, isBegun) {
    say(this.missingTitle, isBegun ? "Still to say, and not counted yet:" : "Still to say, then there is an answer:");
    this.missing.hidden = missing.length === 0;
    this.missingList.replaceChildren(...missing.map((item) =>
      el("li", {}, el("a", { href: "#rig", "data-to": item.path }, labelOf(item)))));
  }
}

/** The questions with their verdicts, as they stand in the answer. @param {HTMLElement} answer */
function verdictsIn(answer) {
  return new Map([...answer.querySelectorAll(".rs-questions tr")].map((row) =>
    [row.querySelector("th")?.textContent ?? "", row.querySelector(".rs-verdict")?.textContent ?? ""]));
}

/** @param {{ label: string }} missing */
function labelOf({ label }) {
  // What begins with a thing's own name stays as it was written.
  return label.includes(":") ? label : label.charAt(0).toLowerCase() + label.slice(1);
}
