// A task as a class works on it: what may be changed, what is told, own estimates. What is hidden is not here: the program sends
// it when it may be seen.
import { makeControl, missing } from "../notebook/controls.js";
import { codeHere } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import { ask, Newest } from "../shared/program.js";
import { inWords, say } from "../shared/tell.js";
import { readDraft, stillOpen, writeDraft } from "./draft.js";
import { showAsked, showView } from "./view.js";

/** @import { ClassControl, LessonView } from "../shared/requests.js" */

const BETWEEN_LOOKS = 4000;

const code = codeHere(), draft = readDraft(code), newest = new Newest();
/** @type {LessonView | null} */
let view = null;
/** @type {Map<string, import("../notebook/types.js").Control>} */
const controls = new Map();
let controlsKey = "";

const keep = () => writeDraft(code, draft);

/** Asks what may be seen of the rig as it is set now. */
async function look() {
  byId("lesson").classList.add("is-waiting");
  try {
    const now = await newest.ask("lesson-view", { code, student: draft.student, settings: draft.settings });
    if (!now) return;
    byId("lesson").classList.remove("is-waiting");
    show(now);
  } catch (error) {
    if (!error.problems) throw error;
    byId("lesson").classList.remove("is-waiting");
    refused(error);
  }
}

/** @param {LessonView} now */
function show(now) {
  view = now;
  draft.student = now.student;
  keep();
  // First of all: a chart is drawn only where there is room for it.
  byId("lesson").hidden = false;
  byId("told").hidden = true;
  showControls(now.controls);
  for (const control of controls.values()) control.say("");
  showView(now);
  showAsked(now.asked, draft.estimates, !now.mayHandIn, (name, text) => { draft.estimates[name] = text; keep(); });
  byId("hand-in-row").hidden = !now.mayHandIn;
  say(byId("in-told"), now.isIn ? now.mayHandIn ? "Handed in. You may hand in again until the answer is shown." : "Handed in."
    : "");
}

/** @param {{ status: number, problems: import("../shared/requests.js").Problem[] }} error */
function refused({ problems, status }) {
  const own = problems.filter(problem => controls.has(problem.path ?? ""));
  for (const problem of own) controls.get(problem.path ?? "")?.say(inWords(problem));
  const told = byId("told"), others = problems.filter(problem => !own.includes(problem));
  told.hidden = others.length === 0;
  say(told, others.map(inWords).join(" "));
  // The teacher may have changed the task: what it does not know any more is forgotten, and the rig is as it is given.
  if (status === 400 && own.length === 0 && Object.keys(draft.settings).length > 0 && view === null) {
    draft.settings = {};
    look();
  }
}

/** @param {ClassControl[]} all */
function showControls(all) {
  const key = JSON.stringify(all);
  if (key === controlsKey) return;
  controlsKey = key;
  controls.clear();
  draft.settings = stillOpen(draft.settings, all);
  const rows = all.map(parameter => {
    const control = makeControl(parameter, name => changed(parameter, name));
    control.value = draft.settings[parameter.name] ?? parameter.default;
    controls.set(parameter.name, control);
    return control.element;
  });
  byId("controls").replaceChildren(...rows);
  byId("as-it-was").hidden = all.length === 0;
  byId("locked").textContent = all.length === 0 ? "Everything on this rig is locked." : "Everything else is locked.";
  mark();
}

/** @param {ClassControl} parameter @param {string} name */
function changed(parameter, name) {
  const control = controls.get(name);
  if (!control) return;
  const words = missing(parameter, control.value);
  // What was wrong stays until there is an answer: what is below it would move away from under the finger.
  if (words) return control.say(words);
  if (control.value === parameter.default) delete draft.settings[name];
  else draft.settings[name] = control.value;
  keep();
  mark();
  look();
}

/** What does not stand where it did is marked. */
function mark() {
  for (const [name, control] of controls) control.element.classList.toggle("changed", name in draft.settings);
}

function putBack() {
  draft.settings = {};
  keep();
  for (const parameter of view?.controls ?? []) {
    const control = controls.get(parameter.name);
    if (control) control.value = parameter.default;
  }
  mark();
  look();
}

/** @param {SubmitEvent} event */
async function handIn(event) {
  event.preventDefault();
  if (!view) return;
  const told = byId("in-told");
  say(told, "Handing in …");
  try {
    await ask("hand-in", { code, student: view.student, name: draft.name, estimates: draft.estimates,
      settings: draft.settings });
    await look();
    byId("estimates-title").scrollIntoView({ block: "nearest" });
  } catch (error) {
    if (!error.problems) throw error;
    say(told, error.problems.map(inWords).join(" "));
    if (error.problems.some((/** @type {any} */ problem) => problem.path === "name")) byId("student-name").focus();
  }
}

/** Whether the teacher has shown or changed something. The program is asked, for it tells no page by itself. */
async function watch() {
  if (!document.hidden && view) {
    try {
      const { version } = await ask("lesson-state", { code, student: view.student });
      if (version !== view.version) await look();
    } catch (error) {
      if (!error.problems) throw error;
      const told = byId("told");
      told.hidden = false;
      say(told, error.message);
      view = { ...view, version: "" };
    }
  } else if (!document.hidden) await look();
  setTimeout(watch, BETWEEN_LOOKS);
}

const name = byId("student-name", HTMLInputElement);
name.value = draft.name;
name.addEventListener("input", () => { draft.name = name.value; keep(); });
byId("estimates").addEventListener("submit", handIn);
byId("as-it-was").addEventListener("click", putBack);
await look();
setTimeout(watch, BETWEEN_LOOKS);
