// What can be saved of a chart, a drawing, a table, and a small row of buttons for it: for every page that shows parts. The files
// are made by keep.js.
import { el } from "./parts.js";

/** @import { Part } from "./requests.js" */
/** @typedef {{ label: string, run: () => unknown }} Action */

/**
 * Gives each part in `container` its own row of what can be saved of it. `more`: what a page has besides.
 * @param {HTMLElement} container
 * @param {(shown: Element) => Action[]} [more]
 */
export function addKeepTools(container, more = () => []) {
  for (const shown of container.children) {
    if (shown.rsHasTools && shown.contains(shown.rsHasTools)) continue;
    const actions = [...keepActions(shown), ...more(shown)];
    if (actions.length === 0) continue;
    shown.rsHasTools = el("div", { class: "tools no-print", role: "group", "aria-label": `Save: ${keepName(shown)}` }, "Save:",
      actions.map(action => el("button", { type: "button", class: "quiet", onclick: action.run }, action.label)));
    shown.append(shown.rsHasTools);
  }
}

/** What a part is called among what can be saved. @param {Element} shown */
export function keepName({ rsPart: part }) {
  if (!part) return "";
  if (part.type === "figure" || part.type === "drawing") return part.title ?? "";
  if (part.type === "scenario") return `The scenario, as the file ${part.name}`;
  return part.table?.caption || (part.table ? `Table: ${part.table.columns.map(column => column.title).join(", ")}` : "");
}

/** What can be saved: as it is at that moment, for parts change in place. @param {Element} shown @returns {Action[]} */
export function keepActions(shown) {
  /** @param {(part: Part, name: string) => unknown} save */
  const of = save => () => { if (shown.rsPart) save(shown.rsPart, shown.rsPart.slug ?? slugOf(keepName(shown))); };
  /** @param {Part} part @param {string} name */
  const table = (part, name) => { if (part.table) keep().saveNumbers(keep().csvOfTable(part.table), name); };
  switch (shown.rsPart?.type) {
    case "figure":
      return [
        { label: "PNG", run: of((part, name) => keep().saveChart(part.specification, name, "png")) },
        { label: "SVG", run: of((part, name) => keep().saveChart(part.specification, name, "svg")) },
        { label: "CSV", run: of((part, name) => keep().saveNumbers(keep().csvOfChart(part.specification), name)) },
      ];
    case "drawing":
      return [
        { label: "PNG", run: of((part, name) => keep().saveDrawing(part.svg ?? "", name, "png")) },
        { label: "SVG", run: of((part, name) => keep().saveDrawing(part.svg ?? "", name, "svg")) },
        { label: "CSV", run: of(table) },
      ];
    case "table":
      return [{ label: "CSV", run: of(table) }];
    default:
      return [];
  }
}

const keep = () => window.rigKeep;

/** @param {string} text */
function slugOf(text) {
  return text.toLowerCase().normalize("NFKD").replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 60) || "table";
}
