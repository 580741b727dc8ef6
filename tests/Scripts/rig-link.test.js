// A rig as a link: site/shared/rig-link.js. Deflate by the platform's own zlib, base64url by Buffer (RFC 1951, RFC 4648).
import assert from "node:assert/strict";
import { test } from "node:test";
import { deflateRawSync, inflateRawSync } from "node:zlib";
import { isRigLink, LinkProblem, linkOf, rigIn } from "../../src/RigScenarios.Page/site/shared/rig-link.js";

const RIG = { given: { title: "Hafen, früh – 東京 🎥", kit: { camera: { part: "compact-body-b" } }, journeys: { out: {} },
  list: ["a, b", ["c"]] }, build: "shoulder", day: "day-two" };

/** A link as somebody else may have made it. */
const linkWith = text => `#rig=${deflateRawSync(text).toString("base64url")}`;

test("a rig comes back as it was sent, whatever letters are in it", async () => {
  assert.deepEqual(await rigIn(await linkOf(RIG)), RIG);
});

test("the link is deflated JSON in letters that every address takes", async () => {
  const link = await linkOf(RIG);
  assert.match(link, /^#rig=[A-Za-z0-9_-]+$/);
  assert.deepEqual(JSON.parse(inflateRawSync(Buffer.from(link.slice(5), "base64url")).toString("utf8")),
    [1, "shoulder", "day-two", RIG.given]);
});

test("a link of another's making is read as well", async () => {
  assert.deepEqual(await rigIn(linkWith('[1,"rig","day",{"title":"x"}]')), { given: { title: "x" }, build: "rig", day: "day" });
});

test("what mail programs do to long addresses does no harm", async () => {
  const link = await linkOf(RIG), middle = Math.floor(link.length / 2);
  assert.deepEqual(await rigIn(`${link.slice(0, middle)}%0D%0A ${link.slice(middle)}`), RIG);
});

test("only the part behind the # that says so is a rig", () => {
  assert.deepEqual(["#rig=abc", "#answer", "", "#rig"].map(isRigLink), [true, false, false, false]);
});

const BROKEN = /not whole/, NO_RIG = /no rig/;
const REFUSED = /** @type {[string, () => string | Promise<string>, RegExp][]} */ ([
  ["cut short", async () => (await linkOf(RIG)).slice(0, -12), BROKEN],
  ["cut to nothing", () => "#rig=", BROKEN],
  ["letters that are none", () => "#rig=%%%", BROKEN],
  ["letters of another writing", () => "#rig=a.b!", BROKEN],
  ["no JSON", () => linkWith("camera"), BROKEN],
  ["no list", () => linkWith('{"given":{}}'), NO_RIG],
  ["another version", () => linkWith('[2,"rig","day",{}]'), /another version/],
  ["numbers for texts", () => linkWith('[1,"rig","day",{"a":1}]'), NO_RIG],
  ["nothing for a text", () => linkWith('[1,"rig","day",{"a":null}]'), NO_RIG],
  ["a list for a tree", () => linkWith('[1,"rig","day",["a"]]'), NO_RIG],
  ["a text for a tree", () => linkWith('[1,"rig","day","a"]'), NO_RIG],
  ["a name that is none", () => linkWith('[1,7,"day",{}]'), NO_RIG],
  ["groups without end", () => linkWith(`[1,"rig","day",${'{"a":'.repeat(5000)}"b"${"}".repeat(5000)}]`), NO_RIG],
  ["a hundred megabytes of nothing", () => linkWith(`[1,"rig","day",{"a":"${" ".repeat(1e8)}"}]`), /more than a rig/],
]);

for (const [what, link, words] of REFUSED) {
  test(`a link that is ${what} is refused in words`, async () => {
    await assert.rejects(async () => await rigIn(await link()),
      error => error instanceof LinkProblem && words.test(error.message));
  });
}

test("names that mean something to the language are names like any other", async () => {
  const { given } = await rigIn(linkWith('[1,"rig","day",{"__proto__":{"a":"1"}}]'));
  assert.deepEqual(Object.keys(given), ["__proto__"]);
  assert.equal(/** @type {any} */ ({}).a, undefined);
});
