// What a notebook or an answer shows, as elements of the page. Text from the server goes in as text, never as markup; the
// exceptions are parts of type "html" and the SVG of drawings, which the server made from escaped text.
import { keepReachable } from "./reachable.js";

/** @import { Part, Table } from "./requests.js" */

/**
 * What may stand in an element: texts, elements, lists of them, and null, undefined or false for nothing.
 * @typedef {string | number | Node | null | undefined | false | Child[]} Child
 */

/**
 * An element with attributes, `on…` listeners and children.
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} name
 * @param {{ [name: string]: any, onclick?: (event: MouseEvent) => void, onchange?: (event: Event) => void }} [attributes]
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[K]}
 */
export function el(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith("on")) element.addEventListener(key.slice(2), value);
    else if (value === true) element.setAttribute(key, "");
    else if (value !== false && value !== null && value !== undefined) element.setAttribute(key, value);
  }
  const all = /** @type {any[]} */ (children).flat(Infinity);
  element.append(...all.filter(child => child !== null && child !== undefined && child !== false));
  return element;
}

// A number stays on one line with its unit, and "1 h 24 min" is never broken: as on the pages that the command line writes.
const BEFORE_UNIT = /(?<=\d) (?=(?:h|min|s|V|A|W|Wh|Ah|mAh|mΩ|Ω|kg|g|mm|m|N|N·m|MPa|K|°C|%)(?![\p{L}\d]))/gu;
const WITHIN_A_TIME = /(?<=\d[ \u00a0](?:h|min)) (?=\d+[ \u00a0](?:min|s)(?![\p{L}\d]))/gu;

/** The text with its numbers kept beside their units. @param {unknown} text */
export function prose(text) {
  return String(text ?? "").replace(BEFORE_UNIT, "\u00a0").replace(WITHIN_A_TIME, "\u00a0");
}

/**
 * One part, as an element. A figure is drawn as soon as it stands in the page: see `drawFigures`.
 * @param {Part} part
 * @returns {HTMLElement}
 */
export function makePart(part) {
  const make = MAKERS[part.type];
  const element = make ? make(part) : el("p", {}, prose(part.text ?? ""));
  element.rsPart = part;
  return element;
}

/**
 * Shows `parts` in `container` in the place of what it showed. What is of the same kind as before is changed in place, so
 * that neither a chart nor an opened table flickers. What is kept never leaves the page, not even for a moment: whoever drags
 * in it would lose hold.
 * @param {Element} container
 * @param {Part[]} parts
 */
export function showParts(container, parts) {
  const before = /** @type {HTMLElement[]} */ ([...container.children]);
  let next = 0;
  const now = parts.map(part => {
    // A figure or drawing is known by its name, also where something else came or went before it.
    const at = part.slug === undefined ? (isSameKind(before[next]?.rsPart, part) ? next : -1)
      : before.findIndex((element, i) => i >= next && isSameKind(element.rsPart, part));
    if (at < 0) return makePart(part);
    next = at + 1;
    const old = before[at];
    if (JSON.stringify(old.rsPart) === JSON.stringify(part)) return old;
    const update = UPDATERS[part.type];
    if (!update) return makePart(part);
    update(old, part);
    old.rsPart = part;
    return old;
  });
  for (const gone of before.filter(element => !now.includes(element))) {
    for (const chart of gone.querySelectorAll(".rs-chart")) window.rigFigures?.forget(chart);
    gone.remove();
  }
  // Those that are kept stand in their order; only new ones are put between them.
  /** @type {Element | null} */
  let place = container.firstElementChild;
  for (const element of now) {
    if (element === place) place = place.nextElementSibling;
    else container.insertBefore(element, place);
  }
}

/**
 * Draws the figures within `root` that were changed since they were drawn, those on the screen first.
 * @param {ParentNode} root
 */
export async function drawFigures(root, onlyVisible = false) {
  for (const chart of root.querySelectorAll(".rs-chart")) {
    if (!chart.rsWaiting || chart.clientWidth === 0 || (onlyVisible && !isOnScreen(chart))) continue;
    const specification = chart.rsWaiting;
    chart.rsWaiting = null;
    await window.rigFigures.draw(chart, specification);
  }
}

const MANY_COLUMNS = 4;

/** A table, the same as on pages that the command line writes. @param {Table} table */
export function makeTable(table) {
  // With so many columns a row is a small list on a phone, each value with its title: roles keep it a table to all readers.
  const isMany = table.columns.length >= MANY_COLUMNS;
  /** @param {string} role */
  const as = role => isMany ? { role } : {};
  /** @param {import("./requests.js").Column} column */
  const side = column => column.isNumber ? { class: "rs-number" } : {};
  /** @param {import("./requests.js").Column} column */
  const head = column => column.title === "" ? el("td", as("cell"))
    : el("th", { scope: "col", ...side(column), ...as("columnheader") }, column.title);
  /** @param {string} text @param {import("./requests.js").Column} column */
  const cell = (text, column) =>
    el("td", { ...side(column), ...as("cell"), "data-title": column.title }, prose(text));
  const element = el("div", { class: isMany ? "rs-table rs-many" : "rs-table" }, el("table", as("table"),
    table.caption ? el("caption", {}, prose(table.caption)) : null,
    el("thead", as("rowgroup"), el("tr", as("row"), table.columns.map(head))),
    el("tbody", as("rowgroup"), table.rows.map(row => el("tr", as("row"), row.map((text, i) => cell(text, table.columns[i])))))));
  keepReachable(element, () => element.querySelector("caption")?.textContent || "Table");
  return element;
}

