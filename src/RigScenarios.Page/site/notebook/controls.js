// The controls of a notebook, one for each parameter: all of them read and take values as text, as a person writes them.
import { standOnFile } from "./file-value.js";
import { el } from "../shared/parts.js";
import { inPath } from "../shared/api.js";
import { PlacesList, placesInWords } from "../shared/places.js";

const CHOICES = new Set(["choice", "scenario-file", "build", "day", "part"]);

/** The value in words, with its unit or the title of the choice. */
export function inWords(parameter, value, choices = parameter.choices) {
  if (parameter.kind === "places") return placesInWords(value, choices);
  if (parameter.kind === "yes-no") return value === "true" ? "yes" : "no";
  const choice = choices.find(c => c.value === value);
  if (choice) return choice.title || choice.value;
  return isNumber(parameter) ? `${String(value).replace("-", "\u2212")}\u00a0${parameter.unit}`.trimEnd() : String(value);
}

/** The parameter's label with a capital. */
export function labelOf(parameter) {
  const label = parameter.label || parameter.name;
  return label[0].toUpperCase() + label.slice(1);
}

/**
 * The control of a parameter. `onChange(name, at, isSettled)` tells of every change; `at` is when the reader did it.
 * Members: element, value (get and set), useChoices(choices), say(problem words or ""), why(words or ""): why it moves nothing
 * with the present file; for one that stands on the file's value: hold(value, isOfFile), held.
 */
export function makeControl(parameter, onChange) {
  const id = `control-${parameter.name}`;
  const below = el("div", { class: "below", id: `${id}-below` });
  const problem = el("div", { class: "problem", id: `${id}-problem`, role: "alert", hidden: true });
  const nothing = el("div", { class: "moves-nothing", id: `${id}-nothing`, hidden: true });
  const tell = (event, isSettled) => {
    control.touched?.(isSettled);
    onChange(parameter.name, performance.now() - Math.max(0, Math.min(1000, performance.now() - event.timeStamp)), isSettled);
  };
  const kind = KINDS[parameter.kind] ?? (parameter.choices.length > 0 || CHOICES.has(parameter.kind) ? choice : plainText);
  const plain = kind(parameter, id, tell, below);
  const control = parameter.isOptional ? standOnFile(plain, value => inWords(parameter, value), event => tell(event, true)) : plain;
  control.element = el("div", { class: "control" }, control.label, el("div", { class: "row" }, control.row),
    el("div", { class: "below-box" }, below, control.note, nothing, problem));
  control.fields.forEach(field => field.setAttribute("aria-describedby", `${id}-below ${id}-nothing ${id}-problem`));
  control.useChoices ??= () => {};
  control.why = words => {
    nothing.textContent = words;
    nothing.hidden = !words;
  };
  control.say = words => {
    problem.textContent = words;
    problem.hidden = !words;
    // The field is marked; the slider beside it cannot be wrong.
    if (words) control.fields[0]?.setAttribute("aria-invalid", "true");
    else control.fields[0]?.removeAttribute("aria-invalid");
  };
  return control;
}

const KINDS = { number, "whole-number": number, "yes-no": yesNo, date, places };

function isNumber(parameter) {
  return parameter.kind === "number" || parameter.kind === "whole-number";
}

function number(parameter, id, tell, below) {
  const { minimum, maximum, unit } = parameter;
  const hasRange = Number.isFinite(minimum) && Number.isFinite(maximum) && maximum > minimum;
  const range = hasRange ? `${inWords(parameter, minimum)} to ${inWords(parameter, maximum)}` : "";
  const label = el("label", { for: id }, labelOf(parameter));
  const field = el("input", { type: "number", id, step: parameter.kind === "whole-number" ? "1" : "any", inputmode: "decimal",
    min: minimum ?? null, max: maximum ?? null });
  const slider = hasRange
    ? el("input", { type: "range", min: String(minimum), max: String(maximum), step: String(stepOf(parameter)),
    "aria-label": `${labelOf(parameter)}, slider` }) : null;
  below.textContent = range;
  const control = {
    label, fields: slider ? [field, slider] : [field],
    row: [slider, field, unit ? el("span", { class: "unit" }, unit) : null],
    get value() { return field.value.trim(); },
    set value(text) {
      if (field.value !== text) field.value = text;
      show();
    },
  };
  function show() {
    if (!slider) return;
    if (field.value !== "") slider.value = field.value;
    slider.setAttribute("aria-valuetext", inWords(parameter, field.value).replace("\u2212", "minus "));
  }
  field.addEventListener("input", event => { show(); tell(event, false); });
  field.addEventListener("change", event => tell(event, true));
  slider?.addEventListener("input", event => { field.value = slider.value; show(); tell(event, false); });
  slider?.addEventListener("change", event => tell(event, true));
  return control;
}

