// The worker's end of the conversation: starts the library, gives it the reader's own files, and answers what the page posts.
import { detailOf, failureOf } from "./failures.js";

/** @import { Door, FromWorker, ToWorker } from "./messages.js" */
/** @import { OwnFiles } from "./own-files.js" */

/** Where the library looks for own files. */
const FOLDER = "/own/";
/** The requests that write an own file. */
const SAVES = new Set(["save-file", "save-rig"]);

/**
 * @typedef {{
 *   post: (message: FromWorker, transfer?: Transferable[]) => void,
 *   load: (library: string, told: (line: number, message: Uint8Array<ArrayBuffer>) => void,
 *     progress: (loaded: number, all: number) => void) => Promise<Door>,
 *   own: Pick<OwnFiles, "all" | "get" | "put" | "onChanged">,
 * }} Means
 */

export class LibraryEnd {
  /** @type {Promise<Door | null>} */
  #door = Promise.resolve(null);
  #hasFailed = false;

  /** @param {Means} means */
  constructor(means) { this.means = means; }

  /** Takes what the page posted; one after the other, as they came. @param {ToWorker} message */
  async take(message) {
    if (message.kind === "begin") {
      this.#door = this.#begin(message.library);
      return;
    }
    const door = await this.#door;
    if (!door || this.#hasFailed) return;
    try {
      if (message.kind === "ask") await this.#ask(door, message);
      else if (message.kind === "open") door.open(message.line, message.json);
      else if (message.kind === "say") door.say(message.line, message.json);
      else door.close(message.line);
    } catch (error) {
      this.#failed(error, "fault");
    }
  }

  /** @param {unknown} error @param {import("./messages.js").Failure} otherwise */
  #failed(error, otherwise) {
    if (this.#hasFailed) return;
    this.#hasFailed = true;
    this.means.post({ kind: "failed", why: failureOf(error, otherwise), detail: detailOf(error) });
  }

  /** @param {string} library */
  async #begin(library) {
    const { load, own, post } = this.means;
    try {
      // Where the browser keeps nothing there are no own files; saving one says so.
      const files = own.all().catch(() => []);
      const door = await load(library, (line, message) => {
        const [bytes, buffer] = ownBuffer(message);
        post({ kind: "told", line, message: bytes }, buffer);
      }, (loaded, all) => post({ kind: "loading", loaded, all }));
      for (const { name, bytes } of await files) door.put(FOLDER + name, bytes);
      own.onChanged(name => this.#renew(door, name));
      post({ kind: "ready" });
      return door;
    } catch (error) {
      this.#failed(error, "start");
      return null;
    }
  }

  /** As the browser keeps it now: another window may have written it. @param {Door} door @param {string} name */
  async #renew(door, name) {
    const bytes = await this.means.own.get(name).catch(() => undefined);
    if (bytes) door.put(FOLDER + name, bytes);
    else if (bytes === null) door.remove(FOLDER + name);
  }

  /** @param {Door} door @param {ToWorker & { kind: "ask" }} asked */
  async #ask(door, { id, name, json, attachment }) {
    const isSave = SAVES.has(name);
    if (isSave) await this.#renew(door, fileName(JSON.parse(json).name));
    let reply = await door.ask(name, json, attachment ? new Uint8Array(attachment) : undefined);
    if (isSave && reply.status === 200) reply = await this.#keep(door, reply);
    const [body, buffer] = ownBuffer(reply.body);
    this.means.post({ kind: "reply", id, reply: { ...reply, body } }, buffer);
  }

  /**
   * A file that was saved is kept by the browser before anybody is told so. What it doesn't keep isn't saved.
   * @param {Door} door
   * @param {import("./messages.js").DoorReply} reply
   */
  async #keep(door, reply) {
    const name = fileName(JSON.parse(new TextDecoder().decode(reply.body)).id), bytes = door.read(FOLDER + name);
    try {
      if (bytes) await this.means.own.put(name, bytes);
      return reply;
    } catch (error) {
      await this.#renew(door, name);
      return refused(`This browser did not keep it (${detailOf(error)}). Save it as a file of your device, or take a link.`);
    }
  }
}

/** The name without the folder. @param {unknown} id */
function fileName(id) { return String(id ?? "").replace(/^.*\//, ""); }

/** @param {string} text @returns {import("./messages.js").DoorReply} */
function refused(text) {
  const body = new TextEncoder().encode(JSON.stringify({ problems: [{ text }] }));
  return { status: 507, contentType: "application/json", body, fileName: null };
}

/** Bytes as a buffer that can be given away. @param {Uint8Array<ArrayBuffer>} bytes @returns {[ArrayBuffer, ArrayBuffer[]]} */
function ownBuffer(bytes) {
  const buffer = bytes.byteLength === bytes.buffer.byteLength ? bytes.buffer : bytes.slice().buffer;
  return [buffer, [buffer]];
}
