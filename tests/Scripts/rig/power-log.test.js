// What a power log says goes into the rig in one step.
import assert from "node:assert/strict";
import { test } from "node:test";
import "../browser.js";
import { today } from "../../../src/RigScenarios.Page/site/rig/age.js";
import { withMeasured } from "../../../src/RigScenarios.Page/site/rig/power-log.js";

const battery = "builds.rig.battery";
const fields = [{ path: `${battery}.capacity-left`, text: "91.2 %" }, { path: `${battery}.resistance-growth`, text: "1.1" }];
const given = { builds: { rig: { battery: { item: "battery", charge: "100 %" } } } };

test("capacity and resistance come together", () => assert.deepEqual(withMeasured(given, fields).builds.rig.battery,
  { item: "battery", charge: "100 %", "capacity-left": "91.2 %", "resistance-growth": "1.1" }));

test("where something is said of the age the day of the measurement comes with them", () => {
  const old = { builds: { rig: { battery: { item: "battery", age: { kept: "half" } } } } };
  assert.deepEqual(withMeasured(old, fields).builds.rig.battery.age, { kept: "half", until: today() });
});

test("a rig without a battery stays as it is", () => {
  assert.deepEqual(withMeasured(given, [{ path: null, text: "91.2 %" }, { path: null, text: "1.1" }]), given);
});
