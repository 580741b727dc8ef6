// Moving parts in a drawing, with a pointer or with the keyboard. What is moved follows at once; the program's drawing of it
// comes after.
import { around } from "./elements.js";
import { inMillimetres } from "./places.js";

/**
 * `allows`: whether this part (a `g.rs-move`) may be moved here. `move` is told where the reader wants it; `at` is when the
 * reader did it.
 * @typedef {{ allows: (part: HTMLElement) => boolean,
 *   move: (part: HTMLElement, millimetres: number, at: number, isSettled: boolean) => void }} MovingSettings
 */

/**
 * A part in the reader's hand: where it was, where it is, and how many metres along its mount a pixel of the pointer is.
 * @typedef {{ sheet: HTMLElement, part: HTMLElement, pointer: number, x: number, y: number, from: number, value: number,
 *   unit: [number, number] }} Drag
 */

/**
 * Lets the reader move parts in the drawings within `root`. Members: arm(), settled().
 * @param {HTMLElement} root
 * @param {MovingSettings} settings
 */
export function makeMoving(root, settings) { return new Moving(root, settings); }

class Moving {
  /** Where parts are wanted that the drawings may not show yet. @type {Map<string, number>} */
  #wanted = new Map();
  /** @type {Drag | null} */
  #drag = null;
  /** The part that the keyboard is at, and where it was when the keyboard came. @type {{ name: string, from: number } | null} */
  #held = null;

