// Checks the text while it is written: problems in a list that jumps to the line, a mark at the line, and what the file answers.
import { api } from "../shared/api.js";
import { el } from "../shared/parts.js";
import { inWords, say } from "../shared/tell.js";

const wait = 300, again = 3000;

export class Check {
  #timer = 0;
  #running = null;

  constructor(text, lines, idOf) {
    Object.assign(this, { text, lines, idOf });
    this.sum = document.getElementById("problems-sum");
    this.list = document.getElementById("problems");
    this.answers = document.getElementById("answers");
    text.addEventListener("input", () => this.#soon(wait));
  }

  now() { this.#soon(0); }

  #soon(milliseconds) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#ask(), milliseconds);
  }

  async #ask() {
    this.#running?.abort();
    const mine = this.#running = new AbortController();
    try {
      const { problems, answers } = await api("POST", "/api/text/check", { text: this.text.value, file: this.idOf() },
        mine.signal);
      this.show(problems);
      document.getElementById("answers-part").hidden = answers.length === 0;
      this.answers.replaceChildren(...answers.map((answer) =>
        el("li", {}, el("span", { class: "answer-of" }, `${answer.build}, ${answer.day}`), answer.text)));
    } catch (error) {
      if (error.name === "AbortError") return;
      if (!error.problems) throw error;
      say(this.sum, `${error.message} What you wrote is kept in this window.`);
      this.#soon(again);
    }
  }

  show(problems) {
    const errors = problems.filter((problem) => problem.severity !== "warning").length, warnings = problems.length - errors;
    const counted = [errors > 0 ? `${errors} to put right` : "", warnings > 0 ? `${warnings} worth a look` : ""].filter(Boolean)
      .join(", ");
    say(this.sum, problems.length === 0 ? "Nothing wrong was found." : `${counted}.`);
    this.lines.mark(problems);
    this.list.replaceChildren(...problems.map((problem) =>
      el("li", {}, el("button", { type: "button", onclick: () => this.lines.goTo(problem.line, problem.column) },
        problem.line > 0 ? el("span", { class: "problem-line" }, `Line ${problem.line}: `) : null,
        problem.path ? el("code", {}, problem.path) : null, problem.path ? " " : null,
        problem.severity === "warning" ? "Worth a look: " : "", inWords(problem)))));
  }
}
