// The teacher's page: a task is put together, kept as a file, printed, and handed out as an address.
import { pageOf, taskHere } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { ask, Newest } from "../shared/program.js";
import { inWords, say } from "../shared/tell.js";
import { ControlsChoice } from "./controls-choice.js";
import { Room } from "./room.js";
import { asUsual, linesOf, nameFor, withoutUnknown } from "./task.js";

/** @import { ClassTask, KeptTask, TaskChoices } from "../shared/requests.js" */

const EMPTY = { title: "", text: "", scenario: "", build: "", days: [], causes: 0, seed: 1, controls: [], shown: [],
  reveal: "by-teacher", estimates: [], ownQuestions: [], code: null };

const field = {
  scenario: byId("scenario", HTMLSelectElement), build: byId("build", HTMLSelectElement),
  causes: byId("causes", HTMLSelectElement), seed: byId("seed", HTMLInputElement), title: byId("title", HTMLInputElement),
  text: byId("text", HTMLTextAreaElement), own: byId("own", HTMLTextAreaElement), name: byId("name", HTMLInputElement),
};
const controls = new ControlsChoice(byId("controls")), room = new Room(), newest = new Newest(), places = new Newest();

/** @type {ClassTask} */
let task = EMPTY;
/** The file that it was opened from or saved as, and what that was then. @type {{ name: string, version: string } | null} */
let file = null;
/** @type {TaskChoices | null} */
let choices = null;

/** @param {any} error @param {string} [where] */
function tell(error, where = "save-told") {
  if (!error.problems) throw error;
  say(byId(where), error.problems.map(inWords).join(" "));
}

/** @param {HTMLElement} holder @param {string} name */
const checked = (holder, name) => [...holder.querySelectorAll("input")].filter(box => box.name === name && box.checked)
  .map(box => box.value);

/** What the page says now. @returns {ClassTask} */
function read() {
  const hidden = checked(byId("questions"), "hidden");
  return {
    ...task, title: field.title.value.trim(), text: field.text.value, scenario: field.scenario.value, build: field.build.value,
    days: checked(byId("days"), "day"), causes: Number(field.causes.value), seed: Number(field.seed.value) || 0,
    controls: choices ? controls.open : task.controls,
    shown: choices ? choices.questions.map(question => question.kind).filter(kind => !hidden.includes(kind)) : task.shown,
    reveal: checked(byId("task"), "reveal")[0] ?? "by-teacher",
    estimates: choices ? checked(byId("estimates"), "estimate") : task.estimates, ownQuestions: linesOf(field.own.value),
  };
}

/** @param {string} name @param {string} value @param {boolean} isChecked @param {import("../shared/parts.js").Child[]} words */
function check(name, value, isChecked, ...words) {
  const box = el("input", { type: "checkbox", name, value });
  box.checked = isChecked;
  return el("label", { class: "check" }, box, el("span", {}, ...words));
}

/** The builds and days of the chosen file; then what can be chosen of them. @param {boolean} isNew */
async function showPlaces(isNew) {
  byId("scenario-form").setAttribute("href", pageOf.rig({ file: field.scenario.value }));
  try {
    const found = await places.ask("class-places", { file: field.scenario.value });
    if (!found) return;
    field.build.replaceChildren(...found.builds.map(build => el("option", { value: build.name }, build.title)));
    if (found.builds.some(build => build.name === task.build)) field.build.value = task.build;
    const known = found.days.filter(day => task.days.includes(day.name)).map(day => day.name);
    const chosen = known.length > 0 ? known : found.days.slice(0, 1).map(day => day.name);
    byId("days").replaceChildren(...found.days.map(day => check("day", day.name, chosen.includes(day.name), day.title)));
    await showChoices(isNew);
  } catch (error) { tell(error, "choices-told"); }
}

/** What can be chosen for this rig and these days. @param {boolean} isNew whether nothing of it was said yet */
async function showChoices(isNew) {
  byId("seed-row").hidden = field.causes.value === "0";
  const told = byId("choices-told");
  told.hidden = false;
  say(told, field.causes.value === "0" ? "Running the rig …" : "Looking for things that make it fail; this takes a while …");
  byId("task").setAttribute("aria-busy", "true");
  try {
    const asked = read();
    const found = await newest.ask("class-choices", { task: asked });
    // A newer question is on its way, and tells when it is answered.
    if (!found) return;
    byId("task").removeAttribute("aria-busy");
    choices = found;
    task = isNew ? asUsual({ ...asked, controls: withoutUnknown(asked, found).controls }, found) : withoutUnknown(asked, found);
    fillChoices(found);
    told.hidden = found.told.length === 0;
    say(told, found.told.join(" "));
  } catch (error) {
    byId("task").removeAttribute("aria-busy");
    tell(error, "choices-told");
  }
}

