// The one file that the library in a browser comes in: RigScenarios.Browser/wwwroot/lzma.js and unpack.js. What is unpacked here
// was packed by another program: see packed/README.txt.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { LzmaDecoder } from "../../src/RigScenarios.Browser/wwwroot/lzma.js";
import { Unpacking } from "../../src/RigScenarios.Browser/wwwroot/unpack.js";

const packed = name => new Uint8Array(readFileSync(new URL(`packed/${name}.lzma`, import.meta.url)));

/** So many invented words, of some hundreds. "Minimal standard" numbers: S. K. Park, K. W. Miller, 1988, table 1. */
function words(count) {
  let seed = 1;
  const next = below => { seed = seed * 16807 % 2147483647; return seed % below; };
  const known = Array.from({ length: 400 }, () =>
    Array.from({ length: 2 + next(9) }, () => String.fromCharCode(97 + next(26))).join(""));
  return Buffer.from(Array.from({ length: count }, () => known[next(400)]).join(" "));
}

function unpacked(bytes, piece) {
  const decoder = new LzmaDecoder();
  for (let at = 0; at < bytes.length; at += piece) decoder.take(bytes.subarray(at, at + piece));
  decoder.end();
  return Buffer.from(decoder.output);
}

async function* inPieces(bytes, piece) {
  for (let at = 0; at < bytes.length; at += piece) yield bytes.subarray(at, at + piece);
}

for (const name of ["words-3-0-2", "words-0-2-0"]) {
  for (const piece of [1, 7, 1000, 1 << 20]) {
    test(`what another program packed comes out as it went in: ${name}, ${piece} bytes at a time`, () => {
      assert.deepEqual(unpacked(packed(name), piece), words(4000));
    });
  }
}

test("what can be unpacked of what came is there before the rest comes", () => {
  const bytes = packed("words-3-0-2"), decoder = new LzmaDecoder(), half = bytes.length >> 1;
  decoder.take(bytes.subarray(0, half));
  assert.ok(!decoder.isWhole && decoder.at > words(4000).length / 3, `${decoder.at} bytes`);
  assert.deepEqual(Buffer.from(decoder.output.subarray(0, decoder.at)), words(4000).subarray(0, decoder.at));
});

test("what is cut off is said, wherever it is cut", () => {
  for (const length of [0, 1, 13, 20, 33, 100, 1000, packed("words-3-0-2").length - 200])
    assert.throws(() => unpacked(packed("words-3-0-2").subarray(0, length), 50), /cut off/, `at ${length}`);
});

test("what is damaged never becomes the same text, and never runs on", () => {
  const whole = words(4000);
  let told = 0;
  for (let at = 0; at < 400; at++) {
    const bytes = packed("words-3-0-2");
    bytes[14 + at] ^= 0x5a;
    try {
      assert.notDeepEqual(unpacked(bytes, 4096), whole);
    } catch (error) {
      assert.match(error.message, /damaged|cut off/);
      told++;
    }
  }
  assert.ok(told > 40, `${told} told`);
});

test("a header of nothing known is said", () => {
  assert.throws(() => unpacked(new Uint8Array(100).fill(255), 100), /header/);
});

test("each file of the archive is handed out, whoever asked before or after it came", async () => {
  const library = new Unpacking(), before = library.file("b.txt");
  await library.read(inPieces(packed("files"), 11));
  assert.equal(Buffer.from(await before).toString(), "two\n");
  assert.equal(Buffer.from(await library.file("a.txt")).toString(), "one and one and one and one\n");
  assert.deepEqual(Buffer.from(await library.file("words.txt")), words(900));
  assert.equal((await library.file("empty.txt")).length, 0);
});

test("a file is there while the rest still comes", async () => {
  const library = new Unpacking(), bytes = packed("files");
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
  await library.read(inPieces(packed("files"), 1000));
  await before;
  await assert.rejects(library.file("d.txt"), /^Error: d\.txt can't be had: It is not in the packed file\.$/);
});

test("why nothing came is told with the file", async () => {
  const library = new Unpacking(), why = new Error("no network");
  // biome-ignore lint/correctness/useYield: it fails before the first.
  await library.read((async function* () { throw why; })());
  await assert.rejects(library.file("a.txt"), { message: "a.txt can't be had: no network", cause: why });
});
