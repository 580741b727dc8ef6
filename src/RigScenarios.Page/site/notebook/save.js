// Keeping what is shown: pictures, numbers, the whole page, a scenario as a file.
import { api, ApiProblem, fetchFile, inPath } from "../shared/api.js";
import { toCsv } from "./csv.js";
import { ask } from "./dialog.js";
import { el } from "../shared/parts.js";

/** Gives each chart, table and scenario in `container` its own small row of what can be saved of it. */
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

/** All that can be saved, in one place. `shown`: the elements of the article's parts. */
export function askWhatToSave(notebook, values, shown, hasPinned) {
  const rows = [el("li", {}, el("span", { class: "what" }, "This page as one file, with its charts; works with no network"),
    el("button", { type: "button", onclick: event => savePage(notebook, values, event.currentTarget) }, "HTML page"))];
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

function nameOf(shown) {
  const part = shown.rsPart;
  if (part.type === "figure") return part.title;
  if (part.type === "scenario") return `The scenario, as the file ${part.name}`;
  return part.table?.caption || (part.table ? `Table: ${part.table.columns.map(column => column.title).join(", ")}` : "");
}

function actionsOf(shown) {
  const part = () => shown.rsPart;
  switch (part()?.type) {
    case "figure":
      return [
        { label: "PNG", run: () => savePicture(shown, "png") },
        { label: "SVG", run: () => savePicture(shown, "svg") },
        { label: "CSV", run: () => saveTable(part().table, part().slug) },
      ];
    case "table":
      return [{ label: "CSV",
        run: () => saveTable(part().table, slugOf(part().table.caption || part().table.columns[0]?.title || "table")) }];
    case "scenario":
      return [{ label: "Save as a scenario file…", run: () => saveScenario(part()) }];
    default:
      return [];
  }
}

// The server runs the notebook once more for it, which takes a moment.
async function savePage(notebook, values, button) {
  const label = button.textContent;
  button.disabled = true;
  button.textContent = "Making it…";
  try {
    const file = await fetchFile(`/api/page/${encodeURIComponent(notebook.name)}?${new URLSearchParams(values)}`);
    saveFile(file, `${notebook.name.replace(/[^A-Za-z0-9_-]/g, "-")}.html`);
    button.textContent = label;
  } catch (error) {
    if (!(error instanceof ApiProblem)) throw error;
    button.textContent = error.message;
  } finally {
    button.disabled = false;
  }
}

async function savePicture(figure, format) {
  const part = figure.rsPart;
  const address = await window.rigFigures.picture(part.specification,
    { format, width: 1000, height: part.height || 420, scale: format === "png" ? 2 : 1 });
  if (format === "png") return download(address, `${part.slug}.png`);
  const text = decodeURIComponent(address.slice(address.indexOf(",") + 1));
  return saveText(text, `${part.slug}.svg`, "image/svg+xml");
}

function saveTable(table, name) {
  // The mark at the start tells programs that guess an encoding that this is UTF-8 ("°C" would suffer).
  saveText(`\ufeff${toCsv(table)}`, `${name}.csv`, "text/csv;charset=utf-8");
}

function saveText(text, name, type) {
  saveFile(new Blob([text], { type }), name);
}

function saveFile(file, name) {
  const address = URL.createObjectURL(file);
  download(address, name);
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}

function download(address, name) {
  const link = el("a", { href: address, download: name, hidden: true });
  document.body.append(link);
  link.click();
  link.remove();
}

async function saveScenario(part) {
  let isThere = "", saved = null;
  await ask({
    title: "Save as a scenario file",
    text: "It goes into your own folder. The form, the notebooks and the command line take it.",
    fields: [{ name: "name", label: "Name of the file", value: part.name,
      help: "Letters, digits and hyphens; it ends with .yaml." }],
    actions: [{ value: "save", label: "Save", primary: true }],
    async check(_, { name }) {
      const file = /\.ya?ml$/i.test(name) ? name : `${name}.yaml`;
      if (file === ".yaml") return "Give the file a name.";
      try {
        // Said once that the file is there, a second "Save" with the same name replaces it.
        saved = await api("PUT", `/api/files/own/${inPath(file)}`, { text: part.text, version: null, replace: isThere === file });
        return null;
      } catch (error) {
        if (!(error instanceof ApiProblem)) throw error;
        if (error.status !== 409) return error.message;
        isThere = file;
        return `${error.message} To replace it, press "Save" again; or give another name.`;
      }
    },
  });
  if (saved) await ask({
    title: "Saved",
    content: el("p", {}, `It is the file ${saved.id.replace(/^own\//, "")} in your own folder. `,
      el("a", { href: `/rig?file=${encodeURIComponent(saved.id)}` }, "Open it in the form"), " or ",
      el("a", { href: `/file/${inPath(saved.id)}` }, "edit it as text"), "."),
    cancel: null,
  });
}

function slugOf(text) {
  return text.toLowerCase().normalize("NFKD").replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 60) || "table";
}
