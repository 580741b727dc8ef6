// What a page and a worker that holds the library say to each other. Only types stand here: a page posts what is `ToWorker`, a
// worker posts what is `FromWorker`. Requests and lines are those of shared/requests.js; they travel as JSON text.

/**
 * What a page posts. `begin`: load and start the library, from this address of its boot script; once, before all else. `ask`: one
 * request with the page's own number; `attachment`: a file that belongs to it. `open`, `say`, `close`: a line, by the page's own
 * number for it.
 * @typedef {{ kind: "begin", library: string }
 *   | { kind: "ask", id: number, name: string, json: string, attachment?: ArrayBuffer }
 *   | { kind: "open", line: number, json: string }
 *   | { kind: "say", line: number, json: string }
 *   | { kind: "close", line: number }} ToWorker
 */

/**
 * What a worker posts. `loading`: so much of so much has come, in bytes; `ready`: it answers from now on; `failed`: the library
 * can't be started or broke, in the words of whatever failed, and the worker is of no use any more. `reply`: what a request is
 * answered; `told`: what comes on a line, as UTF-8 JSON.
 * @typedef {{ kind: "loading", loaded: number, all: number }
 *   | { kind: "ready" }
 *   | { kind: "failed", why: Failure, detail: string }
 *   | { kind: "reply", id: number, reply: Reply }
 *   | { kind: "told", line: number, message: ArrayBuffer }} FromWorker
 */

/**
 * Why a worker is of no use: its files did not come (`load`), the browser can't run it (`start`), its memory is full (`memory`),
 * it broke while it worked (`fault`), it took too long (`time`; only the page says so).
 * @typedef {"load" | "start" | "memory" | "fault" | "time"} Failure
 */

/**
 * What a request is answered: JSON text or a file's bytes, by its content type; a status as HTTP has it.
 * @typedef {{ status: number, contentType: string, body: ArrayBuffer, fileName: string | null }} Reply
 */

/**
 * The door of the library, as its boot script gives it. `put`, `remove`, `read`: files in the library's own memory.
 * @typedef {{ status: number, contentType: string, body: Uint8Array<ArrayBuffer>, fileName: string | null }} DoorReply
 * @typedef {{
 *   ask(name: string, json: string, attachment?: Uint8Array): Promise<DoorReply>,
 *   open(id: number, json: string): void, say(id: number, json: string): void, close(id: number): void,
 *   put(path: string, bytes: Uint8Array): void, remove(path: string): void, read(path: string): Uint8Array | null,
 * }} Door
 */

export {};
