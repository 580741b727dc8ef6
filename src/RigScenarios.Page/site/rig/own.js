// "Mine is not listed": the figures that stand on a thing's label. What is left open is assumed by the server, which says so.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { withUnit } from "./words.js";

const units = {
  power: "W", standby: "W", voltage: "V", current: "A", energy: "Wh", mass: "g",
  "rated-load": "kg", drag: "N·m", counterbalance: "N·m", height: "mm", "foot-radius": "mm",
  "minimum-voltage": "V", "maximum-voltage": "V", "output-voltage": "V",
};

export class OwnFigures {
  #inputs = new Map();

  constructor(figures, question, changed) {
    this.element = el("div", { class: "own", hidden: true });
    const about = [question.key, ...question.kinds];
    for (const figure of figures.filter((candidate) => !candidate.kinds?.length
      || candidate.kinds.some((kind) => about.includes(kind)))) {
      const help = freshId("own-help");
      const input = el("input", { type: "text", autocomplete: "off", id: freshId("own"),
        placeholder: figure.example ? `such as ${figure.example}` : null, "aria-describedby": figure.help ? help : null });
      const told = () => changed(figure.key, withUnit(input.value, units[figure.key]));
      input.addEventListener("input", told);
      input.addEventListener("change", () => { input.value = withUnit(input.value, units[figure.key]); });
      this.#inputs.set(figure.key, input);
      this.element.append(el("div", { class: "field own-field" },
        el("label", { for: input.id }, figure.label,
        figure.needed?.includes(question.key) ? el("span", { class: "optional" }, " (needed)") : null), input,
        figure.help ? el("p", { class: "help", id: help }, figure.help) : null));
    }
  }

  // values: null hides the figures.
  show(thing, values) {
    this.element.hidden = values === null;
    for (const [key, input] of this.#inputs) {
      input.dataset.path = `things.${thing}.own.${key}`;
      if (document.activeElement !== input) input.value = values?.[key] ?? "";
    }
  }

  focus() { this.#inputs.values().next().value?.focus(); }
}
