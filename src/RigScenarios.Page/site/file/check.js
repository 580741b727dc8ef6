// Checks the text while it is written: problems in a list that jumps to the line, a mark at the line, and what the file answers.
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { Newest } from "../shared/program.js";
import { inWords, say } from "../shared/tell.js";

/** @import { Problem } from "../shared/requests.js" */
/** @import { Lines } from "./lines.js" */

const wait = 300, again = 3000;

export class Check {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  #newest = new Newest();

  /** @param {HTMLTextAreaElement} text @param {Lines} lines @param {() => string} idOf the file that the text is meant for */
  constructor(text, lines, idOf) {
    this.text = text;
    this.lines = lines;
    this.idOf = idOf;
    this.sum = byId("problems-sum");
    this.list = byId("problems");
    this.answers = byId("answers");
    text.addEventListener("input", () => this.#soon(wait));
  }

  now() { this.#soon(0); }

  /** @param {number} milliseconds */
  #soon(milliseconds) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#ask(), milliseconds);
  }

  async #ask() {
    try {
      const checked = await this.#newest.ask("check-text", { text: this.text.value, file: this.idOf() });
      if (!checked) return;
      const { problems, answers } = checked;
      this.show(problems);
      byId("answers-part").hidden = answers.length === 0;
      this.answers.replaceChildren(...answers.map((answer) =>
        el("li", {}, el("span", { class: "answer-of" }, `${answer.build}, ${answer.day}`), answer.text)));
    } catch (error) {
      if (!error.problems) throw error;
      say(this.sum, `${error.message} What you wrote is kept in this window.`);
      this.#soon(again);
    }
  }

  /** @param {Problem[]} problems */
  show(problems) {
    const errors = problems.filter((problem) => problem.severity !== "warning").length, warnings = problems.length - errors;
    const counted = [errors > 0 ? `${errors} to put right` : "", warnings > 0 ? `${warnings} worth a look` : ""].filter(Boolean)
      .join(", ");
    say(this.sum, problems.length === 0 ? "Nothing wrong was found." : `${counted}.`);
    this.lines.mark(problems);
    this.list.replaceChildren(...problems.map((problem) =>
      el("li", {}, el("button", { type: "button", onclick: () => this.lines.goTo(problem.line ?? 1, problem.column ?? 1) },
        (problem.line ?? 0) > 0 ? el("span", { class: "problem-line" }, `Line ${problem.line}: `) : null,
        problem.path ? el("code", {}, problem.path) : null, problem.path ? " " : null,
        problem.severity === "warning" ? "Worth a look: " : "", inWords(problem)))));
  }
}
