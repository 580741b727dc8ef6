// The page's end of one worker that holds the library, from its start to its end or its failure: requests one after the other,
// and lines. A worker that failed is not mended; whoever made it makes another.
import { problemOf } from "./failures.js";

/** @import { Failure, FromWorker, Reply, ToWorker } from "./messages.js" */

/**
 * `makeWorker`: gives a fresh worker; `library`: the address of the library's boot script; `patience`: after so many milliseconds
 * without an answer to a request it counts as lost; `loading`: hears how much of the library has come; `failed`: hears of its
 * failure, once.
 * @typedef {{ makeWorker: () => Worker, library: string, patience: number, loading?: (loaded: number, all: number) => void,
 *   failed?: (why: Failure, detail: string) => void }} WorkerOptions
 * @typedef {{ name: string, json: string, attachment?: ArrayBuffer }} Asked
 * @typedef {{ asked: Asked, resolve: (reply: Reply) => void, reject: (error: Error) => void }} Waiting
 */

export class LibraryWorker {
  #worker;
  #options;
  #last = 0;
  /** @type {Waiting[]} */
  #waiting = [];
  /** The one that is on its way. @type {(Waiting & { id: number }) | null} */
  #asking = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #watch;
  /** @type {Map<number, (message: any) => void>} */
  #lines = new Map();
  #isReady = false;
  #isOver = false;

  /** @param {WorkerOptions} options */
  constructor(options) {
    this.#options = options;
    this.#worker = options.makeWorker();
    this.#worker.onmessage = ({ data }) => this.#receive(data);
    // A script that did not come, or one that the browser can't read: what happens inside comes as a message.
    this.#worker.onerror = event => { event.preventDefault(); this.fail(this.#isReady ? "fault" : "load", event.message ?? ""); };
    this.#worker.onmessageerror = () => this.fail("fault", "");
    this.#post({ kind: "begin", library: options.library });
  }

  /** Whether it is of no use any more. */
  get isOver() { return this.#isOver; }

  /**
   * Asks one thing. Requests go one by one, so that one which is overtaken while it waits need not be answered.
   * @param {Asked} asked
   * @param {AbortSignal} [signal]
   * @returns {Promise<Reply>}
   */
  ask(asked, signal) {
    return new Promise((resolve, reject) => {
      if (this.#isOver) { reject(problemOf("fault", "")); return; }
      if (signal?.aborted) { reject(noLonger()); return; }
      const waiting = { asked, resolve, reject };
      this.#waiting.push(waiting);
      signal?.addEventListener("abort", () => {
        this.#waiting = this.#waiting.filter(other => other !== waiting);
        reject(noLonger());
      }, { once: true });
      this.#next();
    });
  }

  /**
   * Opens a line. `say` sends on it, `close` ends it.
   * @param {object} what
   * @param {(message: any) => void} hear gets what comes on it
   */
  open(what, hear) {
    const line = ++this.#last;
    this.#lines.set(line, hear);
    this.#post({ kind: "open", line, json: JSON.stringify(what) });
    return {
      say: (/** @type {object} */ message) => this.#post({ kind: "say", line, json: JSON.stringify(message) }),
      close: () => { this.#lines.delete(line); this.#post({ kind: "close", line }); },
    };
  }

  /** Ends it, whatever it does. What was asked of it is not answered. @param {Failure} [why] */
  end(why = "time") {
    if (this.#isOver) return;
    this.#isOver = true;
    clearTimeout(this.#watch);
    this.#worker.terminate();
    const lost = this.#asking ? [this.#asking, ...this.#waiting] : this.#waiting;
    this.#asking = null;
    this.#waiting = [];
    this.#lines.clear();
    for (const { reject } of lost) reject(problemOf(why, ""));
  }

  /** It is of no use any more: everybody who waits hears so. @param {Failure} why @param {string} detail */
  fail(why, detail) {
    if (this.#isOver) return;
    const lost = this.#asking ? [this.#asking, ...this.#waiting] : this.#waiting;
    this.#asking = null;
    this.#waiting = [];
    this.end();
    for (const { reject } of lost) reject(problemOf(why, detail));
    this.#options.failed?.(why, detail);
  }

  #next() {
    if (this.#asking || this.#isOver) return;
    const next = this.#waiting.shift();
    if (!next) return;
    const id = ++this.#last, { name, json, attachment } = next.asked;
    this.#asking = { ...next, id };
    this.#post({ kind: "ask", id, name, json, attachment }, attachment ? [attachment] : []);
    this.#watch = setTimeout(() => this.fail("time", name), this.#options.patience);
  }

  /** @param {FromWorker} message */
  #receive(message) {
    if (this.#isOver) return;
    if (message.kind === "told") this.#lines.get(message.line)?.(JSON.parse(textOf(message.message)));
    else if (message.kind === "failed") this.fail(message.why, message.detail);
    else if (message.kind === "loading") this.#options.loading?.(message.loaded, message.all);
    else if (message.kind === "ready") this.#isReady = true;
    else if (message.id === this.#asking?.id) {
      const { resolve } = this.#asking;
      clearTimeout(this.#watch);
      this.#asking = null;
      resolve(message.reply);
      this.#next();
    }
  }

  /** @param {ToWorker} message @param {Transferable[]} [transfer] */
  #post(message, transfer = []) { if (!this.#isOver) this.#worker.postMessage(message, transfer); }
}

/** UTF-8 as text. @param {ArrayBuffer} bytes */
export function textOf(bytes) { return new TextDecoder().decode(bytes); }

function noLonger() { return new DOMException("The answer is no longer wanted.", "AbortError"); }
