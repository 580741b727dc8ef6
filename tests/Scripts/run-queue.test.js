// Of the runs that a page wants only the newest is run: tests of site/shared/run-queue.js on a clock turned by hand.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { Clock, FRAME } from "./clock.js";
import { RunQueue } from "../../src/RigScenarios.Page/site/shared/run-queue.js";

let clock, sent, isOpen, queue;

beforeEach(() => {
  clock = new Clock();
  sent = [];
  isOpen = true;
  queue = new RunQueue("now", json => { if (isOpen) sent.push(json); return isOpen; });
});

const runs = () => sent.filter(json => json.kind === "run");

test("a run is sent at once, with its content, its queue and a number of its own", () => {
  queue.want({ values: { a: "1" } });
  assert.deepEqual(sent, [{ kind: "run", queue: "now", run: queue.running.run, values: { a: "1" } }]);
  clock.pass(FRAME);
  queue.want({ values: { a: "2" } });
  assert.ok(runs()[1].run > runs()[0].run);
});

test("of several wanted within one frame the first and the newest are sent", () => {
  for (const value of ["1", "2", "3"]) queue.want({ value });
  assert.deepEqual(runs().map(run => run.value), ["1"]);
  clock.pass(FRAME);
  assert.deepEqual(runs().map(run => run.value), ["1", "3"]);
});

test("a page in the background, which gets no frames, sends too", () => {
  globalThis.requestAnimationFrame = () => 0;
  queue.want({ value: "1" });
  queue.want({ value: "2" });
  clock.pass(99);
  assert.equal(runs().length, 1);
  clock.pass(1);
  assert.equal(runs().length, 2);
});

test("while a slider is dragged a run may come to its end first", () => {
  queue.want({ value: "1" }, clock.now, false);
  clock.pass(FRAME);
  queue.want({ value: "2" }, clock.now, false);
  clock.pass(FRAME);
  assert.equal(runs().length, 1, "the first has not been given up yet");
  queue.answered(queue.running.run);
  assert.deepEqual(runs().map(run => run.value), ["1", "2"], "what the reader sees is there: the next one goes");
});

test("a run that takes longer than usual is overtaken even while the slider moves", () => {
  queue.want({ value: "1" }, clock.now, false);
  clock.pass(FRAME);
  queue.want({ value: "2" }, clock.now, false);
  clock.pass(120 - FRAME - 1);
  assert.equal(runs().length, 1);
  clock.pass(1);
  assert.equal(runs().length, 2);
});

test("letting go overtakes at once", () => {
  queue.want({ value: "1" }, clock.now, false);
  clock.pass(FRAME);
  queue.want({ value: "2" }, clock.now, true);
  assert.deepEqual(runs().map(run => run.value), ["1", "2"]);
});

test("the answer to a run that was overtaken is not taken for that of the newest", () => {
  queue.want({ value: "1" });
  const first = queue.running.run;
  clock.pass(FRAME);
  queue.want({ value: "2" });
  assert.equal(queue.answered(first), null);
  assert.equal(queue.ended(first, true), null);
  assert.equal(queue.running.content.value, "2");
  assert.equal(queue.ended(queue.running.run, true).content.value, "2");
  assert.equal(queue.running, null);
});

test("an answered run goes on until it ends, and is told as answered then", () => {
  queue.want({ value: "1" });
  const run = queue.answered(queue.running.run);
  assert.equal(run.isAnswered, true);
  assert.equal(queue.ended(run.run, true), run);
});

test("stopping forgets what waits and tells the program", () => {
  queue.want({ value: "1" });
  queue.want({ value: "2" });
  queue.stop();
  clock.pass(1000);
  assert.deepEqual(sent.map(json => json.kind), ["run", "stop"]);
  assert.equal(queue.isWaiting, false);
});

test("stopping where nothing runs tells nobody", () => {
  queue.stop();
  assert.deepEqual(sent, []);
});

test("after the line broke nothing is running, and the next run is sent anew", () => {
  queue.want({ value: "1" });
  queue.forget();
  assert.equal(queue.running, null);
  isOpen = false;
  clock.pass(FRAME);
  queue.want({ value: "2" });
  assert.equal(queue.running, null, "a run that did not go out is not on its way");
  isOpen = true;
  queue.want({ value: "3" });
  assert.deepEqual(runs().map(run => run.value), ["1", "3"]);
});

test("the time of the reader's doing goes along", () => {
  clock.pass(500);
  queue.want({ value: "1" }, 450);
  assert.equal(queue.running.at, 450);
  assert.equal(queue.running.sent, 500);
});
