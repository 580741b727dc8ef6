// The wiring's drawing: a device, a splitter or a regulator is chosen in it, and a panel beside it says where it is plugged in
// and through which cable.
import { WirePanel } from "./wire-panel.js";

/** @typedef {import("./wiring.js").Wired} Wired */

export class WiringChoice {
  /** @type {Map<string, Wired>} */
  #lines = new Map();
  /** @type {string | null} */
  #chosen = null;

  /**
   * @param {import("./state.js").Rig} rig
   * @param {HTMLElement} root where the drawing is shown; told of each answer with show()
   */
  constructor(rig, root) {
    this.root = root;
    this.panel = new WirePanel(rig, () => this.#close());
    root.addEventListener("rs-drawn", (event) => this.#arm(/** @type {HTMLElement} */ (event.target)));
    root.addEventListener("click", (event) => this.#choose(elementOf(event), event));
    root.addEventListener("keydown", (event) => {
      const element = elementOf(event);
      if (!element || (event.key !== "Enter" && event.key !== " ")) return;
      event.preventDefault();
      this.#choose(element, event);
    });
    rig.addEventListener("opened", () => this.#close(false));
  }

  /**
   * What can be chosen now. The panel of what is chosen follows.
   * @param {{ wiring: Wired[], cables: any[], problems: any[] }} answer
   */
  show({ wiring, cables, problems }) {
    this.#lines = new Map(wiring.map((line) => [line.element, line]));
    this.panel.cables = cables;
    this.#armAll();
    const line = this.#lines.get(this.#chosen ?? "");
    if (this.#chosen && !line) this.#close(false);
    if (line) this.panel.show(line, problems);
  }

  // Makes what can be plugged elsewhere buttons of the drawing. One of the two widths is shown at a time.
  /** @param {HTMLElement} sheet */
  #arm(sheet) {
    for (const element of sheet.querySelectorAll("[data-element]")) {
      const line = this.#lines.get(element.dataset.element ?? "");
      if (!line) continue;
      element.classList.add("wire-element");
      const isChosen = line.element === this.#chosen;
      element.classList.toggle("wire-chosen", isChosen);
      // What is written in the box is its name.
      for (const [name, value] of Object.entries({ tabindex: 0, role: "button", "aria-expanded": isChosen,
        "aria-description": this.panel.where(line) })) element.setAttribute(name, String(value));
      element.ownerSVGElement?.setAttribute("role", "group");
    }
    const figure = sheet.closest(".rs-drawing"), { element } = this.panel;
    if (sheet.querySelector(".wire-element") && sheet.nextElementSibling !== element && figure) sheet.after(element);
  }

  #armAll() {
    for (const sheet of /** @type {NodeListOf<HTMLElement>} */ (this.root.querySelectorAll(".rs-sheet"))) this.#arm(sheet);
  }

  /** @param {HTMLElement | null} element @param {Event} event */
  #choose(element, event) {
    if (!element) return;
    event.stopPropagation();
    const line = this.#lines.get(element.dataset.element ?? "");
    if (!line) return;
    this.#chosen = line.element;
    this.panel.show(line, []);
    this.#armAll();
    this.panel.open();
  }

  #close(returnsFocus = true) {
    const chosen = this.#chosen;
    this.#chosen = null;
    this.panel.element.hidden = true;
    this.#armAll();
    if (chosen && returnsFocus)
      /** @type {HTMLElement[]} */ ([...this.root.querySelectorAll(".wire-element")])
        .find((element) => element.dataset.element === chosen && element.getClientRects().length > 0)?.focus();
  }
}

/** @param {Event} event @returns {HTMLElement | null} */
function elementOf(event) { return /** @type {any} */ (event.target).closest?.(".wire-element") ?? null; }
