// "Mine is not listed": the figures that stand on a thing's label. The three that decide stand first, the others are folded. What
// is left open is assumed, and said.
import { el } from "../shared/parts.js";
import { Field } from "./field.js";

/** @typedef {import("./field.js").Asked & { of: string[], needed: string[] }} LabelAsked */

// What decides an answer, for one kind of thing or another; of a battery the watt-hours, of a lens its size.
const deciding = new Set(["energy", "power", "voltage", "current", "output-voltage", "rated-load", "size", "height", "mass"]);
const alwaysFolded = { battery: ["current", "voltage", "size"], plate: ["power"], head: [], legs: [] };

export class OwnFigures {
  /** @type {Field[]} */
  #fields = [];
  #own = "";

  /**
   * @param {import("./state.js").Rig} rig
   * @param {import("./fields.js").Fields} fields
   * @param {LabelAsked[]} label
   * @param {string} question
   */
  constructor(rig, fields, label, question) {
    this.rig = rig;
    this.fields = fields;
    this.question = question;
    this.asked = label.filter((asked) => asked.of.includes(question));
    this.first = el("div", { class: "own-first" });
    this.rest = el("div", { class: "own-rest" });
    this.more = el("details", { class: "more" }, el("summary", {}, "More figures"), this.rest);
    this.element = el("div", { class: "own", hidden: true }, this.first, this.more);
  }

  /** Shows the figures of an own part; null hides them. @param {string | null} own */
  show(own) {
    this.element.hidden = own === null;
    if ((own ?? "") === this.#own) return;
    this.#own = own ?? "";
    this.leave();
    if (own !== null) this.#make(own);
  }

  focus() { this.#fields[0]?.focus(); }

  /** Its fields are shown no more. */
  leave() {
    for (const field of this.#fields) this.fields.drop(field);
    this.#fields = [];
    this.first.replaceChildren();
    this.rest.replaceChildren();
  }

  /** @param {string} own */
  #make(own) {
    /** @param {LabelAsked} asked */
    const isFirst = (asked) => asked.needed.includes(this.question)
      || (deciding.has(asked.key) && !(alwaysFolded[this.question] ?? []).includes(asked.key));
    const made = this.asked.map((asked) => {
      const field = new Field(this.rig, asked);
      field.path = `parts.${own}.${asked.path}`;
      this.fields.add(field);
      return { field, isFirst: isFirst(asked) };
    });
    const name = made.filter(({ field }) => field.asked.key === "name");
    const first = made.filter((item) => item.isFirst);
    this.first.append(...[...first, ...name].map(({ field }) => field.element));
    this.rest.append(...made.filter((item) => !first.includes(item) && !name.includes(item)).map(({ field }) => field.element));
    this.more.hidden = this.rest.childElementCount === 0;
    this.#fields = [...first, ...made.filter((item) => !first.includes(item))].map(({ field }) => field);
  }
}
