// What is said of the battery's age holds on a day.
import assert from "node:assert/strict";
import { test } from "node:test";
import { isOfAge, withAge } from "../../../src/RigScenarios.Page/site/rig/age.js";

const battery = "builds.rig.battery", day = "2026-11-30";
const given = { builds: { rig: { battery: { item: "battery", charge: "100 %" } } } };
const ageOf = (tree) => tree.builds.rig.battery.age;

test("the first thing that is said brings the day", () => {
  assert.deepEqual(ageOf(withAge(given, `${battery}.age.bought`, "2023-03", day)), { bought: "2023-03", until: day });
});

test("a day that somebody gave or took away stays so", () => {
  const said = withAge(given, `${battery}.age.bought`, "2023-03", day);
  const other = withAge(said, `${battery}.age.until`, "2025-01-01", day);
  assert.equal(ageOf(withAge(other, `${battery}.age.kept`, "half", day)).until, "2025-01-01");
  const none = withAge(said, `${battery}.age.until`, "", day);
  assert.deepEqual(ageOf(withAge(none, `${battery}.age.kept`, "half", day)), { bought: "2023-03", kept: "half" });
});

test("the day goes with the last thing that was said", () => {
  const said = withAge(withAge(given, `${battery}.age.kept`, "half", day), `${battery}.age.place`, "room", day);
  const less = withAge(said, `${battery}.age.kept`, "", day);
  assert.deepEqual(ageOf(less), { place: "room", until: day });
  assert.deepEqual(withAge(less, `${battery}.age.place`, "", day), given);
  const alone = withAge(given, `${battery}.age.until`, day, day);
  assert.deepEqual(withAge(alone, `${battery}.age.until`, "", day), given);
});

test("what is measured holds on a day only where an age is told", () => {
  const measured = withAge(given, `${battery}.capacity-left`, "84 %", day);
  assert.equal(ageOf(measured), undefined);
  const told = withAge(withAge(given, `${battery}.age.bought`, "2023-03", day), `${battery}.age.until`, "", day);
  assert.equal(ageOf(withAge(told, `${battery}.capacity-left`, "84 %", day)).until, day);
});

test("which fields are about the age", () => {
  assert.deepEqual(["age-bought", "capacity-left", "charge", "resistance-growth"].map(isOfAge), [true, true, false, false]);
});
