// Starts the library in the browser, in a page or in a worker, and gives its door.
import { dotnet } from "./_framework/dotnet.js";
import { Unpacking } from "./unpack.js";

/**
 * What a request is answered. `body`: UTF-8 text where `contentType` is JSON, a file's bytes otherwise.
 * @typedef {{ status: number, contentType: string, body: Uint8Array<ArrayBuffer>, fileName: string | null }} DoorReply
 */

/**
 * The door: `ask` answers one request of requests.js; `open`, `say` and `close` are for lines, by a number of the caller's own;
 * `put`, `remove` and `read` are for files in the program's memory, such as "/own/my-rig.yaml".
 * @typedef {{
 *   ask(name: string, json: string, attachment?: Uint8Array): Promise<DoorReply>,
 *   open(id: number, json: string): void, say(id: number, json: string): void, close(id: number): void,
 *   put(path: string, bytes: Uint8Array): void, remove(path: string): void, read(path: string): Uint8Array | null,
 * }} Door
 */

const NOTHING = new Uint8Array();

/**
 * Loads and starts the library.
 * @param {(id: number, message: Uint8Array<ArrayBuffer>) => void} told gets what comes on lines: UTF-8 JSON, its own to keep
 * @param {(loaded: number, all: number) => void} [progress] told how many bytes of how many have come, where that is known
 * @returns {Promise<Door>}
 */
export async function start(told, progress) {
  const library = new Unpacking();
  library.read(packed(new URL("./library.bin", import.meta.url), progress));
  const runtime = await dotnet
    .withResourceLoader((_type, name) => name.endsWith(".wasm") ? library.file(name).then(responseOf) : null)
    .create();
  runtime.setModuleImports("door", {
    told: (/** @type {number} */ id, /** @type {any} */ view) => told(id, view.slice()),
    reply: (/** @type {number} */ status, /** @type {string} */ contentType, /** @type {any} */ view,
      /** @type {string | null} */ fileName) => ({ status, contentType, body: view.slice(), fileName }),
    report: (/** @type {string} */ words) => console.error(words),
  });
  const { RigScenarios: { Browser: { Door: door } } } = await runtime.getAssemblyExports("RigScenarios.Browser");
  door.Start();
  return {
    ask: (name, json, attachment = NOTHING) => door.Ask(name, json, attachment),
    open: door.OpenLine, say: door.Say, close: door.CloseLine,
    put: door.PutFile, remove: door.RemoveFile, read: door.ReadFile,
  };
}

/** What a server would send. @param {Uint8Array<ArrayBuffer>} bytes */
function responseOf(bytes) { return new Response(bytes, { headers: { "Content-Type": "application/wasm" } }); }

/**
 * The packed library, piece by piece as it comes.
 * @param {URL} address @param {((loaded: number, all: number) => void) | undefined} progress
 */
async function* packed(address, progress) {
  const response = await fetch(address);
  if (!response.ok || !response.body) throw new Error(`${address.pathname} can't be had (${response.status}).`);
  // A server that compresses the file anew tells the size of what it sends.
  const all = response.headers.has("Content-Encoding") ? 0 : Number(response.headers.get("Content-Length"));
  const reader = response.body.getReader();
  let loaded = 0;
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    loaded += piece.value.byteLength;
    if (progress && all) progress(loaded, all);
    yield piece.value;
  }
}
