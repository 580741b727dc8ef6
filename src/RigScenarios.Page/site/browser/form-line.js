// The form's line where the library is in the browser. A run there can't be stopped from outside, so it is parted: one worker
// runs until there is an answer, and of the runs that wait for it only the newest is run. It tells the verdict before it makes
// the charts, so that the page draws the one while the worker makes the others. What takes long after the answer goes to a
// second worker, once the reader rests; the next change ends that worker.
import { wordsOf } from "./failures.js";
import { PATIENCE } from "./workers.js";

/** @import { LineListener, LineMessage, RunMessage } from "../shared/requests.js" */
/** @import { LibraryWorker } from "./library-worker.js" */
/** @import { Failure } from "./messages.js" */
/** @import { Workers } from "./workers.js" */

/** While somebody drags or types there is no use in what comes after an answer, in milliseconds. */
const REST = 300;
/** In gigabytes, rounded, and not more than 8; browsers that don't tell count as having enough (Device Memory, W3C). */
const HAS_LITTLE_MEMORY = (/** @type {any} */ (globalThis.navigator)?.deviceMemory ?? 8) <= 2;
const LAST_WORDS = new Set(["done", "failed", "problems", "stopped"]);
const LINE = { kind: "rig" };
const QUEUE = "now";

/** @typedef {RunMessage & { kind: "run" }} Run */
/** @typedef {{ run: Run, isStopped: boolean, hasMore: boolean }} Asked stopped: nobody wants to hear of it */

export class FormLine {
  /** @type {{ say(message: object): void, close(): void } | null} */
  #line = null;
  /** At the worker that answers. @type {Asked | null} */
  #asked = null;
  /** The newest, which waits for that. @type {Run | null} */
  #waiting = null;
  /** After its answer: at first it waits for the reader to rest. @type {Run | null} */
  #resting = null;
  /** @type {LibraryWorker | null} */
  #long = null;
  #isLongBusy = false;
  /** Since the worker that answers was started. */
  #hasAnswered = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #watch;

  /** @param {Workers} workers @param {LineListener} on */
  constructor(workers, on) {
    this.workers = workers;
    this.on = on;
    workers.onFailed((why, detail) => this.#broken(why, detail));
  }

  /** @param {RunMessage} message */
  send = message => {
    if (message.kind === "run" && message.queue === QUEUE) this.#want(/** @type {Run} */ (message));
    else if (message.kind === "stop" && message.queue === QUEUE) this.#stop("asked");
    else this.#open().say(message);
    return true;
  };

  /** @param {Run} run */
  #want(run) {
    this.#stopResting("overtaken");
    if (this.#waiting) this.#tellStopped(this.#waiting, "overtaken");
    this.#waiting = null;
    if (this.#asked) this.#waiting = run; else this.#begin(run);
  }

  /** @param {string} why */
  #stop(why) {
    this.#stopResting(why);
    if (this.#waiting) this.#tellStopped(this.#waiting, why);
    this.#waiting = null;
    if (this.#asked && !this.#asked.isStopped) {
      this.#asked.isStopped = true;
      this.#tellStopped(this.#asked.run, why);
    }
  }

  /** @param {Run} run */
  #begin(run) {
    this.#asked = { run, isStopped: false, hasMore: false };
    this.#open().say({ ...run, until: "answer", parts: "later" });
    clearTimeout(this.#watch);
    this.#watch = setTimeout(() => this.#tooLong(), PATIENCE);
  }

  #open() {
    this.#line ??= this.workers.answering().open(LINE, message => this.#receive(message));
    return this.#line;
  }

  /** @param {LineMessage} message */
  #receive(message) {
    const asked = this.#asked;
    if (message.queue !== QUEUE || message.run !== asked?.run.run || !asked) { this.on.message(message); return; }
    const isLast = LAST_WORDS.has(message.kind);
    if (message.kind === "answer") {
      this.#hasAnswered = true;
      // Of a rig without an answer nothing more is to be found.
      asked.hasMore = message.first !== undefined;
    }
    if (isLast) this.#ended();
    if (asked.isStopped) return;
    if (!isLast || message.kind !== "done") this.on.message(message);
    else if (this.#asked) this.#tellStopped(asked.run, "overtaken");
    else if (asked.hasMore) this.#rest(asked.run);
    else this.on.message(message);
  }

  #ended() {
    clearTimeout(this.#watch);
    this.#asked = null;
    const next = this.#waiting;
    this.#waiting = null;
    if (next) this.#begin(next);
  }

  #tooLong() {
    const asked = this.#asked;
    this.workers.answering().end();
    this.#line = null;
    if (asked && !asked.isStopped) this.#tellStopped(asked.run, "time");
    this.#ended();
  }

  /** @param {Run} run */
  #rest(run) {
    this.#resting = run;
    this.#timer = setTimeout(() => this.#goOn(run), REST);
  }

  /** @param {Run} run */
  #goOn(run) {
    if (!this.#long || this.#long.isOver) this.#long = this.workers.another(() => this.#longFailed());
    const line = this.#long.open(LINE, message => {
      if (this.#resting !== run || message.run !== run.run) return;
      if (LAST_WORDS.has(message.kind)) {
        clearTimeout(this.#timer);
        this.#resting = null;
        this.#isLongBusy = false;
        // Where memory is short it is given back.
        if (HAS_LITTLE_MEMORY) this.#long?.end(); else line.close();
      }
      this.on.message(message);
    });
    this.#isLongBusy = true;
    line.say({ ...run, from: "answer" });
    this.#timer = setTimeout(() => this.#stopResting("time"), PATIENCE);
  }

  /** @param {string} why */
  #stopResting(why) {
    const run = this.#resting;
    if (!run) return;
    clearTimeout(this.#timer);
    this.#resting = null;
    // One that is ready and idle is kept for the next time.
    if (this.#isLongBusy) this.#long?.end();
    this.#isLongBusy = false;
    this.#tellStopped(run, why);
  }

  // The answer stands; what would have come after it is not found, and the page says so.
  #longFailed() {
    const run = this.#resting;
    clearTimeout(this.#timer);
    this.#resting = null;
    this.#isLongBusy = false;
    if (run) this.#tellStopped(run, "memory");
  }

  /** @param {Failure} why @param {string} detail */
  #broken(why, detail) {
    clearTimeout(this.#watch);
    this.#stopResting("asked");
    this.#asked = this.#waiting = this.#line = null;
    this.on.broken(detail ? `${wordsOf(why)} (${detail})` : wordsOf(why));
    // Once more by itself, for what has worked before; then with the reader's next change, or it would break for ever.
    if (!this.#hasAnswered) return;
    this.#hasAnswered = false;
    this.on.open?.();
  }

  /** @param {Run} run @param {string} why */
  #tellStopped({ queue, run }, why) { this.on.message({ kind: "stopped", queue, run, why }); }
}
