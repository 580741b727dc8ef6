// The notebook as an article: its title, the answer and the controls, then its story, and for each code cell what it shows.
import { makeCell, makeProse, showIn } from "./cell.js";
import { drawFigures, el } from "../shared/parts.js";
import { Sight } from "./sight.js";

/** @import { Part } from "../shared/requests.js" */
/** @import { VersionName } from "./types.js" */

export class Article {
  /** @type {Map<number, import("./cell.js").Cell>} */
  #cells = new Map();
  #sight = new Sight();
  /** @type {Set<number>} */
  #seen = new Set();
  #root;
  #decorate;

  /**
   * @param {HTMLElement} root
   * @param {import("./types.js").Notebook} notebook
   * @param {HTMLElement} strip the controls
   * @param {(container: HTMLElement) => void} decorate told whenever what a version shows in a cell has changed
   */
  constructor(root, notebook, strip, decorate) {
    this.#root = root;
    this.#decorate = decorate;
    /** @type {HTMLElement | null} */
    let title = null;
    /** @type {HTMLElement[]} */
    const story = [];
    for (const cell of notebook.cells) {
      if (cell.kind === "prose") {
        const made = makeProse(cell.html, title === null);
        title ??= made.title;
        if (made.prose) story.push(made.prose);
      } else if (!cell.isStart) {
        const made = makeCell(cell);
        this.#cells.set(cell.number, made);
        story.push(made.element);
      }
    }
    const { line, holder } = this.#sight;
    root.replaceChildren(el("div", { class: "head" }, title ?? el("h1", {}, notebook.title)), el("div", { class: "side" }, strip),
      el("div", { class: "column" }, line.element, holder, ...story));
    const watch = new IntersectionObserver(entries => {
      for (const { target, isIntersecting } of entries)
        this.#seen[isIntersecting ? "add" : "delete"](Number(/** @type {HTMLElement} */ (target).dataset.cell));
    });
    for (const cell of this.#cells.values()) watch.observe(cell.element);
  }

  /** The numbers of the cells on the screen. The answer's is always among them. */
  inSight() {
    const { cell } = this.#sight;
    return [...new Set(cell === null ? this.#seen : [...this.#seen, cell])];
  }

  /** Whatever covers the lower edge of the window, in pixels, hides the answer there. @param {number} pixels */
  covered(pixels) { this.#sight.line.follow(pixels); }

  /**
   * What a version shows in a cell. Only data; `draw` draws the charts.
   * @param {number} number
   * @param {VersionName} name
   * @param {Part[]} parts
   */
  show(number, name, parts) {
    const cell = this.#cells.get(number);
    if (!cell) return;
    const place = cell.versions[name];
    place.parts = parts.filter(part => part.type !== "control");
    const before = this.#cells.get(this.#sight.cell ?? -1);
    const isNew = this.#sight.adopts(number, parts);
    showIn(cell.element, place, number === this.#sight.cell ? this.#sight.take(name, place.parts) : place.parts);
    for (const { box } of this.#places(number, name)) box.classList.remove("is-renewed", "is-old");
    place.failed.hidden = true;
    place.bar.hidden = true;
    this.#decorate(place.shown);
    // Another cell's answer stood there: it goes back to its own place.
    if (isNew && before) this.#showAgain(before);
  }

  /** @param {import("./cell.js").Cell} cell */
  #showAgain(cell) {
    for (const version of Object.values(cell.versions)) {
      showIn(cell.element, version, version.parts);
      this.#decorate(version.shown);
    }
  }

  /** @param {boolean} onlyVisible */
  async draw(onlyVisible) { await drawFigures(this.#root, onlyVisible); }

  hasWaiting() {
    return [...this.#root.querySelectorAll(".rs-chart")].some(chart => chart.rsWaiting && chart.clientWidth > 0);
  }

  /** @param {number} number @param {VersionName} name @param {number} fraction @param {string} text */
  progress(number, name, fraction, text) {
    const place = this.#cells.get(number)?.versions[name];
    if (!place) return;
    for (const { box } of this.#places(number, name)) box.classList.add("is-renewed");
    place.bar.hidden = fraction === 0 && !text;
    const [bar, words] = [place.bar.querySelector("progress"), place.bar.querySelector("span")];
    if (bar) bar.value = fraction;
    if (words) words.textContent = text;
  }

  /** Marks what is about to change: the cells named, or all where it isn't known. @param {VersionName} name
   * @param {Set<number> | null} numbers */
  renewing(name, numbers) {
    for (const number of this.#cells.keys()) if (!numbers || numbers.has(number))
      for (const { box } of this.#places(number, name)) box.classList.add("is-renewed");
  }

  /** Nothing is being renewed any more. `isCutShort`: what was waiting for it stays as it was before, and is marked so.
   * @param {VersionName} name */
  settled(name, isCutShort = false) {
    for (const { box, bar } of this.#all(name)) {
      if (isCutShort && box.classList.contains("is-renewed")) box.classList.add("is-old");
      box.classList.remove("is-renewed");
      bar.hidden = true;
    }
  }

  /**
   * A cell stopped: says why, where it stands. What comes after it still shows what was there before, and is marked so.
   * @param {number} number
   * @param {VersionName} name
   * @param {string} text
   * @param {number | null} line
   */
  failed(number, name, text, line) {
    for (const other of this.#cells.keys()) {
      for (const { box, failed } of this.#places(other, name)) {
        box.classList.toggle("is-old", other === number || (other > number && box.classList.contains("is-renewed")));
        failed.hidden = true;
      }
    }
    const place = this.#cells.get(number)?.versions[name];
    if (!place) return false;
    const hasLater = [...this.#cells].some(([other, cell]) => other >= number && cell.versions[name].shown.childElementCount > 0);
    place.failed.replaceChildren(
      el("strong", {}, "This could not be computed. "), text, line ? ` (The code behind it, line ${line}.)` : "",
      hasLater ? " What is shown from here on is from before." : "");
    place.failed.hidden = false;
    return true;
  }

  /** @param {VersionName} name */
  mended(name) {
    for (const { box, failed } of this.#all(name)) {
      box.classList.remove("is-old");
      failed.hidden = true;
    }
  }

  /** @param {boolean} isPinned */
  setPinned(isPinned) {
    this.#root.classList.toggle("has-pinned", isPinned);
    this.#sight.setPinned(isPinned);
    if (!isPinned) this.#sight.take("pinned", []);
    for (const cell of this.#cells.values()) {
      cell.versions.pinned.box.hidden = !isPinned;
      cell.versions.pinned.parts = [];
      if (!isPinned) showIn(cell.element, cell.versions.pinned, []);
    }
  }

  /** Heads the two versions with what sets them apart. @param {string} pinnedWords @param {string} nowWords */
  nameVersions(pinnedWords, nowWords) {
    for (const { versions } of [...this.#cells.values(), this.#sight]) {
      versions.pinned.name.textContent = pinnedWords ? `Pinned: ${pinnedWords}` : "Pinned";
      versions.now.name.textContent = nowWords ? `Now: ${nowWords}` : "Now";
    }
  }

  /** Gives the pinned version what is shown now, until the server has run it: no gap for the eye. */
  copyToPinned() {
    for (const [number, cell] of this.#cells) this.show(number, "pinned", cell.versions.now.parts);
  }

  /** The answers that a version shows, that of the page first. @param {VersionName} name */
  answers(name) {
    const others = this.shown(name).flatMap(child => child.rsPart?.type === "answer" ? [child.rsPart] : []);
    return [...this.#sight.versions[name].parts, ...others];
  }

  /** The elements of what a version shows in its cells. @param {VersionName} name */
  shown(name) { return [...this.#cells.values()].flatMap(cell => [...cell.versions[name].shown.children]); }

  /** Where a cell's things stand: in its own place, and for the answer's cell at the head of the page too. @param {number} number
   * @param {VersionName} name */
  #places(number, name) {
    const own = this.#cells.get(number)?.versions[name];
    return own === undefined ? [] : number === this.#sight.cell ? [own, this.#sight.versions[name]] : [own];
  }

  /** @param {VersionName} name */
  #all(name) { return [...this.#cells.keys()].flatMap(number => this.#places(number, name)); }
}
