// Which parameter of a notebook a part in a drawing moves, and what becomes of it when another build is chosen.

export class NotebookPlaces {
  #kept = new Map();
  #parameters = [];
  #strip = null;

  use(parameters, strip) {
    this.#parameters = parameters;
    this.#strip = strip;
  }

  get #places() { return this.#parameters.filter(parameter => parameter.kind === "places"); }

  /** The parameter of the drawing's own name, else the first that has such a part; undefined for none. The pinned version stands
   * still. */
  of(part) {
    if (!this.#strip || !part.closest(".version-now")) return undefined;
    const all = this.#places.filter(parameter => this.#strip.places(parameter.name).has(part.dataset.part));
    return all.find(parameter => parameter.name === part.closest("[data-drawing]").dataset.drawing) ?? all[0];
  }

  /** The reader changed a parameter; `before`: the values until then. Another build has other places: what was moved on this one
   * is kept until the reader comes back to it. */
  follow(changed, before) {
    for (const places of this.#places) {
      const file = this.#parameters.find(parameter => parameter.name === places.of)?.of;
      if (changed !== places.of && changed !== file) continue;
      const key = values => JSON.stringify([places.name, values[file], values[places.of]]);
      this.#kept.set(key(before), before[places.name]);
      this.#strip.set(places.name, this.#kept.get(key(this.#strip.values())) ?? "");
    }
  }
}
