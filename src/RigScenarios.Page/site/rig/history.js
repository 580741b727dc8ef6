// Back and forth: how the rig stood before each step. Knows nothing of what a state is but how to tell whether two are the same.

/** @template State @typedef {{ state: State, name: string }} Step */

/** @template State */
export class History {
  /** @type {Step<State>[]} */
  #past = [];
  /** @type {Step<State>[]} */
  #future = [];
  /** @type {string | null} */
  #key = null;

  /**
   * @param {(one: State, other: State) => boolean} isSame
   * @param {number} most how many steps back are kept
   */
  constructor(isSame, most = 100) {
    this.isSame = isSame;
    this.most = most;
  }

  /** What a step back would take back, in words; null if there is none. */
  get last() { return this.#past.at(-1)?.name ?? null; }

  /** What a step forth would bring again. */
  get next() { return this.#future.at(-1)?.name ?? null; }

  /**
   * A change is about to be made. Changes one after the other with one key (typing in one field, one drag) are one step.
   * @param {State} before
   * @param {string} name
   * @param {string | null} key
   */
  note(before, name, key = null) {
    this.#future = [];
    const goesOn = key !== null && key === this.#key && this.#past.length > 0;
    this.#key = key;
    if (goesOn) return;
    this.#past.push({ state: before, name });
    if (this.#past.length > this.most) this.#past.shift();
  }

  /** The next change begins a step of its own, whatever its key. */
  close() { this.#key = null; }

  /**
   * The state a step back; null if there is none.
   * @param {State} present
   * @returns {State | null}
   */
  undo(present) { return this.#go(this.#past, this.#future, present); }

  /**
   * The state a step forth; null if there is none.
   * @param {State} present
   * @returns {State | null}
   */
  redo(present) { return this.#go(this.#future, this.#past, present); }

  // What was typed and taken back in the field itself left a step that changes nothing: it is passed over.
  /** @param {Step<State>[]} from @param {Step<State>[]} to @param {State} present */
  #go(from, to, present) {
    this.#key = null;
    for (let step = from.pop(); step; step = from.pop()) {
      if (this.isSame(step.state, present)) continue;
      to.push({ state: present, name: step.name });
      return step.state;
    }
    return null;
  }
}
