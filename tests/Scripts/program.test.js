// The one door to the program: site/shared/program.js, and what its server is asked.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { beforeEach, test } from "node:test";
import "./browser.js";
import { ask, listen, Newest, useProgram } from "../../src/RigScenarios.Page/site/shared/program.js";
import { ProgramProblem } from "../../src/RigScenarios.Page/site/shared/program-problem.js";
import { server } from "../../src/RigScenarios.Page/site/shared/server.js";

let asked, reply;

beforeEach(() => {
  asked = [];
  reply = { status: 200, json: {} };
  globalThis.fetch = /** @type {any} */ (async (address, options) => {
    asked.push({ address, ...options });
    if (options.signal?.aborted) throw Object.assign(new Error("no longer wanted"), { name: "AbortError" });
    if (reply.status === 0) throw new TypeError("nobody there");
    return { ok: reply.status < 400, status: reply.status, json: async () => reply.json, blob: async () => "a file" };
  });
  useProgram(server);
});

const ADDRESSES = [
  ["shelf", {}, "GET", "/api/shelf"],
  ["picture", { notebook: "01 a/b" }, "GET", "/picture/01%20a%2Fb"],
  ["page", { notebook: "01", values: { a: "1 2" } }, "GET", "/api/page/01?a=1+2"],
  ["page-that-answers", { notebook: "01", values: { a: "1 2" } }, "GET", "/api/page-that-answers/01?a=1+2"],
  ["page-that-answers-size", { notebook: "0 1" }, "GET", "/api/page-that-answers/0%201/size"],
  ["file", { id: "own/my rig.yaml" }, "GET", "/api/files/own/my%20rig.yaml"],
  ["save-file", { name: "a?.yaml", text: "x", version: null, replace: false }, "PUT", "/api/files/own/a%3F.yaml"],
  ["check-text", { text: "x", file: "own/a.yaml" }, "POST", "/api/text/check"],
  ["text-help", { text: "x", line: 1, column: 2 }, "POST", "/api/text/help"],
  ["rig-questions", {}, "GET", "/api/rig/questions"],
  ["rig-edit", { given: {} }, "POST", "/api/rig/edit"],
  ["save-rig", { given: {} }, "POST", "/api/rig/save"],
  ["rig-log", { given: {}, log: new Blob(["0,16,1"]) }, "POST", "/api/rig/log"],
  ["class-places", { file: "own/a b.yaml" }, "GET", "/api/class/places?file=own%2Fa+b.yaml"],
  ["save-class-task", { name: "a?.task.yaml", task: {} }, "PUT", "/api/class/task/a%3F.task.yaml"],
  ["tell-class", { name: "a.task.yaml", revealed: true }, "POST", "/api/class/lesson/a.task.yaml"],
  ["lesson-state", { code: "k7m4-qxpd", student: "a&b" }, "GET", "/api/lesson/k7m4-qxpd/state?student=a%26b"],
  ["lesson-view", { code: "k7m4-qxpd", student: null, settings: {} }, "POST", "/api/lesson/k7m4-qxpd/view"],
  ["hand-in", { code: "k7m4-qxpd" }, "POST", "/api/lesson/k7m4-qxpd/hand-in"],
];

for (const [name, what, method, address] of ADDRESSES) {
  test(`${name} is asked at ${address}`, async () => {
    await ask(/** @type {any} */ (name), what);
    assert.deepEqual([asked[0].method, asked[0].address], [method, address]);
  });
}

test("what stands in the address does not stand in the body again", async () => {
  await ask("save-file", { name: "a.yaml", text: "x", version: "7", replace: true });
  assert.deepEqual(JSON.parse(asked[0].body), { text: "x", version: "7", replace: true });
});

test("a log goes as it is, below a line about it", async () => {
  await ask("rig-log", /** @type {any} */ ({ given: {}, name: "a.csv", air: 20, charge: 100, log: new Blob(["time\n0\n"]) }));
  assert.equal(await asked[0].body.text(), '{"given":{},"name":"a.csv","air":20,"charge":100}\ntime\n0\n');
  assert.equal(asked[0].headers["Content-Type"], "application/octet-stream");
});

