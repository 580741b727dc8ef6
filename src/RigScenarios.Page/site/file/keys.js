// Keys in the text: Tab indents, Enter keeps the indentation, and Escape followed by Tab leaves, so that nobody is shut in.

const indent = "  ";

export class TextKeys {
  #leaving = false;

  /** @param {HTMLTextAreaElement} text @param {{ toFields: () => void }} deeds */
  constructor(text, deeds) {
    this.text = text;
    text.addEventListener("keydown", (event) => this.#key(event, deeds));
    text.addEventListener("blur", () => { this.#leaving = false; });
    text.addEventListener("pointerdown", () => { this.#leaving = false; });
  }

  /** @param {KeyboardEvent} event @param {{ toFields: () => void }} deeds */
  #key(event, deeds) {
    if (event.key === "Escape") { this.#leaving = true; return; }
    if (["Shift", "Control", "Alt", "Meta"].includes(event.key)) return;
    if ((event.ctrlKey || event.metaKey) && event.key === " ") { event.preventDefault(); deeds.toFields(); return; }
    if (event.key === "Tab" && !event.ctrlKey && !event.altKey && !this.#leaving && !this.text.readOnly) {
      event.preventDefault();
      if (event.shiftKey || this.text.selectionStart !== this.text.selectionEnd)
        this.#indentLines(event.shiftKey); else typeIn(this.text, indent);
    } else if (event.key === "Enter" && !event.ctrlKey && !event.altKey && !event.isComposing && !this.text.readOnly) {
      event.preventDefault();
      this.#newLine();
    }
    this.#leaving = false;
  }

  // The next line begins where this one does; two spaces further in where this one opens a group.
  #newLine() {
    const { value, selectionStart } = this.text;
    const line = value.slice(value.lastIndexOf("\n", selectionStart - 1) + 1, selectionStart);
    const spaces = /^ */.exec(line)?.[0] ?? "";
    typeIn(this.text, `\n${spaces}${/:\s*(#.*)?$/.test(line) ? indent : ""}`);
  }

  /** @param {boolean} isOut */
  #indentLines(isOut) {
    const { value, selectionStart, selectionEnd } = this.text;
    const from = value.lastIndexOf("\n", selectionStart - 1) + 1;
    const lines = value.slice(from, selectionEnd).split("\n");
    const moved = lines.map((line) => isOut ? line.replace(/^ {1,2}/, "") : line === "" ? line : indent + line);
    if (moved.join("\n") === lines.join("\n")) return;
    this.text.setSelectionRange(from, selectionEnd);
    typeIn(this.text, moved.join("\n"));
    const caret = Math.max(from, selectionStart + moved[0].length - lines[0].length);
    this.text.setSelectionRange(lines.length === 1 && selectionStart === selectionEnd ? caret : from,
      lines.length === 1 && selectionStart === selectionEnd ? caret : from + moved.join("\n").length);
  }
}

// Types over what is marked, so that the browser's own undo takes it back. No other way of changing a text keeps undo.
/** @param {HTMLTextAreaElement} text @param {string} words */
export function typeIn(text, words) {
  text.focus();
  const isTyped = words === "" ? document.execCommand("delete") : document.execCommand("insertText", false, words);
  if (isTyped) return;
  text.setRangeText(words, text.selectionStart, text.selectionEnd, "end");
  text.dispatchEvent(new Event("input"));
}
