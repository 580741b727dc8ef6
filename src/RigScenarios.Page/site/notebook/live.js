// A notebook that listens: every change of a control goes to the server, and what comes back goes into the article.
import { addressOf, readAddress, writeAddress } from "./address.js";
import { Article } from "./article.js";
import { connect } from "../shared/connection.js";
import { isOutside, missing } from "./controls.js";
import { copyLink } from "./dialog.js";
import { makeDrawing, tellUpdated } from "../shared/drawing.js";
import { Followers } from "./followers.js";
import "../shared/inner-links.js";
import { makeMoving } from "../shared/moving.js";
import { NotebookPlaces } from "./places.js";
import { makeRunWords } from "./run-words.js";
import { RunQueue, WHY_STOPPED } from "../shared/run-queue.js";
import { addTools, askWhatToSave } from "./save.js";
import { Strip } from "./strip.js";

const name = decodeURIComponent(location.pathname.split("/").pop());
const message = document.getElementById("message");
const told = document.getElementById("told");

let notebook = null, strip = null, article = null, defaults = {};
let now = {}, pinned = null, problems = [], isBroken = false;
const followers = new Followers();

const send = connect(`/api/live/${encodeURIComponent(name)}`, {
  message: receive, broken,
  gone: shelf => shelf.notebooks.some(other => other.name === name) ? "" : "There is no notebook of this name on the shelf.",
});
const draw = makeDrawing(() => article, () => queues.now.running || queues.pinned.running);
const places = new NotebookPlaces();
const moving = makeMoving(document.getElementById("article"), {
  allows: part => places.of(part) !== undefined,
  move(part, millimetres, at, isSettled) {
    const parameter = places.of(part);
    if (!parameter) return;
    strip.places(parameter.name).move(part.dataset.part, millimetres);
    change(parameter.name, at, isSettled);
  },
});
const runWords = makeRunWords(() => strip, () => article, told, () => queues);
const queues = { now: new RunQueue("now", send), pinned: new RunQueue("pinned", send) };

function broken(words) {
  isBroken = true;
  queues.now.forget();
  queues.pinned.forget();
  article?.settled("now");
  article?.settled("pinned");
  strip?.tellRun("");
  say(words, true);
}

// Before there is an article the words stand in its place, later in the strip, which is always in reach.
function say(words, isProblem = false) {
  strip?.tellTrouble(words);
  if (strip) words = "";
  message.textContent = words;
  message.hidden = !words;
  message.classList.toggle("problem", isProblem);
}

function receive(json) {
  if (json.kind === "notebook") return begin(json);
  if (!article || (json.queue === "pinned" && !pinned)) return undefined;
  return RECEIVERS[json.kind]?.(json, queues[json.queue]);
}

const RECEIVERS = {
  parameters(json, queue) {
    if (queue.name === "now") {
      for (const parameter of json.parameters) strip.useChoices(parameter.name, parameter.choices);
      // Values that the server settled on (a build that the chosen file does not have), unless the reader has moved on.
      if (queue.running?.run === json.run && !queue.isWaiting) adopt("now", queue, json.parameters);
    } else if (queue.running?.run === json.run) {
      adopt("pinned", queue, json.parameters);
    }
  },
  // A cell of a run that was overtaken counts too: the server goes on from it.
  cell(json, queue) {
    article.show(json.cell, queue.name, json.parts);
    if (queue.name === "now") strip.hear(json.cell, json.parts.filter(part => part.type === "control"));
    moving.arm();
    draw();
  },
  progress(json, queue) {
    if (queue.running?.run !== json.run) return;
    article.progress(json.cell, queue.name, json.fraction, json.text);
    if (json.text) strip.tellRun(json.text, json.fraction, true);
  },
  // What the reader sees is there; the rest comes after it, or is overtaken.
  async inSight(json, queue) {
    const run = queue.answered(json.run);
    if (!run) return;
    await draw();
    tellUpdated(run, queue.name, json);
  },
  async done(json, queue) {
    const run = queue.ended(json.run, true);
    article.mended(queue.name);
    if (!run) return;
    followers.learn(queue.name, run.content.values, json.rerun);
    article.settled(queue.name);
    settleMoves(queue);
    if (!queue.running) runWords.done(json.milliseconds);
    await draw();
    if (!run.isAnswered) tellUpdated(run, queue.name, json);
    if (queue.name === "now") runWords.answers();
  },
  failed(json, queue) {
    if (!queue.ended(json.run, false)) return;
    const isPlaced = article.failed(json.cell, queue.name, json.text, json.line);
    article.settled(queue.name);
    settleMoves(queue);
    strip.tellRun(isPlaced ? "One part could not be computed; it says why." : json.text);
    followers.forget(queue.name);
  },
  problems(json, queue) {
    if (!queue.ended(json.run, false)) return;
    article.settled(queue.name);
    settleMoves(queue);
    if (queue.name === "now") {
      problems = json.problems;
      const rest = strip.say(problems);
      strip.tellRun("Not run: see the words at the control.");
      if (rest.length > 0) say(rest.join(" "), true);
    } else {
      say(`The pinned version cannot be run: ${json.problems.map(problem => problem.text).join(" ")}`, true);
    }
  },
  stopped(json, queue) {
    const run = queue.ended(json.run, false);
    if (!run) return;
    // Overtaken, but by nothing of this page: what the reader wants is still to be run.
    if (json.why === "overtaken" && !queue.running && !queue.isWaiting) return queue.want(run.content, run.at);
    article.settled(queue.name, true);
    settleMoves(queue);
    followers.forget(queue.name);
    strip.tellRun(WHY_STOPPED[json.why] ?? "");
  },
};

