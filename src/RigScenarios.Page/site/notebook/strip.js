// The strip of controls: what can be changed, how the run stands, and what can be done with what is shown.
import { el } from "../shared/parts.js";
import { inWords, labelOf, makeControl } from "./controls.js";

/** `on`: change(name, at, isSettled), stop(), pin(), unpin(), swap(), link(), save(), reset(). */
export function makeStrip(parameters, on) {
  const isPhone = matchMedia("(max-width: 699px)").matches;
  const controls = new Map(parameters.map(parameter => [parameter.name, makeControl(parameter, on.change)]));
  const own = new Map(parameters.map(parameter => [parameter.name, parameter.default]));
  const choices = new Map(parameters.map(parameter => [parameter.name, parameter.choices]));

  const foldValues = el("span", { class: "values" });
  const foldWord = el("span", { class: "word" }, "Change");
  const fold = el("button", { type: "button", class: "strip-fold", "aria-expanded": String(!isPhone),
    "aria-controls": "strip-controls", onclick: () => setFolded(!strip.classList.contains("folded")) }, foldValues, foldWord);
  const state = el("span", { class: "state" });
  const trouble = el("p", { class: "problem", role: "status", hidden: true });
  const bar = el("progress", { max: "1", value: "0", "aria-label": "How far the run has come", hidden: true });
  const stop = el("button", { type: "button", hidden: true, onclick: on.stop }, "Stop");
  const pin = el("button", { type: "button", onclick: on.pin }, "Pin this version");
  const reset = el("button", { type: "button", class: "quiet", hidden: true, onclick: on.reset },
    "Back to the notebook's values");
  const pinnedWords = el("span");
  const pinned = el("div", { class: "pinned-words", hidden: true }, pinnedWords,
    el("button", { type: "button", onclick: on.swap }, "Swap"), el("button", { type: "button", onclick: on.unpin }, "Unpin"));
  const tuck = el("button", { type: "button", class: "quiet tuck", "aria-expanded": "true", "aria-controls": "strip-controls",
    hidden: parameters.length === 0, onclick: () => setFolded(true) }, "Fold away");
  const printed = el("dl", { class: "printed-values" });
  const group = el("div", { class: "controls", id: "strip-controls", role: "group", "aria-label": "What can be changed",
    hidden: parameters.length === 0 }, [...controls.values()].map(control => control.element));
  const strip = el("section", { class: isPhone ? "strip folded" : "strip", id: "controls", "aria-label": "Controls",
    tabindex: "-1" },
    trouble, fold, group, pinned,
    el("div", { class: "strip-foot" },
      el("div", { class: "run" }, state, bar, stop), tuck, reset, parameters.length > 0 ? pin : null,
      el("button", { type: "button", onclick: on.link }, "Copy link"),
      el("button", { type: "button", onclick: on.save }, "Save…")),
    printed);

  new ResizeObserver(() => document.documentElement.style.setProperty("--rs-strip-height", `${strip.offsetHeight}px`))
    .observe(strip);

  function setFolded(isFolded) {
    strip.classList.toggle("folded", isFolded);
    fold.setAttribute("aria-expanded", String(!isFolded));
    foldWord.textContent = isFolded ? "Change" : "Fold away";
    (isFolded ? fold : group.querySelector("input, select"))?.focus({ preventScroll: true });
  }

  const words = (parameter, value) => inWords(parameter, value, choices.get(parameter.name));

  return {
    element: strip,
    values: () => Object.fromEntries(parameters.map(parameter => [parameter.name, controls.get(parameter.name).value])),
    show(values) {
      for (const parameter of parameters) if (values[parameter.name] !== undefined)
        controls.get(parameter.name).value = values[parameter.name];
    },
    set(name, value) { controls.get(name).value = value; },
    /** The list of moved parts of a parameter of that kind. */
    places: name => controls.get(name).list,
    setDefault: (name, value) => own.set(name, value),
    useChoices(name, list) {
      choices.set(name, list);
      controls.get(name)?.useChoices(list);
    },
    /** What the controls say in one line, for the folded strip; and as a list for paper. */
    describe(values) {
      const isChanged = parameter => values[parameter.name] !== own.get(parameter.name);
      // What the reader changed comes first: on a phone there is room for little.
      const inOrder = [...parameters.filter(isChanged), ...parameters.filter(parameter => !isChanged(parameter))];
      foldValues.textContent = inOrder.map(parameter => words(parameter, values[parameter.name])).join(" · ");
      for (const parameter of parameters) controls.get(parameter.name).element.classList.toggle("changed", isChanged(parameter));
      reset.hidden = !parameters.some(isChanged);
    },
    /** Names how the pinned version (null: none) differs from the present one. Gives the differing values of each, in words. */
    showPinned(pinnedValues, nowValues) {
      pinned.hidden = !pinnedValues;
      pin.hidden = !!pinnedValues;
      const differing = pinnedValues ? parameters.filter(parameter => pinnedValues[parameter.name] !== nowValues[parameter.name])
        : [];
      const of = (values, parameter) => words(parameter, values[parameter.name]);
      pinnedWords.textContent = differing.map(parameter =>
        `${labelOf(parameter)}: pinned ${of(pinnedValues, parameter)}, now ${of(nowValues, parameter)}`).join(" · ")
        || "Pinned and now are the same so far. Change something above.";
      printed.replaceChildren(...parameters.flatMap(parameter => [
        el("dt", {}, labelOf(parameter)),
        el("dd", {}, differing.includes(parameter) ? `${of(nowValues, parameter)} (pinned: ${of(pinnedValues, parameter)})`
          : of(nowValues, parameter))]));
      return { pinned: differing.map(parameter => of(pinnedValues, parameter)).join(" · "),
        now: differing.map(parameter => of(nowValues, parameter)).join(" · ") };
    },
    /** Shows words of the run; `fraction` null for no bar; a run that goes on can be stopped. */
    tellRun(text, fraction = null, canStop = false) {
      state.textContent = text;
      bar.hidden = fraction === null;
      if (fraction !== null) bar.value = fraction;
      stop.hidden = !canStop;
    },
    /** Words about the page as a whole, where the reader sees them wherever the page is scrolled to. */
    tellTrouble(text) {
      trouble.textContent = text;
      trouble.hidden = !text;
    },
    say(problems) {
      const rest = [];
      for (const control of controls.values()) control.say("");
      for (const problem of problems) {
        const control = controls.get(problem.path);
        if (control)
          control.say(problem.accepted && !problem.text.includes(problem.accepted)
          ? `${problem.text} Accepted: ${problem.accepted}.` : problem.text);
        else rest.push(problem.text);
      }
      if (problems.some(problem => controls.has(problem.path))) setFolded(false);
      return rest;
    },
  };
}
