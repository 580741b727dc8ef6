// The form's one line to the program, and the queues of runs on it: each hears what is of its own runs.
import { listen } from "../shared/program.js";
import { RunQueue } from "../shared/run-queue.js";

/** @import { LineMessage, Send } from "../shared/requests.js" */

/**
 * Who wants runs: `message` gets what comes of them; `open` and `broken` (words for the reader) tell how the line stands.
 * @typedef {{ message: (json: LineMessage) => void, open?: () => void, broken: (words: string) => void }} QueueListener
 */

export class FormLine {
  /** @type {Map<string, QueueListener>} */
  #listeners = new Map();
  /** @type {Send} */
  #send;

  constructor() {
    const all = () => [...this.#listeners.values()];
    this.#send = listen({ kind: "rig" }, {
      message: (json) => this.#listeners.get(json.queue ?? "")?.message(json),
      open: () => { for (const on of all()) on.open?.(); },
      broken: (words) => { for (const on of all()) on.broken(words); },
    });
  }

  /**
   * A queue of this name at the program.
   * @param {string} name
   * @param {QueueListener} on
   */
  queue(name, on) {
    this.#listeners.set(name, on);
    return new RunQueue(name, (json) => this.#send(json));
  }
}
