// Rigs side by side.
import assert from "node:assert/strict";
import { test } from "node:test";
import { Versions } from "../../../src/RigScenarios.Page/site/rig/versions.js";

const shown = (title) => ({ given: { title }, view: { things: [] } });

test("a copy comes beside the rig and is in the form; up to four", () => {
  const versions = new Versions();
  versions.duplicate(shown("one"), "answer", "steps", "none");
  assert.deepEqual(versions.all.map(({ name, history }) => [name, history]), [["A", "steps"], ["B", "none"]]);
  assert.equal(versions.present.name, "B");
  for (let i = 0; i < 5; i++) versions.duplicate(shown("more"), "answer", "steps", "none");
  assert.deepEqual(versions.all.map(({ name }) => name), ["A", "B", "C", "D"]);
  assert.equal(versions.hasRoom, false);
});

test("each keeps what was given to it", () => {
  const versions = new Versions();
  versions.duplicate(shown("one"), null, "steps of one", "none");
  versions.keep(shown("two"), "steps of two");
  versions.answered("answer to two");
  versions.turnTo(0);
  assert.equal(versions.present.given.title, "one");
  assert.equal(versions.all[1].given.title, "two");
  assert.equal(versions.all[1].answer, "answer to two");
});

test("forgetting one leaves the others, and tells whether the form shows another", () => {
  const versions = new Versions();
  versions.duplicate(shown("one"), null, "", "");
  versions.duplicate(shown("two"), null, "", "");
  assert.equal(versions.forget(0), false);
  assert.equal(versions.present.name, "C");
  assert.equal(versions.forget(1), true);
  assert.equal(versions.present.name, "B");
});

test("what the window kept is brought back; what is nothing is passed over", () => {
  const versions = new Versions();
  versions.duplicate(shown("one"), "answer", "steps", "none");
  const kept = JSON.parse(JSON.stringify(versions.toKeep())), again = new Versions();
  again.bringBack(kept, () => "fresh");
  assert.deepEqual([again.now, again.present.name, again.present.history], [1, "B", "fresh"]);
  for (const odd of [null, 3, {}, { all: [null, {}], now: 7 }]) {
    again.bringBack(odd, () => "fresh");
    assert.equal(again.isBegun, false);
  }
});

test("a rig that came from elsewhere stands beside those that there are, and is the one in the form", () => {
  const versions = new Versions();
  versions.add({ given: { title: "mine" }, view: { things: [] } });
  versions.add({ given: { title: "of a link" }, view: { things: [] } });
  assert.deepEqual([versions.all.map(({ name, given }) => [name, given.title]), versions.now],
    [[["A", "mine"], ["B", "of a link"]], 1]);
  for (const title of ["c", "d", "too many"]) versions.add({ given: { title }, view: { things: [] } });
  assert.deepEqual([versions.all.length, versions.now], [4, 3]);
});
