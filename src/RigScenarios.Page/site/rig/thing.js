// One thing of the rig: chosen from the list or described with figures of one's own, how many of it, and a way to take it off.
import { el } from "../shared/parts.js";
import { OwnFigures } from "./own.js";
import { PartsChoice } from "./parts-choice.js";
import { freeName } from "./words.js";

// The value of the choice that stands for "not listed"; no part's id has a space.
export const notListed = " own";

export class ThingRow {
  // name: the thing's name on the rig, null while nothing is chosen. deeds: {changed(), removed(row)}
  constructor({ draft, knowledge, question, options, describedBy, name, deeds }) {
    Object.assign(this, { draft, knowledge, question, name, deeds });
    this.figures = el("p", { class: "thing-figures" });
    this.count = el("input", { type: "number", min: 1, max: 20, step: 1, class: "thing-count",
      "aria-label": `How many of this ${question.label.toLowerCase()}`, onchange: () => this.#setCount() });
    this.countField = el("label", { class: "thing-many" }, "×", this.count);
    this.remove = el("button", { type: "button", class: "quiet thing-remove", onclick: () => this.#takeAway() }, "Take away");
    this.own = new OwnFigures(knowledge.own, question, (key, text) => this.#setOwn(key, text));
    this.choice = new PartsChoice({
      label: question.label, describedBy, options, hint: question.required ? "Choose, or type to search" : "None",
      chosen: (value) => this.#choose(value),
    });
    this.element = el("div", { class: "thing field" },
      el("div", { class: "thing-line" }, this.choice.element, this.countField, this.remove), this.figures, this.own.element);
    this.#show();
  }

  // How it is called among its likes, and whether it can be taken away: the only empty row can't.
  settle(at, of) {
    this.remove.hidden = of === 1 && !this.name;
    this.choice.input.setAttribute("aria-label", of === 1 ? this.question.label : `${this.question.label}, ${at + 1} of ${of}`);
  }

  focus() { this.choice.input.focus(); }

  #show() {
    const thing = this.name ? this.draft.value.things[this.name] : null;
    const part = thing?.own ? null : this.knowledge.parts.find((candidate) => candidate.id === thing?.part);
    this.element.classList.toggle("thing-open", !this.name);
    this.choice.input.dataset.path = this.name ? `things.${this.name}` : `missing.${this.question.key}`;
    this.choice.value = thing?.own ? notListed : thing?.part ?? "";
    this.figures.textContent = part ? [part.mass, part.draw, part.draw === part.detail ? "" : part.detail,
      part.price].filter(Boolean).join(" · ") : "";
    this.figures.hidden = this.figures.textContent === "";
    this.countField.hidden = !thing || !this.question.many || this.question.key === "regulator";
    this.count.value = thing?.count ?? 1;
    this.count.dataset.path = `things.${this.name}.count`;
    this.remove.setAttribute("aria-label", `Take away: ${thing?.own?.name || part?.name || this.question.label}`);
    this.own.show(this.name, thing?.own ?? null);
  }

  #choose(value) {
    const { question } = this, part = this.knowledge.parts.find((candidate) => candidate.id === value);
    this.draft.change((rig) => {
      this.name ??= freeName(question.key === "other" && part ? part.kind : question.key, (taken) => taken in rig.things);
      const { part: _, own, ...thing } = rig.things[this.name]
        ?? { role: question.key, ...(question.key === "camera" ? { essential: "yes" } : {}) };
      rig.things[this.name] = value === notListed ? { ...thing, own: own ?? {} } : { ...thing, part: value };
    });
    this.#show();
    this.deeds.changed();
    if (value === notListed) this.own.focus();
  }

  #setOwn(key, text) {
    this.draft.change((rig) => {
      const own = { ...rig.things[this.name].own };
      if (text === "") delete own[key]; else own[key] = text;
      rig.things[this.name].own = own;
    }, false);
  }

  #setCount() {
    this.draft.change((rig) => {
      if (this.count.value === "" || this.count.value === "1")
        delete rig.things[this.name].count; else rig.things[this.name].count = this.count.value;
    });
  }

  // A thing that is gone feeds nothing and does nothing in any block.
  #takeAway() {
    const { name } = this;
    if (name) this.draft.change((rig) => {
      delete rig.things[name];
      if (rig.places) delete rig.places[name];
      for (const thing of Object.values(rig.things)) if (thing["fed-by"] === name) delete thing["fed-by"];
      for (const block of Object.values(rig.blocks)) if (block.states) delete block.states[name];
    });
    this.deeds.removed(this);
  }
}
