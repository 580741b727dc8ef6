// What a power log says goes into the rig in one step.
import assert from "node:assert/strict";
import { test } from "node:test";
import "../browser.js";
import { today } from "../../../src/RigScenarios.Page/site/rig/age.js";
import { withMeasured } from "../../../src/RigScenarios.Page/site/rig/power-log.js";

const battery = "builds.rig.battery";
const given = { builds: { rig: { battery: { item: "battery", charge: "100 %" } } } };

test("capacity and resistance come with the day of the measurement", () => {
  const tree = withMeasured(given, [{ path: `${battery}.capacity-left`, text: "91.2 %" },
    { path: `${battery}.resistance-growth`, text: "1.1" }]);
  assert.deepEqual(tree.builds.rig.battery, { item: "battery", charge: "100 %", "capacity-left": "91.2 %",
    "resistance-growth": "1.1", age: { until: today() } });
});

test("a rig without a battery stays as it is", () => {
  assert.deepEqual(withMeasured(given, [{ path: null, text: "91.2 %" }, { path: null, text: "1.1" }]), given);
});
