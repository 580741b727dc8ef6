// What would make it work: it comes after the answer, for it takes many runs.
import { byId } from "../shared/elements.js";
import { showParts } from "../shared/parts.js";
import { say } from "../shared/tell.js";

export class Work {
  constructor() {
    this.spoken = byId("answer-found");
    this.element = byId("answer-work");
    this.search = byId("answer-work-search");
    this.progress = byId("answer-work-progress", HTMLProgressElement);
    this.parts = byId("answer-work-parts");
  }

  /** A new answer is shown. What was found before was for another rig. @param {boolean} seeks whether something is looked for */
  begin(seeks) {
    this.element.hidden = !seeks;
    this.search.hidden = !seeks;
    this.progress.removeAttribute("value");
    showParts(this.parts, []);
    say(this.spoken, "");
  }

  /** How far it has come, 0 to 1. @param {number} fraction */
  tell(fraction) { this.progress.value = fraction; }

  /** What was found. @param {{ text: string, parts: any[] }} found */
  show({ text, parts }) {
    this.search.hidden = true;
    showParts(this.parts, parts);
    if (text) say(this.spoken, text);
  }

  /** The search was ended before it was done. @param {string} why as the line says it */
  tellStopped(why) {
    this.element.hidden = false;
    const ended = why === "memory" ? "There was not enough memory to look for it." : "The search took longer than a page may.";
    showParts(this.parts, [{ type: "prose",
      text: `${ended} In a terminal of a computer, rigscenarios run looks for it to the end.` }]);
  }

  /** The search ended without a word: nothing is promised. */
  giveUp() {
    this.search.hidden = true;
    this.element.hidden = this.parts.childElementCount === 0;
  }
}
