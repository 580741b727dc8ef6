// One version of the notebook as the server runs it: "now" or "pinned". Of the values wanted only the newest are run.

let lastRun = 0;

export class Lane {
  #send;
  #next = null;
  #timer = 0;
  #hasSentInFrame = false;
  #usual = 60;

  /** The run on its way, or null: {run, values, at, sent}. */
  running = null;

  constructor(name, send) {
    this.name = name;
    this.#send = send;
  }

  /**
   * Wants these values. `at`: the time of the reader's doing (performance.now()); `isSettled`: the reader let go, so these
   * are sent at once, even where a run that is overtaken by it would have been done soon.
   */
  want(values, at = performance.now(), isSettled = true) {
    this.#next = { values: { ...values }, at, isSettled };
    this.#pump();
  }

  stop() {
    this.#next = null;
    clearTimeout(this.#timer);
    if (this.running) this.#send({ kind: "stop", lane: this.name });
  }

  /** Forgets all runs: the line broke, or the lane is not wanted any more. */
  forget() {
    this.#next = this.running = null;
    clearTimeout(this.#timer);
  }

  /** A run came to its end, in whatever way. Gives it if it was the newest, else null. */
  ended(run, isDone) {
    const ended = this.running;
    if (ended?.run !== run) return null;
    this.running = null;
    if (isDone) this.#usual = performance.now() - ended.sent;
    this.#pump();
    return ended;
  }

  get isWaiting() { return this.#next !== null; }

  #pump() {
    clearTimeout(this.#timer);
    if (!this.#next || this.#hasSentInFrame) return;
    // While a slider is dragged a run may come to its end first, or the picture would stand still until the reader lets go.
    const patience = Math.min(400, Math.max(120, 1.5 * this.#usual));
    const age = this.running ? performance.now() - this.running.sent : Infinity;
    if (!this.#next.isSettled && age < patience) {
      this.#timer = setTimeout(() => this.#pump(), patience - age);
      return;
    }
    const { values, at } = this.#next, run = ++lastRun;
    this.#next = null;
    if (!this.#send({ kind: "run", lane: this.name, run, values })) return;
    this.running = { run, values, at, sent: performance.now() };
    this.#hasSentInFrame = true;
    const free = () => { if (this.#hasSentInFrame) { this.#hasSentInFrame = false; this.#pump(); } };
    requestAnimationFrame(free);
    // A page in the background gets no frames.
    setTimeout(free, 100);
  }
}
