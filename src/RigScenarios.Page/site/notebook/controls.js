// The controls of a notebook, one for each parameter: all of them read and take values as text, as a person writes them.
import { FileValue } from "./file-value.js";
import { makePlainControl } from "./kinds.js";
import { el } from "../shared/parts.js";
import { placesInWords } from "../shared/places.js";

/** @import { Choice, Control, Parameter, PlainControl } from "./types.js" */

/**
 * The value in words, with its unit or the title of the choice.
 * @param {Parameter} parameter
 * @param {string} value
 * @param {Choice[]} [choices]
 */
export function inWords(parameter, value, choices = parameter.choices) {
  if (parameter.kind === "places") return placesInWords(value, choices);
  if (parameter.kind === "yes-no") return value === "true" ? "yes" : "no";
  const choice = choices.find(candidate => candidate.value === value);
  if (choice) return choice.title || choice.value;
  return /number/.test(parameter.kind) ? `${value.replace("-", "\u2212")}\u00a0${parameter.unit}`.trimEnd() : value;
}

/** The parameter's label with a capital. @param {Parameter} parameter */
export function labelOf(parameter) {
  const label = parameter.label || parameter.name;
  return label[0].toUpperCase() + label.slice(1);
}

/**
 * The control of a parameter.
 * @param {Parameter} parameter
 * @param {(name: string, at: number, isSettled: boolean) => void} onChange told of every change; `at` is when the reader did it
 * @returns {Control}
 */
export function makeControl(parameter, onChange) {
  const id = `control-${parameter.name}`;
  const below = el("div", { class: "below", id: `${id}-below` });
  const problem = el("div", { class: "problem", id: `${id}-problem`, role: "alert", hidden: true });
  const nothing = el("div", { class: "moves-nothing", id: `${id}-nothing`, hidden: true });
  /** @param {Event} event @param {boolean} isSettled */
  const tell = (event, isSettled) => {
    plain.touched?.(isSettled);
    onChange(parameter.name, performance.now() - Math.max(0, Math.min(1000, performance.now() - event.timeStamp)), isSettled);
  };
  const own = makePlainControl({ parameter, id, label: labelOf(parameter), tell, below,
    words: value => inWords(parameter, value) });
  /** @type {PlainControl} */
  const plain = parameter.isOptional
    ? new FileValue(own, value => inWords(parameter, value), event => tell(event, true)) : own;
  const fields = plain.fields;
  for (const field of fields) field.setAttribute("aria-describedby", `${id}-below ${id}-nothing ${id}-problem`);
  return Object.assign(plain, {
    element: el("div", { class: "control" }, plain.label, el("div", { class: "row" }, plain.row),
      el("div", { class: "below-box" }, below, plain.note, nothing, problem)),
    useChoices: own.useChoices ?? (() => {}),
    /** @param {string} words */
    why(words) {
      nothing.textContent = words;
      nothing.hidden = !words;
    },
    /** @param {string} words */
    say(words) {
      problem.textContent = words;
      problem.hidden = !words;
      // The field is marked; the slider beside it cannot be wrong.
      if (words) fields[0]?.setAttribute("aria-invalid", "true");
      else fields[0]?.removeAttribute("aria-invalid");
    },
  });
}

/** What is missing in the field of a parameter, in words; "" for nothing. @param {Parameter} parameter @param {string} value */
export function missing({ kind, isOptional }, value) {
  if (value !== "" || isOptional || !/number|date/.test(kind)) return "";
  return kind === "date" ? "A date is missing." : "A number is missing.";
}

/** "1" on the way to "15" is no mistake yet; left standing it is, and the server says so. @param {Parameter} parameter
 * @param {string} value */
export function isOutside({ kind, minimum, maximum }, value) {
  if (!/number/.test(kind) || value === "") return false;
  return (minimum !== null && Number(value) < minimum) || (maximum !== null && Number(value) > maximum);
}
