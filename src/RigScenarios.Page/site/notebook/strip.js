// The controls: what can be changed, how the run stands, and what can be done with what is shown.
import { el } from "../shared/parts.js";
import { inWords, labelOf, makeControl } from "./controls.js";

/** @import { Problem } from "../shared/requests.js" */
/** @import { Choice, Control, Parameter, Told, Values } from "./types.js" */

/** A window on which the controls stand at the lower edge, folded to one line: see notebook.css. */
export const small = matchMedia("(max-width: 999px), (max-height: 559px)");

export class Strip {
  /** @type {Parameter[]} */
  #parameters;
  /** @type {Map<string, Control>} */
  #controls;
  /** @type {Map<string, string>} */
  #own;
  /** @type {Map<string, Choice[]>} */
  #choices;
  /** Which cell told of which controls why they move nothing: what it does not say any more is no longer so.
   * @type {Map<number, Set<string>>} */
  #heard = new Map();
  /** @type {Values} */
  #described = {};
  /** @type {[Values | null, Values]} */
  #compared = [null, {}];

  /**
   * @param {Parameter[]} parameters
   * @param {{ change: (name: string, at: number, isSettled: boolean) => void, stop: () => void, pin: () => void,
   *   unpin: () => void, swap: () => void, link: () => void, save: () => void, reset: () => void,
   *   covers: (pixels: number) => void }} on `covers`: so much of the window's lower edge
   */
  constructor(parameters, on) {
    this.#parameters = parameters;
    this.#controls = new Map(parameters.map(parameter => [parameter.name, makeControl(parameter, on.change)]));
    this.#own = new Map(parameters.map(parameter => [parameter.name, parameter.default]));
    this.#choices = new Map(parameters.map(parameter => [parameter.name, parameter.choices]));
    const hasSome = parameters.length > 0;
    this.foldValues = el("span", { class: "values" });
    this.foldWord = el("span", { class: "word" }, "Change");
    this.fold = el("button", { type: "button", class: "strip-fold", "aria-expanded": "false", "aria-controls": "strip-controls",
      onclick: () => this.#turn() }, this.foldValues, this.foldWord);
    this.state = el("span", { class: "state" });
    this.trouble = el("p", { class: "problem", role: "status", hidden: true });
    this.bar = el("progress", { max: "1", value: "0", "aria-label": "How far the run has come", hidden: true });
    this.stop = el("button", { type: "button", hidden: true, onclick: on.stop }, "Stop");
    this.pin = el("button", { type: "button", hidden: !hasSome, onclick: on.pin }, "Pin this version");
    this.reset = el("button", { type: "button", class: "quiet", hidden: true, onclick: on.reset },
      "Back to the notebook's values");
    this.pinnedWords = el("span");
    this.pinned = el("div", { class: "pinned-words", hidden: true }, this.pinnedWords,
      el("button", { type: "button", onclick: on.swap }, "Swap"), el("button", { type: "button", onclick: on.unpin }, "Unpin"));
    this.printed = el("dl", { class: "printed-values" });
    this.group = el("div", { class: "controls", id: "strip-controls", role: "group", "aria-label": "What can be changed",
      hidden: !hasSome }, [...this.#controls.values()].map(control => control.element));
    this.element = el("section", { class: "strip folded", id: "controls", "aria-label": "Controls", tabindex: "-1" },
      this.trouble, this.fold, this.group, this.pinned, el("div", { class: "strip-foot" },
        el("div", { class: "run" }, this.state, this.bar, this.stop), this.reset, this.pin,
        el("button", { type: "button", onclick: on.link }, "Copy link"),
        el("button", { type: "button", onclick: on.save }, "Save…")),
      this.printed);
    new ResizeObserver(() => {
      document.documentElement.style.setProperty("--rs-strip-height", `${this.element.offsetHeight}px`);
      on.covers(small.matches ? this.element.offsetHeight : 0);
    }).observe(this.element);
  }

  #turn() {
    const isFolded = !this.element.classList.contains("folded");
    this.#setFolded(isFolded);
    const next = isFolded ? this.fold : this.group.querySelector("input, select");
    if (next instanceof HTMLElement) next.focus({ preventScroll: true });
  }

  /** @param {boolean} isFolded */
  #setFolded(isFolded) {
    this.element.classList.toggle("folded", isFolded);
    this.fold.setAttribute("aria-expanded", String(!isFolded));
    this.foldWord.textContent = isFolded ? "Change" : "Fold away";
  }

  /** @param {string} name */
  #control(name) {
    const control = this.#controls.get(name);
    if (!control) throw new Error(`The notebook has no parameter "${name}".`);
    return control;
  }

  /** @param {Parameter} parameter @param {string} value */
  #words(parameter, value) {
    const { name } = parameter, { held } = this.#control(name);
    if (!parameter.isOptional || value !== "") return inWords(parameter, value, this.#choices.get(name));
    return held ? `${inWords(parameter, held)} as in the file` : "as in the file";
  }

  /** @returns {Values} */
  values() {
    return Object.fromEntries(this.#parameters.map(({ name }) => [name, this.#control(name).value]));
  }

  /** @param {Values} values */
  show(values) {
    for (const { name } of this.#parameters) if (values[name] !== undefined) this.#control(name).value = values[name];
  }

  /** The same, but the field of a reader who is still typing stays as it is: "5.0" typed is the server's "5".
   * @param {Values} values */
  showUntyped(values) {
    const field = /** @type {HTMLInputElement | null} */ (document.activeElement);
    const typed = field && /^(number|text)$/.test(field.type) ? field.id.replace(/^control-/, "") : "";
    this.show(Object.fromEntries(Object.entries(values).filter(([name]) => name !== typed)));
  }

  /** @param {string} name @param {string} value */
  set(name, value) { this.#control(name).value = value; }

  /** The list of moved parts of a parameter of that kind. @param {string} name */
  places(name) { return this.#control(name).list; }

  /** @param {string} name @param {string} value */
  setDefault(name, value) { this.#own.set(name, value); }

  /** @param {string} name @param {Choice[]} list */
  useChoices(name, list) {
    this.#choices.set(name, list);
    this.#controls.get(name)?.useChoices(list);
  }

  /** Another file was chosen: what stands on the file's values lets go of those that the reader gave for the one before. */
  standOnFile() {
    for (const { name, isOptional } of this.#parameters) if (isOptional) this.set(name, "");
  }

  /** What a cell tells of the controls. @param {number} cell @param {Told[]} told */
  hear(cell, told) {
    for (const name of this.#heard.get(cell) ?? []) this.#controls.get(name)?.why("");
    this.#heard.set(cell, new Set(told.filter(one => one.whyNothing).map(one => one.name)));
    for (const { name, holds, isOfFile, whyNothing } of told) {
      const control = this.#controls.get(name);
      if (holds !== null) control?.hold?.(holds, isOfFile);
      if (whyNothing) control?.why(whyNothing);
    }
    if (!told.some(one => one.holds !== null)) return;
    this.describe(this.#described);
    this.showPinned(...this.#compared);
  }

  /** What the controls say in one line, for the folded strip; and as a list for paper. @param {Values} values */
  describe(values) {
    this.#described = values;
    /** @param {Parameter} parameter */
    const isChanged = ({ name }) => values[name] !== this.#own.get(name);
    // What the reader changed comes first: on a phone there is room for little.
    const inOrder = [...this.#parameters.filter(isChanged), ...this.#parameters.filter(parameter => !isChanged(parameter))];
    this.foldValues.textContent = inOrder.map(parameter => this.#words(parameter, values[parameter.name])).join(" · ");
    for (const parameter of this.#parameters)
      this.#control(parameter.name).element.classList.toggle("changed", isChanged(parameter));
    this.reset.hidden = !this.#parameters.some(isChanged);
  }

  /**
   * Names how the pinned version (null: none) differs from the present one. Gives the differing values of each, in words.
   * @param {Values | null} pinnedValues
   * @param {Values} nowValues
   */
  showPinned(pinnedValues, nowValues) {
    this.#compared = [pinnedValues, nowValues];
    this.pinned.hidden = !pinnedValues;
    this.pin.hidden = pinnedValues !== null || this.#parameters.length === 0;
    const differing = pinnedValues ? this.#parameters.filter(({ name }) => pinnedValues[name] !== nowValues[name]) : [];
    /** @param {Values | null} values @param {Parameter} parameter */
    const of = (values, parameter) => values ? this.#words(parameter, values[parameter.name]) : "";
    this.pinnedWords.textContent = differing.map(parameter =>
      `${labelOf(parameter)}: pinned ${of(pinnedValues, parameter)}, now ${of(nowValues, parameter)}`).join(" · ")
      || "Pinned and now are the same so far. Change something above.";
    this.printed.replaceChildren(...this.#parameters.flatMap(parameter => [
      el("dt", {}, labelOf(parameter)),
      el("dd", {}, differing.includes(parameter) ? `${of(nowValues, parameter)} (pinned: ${of(pinnedValues, parameter)})`
        : of(nowValues, parameter))]));
    return { pinned: differing.map(parameter => of(pinnedValues, parameter)).join(" · "),
      now: differing.map(parameter => of(nowValues, parameter)).join(" · ") };
  }

  /** Shows words of the run; `fraction` null for no bar; a run that goes on can be stopped.
   * @param {string} text @param {number | null} [fraction] */
  tellRun(text, fraction = null, canStop = false) {
    this.state.textContent = text;
    this.bar.hidden = fraction === null;
    if (fraction !== null) this.bar.value = fraction;
    this.stop.hidden = !canStop;
  }

  /** Words about the page as a whole, where the reader sees them wherever the page is scrolled to. @param {string} text */
  tellTrouble(text) {
    this.trouble.textContent = text;
    this.trouble.hidden = !text;
  }

  /** Puts what is wrong to the controls concerned, and gives the words that concern none. @param {Problem[]} problems */
  say(problems) {
    /** @type {string[]} */
    const rest = [];
    for (const control of this.#controls.values()) control.say("");
    for (const problem of problems) {
      const control = this.#controls.get(problem.path ?? "");
      if (control)
        control.say(problem.accepted && !problem.text.includes(problem.accepted)
          ? `${problem.text} Accepted: ${problem.accepted}.` : problem.text);
      else rest.push(problem.text);
    }
    if (problems.some(problem => this.#controls.has(problem.path ?? ""))) this.#setFolded(false);
    return rest;
  }
}
