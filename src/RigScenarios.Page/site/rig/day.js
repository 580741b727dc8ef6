// What the day looks like: one of the typical days to begin with, then edited block by block on the timeline.
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { say } from "../shared/tell.js";
import { BlockEditor } from "./block.js";
import { added, lengthOf, moved, removed, resized } from "./blocks.js";
import { clockOf, lengthText, minutesOf } from "./words.js";
import { stateOfAll } from "./states.js";
import { Timeline } from "./timeline.js";

export class Day {
  /** @type {string | null} */
  #selected = null;
  #wrong = new Set();

  /**
   * @param {import("./state.js").Rig} rig
   * @param {{ days: { key: string, title: string, sentence: string }[] }} knowledge
   */
  constructor(rig, knowledge) {
    this.rig = rig;
    this.sum = byId("day-sum");
    this.timeline = new Timeline({
      selected: (name) => { this.#selected = name; this.show(); },
      resized: (minutes, edge) => this.#change(resized(rig.blocks, minutes), "length of a block", `edge ${edge}`),
    });
    byId("timeline").append(this.timeline.element);
    this.editor = new BlockEditor(byId("block-editor"), rig, {
      step: (by) => this.#step(by),
      move: (by) => this.#change(moved(rig.blocks, this.#selected ?? "", by), "order of the blocks"),
      add: () => this.#add(), remove: () => this.#remove(),
    });
    byId("typical-days").append(...knowledge.days.map((day) =>
      el("button", { type: "button", class: "typical", onclick: () => this.#take(day) },
        el("span", { class: "typical-title" }, day.title), el("span", { class: "typical-sentence" }, day.sentence))));
    rig.addEventListener("opened", () => { this.#selected = null; });
    rig.onChanged((detail) => this.show(detail.isRestored ?? false));
  }

  /**
   * Blocks with a problem are marked on the strip, because only one of them is open below it.
   * @param {{ path?: string }[]} problems
   */
  showProblems(problems) {
    const start = `${this.rig.blocksPath}.`;
    this.#wrong = new Set(problems.filter((problem) => problem.path?.startsWith(start))
      .map(({ path = "" }) => path.slice(start.length).split(".")[0]));
    this.show();
  }

  show(isRestored = false) {
    const { blocks } = this.rig, names = Object.keys(blocks), starts = this.rig.text(`days.${this.rig.place.day}.starts`);
    byId("timeline").dataset.path = this.rig.blocksPath;
    if (this.#selected === null || !names.includes(this.#selected)) this.#selected = names[0] ?? null;
    this.timeline.show(names.map((name) => ({
      name, title: blocks[name].title || name, minutes: minutesOf(blocks[name].length) ?? 0,
      state: stateOfAll(this.rig.view.things, blocks[name]),
      wrong: this.#wrong.has(name) || minutesOf(blocks[name].length) === null,
    })), starts, this.#selected);
    this.#showSum(blocks, starts);
    this.editor.show(this.#selected, isRestored);
  }

  /** @param {import("./blocks.js").Blocks} blocks @param {string} starts */
  #showSum(blocks, starts) {
    const count = Object.keys(blocks).length, { minutes, isWhole } = lengthOf(blocks);
    const counted = count === 1 ? "1 block" : `${count} blocks`, until = starts ? `, until ${clockOf(starts, minutes)}` : "";
    say(this.sum, count === 0 ? "No blocks yet: take one of the days above."
      : isWhole ? `${counted}, ${lengthText(minutes)} in all${until}.`
        : `${counted}. The length of one can't be read, so there is no end yet.`);
  }

  /** @param {{ key: string, title: string }} day */
  #take(day) {
    this.#selected = null;
    this.rig.edit({ do: "day", key: day.key }, { name: `day: ${day.title}` });
  }

  /** @param {number} by */
  #step(by) {
    const names = Object.keys(this.rig.blocks), next = names[names.indexOf(this.#selected ?? "") + by];
    if (!next) return;
    this.#selected = next;
    this.show();
    this.timeline.bringIntoSight(next);
  }

  #add() {
    const { blocks, name } = added(this.rig.blocks, this.#selected);
    this.#selected = name;
    this.#change(blocks, "one more block");
    this.editor.focus();
  }

  #remove() {
    const { blocks, next } = removed(this.rig.blocks, this.#selected ?? "");
    this.#selected = next;
    this.#change(blocks, "block taken out");
    this.timeline.focus(this.#selected);
  }

  /** @param {import("./blocks.js").Blocks} blocks @param {string} name @param {string | null} key */
  #change(blocks, name, key = null) { this.rig.set(this.rig.blocksPath, blocks, { name, key }); }
}
