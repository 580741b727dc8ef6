// All fields of the form that stand at a path of their own: made where the page has a place for them, shown with every change,
// and told what is assumed while they are open.
import { el } from "../shared/parts.js";
import { isOfAge, setAge } from "./age.js";
import { Field } from "./field.js";
import { filled } from "./tree.js";

/** @typedef {import("./field.js").Asked} Asked */

// Where a slider helps: from where to where, where it rests while nothing is said, and what that means.
/** @type {{ [key: string]: import("./field.js").Range }} */
const ranges = {
  ambient: { min: -30, max: 40, rest: 20 },
  charge: { min: 1, max: 100, rest: 100, open: "100 % (full)" },
  "capacity-left": { min: 30, max: 100, rest: 100, open: "not measured" },
  "start-temperature": { min: -20, max: 40, rest: 20, open: "that of the air" },
  "slide-middle": { min: -150, max: 150, rest: 0, open: "0 mm (at the socket)" },
};

// What a rig always says, one of a few: they all stand there.
const alwaysSaid = new Set(["stance"]);

// What holds for a field that is open, where the file says it for all days.
/** @type {{ [key: string]: string }} */
const inherited = { ambient: "conditions.ambient" };

export class Fields {
  /** @type {Set<Field>} */
  #fields = new Set();
  /** @type {Map<string, import("./field.js").Assumed>} */
  #assumed = new Map();

  /**
   * @param {import("./state.js").Rig} rig
   * @param {Asked[]} asked
   * @param {ParentNode} form with places for fields, such as data-fields="charge capacity-left"
   * @param {{ [key: string]: { write: (text: string, isSettled: boolean) => void, read: () => string } }} others fields that
   *   are not at a path
   */
  constructor(rig, asked, form, others) {
    this.rig = rig;
    for (const place of /** @type {NodeListOf<HTMLElement>} */ (form.querySelectorAll("[data-fields]")))
      for (const key of (place.dataset.fields ?? "").split(" ")) {
        const question = asked.find((candidate) => candidate.key === key);
        if (question) place.append(this.#make(question, others[key]));
      }
    rig.onChanged((detail) => this.#show(detail.isRestored ?? false));
  }

  /** One more field, which its owner shows where it wants; `drop` it when it goes. @param {Field} field */
  add(field) {
    this.#fields.add(field);
    field.show();
    field.assume(this.#assumedAt(field));
    return field;
  }

  /** @param {Field} field */
  drop(field) { this.#fields.delete(field); }

  /** @param {{ assumed: import("./field.js").Assumed[] }} answer */
  answered({ assumed }) {
    this.#assumed = new Map(assumed.filter((value) => value.path).map((value) => [value.path, value]));
    for (const field of this.#fields) field.assume(this.#assumedAt(field));
  }

  /** @param {Field} field @returns {import("./field.js").Assumed | null} */
  #assumedAt(field) {
    // What the battery's model takes has no path, and the name of its field.
    const found = this.#assumed.get(field.path) ?? this.#assumed.get(field.asked?.key);
    const value = this.rig.text(inherited[field.asked?.key] ?? null);
    return found ?? (value ? { path: field.path, name: field.asked.label, value, note: "for all days" } : null);
  }

  /** @param {Asked} question @param {any} other */
  #make(question, other) {
    /** @type {any} */
    const field = alwaysSaid.has(question.key) ? new Radios(this.rig, question)
      : new Field(this.rig, question, { id: question.key, range: ranges[question.key],
        set: isOfAge(question.key) ? setAge : undefined, ...other });
    this.#fields.add(field);
    field.pattern = other ? `asked.${question.key}` : question.path;
    field.isShown = other?.isShown;
    return field.element;
  }

  /** @param {boolean} isRestored */
  #show(isRestored) {
    for (const field of /** @type {Set<any>} */ (this.#fields)) {
      if (field.pattern) field.path = filled(field.pattern, this.rig.names);
      if (field.isShown) field.element.hidden = !field.isShown();
      field.show(isRestored);
      if (inherited[field.asked?.key]) field.assume(this.#assumedAt(field));
    }
  }
}

// A question whose few answers all stand there.
class Radios {
  #path = "";

  /** @param {import("./state.js").Rig} rig @param {Asked} asked */
  constructor(rig, asked) {
    this.rig = rig;
    this.radios = (asked.choices ?? []).map(({ text, title }) => {
      const input = el("input", { type: "radio", name: `asked-${asked.key}`, value: text,
        onchange: () => rig.set(this.#path, text, { name: asked.label }) });
      return { input, element: el("label", {}, input, " ", title) };
    });
    this.element = el("fieldset", { class: "field radios", "data-field": asked.key }, el("legend", {}, asked.label),
      this.radios.map((radio) => radio.element), asked.help ? el("p", { class: "help" }, asked.help) : null);
  }

  get path() { return this.#path; }

  /** @param {string | null} path */
  set path(path) {
    this.#path = path ?? "";
    this.element.hidden = path === null;
    this.element.dataset.path = this.#path;
  }

  show() {
    const text = this.rig.text(this.#path || null);
    for (const { input } of this.radios) input.checked = input.value === text;
  }

  assume() { /* an open question of this kind shows nothing chosen */ }
}
