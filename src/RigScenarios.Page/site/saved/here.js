// The first script of a saved page that answers: from now on the library that the page carries takes the server's place.
import { detailOf, wordsOf } from "../browser/failures.js";
import { NotebookLine } from "../browser/notebook-line.js";
import { browserProgram } from "../browser/program.js";
import { Workers } from "../browser/workers.js";
import { useProgram } from "../shared/program.js";
import { RecordedLine } from "./recorded-line.js";

/** @import { Program } from "../shared/requests.js" */

const { carried } = globalThis, { saved, whole } = carried;
const how = { library: `${carried.BASE}library/boot.js`, makeWorker: () => carried.makeWorker(),
  charts: () => carried.charts() };

/** @type {Record<import("./recorded-line.js").State, string>} */
const WORDS = {
  starts: "As it was when this page was saved. The controls answer in a moment: the library in this file is starting.",
  asked: "The library in this file is starting. What you asked for is computed, and shown, as soon as it is there: in a moment.",
  answers: `The controls answer, without a network: all that computes is in this file (${saved.size}), and nothing is sent.`,
  broken: "The controls don’t answer here; their panel says why. What you see is as it was when this page was saved.",
};

/** @param {import("./recorded-line.js").State} state */
function stands(state) {
  const place = document.querySelector("#standing");
  if (!place) return;
  place.textContent = WORDS[state];
  place.setAttribute("data-state", state);
}

/** What is asked besides: a second worker, which starts with the first of it. @type {Promise<Program> | null} */
let asked = null;

useProgram({
  async ask(name, what, signal) {
    asked ??= whole.then(() => browserProgram(how));
    return (await asked).ask(name, what, signal);
  },
  listen(line, on) {
    const opening = whole.then(() => (/** @type {import("../shared/requests.js").LineListener} */ library) => {
      try {
        return new NotebookLine(new Workers(how), line, library).send;
      } catch (error) {
        throw new Error(`${wordsOf("start")} (${detailOf(error)})`);
      }
    });
    return new RecordedLine(saved, on, opening, stands).send;
  },
});

// The page begins with what it was saved with, as a link to that state would; a link of its own goes first.
const given = Object.entries(saved.given);
if (given.length > 0 && location.hash.length <= 1) history.replaceState(history.state, "", `#${new URLSearchParams(given)}`);
