// The wiring's drawing: a device, a splitter or a regulator is chosen in it, and a panel beside it says where it is plugged in
// and through which cable.
import { el } from "../shared/parts.js";
import { freshId, inWords } from "../shared/tell.js";
import { withUnit } from "./words.js";

// No name has a space, so it parts a feed from its outlet and marks what is no name.
const proposeIt = " propose", noCable = "", ownCable = " own";
const firstOwn = { gauge: "0.75 mm²", length: "600 mm" };

export class WiringChoice {
  #lines = new Map();
  #cables = [];
  #chosen = null;

  // root: where the drawing is shown; told of each answer with show().
  constructor(draft, root) {
    Object.assign(this, { draft, root });
    const id = freshId("wire");
    this.title = el("h4", { id });
    this.outlet = el("select", { id: `${id}-outlet` });
    this.cable = el("select", { id: `${id}-cable` });
    this.length = el("input", { type: "text", id: `${id}-length`, autocomplete: "off", placeholder: firstOwn.length });
    this.gauge = el("input", { type: "text", id: `${id}-gauge`, autocomplete: "off", placeholder: firstOwn.gauge,
      "aria-describedby": `${id}-gauge-help` });
    this.own = el("div", { class: "wire-own", hidden: true },
      el("div", { class: "field" }, el("label", { for: this.length.id }, "Length, one way"), this.length),
      el("div", { class: "field" }, el("label", { for: this.gauge.id }, "Gauge of each conductor"), this.gauge),
      el("p", { class: "help", id: `${id}-gauge-help` }, "As printed on the cable: 0.75 mm² or AWG 20."));
    this.told = el("p", { class: "help", role: "status" });
    this.wrong = el("p", { class: "problems", hidden: true });
    this.panel = el("div", { class: "wire-panel no-print", role: "group", "aria-labelledby": id, hidden: true },
      this.title,
      el("div", { class: "field" }, el("label", { for: this.outlet.id }, "Plugged into"), this.outlet),
      el("div", { class: "field" }, el("label", { for: this.cable.id }, "Through"), this.cable),
      this.own, this.wrong, this.told,
      el("button", { type: "button", onclick: () => this.#close() }, "Done"));
    this.outlet.addEventListener("change", () => this.#plug());
    this.cable.addEventListener("change", () => this.#takeCable());
    this.length.addEventListener("change", () => this.#setOwn("length", withUnit(this.length.value, "mm")));
    this.gauge.addEventListener("change",
      () => this.#setOwn("gauge", withUnit(this.gauge.value, "mm²").replace(/mm2|mm\^2/, "mm²")));
    this.panel.addEventListener("keydown", (event) => { if (event.key === "Escape") { event.preventDefault(); this.#close(); } });
    root.addEventListener("rs-drawn", (event) => this.#arm(event.target));
    root.addEventListener("click", (event) => this.#choose(event.target.closest?.(".wire-element"), event));
    root.addEventListener("keydown", (event) => {
      const element = event.target.closest?.(".wire-element");
      if (!element || (event.key !== "Enter" && event.key !== " ")) return;
      event.preventDefault();
      this.#choose(element, event);
    });
    draft.addEventListener("opened", () => this.#close(false));
  }

  // What can be chosen now. The panel of what is chosen follows.
  show({ wiring, cables, problems }) {
    this.#lines = new Map(wiring.map((line) => [line.element, line]));
    this.#cables = cables;
    for (const sheet of this.root.querySelectorAll(".rs-sheet")) this.#arm(sheet);
    if (this.#chosen && !this.#lines.has(this.#chosen)) this.#close(false);
    if (this.#chosen) this.#fill(problems);
  }

  // Makes what can be plugged elsewhere buttons of the drawing. One of the two widths is shown at a time.
  #arm(sheet) {
    for (const element of sheet.querySelectorAll("[data-element]")) {
      const line = this.#lines.get(element.dataset.element);
      if (!line) continue;
      element.classList.add("wire-element");
      const isChosen = line.element === this.#chosen;
      element.classList.toggle("wire-chosen", isChosen);
      // What is written in the box is its name.
      const words = this.#where(line);
      for (const [name, value] of Object.entries({ tabindex: 0, role: "button", "aria-expanded": isChosen,
        "aria-description": words })) element.setAttribute(name, value);
      element.ownerSVGElement.setAttribute("role", "group");
    }
    const figure = sheet.closest(".rs-drawing");
    if (sheet.querySelector(".wire-element") && sheet.nextElementSibling !== this.panel && figure) sheet.after(this.panel);
  }

  #where(line) {
    const at = line.outlet ? `${line.fedByTitle}, outlet ${line.outlet}` : line.fedByTitle || "nothing";
    return `plugged into ${at}${line.cableTitle ? `, through ${line.cableTitle}` : ", no cable given"}`;
  }

  #choose(element, event) {
    if (!element) return;
    event.stopPropagation();
    this.#chosen = element.dataset.element;
    this.#fill([]);
    this.#armAll();
    this.panel.hidden = false;
    this.panel.scrollIntoView({ block: "nearest" });
    this.outlet.focus({ preventScroll: true });
  }

  #close(returnsFocus = true) {
    const chosen = this.#chosen;
    this.#chosen = null;
    this.panel.hidden = true;
    this.#armAll();
    if (chosen && returnsFocus)
      [...this.root.querySelectorAll(".wire-element")].find((element) => element.dataset.element === chosen
      && element.getClientRects().length > 0)?.focus();
  }

  #armAll() { for (const sheet of this.root.querySelectorAll(".rs-sheet")) this.#arm(sheet); }

  #fill(problems) {
    const line = this.#lines.get(this.#chosen), thing = this.draft.value.things[line.thing];
    this.title.textContent = line.title;
    const groups = line.choices.map((choice) => {
      const none = el("option", { value: choice.value }, choice.outlets.length > 0 ? "No outlet in particular" : choice.title);
      if (choice.outlets.length === 0) return none;
      return el("optgroup", { label: choice.title },
        choice.outlets.map((outlet) => el("option",
        { value: `${choice.value} ${outlet.name}`, disabled: outlet.whyNot !== "" && !isAt(line, choice, outlet) },
        `Outlet ${outlet.name}: ${outlet.words}${outlet.whyNot ? ` (${outlet.whyNot})` : ""}`)), none);
    });
    const proposed = line.proposed ? [] : [el("option", { value: proposeIt }, "Propose it for me")];
    replaceOptions(this.outlet, [...(line.fedBy ? [] : [el("option", { value: "" }, "Nothing that fits")]), ...groups,
      ...proposed]);
    this.outlet.value = line.outlet ? `${line.fedBy} ${line.outlet}` : line.fedBy;
    replaceOptions(this.cable, [el("option", { value: noCable }, "No cable given: joined without resistance"),
      ...this.#cables.map((cable) => el("option", { value: cable.value }, cable.title)),
      el("option", { value: ownCable }, "A cable of its own figures")]);
    const own = thing?.["own-cable"];
    this.cable.value = own ? ownCable : thing?.cable ?? noCable;
    if (this.cable.selectedIndex < 0) this.cable.value = noCable;
    this.own.hidden = !own;
    if (own) for (const key of ["length", "gauge"]) if (document.activeElement !== this[key]) this[key].value = own[key] ?? "";
    const where = this.#where(line);
    this.told.textContent = `${where[0].toUpperCase()}${where.slice(1)}. ${line.proposed ? "Proposed. " : ""}${line.why}`;
    const found = problems.filter((problem) => problem.path?.startsWith(`things.${line.thing}.`)
      && /\.(outlet|cable|own-cable|fed-by)/.test(problem.path));
    this.wrong.hidden = found.length === 0;
    this.wrong.textContent = found.map(inWords).join(" ");
  }

  // A regulator that was only proposed becomes one of the rig as soon as somebody decides about it.
  #change(edit) {
    const line = this.#lines.get(this.#chosen);
    const isNew = !this.draft.value.things[line.thing];
    this.draft.change((rig) => {
      rig.things[line.thing] ??= { role: "regulator", part: line.part };
      edit(rig.things[line.thing]);
    });
    if (isNew) this.draft.tellAdded();
  }

  #plug() {
    const [feed, outlet] = this.outlet.value.split(" ");
    this.#change((thing) => {
      delete thing.outlet;
      if (this.outlet.value === proposeIt || feed === "") delete thing["fed-by"]; else thing["fed-by"] = feed;
      if (feed && outlet) thing.outlet = outlet;
    });
  }

  #takeCable() {
    const { value } = this.cable;
    this.#change((thing) => {
      delete thing.cable;
      delete thing["own-cable"];
      if (value === ownCable) thing["own-cable"] = { ...firstOwn };
      else if (value !== noCable) thing.cable = value;
    });
    this.own.hidden = value !== ownCable;
    if (value !== ownCable) return;
    Object.assign(this.length, { value: firstOwn.length });
    Object.assign(this.gauge, { value: firstOwn.gauge });
  }

  #setOwn(key, text) {
    this.#change((thing) => { thing["own-cable"] = { ...firstOwn, ...thing["own-cable"], [key]: text || firstOwn[key] }; });
  }
}

function isAt(line, choice, outlet) { return line.fedBy === choice.value && line.outlet === outlet.name; }

// Options are put in again only where they differ: whoever has the list open keeps it.
function replaceOptions(select, options) {
  const shown = options.map((option) => option.outerHTML).join("");
  if (select.rsShown === shown) return;
  select.rsShown = shown;
  select.replaceChildren(...options);
}
