// The runs that a page asks the program for, one queue for each version of what is shown. Of those wanted only the newest is run.

/** @import { Send } from "./requests.js" */

/**
 * What a run is about, and a run on its way. `at`: the time of the reader's doing; `sent`: when it was sent (performance.now());
 * `isAnswered`: what the reader sees is there, and the rest may be overtaken.
 * @typedef {{ [field: string]: any }} Content
 * @typedef {{ run: number, content: Content, at: number, sent: number, isAnswered: boolean }} Run
 */

let lastRun = 0;

export class RunQueue {
  #send;
  /** @type {{ content: Content, at: number, isSettled: boolean } | null} */
  #next = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  #hasSentInFrame = false;
  #usual = 60;

  /** The run on its way, or null. @type {Run | null} */
  running = null;

  /**
   * @param {string} name the queue's name at the program
   * @param {Send} send sends on the page's line: see program.js
   */
  constructor(name, send) {
    this.name = name;
    this.#send = send;
  }

  /**
   * Wants a run with this content. `at`: the time of the reader's doing (performance.now()); `isSettled`: the reader let go, so
   * it is sent at once, even where a run that is overtaken by it would have been done soon.
   * @param {Content} content
   */
  want(content, at = performance.now(), isSettled = true) {
    this.#next = { content, at, isSettled };
    this.#pump();
  }

  stop() {
    this.#next = null;
    clearTimeout(this.#timer);
    if (this.running) this.#send({ kind: "stop", queue: this.name });
  }

  /** Forgets all runs: the line broke, or the queue is not wanted any more. */
  forget() {
    this.#next = null;
    this.running = null;
    clearTimeout(this.#timer);
  }

  /**
   * A run has told what the reader sees; the rest of it may be overtaken. Gives it if it is the newest, else null.
   * @param {number | undefined} run
   * @returns {Run | null}
   */
  answered(run) {
    const answered = this.running;
    if (answered?.run !== run || !answered) return null;
    answered.isAnswered = true;
    this.#usual = performance.now() - answered.sent;
    this.#pump();
    return this.running === answered ? answered : null;
  }

  /**
   * A run came to its end, in whatever way. Gives it if it was the newest, else null.
   * @param {number | undefined} run
   * @param {boolean} isDone
   * @returns {Run | null}
   */
  ended(run, isDone) {
    const ended = this.running;
    if (ended?.run !== run || !ended) return null;
    this.running = null;
    if (isDone && !ended.isAnswered) this.#usual = performance.now() - ended.sent;
    this.#pump();
    return ended;
  }

  /** Whether something newer is wanted than the run on its way. */
  get isWaiting() { return this.#next !== null; }

  #pump() {
    clearTimeout(this.#timer);
    if (!this.#next || this.#hasSentInFrame) return;
    // While a slider is dragged a run may come to its end first, or the picture would stand still until the reader lets go.
    const patience = Math.min(400, Math.max(120, 1.5 * this.#usual));
    const age = this.running && !this.running.isAnswered ? performance.now() - this.running.sent : Infinity;
    if (!this.#next.isSettled && age < patience) {
      this.#timer = setTimeout(() => this.#pump(), patience - age);
      return;
    }
    const { content, at } = this.#next, run = ++lastRun;
    this.#next = null;
    if (!this.#send({ ...content, kind: "run", queue: this.name, run })) return;
    this.running = { run, content, at, sent: performance.now(), isAnswered: false };
    this.#hasSentInFrame = true;
    const free = () => { if (this.#hasSentInFrame) { this.#hasSentInFrame = false; this.#pump(); } };
    requestAnimationFrame(free);
    // A page in the background gets no frames.
    setTimeout(free, 100);
  }
}

/**
 * Why a run was stopped before it was done, in words; nothing where a newer one took its place.
 * @type {Record<string, string>}
 */
export const WHY_STOPPED = {
  asked: "Stopped. What is shown pale is from before.",
  time: "Stopped: it took longer than a run may. Try a smaller range.",
  memory: "Stopped: it needed more memory than a run may. Try a smaller range.",
};
