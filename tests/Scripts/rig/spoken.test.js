// What of an answer a screen reader hears.
import "../browser.js";
import assert from "node:assert/strict";
import { test } from "node:test";
import { newsOf, SpokenAnswer } from "../../../src/RigScenarios.Page/site/rig/spoken.js";

const verdicts = (entries) => new Map(Object.entries(entries));

test("only the questions whose verdict changed are news", () => {
  const before = verdicts({ Energy: "fails", Balance: "holds" });
  assert.deepEqual(newsOf(before, verdicts({ Energy: "fails", Balance: "close", Cost: "holds" })),
    ["Balance: close.", "Cost: holds."]);
  assert.deepEqual(newsOf(before, before), []);
  assert.deepEqual(newsOf(verdicts({}), before), [], "of the first answer the sentence is enough");
});

test("it is heard once the reader rests, not while something is held", (context) => {
  context.mock.timers.enable({ apis: ["setTimeout"] });
  const told = [];
  const region = { get textContent() { return told.at(-1) ?? ""; }, set textContent(text) { told.push(text); } };
  const spoken = new SpokenAnswer(/** @type {any} */ (region));
  const act = (kind) => dispatchEvent(new Event(kind));
  spoken.tell("No.", verdicts({ Energy: "fails" }));
  spoken.tell("No: it stops.", verdicts({ Energy: "fails" }));
  assert.deepEqual(told, []);
  context.mock.timers.tick(1000);
  assert.deepEqual(told, ["No: it stops."]);
  act("pointerdown");
  spoken.tell("Yes.", verdicts({ Energy: "holds" }));
  context.mock.timers.tick(5000);
  assert.equal(told.length, 1);
  act("pointerup");
  context.mock.timers.tick(1000);
  assert.deepEqual(told.at(-1), "Yes. Energy: holds.");
  // Back to what was heard last is no news.
  spoken.tell("No.", verdicts({ Energy: "fails" }));
  spoken.tell("Yes.", verdicts({ Energy: "holds" }));
  context.mock.timers.tick(1000);
  assert.equal(told.length, 2);
});
