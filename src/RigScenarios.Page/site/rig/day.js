// What the day looks like: one of the typical days to begin with, then edited block by block on the timeline.
import { el } from "../shared/parts.js";
import { say } from "../shared/tell.js";
import { BlockEditor } from "./block.js";
import { asClock, clockOf, freeName, lengthText, minutesOf } from "./words.js";
import { renamed } from "./draft.js";
import { stateOfAll } from "./states.js";
import { Timeline } from "./timeline.js";

export class Day {
  #selected = null;
  #wrong = new Set();
  #before = null;

  constructor(draft, knowledge, titleOf) {
    Object.assign(this, { draft, knowledge });
    const byId = (id) => document.getElementById(id);
    this.typical = byId("typical-days");
    this.title = byId("day-title");
    this.starts = byId("day-starts");
    this.sum = byId("day-sum");
    this.back = byId("day-back");
    this.timeline = new Timeline({
      selected: (name) => { this.#selected = name; this.show(); },
      resized: (minutes) => draft.change((value) => {
        for (const [name, length] of Object.entries(minutes)) value.blocks[name].length = lengthText(length);
      }),
    });
    byId("timeline").append(this.timeline.element);
    this.editor = new BlockEditor(byId("block-editor"), draft, titleOf, {
      move: (by) => this.#move(by), add: () => this.#add(), remove: () => this.#remove(),
    });
    this.typical.append(...knowledge.days.map((day) =>
      el("button", { type: "button", class: "typical", onclick: () => this.#take(day) },
      el("span", { class: "typical-title" }, day.title), el("span", { class: "typical-sentence" }, day.sentence))));
    this.title.addEventListener("input", () => draft.set("day-title", this.title.value.trim(), false));
    this.starts.addEventListener("input", () => draft.set("starts", asClock(this.starts.value), false));
    this.starts.addEventListener("change", () => { this.starts.value = asClock(this.starts.value); });
    this.back.addEventListener("click", () => {
      const before = this.#before;
      this.#before = null;
      draft.change((value) => Object.assign(value, before));
      this.timeline.focus(this.#selected);
    });
    draft.addEventListener("opened", () => { this.#before = null; this.#selected = null; });
    draft.addEventListener("changed", () => this.show());
  }

  // Blocks with a problem are marked on the strip, because only one of them is open in the editor.
  showProblems(problems) {
    this.#wrong = new Set(problems.filter((problem) => problem.path?.startsWith("blocks."))
      .map((problem) => problem.path.split(".")[1]));
    this.show();
  }

  show() {
    const { blocks, starts } = this.draft.value, names = Object.keys(blocks);
    if (!names.includes(this.#selected)) this.#selected = names[0] ?? null;
    this.timeline.show(names.map((name) => ({
      name, title: blocks[name].title || name, minutes: minutesOf(blocks[name].length) ?? 0,
      state: stateOfAll(this.draft.value, blocks[name]), wrong: this.#wrong.has(name),
    })), starts, this.#selected);
    if (document.activeElement !== this.title) this.title.value = this.draft.value["day-title"] ?? "";
    if (document.activeElement !== this.starts) this.starts.value = starts ?? "";
    const total = names.reduce((sum, name) => sum + (minutesOf(blocks[name].length) ?? 0), 0);
    const counted = names.length === 1 ? "1 block" : `${names.length} blocks`;
    const until = starts ? `, until ${clockOf(starts, total)}` : "";
    say(this.sum, names.length === 0
      ? "No blocks yet: take one of the days above." : `${counted}, ${lengthText(total)} in all${until}.`);
    this.back.hidden = this.#before === null;
    this.editor.show(this.#selected);
  }

  #take(day) {
    const { blocks, starts, ambient, "day-title": title } = this.draft.value;
    if (Object.keys(blocks).length > 0) this.#before = structuredClone({ blocks, starts, ambient, "day-title": title });
    this.#selected = null;
    this.draft.change((value) => {
      value.blocks = withCamera(day.blocks, cameraOf(value));
      value["day-title"] = day.title;
      if (day.starts) value.starts = day.starts;
      if (day.ambient) value.ambient = day.ambient;
    });
  }

  #move(by) {
    const entries = Object.entries(this.draft.value.blocks), at = entries.findIndex(([name]) => name === this.#selected),
      to = at + by;
    if (at < 0 || to < 0 || to >= entries.length) return;
    [entries[at], entries[to]] = [entries[to], entries[at]];
    this.draft.change((value) => { value.blocks = Object.fromEntries(entries); });
  }

  #add() {
    const entries = Object.entries(this.draft.value.blocks), at = entries.findIndex(([name]) => name === this.#selected);
    const name = freeName("new-block", (taken) => taken in this.draft.value.blocks);
    entries.splice(at + 1, 0, [name, { title: "New block", length: "30 min", others: "standby" }]);
    this.#selected = name;
    this.draft.change((value) => { value.blocks = Object.fromEntries(entries); });
    this.editor.focus();
  }

  #remove() {
    const names = Object.keys(this.draft.value.blocks), at = names.indexOf(this.#selected), gone = this.#selected;
    this.#selected = names[at + 1] ?? names[at - 1] ?? null;
    this.draft.change((value) => { delete value.blocks[gone]; });
    this.timeline.focus(this.#selected);
  }
}


// Typical days name no device but the camera, and call it "camera".
function withCamera(blocks, camera) {
  const copy = structuredClone(blocks);
  for (const block of Object.values(copy)) if (block.states && camera !== "camera")
    block.states = renamed(block.states, "camera", camera);
  return copy;
}

function cameraOf(rig) { return Object.keys(rig.things).find((name) => rig.things[name].role === "camera") ?? "camera"; }
