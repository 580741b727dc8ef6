// A control that stands on the chosen file's own value until the reader gives one.
import { el } from "../shared/parts.js";

/** @import { PlainControl } from "./types.js" */

/**
 * Such a control, made of a plain one. Its value is "" while it is the file's.
 * @implements {PlainControl}
 */
export class FileValue {
  #inner;
  #inWords;
  #isGiven = false;
  #isOfFile = true;
  #words = el("span");
  #back;

  /** The file's value. */
  held = "";

  /**
   * @param {PlainControl} inner
   * @param {(value: string) => string} inWords
   * @param {(event: Event) => void} wentBack told when the reader goes back to the file's value
   */
  constructor(inner, inWords, wentBack) {
    this.#inner = inner;
    this.#inWords = inWords;
    this.label = inner.label;
    this.fields = inner.fields;
    this.row = inner.row;
    this.#back = el("button", { type: "button", class: "quiet of-file-back", hidden: true, onclick: event => {
      this.value = "";
      wentBack(event);
      this.fields[0].focus({ preventScroll: true });
    } }, "Back to it");
    this.note = el("div", { class: "of-file" }, this.#words, this.#back);
    this.#show();
  }

  get value() { return this.#isGiven ? this.#inner.value : ""; }

  set value(text) {
    this.#isGiven = text !== "";
    this.#inner.value = this.#isGiven ? text : this.held;
    this.#show();
  }

  /** The reader did something. An emptied field is the file's value again; until it is left it stays empty.
   * @param {boolean} isSettled */
  touched(isSettled) {
    this.#isGiven = this.#inner.value !== "";
    if (!this.#isGiven && isSettled) this.#inner.value = this.held;
    this.#show();
  }

  /**
   * What the file holds, and whether it is the file's or taken because the file leaves it open.
   * @param {string} value
   * @param {boolean} isOfFile
   */
  hold(value, isOfFile) {
    this.held = value;
    this.#isOfFile = isOfFile;
    if (!this.#isGiven && (document.activeElement !== this.fields[0] || this.#inner.value !== "")) this.#inner.value = value;
    this.#show();
  }

  #show() {
    this.#back.hidden = !this.#isGiven || this.held === "";
    const ofFile = this.#isOfFile ? "as in the file" : "the file leaves it open; this is taken";
    const other = `${this.#isOfFile ? "in the file" : "the file leaves it open"}: ${this.#inWords(this.held)}`;
    this.#words.textContent = !this.#isGiven ? ofFile : this.held === "" ? "" : other;
  }
}
