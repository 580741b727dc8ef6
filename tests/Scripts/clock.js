// A clock that a test turns by hand: performance.now, setTimeout and requestAnimationFrame go by it and not by the machine's.

/** A frame takes this long, in milliseconds. */
export const FRAME = 16;

export class Clock {
  now = 0;
  #next = 1;
  /** @type {Map<number, { at: number, run: () => void }>} */
  #waiting = new Map();

  constructor() {
    const after = (run, milliseconds = 0) => {
      this.#waiting.set(this.#next, { at: this.now + milliseconds, run });
      return this.#next++;
    };
    Object.defineProperty(globalThis, "performance", { value: { now: () => this.now }, configurable: true, writable: true });
    globalThis.setTimeout = after;
    globalThis.clearTimeout = number => { this.#waiting.delete(number); };
    globalThis.requestAnimationFrame = run => after(run, FRAME);
  }

  /** Lets time pass; what falls due runs in its order. */
  pass(milliseconds) {
    const end = this.now + milliseconds;
    for (;;) {
      const [number, due] = [...this.#waiting].filter(([, one]) => one.at <= end).sort(([, a], [, b]) => a.at - b.at)[0] ?? [];
      if (number === undefined) break;
      this.#waiting.delete(number);
      this.now = Math.max(this.now, due.at);
      due.run();
    }
    this.now = end;
  }
}
