// The form's runs where the library is in the browser: site/browser/form-line.js.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import "../browser.js";
import { Clock } from "../clock.js";
import { FormLine } from "../../../src/RigScenarios.Page/site/browser/form-line.js";
import { PATIENCE } from "../../../src/RigScenarios.Page/site/browser/workers.js";
import { pretendWorkers } from "./pretend-worker.js";

let clock, made, line, heard;

beforeEach(() => {
  clock = new Clock();
  heard = [];
  const pretend = pretendWorkers();
  made = pretend.made;
  line = new FormLine(pretend.workers, {
    message: json => heard.push(json.why ? `${json.kind} ${json.run} ${json.why}` : `${json.kind} ${json.run}`),
    open: () => heard.push("open"),
    broken: words => heard.push(words),
  });
});

const run = number => line.send({ kind: "run", queue: "now", run: number, given: { n: number } });
const tell = (worker, kind, number, more = {}) => made[worker].tell({ kind, queue: "now", run: number, ...more });
function answered(number) {
  tell(0, "answer", number, { first: {} });
  tell(0, "done", number);
}
/** Up to where the second worker looks for what comes after the answer. */
function resting(number) {
  run(number);
  answered(number);
  clock.pass(300);
}

test("a run goes until its answer; what comes after it goes to a second worker once the reader rests", () => {
  run(1);
  answered(1);
  assert.equal(made.length, 1, "not at once");
  assert.deepEqual(heard, ["answer 1"], "and the run goes on meanwhile");
  clock.pass(300);
  assert.deepEqual(made.map(worker => worker.said), [[{ kind: "run", queue: "now", run: 1, given: { n: 1 }, until: "answer",
    parts: "later" }],
    [{ kind: "run", queue: "now", run: 1, given: { n: 1 }, from: "answer" }]]);
  tell(1, "rests-on", 1);
  tell(1, "would-work", 1);
  tell(1, "done", 1);
  assert.deepEqual(heard, ["answer 1", "rests-on 1", "would-work 1", "done 1"]);
});

test("a rig without an answer is done with that", () => {
  run(1);
  tell(0, "answer", 1);
  tell(0, "done", 1);
  clock.pass(1000);
  assert.deepEqual([heard, made.length], [["answer 1", "done 1"], 1]);
});

test("while one runs only the newest of those that wait is kept", () => {
  for (const number of [1, 2, 3, 4]) run(number);
  assert.deepEqual(heard, ["stopped 2 overtaken", "stopped 3 overtaken"]);
  answered(1);
  assert.deepEqual(made[0].said.map(({ run: number }) => number), [1, 4]);
  assert.deepEqual(heard.slice(2), ["answer 1", "stopped 1 overtaken"], "its answer is a picture on the way");
  answered(4);
  clock.pass(300);
  assert.deepEqual(made[1].said.map(({ run: number }) => number), [4]);
});

test("a change while the second worker looks ends it; the next look starts a new one", () => {
  resting(1);
  run(2);
  assert.ok(made[1].isEnded);
  assert.equal(heard.at(-1), "stopped 1 overtaken");
  answered(2);
  clock.pass(300);
  assert.deepEqual(made[2].said.map(({ run: number }) => number), [2]);
});

test("a second worker that has nothing to do is kept for the next time", () => {
  resting(1);
  tell(1, "done", 1);
  resting(2);
  assert.deepEqual([made.length, made[1].isEnded], [2, false]);
  assert.deepEqual(made[1].said.map(({ run: number }) => number), [1, 2]);
  run(3);
  answered(3);
  clock.pass(100);
  run(4);
  assert.equal(made.length, 2, "the one that worked was ended; before the reader rested none was begun");
});

test("stop is told at once, and nothing of what was stopped is heard after it", () => {
  run(1);
  run(2);
  line.send({ kind: "stop", queue: "now" });
  assert.deepEqual(heard, ["stopped 2 asked", "stopped 1 asked"]);
  answered(1);
  assert.equal(heard.length, 2);
  resting(3);
  line.send({ kind: "stop", queue: "now" });
  assert.equal(heard.at(-1), "stopped 3 asked");
  assert.ok(made[1].isEnded);
});

test("a run that is refused is told as it is, and the next one begins", () => {
  run(1);
  run(2);
  tell(0, "problems", 1, { status: 400, problems: [] });
  assert.deepEqual(heard, ["problems 1"]);
  assert.deepEqual(made[0].said.map(({ run: number }) => number), [1, 2]);
});

test("what is sent on another queue goes through as it is", () => {
  line.send({ kind: "run", queue: "best", run: 7 });
  made[0].tell({ kind: "problems", queue: "best", run: 7 });
  assert.deepEqual([made[0].said, heard], [[{ kind: "run", queue: "best", run: 7 }], ["problems 7"]]);
});

test("a run that takes for ever is ended with its worker, and told", () => {
  run(1);
  clock.pass(PATIENCE);
  assert.deepEqual([heard, made[0].isEnded], [["stopped 1 time"], true]);
  run(2);
  assert.deepEqual(made[1].said.map(({ run: number }) => number), [2]);
  resting(2);
});

test("what would make it work is not looked for without end", () => {
  resting(1);
  clock.pass(PATIENCE);
  assert.deepEqual([heard.at(-1), made[1].isEnded], ["stopped 1 time", true]);
});

test("a second worker that fails leaves the answer as it is, and says that there was no room", () => {
  resting(1);
  made[1].post({ kind: "failed", why: "memory", detail: "" });
  assert.deepEqual(heard, ["answer 1", "stopped 1 memory"]);
});

test("a worker that breaks after an answer is tried once more by itself, and then with the reader's next change", () => {
  resting(1);
  made[0].post({ kind: "failed", why: "fault", detail: "unreachable" });
  assert.match(heard.at(-2), /broke while it worked.*\(unreachable\)/);
  assert.equal(heard.at(-1), "open");
  run(2);
  made[2].post({ kind: "failed", why: "fault", detail: "unreachable" });
  assert.match(heard.at(-1), /broke while it worked/, "not a second time by itself");
  run(3);
  assert.deepEqual(made[3].said.map(({ run: number }) => number), [3]);
});
