// "Mine is not listed": the figures that stand on a thing's label. The three that decide stand first, the others are folded. What
// is left open is assumed, and said.
import { el } from "../shared/parts.js";
import { Field } from "./field.js";

/** @typedef {import("./field.js").Asked & { of: string[], needed: string[] }} LabelAsked */

// What decides an answer, in the order in which it is asked: of a device watts (or volts and amperes) and mass, of a battery the
// watt-hours. Without the sizes of what reaches out there is no verdict on balance.
/** @type {{ [question: string]: string[] }} */
const deciding = {
  battery: ["battery-energy", "mass", "size"], lens: ["mass", "size"], plate: ["mass"], head: ["rated-load", "mass"],
  regulator: ["regulator-output-voltage", "regulator-maximum-current", "mass"], legs: ["legs-height", "mass"],
  other: ["mass", "size"],
};
const ofDevice = ["power-record", "label-voltage", "label-current", "mass", "size"];

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
    const order = deciding[this.question] ?? ofDevice;
    const made = this.asked.map((asked) => {
      const field = new Field(this.rig, asked), place = order.indexOf(asked.path === "size" ? "size" : asked.key);
      field.path = `parts.${own}.${asked.path}`;
      this.fields.add(field);
      // What can't be left open is never folded; the name comes after the figures.
      return { field, place: asked.key === "name" ? 20 : place >= 0 ? place : asked.needed.includes(this.question) ? 10 : 30 };
    });
    const inOrder = made.sort((one, other) => one.place - other.place);
    for (const { field, place } of inOrder) (place < 30 ? this.first : this.rest).append(field.element);
    this.more.hidden = this.rest.childElementCount === 0;
    this.#fields = inOrder.map(({ field }) => field);
  }
}
