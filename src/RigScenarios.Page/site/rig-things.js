// What the rig is made of: one question for each kind of thing, answered from the parts library or with figures of one's own.
import { el } from "./parts.js";
import { freshId } from "./tell.js";
import { OwnFigures } from "./rig-own.js";
import { PartsChoice } from "./parts-choice.js";
import { freeName } from "./rig-words.js";

const own = " own";

export class Things {
  #questions = [];

  constructor(draft, knowledge, form) {
    this.draft = draft;
    this.knowledge = knowledge;
    const places = [...form.querySelectorAll("[data-questions]")];
    const rest = places.find((place) => place.dataset.questions === "*");
    for (const question of knowledge.questions.filter((asked) => asked.kinds?.length > 0)) {
      const place = places.find((candidate) => candidate.dataset.questions.split(" ").includes(question.key)) ?? rest;
      this.#questions.push(new Question(draft, knowledge, question, place));
    }
    draft.addEventListener("opened", () => this.#questions.forEach((question) => question.show()));
  }
}

class Question {
  constructor(draft, knowledge, question, place) {
    Object.assign(this, { draft, knowledge, question });
    const help = freshId("help");
    this.help = help;
    this.rows = el("div", { class: "rows" });
    this.more = el("button", { type: "button", class: "quiet", "aria-label": `One more: ${question.label}`, onclick: () => this.#addRow() }, "One more");
    place.append(el("fieldset", { class: "question", id: `question-${question.key}` },
      el("legend", {}, question.label, question.required ? null : el("span", { class: "optional" }, " if there is one")),
      question.help ? el("p", { class: "help", id: help }, question.help) : null, this.rows, this.more));
    const kinds = question.kinds ?? [];
    this.options = [...knowledge.parts.filter((part) => kinds.includes(part.kind)).map((part) => ({
      value: part.id, title: part.name, note: part.note, figures: [part.mass, part.draw || part.detail, part.price],
      search: [part.name, part.note, part.kind, part.detail, part.mass, part.draw, part.price, part.id].filter(Boolean).join(" ").toLowerCase(),
    })), { value: own, title: "Mine is not listed", note: "Give its name and the figures of its label", always: true, search: "" }];
  }

  #names() { return Object.entries(this.draft.value.things).filter(([, thing]) => thing.role === this.question.key).map(([name]) => name); }

  show() {
    const names = this.#names();
    this.rows.replaceChildren(...(names.length > 0 ? names : [null]).map((name) => this.#row(name)));
    this.#settle();
  }

  #addRow() {
    const row = this.#row(null);
    this.rows.append(row);
    this.#settle();
    row.querySelector("input").focus();
  }

  // One empty row at most, and none of them removable when it is the only one.
  #settle() {
    const rows = [...this.rows.children];
    this.more.hidden = !this.question.many || rows.some((row) => !row.dataset.thing);
    rows.forEach((row, at) => {
      row.querySelector(".thing-remove").hidden = rows.length === 1 && !row.dataset.thing;
      row.querySelector("[role=combobox]").setAttribute("aria-label", rows.length === 1 ? this.question.label : `${this.question.label}, ${at + 1} of ${rows.length}`);
    });
  }

  #row(name) {
    const row = el("div", { class: "thing field" });
    const figures = el("p", { class: "thing-figures" });
    const count = el("input", { type: "number", min: 1, max: 20, step: 1, class: "thing-count", "aria-label": `How many of this ${this.question.label.toLowerCase()}` });
    const countField = el("label", { class: "thing-many" }, "×", count);
    const remove = el("button", { type: "button", class: "quiet thing-remove" }, "Take away");
    const figuresOfOwn = new OwnFigures(this.knowledge.own, this.question, (key, text) => this.draft.change((value) => {
      const thing = value.things[name];
      thing.own = { ...thing.own };
      if (text === "") delete thing.own[key]; else thing.own[key] = text;
    }, false));
    const choice = new PartsChoice({
      label: this.question.label, describedBy: this.question.help ? this.help : null, options: this.options,
      hint: this.question.required ? "Choose, or type to search" : "None",
      chosen: (value) => {
        const part = this.knowledge.parts.find((candidate) => candidate.id === value);
        this.draft.change((rig) => {
          name ??= freeName(this.question.key === "other" && part ? part.kind : this.question.key, (taken) => taken in rig.things);
          const { part: _, own: before, ...thing } = rig.things[name] ?? { role: this.question.key, ...(this.question.key === "camera" ? { essential: "yes" } : {}) };
          rig.things[name] = value === own ? { ...thing, own: before ?? {} } : { ...thing, part: value };
        });
        shown();
        if (value === own) figuresOfOwn.focus();
      },
    });
    const shown = () => {
      const thing = name ? this.draft.value.things[name] : null;
      const part = this.knowledge.parts.find((candidate) => candidate.id === thing?.part);
      if (name) row.dataset.thing = name; else delete row.dataset.thing;
      choice.input.dataset.path = name ? `things.${name}` : `missing.${this.question.key}`;
      choice.value = thing ? thing.part ?? own : "";
      figures.textContent = part ? [part.mass, part.draw, part.draw === part.detail ? "" : part.detail, part.price].filter(Boolean).join(" · ") : "";
      figures.hidden = figures.textContent === "";
      countField.hidden = !thing || !this.question.many || this.question.key === "regulator";
      count.value = thing?.count ?? 1;
      count.dataset.path = `things.${name}.count`;
      figuresOfOwn.show(name, thing?.part ? null : thing?.own ?? null);
      this.#settleSoon();
    };
    count.addEventListener("change", () => this.draft.change((value) => {
      if (count.value === "" || count.value === "1") delete value.things[name].count; else value.things[name].count = count.value;
    }));
    remove.addEventListener("click", () => {
      if (name) this.draft.change((value) => takeAway(value, name));
      const next = row.nextElementSibling ?? row.previousElementSibling;
      row.remove();
      if (this.rows.children.length === 0) this.rows.append(this.#row(null));
      this.#settle();
      (next ?? this.rows.firstElementChild).querySelector("input").focus();
    });
    row.append(el("div", { class: "thing-line" }, choice.element, countField, remove), figures, figuresOfOwn.element);
    shown();
    return row;
  }

  #settleSoon() { if (this.rows.children.length > 0) queueMicrotask(() => this.#settle()); }
}

// A thing that is gone feeds nothing and does nothing in any block.
function takeAway(value, name) {
  delete value.things[name];
  for (const thing of Object.values(value.things)) if (thing["fed-by"] === name) delete thing["fed-by"];
  for (const block of Object.values(value.blocks)) if (block.states) delete block.states[name];
}
