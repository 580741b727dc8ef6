// Help for the field at the cursor, and the fields that may stand there: each is put in with a click or the Enter key.
import { api } from "../shared/api.js";
import { el } from "../shared/parts.js";
import { say } from "../shared/tell.js";
import { typeIn } from "./keys.js";

const wait = 200;

export class Help {
  #timer = 0;
  #running = null;

  constructor(text, lines) {
    Object.assign(this, { text, lines });
    const byId = (id) => document.getElementById(id);
    Object.assign(this, { path: byId("help-path"), about: byId("help-about"), accepted: byId("help-accepted"),
      fields: byId("help-fields") });
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
    this.#running?.abort();
    const mine = this.#running = new AbortController();
    try {
      this.#show(await api("POST", "/api/text/help", { text: this.text.value, ...this.lines.place() }, mine.signal));
    } catch (error) {
      if (error.name === "AbortError") return;
      if (!error.problems) throw error;
      // The check tells when nobody answers; the help stays as it is.
    }
  }

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

  #key(event) {
    const buttons = [...this.fields.querySelectorAll("button:not(:disabled)")], at = buttons.indexOf(document.activeElement);
    if (event.key === "Escape") { event.preventDefault(); this.text.focus(); }
    else if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      buttons[Math.max(0, Math.min(buttons.length - 1, at + (event.key === "ArrowDown" ? 1 : -1)))]?.focus();
    }
  }

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

    const indent = indentFor(value, start, line, help.path);
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
function indentFor(value, start, line, path) {
  if (line.trim() === "") return line.length > 0 ? line : "  ".repeat(path ? path.split(".").length : 0);
  const spaces = /^ */.exec(line)[0];
  const opensGroup = /:\s*(#.*)?$/.test(line) && path.split(".").at(-1) === keyOf(line);
  return opensGroup ? `${spaces}  ` : spaces;
}

function keyOf(line) { return /^\s*(?:- )?["']?([^"':#]+)["']?\s*:/.exec(line)?.[1].trim() ?? ""; }
