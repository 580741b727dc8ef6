// Saving the text. What stands in the file meanwhile is never overwritten unasked, and what one wrote is never lost: until it
// is saved it is kept by the browser.
import { pageOf } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import { forget, keep, kept } from "../shared/kept.js";
import { ask } from "../shared/program.js";
import { inWords, say } from "../shared/tell.js";

/**
 * The file whose text is edited. `hasReturns`: lines end as on Windows, which a text field doesn't keep.
 * @typedef {{ id: string, version: string, writable: boolean, hasReturns: boolean }} EditedFile
 */

export class Save {
  isKept = false;

  /**
   * @param {HTMLTextAreaElement} text
   * @param {EditedFile} file
   * @param {string} saved the text as it stands in the file
   * @param {(problems: import("../shared/requests.js").Problem[]) => void} told is given the problems of a text that was saved
   */
  constructor(text, file, saved, told) {
    this.text = text;
    this.file = file;
    this.saved = saved;
    this.told = told;
    this.state = byId("save-state");
    this.name = byId("save-name", HTMLInputElement);
    this.button = byId("save-button");
    this.conflict = byId("conflict");
    this.conflictTold = byId("conflict-told");
    this.look = byId("conflict-look", HTMLAnchorElement);
    byId("save-form").addEventListener("submit", (event) => { event.preventDefault(); this.save(); });
    byId("conflict-replace").addEventListener("click", () => this.save(true));
    byId("conflict-copy").addEventListener("click", () => this.askName());
    text.addEventListener("input", () => this.#keep());
    window.addEventListener("beforeunload", (event) => { if (this.isUnsaved && !this.isKept) event.preventDefault(); });
    this.name.value = `${file.writable ? "" : "my-"}${file.id.split("/").pop()}`;
    this.copies = !file.writable;
    this.#showName();
  }

  get isUnsaved() { return this.text.value !== this.saved; }

  /** {value: {text, version}, isHere} that an earlier visit left unsaved; null if none. @param {string} id */
  static kept(id) { return kept(`file:${id}`); }

  #keep() {
    if (this.isUnsaved) this.isKept = keep(`file:${this.file.id}`, { text: this.text.value, version: this.file.version });
    else this.#forget();
    say(this.state, this.isUnsaved ? "Not saved yet." : "");
  }

  /**
   * What was kept stands in the text again; it was made from that version of the file.
   * @param {{ text: string, version: string }} left
   */
  restore({ text, version }) {
    this.text.value = text;
    this.file.version = version;
    this.#keep();
  }

  askName() {
    this.copies = true;
    this.conflict.hidden = true;
    this.#showName();
    this.name.focus();
    this.name.select();
  }

  #showName() {
    this.name.hidden = !this.copies;
    byId("save-name-label").hidden = !this.copies;
    this.button.textContent = this.copies ? "Save a copy" : "Save";
  }

  async save(replace = false) {
    const wanted = this.name.value.trim();
    const name = !this.copies ? this.file.id.slice("own/".length) : /\.ya?ml$/i.test(wanted) ? wanted : `${wanted}.yaml`;
    const text = this.text.value, written = this.file.hasReturns ? text.replaceAll("\n", "\r\n") : text,
      isSame = this.file.id === `own/${name}`;
    this.conflict.hidden = true;
    say(this.state, "Saving …");
    try {
      const saved = await ask("save-file", { name, text: written, version: isSame ? this.file.version : null, replace });
      this.#forget();
      if (saved.id !== this.file.id) { location.assign(pageOf.file(saved.id)); return; }
      this.file.version = saved.version;
      this.saved = text;
      this.#keep();
      if (!this.isUnsaved) say(this.state, saved.problems.length > 0 ? "Saved, with the problems listed." : "Saved.");
      this.told(saved.problems);
    } catch (error) {
      if (!error.problems) throw error;
      const words = error.problems.map(inWords).join(" ");
      if (error.status !== 409) { say(this.state, `Not saved. ${words}`); return; }
      say(this.state, "Not saved yet.");
      this.conflictTold.textContent = `${words} Nothing was overwritten, and what you wrote is still here.`;
      this.look.href = pageOf.file(`own/${name}`);
      this.conflict.hidden = false;
      byId("conflict-replace").focus();
    }
  }

  #forget() { forget(`file:${this.file.id}`); }
}
