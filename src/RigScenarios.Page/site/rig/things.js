// What the rig is made of: one question for each kind of thing, answered with one or more things.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { notListed, ThingRow } from "./thing.js";

export class Things {
  constructor(draft, knowledge, form) {
    const places = [...form.querySelectorAll("[data-questions]")], rest = places.find((place) => place.dataset.questions === "*");
    const questions = knowledge.questions.filter((asked) => asked.kinds?.length > 0)
      .map((question) => new Question(draft, knowledge, question,
      places.find((place) => place.dataset.questions.split(" ").includes(question.key)) ?? rest));
    for (const kind of ["opened", "added"]) draft.addEventListener(kind, () => questions.forEach((question) => question.show()));
  }
}

class Question {
  #rows = [];

  constructor(draft, knowledge, question, place) {
    Object.assign(this, { draft, knowledge, question });
    this.help = question.help ? freshId("help") : null;
    this.place = el("div", { class: "rows" });
    this.more = el("button", { type: "button", class: "quiet", "aria-label": `One more: ${question.label}`,
      onclick: () => this.#addRow() }, "One more");
    place.append(el("fieldset", { class: "question", id: `question-${question.key}` },
      el("legend", {}, question.label, question.required ? null : el("span", { class: "optional" }, " if there is one")),
      question.help ? el("p", { class: "help", id: this.help }, question.help) : null, this.place, this.more));
    this.options = [...knowledge.parts.filter((part) => question.kinds.includes(part.kind)).map(asOption),
      { value: notListed, title: "Mine is not listed", note: "Give its name and the figures of its label", always: true,
        search: "" }];
  }

  show() {
    const names = Object.entries(this.draft.value.things).filter(([, thing]) => thing.role === this.question.key)
      .map(([name]) => name);
    this.#rows = (names.length > 0 ? names : [null]).map((name) => this.#row(name));
    this.place.replaceChildren(...this.#rows.map((row) => row.element));
    this.#settle();
  }

  #row(name) {
    return new ThingRow({
      draft: this.draft, knowledge: this.knowledge, question: this.question, options: this.options, describedBy: this.help, name,
      deeds: { changed: () => this.#settle(), removed: (row) => this.#removeRow(row) },
    });
  }

  #addRow() {
    const row = this.#row(null);
    this.#rows.push(row);
    this.place.append(row.element);
    this.#settle();
    row.focus();
  }

  // The last row stays, empty; the focus goes to the row that comes into the place.
  #removeRow(row) {
    const at = this.#rows.indexOf(row);
    this.#rows.splice(at, 1);
    row.element.remove();
    if (this.#rows.length === 0) this.#addRow(); else { this.#settle(); this.#rows[Math.min(at, this.#rows.length - 1)].focus(); }
  }

  #settle() {
    this.#rows.forEach((row, at) => row.settle(at, this.#rows.length));
    this.more.hidden = !this.question.many || this.#rows.some((row) => !row.name);
  }
}

function asOption(part) {
  return {
    value: part.id, title: part.name, note: part.note,
    figures: [part.mass, part.draw || part.detail, part.price].map((figure) => figure?.replace(", ", ",\n")),
    search: [part.name, part.note, part.kind, part.detail, part.mass, part.draw, part.price, part.id].filter(Boolean).join(" ")
      .toLowerCase(),
  };
}
