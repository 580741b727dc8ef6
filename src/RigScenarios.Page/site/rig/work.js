// What would make it work: it comes after the answer, for it takes many runs.
import { showParts } from "../shared/parts.js";
import { say } from "../shared/tell.js";

export class Work {
  constructor(spoken) {
    const byId = (id) => document.getElementById(id);
    Object.assign(this, { spoken, element: byId("answer-work"), search: byId("answer-work-search"),
      progress: byId("answer-work-progress"), parts: byId("answer-work-parts") });
  }

  /** A new answer is shown; `seeks`: whether something is looked for. What was found before was for another rig. */
  begin(seeks) {
    this.element.hidden = !seeks;
    this.search.hidden = !seeks;
    this.progress.removeAttribute("value");
    showParts(this.parts, []);
  }

  /** How far it has come, 0 to 1. */
  tell(fraction) { this.progress.value = fraction; }

  /** What was found. */
  show({ text, parts }) {
    this.search.hidden = true;
    showParts(this.parts, parts);
    if (text) say(this.spoken, `${this.spoken.textContent} ${text}`);
  }

  /** The search was ended before it was done. */
  tellStopped() {
    this.element.hidden = false;
    showParts(this.parts,
      [{ type: "prose",
      text: "The search took longer than a page may. In a terminal, rigscenarios run looks for it to the end." }]);
  }

  /** The search ended without a word: nothing is promised. */
  giveUp() {
    this.search.hidden = true;
    this.element.hidden = this.parts.childElementCount === 0;
  }
}
