// The page "Start with your own rig": fetches what there is to choose from and connects the sections of the form.
import { byId } from "../shared/elements.js";
import { el } from "../shared/parts.js";
import { Answer } from "./answer.js";
import { ask } from "../shared/program.js";
import { askedFields, askedQuestions, fieldOfEdit } from "./asked.js";
import { BestRig, tellBestElsewhere } from "./best.js";
import { Carry } from "./carry.js";
import { Compare } from "./compare.js";
import { Day } from "./day.js";
import { Fields } from "./fields.js";
import { welcome } from "../shared/first-visit.js";
import { FormLine } from "./line.js";
import { openLinked } from "./linked.js";
import { inWords, say } from "../shared/tell.js";
import { openPlace, showSaved } from "./place.js";
import { pageOf } from "../shared/addresses.js";
import { Places } from "./places.js";
import { PowerLog } from "./power-log.js";
import { ProblemNotes } from "./problems.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { Rig } from "./state.js";
import { Save } from "./save.js";
import { Things } from "./things.js";
import { UndoButtons } from "./undo.js";
import { Wiring } from "./wiring.js";
import { WiringChoice } from "./wiring-choice.js";

start();
welcome(byId("main"));

async function start() {
  const form = byId("rig"), rig = new Rig();
  try {
    const [knowledge, can] = await Promise.all([ask("rig-questions", {}), ask("abilities", {})]);
    connect(rig, knowledge, can, form);
    if (!await openLinked(rig, knowledge)) await openPlace(rig, knowledge);
    form.hidden = false;
    say(byId("page-told"), "");
    if (location.hash) document.getElementById(decodeURIComponent(location.hash.slice(1)))?.scrollIntoView();
  } catch (error) {
    if (!(error instanceof ProgramProblem)) throw error;
    tellRefused(error);
  }
}

/** @param {ProgramProblem} error */
function tellRefused(error) {
  say(byId("page-told"), error.problems.map((problem) =>
    `${problem.path ? `${problem.path}: ` : ""}${inWords(problem)}`).join(" "));
  byId("page-again").hidden = false;
  byId("page-again").onclick = () => location.reload();
  // A file with errors has no form; in its text each one stands at its line.
  const file = new URLSearchParams(location.search).get("file");
  if (file && error.status === 400) Object.assign(byId("page-text"), { hidden: false, href: pageOf.file(file) });
}

/**
 * @param {Rig} rig
 * @param {any} knowledge
 * @param {import("../shared/requests.js").Abilities} can
 * @param {HTMLElement} form
 */
function connect(rig, knowledge, can, form) {
  const fields = new Fields(rig, [...knowledge.fields, ...askedQuestions], form, askedFields(rig));
  new Things(rig, fields, knowledge, form);
  const wiring = new Wiring(rig, byId("wiring"), byId("wiring-empty"));
  const choice = new WiringChoice(rig, byId("answer-parts"));
  const day = new Day(rig, knowledge);
  new PowerLog(rig, knowledge);
  new Carry(rig, new Save(rig, can), can);
  const problems = new ProblemNotes(rig, form, byId("answer-problems"));
  const line = new FormLine(), answer = new Answer(rig, form, line);
  new Places(rig, fields, answer);
  new Compare(rig, answer);
  if (can.bestRig) new BestRig(rig, line); else tellBestElsewhere();
  // After all that show the rig: what the fields show then is where typing begins.
  new UndoButtons(rig);
  answer.onAnswered((detail) => {
    wiring.show(detail.wiring);
    fields.answered(detail);
    tellAge(detail.age ?? []);
    day.showProblems(detail.problems);
    problems.show(detail.problems);
  });
  answer.onDrawn((detail) => choice.show(detail));
  answer.onRefused((found) => { day.showProblems(found); problems.show(found); });
  rig.onRefused(({ status, problems: found, edit }) => {
    if (status < 500 && status > 0) problems.add(found, fieldOfEdit(edit));
    else answer.view.tellAway(`${found.map(inWords).join(" ")} What you entered is kept in this window.`);
  });
  rig.addEventListener("saved", () => showSaved(rig));
}

// Beside the questions: what the answer makes of the battery's age.
/** @param {string[]} lines */
function tellAge(lines) {
  byId("age-told").replaceChildren(...lines.map((line) => el("li", {}, line)));
  byId("age-told").hidden = lines.length === 0;
}