test("a request shows the page's key", async () => {
  localStorage.setItem("rig-key", "secret");
  await ask("shelf", {});
  assert.equal(asked[0].headers["Rig-Key"], "secret");
});

test("a file comes as a file", async () => assert.equal(await ask("picture", { notebook: "01" }), "a file"));

test("what is refused comes with the program's own words", async () => {
  reply = { status: 409, json: { problems: [{ text: "Changed meanwhile." }, { text: "By somebody." }] } };
  await assert.rejects(ask("shelf", {}), error => error instanceof ProgramProblem && error.status === 409
    && error.message === "Changed meanwhile. By somebody." && error.problems.length === 2);
});

test("a refusal without words gets some", async () => {
  for (const [status, words] of [[401, /earlier start/], [403, /earlier start/], [500, /an error \(500\)/]]) {
    reply = { status: /** @type {number} */ (status), json: /** @type {any} */ (null) };
    await assert.rejects(ask("shelf", {}), { message: /** @type {RegExp} */ (words) });
  }
});

test("where nobody answers the status is 0", async () => {
  reply = { status: 0, json: {} };
  await assert.rejects(ask("shelf", {}), error => error.status === 0 && /Is it still running/.test(error.message));
});

test("of questions that overtake each other only the newest is answered", async () => {
  const open = [];
  useProgram(/** @type {any} */ ({ ask: (_name, what, signal) => new Promise((resolve, reject) => {
    open.push(() => resolve(what.line));
    signal.addEventListener("abort", () => reject(Object.assign(new Error("overtaken"), { name: "AbortError" })));
  }) }));
  const newest = new Newest();
  const answers = [1, 2, 3].map(line => newest.ask("text-help", { text: "", line, column: 1 }));
  for (const answer of open) answer();
  assert.deepEqual(await Promise.all(answers), [null, null, 3]);
});

test("an answer that came although it was overtaken is not taken", async () => {
  const open = [];
  useProgram(/** @type {any} */ ({ ask: (_name, what) => new Promise(resolve => open.push(() => resolve(what.line))) }));
  const newest = new Newest();
  const answers = [1, 2].map(line => newest.ask("text-help", { text: "", line, column: 1 }));
  for (const answer of open.reverse()) answer();
  assert.deepEqual(await Promise.all(answers), [null, 2]);
});

test("a question that fails says so, unless it was overtaken", async () => {
  reply = { status: 500, json: {} };
  await assert.rejects(new Newest().ask("shelf", {}), { status: 500 });
});

test("another program takes the server's place, for requests and for lines", async () => {
  const sent = [];
  useProgram(/** @type {any} */ ({ ask: async name => `${name} from elsewhere`, listen: (line, on) => {
    on.message({ kind: "notebook", of: line.name });
    return json => { sent.push(json); return true; };
  } }));
  assert.equal(await ask("shelf", {}), "shelf from elsewhere");
  const heard = [];
  const send = listen({ kind: "notebook", name: "01" }, { message: json => heard.push(json), broken: () => assert.fail() });
  assert.ok(send({ kind: "stop", queue: "now" }));
  assert.deepEqual([heard, sent], [[{ kind: "notebook", of: "01" }], [{ kind: "stop", queue: "now" }]]);
  assert.deepEqual(asked, [], "the server was not asked");
});

const within = path => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

test("the list of requests is the same in the types, at the server and in the documentation", async () => {
  const typed = [...within("src/RigScenarios.Page/site/shared/requests.js").matchAll(/^ \*\s+"([a-z-]+)": \{ asks:/gm)]
    .map(found => found[1]);
  const documented = [...within("docs/living-page.md").matchAll(/^\| `([a-z-]+)` \|.*\|.*\|$/gm)].map(found => found[1]);
  const atServer = [...within("src/RigScenarios.Page/site/shared/server.js").matchAll(/^ {2}"([a-z-]+)": /gm)]
    .map(found => found[1]);
  assert.ok(typed.length >= 11, `${typed.length} requests`);
  assert.deepEqual(atServer, typed);
  assert.deepEqual(typed.filter(name => !documented.includes(name)), []);
});
