// Which place of the form a path of the file belongs to.
import assert from "node:assert/strict";
import { test } from "node:test";
import { placesOf } from "../../../src/RigScenarios.Page/site/rig/paths.js";

const view = { things: [{ name: "camera", question: "camera", own: "own-camera", part: null },
  { name: "brick", question: "battery", own: null, part: "brick-98wh" }] };

test("what no field is about is told at the thing that it is about", () => {
  for (const [path, place] of [["builds.rig.devices.camera.power", "kit.camera"], ["builds.rig.battery.item", "kit.brick"],
    ["builds.rig.plate", "missing.plate"], ["builds.rig.devices", "kit.camera"],
    ["parts.own-camera.voltage.minimum", "kit.camera"],
    ["parts.brick-98wh.mass", "kit.brick"], ["chargers.charger.bays", "asked.charger-bays"],
    ["builds.rig.on-head.slide-middle", "missing.head"]])
    assert.deepEqual(placesOf(path, "rig", view), [place], path);
});

test("another build of the file has no place in the form", () => {
  assert.deepEqual(placesOf("builds.shoulder.devices.camera", "rig", view), []);
  assert.deepEqual(placesOf("title", "rig", view), []);
});

test("an empty rig is asked for its camera", () => {
  assert.deepEqual(placesOf("builds.rig.devices", "rig", { things: [] }), ["missing.camera"]);
});
