// Where things sit: proposed by the server, moved in the drawing, with a slider or by a number. What was moved is part of the
// rig: each is a path of the build, such as "builds.rig.places.plate.forward".
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { makeMoving } from "../shared/moving.js";
import { inMillimetres } from "../shared/places.js";
import { Field } from "./field.js";
import { numberIn } from "./words.js";
import { without } from "./tree.js";

/** @typedef {{ value: string, title: string, least: number, greatest: number, at: number, isUsual: boolean }} Moveable */

const nothingSlides = "Nothing on this rig slides along a mount, so there is nothing to move. With rods under the camera, what "
  + "sits on them slides: choose them at “Everything else on the rig”.";

export class Places {
  /** @type {Map<string, Moveable>} */
  #moveable = new Map();
  /** @type {Map<string, { field: Field, element: HTMLElement, range: HTMLElement }>} */
  #rows = new Map();
  /** @type {string | null} */
  #slide = null;
  /** The move that is asked for next. @type {{ name: string, text: string } | null} */
  #wanted = null;

  /**
   * @param {import("./state.js").Rig} rig
   * @param {import("./fields.js").Fields} fields
   * @param {import("./answer.js").Answer} answer
   */
  constructor(rig, fields, answer) {
    this.rig = rig;
    this.fields = fields;
    this.some = byId("places-some");
    this.none = byId("places-none");
    this.battery = byId("battery-place");
    this.told = byId("battery-place-told");
    this.plate = byId("head-plate");
    this.list = byId("places-list");
    this.slider = byId("battery-place-slider", HTMLInputElement);
    this.moving = makeMoving(byId("answer-parts"), {
      allows: (part) => this.#moveable.has(part.dataset.part ?? ""),
      move: (part, millimetres) => this.#move(part.dataset.part ?? "", millimetres),
    });
    this.slider.addEventListener("input", () => this.#move(this.#slide ?? "", Number(this.slider.value)));
    rig.onChanged(() => {
      this.#showBattery();
      // Where the camera plate is screwed on matters on a head only.
      this.plate.hidden = rig.text(`builds.${rig.place.build}.stance`) !== "tripod"
        || !rig.view.things.some((thing) => thing.question === "head");
    });
    // With the drawing: what is held in it stays where the reader has it until the new one is there.
    answer.onDrawn((detail) => this.#answered(detail, answer));
    rig.onRefused(() => this.moving.settled());
  }

  /** @param {string} name */
  #path(name) { return `builds.${this.rig.place.build}.places.${name}.forward`; }

  // Where it was when the rig was opened is where it is put back to: then the file says again what it said. The first move of a
  // thing is asked for, because the places of the others are written down with it; after that it is a field like any other.
  /** @param {string} name @param {number} millimetres */
  #move(name, millimetres) {
    const path = this.#path(name), title = this.#moveable.get(name)?.title ?? name, opened = this.rig.openedText(path);
    const text = numberIn(opened, "mm") === rounded(millimetres) ? opened : `${rounded(millimetres)} mm`;
    const doing = { name: `place: ${title}`, key: `place ${name}` };
    if (this.rig.has(path)) { this.rig.set(path, text, doing); return; }
    const isAsked = this.#wanted !== null;
    this.#wanted = { name, text };
    if (!isAsked) this.#ask(doing);
  }

  // Of the moves during one question only the newest is asked for next.
  /** @param {{ name: string, key: string }} doing */
  async #ask(doing) {
    while (this.#wanted) {
      const { name, text } = this.#wanted;
      await this.rig.edit({ do: "move", thing: name, forward: text }, doing);
      const { name: next, text: newest } = this.#wanted;
      const isDone = next === name && newest === text;
      this.#wanted = isDone || this.rig.has(this.#path(next)) ? null : this.#wanted;
      if (!isDone && this.#wanted === null) this.rig.set(this.#path(next), newest, doing);
    }
  }

  // A thing that had no place when the rig was opened gets the usual one again.
  /** @param {string} name */
  #putBack(name) {
    const path = this.#path(name), opened = this.rig.openedText(path);
    const doing = { name: `place: ${this.#moveable.get(name)?.title ?? name}` };
    if (opened) this.rig.set(path, opened, doing);
    else this.rig.change((given) => without(given, path.slice(0, path.lastIndexOf("."))), doing);
  }

  /**
   * @param {{ moveable: Moveable[], batterySlide: string | null, first?: unknown }} answer
   * @param {import("./answer.js").Answer} asked
   */
  #answered({ moveable, batterySlide, first }, asked) {
    this.#moveable = new Map(moveable.map((part) => [part.value, part]));
    this.#slide = batterySlide;
    this.some.hidden = moveable.length === 0;
    this.none.hidden = moveable.length > 0;
    if (first) this.none.textContent = nothingSlides;
    for (const [name, row] of this.#rows) if (!this.#moveable.has(name)) {
      this.fields.drop(row.field);
      row.element.remove();
      this.#rows.delete(name);
    }
    for (const part of moveable) this.#showRow(part);
    this.#showBattery();
    this.moving.arm();
    if (!asked.isBehind) this.moving.settled();
  }

  /** @param {Moveable} part */
  #showRow(part) {
    const row = this.#rows.get(part.value) ?? this.#row(part);
    this.#rows.set(part.value, row);
    row.field.path = this.#path(part.value);
    row.field.input.placeholder = `${inMillimetres(part.at)}${part.isUsual ? " (usual)" : ""}`;
    row.range.textContent = `from ${inMillimetres(part.least)} to ${inMillimetres(part.greatest)}`;
    row.field.show();
  }

  /** @param {Moveable} part */
  #row(part) {
    const field = new Field(this.rig, { key: `place-${part.value}`, label: part.title, unit: "mm", path: "" }, {
      read: () => this.rig.text(this.#path(part.value)),
      write: (text) => {
        const millimetres = numberIn(text, "mm"), path = this.#path(part.value);
        if (this.rig.has(path)) this.rig.set(path, text, { name: `place: ${part.title}`, key: `text ${path}`, isQuick: false });
        else if (millimetres !== null) this.#move(part.value, millimetres);
      },
    });
    const range = el("span", { class: "place-range" });
    const back = el("button", { type: "button", class: "quiet", "aria-label": `Put back: ${part.title}`,
      onclick: () => this.#putBack(part.value) }, "Put back");
    const element = el("div", { class: "place-row" }, field.element, back, range);
    this.list.append(element);
    this.fields.add(field);
    return { field, element, range };
  }

  #showBattery() {
    const choice = this.#slide === null ? undefined : this.#moveable.get(this.#slide);
    this.battery.hidden = !choice;
    if (!choice) return;
    const at = numberIn(this.rig.text(this.#path(choice.value)), "mm") ?? choice.at;
    Object.assign(this.slider, { min: Math.ceil(choice.least), max: Math.floor(choice.greatest) });
    if (document.activeElement !== this.slider || Math.abs(Number(this.slider.value) - at) > 1) this.slider.value = String(at);
    this.slider.setAttribute("aria-valuetext", inMillimetres(at).replace("\u2212", "minus "));
    this.told.textContent = `${choice.title}: ${inMillimetres(at)}`;
  }
}

/** @param {number} millimetres */
function rounded(millimetres) { return Math.round(millimetres * 10) / 10 + 0; }
