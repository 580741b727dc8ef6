// Undo and redo: two buttons, and the keys that people know. In a text field that has something of its own to take back the keys
// are the browser's; after that, and everywhere else, they are the form's.
import { byId } from "../shared/elements.js";

/** What a field was when the focus came to it, and what it was before its own typing was taken back. */
class Typing {
  /** @param {HTMLInputElement} field */
  constructor(field) {
    this.field = field;
    this.first = field.value;
    /** @type {string | null} */
    this.furthest = null;
    /** @type {string} */
    this.last = field.value;
  }

  /** @param {InputEvent} event */
  typed(event) {
    if (event.inputType === "historyUndo") this.furthest ??= this.last;
    else if (event.inputType !== "historyRedo") this.furthest = null;
    this.last = this.field.value;
  }

  get canUndo() { return this.field.value !== this.first; }

  get canRedo() { return this.furthest !== null && this.field.value !== this.furthest; }
}

export class UndoButtons {
  /** @type {Typing | null} */
  #typing = null;

  /** @param {import("./state.js").Rig} rig */
  constructor(rig) {
    this.rig = rig;
    this.bar = byId("undo-bar");
    const [undo, redo] = /** @type {HTMLButtonElement[]} */ ([...this.bar.querySelectorAll("button")]);
    this.undo = undo;
    this.redo = redo;
    undo.addEventListener("click", () => rig.undo());
    redo.addEventListener("click", () => rig.redo());
    addEventListener("keydown", (event) => this.#key(event));
    addEventListener("focusin", ({ target }) => { this.#typing = isText(target) ? new Typing(target) : null; });
    addEventListener("focusout", () => { this.#typing = null; rig.history.close(); });
    addEventListener("input", (event) => {
      if (this.#typing?.field === event.target) this.#typing.typed(/** @type {InputEvent} */ (event));
    });
    // Letting go ends a step: the next drag, slide or key is another one.
    for (const kind of ["pointerup", "pointercancel", "change"]) addEventListener(kind, () => rig.history.close());
    rig.onChanged((detail) => this.#show(detail));
    this.#show({});
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const letter = event.key.toLowerCase(), isUndo = letter === "z" && !event.shiftKey;
    const isRedo = (letter === "z" && event.shiftKey) || (letter === "y" && !event.shiftKey);
    if (!isUndo && !isRedo) return;
    // Half a drag is nothing to go back from.
    if (document.querySelector(".rs-moving, .edge-held")) { event.preventDefault(); return; }
    if (isUndo ? this.#typing?.canUndo : this.#typing?.canRedo) return;
    event.preventDefault();
    if (isUndo) this.rig.undo(); else this.rig.redo();
  }

  /** @param {{ isRestored?: boolean }} detail */
  #show({ isRestored = false }) {
    const { last, next } = this.rig.history;
    this.bar.hidden = last === null && next === null;
    for (const [button, word, what] of /** @type {[HTMLButtonElement, string, string | null][]} */ ([[this.undo, "Undo", last],
      [this.redo, "Redo", next]])) {
      // A button that has the focus is not disabled under it: the focus would be lost.
      button.setAttribute("aria-disabled", String(what === null));
      button.title = what === null ? `Nothing to ${word.toLowerCase()}` : `${word}: ${what}`;
      button.setAttribute("aria-label", what === null ? word : `${word}: ${what}`);
    }
    // What the fields show now is where typing begins anew.
    if (isRestored) queueMicrotask(() => { if (this.#typing) this.#typing = new Typing(this.#typing.field); });
  }
}

/** @param {EventTarget | null} target @returns {target is HTMLInputElement} */
function isText(target) {
  return target instanceof HTMLTextAreaElement
    || (target instanceof HTMLInputElement && /^(text|number|search)$/.test(target.type));
}
