// The blocks of a day.
import assert from "node:assert/strict";
import { test } from "node:test";
import {
  added, edgeMoved, hourMarks, lengthOf, moved, removed, resized,
} from "../../../src/RigScenarios.Page/site/rig/blocks.js";
import { stateOfAll, withAll, withOne } from "../../../src/RigScenarios.Page/site/rig/states.js";

const day = { takes: { length: "1 h" }, meal: { length: "45 min" }, wrap: { length: "30 min" } };

test("blocks are moved, added, taken out and made longer", () => {
  assert.deepEqual(Object.keys(moved(day, "meal", -1)), ["meal", "takes", "wrap"]);
  assert.equal(moved(day, "wrap", 1), day);
  const { blocks, name } = added(day, "takes");
  assert.deepEqual(Object.keys(blocks), ["takes", name, "meal", "wrap"]);
  assert.deepEqual(removed(day, "wrap"), { blocks: { takes: day.takes, meal: day.meal }, next: "meal" });
  assert.equal(removed({ takes: day.takes }, "takes").next, null);
  assert.equal(resized(day, { meal: 90 }).meal.length, "1 h 30 min");
});

test("a length that can't be read makes the day's length unknown", () => {
  assert.deepEqual(lengthOf(day), { minutes: 135, isWhole: true });
  assert.equal(lengthOf({ ...day, odd: { length: "99,999,999 h" } }).isWhole, false);
});

test("an edge gives the one block what it takes from the other, within bounds", () => {
  const shown = [{ name: "a", minutes: 60 }, { name: "b", minutes: 30 }];
  assert.deepEqual(edgeMoved(shown, 0, 75, 5), { a: 75, b: 15 });
  assert.deepEqual(edgeMoved(shown, 0, 500, 5), { a: 85, b: 5 });
  assert.deepEqual(edgeMoved(shown, 0, -20, 5), { a: 5, b: 85 });
  assert.deepEqual(edgeMoved(shown, 1, 99999, 5), { b: 2880 });
  assert.deepEqual(edgeMoved([{ name: "a", minutes: 0 }], 0, -5, 5), { a: 1 });
});

test("however long a day is, only so many hours are written under it", () => {
  for (const total of [30, 600, 2880, 20000, 1e6, 1e9]) {
    const marks = hourMarks(total, 390);
    assert.ok(marks.length > 0 && marks.length < 40, `${total}: ${marks.length}`);
    assert.ok(marks.every((minute) => minute >= 0 && minute <= total));
  }
});

test("what the devices do", () => {
  const things = [{ name: "camera", question: "camera", title: "" }, { name: "monitor", question: "monitor", title: "" },
    { name: "plate", question: "plate", title: "" }];
  assert.equal(stateOfAll(things, { others: "record" }), "record");
  assert.equal(stateOfAll(things, withOne({ others: "record" }, "monitor", "off")), "mixed");
  assert.deepEqual(withAll(things, { length: "1 h", states: { monitor: "off", drone: "record" } }, "standby"),
    { length: "1 h", others: "standby", states: { drone: "record" } });
});
