// The rig of the form while edits are on their way to the program.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import "../browser.js";
import { useProgram } from "../../../src/RigScenarios.Page/site/shared/program.js";
import { Rig } from "../../../src/RigScenarios.Page/site/rig/state.js";

const view = { things: [], camera: null, battery: null, charger: null };

/** @type {{ edit: any, given: any, answer: (given: any) => void }[]} */
let asked;

beforeEach(() => {
  asked = [];
  useProgram(/** @type {any} */ ({
    ask: (_, { given, edit }) => new Promise((done) => {
      asked.push({ edit, given, answer: (answered) => done({ given: answered, view, thing: null }) });
    }),
  }));
});

test("it has settled once the last edit is in, also one that was asked for while another was waited for", async () => {
  const rig = new Rig();
  let given = null;
  rig.edit({ do: "day" }, { name: "day" });
  const waited = rig.settled().then(() => { given = rig.given; });
  rig.edit({ do: "lens" }, { name: "lens" });
  await soon();
  asked[0].answer({ day: "night" });
  await soon();
  assert.equal(given, null);
  assert.deepEqual(asked[1].given, { day: "night" });
  asked[1].answer({ day: "night", lens: "prime" });
  await waited;
  assert.deepEqual(given, { day: "night", lens: "prime" });
});

test("without an edit on its way it has settled at once, and after one that was refused, too", async () => {
  const rig = new Rig();
  await rig.settled();
  useProgram(/** @type {any} */ ({ ask: async () => { throw new Error("broken"); } }));
  await assert.rejects(rig.edit({ do: "day" }, { name: "day" }), /broken/u);
  await rig.settled();
});

test("what was changed while the file was written is not saved", () => {
  const rig = new Rig();
  rig.open({ given: { title: "one" }, view }, { file: null, build: "rig", day: "day", version: null });
  rig.set("title", "two", { name: "title" });
  const { given } = rig;
  rig.saved({ file: "own/two.yaml" }, given);
  assert.equal(rig.unsaved, false);
  rig.set("title", "three", { name: "title" });
  rig.saved({ file: "own/two.yaml" }, given);
  assert.equal(rig.unsaved, true);
  assert.equal(rig.openedText("title"), "two");
});

function soon() { return new Promise((done) => { setTimeout(done, 0); }); }
