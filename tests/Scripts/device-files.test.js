// Files of the reader's device: site/shared/device-files.js, and site/shared/opened-file.js, which takes them in.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import "./browser.js";
import { FileProblem, saveToDevice, textOf } from "../../src/RigScenarios.Page/site/shared/device-files.js";
import { takeIn } from "../../src/RigScenarios.Page/site/shared/opened-file.js";
import { ProgramProblem } from "../../src/RigScenarios.Page/site/shared/program-problem.js";
import { useProgram } from "../../src/RigScenarios.Page/site/shared/program.js";

const SCENARIO = "# mine\nrigscenarios: 1\ntitle: Mine\n";
let files;

beforeEach(() => {
  files = new Map();
  useProgram(/** @type {any} */ ({ ask: async (name, { id, name: file, text }) => {
    if (name === "file") return { text: files.get(id.slice(4)) };
    if (files.has(file)) throw new ProgramProblem(409, [{ text: "There is such a file." }]);
    files.set(file, text);
    return { id: `own/${file}` };
  } }));
});

test("a scenario file is taken, whatever its ends of lines", async () => {
  for (const text of [SCENARIO, SCENARIO.replaceAll("\n", "\r\n"), `\uFEFFrigscenarios: 1\n`])
    assert.ok(await textOf(new File([text], "a.yaml")));
});

for (const [what, file, words] of /** @type {[string, File, RegExp][]} */ ([
  ["another text", new File(["a letter about rigscenarios"], "a.txt"), /a\.txt is no scenario file/],
  ["a picture", new File([new Uint8Array([137, 80, 78, 71, 0, 1])], "a.png"), /no scenario file/],
  ["a file of 3 MB", new File([SCENARIO, " ".repeat(3e6)], "a.yaml"), /has 3 MB.*2 MB at most/]])) {
  test(`${what} is refused in words`, async () => {
    await assert.rejects(textOf(file), error => error instanceof FileProblem && words.test(error.message));
  });
}

test("a file that is opened is kept under its name, in letters that every folder takes", async () => {
  assert.equal(await takeIn({ name: "Hafen früh (2).YML", text: "x" }), "own/Hafen-fru-h-2.yaml");
  assert.equal(await takeIn({ name: "東京.yaml", text: "x" }), "own/my-rig.yaml");
});

test("nothing that is kept is written over; the same file is not kept twice", async () => {
  assert.equal(await takeIn({ name: "a.yaml", text: "one" }), "own/a.yaml");
  assert.equal(await takeIn({ name: "a.yaml", text: "two" }), "own/a-2.yaml");
  assert.equal(await takeIn({ name: "a.yaml", text: "two" }), "own/a-2.yaml");
  assert.deepEqual([...files], [["a.yaml", "one"], ["a-2.yaml", "two"]]);
});

test("what the program refuses for another reason is told as it is", async () => {
  useProgram(/** @type {any} */ ({ ask: async () => { throw new ProgramProblem(507, [{ text: "Full." }]); } }));
  await assert.rejects(takeIn({ name: "a.yaml", text: "x" }), { status: 507 });
});

test("where the browser asks for a place the file is written there, as a whole", async () => {
  const done = [];
  window.showSaveFilePicker = /** @type {any} */ (async ({ suggestedName }) => ({ name: `chosen-${suggestedName}`,
    createWritable: async () => ({ write: async text => done.push(text), close: async () => done.push("closed") }) }));
  assert.equal(await saveToDevice("text", "a.yaml"), "Saved on this device as chosen-a.yaml.");
  assert.deepEqual(done, ["text", "closed"]);
});

test("a reader who chooses no place is told nothing, and nothing is saved", async () => {
  window.showSaveFilePicker = async () => { throw new DOMException("no place", "AbortError"); };
  assert.equal(await saveToDevice("text", "a.yaml"), "");
});
