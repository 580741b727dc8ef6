// Which parameter of a notebook a part in a drawing moves, and what becomes of it when another build is chosen.

/** @import { Parameter, Values } from "./types.js" */

export class NotebookPlaces {
  /** @type {Map<string, string>} */
  #kept = new Map();
  /** @type {Parameter[]} */
  #parameters = [];
  /** @type {import("./strip.js").Strip | null} */
  #strip = null;

  /** @param {Parameter[]} parameters @param {import("./strip.js").Strip} strip */
  use(parameters, strip) {
    this.#parameters = parameters;
    this.#strip = strip;
  }

  get #places() { return this.#parameters.filter(parameter => parameter.kind === "places"); }

  /**
   * The parameter of the drawing's own name, else the first that has such a part; undefined for none. The pinned version stands
   * still.
   * @param {HTMLElement} part
   */
  of(part) {
    const strip = this.#strip, name = part.dataset.part;
    if (!strip || !name || !part.closest(".version-now")) return undefined;
    const all = this.#places.filter(parameter => strip.places(parameter.name)?.has(name));
    return all.find(parameter => parameter.name === part.closest("[data-drawing]")?.dataset.drawing) ?? all[0];
  }

  /**
   * The reader changed a parameter; `before`: the values until then. Another build has other places: what was moved on this one
   * is kept until the reader comes back to it.
   * @param {string} changed
   * @param {Values} before
   */
  follow(changed, before) {
    const strip = this.#strip;
    if (!strip) return;
    for (const places of this.#places) {
      const file = this.#parameters.find(parameter => parameter.name === places.of)?.of ?? "";
      if (changed !== places.of && changed !== file) continue;
      /** @param {Values} values */
      const key = values => JSON.stringify([places.name, values[file], values[places.of]]);
      this.#kept.set(key(before), before[places.name]);
      strip.set(places.name, this.#kept.get(key(strip.values())) ?? "");
    }
  }
}
