// What keeps the folder for use without a network: one version as a whole, and nothing of others.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

const TEXT = readFileSync(new URL("../../../src/RigScenarios.Page/site/folder/offline.js", import.meta.url), "utf8");
const SCOPE = "http://localhost/a%20b/";

/** A browser's worker with the folder's files, of which the server sends what `sent` says. */
function begin(files, sent, stores = new Map()) {
  const listeners = new Map(), asked = [];
  let isImpatient = false;
  const worker = { registration: { scope: SCOPE }, skipWaiting() { isImpatient = true; },
    addEventListener: (name, listener) => listeners.set(name, listener) };
  const caches = {
    async open(name) {
      if (!stores.has(name)) stores.set(name, new Map());
      const kept = stores.get(name);
      return { put: async (address, response) => { kept.set(address, response); },
        match: async address => kept.get(address)?.clone() };
    },
    keys: async () => [...stores.keys()],
    delete: async name => stores.delete(name),
  };
  const fetched = async (address, how) => {
    asked.push({ address: address.url ?? address, ...how });
    const answer = sent(address.url ?? address, how ?? {});
    if (answer instanceof Error) throw answer;
    return answer;
  };
  const text = TEXT.replace('"/* mark */"', '"m1"').replace("{/* files */}", JSON.stringify(files));
  new Function("self", "caches", "fetch", text)(worker, caches, fetched);
  return {
    stores, asked, isImpatient: () => isImpatient,
    async tell(name, event = {}) {
      let waited = null, answered = null;
      listeners.get(name)({ waitUntil: promise => { waited = promise; }, respondWith: promise => { answered = promise; },
        ...event });
      await waited;
      return answered && await answered;
    },
  };
}

const FILES = { "index.html": "sha256-a", "rig.html": "sha256-b", "assets/x é.js": "sha256-c",
  "library/library.bin": "sha256-d" };
const anything = address => new Response(`of ${address}`, { headers: { "Content-Type": "text/plain" } });
const request = (path, method = "GET") => ({ request: { url: new URL(path, SCOPE).href, method } });

test("every file is kept, each held against its mark, under its own address", async () => {
  const folder = begin(FILES, anything);
  await folder.tell("install");
  const [[name, kept]] = folder.stores;
  assert.equal(name, `rigscenarios ${SCOPE} m1`);
  assert.deepEqual([...kept.keys()].sort(), ["assets/x%20%C3%A9.js", "index.html", "library/library.bin", "rig.html"]
    .map(path => SCOPE + path));
  assert.deepEqual(folder.asked.map(one => one.integrity).sort(), Object.values(FILES));
});

test("a file of another version in the browser's own store is asked of the server once more", async () => {
  const folder = begin(FILES, (address, { cache }) => cache === "default" && address.endsWith("rig.html")
    ? new TypeError("not of this mark") : anything(address));
  await folder.tell("install");
  assert.deepEqual(folder.asked.filter(one => one.address.endsWith("rig.html")).map(one => one.cache), ["default", "reload"]);
});

test("where one file does not come, none is kept, and another version stays", async () => {
  const stores = new Map([[`rigscenarios ${SCOPE} m0`, new Map()]]);
  const folder = begin(FILES, address =>
    address.endsWith(".bin") ? new Response("", { status: 404 }) : anything(address), stores);
  await assert.rejects(folder.tell("install"), /library.bin: 404/);
  assert.deepEqual([...stores.keys()], [`rigscenarios ${SCOPE} m0`]);
});

test("the new version takes the place of the old one of this folder, and of nothing else", async () => {
  const others = ["rigscenarios http://localhost/other/ m0", "another program"];
  const stores = new Map([`rigscenarios ${SCOPE} m0`, ...others].map(name => [name, new Map()]));
  const folder = begin(FILES, anything, stores);
  await folder.tell("install");
  await folder.tell("activate");
  assert.deepEqual([...stores.keys()].sort(), [...others, `rigscenarios ${SCOPE} m1`].sort());
});

test("what is kept is answered without a network, whatever stands behind the ?", async () => {
  const folder = begin(FILES, anything);
  await folder.tell("install");
  const before = folder.asked.length;
  for (const [path, file] of [["", "index.html"], ["?a=1", "index.html"], ["rig.html?file=own%2Fx", "rig.html"],
    ["rig", "rig.html"], ["assets/x%20%C3%A9.js", "assets/x%20%C3%A9.js"]])
    assert.equal(await (await folder.tell("fetch", request(path))).text(), `of ${SCOPE}${file}`);
  assert.equal(folder.asked.length, before);
});

test("scripts carry a policy, and every file the type that a page needs", async () => {
  const folder = begin(FILES, anything);
  await folder.tell("install");
  const script = await folder.tell("fetch", request("assets/x%20%C3%A9.js"));
  assert.equal(script.headers.get("Content-Type"), "text/javascript");
  assert.match(script.headers.get("Content-Security-Policy") ?? "", /^default-src 'none'; script-src 'self' 'wasm-unsafe-eval'/);
  assert.equal((await folder.tell("fetch", request("rig.html"))).headers.get("Content-Type"), "text/html; charset=utf-8");
});

test("what is not of the folder is left to the browser", async () => {
  const folder = begin(FILES, anything);
  for (const asked of [request("none.html"), request("/elsewhere/rig.html"), request("rig.html", "POST"),
    request("http://other.example/rig.html")])
    assert.equal(await folder.tell("fetch", asked), null);
});

test("a file that the browser has thrown away is asked of the server", async () => {
  const folder = begin(FILES, anything);
  assert.equal(await (await folder.tell("fetch", request("rig.html"))).text(), `of ${SCOPE}rig.html`);
});

test("the new version waits until it is asked for", async () => {
  const folder = begin(FILES, anything);
  await folder.tell("install");
  await folder.tell("message", { data: "another" });
  assert.equal(folder.isImpatient(), false);
  await folder.tell("message", { data: "use-now" });
  assert.equal(folder.isImpatient(), true);
});
