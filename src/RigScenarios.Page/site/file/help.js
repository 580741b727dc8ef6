// Help for the field at the cursor, and the fields that may stand there: each is put in with a click or the Enter key.
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { Newest } from "../shared/program.js";
import { say } from "../shared/tell.js";
import { typeIn } from "./keys.js";

/** @import { HelpField, TextHelp } from "../shared/requests.js" */
/** @import { Lines } from "./lines.js" */

const wait = 200;

export class Help {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  #newest = new Newest();

  /** @param {HTMLTextAreaElement} text @param {Lines} lines */
  constructor(text, lines) {
    this.text = text;
    this.lines = lines;
    this.path = byId("help-path");
    this.about = byId("help-about");
    this.accepted = byId("help-accepted");
    this.fields = byId("help-fields");
    this.fields.addEventListener("keydown", (event) => this.#key(event));
    document.addEventListener("selectionchange", () => {
      if (document.activeElement === text) { lines.showHere(); this.soon(); }
    });
    text.addEventListener("input", () => this.soon());
  }

  soon() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#ask(), wait);
  }

  focus() { (this.fields.querySelector("button:not(:disabled)") ?? this.text).focus(); }

  async #ask() {
    try {
      const help = await this.#newest.ask("text-help", { text: this.text.value, ...this.lines.place() });
      if (help) this.#show(help);
    } catch (error) {
      if (!error.problems) throw error;
      // The check tells when nobody answers; the help stays as it is.
    }
  }

  /** @param {TextHelp} help */
  #show(help) {
    say(this.path, help.path);
    say(this.about, help.about);
    say(this.accepted, help.accepted ? `Accepted: ${help.accepted}` : "");
    const canWrite = !this.text.readOnly;
    this.fields.replaceChildren(...help.fields.map((field) => el("li", {}, el("button",
      { type: "button", "data-present": field.present, disabled: field.present || !canWrite,
        title: field.accepted ? `Accepted: ${field.accepted}` : null, onclick: () => this.#insert(help, field) },
      el("span", { class: "field-key" }, field.key),
      el("span", { class: "field-about" }, field.about, field.required && !field.present ? " Required." : "")))));
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    const buttons = [...this.fields.querySelectorAll("button:not(:disabled)")];
    const at = buttons.indexOf(/** @type {HTMLElement} */ (document.activeElement));
    if (event.key === "Escape") { event.preventDefault(); this.text.focus(); }
    else if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      buttons[Math.max(0, Math.min(buttons.length - 1, at + (event.key === "ArrowDown" ? 1 : -1)))]?.focus();
    }
  }

  /** @param {TextHelp} help @param {HelpField} field */
  #insert(help, field) {
    const { text } = this, { value } = text;
    let { selectionStart } = text;
    const start = value.lastIndexOf("\n", selectionStart - 1) + 1,
      end = (value.indexOf("\n", selectionStart) + value.length + 1) % (value.length + 1);
    const line = value.slice(start, end);
    const closing = /\}\s*(#.*)?$/.exec(line);
    // Beside a group that stands in one line, its fields go into it.
    if (closing && keyOf(line) === help.path.split(".").at(-1)) {
      const inside = start + closing.index;
      if (selectionStart > inside || !value.slice(start, selectionStart).includes("{")) {
        selectionStart = inside;
        text.setSelectionRange(inside, inside);
      }
    }

    const before = value.slice(start, selectionStart);
    const opened = before.lastIndexOf("{");
    if (opened > before.lastIndexOf("}")) {
      // Within a group in one line: at the cursor, with the commas that it needs.
      const needsComma = !/[{,]\s*$/.test(before), rest = value.slice(selectionStart, end);
      const more = /^\s*[},]/.test(rest) || rest.trim() === "" ? "" : ", ";
      typeIn(text, `${needsComma ? ", " : ""}${field.key}: `);
      if (more) { const at = text.selectionStart; typeIn(text, more); text.setSelectionRange(at, at); }
      return;
    }

    const indent = indentFor(line, help.path);
    if (line.trim() === "") {
      text.setSelectionRange(start, end);
      typeIn(text, `${indent}${field.key}: `);
    } else {
      text.setSelectionRange(end, end);
      typeIn(text, `\n${indent}${field.key}: `);
    }
  }
}

// On an empty line the cursor's own depth; else that of the group: two further in than a line that opens one, else the line's.
/** @param {string} line @param {string} path */
export function indentFor(line, path) {
  if (line.trim() === "") return line.length > 0 ? line : "  ".repeat(path ? path.split(".").length : 0);
  const spaces = /^ */.exec(line)?.[0] ?? "";
  const opensGroup = /:\s*(#.*)?$/.test(line) && path.split(".").at(-1) === keyOf(line);
  return opensGroup ? `${spaces}  ` : spaces;
}

/** The name of the field that a line holds; "" for none. @param {string} line */
export function keyOf(line) { return /^\s*(?:- )?["']?([^"':#]+)["']?\s*:/.exec(line)?.[1].trim() ?? ""; }
