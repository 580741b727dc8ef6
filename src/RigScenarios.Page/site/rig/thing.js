// One thing of the rig: chosen from the list or described with the figures of its label, how many of it, and a way to take it
// off.
import { el } from "../shared/parts.js";
import { closeWithEnter } from "./keyboard.js";
import { OwnFigures } from "./own.js";
import { PartsChoice } from "./parts-choice.js";

// The value of the choice that stands for "not listed"; no part's id has a space.
export const notListed = " own";

export class ThingRow {
  /**
   * @param {{ rig: import("./state.js").Rig, fields: import("./fields.js").Fields, knowledge: any, question: any, options: any[],
   *   describedBy: string | null, name: string | null, gone: (at: number) => void }} of `name`: null while nothing is chosen
   */
  constructor({ rig, fields, knowledge, question, options, describedBy, name, gone }) {
    this.rig = rig;
    this.knowledge = knowledge;
    this.question = question;
    this.name = name;
    this.isWanted = name !== null;
    this.at = 0;
    this.figures = el("p", { class: "thing-figures" });
    this.count = el("input", { type: "number", min: 1, max: 20, step: 1, class: "thing-count", inputmode: "numeric",
      "aria-label": `How many of this ${question.label.toLowerCase()}`, onchange: () => this.#setCount() });
    closeWithEnter(this.count);
    this.countField = el("label", { class: "thing-many" }, "×", this.count);
    this.remove = el("button", { type: "button", class: "quiet thing-remove", onclick: () => this.#takeAway(gone) }, "Take away");
    this.notListed = el("button", { type: "button", class: "quiet thing-own", onclick: () => this.#choose(notListed) },
      question.kinds.length > 0 ? "Mine is not listed" : "Add one");
    this.own = new OwnFigures(rig, fields, knowledge.label, question.key);
    this.choice = new PartsChoice({
      label: question.label, describedBy, options, hint: question.required ? "Choose, or type to search" : "None",
      chosen: (value) => this.#choose(value),
    });
    this.element = el("div", { class: "thing field" },
      el("div", { class: "thing-line" }, this.choice.element, this.countField, this.notListed, this.remove), this.figures,
      this.own.element);
    this.show();
  }

  /**
   * How it is called among its likes, and whether it can be taken away: the only empty row can't.
   * @param {number} at
   * @param {number} of
   */
  settle(at, of) {
    this.at = at;
    this.remove.hidden = of === 1 && !this.name;
    this.choice.input.setAttribute("aria-label", of === 1 ? this.question.label : `${this.question.label}, ${at + 1} of ${of}`);
  }

  focus() { (this.question.kinds.length > 0 ? this.choice.input : this.notListed).focus(); }

  /** It stands in the form no more. */
  leave() { this.own.leave(); }

  show() {
    const thing = this.name ? this.rig.thing(this.name) : null, isOwn = thing?.own !== null && thing !== null;
    this.element.classList.toggle("thing-open", !thing);
    // Of some kinds there is no list: only the figures of their labels.
    this.choice.element.hidden = this.question.kinds.length === 0;
    this.choice.input.dataset.path = thing ? `kit.${this.name}` : `missing.${this.question.key}`;
    this.element.dataset.thing = this.name ?? "";
    const value = isOwn ? notListed : thing?.part ?? "";
    if (this.choice.value !== value || document.activeElement !== this.choice.input) this.choice.value = value;
    const figures = thing?.figures ?? "";
    if (this.figures.textContent !== figures) this.figures.textContent = figures;
    this.figures.hidden = figures === "";
    this.notListed.hidden = isOwn;
    this.countField.hidden = !thing?.count || !this.question.many;
    if (document.activeElement !== this.count) this.count.value = (thing?.count && this.rig.text(thing.count)) || "1";
    this.count.dataset.path = thing?.count ?? "";
    const title = thing?.title || this.question.label;
    this.remove.setAttribute("aria-label", `Take away: ${title}`);
    this.notListed.setAttribute("aria-label", `${this.notListed.textContent}: ${this.question.label}`);
    this.own.show(thing?.own ?? null);
  }

  /** @param {string} value */
  async #choose(value) {
    const part = this.knowledge.parts.find((/** @type {any} */ candidate) => candidate.id === value);
    const what = value === notListed ? { own: true } : { part: value };
    const edit = this.name ? { do: "choose", thing: this.name, ...what }
      : { do: "add", question: this.question.key, ...what };
    this.isWanted = true;
    await this.rig.edit(edit, { name: part?.name ?? `${this.question.label}, not listed`,
      came: (thing) => { this.name = thing ?? this.name; } });
    if (value === notListed && this.name) this.own.focus();
  }

  #setCount() {
    const { count } = this.rig.thing(this.name ?? "") ?? {};
    const text = this.count.value === "1" ? "" : this.count.value;
    if (count) this.rig.set(count, text, { name: `how many: ${this.question.label}` });
  }

  /** @param {(at: number) => void} gone */
  async #takeAway(gone) {
    const { name, at } = this;
    this.isWanted = false;
    if (name) {
      const title = this.rig.thing(name)?.title || this.question.label;
      await this.rig.edit({ do: "take-away", thing: name }, { name: `take away: ${title}` });
    }
    gone(at);
  }
}