// The finest of 1, 2, 5, 10 … that cuts the range into no more than 200 and meets the notebook's own value.
function stepOf({ kind, minimum, maximum, default: own }) {
  const meets = step => { const n = (Number(own) - minimum) / step; return Math.abs(n - Math.round(n)) < 1e-6; };
  const coarsest = (maximum - minimum) / 200;
  let step = 10 ** Math.floor(Math.log10(coarsest));
  step = [1, 2, 5, 10].map(n => n * step).find(s => s >= coarsest * 0.999);
  if (kind === "whole-number") step = Math.max(1, Math.round(step));
  const rounded = s => Number(s.toPrecision(6));
  return rounded([step, step / 2, step / 5, step / 10].find(s => meets(s) && (kind !== "whole-number" || Number.isInteger(s)))
    ?? (kind === "whole-number" ? 1 : step / 10));
}

function choice(parameter, id, tell, below) {
  const select = el("select", { id });
  let choices = [];
  const show = () => {
    const chosen = choices.find(c => c.value === select.value);
    below.replaceChildren(chosen?.detail ?? "");
    if (parameter.kind === "scenario-file" && /^(own|samples)\//.test(select.value))
      below.append(chosen?.detail ? " · " : "", el("a", { href: `/rig?file=${encodeURIComponent(select.value)}` }, "form"), " · ",
        el("a", { href: `/file/${inPath(select.value)}` }, "text"));
  };
  // A value that is no choice (any more) stays to be seen until the server says what it takes instead.
  const fill = value => {
    const all = value === "" || choices.some(c => c.value === value) ? choices : [...choices, { value, title: value }];
    if (JSON.stringify(all.map(c => [c.value, c.title || c.value])) !== JSON.stringify([...select.options]
      .map(option => [option.value, option.text])))
      select.replaceChildren(...all.map(c => el("option", { value: c.value }, c.title || c.value)));
    select.value = value;
    show();
  };
  const control = {
    label: el("label", { for: id }, labelOf(parameter)), fields: [select], row: [select],
    get value() { return select.value; },
    set value(text) { fill(text); },
    useChoices(list) {
      if (JSON.stringify(list) === JSON.stringify(choices)) return;
      choices = list;
      fill(select.value);
    },
  };
  select.addEventListener("change", event => { show(); tell(event, true); });
  control.useChoices(parameter.choices);
  return control;
}

function yesNo(parameter, id, tell) {
  const inputs = ["true", "false"].map((value, i) =>
    el("input", { type: "radio", name: id, value, id: i === 0 ? id : `${id}-no` }));
  inputs.forEach(input => input.addEventListener("change", event => tell(event, true)));
  return {
    label: el("div", { class: "label", id: `${id}-label` }, labelOf(parameter)), fields: [],
    row: el("div", { class: "yes-no", role: "radiogroup", "aria-labelledby": `${id}-label` }, el("label", {}, inputs[0], "yes"),
      el("label", {}, inputs[1], "no")),
    get value() { return inputs[0].checked ? "true" : "false"; },
    set value(text) { inputs[text === "true" ? 0 : 1].checked = true; },
  };
}

function places(parameter, id, tell) {
  const list = new PlacesList({ label: labelOf(parameter), changed: tell });
  return {
    label: el("div", { class: "label" }, labelOf(parameter)), fields: [], row: [list.element],
    get value() { return list.value; },
    set value(text) { list.value = text; },
    useChoices: choices => list.useChoices(choices),
    list,
  };
}

function date(parameter, id, tell) {
  return oneLine(parameter, id, tell, "date");
}

function plainText(parameter, id, tell) {
  return oneLine(parameter, id, tell, "text");
}

function oneLine(parameter, id, tell, type) {
  const field = el("input", { type, id, autocomplete: "off" });
  field.addEventListener("input", event => tell(event, false));
  field.addEventListener("change", event => tell(event, true));
  return {
    label: el("label", { for: id }, labelOf(parameter)), fields: [field], row: [field],
    get value() { return field.value; },
    set value(text) { if (field.value !== text) field.value = text; },
  };
}

/** What is missing in the field of a parameter, in words; "" for nothing. */
export function missing({ kind, isOptional }, value) {
  if (value !== "" || isOptional || !/number|date/.test(kind)) return "";
  return kind === "date" ? "A date is missing." : "A number is missing.";
}

/** "1" on the way to "15" is no mistake yet; left standing it is, and the server says so. */
export function isOutside({ kind, minimum, maximum }, value) {
  return /number/.test(kind) && value !== "" && ((minimum !== null && Number(value) < minimum) || (maximum !== null && Number(value) > maximum));
}
