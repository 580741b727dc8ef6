// Keeping what is shown: pictures, numbers, the whole page, a scenario as a file.
import { pageOf } from "../shared/addresses.js";
import { ask } from "./dialog.js";
import { addKeepTools, keepActions, keepName } from "../shared/keep-tools.js";
import { saveToDevice } from "../shared/device-files.js";
import { el } from "../shared/parts.js";
import { ask as askProgram } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { takeAlong } from "../shared/take-along.js";

/** @import { Part } from "../shared/requests.js" */
/** @import { Notebook, Values } from "./types.js" */

/** Gives each chart, drawing, table and scenario its own small row of what can be saved of it. @param {HTMLElement} container */
export const addTools = container => addKeepTools(container, scenarioActions);

/**
 * All that can be saved, in one place. `shown`: the elements of the article's parts.
 * @param {Notebook} notebook
 * @param {Values} values
 * @param {Element[]} shown
 * @param {Part[]} answers
 * @param {boolean} hasPinned
 */
export function askWhatToSave(notebook, values, shown, answers, hasPinned) {
  const rows = [el("li", {}, el("span", { class: "what" }, "This page as one file, with its charts; works with no network"),
    el("button", { type: "button", onclick: event => savePage("page", notebook, values, event) }, "HTML page"))];
  if (pageOf.rig()) rows.push(pageThatAnswers(notebook, values));
  if (answers.some(answer => answer.mayBeTaken))
    rows.push(el("li", {}, takeAlong(() => ({ request: "notebook-sheet", asks: { notebook: notebook.name, values } }))));
  for (const element of shown) {
    const actions = [...keepActions(element), ...scenarioActions(element)];
    if (actions.length > 0)
      rows.push(el("li", {}, el("span", { class: "what" }, keepName(element)),
        actions.map(action => el("button", { type: "button", onclick: action.run }, action.label))));
  }
  return ask({ title: "Save", text: hasPinned
    ? "Of the version shown as \"Now\". Charts of the pinned one are saved by the words below them." : "",
    content: el("ul", { class: "save-list" }, rows), actions: [], cancel: "Close" });
}

/** @param {Element} shown @returns {{ label: string, run: () => unknown }[]} */
function scenarioActions({ rsPart: part }) {
  if (part?.type !== "scenario") return [];
  // Where no form is beside the page there is no folder of own files either: the device takes it.
  const save = pageOf.rig() ? saveScenario : saveOnDevice;
  return [{ label: "Save as a scenario file…", run: () => save(part) }];
}

/** @param {Part} part */
async function saveOnDevice({ name = "", text = "" }) {
  await saveToDevice(text, /\.ya?ml$/i.test(name) ? name : `${name || "my-rig"}.yaml`);
}

/**
 * The page with the library in it, if the program that is asked makes such pages: how large it becomes stands there before.
 * @param {Notebook} notebook
 * @param {Values} values
 */
function pageThatAnswers(notebook, values) {
  const what = el("span", { class: "what" }), button = el("button", { type: "button",
    onclick: event => savePage("page-that-answers", notebook, values, event) }, "HTML page that answers");
  const row = el("li", { hidden: true }, what, button);
  askProgram("page-that-answers-size", { notebook: notebook.name }).then(({ bytes, why }) => {
    what.textContent = why ? `No page of this notebook can answer by itself. ${why}`
      : `The same with controls that answer, also with no network; ${sizeInWords(bytes)}`;
    button.hidden = why !== null;
    row.hidden = false;
  }).catch(error => { if (!(error instanceof ProgramProblem)) throw error; });
  return row;
}

/** @param {number | null} bytes null where it is known only once the library is built */
export function sizeInWords(bytes) {
  return bytes === null ? "the library for it is built first, which takes a few minutes and tells its size"
    : `${(bytes / 1e6).toFixed(1)} MB`;
}

/**
 * The program runs the notebook once more for it, which takes a moment.
 * @param {"page" | "page-that-answers"} kind
 * @param {Notebook} notebook
 * @param {Values} values
 * @param {Event} event
 */
async function savePage(kind, notebook, values, event) {
  const button = /** @type {HTMLButtonElement} */ (event.currentTarget);
  const label = button.textContent;
  button.disabled = true;
  button.textContent = "Making it…";
  try {
    const file = await askProgram(kind, { notebook: notebook.name, values });
    window.rigKeep.save(file, `${notebook.name.replace(/[^A-Za-z0-9_-]/g, "-")}.html`);
    button.textContent = label;
  } catch (error) {
    if (!(error instanceof ProgramProblem)) throw error;
    button.textContent = error.message;
  } finally {
    button.disabled = false;
  }
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
