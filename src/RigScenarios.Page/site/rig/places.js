// Where things sit: proposed by the server, moved in the drawing, with a slider or by a number. What was moved is part of the
// rig.
import { makeMoving } from "../shared/moving.js";
import { inMillimetres, PlacesList, readPlaces } from "../shared/places.js";

export class Places {
  #slide = null;

  constructor(draft, answer) {
    this.draft = draft;
    const byId = (id) => document.getElementById(id);
    Object.assign(this, { section: byId("places-some"), none: byId("places-none"), battery: byId("battery-place"),
      slider: byId("battery-place-slider"), told: byId("battery-place-told"), head: byId("head-plate") });
    this.list = new PlacesList({ label: "Moved parts", changed: () => this.#keep() });
    byId("places-list").append(this.list.element);
    this.moving = makeMoving(byId("answer-parts"), {
      allows: (part) => this.list.has(part.dataset.part),
      move: (part, millimetres) => { this.list.move(part.dataset.part, millimetres); this.#keep(); },
    });
    this.slider.addEventListener("input", () => { this.list.move(this.#slide, Number(this.slider.value)); this.#keep(); });
    draft.addEventListener("changed", () => this.#show());
    answer.addEventListener("answered", ({ detail }) => this.#answered(detail, answer));
    answer.addEventListener("refused", () => this.moving.settled());
  }

  // The texts as the server reads them.
  #keep() {
    const places = Object.fromEntries([...readPlaces(this.list.value)].map(([name, millimetres]) => [name, `${millimetres} mm`]));
    this.draft.change((rig) => { if (Object.keys(places).length > 0) rig.places = places; else delete rig.places; });
  }

  #show() {
    const places = this.draft.value.places ?? {};
    const text = Object.entries(places).map(([name, place]) => `${name} ${place}`).join("; ");
    if (text !== this.list.value) this.list.value = text;
    const hasHead = Object.values(this.draft.value.things).some((thing) => thing.role === "head");
    this.head.hidden = !hasHead || this.draft.value.stance !== "tripod";
    this.#showBattery();
  }

  #answered(answer, asked) {
    this.list.useChoices(answer.moveable);
    this.#slide = answer.batterySlide;
    this.section.hidden = answer.moveable.length === 0;
    this.none.hidden = answer.moveable.length > 0;
    this.#showBattery();
    this.moving.arm();
    if (!asked.isBehind) this.moving.settled();
  }

  #compared(at, choice) {
    const from = choice.isUsual ? "proposed" : "in the file";
    if (Math.abs(at - choice.at) < 0.05) return choice.isUsual ? ", as proposed" : ", as in the file";
    return `, ${inMillimetres(Math.abs(at - choice.at))} further ${at < choice.at ? "back" : "forward"} than ${from}`;
  }

  #showBattery() {
    const choice = this.list.choice(this.#slide);
    this.battery.hidden = !choice;
    if (!choice) return;
    const at = this.list.at(this.#slide);
    Object.assign(this.slider, { min: Math.ceil(choice.least), max: Math.floor(choice.greatest) });
    if (document.activeElement !== this.slider || Math.abs(Number(this.slider.value) - at) > 1) this.slider.value = at;
    this.slider.setAttribute("aria-valuetext", inMillimetres(at).replace("\u2212", "minus "));
    this.told.textContent = `${choice.title}: ${inMillimetres(at)}${this.#compared(at, choice)}`;
  }
}
