// What the rig is made of: one question for each kind of thing, answered with one or more things.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { notListed, ThingRow } from "./thing.js";

export class Things {
  /**
   * @param {import("./state.js").Rig} rig
   * @param {import("./fields.js").Fields} fields
   * @param {any} knowledge
   * @param {ParentNode} form
   */
  constructor(rig, fields, knowledge, form) {
    const places = /** @type {HTMLElement[]} */ ([...form.querySelectorAll("[data-questions]")]);
    const rest = places.find((place) => place.dataset.questions === "*");
    const placeOf = (/** @type {string} */ key) =>
      places.find((place) => place.dataset.questions?.split(" ").includes(key)) ?? rest ?? places[0];
    /** @type {Question[]} */
    const questions = knowledge.questions
      .map((/** @type {any} */ question) => new Question(rig, fields, knowledge, question, placeOf(question.key)));
    rig.addEventListener("opened", () => { for (const question of questions) question.begin(); });
    rig.onChanged(() => { for (const question of questions) question.show(); });
  }
}

class Question {
  /** @type {ThingRow[]} */
  #rows = [];

  /**
   * @param {import("./state.js").Rig} rig
   * @param {import("./fields.js").Fields} fields
   * @param {any} knowledge
   * @param {any} question
   * @param {HTMLElement} place
   */
  constructor(rig, fields, knowledge, question, place) {
    this.rig = rig;
    this.fields = fields;
    this.knowledge = knowledge;
    this.question = question;
    this.help = question.help ? freshId("help") : null;
    this.place = el("div", { class: "rows" });
    this.more = el("button", { type: "button", class: "quiet", "aria-label": `One more: ${question.label}`,
      onclick: () => this.#addRow() }, "One more");
    place.append(el("fieldset", { class: "question", id: `question-${question.key}` },
      el("legend", {}, question.label, question.required ? null : el("span", { class: "optional" }, " if there is one")),
      question.help ? el("p", { class: "help", id: this.help }, question.help) : null, this.place, this.more));
    this.options = [...knowledge.parts.filter((/** @type {any} */ part) => question.kinds.includes(part.kind)).map(asOption),
      { value: notListed, title: "Mine is not listed", note: "Give its name and the figures of its label", always: true,
        search: "" }];
  }

  /** Another rig: no row of the one before stays. */
  begin() {
    for (const row of this.#rows) row.leave();
    this.#rows = [];
  }

  // A row that is there stays the same element, for somebody may be writing in it.
  show() {
    const names = this.rig.view.things.filter((thing) => thing.question === this.question.key).map((thing) => thing.name);
    const rows = names.map((name) => this.#rows.find((row) => row.name === name) ?? this.#row(name));
    const open = this.#rows.find((row) => !row.name && row.isWanted);
    if (open || rows.length === 0) rows.push(open ?? this.#rows.find((row) => !row.name) ?? this.#row(null));
    for (const row of this.#rows) if (!rows.includes(row)) row.leave();
    this.#rows = rows;
    const wanted = rows.map((row) => row.element);
    if (wanted.length !== this.place.childElementCount || wanted.some((element, i) => element !== this.place.children[i]))
      this.#place(wanted);
    for (const row of rows) row.show();
    this.#settle();
  }

  // What stays is not taken out, not even for a moment: the focus would be lost.
  /** @param {Element[]} wanted */
  #place(wanted) {
    for (const old of [...this.place.children]) if (!wanted.includes(old)) old.remove();
    wanted.forEach((element, i) => {
      if (this.place.children[i] !== element) this.place.insertBefore(element, this.place.children[i] ?? null);
    });
  }

  /** @param {string | null} name */
  #row(name) {
    return new ThingRow({ rig: this.rig, fields: this.fields, knowledge: this.knowledge, question: this.question,
      options: this.options, describedBy: this.help, name, gone: (at) => this.#gone(at) });
  }

  #addRow() {
    const row = this.#row(null);
    row.isWanted = true;
    this.#rows.push(row);
    this.show();
    row.focus();
  }

  // The last row stays, empty; the focus goes to the row that comes into the place.
  /** @param {number} at */
  #gone(at) {
    this.show();
    this.#rows[Math.max(0, Math.min(at, this.#rows.length - 1))].focus();
  }

  #settle() {
    for (const [at, row] of this.#rows.entries()) row.settle(at, this.#rows.length);
    this.more.hidden = !this.question.many || this.#rows.some((row) => !row.name);
  }
}

/** @param {any} part */
function asOption(part) {
  return {
    value: part.id, title: part.name, note: part.note,
    figures: [part.mass, part.draw || part.detail, part.price].map((figure) => figure?.replace(", ", ",\n")),
    search: [part.name, part.note, part.kind, part.detail, part.mass, part.draw, part.price, part.id].filter(Boolean).join(" ")
      .toLowerCase(),
  };
}
