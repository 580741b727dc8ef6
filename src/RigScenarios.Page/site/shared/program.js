// The one door to the program behind the pages: requests and answers as requests.js lists them. Who answers is decided here and
// nowhere else: the server of this machine, or whatever takes its place.
import { server } from "./server.js";

/** @import { Line, LineListener, Problem, Program, Requests, Send } from "./requests.js" */

/** @type {Program} */
let program = server;

/** Another program takes the place of the server, for whatever is asked from now on. @param {Program} other */
export function useProgram(other) { program = other; }

/**
 * Asks one thing; fails with a ProgramProblem.
 * @template {keyof Requests} K
 * @param {K} name
 * @param {Requests[K]["asks"]} what
 * @param {AbortSignal} [signal] the answer is no longer wanted
 * @returns {Promise<Requests[K]["gives"]>}
 */
export function ask(name, what, signal) { return program.ask(name, what, signal); }

/**
 * Opens a line, on which runs are asked for: see RunQueue.
 * @param {Line} line
 * @param {LineListener} on
 * @returns {Send}
 */
export function listen(line, on) { return program.listen(line, on); }

/** An own file is kept no longer, where its reader has no other way to that. @param {string} id */
export async function forgetFile(id) { await program.forget?.(id); }

/** Questions of which only the newest is of use: one that is overtaken is given up, as a run of a RunQueue is. */
export class Newest {
  /** @type {AbortController | null} */
  #asking = null;

  /**
   * Gives the answer, or null where a newer question took its place.
   * @template {keyof Requests} K
   * @param {K} name
   * @param {Requests[K]["asks"]} what
   * @returns {Promise<Requests[K]["gives"] | null>}
   */
  async ask(name, what) {
    this.#asking?.abort();
    const mine = new AbortController();
    this.#asking = mine;
    try {
      const answer = await ask(name, what, mine.signal);
      return this.#asking === mine ? answer : null;
    } catch (error) {
      if (error.name === "AbortError") return null;
      throw error;
    }
  }
}
