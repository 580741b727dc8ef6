// A notebook's line on a saved page. It first tells what the page was saved with, which is there at once; meanwhile the library
// starts and makes the answer once more, unseen, so that a change reruns only what rests on it. What takes long below the answer
// is left to the first change: on one thread it would hold that up.

/** @import { LineListener, LineMessage, Part, RunMessage, Send } from "../shared/requests.js" */
/** @import { Values } from "../notebook/types.js" */

/**
 * What a page was saved with: the notebook as its line begins, the values that its page asks for, and what came until the run was
 * done, without queue and run.
 * @typedef {{ greeting: LineMessage, values: Values, messages: LineMessage[] }} Recorded
 */

/** How the library stands: it starts; it starts, and something else is asked of it than what is shown; it answers; it can't.
 * @typedef {"starts" | "asked" | "answers" | "broken"} State */

const QUEUE = "now";
/** A number that no page comes to with its own runs. */
const UNSEEN = 0x7fff_ffff;

export class RecordedLine {
  /** The library's line, once it is opened. @type {Send | null} */
  #library = null;
  /** What the page sent before that. @type {RunMessage[]} */
  #early = [];
  #hasGreeted = false;
  /** Whether the library was asked for anything that the reader sees: from then on it alone answers. */
  #isPassed = false;
  /** @type {State} */
  #state = "starts";

  /**
   * @param {Recorded} recorded
   * @param {LineListener} on
   * @param {Promise<(on: LineListener) => Send>} opening gives the library's line, as soon as it can be opened
   * @param {(state: State) => void} stands told how the library stands
   */
  constructor(recorded, on, opening, stands) {
    this.recorded = recorded;
    this.on = on;
    this.stands = stands;
    stands("starts");
    queueMicrotask(() => on.message(recorded.greeting));
    opening.then(open => this.#open(open)).catch(error => this.#broken(String(error.message ?? error)));
  }

  /** @type {Send} */
  send = message => {
    if (!this.#isPassed && message.kind === "run" && message.queue === QUEUE && isRecorded(message.values, this.recorded)) {
      // Not at once: the page first notes that the run is on its way.
      queueMicrotask(() => this.#tell(message.run));
      return true;
    }
    if (message.kind === "run") {
      this.#isPassed = true;
      if (this.#state === "starts") this.#stand("asked");
    }
    if (this.#library) return this.#library(message);
    this.#early.push(message);
    return true;
  };

  /** @param {number} run */
  #tell(run) {
    for (const message of this.recorded.messages) this.on.message({ ...message, queue: QUEUE, run });
  }

  /** @param {(on: LineListener) => Send} open */
  #open(open) {
    this.#library = open({ ...this.on, message: message => this.#hear(message), broken: words => this.#broken(words) });
  }

  /** @param {LineMessage} message */
  #hear(message) {
    if (message.kind === "notebook" && !this.#hasGreeted) { this.#greeted(message); return; }
    // From now on a change is answered soon.
    if (message.kind === "done" && this.#state !== "answers") this.#stand("answers");
    if (message.run !== UNSEEN) this.on.message(message);
  }

  /** @param {LineMessage} greeting */
  #greeted(greeting) {
    this.#hasGreeted = true;
    if (JSON.stringify(greeting) !== JSON.stringify(this.recorded.greeting)) this.on.message(greeting);
    const early = this.#early;
    this.#early = [];
    if (early.length === 0 && !this.#isPassed)
      this.#library?.({ kind: "run", queue: QUEUE, run: UNSEEN, values: this.recorded.values, inSight: [],
        untilCell: answering(this.recorded.messages) });
    for (const message of early) this.#library?.(message);
  }

  /** @param {string} words */
  #broken(words) {
    this.#hasGreeted = true;
    this.#stand("broken");
    this.on.broken(words);
  }

  /** @param {State} state */
  #stand(state) {
    this.#state = state;
    this.stands(state);
  }
}

/**
 * The cell that gives the page's answer: a verdict, else the first sentence. Undefined where none answers.
 * @param {LineMessage[]} messages
 * @returns {number | undefined}
 */
function answering(messages) {
  const cells = messages.filter(({ kind }) => kind === "cell");
  /** @param {(part: Part) => unknown} is */
  const first = is => cells.find(({ parts }) => parts.some((/** @type {Part} */ part) => part.type === "answer" && is(part)));
  return (first(part => part.isVerdict) ?? first(() => true))?.cell;
}

/**
 * Whether a page asks for what was recorded: as it was asked for then, or as the program settled it ("samples/a.yaml" for a
 * path), which is how the page's address has it after that.
 * @param {Values | undefined} values @param {Recorded} recorded
 */
function isRecorded(values, { values: asked, messages }) {
  /** @type {{ name: string, value: string }[]} */
  const parameters = messages.find(({ kind }) => kind === "parameters")?.parameters ?? [];
  const settled = Object.fromEntries(parameters.map(({ name, value }) => [name, value]));
  return isSame(values, asked) || isSame(values, { ...asked, ...settled });
}

/** @param {Values | undefined} one @param {Values} other */
function isSame(one, other) {
  const names = Object.keys(other);
  return one !== undefined && names.length === Object.keys(one).length && names.every(name => one[name] === other[name]);
}
