// What the program behind the pages refuses comes back as one kind of error, with the problems in words that a page can show.

/** @import { Problem } from "./requests.js" */

/**
 * A request that was refused, or that nobody answered. `problems` are the program's, each with at least `text`. `status`: 0 where
 * nobody answered, 400 for what the reader can put right, 409 where something else is saved there by now, 500 and more for a
 * fault of the program's.
 */
export class ProgramProblem extends Error {
  /** @param {number} status @param {Problem[]} problems */
  constructor(status, problems) {
    super(problems.map(problem => problem.text).join(" "));
    this.status = status;
    this.problems = problems;
  }
}
