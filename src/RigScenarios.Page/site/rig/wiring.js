// What feeds what: the server proposes and says why; each line can be decided otherwise.
import { el } from "../shared/parts.js";

/** @typedef {{ value: string, title: string, outlets: { name: string, words: string, whyNot: string }[] }} FeedChoice */
/** @typedef {{ thing: string, title: string, fedBy: string, fedByTitle: string, proposed: boolean, why: string, part: string,
 *   isDevice: boolean, element: string, outlet: string | null, cable?: string | null, cableTitle: string,
 *   choices: FeedChoice[] }} Wired one line of the wiring */

const nothingFits = "nothing that fits";

export class Wiring {
  /** @type {Map<string, Line>} */
  #lines = new Map();

  /** @param {import("./state.js").Rig} rig @param {HTMLElement} place @param {HTMLElement} empty */
  constructor(rig, place, empty) {
    this.rig = rig;
    this.place = place;
    this.empty = empty;
  }

  /** @param {Wired[]} wiring */
  show(wiring) {
    this.empty.hidden = wiring.length > 0;
    for (const [thing, line] of this.#lines) if (!wiring.some((wired) => wired.thing === thing)) {
      line.element.remove();
      this.#lines.delete(thing);
    }
    wiring.forEach((wired, at) => {
      const line = this.#lines.get(wired.thing) ?? new Line(this.rig, wired.thing);
      this.#lines.set(wired.thing, line);
      line.show(wired);
      if (this.place.children[at] !== line.element) this.place.insertBefore(line.element, this.place.children[at] ?? null);
    });
  }
}

class Line {
  /** @param {import("./state.js").Rig} rig @param {string} thing */
  constructor(rig, thing) {
    this.rig = rig;
    this.thing = thing;
    const id = `feeds-${thing}`;
    this.title = el("label", { for: id, class: "wire-title" });
    this.select = el("select", { id, "aria-describedby": `${id}-why` });
    this.why = el("p", { class: "help", id: `${id}-why` });
    this.essential = el("input", { type: "checkbox" });
    this.essentialField = el("label", { class: "wire-essential" }, this.essential,
      el("span", {}, "the day is over when this stops"));
    this.element = el("div", { class: "field wire" }, this.title,
      el("div", { class: "wire-from" }, el("span", { class: "wire-is" }, "is fed by"), this.select), this.essentialField,
      this.why);
    this.select.addEventListener("change", () =>
      rig.edit({ do: "feed", thing, from: this.select.value }, { name: `what feeds: ${this.title.textContent}` }));
    this.essential.addEventListener("change", () => rig.set(this.#path("essential"), this.essential.checked ? "yes" : "",
      { name: `when the day is over: ${this.title.textContent}` }));
  }

  /** @param {Wired} wired */
  show(wired) {
    const { select } = this;
    this.title.textContent = wired.title;
    const choices = wired.choices.map(({ value, title }) =>
      ({ value, title: wired.proposed && value === wired.fedBy ? `${title} (proposed)` : title }));
    if (!wired.proposed) choices.push({ value: "", title: "Propose it for me" });
    if (!choices.some((choice) => choice.value === wired.fedBy))
      choices.unshift({ value: wired.fedBy, title: wired.fedByTitle || wired.fedBy || nothingFits });
    const wanted = JSON.stringify(choices);
    if (select.dataset.shown !== wanted) {
      select.replaceChildren(...choices.map(({ value, title }) => el("option", { value }, title)));
      select.dataset.shown = wanted;
    }
    select.value = wired.fedBy;
    select.dataset.path = this.#path("fed-by");
    this.essential.dataset.path = this.#path("essential");
    this.why.textContent = [wired.outlet ? `Outlet ${wired.outlet}.` : "", wired.cableTitle ? `Through ${wired.cableTitle}.` : "",
      wired.why].filter(Boolean).join(" ");
    this.essentialField.hidden = !wired.isDevice;
    this.essential.checked = ["yes", "true"].includes(this.rig.text(this.#path("essential")));
  }

  /** @param {string} key */
  #path(key) { return `${groupOf(this.rig, this.thing)}.${key}`; }
}

/**
 * Where a thing's feed stands in the tree: among the devices, the regulators or the splitters of the build.
 * @param {import("./state.js").Rig} rig
 * @param {string} thing
 */
export function groupOf(rig, thing) {
  const build = `builds.${rig.place.build}`;
  const question = rig.thing(thing)?.question;
  const group = ["regulators", "splitters", "devices"].find((name) => rig.has(`${build}.${name}.${thing}`))
    ?? (question === "regulator" || !question ? "regulators" : "devices");
  return `${build}.${group}.${thing}`;
}
