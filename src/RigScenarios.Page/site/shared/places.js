// Parts that were moved along their mounts: a line for each with its distance, and ways to put it back.
import { el } from "./parts.js";

/**
 * A part that may be moved: its name, a title for people, and where it may stand and stands, in millimetres.
 * @typedef {{ value: string, title?: string, least: number, greatest: number, at: number }} Place
 */

/**
 * "plate -160 mm; pad -150 mm" as a map of millimetres. What can't be read is left out: the program has the last word.
 * @param {unknown} text
 */
export function readPlaces(text) {
  const found = String(text ?? "").split(";").map(item => /^\s*(\S+)\s+([-\u2212]?\d+(?:\.\d+)?)\s*mm\s*$/.exec(item));
  return new Map(found.filter(one => one !== null)
    .map(([, name, millimetres]) => [name, Number(millimetres.replace("\u2212", "-"))]));
}

/** The map as such a text, to a tenth of a millimetre. @param {Iterable<[string, number]>} places */
export function writePlaces(places) {
  return [...places].map(([name, millimetres]) => `${name} ${rounded(millimetres)} mm`).join("; ");
}

/**
 * "plate to −160 mm", with the names for people that the choices give.
 * @param {string} text
 * @param {{ value: string, title?: string }[]} [choices]
 */
export function placesInWords(text, choices = []) {
  const places = readPlaces(text);
  if (places.size === 0) return text ? String(text) : "nothing moved";
  return [...places].map(([name, millimetres]) => `${titleOf(name, choices)} to ${inMillimetres(millimetres)}`).join(", ");
}

/** "−160 mm". @param {number} millimetres */
export function inMillimetres(millimetres) {
  return `${String(rounded(millimetres)).replace("-", "\u2212")}\u00a0mm`;
}

/** @param {number} millimetres */
const rounded = millimetres => Math.round(millimetres * 10) / 10 + 0;
/** @param {string} name @param {{ value: string, title?: string }[]} choices */
const titleOf = (name, choices) => choices.find(choice => choice.value === name)?.title || name;

/**
 * The list of what is moved. `changed(event, isSettled)` tells of every change by the reader.
 * @typedef {{ element: HTMLElement, name: HTMLElement, range: HTMLElement, field: HTMLInputElement, isTyping: boolean }} Row
 */
export class PlacesList {
  /** @type {Map<string, number>} */
  #places = new Map();
  /** @type {Set<string>} */
  #open = new Set();
  /** @type {Place[]} */
  #choices = [];
  /** @type {Map<string, Row>} */
  #rows = new Map();

