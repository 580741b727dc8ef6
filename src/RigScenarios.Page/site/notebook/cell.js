// A code cell of a notebook, or the place of the answer: what it shows, in one version or in two beside each other.
import { pageOf } from "../shared/addresses.js";
import { el, showParts } from "../shared/parts.js";

/**
 * One version of what is shown in one place.
 * @typedef {object} Version
 * @property {HTMLElement} box all of it
 * @property {HTMLElement} shown what the cell shows
 * @property {HTMLElement} bar how far it has come
 * @property {HTMLElement} failed why it could not be computed
 * @property {HTMLElement} name the words above it, where there are two
 * @property {Part[]} parts what the cell gave last, the answer included
 */

/** @import { Part } from "../shared/requests.js" */
/** @import { VersionName } from "./types.js" */

/** @typedef {{element: HTMLElement, versions: Record<VersionName, Version>}} Cell */

/**
 * Both versions of a place, the pinned one hidden at first. `id`: what tells the place from the others.
 * @param {string | number} id
 * @returns {Record<VersionName, Version>}
 */
export function makeVersions(id) {
  /** @type {any} */
  const versions = {};
  for (const [name, title] of [["pinned", "Pinned"], ["now", "Now"]]) {
    const shown = el("div", { class: "shown" });
    const bar = el("div", { class: "cell-progress", hidden: true },
      el("progress", { max: "1", value: "0", "aria-label": "How far this part has come" }), el("span"));
    const failed = el("p", { class: "problem", role: "alert", hidden: true });
    const heading = el("p", { class: "version-name", id: `${name}-${id}` }, title);
    const box = el("div", { class: `version version-${name}`, role: "group", "aria-labelledby": heading.id,
      hidden: name === "pinned" }, heading, failed, bar, shown);
    versions[name] = { box, shown, bar, failed, name: heading, parts: [] };
  }
  return versions;
}

/**
 * A code cell: what it shows, and its code folded away.
 * @param {{number: number, code: string}} cell
 * @returns {Cell}
 */
export function makeCell(cell) {
  const versions = makeVersions(cell.number);
  const element = el("section", { class: "cell", "data-cell": cell.number },
    el("div", { class: "versions" }, versions.pinned.box, versions.now.box),
    el("details", { class: "rs-code" }, el("summary", {}, "The code behind it"),
      el("pre", { tabindex: "0" }, el("code", {}, cell.code.trimEnd()))));
  return { element, versions };
}

/**
 * Shows parts in a version of a place, and marks whether the place shows anything at all.
 * @param {HTMLElement} element the place
 * @param {Version} version
 * @param {Part[]} parts
 */
export function showIn(element, version, parts) {
  showParts(version.shown, parts);
  element.classList.toggle("has-shown", [...element.querySelectorAll(".shown")].some(shown => shown.childElementCount > 0));
}

/**
 * A text cell, in up to two pieces: its first heading of the page, and the rest.
 * @param {string} html
 * @param {boolean} isFirst
 * @returns {{title: HTMLElement | null, prose: HTMLElement | null}}
 */
export function makeProse(html, isFirst) {
  const prose = el("div", { class: "prose" });
  prose.innerHTML = html;
  mendLinks(prose);
  const title = isFirst ? prose.querySelector("h1") : null;
  title?.remove();
  return { title, prose: prose.textContent?.trim() === "" && !prose.querySelector("img") ? null : prose };
}

/** Notebooks refer to each other as pages that lie side by side; here they are all on the shelf. @param {HTMLElement} prose */
function mendLinks(prose) {
  for (const link of prose.querySelectorAll("a")) {
    const address = link.getAttribute("href") ?? "";
    const other = /^(?:\.\/)?([^/:?#]+)\.(?:html|ipynb)(#.*)?$/.exec(address);
    if (other) link.setAttribute("href", pageOf.notebook(decodeURIComponent(other[1])));
    else if (/^https?:/.test(address)) { link.target = "_blank"; link.rel = "noopener noreferrer"; }
  }
}
