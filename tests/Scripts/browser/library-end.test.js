// The worker's end: site/browser/library-end.js.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { LibraryEnd } from "../../../src/RigScenarios.Page/site/browser/library-end.js";

const bytes = text => new TextEncoder().encode(text), textOf = buffer => new TextDecoder().decode(buffer);

let posted, files, kept, door, replies, told, changed, end;

beforeEach(() => {
  posted = [];
  files = new Map();
  kept = new Map([["a.yaml", bytes("kept")]]);
  replies = {};
  door = {
    asked: [], opened: [],
    ask: async (name, json, attachment) => {
      door.asked.push([name, JSON.parse(json), attachment && textOf(attachment)]);
      return replies[name]?.()
        ?? { status: 200, contentType: "application/json", body: bytes('{"id":"own/a.yaml"}'), fileName: null };
    },
    open: (...of) => door.opened.push(of), say: (...of) => door.opened.push(of), close: (...of) => door.opened.push(of),
    put: (path, content) => files.set(path, textOf(content)),
    remove: path => files.delete(path),
    read: path => files.has(path) ? bytes(files.get(path)) : null,
  };
  end = new LibraryEnd({
    post: message => posted.push(message),
    load: async (_library, tell, progress) => { told = tell; progress(1, 2); return door; },
    own: /** @type {any} */ ({ all: async () => [...kept].map(([name, content]) => ({ name, bytes: content })),
      get: async name => kept.get(name) ?? null,
      put: async (name, content) => kept.set(name, content),
      onChanged: on => { changed = on; } }),
  });
});

async function begun() {
  end.take({ kind: "begin", library: "boot.js" });
  await new Promise(resolve => setImmediate(resolve));
}
const ask = (name, what) => end.take({ kind: "ask", id: 5, name, json: JSON.stringify(what) });
const replied = () => JSON.parse(textOf(posted.at(-1).reply.body));

test("own files that the browser keeps are there before anything is answered", async () => {
  end.take({ kind: "begin", library: "boot.js" });
  await ask("shelf", {});
  assert.deepEqual([...files], [["/own/a.yaml", "kept"]]);
  assert.deepEqual(posted.map(({ kind }) => kind), ["loading", "ready", "reply"]);
});

test("a file that was saved is kept by the browser before anybody is told", async () => {
  await begun();
  replies["save-rig"] = () => {
    files.set("/own/b.yaml", "new");
    return { status: 200, contentType: "application/json", body: bytes('{"id":"own/b.yaml"}'), fileName: null };
  };
  await ask("save-rig", { name: "b.yaml" });
  assert.equal(textOf(kept.get("b.yaml")), "new");
  assert.deepEqual(replied(), { id: "own/b.yaml" });
});

test("before a save the file is as another window left it, so that its version is found to be another", async () => {
  await begun();
  kept.set("a.yaml", bytes("by another window"));
  let seen;
  replies["save-file"] = () => { seen = files.get("/own/a.yaml"); return null; };
  await ask("save-file", { name: "a.yaml" });
  assert.equal(seen, "by another window");
});

test("where the browser keeps nothing a save is refused, and the library goes without the file", async () => {
  await begun();
  end.means.own.put = async () => { throw new Error("The quota is full."); };
  replies["save-file"] = () => {
    files.set("/own/c.yaml", "new");
    return { status: 200, contentType: "application/json", body: bytes('{"id":"own/c.yaml"}'), fileName: null };
  };
  await ask("save-file", { name: "c.yaml" });
  assert.equal(posted.at(-1).reply.status, 507);
  assert.match(replied().problems[0].text, /did not keep it \(The quota is full\.\)\. Save it as a file/);
  assert.equal(files.has("/own/c.yaml"), false);
});

test("a save that the library refuses changes nothing", async () => {
  await begun();
  replies["save-file"] = () => ({ status: 409, contentType: "application/json", body: bytes('{"problems":[]}'), fileName: null });
  await ask("save-file", { name: "a.yaml" });
  assert.equal(textOf(kept.get("a.yaml")), "kept");
  assert.equal(posted.at(-1).reply.status, 409);
});

test("what another window changes is there at once", async () => {
  await begun();
  kept.set("d.yaml", bytes("fresh"));
  await changed("d.yaml");
  kept.delete("a.yaml");
  await changed("a.yaml");
  assert.deepEqual([...files], [["/own/d.yaml", "fresh"]]);
});

test("lines go through, both ways", async () => {
  await begun();
  await end.take({ kind: "open", line: 1, json: '{"kind":"rig"}' });
  await end.take({ kind: "say", line: 1, json: "{}" });
  await end.take({ kind: "close", line: 1 });
  assert.deepEqual(door.opened, [[1, '{"kind":"rig"}'], [1, "{}"], [1]]);
  told(1, bytes("xx{}").subarray(2));
  assert.deepEqual([posted.at(-1).kind, textOf(posted.at(-1).message)], ["told", "{}"]);
});

for (const [error, why] of /** @type {[Error, string][]} */ ([
  [new TypeError("Failed to fetch dynamically imported module"), "load"],
  [new Error("download 'x' for it failed 0 Error: x can't be had: The packed file is cut off."), "load"],
  [new Error("/library/library.bin can't be had (404)."), "load"],
  [new Error("WebAssembly: Out of memory: could not allocate"), "memory"],
  [new Error("wasm code generation disallowed"), "start"]])) {
  test(`a start that fails says why: ${error.message}`, async () => {
    end.means.load = async () => { throw error; };
    await begun();
    assert.deepEqual(posted, [{ kind: "failed", why, detail: error.message }]);
    await ask("shelf", {});
    assert.equal(posted.length, 1, "and nothing is answered after it");
  });
}

test("a library that breaks while it works says so once", async () => {
  await begun();
  replies.shelf = () => { throw new Error("unreachable executed\n  at wasm"); };
  await ask("shelf", {});
  await ask("shelf", {});
  assert.deepEqual(posted.filter(({ kind }) => kind === "failed"),
    [{ kind: "failed", why: "fault", detail: "unreachable executed" }]);
});
