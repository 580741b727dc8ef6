// Why the library in the browser does not answer, in words for the reader, with what to do about it. What was entered is kept in
// any case; whoever shows these words says so.
import { ProgramProblem } from "../shared/program-problem.js";

/** @import { Failure } from "./messages.js" */

/** @type {Record<Failure, string>} */
const WORDS = {
  load: "The library did not come whole, so nothing can be computed here yet. On a first visit it needs the place that this page "
    + "came from; after that, none. Load the page again; where that doesn't help, the folder of these pages is not whole.",
  start: "This browser can't run the library. It takes one of 2023 or later, with WebAssembly allowed. Open the page in another "
    + "browser, or on another device.",
  memory: "This browser has no memory left for it. Close other windows of the browser; it is tried again with your next change.",
  fault: "The library broke while it worked. It starts anew with your next change. Should it break again, take that change back.",
  time: "It took longer than a page may wait, and was ended. It starts anew with your next change.",
};

/** @param {Failure} why */
export function wordsOf(why) { return WORDS[why]; }

/** The failure as requests fail with it. @param {Failure} why @param {string} detail in the words of what failed */
export function problemOf(why, detail) {
  return new ProgramProblem(503, [{ text: detail ? `${WORDS[why]} (${detail})` : WORDS[why] }]);
}

// What browsers and the runtime say of it; each has words of its own.
const NO_MEMORY = /out of memory|OutOfMemory|could not allocate|allocation failed|memory\.grow/i;
const NOT_LOADED = new RegExp(["failed to fetch", "download .* failed", "can't be had", "dynamically imported", "import.*failed",
  "loading.*failed", "load failed", "networkerror", "\\b404\\b"].join("|"), "i");

/** What kind of failure an error is. @param {unknown} error @param {Failure} otherwise @returns {Failure} */
export function failureOf(error, otherwise) {
  const said = detailOf(error);
  if (NO_MEMORY.test(said)) return "memory";
  if (NOT_LOADED.test(said)) return "load";
  return otherwise;
}

/** An error in one line. @param {unknown} error */
export function detailOf(error) {
  const text = error instanceof Error || (typeof error === "object" && error !== null && "message" in error)
    ? String(error.message) : String(error ?? "");
  return text.split("\n")[0].slice(0, 200);
}
