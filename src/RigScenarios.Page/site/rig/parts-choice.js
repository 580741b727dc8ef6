// A choice among many parts that one can search by typing: an editable combobox with a list
// (WAI-ARIA Authoring Practices Guide, pattern "Combobox", list autocomplete with manual selection).
import { around } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { closeWithEnter } from "./keyboard.js";
import { freshId, say } from "../shared/tell.js";

/** @typedef {{ value: string, title: string, note?: string, figures?: string[], search: string, always?: boolean }} Option one
 *   part; `always`: offered whatever is typed */

export class PartsChoice {
  #chosen = "";
  /** @type {Option[]} */
  #shown = [];
  #active = -1;

  /**
   * @param {{ label: string, describedBy: string | null, options: Option[], chosen: (value: string) => void, hint?: string }} of
   *   `chosen` is told of a choice
   */
  constructor({ label, describedBy, options, chosen, hint = "Type to search" }) {
    this.options = options;
    this.tell = chosen;
    const id = freshId("choice");
    this.list = el("ul", { id: `${id}-list`, role: "listbox", "aria-label": label, class: "choice-list", hidden: true });
    this.input = el("input", {
      id, type: "text", role: "combobox", "aria-autocomplete": "list", "aria-expanded": "false", "aria-controls": `${id}-list`,
      "aria-label": label, "aria-describedby": describedBy, autocomplete: "off", spellcheck: "false", placeholder: hint,
    });
    this.count = el("span", { class: "visually-hidden", role: "status" });
    this.element = el("div", { class: "choice" }, this.input, el("span", { class: "choice-arrow", "aria-hidden": "true" }, "▾"),
      this.list, this.count);

    this.input.addEventListener("input", () => this.#open(this.input.value));
    this.input.addEventListener("click", () => { if (this.list.hidden) this.#open(""); else this.#close(); });
    this.input.addEventListener("focus", () => this.input.select());
    this.input.addEventListener("keydown", (event) => this.#key(event));
    this.input.addEventListener("blur", () => { this.#close(); this.#write(); });
    closeWithEnter(this.input);
    // Keeps the focus in the field while the list is used with a pointer.
    this.list.addEventListener("pointerdown", (event) => event.preventDefault());
    this.list.addEventListener("click", (event) => {
      const option = around(event, "[role=option]");
      if (option) this.#choose(Number(option.dataset.at));
    });
  }

  get value() { return this.#chosen; }

  set value(value) { this.#chosen = value; this.#write(); }

  #write() { this.input.value = this.options.find((option) => option.value === this.#chosen)?.title ?? this.#chosen; }

  /** @param {string} text */
  #open(text) {
    const words = text.toLowerCase().split(/\s+/).filter(Boolean);
    const fits = this.options.filter((option) => !option.always && words.every((word) => option.search.includes(word)));
    // The words as they were written come first: "body b" is in many descriptions, but in few names.
    const isNamed = (/** @type {Option} */ option) => words.length > 0 && option.title.toLowerCase().includes(words.join(" "));
    this.#shown = [...fits.filter(isNamed), ...fits.filter((option) => !isNamed(option)),
      ...this.options.filter((option) => option.always)];
    this.list.replaceChildren(...this.#shown.map((option, at) => el("li",
      { role: "option", id: `${this.list.id}-${at}`, "data-at": at, "aria-selected": String(option.value === this.#chosen),
        class: option.always ? "choice-own" : null },
      el("span", { class: "choice-title" }, option.title, el("span", { class: "visually-hidden" }, ", ")),
      ...(option.figures ?? []).map((figure) => el("span", { class: "choice-figure" }, figure || "",
        el("span", { class: "visually-hidden" }, figure ? ", " : ""))),
      option.note ? el("span", { class: "choice-note" }, option.note) : null)));
    const found = this.#shown.filter((option) => !option.always).length;
    say(this.count, found === 1 ? "1 part" : `${found} parts`);
    this.list.hidden = false;
    this.input.setAttribute("aria-expanded", "true");
    this.#point(words.length > 0 ? 0 : this.#shown.findIndex((option) => option.value === this.#chosen));
  }

  #close() {
    this.list.hidden = true;
    this.input.setAttribute("aria-expanded", "false");
    this.input.removeAttribute("aria-activedescendant");
    this.#active = -1;
  }

  /** @param {number} at */
  #point(at) {
    this.list.children[this.#active]?.classList.remove("choice-active");
    this.#active = at;
    const option = this.list.children[at];
    if (!option) { this.input.removeAttribute("aria-activedescendant"); return; }
    option.classList.add("choice-active");
    option.scrollIntoView({ block: "nearest" });
    this.input.setAttribute("aria-activedescendant", option.id);
  }

  /** @param {number} at */
  #choose(at) {
    const option = this.#shown[at];
    if (!option) return;
    this.#chosen = option.value;
    this.#write();
    this.#close();
    this.tell(option.value);
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    const isOpen = !this.list.hidden, last = this.#shown.length - 1;
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      const step = event.key === "ArrowDown" ? 1 : -1;
      if (!isOpen) { this.#open(""); if (this.#active < 0) this.#point(step > 0 ? 0 : this.#shown.length - 1); }
      else this.#point(this.#active < 0 ? (step > 0 ? 0 : last) : (this.#active + step + last + 1) % (last + 1));
    } else if (event.key === "Enter" && isOpen) {
      event.preventDefault();
      if (this.#active >= 0) this.#choose(this.#active); else this.#close();
    } else if (event.key === "Escape" && isOpen) {
      event.preventDefault();
      this.#close();
      this.#write();
      this.input.select();
    } else if (isOpen && (event.key === "PageDown" || event.key === "PageUp")) {
      event.preventDefault();
      this.#point(Math.max(0, Math.min(last, this.#active + (event.key === "PageDown" ? 6 : -6))));
    }
  }
}
