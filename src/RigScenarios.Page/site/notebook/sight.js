// The answer of a notebook, which stays in sight: beside the controls on a wide window; on a small one it stands at the head
// of the page, and one line of it stays at the window's edge.
import { makeAnswerLine } from "../shared/answer-line.js";
import { keepReachable } from "../shared/reachable.js";
import { makeVersions, showIn } from "./cell.js";
import { el, makeCautions } from "../shared/parts.js";

/** @import { Part } from "../shared/requests.js" */
/** @import { VersionName } from "./types.js" */

/** @typedef {{ number: number, isVerdict: boolean }} Candidate a cell's number, and whether what it answers is a verdict */

/**
 * Of two cells with an answer, whether the first one's is the page's: a verdict goes before a sentence, then the earlier cell.
 * @param {Candidate} one
 * @param {Candidate} other
 */
export function goesBefore(one, other) {
  return one.isVerdict === other.isVerdict ? one.number < other.number : one.isVerdict;
}

/** Takes the answer out of what the cells show. Which part it is, the notebook says: a verdict, else its first sentence. */
export class Sight {
  /** The number of the cell that gives the answer; null until one has. @type {number | null} */
  cell = null;

  #isVerdict = false;
  /** The cautions shown, as one text. @type {Partial<Record<VersionName, string>>} */
  #cautioned = {};

  constructor() {
    this.versions = makeVersions("answer");
    this.cautions = { pinned: el("div"), now: el("div") };
    this.block = el("div", { class: "sight-block" },
      el("div", { class: "versions" }, this.versions.pinned.box, this.versions.now.box));
    this.element = el("div", { class: "sight", id: "sight" }, this.block,
      el("div", { class: "sight-cautions versions" }, this.cautions.pinned, this.cautions.now));
    this.holder = el("div", { class: "sight-holder" }, this.element);
    this.line = makeAnswerLine({ sight: this.element, holder: this.holder, head: this.versions.now.box });
    this.holder.hidden = true;
    new ResizeObserver(() => {
      document.documentElement.style.setProperty("--rs-sight-height", `${this.block.offsetHeight}px`);
    }).observe(this.block);
    keepReachable(this.block, () => "The answer");
  }

  /**
   * Whether the answer of the page is this cell's from now on: a verdict goes before a sentence.
   * @param {number} number
   * @param {Part[]} parts
   */
  adopts(number, parts) {
    const answer = answerOf(parts);
    if (!answer || number === this.cell) return false;
    const isVerdict = Boolean(answer.isVerdict);
    if (this.cell !== null && !goesBefore({ number, isVerdict }, { number: this.cell, isVerdict: this.#isVerdict })) return false;
    this.cell = number;
    this.#isVerdict = isVerdict;
    return true;
  }

  /**
   * Shows the answer among these parts of the answer's cell, and gives the others.
   * @param {VersionName} name
   * @param {Part[]} parts
   */
  take(name, parts) {
    const answer = answerOf(parts);
    const version = this.versions[name];
    // Its cautions scroll away with the page; the verdict stays.
    showIn(this.block, version, answer ? [{ ...answer, cautions: [] }] : []);
    // While one drags they mostly stay the same, and are left alone.
    const words = JSON.stringify(answer?.cautions ?? []);
    if (this.#cautioned[name] !== words)
      this.cautions[name].replaceChildren(...[makeCautions(answer?.cautions)].filter(cautions => cautions !== null));
    this.#cautioned[name] = words;
    version.parts = answer ? [answer] : [];
    if (name === "now") {
      this.holder.hidden = !answer;
      this.line.say(answer?.line ?? "");
    }
    return answer ? parts.filter(part => part !== answer) : parts;
  }

  /** @param {boolean} isPinned */
  setPinned(isPinned) {
    this.versions.pinned.box.hidden = this.cautions.pinned.hidden = !isPinned;
  }
}

/** @param {Part[]} parts */
const answerOf = parts => parts.find(part => part.type === "answer" && part.isVerdict)
  ?? parts.find(part => part.type === "answer");
