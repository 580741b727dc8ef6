// Lengths, clock times and numbers as people write them.
import assert from "node:assert/strict";
import { test } from "node:test";
import {
  asClock, asLength, clockOf, freeName, lengthText, minutesOf, numberIn, withUnit,
} from "../../../src/RigScenarios.Page/site/rig/words.js";

test("lengths", () => {
  for (const [text, minutes] of [["1 h 30 min", 90], ["1.5 h", 90], ["90 min", 90], ["1:30", 90], ["９０ min", 90], ["48 h", 2880]])
    assert.equal(minutesOf(text), minutes, text);
});

test("a length that no block can have is none", () => {
  for (const text of ["0", "0 min", "-5 min", "99,999,999 h", "99999999 h", "48.1 h", "soon", "", undefined, "5 constructor",
    `${"9".repeat(400)} h`]) assert.equal(minutesOf(text), null, String(text));
});

test("a bare number gets its unit, anything else stays as it was written", () => {
  assert.equal(withUnit("24", "W"), "24 W");
  assert.equal(withUnit("２４", "W"), "24 W");
  assert.equal(withUnit("−5", "°C"), "-5 °C");
  assert.equal(withUnit("23F", "°C"), "23F");
  assert.equal(withUnit("-5 C", "°C"), "-5 C");
  assert.equal(withUnit("１２ V", "W"), "１２ V");
  assert.equal(withUnit("камера 📷", ""), "камера 📷");
  assert.equal(asLength("90"), "90 min");
  assert.equal(asLength("1:30"), "1 h 30 min");
  assert.equal(asLength("-5 min"), "-5 min");
  assert.equal(asClock("0630"), "06:30");
  assert.equal(asClock("６:３０"), "06:30");
  assert.equal(asClock("half past six"), "half past six");
});

test("a slider stands where the text says, if it is in its unit", () => {
  assert.equal(numberIn("-8 °C", "°C"), -8);
  assert.equal(numberIn("-8 C", "°C"), -8);
  assert.equal(numberIn("23 F", "°C"), null);
  assert.equal(numberIn("", "%"), null);
});

test("clock times go past midnight", () => {
  assert.equal(clockOf("22:30", 120), "00:30");
  assert.equal(clockOf("", 75), "1 h 15 min");
  assert.equal(lengthText(0), "0 min");
});

test("names of files: what can't stand in one falls away", () => {
  assert.equal(freeName("Lake at dawn", () => false), "lake-at-dawn");
  assert.equal(freeName("夜", () => false, "my-rig"), "my-rig");
  assert.equal(freeName("block", (name) => name === "block"), "block-2");
});
