// The workers of a page: the one that answers, made anew where it is gone, and any number of others for what takes long.
import { LibraryWorker } from "./library-worker.js";

/** @import { WorkerOptions } from "./library-worker.js" */
/** @import { Failure } from "./messages.js" */

/** A server lets a run take two minutes; here processors are slower, and nobody else waits. */
export const PATIENCE = 240_000;

export class Workers {
  /** @type {LibraryWorker | null} */
  #answering = null;
  #options;

  /** @param {Omit<WorkerOptions, "patience" | "failed">} options */
  constructor(options) { this.#options = { patience: PATIENCE, ...options }; }

  /** The worker that answers. Where it failed or was ended, a new one starts. */
  answering() {
    if (!this.#answering || this.#answering.isOver) this.#answering = new LibraryWorker({ ...this.#options,
      failed: (why, detail) => this.#failed(why, detail) });
    return this.#answering;
  }

  /** A worker for one purpose; it is ended by whoever asked for it. @param {(why: Failure, detail: string) => void} [failed] */
  another(failed) { return new LibraryWorker({ ...this.#options, loading: undefined, failed }); }

  /** @type {Set<(why: Failure, detail: string) => void>} */
  #told = new Set();

  /** Whenever the worker that answers failed. @param {(why: Failure, detail: string) => void} told */
  onFailed(told) { this.#told.add(told); }

  /** @param {Failure} why @param {string} detail */
  #failed(why, detail) { for (const told of this.#told) told(why, detail); }
}
