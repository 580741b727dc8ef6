// Rigs side by side: up to four, one of them in the form. Knows nothing of pages.

/**
 * @typedef {{ name: string, given: any, view: any, answer: any, history: any }} Version `answer`: what was last answered to it,
 *   as far as it is compared; null before
 */

/** The most that stand side by side. */
export const mostVersions = 4;

export class Versions {
  /** @type {Version[]} */
  all = [];
  now = 0;

  /** Whether there is anything to compare. */
  get isBegun() { return this.all.length > 0; }

  get present() { return this.all[this.now] ?? null; }

  get hasRoom() { return this.all.length < mostVersions; }

  /**
   * A copy of the rig in the form comes beside it, and is what is changed from now on.
   * @param {{ given: any, view: any }} shown the rig in the form
   * @param {any} answer
   * @param {any} history the steps back of the rig in the form; the copy begins without
   * @param {any} fresh no steps back
   */
  duplicate({ given, view }, answer, history, fresh) {
    if (!this.hasRoom) return;
    if (!this.isBegun) this.all = [{ name: "A", given, view, answer, history }];
    this.keep({ given, view }, history);
    this.all.splice(this.now + 1, 0, { name: this.#freeName(), given, view, answer, history: fresh });
    this.now++;
  }

  /**
   * Another rig comes beside those that there are, and is the one in the form from now on.
   * @param {{ given: any, view: any }} shown
   */
  add({ given, view }) {
    if (!this.hasRoom) return;
    this.all.push({ name: this.#freeName(), given, view, answer: null, history: null });
    this.now = this.all.length - 1;
  }

  /** What is in the form now stands with the others. @param {{ given: any, view: any }} shown @param {any} history */
  keep({ given, view }, history) { Object.assign(this.present ?? {}, { given, view, history }); }

  /** What was answered to the rig in the form. @param {any} answer */
  answered(answer) { if (this.present) this.present.answer = answer; }

  /** Another one comes into the form. @param {number} at */
  turnTo(at) { if (this.all[at]) this.now = at; }

  /** One is not kept any longer; true if it was the one in the form, and another is now. @param {number} at */
  forget(at) {
    if (!this.all[at]) return false;
    this.all.splice(at, 1);
    const wasNow = at === this.now;
    if (at < this.now || this.now >= this.all.length) this.now = Math.max(0, this.now - 1);
    // One alone is nothing to compare with.
    return wasNow;
  }

  /** As text can keep it: without the steps back. */
  toKeep() {
    return this.isBegun ? { now: this.now, all: this.all.map(({ name, given, view, answer }) => ({ name, given, view, answer })) }
      : null;
  }

  /** @param {any} kept what `toKeep` gave @param {() => any} fresh no steps back */
  bringBack(kept, fresh) {
    const all = Array.isArray(kept?.all)
      ? kept.all.filter((/** @type {any} */ version) => version?.given && version.view?.things) : [];
    this.all = all.slice(0, mostVersions).map((/** @type {any} */ version) => ({ ...version, history: fresh() }));
    this.now = Math.max(0, Math.min(this.all.length - 1, Number(kept?.now) || 0));
  }

  #freeName() { return ["A", "B", "C", "D"].find((name) => !this.all.some((version) => version.name === name)) ?? "?"; }
}
