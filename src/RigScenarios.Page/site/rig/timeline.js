// A day as a strip: each block as wide as it is long. Edges are moved with the pointer or the arrow keys; blocks are chosen
// with a click or the arrow keys. Knows nothing of the rig: it shows what it is given and tells what was done.
import { el } from "../shared/parts.js";
import { clockOf, lengthText } from "./words.js";

const step = 5, spare = 0.05;

export const stateWords = { record: "recording", standby: "standby", off: "off", mixed: "each device its own" };

export class Timeline {
  #blocks = [];
  #drag = null;

  // told: {selected(name), resized({name: minutes, …})}
  constructor(told) {
    this.told = told;
    this.strip = el("ol",
      { class: "strip", "aria-label": "The day's blocks. Left and right arrow keys go from block to block." });
    this.hours = el("div", { class: "strip-hours", "aria-hidden": "true" });
    this.element = el("div", { class: "strip-scroll" }, el("div", { class: "strip-inner" }, this.strip, this.hours));
    this.strip.addEventListener("keydown", (event) => this.#key(event));
  }

  // blocks: [{name, title, minutes, state, wrong}]
  show(blocks, starts, selected) {
    Object.assign(this, { starts, selected });
    this.element.hidden = blocks.length === 0;
    this.#blocks = blocks;
    const total = Math.max(30, blocks.reduce((sum, block) => sum + Math.max(1, block.minutes), 0));
    if (!this.#drag) this.span = total * (1 + spare);
    this.element.firstElementChild.style.minWidth = `${Math.round(this.span / 60 * 2.5)}rem`;
    while (this.strip.children.length > blocks.length) this.strip.lastElementChild.remove();
    let from = 0;
    blocks.forEach((block, at) => {
      const item = this.strip.children[at] ?? this.strip.appendChild(this.#item(at));
      this.#showBlock(item, block, at, from);
      from += block.minutes;
    });
    this.#showHours(total);
  }

  focus(name) { this.strip.children[this.#blocks.findIndex((block) => block.name === name)]?.querySelector(".block").focus(); }

  #item(at) {
    const block = el("button", { type: "button", class: "block", onclick: () => this.told.selected(this.#blocks[at].name) },
      el("span", { class: "block-title" }), " ", el("span", { class: "block-length" }));
    const edge = el("span", { class: "edge", role: "slider", "aria-orientation": "horizontal", "aria-valuemin": step });
    edge.addEventListener("pointerdown", (event) => this.#grab(event, at, edge));
    edge.addEventListener("keydown", (event) => this.#edgeKey(event, at));
    return el("li", { class: "strip-item" }, block, edge);
  }

  #showBlock(item, block, at, from) {
    const isSelected = block.name === this.selected, last = at === this.#blocks.length - 1;
    item.style.width = `${Math.max(1, block.minutes) / this.span * 100}%`;
    item.dataset.state = block.state;
    item.classList.toggle("strip-selected", isSelected);
    item.classList.toggle("strip-wrong", block.wrong);
    const [button, edge] = item.children;
    const until = clockOf(this.starts, from + block.minutes), words = `${lengthText(block.minutes)}, ${stateWords[block.state]}`;
    button.children[0].textContent = block.title;
    button.children[1].textContent = lengthText(block.minutes);
    button.title = `${block.title}: ${clockOf(this.starts, from)} to ${until}, ${words}`;
    // What is written on it comes first, as it stands there.
    button.setAttribute("aria-label",
      `${block.title} ${words}, ${clockOf(this.starts, from)} to ${until}${block.wrong ? ", has a problem" : ""}`);
    button.setAttribute("aria-pressed", String(isSelected));
    button.tabIndex = isSelected ? 0 : -1;
    edge.tabIndex = isSelected ? 0 : -1;
    edge.setAttribute("aria-label", last ? `End of the day, end of ${block.title}`
      : `Edge between ${block.title} and ${this.#blocks[at + 1].title}`);
    edge.setAttribute("aria-valuenow", String(Math.round(block.minutes)));
    edge.setAttribute("aria-valuemax", String(Math.round(last ? 2880 : block.minutes + this.#blocks[at + 1].minutes - step)));
    edge.setAttribute("aria-valuetext", `${until}, ${lengthText(block.minutes)}`);
  }

  #showHours(total) {
    const every = total > 1080 ? 180 : total > 480 ? 120 : total > 180 ? 60 : 30;
    const offset = /^\d{1,2}:\d{2}$/.test(this.starts ?? "")
      ? Number(this.starts.split(":")[0]) * 60 + Number(this.starts.split(":")[1]) : 0;
    const marks = [];
    for (let minute = Math.ceil(offset / every) * every - offset; minute <= total; minute += every)
      marks.push(el("span", { style: `left: ${minute / this.span * 100}%` }, clockOf(this.starts, minute)));
    this.hours.replaceChildren(...marks);
  }

  // The edge between two blocks gives the one what it takes from the other; the last edge makes the day longer or shorter.
  #move(at, before, minutes) {
    const block = before[at], next = before[at + 1];
    let wanted = Math.max(Math.min(step, block.minutes), minutes);
    if (!next) return { [block.name]: Math.min(2880, wanted) };
    const both = block.minutes + next.minutes;
    wanted = Math.min(wanted, both - Math.min(step, next.minutes));
    return { [block.name]: wanted, [next.name]: both - wanted };
  }

  #grab(event, at, edge) {
    if (event.button !== 0) return;
    event.preventDefault();
    edge.setPointerCapture(event.pointerId);
    this.told.selected(this.#blocks[at].name);
    const before = this.#blocks.map((block) => ({ ...block }));
    const minutesPerDot = this.span / this.strip.clientWidth;
    this.#drag = { from: event.clientX };
    const move = (moved) => {
      const minutes = before[at].minutes + (moved.clientX - event.clientX) * minutesPerDot;
      this.told.resized(this.#move(at, before, Math.max(step, Math.round(minutes / step) * step)));
    };
    const end = () => {
      this.#drag = null;
      edge.removeEventListener("pointermove", move);
      edge.removeEventListener("pointerup", end);
      edge.removeEventListener("pointercancel", end);
      this.show(this.#blocks, this.starts, this.selected);
    };
    edge.addEventListener("pointermove", move);
    edge.addEventListener("pointerup", end);
    edge.addEventListener("pointercancel", end);
  }

  #edgeKey(event, at) {
    const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 30, PageDown: -30 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const change = Math.abs(by) === 30 ? by : by * (event.shiftKey ? 1 : step);
    this.told.resized(this.#move(at, this.#blocks, this.#blocks[at].minutes + change));
  }

  #key(event) {
    if (!event.target.classList.contains("block")) return;
    const at = this.#blocks.findIndex((block) => block.name === this.selected), last = this.#blocks.length - 1;
    const to = { ArrowRight: Math.min(last, at + 1), ArrowLeft: Math.max(0, at - 1), Home: 0, End: last }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    this.told.selected(this.#blocks[to].name);
    this.focus(this.#blocks[to].name);
  }
}
