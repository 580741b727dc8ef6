// The chosen block of the day: its name, its length and what the devices do in it.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { closeWithEnter } from "./keyboard.js";
import { asLength } from "./words.js";
import { devicesOf, isRolling, stateOf, stateOfAll, withAll, withOne } from "./states.js";

/** @typedef {import("./states.js").Block} Block */

const words = [["record", "Recording"], ["standby", "Standby"], ["off", "Off"]];

export class BlockEditor {
  /** @type {string | null} */
  #name = null;
  #each = false;
  /** @type {Map<string, { title: HTMLElement, select: HTMLSelectElement, element: HTMLElement }>} */
  #rows = new Map();

  /**
   * @param {HTMLElement} place
   * @param {import("./state.js").Rig} rig
   * @param {{ step: (by: number) => void, move: (by: number) => void, add: () => void, remove: () => void }} deeds
   */
  constructor(place, rig, deeds) {
    this.place = place;
    this.rig = rig;
    this.title = el("input", { type: "text", id: "block-title", autocomplete: "off", maxlength: 120 });
    this.length = el("input", { type: "text", id: "block-length", autocomplete: "off", maxlength: 60, inputmode: "decimal",
      "aria-describedby": "block-length-help" });
    for (const input of [this.title, this.length]) closeWithEnter(input);
    this.rolling = el("input", { type: "checkbox",
      onchange: () => this.#set("rolling", this.rolling.checked ? "yes" : "", true) });
    this.devices = el("div", { class: "block-devices" });
    this.radios = this.#makeRadios();
    this.doing = el("fieldset", { class: "block-doing field" }, el("legend", {}, "What the devices do"),
      el("div", { class: "doings" }, this.radios.map((radio) => radio.element)), this.devices);
    this.body = el("div", {},
      el("div", { class: "block-fields" },
        el("div", { class: "field" }, el("label", { for: "block-title" }, "Block"), this.title),
        el("div", { class: "field" }, el("label", { for: "block-length" }, "Length"), this.length,
          el("p", { class: "help", id: "block-length-help" }, "such as 45 min or 1 h 15 min; a bare 75 means minutes"))),
      this.doing, el("label", { class: "block-rolling" }, this.rolling,
        el("span", {}, "the camera rolls all through it: no battery is swapped")));
    // A short block is narrower than a finger: from its neighbour it can be reached too.
    this.before = button("Block before", () => deeds.step(-1));
    this.after = button("Block after", () => deeds.step(1));
    this.which = el("span", { class: "block-which", id: "block-which" });
    this.step = el("div", { class: "block-step" }, this.before, this.which, this.after);
    this.earlier = button("Move earlier", () => deeds.move(-1));
    this.later = button("Move later", () => deeds.move(1));
    this.remove = button("Take this block out", deeds.remove);
    place.append(this.step, this.body,
      el("div", { class: "block-deeds" }, button("Add a block after it", deeds.add), this.earlier, this.later, this.remove));
    this.title.addEventListener("input", () => this.#set("title", this.title.value.trim(), false));
    this.length.addEventListener("input", () => this.#set("length", asLength(this.length.value), false));
    this.length.addEventListener("change", () => { this.length.value = asLength(this.length.value); });
  }

  focus() { this.title.focus(); this.title.select(); }

  /** @param {string | null} name @param {boolean} isRestored */
  show(name, isRestored = false) {
    const block = name === null ? undefined : this.rig.blocks[name], names = Object.keys(this.rig.blocks);
    const isSame = name === this.#name && !isRestored;
    if (name !== this.#name) this.#each = false;
    this.#name = name;
    this.body.hidden = this.step.hidden = !block;
    for (const button of [this.earlier, this.later, this.remove]) button.disabled = !block;
    if (!block) return;
    // A button that has the focus is not disabled under it: the focus would be lost.
    for (const button of [this.before, this.earlier]) button.setAttribute("aria-disabled", String(name === names[0]));
    for (const button of [this.after, this.later]) button.setAttribute("aria-disabled", String(name === names.at(-1)));
    this.which.textContent = `Block ${names.indexOf(name ?? "") + 1} of ${names.length}`;
    if (!isSame || document.activeElement !== this.title) this.title.value = block.title ?? name;
    if (!isSame || document.activeElement !== this.length) this.length.value = block.length ?? "";
    const path = `${this.rig.blocksPath}.${name}`;
    for (const key of /** @type {const} */ (["title", "length", "rolling"])) this[key].dataset.path = `${path}.${key}`;
    this.doing.dataset.path = path;
    this.#showDoings(block);
    this.rolling.checked = isRolling(block);
  }

  #makeRadios() {
    const group = freshId("doing");
    return [...words, ["mixed", "Each its own"]].map(([value, text]) => {
      const radio = el("input", { type: "radio", name: group, value, onchange: () => this.#do(value) });
      return { value, radio, element: el("label", { class: "doing", "data-state": value }, radio, el("span", {}, text)) };
    });
  }

  /** @param {Block} block */
  #showDoings(block) {
    const all = stateOfAll(this.rig.view.things, block), each = this.#each || all === "mixed";
    for (const { value, radio } of this.radios) radio.checked = each ? value === "mixed" : value === all;
    this.devices.hidden = !each;
    if (each) this.#showDevices(block);
  }

  /** @param {Block} block */
  #showDevices(block) {
    const devices = devicesOf(this.rig.view.things), path = `${this.rig.blocksPath}.${this.#name}.states`;
    if (devices.join(" ") !== [...this.#rows.keys()].join(" ")) {
      this.#rows = new Map(devices.map((device) => [device, this.#row(device)]));
      this.devices.replaceChildren(...[...this.#rows.values()].map((row) => row.element));
    }
    for (const [device, row] of this.#rows) {
      row.title.textContent = this.rig.thing(device)?.title || device;
      row.select.value = stateOf(block, device);
      row.select.dataset.path = `${path}.${device}`;
    }
  }

  /** @param {string} device */
  #row(device) {
    const title = el("span"), select = el("select", {}, words.map(([value, text]) => el("option", { value }, text)));
    select.addEventListener("change", () => this.#change((block) => withOne(block, device, select.value)));
    return { title, select, element: el("label", { class: "block-device" }, title, select) };
  }

  /** @param {string} state */
  #do(state) {
    this.#each = state === "mixed";
    if (this.#each) this.show(this.#name);
    else this.#change((block) => withAll(this.rig.view.things, block, state));
  }

  /** @param {string} key @param {string} text @param {boolean} isQuick */
  #set(key, text, isQuick) {
    const path = `${this.rig.blocksPath}.${this.#name}.${key}`;
    this.rig.set(path, text, { name: `block: ${key}`, key: isQuick ? null : `text ${path}`, isQuick });
  }

  /** @param {(block: Block) => Block} edit */
  #change(edit) {
    const path = `${this.rig.blocksPath}.${this.#name}`;
    this.rig.set(path, edit(this.rig.blocks[this.#name ?? ""]), { name: "what the devices do" });
  }
}

/** @param {string} text @param {() => void} onclick */
function button(text, onclick) { return el("button", { type: "button", class: "quiet", onclick }, text); }
