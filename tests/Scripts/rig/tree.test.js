// What somebody gave, as a tree of texts.
import assert from "node:assert/strict";
import { test } from "node:test";
import { around, at, filled, isSame, textAt, withAt, without } from "../../../src/RigScenarios.Page/site/rig/tree.js";

const tree = { title: "Lake", builds: { rig: { devices: { camera: { essential: "yes" } }, battery: { charge: "80 %" } } } };

test("a text is found at its path, and nothing where there is none", () => {
  assert.equal(textAt(tree, "builds.rig.battery.charge"), "80 %");
  assert.equal(textAt(tree, "builds.rig.battery.charge.deeper"), "");
  assert.equal(textAt(tree, "builds.rig"), "");
  assert.equal(textAt(tree, null), "");
  assert.equal(at(tree, "builds.toString"), undefined);
  assert.equal(textAt({ by: ["flight", "road"] }, "by"), "flight, road");
});

test("a change gives a new tree and shares what stayed", () => {
  const next = withAt(tree, "builds.rig.battery.charge", "70 %");
  assert.equal(textAt(next, "builds.rig.battery.charge"), "70 %");
  assert.equal(textAt(tree, "builds.rig.battery.charge"), "80 %");
  assert.equal(next.builds.rig.devices, tree.builds.rig.devices);
  assert.equal(textAt(withAt(tree, "parts.own-camera.power.record", "24 W"), "parts.own-camera.power.record"), "24 W");
});

test("clearing leaves the group, which says that a thing is there", () => {
  assert.deepEqual(withAt(tree, "builds.rig.devices.camera.essential", "").builds.rig.devices, { camera: {} });
  assert.ok(isSame(withAt(tree, "parts.own-lens.mass", ""), tree));
});

test("putting back takes the empty groups along", () => {
  const moved = withAt(tree, "builds.rig.places.plate.forward", "-140 mm");
  assert.ok(isSame(without(moved, "builds.rig.places.plate.forward"), tree));
  const two = withAt(moved, "builds.rig.places.pad.forward", "10 mm");
  assert.deepEqual(without(two, "builds.rig.places.plate.forward").builds.rig.places, { pad: { forward: "10 mm" } });
});

test("a name is a name, also one that scripts know", () => {
  const next = withAt({}, "kit.__proto__.part", "x");
  assert.deepEqual(Object.keys(next.kit), ["__proto__"]);
  assert.equal(textAt(next, "kit.__proto__.part"), "x");
  assert.equal({}.part, undefined);
});

test("a path with a name that is not known is no path", () => {
  assert.equal(filled("builds.{build}.battery.charge", { build: "rig" }), "builds.rig.battery.charge");
  assert.equal(filled("chargers.{charger}.stands", { charger: null }), null);
  assert.equal(filled("title", {}), "title");
});

test("a problem deep in a group is told at the nearest field around it", () => {
  assert.equal(around(["parts.own-camera", "title"], "parts.own-camera.power.record"), "parts.own-camera");
  assert.equal(around(["title"], "parts.own-camera"), null);
});
