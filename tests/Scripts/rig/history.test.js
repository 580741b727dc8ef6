// Steps back and forth.
import assert from "node:assert/strict";
import { test } from "node:test";
import { History } from "../../../src/RigScenarios.Page/site/rig/history.js";

const begin = (most) => new History((one, other) => one === other, most);

test("back and forth, and a new change forgets what was ahead", () => {
  const history = begin();
  history.note("a", "first");
  history.note("b", "second");
  assert.equal(history.last, "second");
  assert.equal(history.undo("c"), "b");
  assert.equal(history.undo("b"), "a");
  assert.equal(history.undo("a"), null);
  assert.equal(history.next, "first");
  assert.equal(history.redo("a"), "b");
  history.note("b", "other");
  assert.equal(history.redo("d"), null);
  assert.equal(history.undo("d"), "b");
  assert.equal(history.undo("b"), "a");
});

test("typing in one field is one step until it is left", () => {
  const history = begin();
  for (const text of ["", "2", "24"]) history.note(text, "watts", "text watts");
  assert.equal(history.undo("24 W"), "");
  history.note("", "watts", "text watts");
  history.close();
  history.note("2", "watts", "text watts");
  assert.equal(history.undo("24"), "2");
  assert.equal(history.undo("2"), "");
});

test("after a step back the same field begins a step of its own", () => {
  const history = begin();
  history.note("", "watts", "text watts");
  history.undo("2");
  history.note("", "watts", "text watts");
  assert.equal(history.undo("3"), "");
});

test("what changes nothing is passed over", () => {
  const history = begin();
  history.note("a", "first");
  history.note("b", "typed and taken back in the field", "x");
  assert.equal(history.undo("b"), "a");
  assert.equal(history.undo("a"), null);
});

test("so many steps and no more", () => {
  const history = begin(100);
  for (let i = 0; i < 150; i++) history.note(i, "step");
  let steps = 0;
  for (let now = 150, back = history.undo(now); back !== null; now = back, back = history.undo(now)) steps++;
  assert.equal(steps, 100);
});
