// The chosen block of the day: its name, its length and what the devices do in it.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { asLength } from "./words.js";
import { devicesOf, setAll, setOne, stateOf, stateOfAll } from "./states.js";

const words = [["record", "Recording"], ["standby", "Standby"], ["off", "Off"]];

export class BlockEditor {
  #name = null;
  #each = false;

  // deeds: {move(by), add(), remove()}
  constructor(place, draft, titleOf, deeds) {
    Object.assign(this, { place, draft, titleOf });
    this.title = el("input", { type: "text", id: "block-title", autocomplete: "off" });
    this.length = el("input", { type: "text", id: "block-length", autocomplete: "off", "aria-describedby": "block-length-help" });
    const group = freshId("doing");
    this.radios = [...words, ["mixed", "Each its own"]].map(([value, text]) => {
      const radio = el("input", { type: "radio", name: group, value, onchange: () => this.#do(value) });
      return { value, radio, element: el("label", { class: "doing", "data-state": value }, radio, el("span", {}, text)) };
    });
    this.devices = el("div", { class: "block-devices" });
    this.earlier = el("button", { type: "button", class: "quiet", onclick: () => deeds.move(-1) }, "Move earlier");
    this.later = el("button", { type: "button", class: "quiet", onclick: () => deeds.move(1) }, "Move later");
    this.remove = el("button", { type: "button", class: "quiet", onclick: deeds.remove }, "Take this block out");
    this.doing = el("fieldset", { class: "block-doing field" }, el("legend", {}, "What the devices do"),
      el("div", { class: "doings" }, this.radios.map((radio) => radio.element)), this.devices);
    this.fields = el("div", { class: "block-fields" },
      el("div", { class: "field" }, el("label", { for: "block-title" }, "Block"), this.title),
      el("div", { class: "field" }, el("label", { for: "block-length" }, "Length"), this.length,
        el("p", { class: "help", id: "block-length-help" }, "such as 45 min or 1 h 15 min")));
    this.rolling = el("input", { type: "checkbox", onchange: () => this.#change((block) => {
      if (this.rolling.checked) block.rolling = "yes"; else delete block.rolling;
    }) });
    this.body = el("div", {}, this.fields, this.doing,
      el("label", { class: "block-rolling" }, this.rolling,
      el("span", {}, "the camera rolls all through it: no battery is swapped")));
    place.append(this.body, el("div", { class: "block-deeds" },
      el("button", { type: "button", class: "quiet", onclick: deeds.add }, "Add a block after it"), this.earlier, this.later,
      this.remove));
    this.title.addEventListener("input", () => this.#set("title", this.title.value.trim()));
    this.length.addEventListener("input", () => this.#set("length", asLength(this.length.value)));
    this.length.addEventListener("change", () => { this.length.value = asLength(this.length.value); });
  }

  focus() { this.title.focus(); this.title.select(); }

  show(name) {
    const rig = this.draft.value, block = rig.blocks[name], names = Object.keys(rig.blocks);
    if (name !== this.#name) this.#each = false;
    const isSame = name === this.#name;
    this.#name = name;
    this.body.hidden = !block;
    for (const button of [this.earlier, this.later, this.remove]) button.disabled = !block;
    if (!block) return;
    // A button that has the focus is not disabled under it: the focus would be lost.
    this.earlier.setAttribute("aria-disabled", String(name === names[0]));
    this.later.setAttribute("aria-disabled", String(name === names.at(-1)));
    if (!isSame || document.activeElement !== this.title) this.title.value = block.title ?? name;
    if (!isSame || document.activeElement !== this.length) this.length.value = block.length ?? "";
    this.title.dataset.path = `blocks.${name}.title`;
    this.length.dataset.path = `blocks.${name}.length`;
    this.doing.dataset.path = `blocks.${name}`;
    const all = stateOfAll(rig, block), each = this.#each || all === "mixed";
    for (const { value, radio } of this.radios) radio.checked = each ? value === "mixed" : value === all;
    this.rolling.checked = ["yes", "true", true].includes(block.rolling);
    this.rolling.dataset.path = `blocks.${name}.rolling`;
    this.devices.hidden = !each;
    if (each) this.#showDevices(rig, block);
  }

  #showDevices(rig, block) {
    const devices = devicesOf(rig), shown = [...this.devices.children].map((row) => row.dataset.device).join(" ");
    if (shown !== devices.join(" "))
      this.devices.replaceChildren(...devices.map((device) => el("label", { class: "block-device", "data-device": device },
        el("span", {}),
        el("select", { onchange: (event) => this.#change((changed) => setOne(changed, device, event.target.value)) },
          words.map(([value, text]) => el("option", { value }, text))))));
    for (const row of this.devices.children) {
      row.firstElementChild.textContent = this.titleOf(row.dataset.device);
      row.lastElementChild.value = stateOf(block, row.dataset.device);
      row.lastElementChild.dataset.path = `blocks.${this.#name}.states.${row.dataset.device}`;
    }
  }

  #do(state) {
    this.#each = state === "mixed";
    if (this.#each) this.show(this.#name);
    else this.#change((block, rig) => setAll(rig, block, state));
  }

  #set(key, text) { this.#change((block) => { if (text === "") delete block[key]; else block[key] = text; }, false); }

  #change(edit, isQuick = true) { this.draft.change((rig) => edit(rig.blocks[this.#name], rig), isQuick); }
}
