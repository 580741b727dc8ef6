// The rig as it stands in the form: one value that every section reads and changes. Kept in this window's own memory with
// every change, so that neither a reload nor a stop of the server loses it.

const memory = "rig:";

export class Draft extends EventTarget {
  value = { things: {}, blocks: {} };
  place = { file: null, build: null, day: null, version: null };
  unsaved = false;

  static keyOf({ file, build, day }) { return `${memory}${file ?? "new"}|${build ?? ""}|${day ?? ""}`; }

  // What an earlier visit of this place in this window left behind; null if nothing is unsaved there.
  static kept(place) {
    try {
      const kept = JSON.parse(sessionStorage.getItem(Draft.keyOf(place)) ?? "null");
      return kept?.value?.things && kept.value.blocks ? kept : null;
    } catch { return null; }
  }

  // Another rig altogether: everything is shown anew.
  open(value, place, unsaved = false) {
    this.value = { ...value, things: { ...value.things }, blocks: { ...value.blocks } };
    this.place = { file: null, build: null, day: null, version: null, ...place };
    this.unsaved = unsaved;
    this.dispatchEvent(new Event("opened"));
    this.dispatchEvent(new Event("changed"));
  }

  // A change of the rig. `from` is the section that made it and already shows it.
  change(edit, from = null) {
    const next = structuredClone(this.value);
    edit(next);
    this.value = next;
    this.unsaved = true;
    this.#keep();
    this.dispatchEvent(new CustomEvent("changed", { detail: { from } }));
  }

  set(key, text, from = null) {
    this.change((value) => { if (text === "" || text === null) delete value[key]; else value[key] = text; }, from);
  }

  saved(place) {
    this.forget();
    this.place = { ...this.place, ...place };
    this.unsaved = false;
    this.dispatchEvent(new Event("saved"));
  }

  forget() { try { sessionStorage.removeItem(Draft.keyOf(this.place)); } catch { /* nothing was kept */ } }

  #keep() {
    try { sessionStorage.setItem(Draft.keyOf(this.place), JSON.stringify({ value: this.value, place: this.place })); } catch { /* a full or closed memory: the form still works */ }
  }
}

// An object with one of its names changed, in the same order: what is written to the file keeps its order.
export function renamed(map, from, to) {
  return Object.fromEntries(Object.entries(map).map(([name, entry]) => [name === from ? to : name, entry]));
}