  /** @param {{ label: string, changed: (event: Event, isSettled: boolean) => void }} settings */
  constructor({ label, changed }) {
    this.changed = changed;
    this.list = el("ul", { class: "moved-list" });
    this.nothing = el("span", { class: "moved-nothing" }, "Nothing is moved. Drag a marked part in the drawing.");
    this.more = el("select", { "aria-label": `${label}: move a part by a number`, onchange: () => this.#openRow() });
    this.back = el("button", { type: "button", class: "quiet", onclick: event => this.#putAllBack(event) }, "Put all back");
    this.element = el("div", { class: "moved", role: "group", "aria-label": label }, this.nothing, this.list,
      el("div", { class: "moved-foot" }, this.more, this.back));
    this.#show();
  }

  get value() { return writePlaces([...this.#places].filter(([name, millimetres]) => !this.#isOwn(name, millimetres))); }

  set value(text) {
    this.#places = readPlaces(text);
    if (this.#places.size === 0) this.#open.clear();
    this.#show();
  }

  /** @param {string} name */
  has(name) { return this.#choices.some(choice => choice.value === name); }

  /** @param {string} name */
  choice(name) { return this.#choices.find(choice => choice.value === name); }

  /**
   * Where the reader has it, or else where the scenario has it; null for what can't be moved.
   * @param {string} name
   */
  at(name) { return this.#places.get(name) ?? this.#choices.find(choice => choice.value === name)?.at ?? null; }

  /** @param {Place[]} choices */
  useChoices(choices) {
    if (JSON.stringify(choices) === JSON.stringify(this.#choices)) return;
    this.#choices = choices;
    this.#show();
  }

  /** @param {string} name @param {number} millimetres */
  move(name, millimetres) {
    this.#places.set(name, millimetres);
    this.#show();
  }

  /** @param {string} name @param {number | undefined} millimetres */
  #isOwn(name, millimetres) {
    const choice = this.#choices.find(candidate => candidate.value === name);
    return choice !== undefined && millimetres !== undefined && Math.abs(choice.at - millimetres) < 0.05;
  }

  /** @param {string} name @param {Event} event */
  #putBack(name, event) {
    const at = [...this.#rows.keys()].indexOf(name);
    this.#places.delete(name);
    this.#open.delete(name);
    this.#show();
    // The focus goes to what comes into the place of the row that is gone.
    ([...this.#rows.values()][Math.max(0, Math.min(at, this.#rows.size - 1))]?.field ?? this.more).focus({ preventScroll: true });
    this.changed(event, true);
  }

  /** @param {Event} event */
  #putAllBack(event) {
    this.#places.clear();
    this.#open.clear();
    this.#show();
    this.more.focus({ preventScroll: true });
    this.changed(event, true);
  }

  #openRow() {
    const name = this.more.value;
    if (!name) return;
    this.#open.add(name);
    this.#show();
    this.#rows.get(name)?.field.focus();
  }

  #show() {
    const names =
      [...new Set([...this.#places.keys()].filter(name => !this.#isOwn(name, this.#places.get(name)) || this.#open.has(name))
      .concat([...this.#open]))];
    if (names.join(" ") !== [...this.#rows.keys()].join(" ")) {
      this.#rows = new Map(names.map(name => [name, this.#rows.get(name) ?? this.#row(name)]));
      this.list.replaceChildren(...[...this.#rows.values()].map(row => row.element));
    }
    for (const [name, row] of this.#rows) {
      const choice = this.#choices.find(candidate => candidate.value === name);
      const millimetres = this.#places.get(name) ?? choice?.at ?? "";
      row.name.textContent = titleOf(name, this.#choices);
      row.range.textContent = choice ? `${inMillimetres(choice.least)} to ${inMillimetres(choice.greatest)}` : "";
      for (const [key, bound] of /** @type {const} */ ([["min", choice?.least], ["max", choice?.greatest]]))
        if (bound === undefined) row.field.removeAttribute(key); else row.field.setAttribute(key, String(rounded(bound)));
      if (document.activeElement !== row.field || row.field.value === "")
        row.field.value = millimetres === "" ? "" : String(rounded(millimetres));
      else if (millimetres !== "" && Number(row.field.value) !== rounded(millimetres) && !row.isTyping)
        row.field.value = String(rounded(millimetres));
    }
    const rest = this.#choices.filter(choice => !this.#rows.has(choice.value));
    this.more.replaceChildren(el("option", { value: "" }, this.#rows.size > 0 ? "Move another part…" : "Move a part…"),
      ...rest.map(choice => el("option", { value: choice.value }, choice.title || choice.value)));
    this.more.hidden = rest.length === 0;
    this.back.hidden = this.#rows.size < 2;
    this.nothing.hidden = this.#rows.size > 0;
    this.nothing.textContent = this.#choices.length === 0 ? "No part of this build slides on its mount."
      : "Nothing is moved. Drag a marked part in the drawing.";
  }

  /** @param {string} name @returns {Row} */
  #row(name) {
    const row = {
      isTyping: false, element: el("li"), name: el("span", { class: "moved-name" }), range: el("span", { class: "moved-range" }),
      field: el("input", { type: "number", step: "1", inputmode: "decimal",
        "aria-label": `${titleOf(name, this.#choices)}, mm forward on its mount` }),
    };
    /** @param {Event} event @param {boolean} isSettled */
    const told = (event, isSettled) => {
      row.isTyping = !isSettled;
      const millimetres = Number(row.field.value), choice = this.#choices.find(candidate => candidate.value === name);
      if (row.field.value.trim() === "" || !Number.isFinite(millimetres)) {
        if (isSettled) this.#show();
        return;
      }
      // "-1" on the way to "-160" is no place yet; left standing it goes to the nearer end.
      const isOutside = choice && (millimetres < choice.least - 0.05 || millimetres > choice.greatest + 0.05);
      if (isOutside && !isSettled) return;
      this.#places.set(name, choice ? Math.min(choice.greatest, Math.max(choice.least, millimetres)) : millimetres);
      this.#open.add(name);
      if (isSettled) this.#show();
      this.changed(event, isSettled);
    };
    row.field.addEventListener("input", event => told(event, false));
    row.field.addEventListener("change", event => told(event, true));
    row.element.append(row.name, el("span", { class: "moved-place" }, row.field, el("span", { class: "unit" }, "mm")),
      el("button", { type: "button", class: "quiet", "aria-label": `Put back: ${titleOf(name, this.#choices)}`,
        onclick: event => this.#putBack(name, event) }, "Put back"), row.range);
    return row;
  }
}
