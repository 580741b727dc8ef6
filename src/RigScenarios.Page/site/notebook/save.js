// Keeping what is shown: pictures, numbers, the whole page, a scenario as a file.
import { pageOf } from "../shared/addresses.js";
import { toCsv } from "./csv.js";
import { ask } from "./dialog.js";
import { el } from "../shared/parts.js";
import { ask as askProgram } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";

/** @import { Part, Table } from "../shared/requests.js" */
/** @import { Notebook, Values } from "./types.js" */

/** Gives each chart, table and scenario in `container` its own small row of what can be saved of it.
 * @param {HTMLElement} container */
export function addTools(container) {
  for (const shown of container.children) {
    if (shown.rsHasTools && shown.contains(shown.rsHasTools)) continue;
    const actions = actionsOf(shown);
    if (actions.length === 0) continue;
    shown.rsHasTools = el("div", { class: "tools no-print", role: "group", "aria-label": `Save: ${nameOf(shown)}` }, "Save:",
      actions.map(action =>
      el("button", { type: "button", class: "quiet", onclick: action.run }, action.label)));
    shown.append(shown.rsHasTools);
  }
}

/**
 * All that can be saved, in one place. `shown`: the elements of the article's parts.
 * @param {Notebook} notebook
 * @param {Values} values
 * @param {Element[]} shown
 * @param {boolean} hasPinned
 */
export function askWhatToSave(notebook, values, shown, hasPinned) {
  const rows = [el("li", {}, el("span", { class: "what" }, "This page as one file, with its charts; works with no network"),
    el("button", { type: "button", onclick: event => savePage(notebook, values, event) }, "HTML page"))];
  for (const element of shown) {
    const actions = actionsOf(element);
    if (actions.length > 0)
      rows.push(el("li", {}, el("span", { class: "what" }, nameOf(element)),
        actions.map(action => el("button", { type: "button", onclick: action.run }, action.label))));
  }
  return ask({ title: "Save", text: hasPinned
    ? "Of the version shown as \"Now\". Charts of the pinned one are saved by the words below them." : "",
    content: el("ul", { class: "save-list" }, rows), actions: [], cancel: "Close" });
}

/** @param {Element} shown */
function nameOf({ rsPart: part }) {
  if (!part) return "";
  if (part.type === "figure") return part.title ?? "";
  if (part.type === "scenario") return `The scenario, as the file ${part.name}`;
  return part.table?.caption || (part.table ? `Table: ${part.table.columns.map(column => column.title).join(", ")}` : "");
}

/**
 * What can be saved of what is shown: as it is at that moment, for parts change in place.
 * @param {Element} shown
 * @returns {{ label: string, run: () => unknown }[]}
 */
function actionsOf(shown) {
  /** @param {(part: Part) => unknown} save */
  const of = save => () => { if (shown.rsPart) save(shown.rsPart); };
  switch (shown.rsPart?.type) {
    case "figure":
      return [
        { label: "PNG", run: of(part => savePicture(part, "png")) },
        { label: "SVG", run: of(part => savePicture(part, "svg")) },
        { label: "CSV", run: of(part => saveTable(part.table, part.slug)) },
      ];
    case "table":
      return [{ label: "CSV",
        run: of(({ table }) => saveTable(table, slugOf(table?.caption || table?.columns[0]?.title || "table"))) }];
    case "scenario":
      return [{ label: "Save as a scenario file…", run: of(saveScenario) }];
    default:
      return [];
  }
}

/**
 * The program runs the notebook once more for it, which takes a moment.
 * @param {Notebook} notebook
 * @param {Values} values
 * @param {Event} event
 */
async function savePage(notebook, values, event) {
  const button = /** @type {HTMLButtonElement} */ (event.currentTarget);
  const label = button.textContent;
  button.disabled = true;
  button.textContent = "Making it…";
  try {
    const file = await askProgram("page", { notebook: notebook.name, values });
    saveFile(file, `${notebook.name.replace(/[^A-Za-z0-9_-]/g, "-")}.html`);
    button.textContent = label;
  } catch (error) {
    if (!(error instanceof ProgramProblem)) throw error;
    button.textContent = error.message;
  } finally {
    button.disabled = false;
  }
}

/** @param {Part} part @param {"png" | "svg"} format */
async function savePicture(part, format) {
  const address = await window.rigFigures.picture(part.specification,
    { format, width: 1000, height: part.height || 420, scale: format === "png" ? 2 : 1 });
  if (format === "png") return download(address, `${part.slug}.png`);
  const text = decodeURIComponent(address.slice(address.indexOf(",") + 1));
  return saveText(text, `${part.slug}.svg`, "image/svg+xml");
}

/** @param {Table | undefined} table @param {string | undefined} name */
function saveTable(table, name) {
  if (!table) return;
  // The mark at the start tells programs that guess an encoding that this is UTF-8 ("°C" would suffer).
  saveText(`\ufeff${toCsv(table)}`, `${name}.csv`, "text/csv;charset=utf-8");
}

/** @param {string} text @param {string} name @param {string} type */
function saveText(text, name, type) {
  saveFile(new Blob([text], { type }), name);
}

/** @param {Blob} file @param {string} name */
function saveFile(file, name) {
  const address = URL.createObjectURL(file);
  download(address, name);
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}

/** @param {string} address @param {string} name */
function download(address, name) {
  const link = el("a", { href: address, download: name, hidden: true });
  document.body.append(link);
  link.click();
  link.remove();
}

/** @param {Part} part */
async function saveScenario({ name: ownName = "", text = "" }) {
  let isThere = "", saved = "";
  await ask({
    title: "Save as a scenario file",
    text: "It goes into your own folder. The form, the notebooks and the command line take it.",
    fields: [{ name: "name", label: "Name of the file", value: ownName,
      help: "Letters, digits and hyphens; it ends with .yaml." }],
    actions: [{ value: "save", label: "Save", primary: true }],
    async check(_, { name }) {
      const file = /\.ya?ml$/i.test(name) ? name : `${name}.yaml`;
      if (file === ".yaml") return "Give the file a name.";
      try {
        // Said once that the file is there, a second "Save" with the same name replaces it.
        saved = (await askProgram("save-file", { name: file, text, version: null, replace: isThere === file })).id;
        return null;
      } catch (error) {
        if (!(error instanceof ProgramProblem)) throw error;
        if (error.status !== 409) return error.message;
        isThere = file;
        return `${error.message} To replace it, press "Save" again; or give another name.`;
      }
    },
  });
  if (saved) await ask({
    title: "Saved",
    content: el("p", {}, `It is the file ${saved.replace(/^own\//, "")} in your own folder. `,
      el("a", { href: pageOf.rig({ file: saved }) }, "Open it in the form"), " or ",
      el("a", { href: pageOf.file(saved) }, "edit it as text"), "."),
    cancel: null,
  });
}

/** @param {string} text */
function slugOf(text) {
  return text.toLowerCase().normalize("NFKD").replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 60) || "table";
}
