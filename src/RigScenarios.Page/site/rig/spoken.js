// What a screen reader hears of the answer: its sentence, and each question whose verdict changed. Heard once the reader has come
// to rest, and not at every step of a slider or a part that is dragged.
import { say } from "../shared/tell.js";

const rest = 900;

export class SpokenAnswer {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  #isHeld = false;
  /** @type {{ sentence: string, verdicts: Map<string, string> | null }} */
  #wanted = { sentence: "", verdicts: null };
  #sentence = "";
  /** @type {Map<string, string>} */
  #verdicts = new Map();

  /** @param {HTMLElement} region */
  constructor(region) {
    this.region = region;
    addEventListener("pointerdown", () => { this.#isHeld = true; }, { capture: true });
    for (const end of ["pointerup", "pointercancel"]) addEventListener(end, () => {
      this.#isHeld = false;
      this.#wait();
    }, { capture: true });
  }

  /**
   * What holds now. `verdicts`: each question with its verdict; null where the answer is still the one from before.
   * @param {string} sentence
   * @param {Map<string, string> | null} verdicts
   */
  tell(sentence, verdicts) {
    this.#wanted = { sentence, verdicts };
    this.#wait();
  }

  #wait() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => { if (!this.#isHeld) this.#say(); }, rest);
  }

  #say() {
    const { sentence, verdicts } = this.#wanted, told = sentence === this.#sentence ? [] : [sentence];
    if (verdicts) {
      told.push(...newsOf(this.#verdicts, verdicts));
      this.#verdicts = verdicts;
    }
    this.#sentence = sentence;
    if (told.some(Boolean)) say(this.region, told.filter(Boolean).join(" "));
  }
}

/**
 * The questions whose verdict is another one than before, in words. Of the first answer all are in sight at once: its sentence is
 * enough.
 * @param {Map<string, string>} before
 * @param {Map<string, string>} now
 */
export function newsOf(before, now) {
  if (before.size === 0) return [];
  return [...now].filter(([question, verdict]) => before.get(question) !== verdict)
    .map(([question, verdict]) => `${question}: ${verdict}.`);
}
