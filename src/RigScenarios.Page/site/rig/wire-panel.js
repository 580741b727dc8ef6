// The panel below the wiring's drawing: into which outlet one thing is plugged, and through which cable.
import { el } from "../shared/parts.js";
import { freshId, inWords } from "../shared/tell.js";
import { closeWithEnter } from "./keyboard.js";
import { groupOf } from "./wiring.js";
import { withUnit } from "./words.js";

/** @typedef {import("./wiring.js").Wired} Wired */

// No name has a space, so it parts a feed from its outlet and marks what is no name.
const proposeIt = " propose", noCable = "", ownCable = " own";
const firstOwn = { gauge: "0.75 mm²", length: "600 mm" };

export class WirePanel {
  /** @type {Wired | null} */
  #line = null;
  /**
   * Figures that were given and that the program has not answered yet.
   * @type {{ thing: string, length?: string, gauge?: string } | null}
   */
  #given = null;
  /** @type {{ value: string, title: string }[]} */
  cables = [];

  /** @param {import("./state.js").Rig} rig @param {() => void} close */
  constructor(rig, close) {
    this.rig = rig;
    const id = freshId("wire");
    this.title = el("h4", { id });
    this.outlet = el("select", { id: `${id}-outlet`, onchange: () => this.#plug() });
    this.cable = el("select", { id: `${id}-cable`, onchange: () => this.#takeCable() });
    this.length = el("input", { type: "text", id: `${id}-length`, autocomplete: "off", inputmode: "decimal",
      placeholder: firstOwn.length, onchange: () => this.#setOwn({ length: withUnit(this.length.value, "mm") }) });
    this.gauge = el("input", { type: "text", id: `${id}-gauge`, autocomplete: "off", placeholder: firstOwn.gauge,
      "aria-describedby": `${id}-gauge-help`,
      onchange: () => this.#setOwn({ gauge: withUnit(this.gauge.value, "mm²").replace(/mm2|mm\^2/, "mm²") }) });
    for (const input of [this.length, this.gauge]) closeWithEnter(input);
    this.own = el("div", { class: "wire-own", hidden: true },
      el("div", { class: "field" }, el("label", { for: this.length.id }, "Length, one way"), this.length),
      el("div", { class: "field" }, el("label", { for: this.gauge.id }, "Gauge of each conductor"), this.gauge),
      el("p", { class: "help", id: `${id}-gauge-help` }, "As printed on the cable: 0.75 mm² or AWG 20."));
    this.told = el("p", { class: "help", role: "status" });
    this.wrong = el("p", { class: "problems", hidden: true });
    this.element = el("div", { class: "wire-panel no-print", role: "group", "aria-labelledby": id, hidden: true }, this.title,
      el("div", { class: "field" }, el("label", { for: this.outlet.id }, "Plugged into"), this.outlet),
      el("div", { class: "field" }, el("label", { for: this.cable.id }, "Through"), this.cable),
      this.own, this.wrong, this.told, el("button", { type: "button", onclick: close }, "Done"));
    this.element.addEventListener("keydown", (event) => {
      if (event.key !== "Escape") return;
      event.preventDefault();
      close();
    });
  }

  open() {
    this.element.hidden = false;
    this.element.scrollIntoView({ block: "nearest" });
    this.outlet.focus({ preventScroll: true });
  }

  /** Where a thing is plugged in, in words. @param {Wired} line */
  where(line) {
    const at = line.outlet ? `${line.fedByTitle}, outlet ${line.outlet}` : line.fedByTitle || "nothing";
    return `plugged into ${at}${line.cableTitle ? `, through ${line.cableTitle}` : ", no cable given"}`;
  }

  /** @param {Wired} line @param {any[]} problems */
  show(line, problems) {
    this.#line = line;
    this.title.textContent = line.title;
    replaceOptions(this.outlet, this.#outlets(line));
    this.outlet.value = line.outlet ? `${line.fedBy} ${line.outlet}` : line.fedBy;
    replaceOptions(this.cable, [el("option", { value: noCable }, "No cable given: joined without resistance"),
      ...this.cables.map((cable) => el("option", { value: cable.value }, cable.title)),
      el("option", { value: ownCable }, "A cable of its own figures")]);
    const { name, own } = this.#present();
    this.cable.value = own ? ownCable : name;
    if (this.cable.selectedIndex < 0) this.cable.value = noCable;
    this.own.hidden = !own;
    if (own) for (const key of /** @type {const} */ (["length", "gauge"]))
      if (document.activeElement !== this[key] && !this.#givenTo(line.thing)[key]) this[key].value = own[key] ?? "";
    const where = this.where(line);
    this.told.textContent = `${where[0].toUpperCase()}${where.slice(1)}. ${line.proposed ? "Proposed. " : ""}${line.why}`;
    this.#showProblems(problems, own?.part ?? null);
  }

  /** @param {Wired} line */
  #outlets(line) {
    const groups = line.choices.map((choice) => {
      const none = el("option", { value: choice.value }, choice.outlets.length > 0 ? "No outlet in particular" : choice.title);
      if (choice.outlets.length === 0) return none;
      return el("optgroup", { label: choice.title }, choice.outlets.map((outlet) => el("option",
        { value: `${choice.value} ${outlet.name}`, disabled: outlet.whyNot !== "" && !isAt(line, choice, outlet) },
        `Outlet ${outlet.name}: ${outlet.words}${outlet.whyNot ? ` (${outlet.whyNot})` : ""}`)), none);
    });
    return [...(line.fedBy ? [] : [el("option", { value: "" }, "Nothing that fits")]), ...groups,
      ...(line.proposed ? [] : [el("option", { value: proposeIt }, "Propose it for me")])];
  }

  // The cable as the tree has it: a name of the kit, and its figures where it is no listed one.
  #present() {
    const name = this.rig.text(`${groupOf(this.rig, this.#line?.thing ?? "")}.cable`);
    const part = name ? this.rig.text(`kit.${name}.part`) : "", at = `parts.${part}.cable`;
    const isOwn = part.startsWith("own-") && this.rig.has(at);
    return { name, own: isOwn ? { part, length: this.rig.text(`${at}.length`), gauge: this.rig.text(`${at}.gauge`) } : null };
  }

  /** @param {any[]} problems @param {string | null} part */
  #showProblems(problems, part) {
    const group = groupOf(this.rig, this.#line?.thing ?? "");
    const found = problems.filter(({ path = "" }) => (part && path.startsWith(`parts.${part}`))
      || [`${group}.outlet`, `${group}.cable`, `${group}.fed-by`].some((start) => path.startsWith(start)));
    this.wrong.hidden = found.length === 0;
    this.wrong.textContent = found.map(inWords).join(" ");
  }

  async #plug() {
    if (!this.#line) return;
    const { thing, title, fedBy } = this.#line, [feed, outlet] = this.outlet.value.split(" ");
    const from = this.outlet.value === proposeIt ? "" : feed;
    if (from !== fedBy || this.outlet.value === proposeIt)
      await this.rig.edit({ do: "feed", thing, from }, { name: `what feeds: ${title}`, key: `plug ${thing}` });
    if (!from) return;
    await this.rig.edit({ do: "outlet", thing, outlet: outlet ?? "" }, { name: `outlet: ${title}`, key: `plug ${thing}` });
  }

  #takeCable() {
    if (!this.#line) return;
    const { thing, title } = this.#line, { value } = this.cable;
    this.own.hidden = value !== ownCable;
    if (value === ownCable) Object.assign(this.length, { value: firstOwn.length });
    if (value === ownCable) Object.assign(this.gauge, { value: firstOwn.gauge });
    this.rig.edit({ do: "cable", thing, ...(value === ownCable ? firstOwn : { cable: value }) }, { name: `cable: ${title}` });
  }

  // A second figure may be given before the first is answered: it goes along, or it would be lost.
  /** @param {{ length?: string, gauge?: string }} figure */
  async #setOwn(figure) {
    if (!this.#line) return;
    const { thing, title } = this.#line, present = this.#present().own ?? firstOwn;
    const given = { ...this.#givenTo(thing), thing, ...figure };
    this.#given = given;
    const { length, gauge } = { length: present.length, gauge: present.gauge, ...given };
    try {
      await this.rig.edit({ do: "cable", thing, length: length || firstOwn.length, gauge: gauge || firstOwn.gauge },
        { name: `cable: ${title}` });
    } finally {
      if (this.#given === given) this.#given = null;
    }
  }

  /** @param {string} thing @returns {{ length?: string, gauge?: string }} */
  #givenTo(thing) { return this.#given?.thing === thing ? this.#given : {}; }
}

/** @param {Wired} line @param {{ value: string }} choice @param {{ name: string }} outlet */
function isAt(line, choice, outlet) { return line.fedBy === choice.value && line.outlet === outlet.name; }

// Options are put in again only where they differ: whoever has the list open keeps it.
/** @param {any} select @param {Element[]} options */
function replaceOptions(select, options) {
  const shown = options.map((option) => option.outerHTML).join("");
  if (select.rsShown === shown) return;
  select.rsShown = shown;
  select.replaceChildren(...options);
}
