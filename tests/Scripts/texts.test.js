// What scripts make of texts: numbers beside their units, problems in words, moved parts, CSV, fields of a file.
import assert from "node:assert/strict";
import { test } from "node:test";
import "./browser.js";
import { indentFor, keyOf } from "../../src/RigScenarios.Page/site/file/help.js";
import { forget, keep, kept } from "../../src/RigScenarios.Page/site/shared/kept.js";
import { keyedTo } from "../../src/RigScenarios.Page/site/shared/moving.js";
import { prose } from "../../src/RigScenarios.Page/site/shared/parts.js";
import { inMillimetres, placesInWords, readPlaces, writePlaces } from "../../src/RigScenarios.Page/site/shared/places.js";
import { freshId, inWords, say } from "../../src/RigScenarios.Page/site/shared/tell.js";

test("a number stays beside its unit, and hours beside their minutes", () => {
  assert.equal(prose("lasts 6 h 40 min at -5 °C"), "lasts 6\u00a0h\u00a040\u00a0min at -5\u00a0°C");
  assert.equal(prose("2 mountains, 3 hotels, 4 m"), "2 mountains, 3 hotels, 4\u00a0m");
  assert.equal(prose(null), "");
});

test("a problem is one readable text", () => {
  assert.equal(inWords({ text: "There is no such part." }), "There is no such part.");
  assert.equal(inWords({ text: "There is no such part.", nearest: "body-a", accepted: "the name of a part" }),
    "There is no such part. Did you mean “body-a”? Accepted: the name of a part.");
  assert.equal(inWords({ text: "No.", accepted: "yes!" }), "No. Accepted: yes!");
});

test("a live region is told only what is new", () => {
  let told = 0;
  const region = { get textContent() { return "same"; }, set textContent(_) { told++; } };
  say(/** @type {any} */ (region), "same");
  assert.equal(told, 0);
  say(/** @type {any} */ (region), "other");
  assert.equal(told, 1);
});

test("names for elements are given once", () => assert.notEqual(freshId("x"), freshId("x")));

test("moved parts are read and written", () => {
  assert.deepEqual([...readPlaces("plate -160 mm; pad 4.5mm ")], [["plate", -160], ["pad", 4.5]]);
  assert.deepEqual([...readPlaces("plate \u2212160 mm")], [["plate", -160]]);
  assert.deepEqual([...readPlaces("plate far; ; 3 mm")], []);
  assert.equal(writePlaces(new Map([["plate", -160.04], ["pad", 4.26]])), "plate -160 mm; pad 4.3 mm");
});

test("what was moved by less than a twentieth of a millimetre is at zero, without a sign", () => {
  assert.equal(inMillimetres(-0.04), "0\u00a0mm");
  assert.equal(inMillimetres(-160), "\u2212160\u00a0mm");
});

test("moved parts in words take the names for people", () => {
  assert.equal(placesInWords("plate -160 mm; pad 4 mm", [{ value: "plate", title: "camera plate" }]),
    "camera plate to \u2212160\u00a0mm, pad to 4\u00a0mm");
  assert.equal(placesInWords(""), "nothing moved");
  assert.equal(placesInWords("far forward"), "far forward");
});

test("keys move a part along its mount", () => {
  const now = { at: 5, step: 1, least: -20, greatest: 30, held: 2 };
  const to = ["ArrowRight", "ArrowUp", "ArrowLeft", "ArrowDown", "PageUp", "PageDown", "Home", "End", "Escape", "a"]
    .map(key => keyedTo(key, now));
  assert.deepEqual(to, [6, 6, 4, 4, 15, -5, -20, 30, 2, null]);
});

test("what is kept is found again, and this window's before another's", () => {
  assert.equal(kept("x"), null);
  assert.equal(keep("x", { a: 1 }), true);
  assert.deepEqual(kept("x"), { value: { a: 1 }, isHere: true });
  sessionStorage.removeItem("x");
  assert.deepEqual(kept("x"), { value: { a: 1 }, isHere: false });
  localStorage.setItem("x", "{broken");
  assert.equal(kept("x"), null);
  forget("x");
  assert.equal(localStorage.getItem("x"), null);
});

test("a browser that keeps nothing is no trouble", () => {
  const storage = Object.getOwnPropertyDescriptor(globalThis, "sessionStorage");
  const other = Object.getOwnPropertyDescriptor(globalThis, "localStorage");
  const refuse = { get() { throw new Error("refused"); }, configurable: true };
  Object.defineProperties(globalThis, { sessionStorage: refuse, localStorage: refuse });
  try {
    assert.equal(keep("x", 1), false);
    assert.equal(kept("x"), null);
    forget("x");
  } finally {
    Object.defineProperties(globalThis, { sessionStorage: storage ?? refuse, localStorage: other ?? refuse });
  }
});

test("a line of a file has a key or none", () => {
  assert.deepEqual(["  mass: 3 kg", "- name: x", '"quoted key": 1', "# only words", "  - 12", ""].map(keyOf),
    ["mass", "name", "quoted key", "", "", ""]);
});

test("a new field stands as deep as its group", () => {
  assert.equal(indentFor("", "parts.body-a"), "    ");
  assert.equal(indentFor("   ", "parts.body-a"), "   ");
  assert.equal(indentFor("  body-a:", "parts.body-a"), "    ");
  assert.equal(indentFor("    mass: 3 kg", "parts.body-a"), "    ");
  assert.equal(indentFor("", ""), "");
});
