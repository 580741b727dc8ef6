// The form's one line and its queues: site/rig/line.js.
import assert from "node:assert/strict";
import { test } from "node:test";
import "../browser.js";
import { Clock } from "../clock.js";
import { FormLine } from "../../../src/RigScenarios.Page/site/rig/line.js";
import { useProgram } from "../../../src/RigScenarios.Page/site/shared/program.js";

function lineWith(...names) {
  const heard = [], sent = [], lines = [];
  useProgram(/** @type {any} */ ({ ask: () => assert.fail("nothing is asked"), listen: (line, on) => {
    lines.push({ line, on });
    return json => { sent.push(json); return true; };
  } }));
  const line = new FormLine();
  const queues = names.map(name => line.queue(name, {
    message: json => heard.push([name, json.kind]),
    open: () => heard.push([name, "open"]),
    broken: words => heard.push([name, words]),
  }));
  return { heard, sent, lines, queues, on: lines[0].on };
}

test("however many queues there are, the form has one line", () => {
  const { lines } = lineWith("now", "best");
  assert.deepEqual(lines.map(({ line }) => line), [{ kind: "rig" }]);
});

test("each queue hears what is of its own runs, and nobody what is of none", () => {
  const { heard, on } = lineWith("now", "best");
  on.message({ kind: "answer", queue: "now", run: 1 });
  on.message({ kind: "best-rig", queue: "best", run: 2 });
  on.message({ kind: "problems", queue: null, run: null });
  assert.deepEqual(heard, [["now", "answer"], ["best", "best-rig"]]);
});

test("all queues hear how the line stands", () => {
  const { heard, on } = lineWith("now", "best");
  on.open();
  on.broken("gone");
  assert.deepEqual(heard, [["now", "open"], ["best", "open"], ["now", "gone"], ["best", "gone"]]);
});

test("a queue sends its runs and its stop under its own name", () => {
  new Clock();
  const { sent, queues } = lineWith("now", "best");
  queues[1].want({ given: {} });
  queues[1].stop();
  assert.deepEqual(sent.map(({ kind, queue }) => [kind, queue]), [["run", "best"], ["stop", "best"]]);
});