/** @param {TaskChoices} found */
function fillChoices(found) {
  controls.show(found.controls, task.controls);
  byId("headline").textContent = `The answer: ${found.headline}`;
  byId("questions").replaceChildren(...found.questions.map(question => check("hidden", question.kind,
    !task.shown.includes(question.kind), question.title, " ", el("span", { class: "words" }, question.words))));
  byId("estimates").replaceChildren(...found.findings.length > 0
    ? [el("ul", {}, found.findings.map(line => el("li", {}, line)))]
    : found.estimates.map(estimate => check("estimate", estimate.name, task.estimates.includes(estimate.name), estimate.question,
      " ", el("span", { class: "words" }, estimate.unit))));
}

/** @param {boolean} replace */
async function save(replace) {
  const name = field.name.value.trim().replace(/(\.task)?\.ya?ml$/i, "") || nameFor(field.title.value);
  field.name.value = name;
  byId("replace").hidden = true;
  say(byId("save-told"), "Saving …");
  try {
    const isSame = file?.name === `${name}.task.yaml`;
    const kept = await ask("save-class-task", { name: `${name}.task.yaml`, task: read(), version: isSame ? file?.version ?? null
      : null, replace });
    opened(kept);
    say(byId("save-told"), `Saved as ${kept.name}. The address stands above.`);
    byId("lesson-title").scrollIntoView({ block: "start" });
    await showKept();
  } catch (error) {
    byId("replace").hidden = error.status !== 409;
    tell(error);
  }
}

/** @param {KeptTask} kept */
function opened(kept) {
  file = { name: kept.name, version: kept.version };
  task = kept.task;
  history.replaceState(null, "", pageOf.task(kept.name));
  room.open(kept);
  // Its answers are not for the wall.
  byId("edit", HTMLDetailsElement).open = false;
  byId("edit-title").textContent = "Change the task";
}

/** @param {boolean} solution */
async function print(solution) {
  say(byId("save-told"), "Making it …");
  try {
    const page = await ask("class-sheet", { task: read(), solution, whole: false });
    const name = field.name.value.trim() || nameFor(field.title.value);
    window.rigKeep.save(page, `${name}-${solution ? "solution" : "sheet"}.html`);
    say(byId("save-told"), "Saved with your downloads. Open it and print it: it fits on A4 and on Letter.");
  } catch (error) { tell(error); }
}

async function showKept() {
  const { tasks, folder } = await ask("class-tasks", {});
  byId("kept-part").hidden = tasks.length === 0;
  byId("new-task").hidden = file === null;
  byId("name-help").textContent = `Kept in the folder ${folder}; what the class hands in is not.`;
  byId("kept").replaceChildren(...tasks.map(one => el("li", {}, el("a", { href: pageOf.task(one.name) }, one.title),
    el("span", { class: "name" }, one.name), one.isRead ? null : el("span", { class: "problem" }, "It cannot be read."))));
}

async function begin() {
  const { files } = await ask("shelf", {});
  const usable = files.filter(one => one.problems === 0);
  field.scenario.replaceChildren(...["own", "samples"].map(folder => el("optgroup", { label: folder === "own" ? "Your own"
    : "Samples" }, usable.filter(one => one.folder === folder).map(one => el("option", { value: one.id }, one.title)))));
  await showKept();
  const name = taskHere();
  if (name) {
    const kept = await ask("class-task", { name });
    opened(kept);
    field.scenario.value = task.scenario;
    field.causes.value = String(task.causes);
    field.seed.value = String(task.seed);
    field.title.value = task.title;
    field.text.value = task.text;
    field.own.value = task.ownQuestions.join("\n");
    field.name.value = kept.name.replace(/\.task\.yaml$/i, "");
    for (const box of byId("task").querySelectorAll("input")) if (box.name === "reveal") box.checked = box.value === task.reveal;
  }
  await showPlaces(!name);
}

field.scenario.addEventListener("change", () => showPlaces(true));
field.build.addEventListener("change", () => showChoices(true));
field.causes.addEventListener("change", () => showChoices(true));
field.seed.addEventListener("change", () => showChoices(true));
byId("days").addEventListener("change", () => showChoices(true));
field.title.addEventListener("input", () => { if (!file) field.name.value = nameFor(field.title.value); });
byId("task").addEventListener("submit", event => { event.preventDefault(); save(false); });
byId("replace").addEventListener("click", () => save(true));
byId("sheet").addEventListener("click", () => print(false));
byId("solution").addEventListener("click", () => print(true));
try { await begin(); } catch (error) { tell(error, "choices-told"); byId("choices-told").hidden = false; }
