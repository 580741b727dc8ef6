// The rig as it stands in the form: what somebody gave, and how it is shown. Every section reads it and changes it here; the
// browser keeps it with every change.
import { forget, keep, kept } from "../shared/kept.js";
import { ask } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { History } from "./history.js";
import { at, isSame, textAt, withAt } from "./tree.js";

/** @typedef {import("../shared/requests.js").Tree} Tree */
/** @typedef {import("../shared/requests.js").Thing} Thing */
/** @typedef {import("../shared/requests.js").View} View */
/** @typedef {import("../shared/requests.js").ShownRig} Shown */
/** @typedef {{ file: string | null, build: string | null, day: string | null, version: string | null }} Place */
/** @typedef {{ name: string, key?: string | null, isQuick?: boolean }} Doing what a step is called; changes with one key are one
 *   step; quick: done with a slider, a choice or the pointer, so that what is there now is meant */

/** @typedef {{ isQuick: boolean, isRestored?: boolean, isLook?: boolean }} Change restored: what is shown is not what was being
 *   typed; look: the same rig, only shown in other words */

/** @type {View} */
const nothing = { things: [], camera: null, battery: null, charger: null };

/** @param {Shown} one @param {Shown} other */
export const isSameRig = (one, other) => isSame(one.given, other.given) && isSame(one.view.things, other.view.things);

export class Rig extends EventTarget {
  /** @type {Tree} */
  given = {};
  view = nothing;
  /** @type {Place} */
  place = { file: null, build: null, day: null, version: null };
  unsaved = false;
  /** @type {History<Shown>} */
  history = new History(isSameRig);
  /** Whether an edit is on its way to the server. */
  isAsking = false;
  /** What the window keeps besides the rig itself, such as the rigs beside it. */
  /** @type {any} */
  beside = null;
  #turn = Promise.resolve();
  /** @type {((given: Tree) => Tree)[]} */
  #since = [];
  #opening = 0;
  /** @type {Tree} */
  #opened = {};

  /** @param {Place} place */
  static #keyOf({ file, build, day }) { return `rig-given:${file ?? "new"}|${build ?? ""}|${day ?? ""}`; }

