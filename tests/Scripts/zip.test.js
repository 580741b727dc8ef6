// The one file that the library in a browser comes in: RigScenarios.Browser/wwwroot/zip.js.
import assert from "node:assert/strict";
import { test } from "node:test";
import { crc32, deflateRawSync } from "node:zlib";
import { entriesOf, responseOf } from "../../src/RigScenarios.Browser/wwwroot/zip.js";

const LOCAL = 0x04034b50, ENTRY = 0x02014b50, END = 0x06054b50, STORED = 0, DEFLATED = 8;

/** The fields of a header one after the other: [bytes, value]. Layout: APPNOTE.TXT of the zip format, 4.3.7, 4.3.12, 4.3.16. */
function header(...fields) {
  const size = fields.reduce((sum, [bytes]) => sum + bytes, 0), buffer = Buffer.alloc(size);
  let at = 0;
  for (const [bytes, value] of fields) { buffer.writeUIntLE(value, at, bytes); at += bytes; }
  return buffer;
}

/** A zip file as its specification has it. `extra`: so many bytes of a field that only the header before the data has. */
function zipOf(files, { extra = 0, comment = "" } = {}) {
  const pieces = [], list = [];
  let at = 0;
  for (const [name, text, method] of files) {
    const whole = Buffer.from(text), data = method === DEFLATED ? deflateRawSync(whole) : whole, title = Buffer.from(name);
    const same = /** @type {any} */ ([[2, 20], [2, 0], [2, method], [4, 0], [4, crc32(whole)], [4, data.length],
      [4, whole.length], [2, title.length]]);
    pieces.push(header([4, LOCAL], ...same, [2, extra]), title, Buffer.alloc(extra), data);
    list.push(header([4, ENTRY], [2, 20], ...same, [2, 0], [2, 0], [2, 0], [2, 0], [4, 0], [4, at]), title);
    at += 30 + title.length + extra + data.length;
  }
  const size = list.reduce((sum, piece) => sum + piece.length, 0);
  const end = header([4, END], [2, 0], [2, 0], [2, files.length], [2, files.length], [4, size], [4, at], [2, comment.length]);
  return Uint8Array.from(Buffer.concat([...pieces, ...list, end, Buffer.from(comment)])).buffer;
}

const FILES = [["a.wasm", "one and one and one and one", DEFLATED], ["Grüße.txt", "two", STORED], ["empty", "", STORED]];

for (const [what, options] of /** @type {any} */ ([["plain", {}], ["with a field before the data", { extra: 28 }],
  ["with a comment at its end", { comment: "made by hand" }]])) {
  test(`every file of a zip file comes out as it went in: ${what}`, async () => {
    const entries = entriesOf(zipOf(FILES, options));
    assert.deepEqual([...entries.keys()], FILES.map(([name]) => name));
    for (const [name, text] of FILES) assert.equal(await responseOf(entries, name, "text/plain").text(), text);
  });
}

test("a file is handed out with its type, as a server would", () => {
  const response = responseOf(entriesOf(zipOf(FILES)), "a.wasm", "application/wasm");
  assert.equal(response.headers.get("Content-Type"), "application/wasm");
});

test("what is no zip file, or was cut off, is said", () => {
  assert.throws(() => entriesOf(new ArrayBuffer(3)), /no zip file/);
  assert.throws(() => entriesOf(zipOf(FILES).slice(0, -30)), /no zip file/);
});

test("a file that is not in it is named", () => {
  assert.throws(() => responseOf(entriesOf(zipOf(FILES)), "b.wasm", "application/wasm"), /b\.wasm is missing/);
});
