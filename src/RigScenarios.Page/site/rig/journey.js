// Travel, in two questions: how the batteries get there, and how many people take them along.
import { el } from "../shared/parts.js";
import { freshId } from "../shared/tell.js";
import { at, textAt } from "./tree.js";

const ways = [["", "No journey"], ["flight", "With people, on a passenger flight"], ["cargo", "As air freight"],
  ["road", "By road, as a shipment"]];

export class Journey {
  #timer = 0;

  /** @param {import("./state.js").Rig} rig @param {HTMLElement} place */
  constructor(rig, place) {
    this.rig = rig;
    this.place = place;
    const id = freshId("journey");
    this.by = el("select", { id: `${id}-by`, onchange: () => this.#ask(true) },
      ways.map(([value, text]) => el("option", { value }, text)));
    this.travellers = el("input", { type: "text", id: `${id}-travellers`, autocomplete: "off", inputmode: "numeric",
      placeholder: "1 (assumed)", maxlength: 200, oninput: () => this.#ask(false), onfocus: () => this.travellers.select() });
    this.people = el("div", { class: "field" }, el("label", { for: `${id}-travellers` }, "How many people fly?"),
      this.travellers);
    place.append(el("div", { class: "field" }, el("label", { for: `${id}-by` }, "How do the batteries travel?"), this.by),
      this.people);
    rig.onChanged((detail) => this.#show(detail.isRestored ?? false));
  }

  // The first journey of the file is the one that is shown; what else it says stays.
  #present() {
    const [name, journey] = Object.entries(at(this.rig.given, "journeys") ?? {})[0] ?? [null, null];
    return { name, by: name === null ? "" : textAt(journey, "by") || "flight", travellers: textAt(journey, "travellers") };
  }

  /** @param {boolean} isRestored */
  #show(isRestored) {
    const { name, by, travellers } = this.#present();
    this.by.value = by;
    // Several ways one after the other, as a file can have them, are no choice of this list.
    if (this.by.selectedIndex < 0) {
      this.by.append(el("option", { value: by }, by));
      this.by.value = by;
    }
    this.people.hidden = !by.includes("flight");
    if (document.activeElement !== this.travellers || isRestored) this.travellers.value = travellers;
    this.by.dataset.path = `journeys.${name ?? "journey"}.by`;
    this.place.dataset.path = "asked.journey";
    this.travellers.dataset.path = `journeys.${name ?? "journey"}.travellers`;
  }

  /** @param {boolean} isSettled */
  #ask(isSettled) {
    clearTimeout(this.#timer);
    const ask = () => this.rig.edit({ do: "journey", by: this.by.value, travellers: this.travellers.value.trim() },
      { name: "how the batteries travel", key: isSettled ? null : "travellers" });
    if (isSettled) ask(); else this.#timer = setTimeout(ask, 250);
  }
}