  /**
   * What an earlier visit of this place left unsaved; null if nothing.
   * @param {Place} place
   * @returns {{ value: Shown & { place: Place, beside?: any }, isHere: boolean } | null}
   */
  static kept(place) {
    /** @type {any} */
    const found = kept(Rig.#keyOf(place));
    return found?.value?.given && found.value.view?.things ? found : null;
  }

  get shown() { return { given: this.given, view: this.view }; }

  /** The names that stand for {build}, {day}, {battery} and {charger} in paths. */
  get names() { return { build: this.place.build, day: this.place.day, battery: this.view.battery, charger: this.view.charger }; }

  get blocksPath() { return `days.${this.place.day}.blocks`; }

  /** @returns {import("./blocks.js").Blocks} */
  get blocks() { return at(this.given, this.blocksPath) ?? {}; }

  /** @param {string | null} path */
  text(path) { return textAt(this.given, path); }

  /** Whether anything stands at a path, and be it an empty group. @param {string} path */
  has(path) { return at(this.given, path) !== undefined; }

  /** Whenever the server refuses an edit. @param {(refusal: { problems: any[], status: number, edit: any }) => void} told */
  onRefused(told) { this.addEventListener("refused", (event) => told(/** @type {CustomEvent} */ (event).detail)); }

  /** Whenever the rig is another: changed, opened, or gone a step back. @param {(change: Change) => void} told */
  onChanged(told) {
    this.addEventListener("changed", (event) => told(/** @type {CustomEvent<Change>} */ (event).detail));
  }

  /** What stood at a path when the rig was opened. @param {string} path */
  openedText(path) { return textAt(this.#opened, path); }

  /** @param {string} name @returns {Thing | null} */
  thing(name) { return this.view.things.find((thing) => thing.name === name) ?? null; }

  /**
   * Another rig altogether: everything is shown anew.
   * @param {Shown} shown
   * @param {Place} place
   * @param {{ unsaved?: boolean, opened?: Tree, beside?: any }} [more]
   */
  open({ given, view }, place, { unsaved = false, opened = given, beside = null } = {}) {
    this.#opening++;
    this.given = given;
    this.view = view;
    this.place = { ...place };
    this.unsaved = unsaved;
    this.beside = beside;
    this.history = new History(isSameRig);
    this.#opened = opened;
    if (unsaved) this.#keep();
    this.dispatchEvent(new Event("opened"));
    this.#tell({ isQuick: true, isRestored: true });
  }

  /**
   * One of the rigs beside this one takes its place, with its own steps back.
   * @param {Shown} shown
   * @param {History<Shown>} history
   */
  turnTo({ given, view }, history) {
    this.#opening++;
    this.given = given;
    this.view = view;
    this.history = history;
    this.unsaved = true;
    this.#keep();
    this.#tell({ isQuick: true, isRestored: true });
  }

  /**
   * Sets the text at a path, or clears it; at once and here.
   * @param {string} path
   * @param {any} value a text or, for the blocks of a day, their tree
   * @param {Doing} doing
   */
  set(path, value, doing) { this.change((given) => withAt(given, path, value), doing); }

  /**
   * Changes what was given, here.
   * @param {(given: Tree) => Tree} edit
   * @param {Doing} doing
   */
  change(edit, { name, key = null, isQuick = true }) {
    const given = edit(this.given);
    if (isSame(given, this.given)) return;
    this.history.note(this.shown, name, key);
    if (this.isAsking) this.#since.push(edit);
    this.given = given;
    this.#changed(isQuick);
  }

  /**
   * Asks the server for any other edit: one after the other. What is set meanwhile goes into what comes back.
   * @param {{ [name: string]: any }} edit
   * @param {Doing & { came?: (thing: string | null) => void }} doing `came`: told of the thing before all is shown anew
   * @returns {Promise<string | null>} the name of what came or changed
   */
  edit(edit, doing) {
    const turn = this.#turn.then(() => this.#ask(edit, doing));
    this.#turn = turn.then(() => {}, () => {});
    return turn;
  }

  /**
   * Says that an edit can't be made; null, for there is no edit then.
   * @param {import("../shared/requests.js").Problem} problem
   * @param {any} edit
   */
  refuse(problem, edit) {
    this.dispatchEvent(new CustomEvent("refused", { detail: { problems: [problem], status: 400, edit } }));
    return null;
  }

  /** A step back; waits for edits on their way. */
  undo() { this.#turn = this.#turn.then(() => this.#step(this.history.undo(this.shown))); }

  /** A step forth. */
  redo() { this.#turn = this.#turn.then(() => this.#step(this.history.redo(this.shown))); }

  /** Done when no edit is on its way any more: only then is the rig what its reader made of it. */
  async settled() {
    for (let last = null; last !== this.#turn;) {
      last = this.#turn;
      await last;
    }
  }

  /** The same rig as the server shows it now. @param {View} view */
  look(view) {
    if (isSame(view, this.view)) return;
    this.view = view;
    this.#tell({ isQuick: true, isLook: true });
  }

  /**
   * A file holds the rig now; what was changed while it was written is not in it.
   * @param {Partial<Place>} place
   * @param {Tree} given what the file holds
   */
  saved(place, given) {
    this.forget();
    this.place = { ...this.place, ...place };
    this.unsaved = !isSame(given, this.given);
    this.#opened = given;
    if (this.unsaved) this.#keep();
    this.dispatchEvent(new Event("saved"));
  }

  forget() { forget(Rig.#keyOf(this.place)); }

  /** What is beside the rig has changed. @param {any} beside */
  keepBeside(beside) {
    this.beside = beside;
    this.#keep();
  }

  /** @param {{ [name: string]: any }} edit @param {Doing & { came?: (thing: string | null) => void }} doing */
  async #ask(edit, { name, key = null, isQuick = true, came }) {
    const { file, build, day } = this.place, opening = this.#opening;
    this.#since = [];
    this.isAsking = true;
    try {
      const answer = await ask("rig-edit", { given: this.given, file, build, day, edit });
      if (opening !== this.#opening) return null;
      this.history.note(this.shown, name, key);
      this.given = this.#since.reduce((given, change) => change(given), answer.given);
      this.view = answer.view;
      came?.(answer.thing ?? null);
      this.#changed(isQuick);
      return answer.thing ?? null;
    } catch (error) {
      if (!(error instanceof ProgramProblem)) throw error;
      this.dispatchEvent(new CustomEvent("refused", { detail: { problems: error.problems, status: error.status, edit } }));
      return null;
    } finally {
      this.isAsking = false;
    }
  }

  /** @param {Shown | null} shown */
  #step(shown) {
    if (!shown) return;
    this.given = shown.given;
    this.view = shown.view;
    this.unsaved = true;
    this.#keep();
    this.#tell({ isQuick: true, isRestored: true });
  }

  /** @param {boolean} isQuick */
  #changed(isQuick) {
    this.unsaved = true;
    this.#keep();
    this.#tell({ isQuick });
  }

  #keep() {
    keep(Rig.#keyOf(this.place), { given: this.given, view: this.view, place: this.place, beside: this.beside });
  }

  /** @param {Change} detail */
  #tell(detail) { this.dispatchEvent(new CustomEvent("changed", { detail })); }
}
