// Line numbers beside the text, a mark at each line with a problem, and places in the text as line and column.

/** @import { Problem } from "../shared/requests.js" */

export class Lines {
  /** @type {Map<number, Problem[]>} */
  #marks = new Map();
  #count = 0;
  #here = 0;

  /** @param {HTMLTextAreaElement} text @param {HTMLElement} gutter */
  constructor(text, gutter) {
    this.text = text;
    this.gutter = gutter;
    text.addEventListener("scroll", () => { gutter.scrollTop = text.scrollTop; });
    text.addEventListener("input", () => this.show());
    new ResizeObserver(() => { gutter.scrollTop = text.scrollTop; }).observe(text);
  }

  show() {
    const count = this.text.value.split("\n").length;
    while (this.#count > count) { this.gutter.lastElementChild?.remove(); this.#count--; }
    const fresh = document.createDocumentFragment();
    while (this.#count < count) {
      const line = document.createElement("div");
      line.className = "gutter-line";
      line.textContent = String(++this.#count);
      fresh.append(line);
    }
    this.gutter.append(fresh);
    // The text may have a bar for scrolling sideways at its foot; the numbers need the same room to scroll as far.
    this.gutter.style.paddingBottom = `calc(.6rem + ${this.text.offsetHeight - this.text.clientHeight}px)`;
    this.gutter.scrollTop = this.text.scrollTop;
    this.showHere();
  }

  showHere() {
    const { line } = this.place();
    if (line === this.#here) return;
    this.gutter.children[this.#here - 1]?.classList.remove("here");
    this.gutter.children[line - 1]?.classList.add("here");
    this.#here = line;
  }

  /** The element of a line's number. @param {number} line @returns {HTMLElement | undefined} */
  #at(line) { return /** @type {HTMLElement | undefined} */ (this.gutter.children[line - 1]); }

  /** @param {Problem[]} problems */
  mark(problems) {
    for (const line of this.#marks.keys()) {
      const element = this.#at(line);
      if (element) { delete element.dataset.mark; element.removeAttribute("title"); }
    }
    this.#marks.clear();
    for (const problem of problems) if (problem.line)
      this.#marks.set(problem.line, [...this.#marks.get(problem.line) ?? [], problem]);
    for (const [line, there] of this.#marks) {
      const element = this.#at(line);
      if (!element) continue;
      // Signs, not only colour: an error stops the work, a warning doesn't.
      element.dataset.mark = there.some((problem) => problem.severity !== "warning") ? "✗" : "!";
      element.title = there.map((problem) => problem.text).join("\n");
    }
  }

  // Where the cursor is, both counted from 1.
  place() {
    const before = this.text.value.slice(0, this.text.selectionStart), start = before.lastIndexOf("\n") + 1;
    return { line: before.split("\n").length, column: before.length - start + 1 };
  }

  /** Goes to a place and brings it into view. @param {number} line @param {number} column */
  goTo(line, column) {
    const lines = this.text.value.split("\n"), row = Math.min(Math.max(1, line), lines.length);
    const start = lines.slice(0, row - 1).reduce((sum, text) => sum + text.length + 1, 0);
    const at = start + Math.min(Math.max(0, (column || 1) - 1), lines[row - 1].length);
    this.text.focus();
    this.text.setSelectionRange(at, start + lines[row - 1].length);
    const height = (this.text.scrollHeight) / lines.length;
    this.text.scrollTop = Math.max(0, (row - 1) * height - this.text.clientHeight / 3);
    this.text.scrollLeft = 0;
    this.showHere();
  }
}
