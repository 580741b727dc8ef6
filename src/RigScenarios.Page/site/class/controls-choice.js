// Which controls the class gets, in groups that open; of a figure, from and to what.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { numberOf } from "./task.js";

/** @import { ClassControl, OpenControl } from "../shared/requests.js" */

/** @typedef {{ control: ClassControl, box: HTMLInputElement, from: HTMLInputElement | null, to: HTMLInputElement | null }} Row */

export class ControlsChoice {
  /** @type {Row[]} */
  #rows = [];

  /** @param {HTMLElement} holder */
  constructor(holder) { this.holder = holder; }

  /** @param {ClassControl[]} controls @param {OpenControl[]} open */
  show(controls, open) {
    const known = new Map(open.map(one => [one.field, one]));
    this.#rows = [];
    const titles = new Set(controls.map(control => control.group));
    this.holder.replaceChildren(...[...titles].map(title =>
      this.#group(title, controls.filter(control => control.group === title), known)));
  }

  /** What is chosen. @returns {OpenControl[]} */
  get open() {
    return this.#rows.filter(row => row.box.checked).map(({ control, from, to }) => ({ field: control.name,
      from: bound(from, control.minimum), to: bound(to, control.maximum) }));
  }

  /** @param {string} title @param {ClassControl[]} controls @param {Map<string, OpenControl>} known */
  #group(title, controls, known) {
    const count = el("span", { class: "count" });
    const rows = controls.map(control => this.#row(control, known.get(control.name), tell));
    const added = this.#rows.slice(-controls.length);
    const details = el("details", { class: "group" }, el("summary", {}, title, " ", count), rows);
    function tell() {
      const chosen = added.filter(row => row.box.checked).length;
      count.textContent = chosen === 0 ? `(all locked, ${controls.length})` : `(${chosen} of ${controls.length} may be changed)`;
    }
    tell();
    details.open = added.some(row => row.box.checked);
    return details;
  }

  /** @param {ClassControl} control @param {OpenControl | undefined} open @param {() => void} changed */
  #row(control, open, changed) {
    const box = el("input", { type: "checkbox" });
    box.checked = open !== undefined;
    const isNumber = control.kind === "number";
    const from = isNumber ? field(open?.from ?? control.minimum) : null;
    const to = isNumber ? field(open?.to ?? control.maximum) : null;
    const bounds = from && to ? el("div", { class: "bounds" }, labelled("from", from, control), labelled("to", to, control),
      el("span", { class: "words" }, control.unit)) : null;
    const show = () => { if (bounds) bounds.hidden = !box.checked; changed(); };
    box.addEventListener("change", show);
    this.#rows.push({ control, box, from, to });
    if (bounds) bounds.hidden = !box.checked;
    const now = isNumber ? `${control.default} ${control.unit}`.trim()
      : control.choices.find(choice => choice.value === control.default)?.title ?? control.default;
    return el("div", { class: "opened" }, el("label", { class: "check" }, box, el("span", {}, control.label, " ",
      el("span", { class: "words" }, `now ${now}`))), bounds);
  }
}

/** @param {number | null} value */
function field(value) {
  const input = el("input", { type: "text", inputmode: "decimal", id: freshId("bound"), autocomplete: "off" });
  input.value = value === null ? "" : String(value);
  return input;
}

/** @param {string} word @param {HTMLInputElement} input @param {ClassControl} control */
function labelled(word, input, control) {
  return el("label", { for: input.id }, word, el("span", { class: "visually-hidden" }, ` for ${control.label}`), input);
}

/** What is said of an end; null for the control's own. @param {HTMLInputElement | null} input @param {number | null} own */
function bound(input, own) {
  const number = input ? numberOf(input.value) : null;
  return number === own ? null : number;
}
