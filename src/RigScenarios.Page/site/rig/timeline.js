// A day as a strip: each block as wide as it is long. Edges are moved with the pointer or the arrow keys; blocks are chosen
// with a click or the arrow keys. Knows nothing of the rig: it shows what it is given and tells what was done.
import { el } from "../shared/parts.js";
import { edgeMoved, hourMarks } from "./blocks.js";
import { clockOf, lengthText, longestBlock } from "./words.js";

/** @typedef {{ name: string, title: string, minutes: number, state: string, wrong: boolean }} Shown */

// However long a day is, it is drawn no wider than so many hours.
const step = 5, spare = 0.05, widest = 96;

/** @type {{ [state: string]: string }} */
const stateWords = { record: "recording", standby: "standby", off: "off", mixed: "each device its own" };

export class Timeline {
  /** @type {Shown[]} */
  #blocks = [];
  #isHeld = false;

  /** @param {{ selected: (name: string) => void, resized: (minutes: { [name: string]: number }, edge: string) => void }} told */
  constructor(told) {
    this.told = told;
    this.strip = el("ol",
      { class: "strip", "aria-label": "The day's blocks. Left and right arrow keys go from block to block." });
    this.hours = el("div", { class: "strip-hours", "aria-hidden": "true" });
    this.inner = el("div", { class: "strip-inner" }, this.strip, this.hours);
    this.element = el("div", { class: "strip-scroll" }, this.inner);
    this.span = 60;
    this.starts = "";
    /** @type {string | null} */
    this.selected = null;
    this.strip.addEventListener("keydown", (event) => this.#key(event));
  }

  /** @param {Shown[]} blocks @param {string} starts @param {string | null} selected */
  show(blocks, starts, selected) {
    this.starts = starts;
    this.selected = selected;
    this.element.hidden = blocks.length === 0;
    this.#blocks = blocks;
    const total = Math.max(30, blocks.reduce((sum, block) => sum + Math.max(1, block.minutes), 0));
    if (!this.#isHeld) this.span = total * (1 + spare);
    this.inner.style.setProperty("--hours", String(Math.min(widest, Math.round(this.span / 6) / 10)));
    while (this.strip.children.length > blocks.length) this.strip.lastElementChild?.remove();
    let from = 0;
    blocks.forEach((block, at) => {
      const item = this.strip.children[at] ?? this.strip.appendChild(this.#makeItem(at));
      this.#showBlock(item, block, from);
      this.#showEdge(item.lastElementChild, at, from + block.minutes);
      from += block.minutes;
    });
    this.#showHours(total);
  }

  /** @param {string | null} name */
  focus(name) { this.#item(name)?.querySelector(".block")?.focus(); }

  /** Pushes the strip aside until a block is seen; the page stays where it is. @param {string} name */
  bringIntoSight(name) {
    const item = this.#item(name);
    if (!item) return;
    const { left, right } = item.getBoundingClientRect(), box = this.element.getBoundingClientRect();
    if (left < box.left) this.element.scrollLeft += left - box.left - 8;
    else if (right > box.right) this.element.scrollLeft += right - box.right + 8;
  }

  /** @param {string | null} name @returns {any} */
  #item(name) { return this.strip.children[this.#blocks.findIndex((block) => block.name === name)]; }

  /** @param {number} at */
  #makeItem(at) {
    const block = el("button", { type: "button", class: "block", onclick: () => this.told.selected(this.#blocks[at].name) },
      el("span", { class: "block-title" }), " ", el("span", { class: "block-length" }));
    const edge = el("span", { class: "edge", role: "slider", "aria-orientation": "horizontal", "aria-valuemin": step });
    edge.addEventListener("pointerdown", (event) => this.#grab(event, at, edge));
    edge.addEventListener("keydown", (event) => this.#edgeKey(event, at));
    return el("li", { class: "strip-item" }, block, edge);
  }

  /** @param {any} item @param {Shown} block @param {number} from */
  #showBlock(item, block, from) {
    const isSelected = block.name === this.selected, button = item.firstElementChild;
    item.style.width = `${Math.max(1, block.minutes) / this.span * 100}%`;
    item.dataset.state = block.state;
    item.classList.toggle("strip-selected", isSelected);
    item.classList.toggle("strip-wrong", block.wrong);
    const when = `${clockOf(this.starts, from)} to ${clockOf(this.starts, from + block.minutes)}`;
    const length = block.minutes > 0 ? lengthText(block.minutes) : "?", words = `${length}, ${stateWords[block.state]}`;
    button.children[0].textContent = block.title;
    button.children[1].textContent = length;
    button.title = `${block.title}: ${when}, ${words}`;
    // What is written on it comes first, as it stands there.
    button.setAttribute("aria-label", `${block.title} ${words}, ${when}${block.wrong ? ", has a problem" : ""}`);
    button.setAttribute("aria-pressed", String(isSelected));
    button.tabIndex = isSelected ? 0 : -1;
  }

  /** @param {any} edge @param {number} at @param {number} end minutes after the day's start */
  #showEdge(edge, at, end) {
    const block = this.#blocks[at], next = this.#blocks[at + 1];
    edge.tabIndex = block.name === this.selected ? 0 : -1;
    edge.setAttribute("aria-label", next ? `Edge between ${block.title} and ${next.title}`
      : `End of the day, end of ${block.title}`);
    edge.setAttribute("aria-valuenow", String(Math.round(block.minutes)));
    edge.setAttribute("aria-valuemax", String(Math.round(next ? block.minutes + next.minutes - step : longestBlock)));
    edge.setAttribute("aria-valuetext", `${clockOf(this.starts, end)}, ${lengthText(block.minutes)}`);
  }

  // The last mark would be cut off where it has no room to its right: it stands to the left of its line then.
  /** @param {number} total */
  #showHours(total) {
    const clock = /^(\d{1,2}):(\d{2})$/.exec(this.starts ?? "");
    const offset = clock ? Number(clock[1]) * 60 + Number(clock[2]) : 0;
    this.hours.replaceChildren(...hourMarks(total, offset).map((minute) => el("span",
      { style: `left: ${minute / this.span * 100}%`, class: minute / this.span > 0.93 ? "hour-last" : null },
      clockOf(this.starts, minute))));
  }

  /** @param {PointerEvent} event @param {number} at @param {HTMLElement} edge */
  #grab(event, at, edge) {
    if (event.button !== 0) return;
    event.preventDefault();
    edge.setPointerCapture(event.pointerId);
    edge.classList.add("edge-held");
    const before = this.#blocks.map((block) => ({ ...block })), { name } = before[at];
    this.told.selected(name);
    const minutesPerDot = this.span / this.strip.clientWidth;
    this.#isHeld = true;
    const move = (/** @type {PointerEvent} */ now) => {
      const minutes = before[at].minutes + (now.clientX - event.clientX) * minutesPerDot;
      this.told.resized(edgeMoved(before, at, Math.max(step, Math.round(minutes / step) * step), step), name);
    };
    const end = () => {
      this.#isHeld = false;
      edge.classList.remove("edge-held");
      edge.removeEventListener("pointermove", move);
      for (const kind of ["pointerup", "pointercancel"]) edge.removeEventListener(kind, end);
      this.show(this.#blocks, this.starts, this.selected);
    };
    edge.addEventListener("pointermove", move);
    for (const kind of ["pointerup", "pointercancel"]) edge.addEventListener(kind, end);
  }

  /** @param {KeyboardEvent} event @param {number} at */
  #edgeKey(event, at) {
    /** @type {{ [key: string]: number }} */
    const steps = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 30, PageDown: -30 };
    const by = steps[event.key];
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const change = Math.abs(by) === 30 ? by : by * (event.shiftKey ? 1 : step), block = this.#blocks[at];
    this.told.resized(edgeMoved(this.#blocks, at, block.minutes + change, step), block.name);
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    if (!(/** @type {HTMLElement} */ (event.target)).classList.contains("block")) return;
    const at = this.#blocks.findIndex((block) => block.name === this.selected), last = this.#blocks.length - 1;
    /** @type {{ [key: string]: number }} */
    const goals = { ArrowRight: Math.min(last, at + 1), ArrowLeft: Math.max(0, at - 1), Home: 0, End: last };
    const to = goals[event.key];
    if (to === undefined) return;
    event.preventDefault();
    this.told.selected(this.#blocks[to].name);
    this.focus(this.#blocks[to].name);
  }
}
