// Parts that were moved along their mounts: a line for each with its distance, and ways to put it back.
import { el } from "./parts.js";

/** "plate -160 mm; pad -150 mm" as a map of millimetres. What can't be read is left out: the server has the last word. */
export function readPlaces(text) {
  const found = String(text ?? "").split(";").map(item => /^\s*(\S+)\s+([-\u2212]?\d+(?:\.\d+)?)\s*mm\s*$/.exec(item))
    .filter(Boolean);
  return new Map(found.map(([, name, millimetres]) => [name, Number(millimetres.replace("\u2212", "-"))]));
}

/** The map as such a text, to a tenth of a millimetre. */
export function writePlaces(places) {
  return [...places].map(([name, millimetres]) => `${name} ${rounded(millimetres)} mm`).join("; ");
}

/** "plate to −160 mm", with the names for people that the choices give. */
export function placesInWords(text, choices = []) {
  const places = readPlaces(text);
  if (places.size === 0) return text ? String(text) : "nothing moved";
  return [...places].map(([name, millimetres]) => `${titleOf(name, choices)} to ${inMillimetres(millimetres)}`).join(", ");
}

/** "−160 mm". */
export function inMillimetres(millimetres) {
  return `${String(rounded(millimetres)).replace("-", "\u2212")}\u00a0mm`;
}

const rounded = millimetres => Math.round(millimetres * 10) / 10 + 0;
const titleOf = (name, choices) => choices.find(choice => choice.value === name)?.title || name;

/**
 * The list of what is moved. `changed(event, isSettled)` tells of every change by the reader. A choice: {value, title, least,
 * greatest, at} in millimetres. Members: element, value (a text, get and set), useChoices(choices), move(name, millimetres),
 * has(name), at(name).
 */
export class PlacesList {
  #places = new Map();
  #open = new Set();
  #choices = [];
  #rows = new Map();

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

  has(name) { return this.#choices.some(choice => choice.value === name); }

  choice(name) { return this.#choices.find(choice => choice.value === name); }

  /** Where the reader has it, or else where the scenario has it; null for what can't be moved. */
  at(name) { return this.#places.get(name) ?? this.#choices.find(choice => choice.value === name)?.at ?? null; }

  useChoices(choices) {
    if (JSON.stringify(choices) === JSON.stringify(this.#choices)) return;
    this.#choices = choices;
    this.#show();
  }

  move(name, millimetres) {
    this.#places.set(name, millimetres);
    this.#show();
  }

  #isOwn(name, millimetres) {
    const choice = this.#choices.find(candidate => candidate.value === name);
    return choice !== undefined && Math.abs(choice.at - millimetres) < 0.05;
  }

  #putBack(name, event) {
    const at = [...this.#rows.keys()].indexOf(name);
    this.#places.delete(name);
    this.#open.delete(name);
    this.#show();
    // The focus goes to what comes into the place of the row that is gone.
    ([...this.#rows.values()][Math.max(0, Math.min(at, this.#rows.size - 1))]?.field ?? this.more).focus({ preventScroll: true });
    this.changed(event, true);
  }

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
      for (const [key, bound] of [["min", choice?.least], ["max", choice?.greatest]])
        if (bound === undefined) row.field.removeAttribute(key); else row.field.setAttribute(key, rounded(bound));
      if (document.activeElement !== row.field || row.field.value === "")
        row.field.value = millimetres === "" ? "" : rounded(millimetres);
      else if (Number(row.field.value) !== rounded(millimetres) && !row.isTyping) row.field.value = rounded(millimetres);
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

  #row(name) {
    const row = { isTyping: false };
    row.name = el("span", { class: "moved-name" });
    row.range = el("span", { class: "moved-range" });
    row.field = el("input", { type: "number", step: "1", inputmode: "decimal",
      "aria-label": `${titleOf(name, this.#choices)}, mm forward on its mount` });
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
    row.element = el("li", {}, row.name, el("span", { class: "moved-place" }, row.field, el("span", { class: "unit" }, "mm")),
      el("button", { type: "button", class: "quiet", "aria-label": `Put back: ${titleOf(name, this.#choices)}`,
        onclick: event => this.#putBack(name, event) }, "Put back"), row.range);
    return row;
  }
}
