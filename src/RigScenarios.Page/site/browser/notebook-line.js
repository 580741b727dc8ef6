// A notebook's line where the library is in the browser: a worker of its own holds the notebook and what its cells have made. A
// run is overtaken or stopped between two cells; where a cell takes too long for that, the worker is ended and another begins.
import { wordsOf } from "./failures.js";
import { PATIENCE } from "./workers.js";

/** @import { Line, LineListener, LineMessage, RunMessage } from "../shared/requests.js" */
/** @import { LibraryWorker } from "./library-worker.js" */
/** @import { Failure } from "./messages.js" */
/** @import { Workers } from "./workers.js" */

/** How long a cell may go on after its run was stopped, and after it was overtaken, in milliseconds. */
const GRACE = { stop: 2_000, run: 10_000 };
const LAST_WORDS = new Set(["done", "failed", "problems", "stopped"]);

export class NotebookLine {
  /** @type {LibraryWorker | null} */
  #worker = null;
  /** @type {{ say(message: object): void } | null} */
  #line = null;
  /** The runs that have not had their last word, by their numbers. @type {Map<number, string>} */
  #going = new Map();
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #grace;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #watch;

  /** @param {Workers} workers @param {Line} line @param {LineListener} on */
  constructor(workers, line, on) {
    this.workers = workers;
    this.line = line;
    this.on = on;
    this.#open();
  }

  /** @param {RunMessage} message */
  send = message => {
    if (!this.#line) {
      // What is shown was made by a worker that is gone: a new one begins with what the page shows now.
      this.#open();
      return false;
    }
    const before = [...this.#going].filter(([, queue]) => queue === message.queue).map(([run]) => run);
    if (before.length > 0) this.#endAfter(GRACE[message.kind], before, message.kind === "stop");
    if (message.kind === "run") this.#going.set(message.run, message.queue);
    this.#line.say(message);
    this.#watchOver();
    return true;
  };

  #open() {
    this.#worker = this.workers.another((why, detail) => this.#broken(why, detail));
    this.#line = this.#worker.open(this.line, message => this.#receive(message));
  }

  /** @param {LineMessage} message */
  #receive(message) {
    if (LAST_WORDS.has(message.kind) && message.run !== undefined) {
      this.#going.delete(message.run);
      this.#watchOver();
    }
    this.on.message(message);
  }

  /** @param {number} milliseconds @param {number[]} runs those that are to end @param {boolean} isStop */
  #endAfter(milliseconds, runs, isStop) {
    clearTimeout(this.#grace);
    this.#grace = setTimeout(() => {
      if (!runs.some(run => this.#going.has(run))) return;
      this.#end(isStop ? "asked" : "overtaken");
      if (!isStop) this.#open();
    }, milliseconds);
  }

  #watchOver() {
    clearTimeout(this.#watch);
    if (this.#going.size > 0) this.#watch = setTimeout(() => this.#end("time"), PATIENCE);
  }

  /** @param {string} why */
  #end(why) {
    const going = [...this.#going];
    this.#leave();
    for (const [run, queue] of going) this.on.message({ kind: "stopped", queue, run, why });
  }

  #leave() {
    clearTimeout(this.#grace);
    clearTimeout(this.#watch);
    this.#going.clear();
    this.#worker?.end();
    this.#worker = this.#line = null;
  }

  /** @param {Failure} why @param {string} detail */
  #broken(why, detail) {
    this.#leave();
    this.on.broken(detail ? `${wordsOf(why)} (${detail})` : wordsOf(why));
  }
}