  /** @param {HTMLElement} root @param {MovingSettings} settings */
  constructor(root, { allows, move }) {
    this.root = root;
    this.allows = allows;
    this.move = move;
    root.addEventListener("pointerdown", event => this.#take(event));
    root.addEventListener("pointermove", event => this.#pull(event));
    for (const kind of ["pointerup", "pointercancel", "lostpointercapture"])
      root.addEventListener(kind, event => this.#drop(event));
    addEventListener("keydown", event => {
      if (event.key !== "Escape" || !this.#drag) return;
      event.preventDefault();
      this.#drop(event, true);
    }, true);
    root.addEventListener("keydown", event => this.#keyDown(event));
    root.addEventListener("keyup", event => this.#keyUp(event));
    addEventListener("focusin", event => this.#focused(event));
    root.addEventListener("rs-drawn", event => this.#drawn(/** @type {HTMLElement} */ (event.target)));
  }

  /** Makes the parts of the drawings that came since ready to be moved. */
  arm() {
    for (const sheet of this.root.querySelectorAll(".rs-sheet")) this.#armSheet(sheet);
  }

  /** What the program drew is now all that is wanted, unless the reader still holds a part. */
  settled() {
    if (this.#drag || this.#wanted.size === 0) return;
    this.#wanted.clear();
    this.#showAll();
  }

  /** Where a part is wanted, or else stands, in millimetres. @param {HTMLElement} part */
  #at(part) { return this.#wanted.get(nameOf(part)) ?? Number(part.dataset.at) * 1000; }

  /** @param {HTMLElement} sheet */
  #armSheet(sheet) {
    for (const part of sheet.querySelectorAll(".rs-move:not(.rs-can-move)")) {
      if (!this.allows(part)) continue;
      const [least, greatest] = endsOf(part);
      part.classList.add("rs-can-move");
      // One stop for the Tab key a part; the view from above moves with the same keys when it is clicked.
      const isSide = part.closest("[data-view]")?.dataset.view === "side";
      for (const [name, value] of Object.entries({ tabindex: isSide ? 0 : -1, role: "slider", "aria-valuemin": round(least),
        "aria-valuemax": round(greatest), "aria-label": `${part.dataset.words}: how far forward on its mount` }))
        part.setAttribute(name, String(value));
      part.ownerSVGElement?.setAttribute("role", "group");
    }
    this.#show(sheet);
  }

  #showAll() {
    for (const sheet of this.root.querySelectorAll(".rs-sheet")) if (sheet.querySelector(".rs-can-move")) this.#show(sheet);
  }

  /**
   * Shifts what is moved, and all that hangs on it, from where it was drawn to where it is wanted.
   * @param {HTMLElement} sheet
   */
  #show(sheet) {
    for (const view of sheet.querySelectorAll("[data-view]")) {
      const parts = new Map([...view.querySelectorAll(".rs-part")].map(part => [nameOf(part), part]));
      for (const element of view.querySelectorAll(".rs-part, .rs-label, .rs-rail")) {
        // A part's own rail stays where it is; only with what carries the part it goes along.
        const { part, label, rail } = element.dataset;
        const [x, y] = this.#shiftOf(part ?? label ?? parts.get(rail ?? "")?.dataset.on, parts);
        if (Math.abs(x) + Math.abs(y) > 0.01) element.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
        else element.removeAttribute("transform");
      }
      for (const part of parts.values()) {
        if (!part.classList.contains("rs-can-move")) continue;
        part.setAttribute("aria-valuenow", String(round(this.#at(part))));
        part.setAttribute("aria-valuetext", inMillimetres(this.#at(part)).replace("\u2212", "minus "));
      }
    }
  }

  /**
   * How far a part is shifted in the drawing, by itself and by what it hangs on.
   * @param {string | undefined} name
   * @param {Map<string, HTMLElement>} parts
   */
  #shiftOf(name, parts) {
    let x = 0, y = 0, next = parts.get(name ?? "");
    for (let steps = 0; next && steps < parts.size; next = parts.get(next.dataset.on ?? ""), steps++) {
      const wanted = this.#wanted.get(nameOf(next));
      if (!next.dataset.move || wanted === undefined) continue;
      const [dx, dy] = vectorOf(next), metres = wanted / 1000 - Number(next.dataset.at);
      x += dx * metres;
      y += dy * metres;
    }
    return [x, y];
  }

  /** @param {HTMLElement} part @param {number} millimetres @param {Event} event @param {boolean} isSettled */
  #want(part, millimetres, event, isSettled) {
    this.#wanted.set(nameOf(part), millimetres);
    this.#showAll();
    this.move(part, millimetres, timeOf(event), isSettled);
  }

  /** @param {PointerEvent} event */
  #take(event) {
    const part = around(event, ".rs-can-move");
    if (!part || this.#drag || event.button !== 0 || !event.isPrimary) return;
    const [x, y] = vectorOf(part), scale = part.ownerSVGElement?.getScreenCTM()?.a, sheet = part.closest(".rs-sheet");
    if (!sheet || !scale || x * x + y * y < 1) return;
    // The sheet stays when its drawing is renewed under the pointer; the part does not.
    sheet.setPointerCapture(event.pointerId);
    event.preventDefault();
    part.focus({ preventScroll: true });
    this.#drag = { sheet, part, pointer: event.pointerId, x: event.clientX, y: event.clientY, from: this.#at(part),
      value: this.#at(part), unit: [x / (scale * (x * x + y * y)), y / (scale * (x * x + y * y))] };
    sheet.classList.add("rs-moving");
  }

  /** @param {PointerEvent} event */
  #pull(event) {
    const drag = this.#drag;
    if (drag?.pointer !== event.pointerId || !drag) return;
    const metres = (event.clientX - drag.x) * drag.unit[0] + (event.clientY - drag.y) * drag.unit[1];
    const value = Math.abs(metres) < 1e-9 ? drag.from : within(drag.part, drag.from + metres * 1000);
    if (value === drag.value) return;
    drag.value = value;
    this.#want(drag.part, value, event, false);
  }

  /** @param {Event} event @param {boolean} [isPutBack] */
  #drop(event, isPutBack = false) {
    if (!this.#drag || (event instanceof PointerEvent && this.#drag.pointer !== event.pointerId)) return;
    const { sheet, part, pointer, from, value } = this.#drag;
    this.#drag = null;
    sheet.classList.remove("rs-moving");
    if (sheet.hasPointerCapture(pointer)) sheet.releasePointerCapture(pointer);
    if (isPutBack ? value !== from : this.#wanted.has(nameOf(part))) this.#want(part, isPutBack ? from : value, event, true);
  }

  /** @param {KeyboardEvent} event */
  #keyDown(event) {
    const part = around(event, ".rs-can-move");
    if (!part || this.#drag || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const [least, greatest] = endsOf(part), at = this.#at(part), step = event.shiftKey ? 10 : 1;
    const held = this.#held?.name === nameOf(part) ? this.#held.from : at;
    const to = keyedTo(event.key, { at, step, least, greatest, held });
    if (to === null) return;
    event.preventDefault();
    const value = event.key === "Escape" ? to : within(part, to);
    if (value !== at) this.#want(part, value, event, event.key === "Escape");
  }

  /** Letting go of the key is the end of the move, as letting go of a slider is. @param {KeyboardEvent} event */
  #keyUp(event) {
    const part = around(event, ".rs-can-move");
    if (part && !this.#drag && this.#wanted.has(nameOf(part)) && /^(Arrow|Page|Home|End)/.test(event.key))
      this.#want(part, this.#at(part), event, true);
  }

  // Escape goes back to where the part was when the keyboard came to it. A renewed drawing gives the focus back to the same part.
  /** @param {FocusEvent} event */
  #focused(event) {
    const part = around(event, ".rs-can-move");
    if (!part) this.#held = null;
    else if (this.#held?.name !== nameOf(part)) this.#held = { name: nameOf(part), from: this.#at(part) };
  }

  /** A drawing was renewed: before it is seen it is put to where the reader has it now. @param {HTMLElement} sheet */
  #drawn(sheet) {
    this.#armSheet(sheet);
    const drag = this.#drag;
    if (drag?.sheet !== sheet || !drag) return;
    const view = drag.part.closest("[data-view]")?.dataset.view, name = nameOf(drag.part);
    drag.part = [...sheet.querySelectorAll(`[data-view="${view}"] .rs-can-move`)]
      .find(part => nameOf(part) === name && part.getClientRects().length > 0) ?? drag.part;
  }
}

/**
 * Where a key takes a part, in millimetres; null for a key that moves nothing.
 * @param {string} key
 * @param {{ at: number, step: number, least: number, greatest: number, held: number }} now
 */
export function keyedTo(key, { at, step, least, greatest, held }) {
  switch (key) {
    case "ArrowRight": case "ArrowUp": return at + step;
    case "ArrowLeft": case "ArrowDown": return at - step;
    case "PageUp": return at + 10;
    case "PageDown": return at - 10;
    case "Home": return least;
    case "End": return greatest;
    case "Escape": return held;
    default: return null;
  }
}

/** @param {HTMLElement} part */
const nameOf = part => part.dataset.part ?? "";

/** @param {HTMLElement} part @returns {[least: number, greatest: number]} in millimetres */
const endsOf = part => [Number(part.dataset.least) * 1000, Number(part.dataset.greatest) * 1000];

/** How far a metre on the mount is in the drawing. @param {HTMLElement} part */
const vectorOf = part => (part.dataset.move ?? "0,0").split(",").map(Number);

/** Whole millimetres, but the ends as they are. @param {HTMLElement} part @param {number} millimetres */
function within(part, millimetres) {
  const [least, greatest] = endsOf(part);
  return Math.min(greatest, Math.max(least, Math.round(millimetres)));
}

/** When the reader did it; never more than a second ago. @param {Event} event */
const timeOf = event => performance.now() - Math.max(0, Math.min(1000, performance.now() - event.timeStamp));

/** @param {number} millimetres */
const round = millimetres => Math.round(millimetres * 10) / 10;
