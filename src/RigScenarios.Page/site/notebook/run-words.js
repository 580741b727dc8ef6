// What the controls and a screen reader are told of the runs of a notebook.

/** @import { RunQueue } from "../shared/run-queue.js" */

export class RunWords {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #afterMoment;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #speaking;

  /**
   * @param {{ strip: import("./strip.js").Strip | null, article: import("./article.js").Article | null,
   *   queues: Record<string, RunQueue> }} page
   * @param {HTMLElement} told what a screen reader hears
   */
  constructor(page, told) {
    this.page = page;
    this.told = told;
  }

  /** Words come only after a moment: a run that is done at once needs none. */
  working() {
    clearTimeout(this.#afterMoment);
    this.#afterMoment = setTimeout(() => {
      if (this.page.queues.now.running) this.page.strip?.tellRun("Working…", null, true);
    }, 400);
  }

  /** @param {number} milliseconds */
  done(milliseconds) {
    clearTimeout(this.#afterMoment);
    if (Object.values(this.page.queues).some(queue => queue.running)) return;
    this.page.strip?.tellRun(milliseconds >= 1000 ? `Done in ${(milliseconds / 1000).toFixed(1)} s.` : "");
  }

  /** A screen reader hears the answers once the reader has come to rest, and not at every step of a slider. */
  answers() {
    clearTimeout(this.#speaking);
    this.#speaking = setTimeout(() => {
      this.told.textContent = this.page.article?.answers("now").map(part => part.text).join(" ") ?? "";
    }, 900);
  }
}
