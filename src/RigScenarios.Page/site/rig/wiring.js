// What feeds what: the server proposes and says why; each line can be decided otherwise.
import { el } from "../shared/parts.js";

export class Wiring {
  #lines = new Map();

  constructor(draft, place, empty) {
    Object.assign(this, { draft, place, empty });
  }

  show(wiring) {
    this.empty.hidden = wiring.length > 0;
    for (const [thing, line] of this.#lines) if (!wiring.some((wired) => wired.thing === thing)) {
      line.element.remove();
      this.#lines.delete(thing);
    }
    wiring.forEach((wired, at) => {
      if (!this.#lines.has(wired.thing)) this.#lines.set(wired.thing, this.#line(wired.thing));
      const line = this.#lines.get(wired.thing);
      line.show(wired);
      if (this.place.children[at] !== line.element) this.place.insertBefore(line.element, this.place.children[at] ?? null);
    });
  }

  #line(thing) {
    const id = `feeds-${thing}`;
    const title = el("label", { for: id, class: "wire-title" });
    const select = el("select", { id, "data-path": `things.${thing}.fed-by`, "aria-describedby": `${id}-why` });
    // What the server adds by itself, such as a regulator that is needed, can't be fed otherwise before it is chosen above.
    const fixed = el("span", { hidden: true });
    const why = el("p", { class: "help", id: `${id}-why` });
    const essential = el("input", { type: "checkbox", "data-path": `things.${thing}.essential` });
    const essentialField = el("label", { class: "wire-essential" }, essential, el("span", {}, "the day is over when this stops"));
    const element = el("div", { class: "field wire" }, title,
      el("div", { class: "wire-from" }, el("span", { class: "wire-is" }, "is fed by"), select, fixed), essentialField, why);
    select.addEventListener("change", () => this.draft.change((value) => {
      if (!value.things[thing]) return;
      // An outlet belongs to what has it.
      delete value.things[thing].outlet;
      if (select.value === "") delete value.things[thing]["fed-by"]; else value.things[thing]["fed-by"] = select.value;
    }));
    essential.addEventListener("change", () => this.draft.change((value) => {
      if (!value.things[thing]) return;
      if (essential.checked) value.things[thing].essential = "yes"; else delete value.things[thing].essential;
    }));
    const show = (wired) => {
      title.textContent = wired.title;
      const choices =
        [...wired.choices.map((choice) => ({ value: choice.value,
        title: wired.proposed && choice.value === wired.fedBy ? `${choice.title} (proposed)` : choice.title })),
        ...(wired.proposed ? [] : [{ value: "", title: "Propose it for me" }])];
      if (!choices.some((choice) => choice.value === wired.fedBy))
        choices.unshift({ value: wired.fedBy, title: wired.fedByTitle || wired.fedBy || "nothing that fits" });
      const wanted = JSON.stringify(choices);
      if (select.dataset.shown !== wanted) {
        select.replaceChildren(...choices.map((choice) => Object.assign(el("option", {}, choice.title),
          { value: choice.value })));
        select.dataset.shown = wanted;
      }
      select.value = wired.fedBy;
      why.textContent = [wired.outlet ? `Outlet ${wired.outlet}.` : "", wired.cableTitle ? `Through ${wired.cableTitle}.` : "",
        wired.why].filter(Boolean).join(" ");
      const known = this.draft.value.things[thing];
      essentialField.hidden = !known || !wired.isDevice;
      select.hidden = !known;
      fixed.hidden = !!known;
      fixed.textContent = wired.fedByTitle || wired.fedBy || "nothing that fits";
      essential.checked = ["yes", "true", true].includes(known?.essential);
    };
    return { element, show };
  }
}
