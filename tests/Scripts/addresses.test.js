// Addresses of pages, and a notebook's state in its address.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { goTo } from "./browser.js";
import { addressOf, readAddress, writeAddress } from "../../src/RigScenarios.Page/site/notebook/address.js";
import { fileHere, notebookHere, pageOf } from "../../src/RigScenarios.Page/site/shared/addresses.js";

beforeEach(() => goTo("/n/01-one-build-one-day"));

const defaults = { build: "tripod", cold: "0" };

test("without anything behind the # nothing is said and nothing is pinned", () => {
  assert.deepEqual(readAddress(), { now: {}, pinned: null });
});

test("values and what is pinned are read", () => {
  goTo("/n/01#build=tripod&cold=5/pinned?build=dolly&cold=0");
  assert.deepEqual(readAddress(), { now: { build: "tripod", cold: "5" }, pinned: { build: "dolly", cold: "0" } });
});

test("a page may be pinned as the notebook has it", () => {
  goTo("/n/01#cold=5/pinned");
  assert.deepEqual(readAddress(), { now: { cold: "5" }, pinned: {} });
});

test("another piece of the address is no pinned version", () => {
  goTo("/n/01#cold=5/pinnedly?cold=1");
  assert.deepEqual(readAddress(), { now: { cold: "5" }, pinned: null });
});

test("the notebook's own values need no address", () => {
  assert.equal(addressOf({ now: { ...defaults }, pinned: null }, defaults), "/n/01-one-build-one-day");
});

test("one value changed: all are written, for the notebook may be edited later", () => {
  assert.equal(addressOf({ now: { build: "tripod", cold: "5" }, pinned: null }, defaults),
    "/n/01-one-build-one-day#build=tripod&cold=5");
});

test("what is written is read again, whatever stands in it", () => {
  const states = [
    { now: { a: "-8 °C", b: "1/2", c: "x&y=z#q", d: "" }, pinned: null },
    { now: { a: "plate -160 mm; pad 4 mm" }, pinned: { a: "own/my rig.yaml", b: "?pinned?" } },
    { now: { a: "夜のロケ 🎥" }, pinned: { a: "%2F" } },
  ];
  for (const state of states) {
    writeAddress(state, { a: "else" });
    assert.deepEqual(readAddress(), state);
  }
});

test("pages have their addresses", () => {
  assert.equal(pageOf.file("own/my rig.yaml"), "/file/own/my%20rig.yaml");
  assert.equal(pageOf.notebook("00-will-it-work", { scenario: "own/a.yaml" }), "/n/00-will-it-work#scenario=own%2Fa.yaml");
  assert.equal(pageOf.notebook("00"), "/n/00");
  assert.equal(pageOf.rig(), "/rig");
  assert.equal(pageOf.rig({ file: "own/a.yaml", build: null, day: "d 1" }), "/rig?file=own%2Fa.yaml&day=d+1");
});

test("a page knows what it shows from its address", () => {
  goTo("/n/01%20a");
  assert.equal(notebookHere(), "01 a");
  goTo("/file/own/my%20rig.yaml?line=3");
  assert.equal(fileHere(), "own/my rig.yaml");
});
