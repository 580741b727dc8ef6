// Requests where the library is in the browser: site/browser/program.js and library-worker.js.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import "../browser.js";
import { Clock } from "../clock.js";
import { browserProgram } from "../../../src/RigScenarios.Page/site/browser/program.js";
import { PATIENCE } from "../../../src/RigScenarios.Page/site/browser/workers.js";
import { pretendWorkers, settled } from "./pretend-worker.js";

let clock, made, program, loaded;

beforeEach(() => {
  clock = new Clock();
  loaded = [];
  const pretend = pretendWorkers();
  made = pretend.made;
  program = browserProgram({ library: "boot.js", makeWorker: /** @type {any} */ (pretend.makeWorker),
    loading: (...of) => loaded.push(of) });
});

test("the library is loaded before anything is asked", () => {
  assert.deepEqual(made.map(worker => worker.posted), [[{ kind: "begin", library: "boot.js" }]]);
  made[0].post({ kind: "loading", loaded: 3, all: 40 });
  assert.deepEqual(loaded, [[3, 40]]);
});

test("a request is asked as JSON and answered with what came", async () => {
  const answer = program.ask("text-help", { text: "a", line: 1, column: 2 });
  await settled();
  const { name, json } = made[0].last("ask");
  assert.deepEqual([name, JSON.parse(json)], ["text-help", { text: "a", line: 1, column: 2 }]);
  made[0].reply({ path: "kit" });
  assert.deepEqual(await answer, { path: "kit" });
});

test("a page to keep is asked for with the charts' script, which the library leaves out", async () => {
  const { makeWorker, made: workers } = pretendWorkers();
  const other = browserProgram({ library: "boot.js", makeWorker: /** @type {any} */ (makeWorker),
    charts: async () => new Blob(["charts"]) });
  other.ask("page", { notebook: "01", values: {} });
  await settled();
  const { json, attachment } = workers[0].last("ask");
  assert.deepEqual([JSON.parse(json), new TextDecoder().decode(attachment)], [{ notebook: "01", values: {} }, "charts"]);
});

test("what is no JSON comes as a file of its type", async () => {
  const answer = program.ask("rig-sheet", {});
  await settled();
  made[0].reply("<p>", 200, "text/html; charset=utf-8");
  const file = await answer;
  assert.deepEqual([file.type, await file.text()], ["text/html; charset=utf-8", '"<p>"']);
});

test("what is refused comes with the library's own words and status", async () => {
  const answer = program.ask("save-rig", /** @type {any} */ ({}));
  await settled();
  made[0].reply({ problems: [{ text: "There is such a file." }] }, 409);
  await assert.rejects(answer, { status: 409, message: "There is such a file." });
});

test("a power log goes beside its request, to a worker of its own that ends with it", async () => {
  const answer = program.ask("rig-log", /** @type {any} */ ({ name: "a.csv", log: new Blob(["0,16,1"]) }));
  await new Promise(resolve => setImmediate(resolve));
  await settled();
  const { json, attachment } = made[1].last("ask");
  assert.deepEqual([JSON.parse(json), new TextDecoder().decode(attachment)], [{ name: "a.csv" }, "0,16,1"]);
  assert.deepEqual(made[0].all("ask"), []);
  made[1].reply({ says: [] });
  assert.deepEqual(await answer, { says: [] });
  assert.ok(made[1].isEnded && !made[0].isEnded);
});

test("a request that is overtaken while it waits is never asked", async () => {
  const given = new AbortController(), first = program.ask("shelf", {});
  const second = program.ask("file", { id: "own/a.yaml" }, given.signal), third = program.ask("rig-questions", {});
  await settled();
  given.abort();
  await assert.rejects(second, { name: "AbortError" });
  made[0].reply({ n: 1 });
  await settled();
  made[0].reply({ n: 3 });
  assert.deepEqual([await first, await third], [{ n: 1 }, { n: 3 }]);
  assert.deepEqual(made[0].all("ask").map(({ name }) => name), ["shelf", "rig-questions"]);
});

for (const [why, words] of /** @type {[string, RegExp][]} */ ([["load", /did not come whole/], ["start", /can't run the library/],
  ["memory", /no memory left/], ["fault", /broke while it worked/]])) {
  test(`a worker that fails (${why}) is told in words to all who wait, and the next request starts another`, async () => {
    const asked = [program.ask("shelf", {}), program.ask("rig-questions", {})];
    await settled();
    made[0].post({ kind: "failed", why, detail: "unreachable" });
    for (const answer of asked) await assert.rejects(answer, error => error.status === 503 && words.test(error.message)
      && error.message.includes("(unreachable)"));
    assert.ok(made[0].isEnded);
    const again = program.ask("shelf", {});
    await settled();
    made[1].reply({ files: [] });
    assert.deepEqual(await again, { files: [] });
  });
}

test("a worker whose script did not come is a library that did not load", async () => {
  const answer = program.ask("shelf", {});
  await settled();
  made[0].onerror({ preventDefault() { /* told in words instead */ }, message: undefined });
  await assert.rejects(answer, { message: /did not come whole/ });
});

test("a worker that never answers counts as lost after a while", async () => {
  const answer = program.ask("shelf", {});
  await settled();
  clock.pass(PATIENCE);
  await assert.rejects(answer, { status: 503, message: /longer than a page may wait/ });
  assert.ok(made[0].isEnded);
});
