// What a control is made of, by the kind of its parameter: fields, and a value as text.
import { pageOf } from "../shared/addresses.js";
import { el } from "../shared/parts.js";
import { PlacesList } from "../shared/places.js";

/** @import { Choice, Parameter, PlainControl } from "./types.js" */

/**
 * What a control is made from. `tell` is called with every change by the reader; `below`: the place for a word below it.
 * @typedef {{ parameter: Parameter, id: string, label: string, tell: (event: Event, isSettled: boolean) => void,
 *   below: HTMLElement, words: (value: string) => string }} Making
 */

const CHOICES = new Set(["choice", "scenario-file", "build", "day", "part"]);

/** @type {Record<string, (making: Making) => PlainControl>} */
const KINDS = { number, "whole-number": number, "yes-no": yesNo, date: making => oneLine(making, "date"), places };

/** @param {Making} making @returns {PlainControl} */
export function makePlainControl(making) {
  const { kind, choices } = making.parameter;
  const make = KINDS[kind] ?? (choices.length > 0 || CHOICES.has(kind) ? choice : plainText);
  return make(making);
}

/** @param {Making} making @returns {PlainControl} */
function number({ parameter, id, label, tell, below, words }) {
  const { minimum, maximum, unit } = parameter;
  const field = el("input", { type: "number", id, step: parameter.kind === "whole-number" ? "1" : "any",
    min: minimum, max: maximum, enterkeyhint: "done",
    // Digits alone where nothing is below zero; a browser's own keyboard for numbers has the minus.
    inputmode: minimum !== null && minimum >= 0 ? (parameter.kind === "whole-number" ? "numeric" : "decimal") : null });
  /** @type {HTMLInputElement | null} */
  let slider = null;
  if (minimum !== null && maximum !== null && maximum > minimum) {
    slider = el("input", { type: "range", min: String(minimum), max: String(maximum),
      step: String(stepOf(minimum, maximum, parameter)), "aria-label": `${label}, slider` });
    below.textContent = `${words(String(minimum))} to ${words(String(maximum))}`;
  }
  function show() {
    if (!slider) return;
    if (field.value !== "") slider.value = field.value;
    slider.setAttribute("aria-valuetext", words(field.value).replace("\u2212", "minus "));
  }
  field.addEventListener("input", event => { show(); tell(event, false); });
  field.addEventListener("change", event => tell(event, true));
  for (const kind of slider ? ["input", "change"] : []) slider?.addEventListener(kind, event => {
    if (kind === "input") field.value = slider.value;
    show();
    tell(event, kind === "change");
  });
  return {
    label: el("label", { for: id }, label), fields: slider ? [field, slider] : [field],
    row: [slider, field, unit ? el("span", { class: "unit" }, unit) : null],
    get value() { return field.value.trim(); },
    set value(text) {
      if (field.value !== text) field.value = text;
      show();
    },
  };
}

/**
 * The finest of 1, 2, 5, 10 … that cuts the range into no more than 200 and meets the notebook's own value.
 * @param {number} minimum
 * @param {number} maximum
 * @param {Parameter} parameter
 */
export function stepOf(minimum, maximum, { kind, default: own }) {
  /** @param {number} step */
  const meets = step => { const n = (Number(own) - minimum) / step; return Math.abs(n - Math.round(n)) < 1e-6; };
  const coarsest = (maximum - minimum) / 200, power = 10 ** Math.floor(Math.log10(coarsest));
  const isWhole = kind === "whole-number";
  let step = [1, 2, 5, 10].map(n => n * power).find(candidate => candidate >= coarsest * 0.999) ?? 10 * power;
  if (isWhole) step = Math.max(1, Math.round(step));
  const met = [step, step / 2, step / 5, step / 10].filter(candidate => !isWhole || Number.isInteger(candidate)).find(meets);
  return Number((met ?? (isWhole ? 1 : step / 10)).toPrecision(6));
}

/** @param {Making} making @returns {PlainControl} */
function choice({ parameter, id, label, tell, below }) {
  const select = el("select", { id });
  /** @type {Choice[]} */
  let choices = [];
  const show = () => {
    const chosen = choices.find(candidate => candidate.value === select.value);
    below.replaceChildren(chosen?.detail ?? "");
    const isFile = parameter.kind === "scenario-file" && /^(own|samples)\//.test(select.value);
    // A page that stands alone has neither a form nor a page of texts beside it.
    if (isFile && pageOf.rig())
      below.append(chosen?.detail ? " · " : "", el("a", { href: pageOf.rig({ file: select.value }) }, "form"), " · ",
        el("a", { href: pageOf.file(select.value) }, "text"));
  };
  // A value that is no choice (any more) stays to be seen until the server says what it takes instead.
  /** @param {string} value */
  const fill = value => {
    const isKnown = value === "" || choices.some(candidate => candidate.value === value);
    const all = isKnown ? choices : [...choices, { value, title: value }];
    const options = all.map(candidate => [candidate.value, candidate.title || candidate.value]);
    if (JSON.stringify(options) !== JSON.stringify([...select.options].map(option => [option.value, option.text])))
      select.replaceChildren(...options.map(([name, title]) => el("option", { value: name }, title)));
    select.value = value;
    show();
  };
  /** @param {Choice[]} list */
  const useChoices = list => {
    if (JSON.stringify(list) === JSON.stringify(choices)) return;
    choices = list;
    fill(select.value);
  };
  select.addEventListener("change", event => { show(); tell(event, true); });
  useChoices(parameter.choices);
  return {
    label: el("label", { for: id }, label), fields: [select], row: [select], useChoices,
    get value() { return select.value; },
    set value(text) { fill(text); },
  };
}

/** @param {Making} making @returns {PlainControl} */
function yesNo({ id, label, tell }) {
  const inputs = ["true", "false"].map((value, i) =>
    el("input", { type: "radio", name: id, value, id: i === 0 ? id : `${id}-no` }));
  for (const input of inputs) input.addEventListener("change", event => tell(event, true));
  return {
    label: el("div", { class: "label", id: `${id}-label` }, label), fields: [],
    row: [el("div", { class: "yes-no", role: "radiogroup", "aria-labelledby": `${id}-label` }, el("label", {}, inputs[0], "yes"),
      el("label", {}, inputs[1], "no"))],
    get value() { return inputs[0].checked ? "true" : "false"; },
    set value(text) { inputs[text === "true" ? 0 : 1].checked = true; },
  };
}

/** @param {Making} making @returns {PlainControl} */
function places({ label, tell }) {
  const list = new PlacesList({ label, changed: tell });
  return {
    label: el("div", { class: "label" }, label), fields: [], row: [list.element],
    get value() { return list.value; },
    set value(text) { list.value = text; },
    useChoices: choices => list.useChoices(/** @type {import("../shared/places.js").Place[]} */ (choices)),
    list,
  };
}

/** @param {Making} making @returns {PlainControl} */
function plainText(making) {
  return oneLine(making, "text");
}

/** @param {Making} making @param {string} type @returns {PlainControl} */
function oneLine({ id, label, tell }, type) {
  const field = el("input", { type, id, autocomplete: "off" });
  field.addEventListener("input", event => tell(event, false));
  field.addEventListener("change", event => tell(event, true));
  return {
    label: el("label", { for: id }, label), fields: [field], row: [field],
    get value() { return field.value; },
    set value(text) { if (field.value !== text) field.value = text; },
  };
}
