// Which cells followed which parameter, as the runs have shown: these are about to change when it changes again.

/** @import { Values, VersionName } from "./types.js" */

export class Followers {
  /** @type {Map<string, Set<number>>} */
  #cells = new Map();
  /** @type {Partial<Record<VersionName, Values>>} */
  #shown = {};

  /** Another notebook: nothing is known. */
  clear() {
    this.#cells.clear();
    this.#shown = {};
  }

  /** What these versions show is no longer what a whole run gave. @param {VersionName[]} versions */
  forget(...versions) { for (const version of versions) delete this.#shown[version]; }

  /** Whether a version shows a whole run with this value. @param {VersionName} version @param {string} parameter
   * @param {string} value */
  isShown(version, parameter, value) { return this.#shown[version]?.[parameter] === value; }

  /** The numbers of the cells that will follow; null where it isn't known. @param {VersionName} version @param {Values} values */
  of(version, values) {
    const changed = this.#changed(version, values);
    return changed?.every(key => this.#cells.has(key)) ? new Set(changed.flatMap(key => [...this.#cells.get(key) ?? []])) : null;
  }

  /** A run was done: these cells were run for it. @param {VersionName} version @param {Values} values @param {number[]} rerun */
  learn(version, values, rerun) {
    const changed = this.#changed(version, values);
    if (changed?.length === 1) this.#cells.set(changed[0], new Set(rerun));
    this.#shown[version] = values;
  }

  /** @param {VersionName} version @param {Values} values */
  #changed(version, values) {
    const before = this.#shown[version];
    return before && Object.keys(values).filter(key => values[key] !== before[key]);
  }
}