function begin(json) {
  const isSame = notebook && JSON.stringify(notebook) === JSON.stringify(json);
  isBroken = false;
  say("");
  if (!isSame) {
    const before = article ? now : {};
    notebook = json;
    document.title = `${json.title}: RigScenarios`;
    defaults = Object.fromEntries(json.parameters.map(parameter => [parameter.name, parameter.default]));
    followers.clear();
    strip = new Strip(json.parameters, {
      change, covers: pixels => article?.covered(pixels), stop: () => Object.values(queues).forEach(queue => queue.stop()),
      pin, unpin, swap, link, save: () => askWhatToSave(notebook, now, article.shown("now"), pinned !== null),
      reset: () => take({ now: { ...defaults }, pinned }),
    });
    places.use(json.parameters, strip);
    article = new Article(document.getElementById("article"), json, strip.element, addTools);
    const state = readAddress();
    now = known({ ...defaults, ...before, ...state.now });
    pinned = state.pinned ? known({ ...defaults, ...state.pinned }) : null;
    strip.show(now);
  }
  followers.forget("now", "pinned");
  article.setPinned(pinned !== null);
  runBoth(performance.now());
}

// A link made when the notebook had other parameters still opens: what it does not know is left out.
function known(values) {
  return Object.fromEntries(Object.entries(values).filter(([key]) => key in defaults));
}

function runBoth(at) {
  run("now", now, at, true);
  if (pinned) run("pinned", pinned, at, true);
  runWords.working();
  describe();
}

function run(version, values, at, isSettled) {
  if (!isBroken) article.renewing(version, followers.of(version, values));
  queues[version].want({ values: { ...values }, inSight: article.inSight() }, at, isSettled);
}

function settleMoves(queue) {
  if (queue.name === "now" && !queue.running && !queue.isWaiting) moving.settled();
}

let afterMove = 0;

function change(parameter, at, isSettled) {
  places.follow(parameter, now);
  // Another file has its own temperature, charge and wind.
  if (notebook.parameters.find(p => p.name === parameter).kind === "scenario-file") strip.standOnFile();
  const values = strip.values();
  if (problems.length > 0) {
    problems = [];
    strip.say([]);
    say("");
  }
  const wrong = missing(notebook.parameters.find(p => p.name === parameter), values[parameter]);
  if (wrong) {
    if (isSettled) problems = [{ path: parameter, text: wrong }];
    strip.say(problems);
    return;
  }
  if (!isSettled && isOutside(notebook.parameters.find(p => p.name === parameter), values[parameter])) return;
  // Letting go of a slider tells the same value once more.
  const value = values[parameter];
  const isThere = queues.now.running?.content.values[parameter] === value || followers.isShown("now", parameter, value);
  if (isSettled && value === now[parameter] && isThere && !queues.now.isWaiting) return;
  now = values;
  run("now", now, at, isSettled);
  runWords.working();
  clearTimeout(afterMove);
  afterMove = setTimeout(describe, isSettled ? 0 : 150);
}

function adopt(which, queue, parameters) {
  const settled = { ...(which === "now" ? now : pinned) };
  for (const parameter of parameters) settled[parameter.name] = parameter.value;
  // The notebook's own values as the server writes them ("samples/a.yaml" for a path): the same values, so nothing is changed.
  if (Object.keys(defaults).every(key => queue.running.content.values[key] === defaults[key])) {
    Object.assign(defaults, settled);
    for (const parameter of notebook.parameters) strip.setDefault(parameter.name, settled[parameter.name]);
  }
  queue.running.content.values = settled;
  const isSame = JSON.stringify(settled) === JSON.stringify(which === "now" ? now : pinned);
  if (which === "now") {
    now = settled;
    if (!isSame) strip.showUntyped(settled);
  } else {
    pinned = settled;
  }
  if (!isSame) describe();
}

/** Brings strip and address to what is wanted now. */
function describe() {
  strip.describe(now);
  const apart = strip.showPinned(pinned, now);
  article.nameVersions(apart.pinned, apart.now);
  writeAddress({ now, pinned }, defaults);
}

/** Goes to another state as a whole: the notebook's own, or one from an address. */
function take(state) {
  now = known({ ...defaults, ...state.now });
  const hadPinned = pinned;
  pinned = state.pinned ? known({ ...defaults, ...state.pinned }) : null;
  problems = [];
  strip.say([]);
  strip.show(now);
  if (!!hadPinned !== !!pinned) article.setPinned(pinned !== null);
  if (!pinned) forgetPinned();
  runBoth(performance.now());
}

function pin() {
  pinned = { ...now };
  article.setPinned(true);
  article.copyToPinned();
  draw();
  run("pinned", pinned, performance.now(), true);
  describe();
  told.textContent = "Pinned. What you change now is shown beside it.";
}

function unpin() {
  pinned = null;
  forgetPinned();
  article.setPinned(false);
  describe();
  told.textContent = "Unpinned.";
}

function forgetPinned() {
  queues.pinned.stop();
  queues.pinned.forget();
  followers.forget("pinned");
}

function swap() {
  [now, pinned] = [pinned, now];
  strip.show(now);
  runBoth(performance.now());
  told.textContent = "Swapped.";
}

async function link() {
  describe();
  if (await copyLink(location.origin + addressOf({ now, pinned }, defaults)))
    strip.tellRun("The link is copied. It opens on this machine while the program runs.");
}

// Another address of this page, typed or pasted or from the history.
addEventListener("hashchange", () => { if (article) take(readAddress()); });