/** Cautions as a list, or nothing. @param {string[]} [cautions] */
export function makeCautions(cautions) {
  return cautions?.length ? el("ul", { class: "rs-cautions" }, cautions.map(caution => el("li", {}, prose(caution)))) : null;
}

/** @type {("h2" | "h3" | "h4")[]} */
const HEADINGS = ["h2", "h3", "h4"];

/** @type {Record<string, (part: Part) => HTMLElement>} */
const MAKERS = {
  answer: part => {
    // A verdict with its questions comes as markup, the same as on paper.
    if (!part.html)
      return el("div", { class: "rs-answer" }, el("p", {}, prose(part.text)), makeCautions(part.cautions));
    const box = el("div");
    box.innerHTML = part.html;
    return box;
  },
  table: part => el("div", { class: "part-table" }, part.table ? makeTable(part.table) : null),
  printed: part => el("pre", { class: "rs-printed" }, part.text),
  prose: part => el("p", {}, prose(part.text)),
  heading: part => el(HEADINGS[Math.min(4, Math.max(2, part.level ?? 2)) - 2], {}, prose(part.text)),
  scenario: part => el("p", { class: "part-scenario" }, `A scenario to keep: ${part.name}`),
  html: part => { const box = el("div"); box.innerHTML = part.html ?? ""; return box; },
  figure: part => {
    const figure = el("figure", { class: "rs-figure", "data-slug": part.slug });
    const chart = el("div", { class: "rs-chart", role: "img", style: `min-height:${Number(part.height) || 420}px` });
    figure.append(
      el("div", { class: "rs-figure-title" }), chart, el("figcaption"),
      el("details", { class: "rs-numbers" }, el("summary", {}, "The numbers"), el("div")));
    figure.querySelector("details")?.addEventListener("toggle", () => fillNumbers(figure));
    fillFigure(figure, part);
    return figure;
  },
  drawing: part => {
    const figure = el("figure", { class: "rs-figure rs-drawing", "data-drawing": part.slug },
      el("div", { class: "rs-figure-title" }), el("div", { class: "rs-sheet" }), el("figcaption"),
      el("details", { class: "rs-numbers" }, el("summary", {}, "The numbers"), el("div")));
    figure.querySelector("details")?.addEventListener("toggle", () => fillNumbers(figure));
    fillDrawing(figure, part);
    return figure;
  },
};

/** @type {Record<string, (element: HTMLElement, part: Part) => void>} */
const UPDATERS = {
  drawing: fillDrawing,
  answer: (element, part) => element.replaceChildren(...MAKERS.answer(part).children),
  table: (element, part) => element.replaceChildren(...MAKERS.table(part).children),
  printed: (element, part) => { element.textContent = part.text ?? ""; },
  prose: (element, part) => { element.textContent = prose(part.text); },
  figure: fillFigure,
};

/** @param {HTMLElement} figure @param {Part} part */
function fillFigure(figure, part) {
  const chart = figure.children[1];
  chart.setAttribute("aria-label", part.alternative ?? "");
  chart.rsWaiting = part.specification;
  fillWords(figure, part);
}

/** @param {HTMLElement} figure @param {Part} part */
function fillDrawing(figure, part) {
  // The same markup is not put in again: whoever drags in it would lose hold.
  const markup = `${part.svg}${part.narrowSvg}`, sheet = figure.children[1];
  if (sheet.rsMarkup !== markup) {
    const held = sheet.contains(document.activeElement) ? /** @type {HTMLElement} */ (document.activeElement) : null;
    const [view, name, element] = [held?.closest("[data-view]")?.dataset.view, held?.dataset.part, held?.dataset.element];
    sheet.rsMarkup = markup;
    sheet.innerHTML = markup;
    // Whoever lets parts be moved makes them so, and puts what is held where the reader has it, before the focus goes back and
    // anything is seen.
    sheet.dispatchEvent(new CustomEvent("rs-drawn", { bubbles: true }));
    if (name) focusSeen(sheet, `[data-view="${view}"] .rs-part`, g => g.dataset.part === name);
    if (element) focusSeen(sheet, "[data-element]", g => g.dataset.element === element);
  }
  fillWords(figure, part);
}

/** @param {Element} sheet @param {string} selector @param {(element: HTMLElement) => boolean} isIt */
function focusSeen(sheet, selector, isIt) {
  [...sheet.querySelectorAll(selector)].find(g => isIt(g) && g.getClientRects().length > 0)?.focus({ preventScroll: true });
}

/** @param {HTMLElement} figure @param {Part} part */
function fillWords(figure, part) {
  // Between the drawing and its caption there may stand what it is worked with.
  const title = figure.firstElementChild, caption = figure.querySelector(":scope > figcaption");
  if (title) title.textContent = prose(part.title);
  const words = [part.caption ? el("p", {}, prose(part.caption)) : null, makeCautions(part.cautions)];
  caption?.replaceChildren(...words.filter(word => word !== null));
  figure.rsTable = part.table;
  fillNumbers(figure);
}

// A table of hundreds of rows is made only for a reader who opened it.
/** @param {HTMLElement} figure */
function fillNumbers(figure) {
  const details = figure.querySelector("details");
  if (details?.open && figure.rsTable) details.lastElementChild?.replaceChildren(makeTable(figure.rsTable));
}

/** @param {Part | undefined} a @param {Part} b */
function isSameKind(a, b) {
  return a !== undefined && a.type === b.type && ((a.type !== "figure" && a.type !== "drawing") || a.slug === b.slug);
}

/** @param {Element} element */
function isOnScreen(element) {
  const place = element.getBoundingClientRect();
  return place.bottom > 0 && place.top < innerHeight && place.width > 0;
}
