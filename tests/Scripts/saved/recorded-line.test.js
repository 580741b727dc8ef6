// A notebook's line on a saved page: site/saved/recorded-line.js.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { RecordedLine } from "../../../src/RigScenarios.Page/site/saved/recorded-line.js";

const GREETING = { kind: "notebook", title: "Cold" };
const RECORDED = { greeting: GREETING, values: { cold: "5" }, messages: [
  { kind: "parameters", parameters: [{ name: "cold", value: "5.0" }] },
  { kind: "cell", cell: 3, parts: [{ type: "answer", text: "A sentence." }] },
  { kind: "cell", cell: 4, parts: [{ type: "answer", text: "No.", isVerdict: true }] },
  { kind: "done", rerun: [3, 4] },
] };

let heard, asked, states, line, tell, breaks;

beforeEach(() => {
  heard = [];
  asked = [];
  states = [];
  let resolve, reject;
  const opening = new Promise((done, failed) => { [resolve, reject] = [done, failed]; });
  line = new RecordedLine(RECORDED, { message: json => heard.push(json), broken: words => heard.push(words) }, opening,
    state => states.push(state));
  tell = async (...messages) => {
    resolve(on => { tell.on = on; return message => asked.push(message) > 0; });
    await turn();
    for (const message of messages) tell.on.message(message);
  };
  breaks = async words => { reject(new Error(words)); await turn(); };
});

const turn = () => new Promise(resolve => setTimeout(resolve, 0));
const run = (number, cold = "5", queue = "now") => line.send({ kind: "run", queue, run: number, values: { cold } });

test("what the page was saved with is told at once, as an answer to what the page asks", async () => {
  await turn();
  assert.deepEqual(heard, [GREETING]);
  assert.equal(run(7), true);
  assert.equal(heard.length, 1, "not before the page has noted its run");
  await turn();
  assert.deepEqual(heard.slice(1).map(({ kind, queue, run: of }) => [kind, queue, of]),
    [["parameters", "now", 7], ["cell", "now", 7], ["cell", "now", 7], ["done", "now", 7]]);
  assert.deepEqual([asked, states], [[], ["starts"]]);
});

test("values as the program settled them are the same: so the page's address has them after a reload", async () => {
  run(7, "5.0");
  await turn();
  assert.deepEqual([heard.at(-1).kind, heard.at(-1).run, asked], ["done", 7, []]);
});

test("the library makes the answer unseen, and no more, so that a change is answered soon", async () => {
  run(7);
  await tell(GREETING);
  assert.deepEqual([asked.length, asked[0].values, asked[0].untilCell], [1, { cold: "5" }, 4]);
  const before = heard.length, unseen = asked[0].run;
  tell.on.message({ kind: "cell", queue: "now", run: unseen, cell: 3, parts: [] });
  assert.deepEqual(states, ["starts"]);
  tell.on.message({ kind: "done", queue: "now", run: unseen, rerun: [3, 4] });
  assert.deepEqual([heard.length, states], [before, ["starts", "answers"]]);
  run(8, "6");
  tell.on.message({ kind: "done", queue: "now", run: 8, rerun: [4] });
  assert.deepEqual([asked[1].run, heard.at(-1).run, states.length], [8, 8, 2]);
});

test("a change before the library is there waits for it, and then the library alone answers", async () => {
  await turn();
  run(7);
  await turn();
  run(8, "6");
  run(9, "5");
  assert.deepEqual(states, ["starts", "asked"]);
  const before = heard.length;
  await tell(GREETING);
  assert.deepEqual(asked.map(message => message.run), [8, 9]);
  assert.equal(heard.length, before, "what was recorded would stand beside what the library tells of the run before");
  tell.on.message({ kind: "done", queue: "now", run: 9, rerun: [4] });
  assert.deepEqual(states.at(-1), "answers");
});

test("a pinned version is the library's matter", async () => {
  run(7, "5", "pinned");
  await tell(GREETING);
  assert.deepEqual(asked.map(({ queue, run: of }) => [queue, of]), [["pinned", 7]]);
});

test("a notebook that begins anew, or otherwise than it was saved, is told to the page", async () => {
  await turn();
  await tell({ ...GREETING, title: "Colder" });
  assert.equal(heard.at(-1).title, "Colder");
  tell.on.message(GREETING);
  assert.equal(heard.at(-1), GREETING);
});

test("a library that can't be had is told, and what is shown stays", async () => {
  run(7);
  await breaks("No worker may be made here.");
  assert.deepEqual([states, heard.at(-1)], [["starts", "broken"], "No worker may be made here."]);
  run(8);
  await turn();
  assert.equal(heard.at(-1).run, 8);
});
