// The one file that the library in a browser comes in: RigScenarios.Browser/wwwroot/unpack.js. What is unpacked here was packed
// by other programs: see packed/README.txt.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { Unpacking } from "../../src/RigScenarios.Browser/wwwroot/unpack.js";

const packed = () => new Uint8Array(readFileSync(new URL("packed/files.zst", import.meta.url)));

/** So many invented words, of some hundreds. "Minimal standard" numbers: S. K. Park, K. W. Miller, 1988, table 1. */
function words(count) {
  let seed = 1;
  const next = below => { seed = seed * 16807 % 2147483647; return seed % below; };
  const known = Array.from({ length: 400 }, () =>
    Array.from({ length: 2 + next(9) }, () => String.fromCharCode(97 + next(26))).join(""));
  return Buffer.from(Array.from({ length: count }, () => known[next(400)]).join(" "));
}

async function* inPieces(bytes, piece) {
  for (let at = 0; at < bytes.length; at += piece) yield bytes.subarray(at, at + piece);
}

test("what is cut off is said, wherever it is cut", async () => {
  const bytes = packed();
  for (const length of [0, 1, 4, 13, 20, 33, 100, 1000, bytes.length - 200, bytes.length - 6, bytes.length - 1]) {
    const library = new Unpacking(), last = library.file("z.txt");
    await Promise.all([library.read(inPieces(bytes.subarray(0, length), 50)), assert.rejects(last, /cut off/, `at ${length}`)]);
  }
});

test("what is damaged is said, or is not taken for the same, and never runs on", async () => {
  let told = 0;
  for (let at = 0; at < packed().length; at += 7) {
    const bytes = packed(), library = new Unpacking(), text = library.file("words.txt");
    bytes[at] ^= 0x5a;
    const [, found] = await Promise.allSettled([library.read(inPieces(bytes, 4096)), text]);
    if (found.status === "rejected") {
      assert.match(found.reason.message, /damaged|cut off|not in the packed file/);
      told++;
    }
  }
  assert.ok(told > 20, `${told} told`);
});

for (const piece of [1, 11, 1000, 1 << 20]) {
  test(`each file comes out as it went in, whoever asked before or after it came: ${piece} bytes at a time`, async () => {
    const library = new Unpacking(), before = library.file("b.txt");
    await library.read(inPieces(packed(), piece));
    assert.equal(Buffer.from(await before).toString(), "two\n");
    assert.equal(Buffer.from(await library.file("a.txt")).toString(), "one and one and one and one\n");
    assert.deepEqual(Buffer.from(await library.file("words.txt")), words(900));
    assert.equal((await library.file("empty.txt")).length, 0);
  });
}

test("a file is there while the rest still comes", async () => {
  const library = new Unpacking(), bytes = packed();
  let go = () => {};
  const rest = new Promise(done => { go = () => done(undefined); });
  const reading = library.read((async function* () {
    yield bytes.subarray(0, bytes.length - 300);
    await rest;
    yield bytes.subarray(bytes.length - 300);
  })());
  assert.equal((await library.file("b.txt")).length, 4);
  go();
  await reading;
});

test("a file that is not in it is named, whoever asked before or after", async () => {
  const library = new Unpacking(), before = assert.rejects(library.file("c.txt"), /c\.txt can't be had/);
  await library.read(inPieces(packed(), 1000));
  await before;
  await assert.rejects(library.file("d.txt"), /^Error: d\.txt can't be had: It is not in the packed file\.$/);
});

test("why nothing came is told with the file", async () => {
  const library = new Unpacking(), why = new Error("no network");
  // biome-ignore lint/correctness/useYield: it fails before the first.
  await library.read((async function* () { throw why; })());
  await assert.rejects(library.file("a.txt"), { message: "a.txt can't be had: no network", cause: why });
});
