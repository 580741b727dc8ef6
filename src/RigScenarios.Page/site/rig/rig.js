// The page "Start with your own rig": fetches what there is to choose from and connects the sections of the form.
import { Answer } from "./answer.js";
import { api, inPath } from "../shared/api.js";
import { connectDials } from "./cold.js";
import { Day } from "./day.js";
import { Draft } from "./draft.js";
import { el } from "../shared/parts.js";
import { inWords, say } from "../shared/tell.js";
import { Places } from "./places.js";
import { ProblemNotes } from "./problems.js";
import { Save } from "./save.js";
import { Things } from "./things.js";
import { Wiring } from "./wiring.js";
import { WiringChoice } from "./wiring-choice.js";

const byId = (id) => document.getElementById(id);
const draft = new Draft();

start();

async function start() {
  const form = byId("rig");
  try {
    const knowledge = await api("GET", "/api/rig/questions");
    connect(knowledge, form);
    await openPlace(knowledge);
    form.hidden = false;
    say(byId("page-told"), "");
    if (location.hash) document.getElementById(decodeURIComponent(location.hash.slice(1)))?.scrollIntoView();
  } catch (error) {
    if (!error.problems) throw error;
    say(byId("page-told"), error.problems.map((problem) => `${problem.path ? `${problem.path}: ` : ""}${inWords(problem)}`)
      .join(" "));
    byId("page-again").hidden = false;
    byId("page-again").onclick = () => location.reload();
    // A file with errors has no form; in its text each one stands at its line.
    const file = new URLSearchParams(location.search).get("file");
    if (file && error.status === 400) Object.assign(byId("page-text"), { hidden: false, href: `/file/${inPath(file)}` });
  }
}

function connect(knowledge, form) {
  let titles = new Map();
  const titleOf = (thing) => titles.get(thing) ?? draft.value.things[thing]?.own?.name
    ?? knowledge.parts.find((part) => part.id === draft.value.things[thing]?.part)?.name ?? thing;
  new Things(draft, knowledge, form);
  const wiring = new Wiring(draft, byId("wiring"), byId("wiring-empty"));
  const choice = new WiringChoice(draft, byId("answer-parts"));
  const day = new Day(draft, knowledge, titleOf);
  connectDials(draft);
  connectBasics();
  new Save(draft);
  const problems = new ProblemNotes(form, byId("answer-problems"));
  const answer = new Answer(draft, knowledge);
  new Places(draft, answer);
  answer.addEventListener("answered", ({ detail }) => {
    titles = new Map(detail.wiring.map((line) => [line.thing, line.title]));
    wiring.show(detail.wiring);
    choice.show(detail);
    day.showProblems(detail.problems);
    problems.show(detail.problems);
  });
  answer.addEventListener("refused", ({ detail }) => { day.showProblems(detail); problems.show(detail); });
  draft.addEventListener("saved", () => { byId("kept").hidden = true; byId("left").hidden = true; showPlace(); });
  byId("start-fresh").addEventListener("click", () => {
    draft.forget();
    location.assign(draft.place.file ? location.href : "/rig");
  });
}

// Title and stance: the two fields that need nothing but themselves.
function connectBasics() {
  const title = byId("rig-title");
  title.dataset.path = "title";
  title.addEventListener("input", () => draft.set("title", title.value.trim(), false));
  byId("stance").addEventListener("change", (event) => draft.set("stance", event.target.value));
  draft.addEventListener("changed", () => {
    if (document.activeElement !== title) title.value = draft.value.title ?? "";
    for (const radio of byId("stance").querySelectorAll("input")) radio.checked = radio.value === draft.value.stance;
  });
}

async function openPlace(knowledge) {
  const asked = new URLSearchParams(location.search);
  const place = { file: asked.get("file"), build: asked.get("build"), day: asked.get("day") };
  if (!place.file) {
    openDraft(knowledge.draft, place);
    return;
  }

  const query = new URLSearchParams(Object.entries(place).filter(([, value]) => value));
  const opened = await api("GET", `/api/rig/draft?${query}`);
  const exact = { file: place.file, build: opened.build, day: opened.day };
  history.replaceState(null, "", `/rig?${new URLSearchParams(exact)}${location.hash}`);
  openDraft(opened.draft, { ...exact, version: opened.version });
  showChoices(opened, exact);
  showPlace();
}

// The rig as it is, or as this window left it; what another window left is only offered.
function openDraft(value, place) {
  const kept = Draft.kept(place);
  const openKept = () => draft.open(kept.value, { ...place, version: kept.place.version ?? place.version ?? null }, true);
  if (kept?.isHere) openKept(); else draft.open(value, place);
  byId("kept").hidden = !kept?.isHere;
  byId("left").hidden = !kept || kept.isHere;
  byId("bring-back").onclick = () => {
    openKept();
    byId("left").hidden = true;
    byId("kept").hidden = false;
    byId("start-fresh").focus();
  };
  byId("leave-it").onclick = () => { draft.forget(); byId("left").hidden = true; };
}

// Which file this is.
function showPlace() {
  const { file } = draft.place, name = file.split("/").pop(), isSample = !file.startsWith("own/");
  document.title = `${draft.value.title || name} — your own rig`;
  byId("page-title").textContent = isSample ? "Start from a sample" : "Your own rig";
  byId("page-lead").textContent = isSample
    ? `This is a copy of the sample ${name}. Change what you like and save it under a name of your own; `
      + "the sample stays as it is."
    : `This is your file ${name}. What the form doesn't show, and every remark in the file, stays as it is when you save.`;
}

// Which of its builds and days.
function showChoices(opened, place) {
  byId("place").hidden = false;
  for (const [key, choices] of [["build", opened.builds], ["day", opened.days]]) {
    const select = byId(`place-${key}`);
    select.replaceChildren(...choices.map((choice) => el("option", { value: choice.name }, choice.title || choice.name)));
    select.value = place[key];
    select.addEventListener("change",
      () => location.assign(
      `/rig?${new URLSearchParams({ file: draft.place.file, build: byId("place-build").value, day: byId("place-day").value })}`));
  }
}
