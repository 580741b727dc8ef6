// One field of the form: what is asked, the text as somebody wrote it, and where it lies in the tree. What is left open shows
// what is assumed instead.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { closeWithEnter, keyboardOf, mayBeBelowZero, signButton, turnedOver } from "./keyboard.js";
import { asClock, numberIn, withUnit } from "./words.js";

/** @typedef {{ key: string, label: string, help?: string, example?: string, unit?: string, path: string,
 *   choices?: { text: string, title: string }[] | null }} Asked a question as the server asks it */
/** @typedef {{ path: string, name: string, value: string, why?: string, source?: string, note?: string }} Assumed what is
 *   taken; `note`: where that comes from, in a word */
/** @typedef {{ min: number, max: number, rest: number, open?: string }} Range of a slider; `rest`: where it stands while
 *   nothing is said; `open`: what that means */

// The value of the choice beside the listed ones; no text that means something begins with a space.
const measured = " measured";

export class Field {
  #path = "";

  /**
   * @param {import("./state.js").Rig} rig
   * @param {Asked} asked
   * @param {{ id?: string, range?: Range | null, write?: (text: string, isSettled: boolean) => void,
   *   read?: () => string, set?: (rig: import("./state.js").Rig, path: string, text: string,
   *   doing: import("./state.js").Doing) => void }} [more] `write`, `read`: where the text goes and comes from, if that is not
   *   a path of the tree; `set`: how it comes to its path, where more goes with it
   */
  constructor(rig, asked, { id = freshId("field"), range = null, write, read, set = setAlone } = {}) {
    this.rig = rig;
    this.asked = asked;
    this.range = range;
    this.read = read;
    this.unit = asked.unit ?? "";
    this.write = write ?? ((text, isSettled) => set(rig, this.#path, text, { name: asked.label, key: `text ${this.#path}`,
      isQuick: isSettled }));
    const help = `${id}-help`;
    this.input = el("input", { type: "text", id, autocomplete: "off", maxlength: 400,
      "aria-describedby": asked.help ? help : null });
    this.slider = range ? el("input", { type: "range", id: `${id}-slider`, step: 1, min: range.min, max: range.max,
      "aria-label": `${asked.label}, slider` }) : null;
    this.choice = asked.choices?.length ? this.#makeChoice(asked.choices) : null;
    closeWithEnter(this.input);
    const typed = mayBeBelowZero(asked.key)
      ? el("div", { class: "signed" }, this.input, signButton(asked.label, () => this.#turnOver())) : this.input;
    this.element = el("div", { class: `field ${range ? "dial" : "asked"}`, "data-field": asked.key },
      el("label", { for: this.choice ? this.choice.id : id }, asked.label), this.slider, this.choice, typed,
      asked.help ? el("p", { class: "help", id: help }, asked.help) : null);
    if (this.choice) this.input.setAttribute("aria-label", `${asked.label}, in your own words`);
    this.#listen();
    this.assume(null);
  }

  /** @returns {string} */
  get path() { return this.#path; }

  /** Where it lies now; null: nowhere, and it is not shown. @param {string | null} path */
  set path(path) {
    this.#path = path ?? "";
    this.element.hidden = path === null;
    for (const control of [this.input, this.choice]) if (control) control.dataset.path = this.#path;
  }

  get text() { return this.read ? this.read() : this.rig.text(this.#path || null); }

  focus() { (this.choice ?? this.input).focus(); }

  /** Shows what the tree says; what is being typed stays, unless a step back or forth was made. @param {boolean} isRestored */
  show(isRestored = false) {
    const { text } = this;
    if (document.activeElement !== this.input || isRestored) if (this.input.value !== text) this.input.value = text;
    if (document.activeElement !== this.input) this.#useKeyboard();
    this.#showSlider(text);
    if (this.choice) this.#showChoice(text);
  }

  /** What is taken while it is open. @param {Assumed | null} assumed */
  assume(assumed) {
    const { example } = this.asked;
    const such = this.range?.open ?? (example ? `such as ${example}` : "");
    const open = assumed ? `${assumed.value} (${assumed.note ?? "assumed"})` : such;
    this.input.placeholder = open;
    this.input.title = assumed?.why ?? "";
    // A long text would hide that nothing is said.
    const isShort = assumed !== null && assumed.value.length < 24;
    if (this.choice) this.choice.options[0].textContent = isShort ? `Not said: ${assumed.value} assumed` : "Not said";
    if (this.slider && this.text === "") {
      const number = assumed ? numberIn(assumed.value, this.unit) : this.range?.rest ?? null;
      if (number !== null && document.activeElement !== this.slider) this.slider.value = String(number);
      this.slider.setAttribute("aria-valuetext", open || "open");
    }
  }

  #listen() {
    const { input, slider } = this;
    input.addEventListener("input", () => this.write(this.#read(input.value), false));
    input.addEventListener("change", () => {
      input.value = this.#read(input.value);
      if (this.text !== input.value) this.write(input.value, true);
    });
    // Not under the finger that is typing.
    input.addEventListener("blur", () => this.#useKeyboard());
    // Who comes to a field means to write it anew; a second click sets the cursor.
    input.addEventListener("focus", () => input.select());
    slider?.addEventListener("input", () => {
      input.value = withUnit(slider.value, this.unit);
      this.write(input.value, true);
    });
  }

  #useKeyboard() { this.input.inputMode = keyboardOf(this.asked, this.input.value); }

  #turnOver() {
    const text = turnedOver(this.input.value);
    if (text === null) return;
    this.input.value = this.#read(text);
    this.write(this.input.value, true);
  }

  /** @param {string} text */
  #read(text) { return this.asked.key === "starts" ? asClock(text) : withUnit(text, this.unit); }

  /** @param {string} text */
  #showSlider(text) {
    const { slider } = this;
    if (!slider) return;
    const number = numberIn(text, this.unit);
    if (number !== null && document.activeElement !== slider) slider.value = String(number);
    if (text) slider.setAttribute("aria-valuetext", text);
    slider.classList.toggle("open", text === "");
  }

  // Choices that stand for figures (a size) or words may be given otherwise too; a word of the file may not.
  /** @param {{ text: string, title: string }[]} choices */
  #makeChoice(choices) {
    const isClosed = choices.every(({ text }) => /^[a-z-]+$/.test(text));
    const choice = el("select", { id: freshId("choose") }, el("option", { value: "" }, "Not said"),
      choices.map(({ text, title }) => el("option", { value: text }, title)),
      isClosed ? null
        : el("option", { value: measured }, this.#otherwise()));
    choice.addEventListener("change", () => {
      const isMeasured = choice.value === measured;
      this.input.hidden = !isMeasured;
      if (isMeasured) this.input.focus(); else this.write(choice.value, true);
    });
    return choice;
  }

  #otherwise() {
    if (!/\d/.test(this.asked.example ?? "")) return "In other words …";
    return this.unit === "mm" ? "As measured …" : "Another figure …";
  }

  /** @param {string} text */
  #showChoice(text) {
    const { choice, input } = this, isListed = this.asked.choices?.some((listed) => listed.text === text) ?? false;
    if (!choice) return;
    const isBeingWritten = document.activeElement === input || (text === "" && choice.value === measured
      && document.activeElement === choice);
    if (isBeingWritten) return;
    choice.value = isListed || text === "" ? text : measured;
    input.hidden = isListed || text === "";
    // Of a question with these answers alone a file may hold two at once.
    if (choice.selectedIndex >= 0) return;
    choice.append(el("option", { value: text }, text));
    choice.value = text;
    input.hidden = true;
  }
}

/** @param {import("./state.js").Rig} rig @param {string} path @param {string} text @param {import("./state.js").Doing} doing */
function setAlone(rig, path, text, doing) { rig.set(path, text, doing); }
