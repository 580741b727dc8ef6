// The strip of controls: what can be changed, how the run stands, and what can be done with what is shown.
import { el } from "./parts.js";
import { inWords, labelOf, makeControl } from "./controls.js";

/** `on`: change(name, at, isSettled), stop(), pin(), unpin(), swap(), link(), save(), reset(). */
export function makeStrip(parameters, on) {
  const controls = new Map(parameters.map(parameter => [parameter.name, makeControl(parameter, on.change)]));
  let choices = new Map(parameters.map(parameter => [parameter.name, parameter.choices]));

  const foldValues = el("span", { class: "values" });
  const foldWord = el("span", { class: "word" }, "Change");
  const fold = el("button", { type: "button", class: "strip-fold", "aria-expanded": "false", "aria-controls": "strip-body", onclick: () => setFolded(!strip.classList.contains("folded")) }, foldValues, foldWord);
  const state = el("span", { class: "state" });
  const bar = el("progress", { max: "1", value: "0", "aria-label": "How far the run has come", hidden: true });
  const stop = el("button", { type: "button", hidden: true, onclick: on.stop }, "Stop");
  const pin = el("button", { type: "button", onclick: on.pin }, "Pin this version");
  const reset = el("button", { type: "button", class: "quiet", hidden: true, onclick: on.reset }, "Back to the notebook's values");
  const pinnedWords = el("span");
  const pinned = el("div", { class: "pinned-words", hidden: true }, pinnedWords,
    el("button", { type: "button", onclick: on.swap }, "Swap"), el("button", { type: "button", onclick: on.unpin }, "Unpin"));
  const printed = el("dl", { class: "printed-values" });
  const group = el("div", { class: "controls", role: "group", "aria-label": "What can be changed", hidden: parameters.length === 0 }, [...controls.values()].map(control => control.element));
  const strip = el("section", { class: "strip folded", id: "controls", "aria-label": "Controls", tabindex: "-1" },
    fold, group, pinned,
    el("div", { class: "strip-foot", id: "strip-body" },
      el("div", { class: "run" }, state, bar, stop), reset, parameters.length > 0 ? pin : null,
      el("button", { type: "button", onclick: on.link }, "Copy link"), el("button", { type: "button", onclick: on.save }, "Save…")),
    printed);

  function setFolded(isFolded) {
    strip.classList.toggle("folded", isFolded);
    fold.setAttribute("aria-expanded", String(!isFolded));
    foldWord.textContent = isFolded ? "Change" : "Fold away";
  }

  const words = (parameter, value) => inWords(parameter, value, choices.get(parameter.name));

  return {
    element: strip,
    values: () => Object.fromEntries(parameters.map(parameter => [parameter.name, controls.get(parameter.name).value])),
    show(values) {
      for (const parameter of parameters) if (values[parameter.name] !== undefined) controls.get(parameter.name).value = values[parameter.name];
    },
    useChoices(name, list) {
      choices.set(name, list);
      controls.get(name)?.useChoices(list);
    },
    /** What the controls say in one line, for the folded strip; and as a list for paper. */
    describe(values) {
      foldValues.textContent = parameters.map(parameter => words(parameter, values[parameter.name])).join(" · ");
      printed.replaceChildren(...parameters.flatMap(parameter => [el("dt", {}, labelOf(parameter)), el("dd", {}, words(parameter, values[parameter.name]))]));
      let isChanged = false;
      for (const parameter of parameters) {
        const differs = values[parameter.name] !== parameter.default;
        controls.get(parameter.name).element.classList.toggle("changed", differs);
        isChanged ||= differs;
      }
      reset.hidden = !isChanged;
    },
    /** Names how the pinned version differs from the present one; null where nothing is pinned. */
    showPinned(pinnedValues, nowValues) {
      pinned.hidden = !pinnedValues;
      pin.hidden = !!pinnedValues;
      if (!pinnedValues) return;
      const differences = parameters.filter(parameter => pinnedValues[parameter.name] !== nowValues[parameter.name])
        .map(parameter => `${labelOf(parameter)}: pinned ${words(parameter, pinnedValues[parameter.name])}, now ${words(parameter, nowValues[parameter.name])}`);
      pinnedWords.textContent = differences.length > 0 ? differences.join(" · ") : "Pinned and now are the same so far. Change something above.";
    },
    /** Shows words of the run; `fraction` null for no bar; a run that goes on can be stopped. */
    tellRun(text, fraction = null, canStop = false) {
      state.textContent = text;
      bar.hidden = fraction === null;
      if (fraction !== null) bar.value = fraction;
      stop.hidden = !canStop;
    },
    say(problems) {
      const rest = [];
      for (const control of controls.values()) control.say("");
      for (const problem of problems) {
        const control = controls.get(problem.path);
        if (control) control.say(problem.accepted && !problem.text.includes(problem.accepted) ? `${problem.text} Accepted: ${problem.accepted}.` : problem.text);
        else rest.push(problem.text);
      }
      if (problems.some(problem => controls.has(problem.path))) setFolded(false);
      return rest;
    },
  };
}
