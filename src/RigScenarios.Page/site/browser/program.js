// The program as the library in this browser: it takes the server's place, asks no network and sends nothing anywhere. Two workers
// hold the library, so that the page never waits: one answers requests and runs until there is an answer, the other does what
// takes long after it, and is ended when it is overtaken, for a run in a browser can't be stopped from outside.

/** @import { Program } from "../shared/requests.js" */

/**
 * @param {{ library: string, makeWorker?: () => Worker }} how `library`: the address of the library's boot script
 * @returns {Program}
 */
export function browserProgram(how) {
  const { library } = how;
  return {
    async ask(name) { throw new Error(`${name} is not asked of ${library} yet.`); },
    listen: () => () => false,
  };
}
