// The shelf: what there is to read, and the files to start from.
import { pageOf } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import { welcome } from "../shared/first-visit.js";
import { el } from "../shared/parts.js";
import { ask } from "../shared/program.js";
import { addCarryTools, offerToOpen } from "./carry.js";

/** @import { FileOnShelf, NotebookOnShelf } from "../shared/requests.js" */

const message = byId("message");

/** @param {NotebookOnShelf} notebook */
function pictureOf(notebook) {
  const image = el("img", { alt: "" });
  ask("picture", { notebook: notebook.name })
    .then(file => { image.src = URL.createObjectURL(file); }, () => { image.parentElement?.setAttribute("hidden", ""); });
  return image;
}

/** @param {NotebookOnShelf} notebook */
function notebookRow(notebook) {
  const picture = notebook.hasPicture ? el("div", { class: "picture" }, pictureOf(notebook)) : null;
  return el("li", { class: picture ? "with-picture" : "" }, picture, el("div", {},
    el("h3", {}, el("a", { href: pageOf.notebook(notebook.name) }, notebook.title)), el("p", {}, notebook.sentence)));
}

/** @param {FileOnShelf} file */
function fileRow(file) {
  const title = file.title || file.name;
  return el("li", {},
    el("span", { class: "title" }, title, el("span", { class: "name" }, file.name)),
    el("a", { href: pageOf.rig({ file: file.id }), "aria-label": `${title}: open in the form` }, "Open in the form"),
    el("a", { href: pageOf.file(file.id), "aria-label": `${title}: edit as text` }, "Edit as text"),
    file.problems > 0 ? el("p", { class: "problem" },
      file.problems === 1 ? "One place in it cannot be read yet." : `${file.problems} places in it cannot be read yet.`) : null);
}

/** @param {string} part @param {string} list @param {HTMLElement[]} rows */
function show(part, list, rows) {
  byId(list).replaceChildren(...rows);
  byId(part).hidden = false;
}

welcome(byId("main"));
try {
  const [shelf, can] = await Promise.all([ask("shelf", {}), ask("abilities", {})]);
  // Where no server makes the list, it stands in the page already.
  const isListed = byId("notebook-list").childElementCount > 0;
  message.hidden = isListed || shelf.notebooks.length > 0;
  message.textContent =
    "No notebooks are on the shelf. Start the program in the folder that holds them, or begin with your own rig.";
  if (!isListed && shelf.notebooks.length > 0) show("notebooks-part", "notebook-list", shelf.notebooks.map(notebookRow));

  const own = shelf.files.filter(file => file.folder === "own"), samples = shelf.files.filter(file => file.folder !== "own");
  const place = shelf.folder ? `in the folder ${shelf.folder}` : "by this browser";
  byId("own-about").textContent = own.length === 0 ? `None yet. What you save is kept ${place}.`
    : `They are kept ${place}${shelf.folder ? "; the command line and the notebooks take them too" : ""}.`;
  const rows = own.map(fileRow);
  // In a folder its reader does all that with the machine's own means.
  if (!can.folder) {
    for (const [at, row] of rows.entries()) addCarryTools(row, own[at]);
    offerToOpen(byId("open-file"));
  }
  show("own-part", "own-list", rows);
  if (samples.length > 0) show("samples-part", "sample-list", samples.map(fileRow));
} catch (error) {
  message.hidden = false;
  message.classList.add("problem");
  message.textContent = error.message;
}
