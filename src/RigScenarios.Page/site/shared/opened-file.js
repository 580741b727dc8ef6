// A file of the reader's device that is opened in the form: this browser keeps a copy of it among the own files, under a name
// that is free, and nothing that is kept there is written over.
import { ask } from "./program.js";
import { ProgramProblem } from "./program-problem.js";

/** How many names are tried. */
const TRIES = 50;

/**
 * Takes a file in. Gives its id; a file that is kept already is taken as it is.
 * @param {{ name: string, text: string }} file
 * @returns {Promise<string>} fails with a ProgramProblem
 */
export async function takeIn({ name, text }) {
  const stem = plain(name);
  for (let number = 1; ; number++) {
    const free = `${stem}${number > 1 ? `-${number}` : ""}.yaml`;
    try {
      return (await ask("save-file", { name: free, text, version: null, replace: false })).id;
    } catch (error) {
      if (!(error instanceof ProgramProblem) || error.status !== 409 || number >= TRIES) throw error;
      const id = `own/${free}`;
      if ((await ask("file", { id })).text === text) return id;
    }
  }
}

/** A name that every browser and folder takes. @param {string} name */
function plain(name) {
  return name.replace(/\.ya?ml$/i, "").normalize("NFKD").replace(/[^A-Za-z0-9]+/g, "-").replace(/^-+|-+$/g, "").slice(0, 60)
    || "my-rig";
}
