// The controls of a notebook: their values in words, what is outside or missing, how fine a slider is, and what moves with what.
import assert from "node:assert/strict";
import { test } from "node:test";
import "./browser.js";
import { inWords, isOutside, labelOf } from "../../src/RigScenarios.Page/site/notebook/controls.js";
import { stepOf } from "../../src/RigScenarios.Page/site/notebook/kinds.js";
import { NotebookPlaces } from "../../src/RigScenarios.Page/site/notebook/places.js";
import { goesBefore } from "../../src/RigScenarios.Page/site/notebook/sight.js";

const cold = /** @type {any} */ ({ name: "cold", label: "how much colder", kind: "number", unit: "K", choices: [], minimum: -10,
  maximum: 20 });

test("a value in words has its unit, a typeset minus, or the title of its choice", () => {
  assert.equal(inWords(cold, "-5"), "\u22125\u00a0K");
  assert.equal(inWords({ ...cold, kind: "text", choices: [{ value: "a", title: "body A" }, { value: "b" }] }, "a"), "body A");
  assert.equal(inWords({ ...cold, kind: "text", choices: [{ value: "b", title: "" }] }, "b"), "b");
  assert.equal(inWords({ ...cold, kind: "yes-no" }, "true"), "yes");
  assert.equal(inWords({ ...cold, kind: "places" }, "plate -160 mm"), "plate to \u2212160\u00a0mm");
});

test("a label begins with a capital, and a parameter without one has its name", () => {
  assert.equal(labelOf(cold), "How much colder");
  assert.equal(labelOf({ ...cold, label: "" }), "Cold");
});

test("a value outside of its range is seen at both ends, the ends themselves are within", () => {
  assert.deepEqual(["-11", "-10", "0", "20", "20.1"].map(value => isOutside(cold, value)), [true, false, false, false, true]);
  assert.equal(isOutside({ ...cold, kind: "text" }, "99"), false);
  assert.equal(isOutside({ ...cold, minimum: null, maximum: null }, "99"), false);
});

test("a slider has up to 200 steps of a round size, or finer ones that meet the notebook's own value", () => {
  const steps = [[0, 100, "number", "50", 0.5], [0, 400, "number", "120", 2], [-10, 20, "number", "0", 0.2],
    [0, 100, "number", "50.25", 0.25], [0, 5, "whole-number", "3", 1], [0, 1000, "whole-number", "3", 1],
    [0, 1000, "whole-number", "500", 5]];
  for (const [minimum, maximum, kind, own, step] of steps)
    assert.equal(stepOf(minimum, maximum, /** @type {any} */ ({ kind, default: own })), step, `${minimum} to ${maximum}: ${own}`);
});

test("of the answers of a page the first verdict counts, or else the first sentence", () => {
  const cells = [[3, false], [5, true], [1, false], [7, true]].map(([number, isVerdict]) => ({ number, isVerdict }));
  const ordered = cells.sort((one, other) => goesBefore(/** @type {any} */ (one), /** @type {any} */ (other)) ? -1 : 1);
  assert.deepEqual(ordered.map(cell => cell.number), [5, 7, 1, 3]);
  assert.equal(goesBefore({ number: 2, isVerdict: true }, { number: 2, isVerdict: true }), false, "none goes before itself");
});

test("what was moved on one build is kept until the reader comes back to it", () => {
  const now = { file: "a.yaml", build: "tripod", places: "plate -20 mm" };
  const strip = { values: () => ({ ...now }), set: (name, value) => { now[name] = value; } };
  const places = new NotebookPlaces();
  places.use(/** @type {any} */ ([{ name: "file", kind: "scenario-file" }, { name: "build", kind: "build", of: "file" },
    { name: "places", kind: "places", of: "build" }]), /** @type {any} */ (strip));
  const change = (name, value) => { const before = { ...now }; now[name] = value; places.follow(name, before); };
  change("build", "shoulder");
  assert.equal(now.places, "");
  now.places = "pad 4 mm";
  change("build", "tripod");
  assert.equal(now.places, "plate -20 mm");
  change("file", "b.yaml");
  assert.equal(now.places, "", "another file's build of the same name is another build");
  change("file", "a.yaml");
  change("build", "shoulder");
  assert.equal(now.places, "pad 4 mm");
});
