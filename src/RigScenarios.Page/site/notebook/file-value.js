// A control that stands on the chosen file's own value until the reader gives one.
import { el } from "../shared/parts.js";

/**
 * Makes such a control of a plain one. Its value is "" while it is the file's.
 * @param {any} inner the plain control: label, fields, row, value
 * @param {(value: string) => string} inWords
 * @param {(event: Event) => void} wentBack told when the reader goes back to the file's value
 */
export function standOnFile(inner, inWords, wentBack) {
  const [field] = inner.fields;
  let isGiven = false, held = "", isOfFile = true;
  const words = el("span");
  const back = el("button", { type: "button", class: "quiet of-file-back", hidden: true, onclick: event => {
    control.value = "";
    wentBack(event);
    field.focus({ preventScroll: true });
  } }, "Back to it");
  const note = el("div", { class: "of-file" }, words, back);

  function show() {
    back.hidden = !isGiven || held === "";
    words.textContent = held === "" ? (isGiven ? "" : "as in the file")
      : isGiven ? `${isOfFile ? "in the file" : "the file leaves it open"}: ${inWords(held)}`
      : isOfFile ? "as in the file" : "the file leaves it open; this is taken";
  }

  const control = {
    label: inner.label, fields: inner.fields, row: inner.row, note,
    get value() { return isGiven ? inner.value : ""; },
    set value(text) {
      isGiven = text !== "";
      inner.value = isGiven ? text : held;
      show();
    },
    /** The reader did something. An emptied field is the file's value again; while it has the focus it stays empty. */
    touched(isSettled) {
      isGiven = inner.value !== "";
      if (!isGiven && isSettled) inner.value = held;
      show();
    },
    /** What the file holds, and whether it is the file's or taken because the file leaves it open. */
    hold(value, ofFile) {
      [held, isOfFile] = [value, ofFile];
      if (!isGiven && (document.activeElement !== field || inner.value !== "")) inner.value = held;
      show();
    },
    get held() { return held; },
  };
  show();
  return control;
}
