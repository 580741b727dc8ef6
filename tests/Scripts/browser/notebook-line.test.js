// A notebook's runs where the library is in the browser: site/browser/notebook-line.js.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import "../browser.js";
import { Clock } from "../clock.js";
import { NotebookLine } from "../../../src/RigScenarios.Page/site/browser/notebook-line.js";
import { PATIENCE } from "../../../src/RigScenarios.Page/site/browser/workers.js";
import { pretendWorkers } from "./pretend-worker.js";

let clock, made, line, heard;

beforeEach(() => {
  clock = new Clock();
  heard = [];
  const pretend = pretendWorkers();
  made = pretend.made;
  line = new NotebookLine(pretend.workers, { kind: "notebook", name: "01" }, {
    message: json => heard.push(`${json.kind} ${json.run ?? ""} ${json.why ?? ""}`.trim()),
    broken: words => heard.push(words),
  });
});

const run = number => line.send({ kind: "run", queue: "now", run: number, values: {} });
const ends = (worker, number) => made[worker].tell({ kind: "done", queue: "now", run: number });

test("the line opens at once and passes on what comes and goes", () => {
  assert.deepEqual(JSON.parse(made[0].last("open").json), { kind: "notebook", name: "01" });
  made[0].tell({ kind: "notebook" });
  assert.equal(run(1), true);
  ends(0, 1);
  assert.deepEqual([heard, made[0].said.length], [["notebook", "done 1"], 1]);
  clock.pass(2 * PATIENCE);
  assert.equal(made[0].isEnded, false, "nothing goes on, so nothing is waited for");
});

test("a run that stops in time keeps its worker; one that doesn't is ended with it", () => {
  run(1);
  line.send({ kind: "stop", queue: "now" });
  made[0].tell({ kind: "stopped", queue: "now", run: 1, why: "asked" });
  clock.pass(5000);
  assert.equal(made[0].isEnded, false);
  run(2);
  line.send({ kind: "stop", queue: "now" });
  clock.pass(5000);
  assert.deepEqual([made[0].isEnded, heard.at(-1), made.length], [true, "stopped 2 asked", 1]);
  assert.equal(run(3), false, "lost: the new worker begins with what the page shows");
  made[1].tell({ kind: "notebook" });
  assert.equal(run(4), true);
});

test("a cell that goes on long after it was overtaken ends with its worker, and another begins", () => {
  run(1);
  run(2);
  clock.pass(9_000);
  assert.equal(made.length, 1);
  clock.pass(1_000);
  assert.deepEqual([made[0].isEnded, made.length, heard], [true, 2, ["stopped 1 overtaken", "stopped 2 overtaken"]]);
});

test("one that gives way in time goes on", () => {
  run(1);
  run(2);
  made[0].tell({ kind: "stopped", queue: "now", run: 1, why: "overtaken" });
  clock.pass(20_000);
  assert.equal(made[0].isEnded, false);
});

test("a run without end is ended and told", () => {
  run(1);
  clock.pass(PATIENCE);
  assert.deepEqual([heard, made[0].isEnded], [["stopped 1 time"], true]);
});

test("a worker that breaks is told in words, and the next doing starts another", () => {
  run(1);
  made[0].post({ kind: "failed", why: "memory", detail: "" });
  assert.match(heard.at(-1), /no memory left/);
  assert.equal(run(2), false);
  assert.equal(made.length, 2);
});
