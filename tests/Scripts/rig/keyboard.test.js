// Which keyboard a field brings up, and the number on the other side of zero.
import "../browser.js";
import assert from "node:assert/strict";
import { test } from "node:test";
import { keyboardOf, mayBeBelowZero, turnedOver } from "../../../src/RigScenarios.Page/site/rig/keyboard.js";

const asked = (key, example, unit) => ({ key, label: key, example, unit });

test("a number with a unit gets digits, a count whole ones, words get letters", () => {
  for (const [field, keyboard] of [[asked("mass", "310 g", "g"), "decimal"], [asked("ambient", "-8 °C", "°C"), "decimal"],
    [asked("place-plate", undefined, "mm"), "decimal"], [asked("resistance-growth", "1.3"), "decimal"],
    [asked("battery-count", "3"), "numeric"], [asked("starts", "06:30"), "numeric"], [asked("title", "My rig"), "text"],
    [asked("budget", "2500 EUR"), "text"], [asked("age-bought", "2023-03"), "text"],
    [asked("power-hours", "12:00-14:00"), "text"], [asked("size-camera", "96 x 122 x 91 mm", "mm"), "text"]])
    assert.equal(keyboardOf(field, ""), keyboard, field.key);
});

test("who wrote another unit or words keeps the letters", () => {
  const mass = asked("mass", "310 g", "g");
  assert.equal(keyboardOf(mass, "310 g"), "decimal");
  assert.equal(keyboardOf(mass, "1.2 kg"), "text");
  assert.equal(keyboardOf(mass, "about 300"), "text");
  assert.equal(keyboardOf(asked("starts", "06:30"), "06:30"), "numeric");
  assert.equal(keyboardOf(asked("starts", "06:30"), "at dawn"), "text");
});

test("a number is turned over zero as it was written, and zero and words are not", () => {
  for (const [text, turned] of [["12 °C", "-12 °C"], ["-12 °C", "12 °C"], ["−8", "8"], ["+3 mm", "-3 mm"], ["0.5 mm", "-0.5 mm"],
    ["0 °C", null], ["", null], ["cold", null]]) assert.equal(turnedOver(text), turned, text);
});

test("below zero are temperatures and places, not masses", () => {
  for (const key of ["ambient", "start-temperature", "slide-middle", "place-plate"]) assert.ok(mayBeBelowZero(key), key);
  for (const key of ["mass", "charge", "swap-at"]) assert.ok(!mayBeBelowZero(key), key);
});
