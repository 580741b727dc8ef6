// Charts and tables as files of numbers.
import assert from "node:assert/strict";
import { test } from "node:test";
import "./browser.js";

globalThis.document = /** @type {any} */ ({ ...globalThis.document, addEventListener() { /* no page comes */ } });
await import("../../src/RigScenarios.Charts/Pages/keep.js");
const { csvOfChart, csvOfTable } = window.rigKeep;

/** @param {string[][]} rows @param {import("../../src/RigScenarios.Page/site/shared/requests.js").Column[]} [columns] */
const table = (rows, columns = [{ title: "name", isNumber: false }, { title: "voltage [V]", isNumber: true }]) =>
  ({ columns, rows });

test("a table is CSV with its titles first, texts in quotes, and lines that end with CR LF", () => {
  assert.equal(csvOfTable(table([["a", "12.5"], ["b", ""]])), '"name","voltage [V]"\r\n"a",12.5\r\n"b",\r\n');
  assert.equal(csvOfTable(table([['say "no", twice', "2"], ["two\nlines", "3"]])),
    '"name","voltage [V]"\r\n"say ""no"", twice",2\r\n"two\nlines",3\r\n');
});

test("a typeset minus of a number is one that programs read; in a text it stays", () => {
  assert.equal(csvOfTable(table([["\u22125 °C", "\u22125"]])), '"name","voltage [V]"\r\n"\u22125 °C",-5\r\n');
});

test("units go into the title, and units of one kind are made one", () => {
  const column = (/** @type {string} */ title, /** @type {string[]} */ ...cells) =>
    csvOfTable(table(cells.map(cell => [cell]), [{ title, isNumber: true }])).split("\r\n").slice(0, -1);
  assert.deepEqual(column("battery", "14.4 V", "\u22120.5 V"), ['"battery (V)"', "14.4", "-0.5"]);
  assert.deepEqual(column("mass", "250 g", "1.5 kg"), ['"mass (kg)"', "0.25", "1.5"]);
  assert.deepEqual(column("lasts", "7 h 40 min", "5 min 30 s", "45 s"), ['"lasts (min)"', "460", "5.5", "0.75"]);
  assert.deepEqual(column("tilt", "10°", ""), ['"tilt (°)"', "10", ""]);
  // What can't be one unit stays as it is, as text.
  assert.deepEqual(column("either", "3 V", "2 A"), ['"either"', '"3 V"', '"2 A"']);
  assert.deepEqual(column("either", "3 V", "nothing"), ['"either"', '"3 V"', '"nothing"']);
});

test("a chart's file has a row for each point, and a column for each axis", () => {
  const figure = {
    data: [{ type: "scatter", x: [6.5, 7], y: [16.7, null] }, { type: "scatter", x: [7], y: [16] },
      { type: "scatter", x: [6.5, null, 8], y: [100, null, 90] }],
    points: { x: "clock time (h)", values: ["battery (V)", "charge (%)"],
      series: [{ name: "battery", column: 0 }, null, { name: 'the "other"', column: 1 }] },
  };
  assert.equal(csvOfChart(figure), '"series","clock time (h)","battery (V)","charge (%)"\r\n"battery",6.5,16.7,\r\n'
    + '"battery",7,,\r\n"the ""other""",6.5,,100\r\n"the ""other""",8,,90\r\n');
});

test("a map has a row for each cell, bars one for each bar", () => {
  assert.equal(csvOfChart({ data: [{ type: "heatmap", x: [1, 2], y: [10], z: [[5, null]] }, { type: "contour" }],
    points: { x: "air (°C)", values: ["energy (Wh)", "runtime (h)"], series: [{ name: "", column: 0 }, null] } }),
  '"air (°C)","energy (Wh)","runtime (h)"\r\n1,10,5\r\n2,10,\r\n');
  assert.equal(csvOfChart({ data: [{ type: "bar", base: [0, -2], x: [3, 1.5] }],
    points: { x: "from, mass (kg)", values: ["to, mass (kg)"], series: [{ name: "", column: 0, names: ["a", "b"] }] } }),
  '"name","from, mass (kg)","to, mass (kg)"\r\n"a",0,3\r\n"b",-2,-0.5\r\n');
});

test("a chart that says nothing of its numbers has what its traces are called", () => assert.equal(
  csvOfChart({ data: [{ type: "scatter", name: "one", x: [1], y: [2] }, { type: "scatter", x: [3], y: [4] }],
    layout: { xaxis: { title: { text: "time (s)" } } } }),
  '"series","time (s)","y"\r\n"one",1,2\r\n"series 2",3,4\r\n'));

test("lines of equal value have a row for each cell, and a chart that tells its rows has these", () => {
  assert.equal(csvOfChart({ data: [{ type: "contour", x: [1, 2], y: [10], z: [[5, null]] }, { type: "contour" }],
    points: { x: "air (°C)", values: ["energy (Wh)", "runtime (h)"], series: [{ name: "", column: 0 }, null] } }),
  '"air (°C)","energy (Wh)","runtime (h)"\r\n1,10,5\r\n2,10,\r\n');
  assert.equal(csvOfChart({ data: [{ type: "bar", base: [1], x: [2] }],
    points: { x: "", values: [], series: [], rows: [["name", "low (h)"], ["label", null], ["air", 2.5]] } }),
  '"name","low (h)"\r\n"label",\r\n"air",2.5\r\n');
});
