// The line to the server: opened again by itself when it broke, with words for the reader meanwhile.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import "./browser.js";
import { Clock } from "./clock.js";
import { server } from "../../src/RigScenarios.Page/site/shared/server.js";

let clock, sockets, told, shelf;

class Socket extends EventTarget {
  static OPEN = 1;
  readyState = 0;
  sent = [];
  constructor(address, protocols) { super(); Object.assign(this, { address, protocols }); sockets.push(this); }
  send(text) { this.sent.push(JSON.parse(text)); }
  close() { this.readyState = 3; }
  open() { this.readyState = 1; this.dispatchEvent(new Event("open")); }
  say(json) { this.dispatchEvent(Object.assign(new Event("message"), { data: JSON.stringify(json) })); }
  break(code = 1006) { this.readyState = 3; this.dispatchEvent(Object.assign(new Event("close"), { code })); }
}

// Promises that follow each other are all done after this.
const settled = async () => { for (let i = 0; i < 20; i++) await null; };

beforeEach(() => {
  clock = new Clock();
  sockets = [];
  told = [];
  shelf = { notebooks: [{ name: "01" }] };
  globalThis.WebSocket = /** @type {any} */ (Socket);
  globalThis.fetch = /** @type {any} */ (async () => {
    if (shelf === null) throw new TypeError("nobody there");
    return { ok: true, status: 200, json: async () => shelf };
  });
});

const on = { message: json => told.push(json), open: () => told.push("open"), broken: words => told.push(words) };

test("a notebook's line and the form's have addresses of their own", () => {
  server.listen({ kind: "notebook", name: "01 a" }, on);
  server.listen({ kind: "rig" }, on);
  assert.deepEqual(sockets.map(socket => socket.address),
    ["ws://localhost/api/live/01%20a", "ws://localhost/api/rig/live"]);
});

test("what is sent before the line is open is lost, and said to be", () => {
  const send = server.listen({ kind: "rig" }, on);
  assert.equal(send({ kind: "stop", queue: "now" }), false);
  sockets[0].open();
  assert.equal(send({ kind: "stop", queue: "now" }), true);
  assert.deepEqual(sockets[0].sent, [{ kind: "stop", queue: "now" }]);
  sockets[0].say({ kind: "done" });
  assert.deepEqual(told, ["open", { kind: "done" }]);
});

test("a line that broke is opened again, after longer and longer pauses", async () => {
  server.listen({ kind: "rig" }, on);
  for (const pause of [300, 600, 1200, 2500, 5000, 5000]) {
    sockets.at(-1).break();
    await settled();
    const before = sockets.length;
    clock.pass(pause - 1);
    assert.equal(sockets.length, before);
    clock.pass(1);
    assert.equal(sockets.length, before + 1);
  }
  sockets.at(-1).open();
  sockets.at(-1).break();
  await settled();
  clock.pass(300);
  assert.equal(sockets.length, 8, "once it was open the pauses begin anew");
});

test("the reader hears why: the line broke, no line was free, the program has gone", async () => {
  server.listen({ kind: "rig" }, on);
  sockets[0].break();
  await settled();
  assert.match(told.at(-1), /no line free/);
  clock.pass(300);
  sockets[1].open();
  sockets[1].break();
  await settled();
  assert.match(told.at(-1), /line to the program broke/);
  shelf = null;
  clock.pass(300);
  sockets[2].break();
  await settled();
  assert.match(told.at(-1), /has gone/);
});

test("where there is nothing at the other end any more it is not tried again", async () => {
  server.listen({ kind: "notebook", name: "09" },
    { ...on, gone: now => now.notebooks.some(one => one.name === "09") ? "" : "No such notebook." });
  sockets[0].break();
  await settled();
  clock.pass(10000);
  assert.deepEqual([told, sockets.length], [["No such notebook."], 1]);
});

test("a page whose place was needed waits for its reader to come back", async () => {
  server.listen({ kind: "rig" }, on);
  sockets[0].open();
  sockets[0].break(4001);
  await settled();
  clock.pass(10000);
  assert.equal(sockets.length, 1);
  assert.match(told.at(-1), /left alone/);
  globalThis.dispatchEvent(new Event("keydown"));
  globalThis.dispatchEvent(new Event("pointerdown"));
  assert.equal(sockets.length, 2, "one doing opens it, once");
});

test("a page that is left does not open its line again", async () => {
  server.listen({ kind: "rig" }, on);
  sockets[0].open();
  globalThis.dispatchEvent(new Event("pagehide"));
  sockets[0].break(1000);
  await settled();
  clock.pass(10000);
  assert.equal(sockets.length, 1);
  globalThis.dispatchEvent(Object.assign(new Event("pageshow"), { persisted: true }));
  assert.equal(sockets.length >= 2, true, "but does when it comes back from the browser's memory");
});
