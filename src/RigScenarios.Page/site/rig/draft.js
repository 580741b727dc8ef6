// The rig as it stands in the form: one value that every section reads and changes, kept by the browser with every change.
import { forget, keep, kept } from "../shared/kept.js";

export class Draft extends EventTarget {
  value = { things: {}, blocks: {} };
  place = { file: null, build: null, day: null, version: null };
  unsaved = false;

  static #keyOf({ file, build, day }) { return `rig:${file ?? "new"}|${build ?? ""}|${day ?? ""}`; }

  // What an earlier visit of this place left unsaved: {value, place, isHere}; null if nothing.
  static kept(place) {
    const found = kept(Draft.#keyOf(place));
    return found?.value.value?.things && found.value.value.blocks ? { ...found.value, isHere: found.isHere } : null;
  }

  // Another rig altogether: everything is shown anew.
  open(value, place, unsaved = false) {
    this.value = { ...value, things: { ...value.things }, blocks: { ...value.blocks } };
    this.place = { file: null, build: null, day: null, version: null, ...place };
    this.unsaved = unsaved;
    if (unsaved) this.#keep();
    this.dispatchEvent(new Event("opened"));
    this.#tell(true);
  }

  // A change of the rig. Quick: with a slider, a choice or the pointer, so that what is there now is meant; not while a word is
  // typed.
  change(edit, isQuick = true) {
    const next = structuredClone(this.value);
    edit(next);
    this.value = next;
    this.unsaved = true;
    this.#keep();
    this.#tell(isQuick);
  }

  set(key, text, isQuick = true) {
    this.change((value) => { if (text === "" || text === null) delete value[key]; else value[key] = text; }, isQuick);
  }

  // A thing came onto the rig elsewhere than in the questions: they show it too.
  tellAdded() { this.dispatchEvent(new Event("added")); }

  saved(place) {
    this.forget();
    this.place = { ...this.place, ...place };
    this.unsaved = false;
    this.dispatchEvent(new Event("saved"));
  }

  forget() { forget(Draft.#keyOf(this.place)); }

  #keep() { keep(Draft.#keyOf(this.place), { value: this.value, place: this.place }); }

  #tell(isQuick) { this.dispatchEvent(new CustomEvent("changed", { detail: { isQuick } })); }
}

// An object with one of its names changed, in the same order: what is written to the file keeps its order.
export function renamed(map, from, to) {
  return Object.fromEntries(Object.entries(map).map(([name, entry]) => [name === from ? to : name, entry]));
}
