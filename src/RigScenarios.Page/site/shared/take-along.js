// "To take along": the answer as a sheet of one page to print, for the day or for a class. The program makes it; here is only the
// choice, for whatever page shows an answer.
import { el } from "./parts.js";
import { printSheet } from "./print-sheet.js";
import { ask } from "./program.js";

/** @import { Requests } from "./requests.js" */
/** @typedef {{ request: "rig-sheet", asks: object }
 *   | { request: "notebook-sheet", asks: { notebook: string, values: Record<string, string> } }} Asked */

const SHEETS = [
  ["day", "For the day", "Swaps and charging with their times, places, setting, cables, who flies what, checks, cautions."],
  ["build", "For building", "Every part in order with its place, also from the ends of the rods, cables, checks, cautions."],
  ["shopping", "For shopping", "What to buy and to rent, what it comes to, and what has no price."],
  ["blanks", "For a class: with blanks", "What is given, and room for one's own estimate. No answer stands on it."],
  ["solution", "For a class: the solution", "What the answer says of each of those questions."],
];

/**
 * The choice of sheets, folded. `what` gives the request for the answer that is shown now: of the form ("rig-sheet": what it
 * sends for an answer) or of a notebook ("notebook-sheet": its name and values).
 * @param {() => Asked | Promise<Asked>} what
 */
export function takeAlong(what) {
  const told = el("p", { class: "help", role: "status" });
  const whole = el("input", { type: "checkbox" });
  const buttons = SHEETS.map(([sheet, label, help]) => el("li", {},
    el("div", { class: "actions" }, el("button", { type: "button", onclick: () => make(sheet, keep) }, label),
      el("button", { type: "button", class: "quiet", "aria-label": `Print: ${label}`, onclick: () => make(sheet, print) },
        "Print")),
    el("span", { class: "help" }, help)));
  /** @param {Blob} page @param {string} sheet */
  function keep(page, sheet) {
    window.rigKeep.save(page, sheet === "day" ? "take-along.html" : `take-along-${sheet}.html`);
    told.textContent = "Saved with your downloads. Open it and print it: it fits on A4 and on Letter.";
  }
  /** @param {Blob} page */
  async function print(page) {
    const html = await page.text();
    told.textContent = "";
    printSheet(html);
  }
  /** @param {string} sheet @param {(page: Blob, sheet: string) => unknown} then */
  async function make(sheet, then) {
    told.textContent = "Making it …";
    try {
      const { request, asks } = await what();
      const page = await ask(request, /** @type {Requests[typeof request]["asks"] & any} */ ({ ...asks, sheet,
        whole: whole.checked }));
      await then(page, sheet);
    } catch (error) {
      if (!error.problems) throw error;
      told.textContent = error.message;
    }
  }
  return el("details", { class: "take-along no-print" }, el("summary", {}, "To take along"),
    el("p", {}, "The answer as one page, in black on white: kept as a file that needs no network, or printed at once."),
    el("ul", {}, buttons),
    el("p", {}, el("label", {}, whole, " Leave nothing out, on as many pages as it takes")), told);
}
