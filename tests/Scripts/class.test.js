// A task for a class without its pages: what of it goes with the rig, what is kept of a student's work, what is told.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { goTo } from "./browser.js";
import { asUsual, linesOf, nameFor, numberOf, tableOf, withoutFormulas, withoutUnknown }
  from "../../src/RigScenarios.Page/site/class/task.js";
import { readDraft, stillOpen, writeDraft } from "../../src/RigScenarios.Page/site/lesson/draft.js";
import { hiddenWords, isFigures, paragraphs } from "../../src/RigScenarios.Page/site/lesson/view.js";
import { codeHere, pageOf, taskHere } from "../../src/RigScenarios.Page/site/shared/addresses.js";

const TASK = { title: "t", text: "", scenario: "own/a.yaml", build: "b", days: [], causes: 0, seed: 1,
  controls: [{ field: "air", from: null, to: 3 }, { field: "gone", from: null, to: null }], shown: ["power", "travel"],
  reveal: "by-teacher", estimates: ["energy", "first-swap"], ownQuestions: [], code: null };

const parameter = { kind: "number", group: "", label: "", unit: "°C", of: "", minimum: -20, maximum: 10, default: "-25",
  isOptional: false, choices: [] };
const CONTROLS = [{ ...parameter, name: "air" }, { ...parameter, name: "state", kind: "choice", default: "off",
  choices: [{ value: "off", title: "off" }, { value: "record", title: "recording" }] }];

const CHOICES = { controls: CONTROLS, questions: [{ kind: "power", title: "Power", words: "" }], headline: "",
  findings: [], told: [], estimates: [{ name: "energy", kind: "power", question: "", unit: "Wh" }] };

beforeEach(() => goTo("/class"));

test("what another rig does not have is left out, and the rest stays", () => {
  const left = withoutUnknown(TASK, CHOICES);
  assert.deepEqual([left.controls.map(one => one.field), left.shown, left.estimates], [["air"], ["power"], ["energy"]]);
  assert.equal(left.controls[0].to, 3);
});

test("on a rig as it is all is hidden and asked; where something is wrong the answer shows whether it is put right", () => {
  assert.deepEqual([asUsual(TASK, CHOICES).shown, asUsual(TASK, CHOICES).estimates], [[], ["energy"]]);
  const exercise = asUsual({ ...TASK, causes: 3 }, CHOICES);
  assert.deepEqual([exercise.shown, exercise.estimates], [["power"], []]);
});

test("a title gives a file's name", () => {
  for (const [title, name] of [["How cold may it be?", "how-cold-may-it-be"], ["Größe: 3 m", "gro-e-3-m"], ["夜", "task"],
    ["", "task"], [`${"a".repeat(39)} b`, "a".repeat(39)]]) assert.equal(nameFor(title), name);
});

test("numbers are read as they are typed", () => {
  for (const [text, number] of [["3,5", 3.5], [" -8 ", -8], ["", null], ["cold", null], ["1e400", null]])
    assert.equal(numberOf(/** @type {string} */ (text)), number);
});

test("lines are lines with something in them", () => assert.deepEqual(linesOf(" a \n\n b\n"), ["a", "b"]));

const LESSON = {
  isRevealed: false, headline: "No.",
  asked: [{ name: "energy", question: "How much?", unit: "Wh", answer: "152 Wh." },
    { name: "own-1", question: "Why?", unit: "", answer: null }],
  handIns: [{ name: "Ada", at: "10:42", estimates: { energy: "=1+1" }, changes: ["a: 1 → 2", "b: 3 → 4"], outcome: "Yes." }],
};

test("what was handed in is a table with the program's answers last", () => {
  const { columns, rows } = tableOf(LESSON);
  assert.deepEqual(columns.map(column => column.title),
    ["Name", "At", "How much? (Wh)", "Why?", "Changed", "What the program says of it"]);
  assert.deepEqual(rows, [["Ada", "10:42", "=1+1", "", "a: 1 → 2; b: 3 → 4", "Yes."],
    ["The program", "", "152 Wh.", "", "", "No."]]);
});

test("no spreadsheet takes what somebody wrote for a formula, and numbers stay numbers", () => {
  const table = { columns: [], rows: [["=1+1", "+4", "@a", "-1+cmd", "-8", "-8 °C", "- a", "200 Wh"]] };
  assert.deepEqual(withoutFormulas(table).rows[0], ["'=1+1", "'+4", "'@a", "'-1+cmd", "-8", "-8 °C", "'- a", "200 Wh"]);
});

test("a student's work is found again in this window, whatever else stands there", () => {
  const draft = { student: "ab", name: "Ada", estimates: { energy: "200" }, settings: { air: "-3" } };
  writeDraft("k7m4-qxpd", draft);
  assert.deepEqual(readDraft("k7m4-qxpd"), draft);
  const empty = { student: null, name: "", estimates: {}, settings: {} };
  assert.deepEqual(readDraft("other"), empty);
  for (const odd of ["{", "7", "null", '{"student":1,"name":[],"estimates":"x","settings":{"a":1}}']) {
    sessionStorage.setItem("rig-lesson-odd", odd);
    assert.deepEqual(readDraft("odd"), empty);
  }
});

test("a setting that is locked or out of bounds by now is forgotten", () => {
  assert.deepEqual(stillOpen({ air: "-3", state: "record", gone: "1" }, CONTROLS), { air: "-3", state: "record" });
  assert.deepEqual(stillOpen({ air: "11", state: "standby" }, CONTROLS), {});
  assert.deepEqual(stillOpen({ air: "-25" }, CONTROLS), { air: "-25" }, "where it stands is always right");
  assert.deepEqual(stillOpen({ air: "" }, CONTROLS), {});
});

test("what is hidden is said, and until when", () => {
  assert.equal(hiddenWords({ hidden: [], isHiding: false, onHandIn: false }), "");
  assert.equal(hiddenWords({ hidden: ["Power", "Travel"], isHiding: true, onHandIn: true }),
    "Hidden: Power, Travel. You see it when you have handed in.");
  assert.match(hiddenWords({ hidden: [], isHiding: true, onHandIn: false }), /to be found is hidden.*Your teacher shows it/);
});

test("paragraphs are made of lines, figures of numbers", () => {
  assert.deepEqual(paragraphs("a\n\n b \nc"), ["a", "b", "c"]);
  assert.ok(isFigures([["1"], ["-2.5"], [""]], 0));
  assert.ok(!isFigures([["1 h"]], 0) && !isFigures([[""]], 0));
});

test("the pages of a class have their addresses", () => {
  assert.equal(pageOf.task(), "/class");
  assert.equal(pageOf.task("a b.task.yaml"), "/class?task=a+b.task.yaml");
  assert.equal(taskHere(), null);
  goTo("/class?task=a+b.task.yaml");
  assert.equal(taskHere(), "a b.task.yaml");
  goTo("/lesson/k7m4-qxpd");
  assert.equal(codeHere(), "k7m4-qxpd");
});
