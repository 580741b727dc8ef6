// The program as the library in this browser: it takes the server's place, asks no network and sends nothing anywhere. It works
// in workers, so that the page never waits for it.
import { ProgramProblem } from "../shared/program-problem.js";
import { FormLine } from "./form-line.js";
import { textOf } from "./library-worker.js";
import { NotebookLine } from "./notebook-line.js";
import { OwnFiles } from "./own-files.js";
import { Workers } from "./workers.js";

/** @import { Program } from "../shared/requests.js" */
/** @import { Asked } from "./library-worker.js" */
/** @import { Reply } from "./messages.js" */

/** What takes so long, or so much memory, that it gets a worker of its own, which ends with it. */
const ALONE = new Set(["rig-log"]);

/**
 * `library`: the address of the library's boot script. `loading`: hears how much of it has come. `charts`: gives the charts'
 * script, which the library leaves out.
 * @param {{ library: string, loading?: (loaded: number, all: number) => void, makeWorker?: () => Worker,
 *   charts?: () => Promise<Blob> }} how
 * @returns {Program}
 */
export function browserProgram({ library, loading, makeWorker = freshWorker, charts = chartsBeside }) {
  const workers = new Workers({ library, loading, makeWorker });
  // Whatever the page is, it will ask.
  workers.answering();
  return {
    async ask(name, what, signal) {
      // A page to keep has the charts' script in it.
      const asked = await packed(name, name === "page" ? { ...what, charts: await charts() } : what);
      const reply = ALONE.has(name) ? await askAlone(workers, asked, signal) : await workers.answering().ask(asked, signal);
      return unpacked(reply);
    },
    forget: id => new OwnFiles().remove(id.replace(/^own\//, "")),
    listen: (line, on) => (line.kind === "rig" ? new FormLine(workers, on) : new NotebookLine(workers, line, on)).send,
  };
}

async function chartsBeside() { return (await fetch(new URL("../plotly.js", import.meta.url))).blob(); }

function freshWorker() { return new Worker(new URL("./worker.js", import.meta.url), { type: "module" }); }

/** @param {Workers} workers @param {Asked} asked @param {AbortSignal} [signal] */
async function askAlone(workers, asked, signal) {
  const worker = workers.another();
  try {
    return await worker.ask(asked, signal);
  } finally {
    worker.end();
  }
}

/** A file within what is asked goes beside it. @param {string} name @param {any} what @returns {Promise<Asked>} */
async function packed(name, what) {
  const [field, file] = Object.entries(what).find(([, value]) => value instanceof Blob) ?? [];
  if (!field) return { name, json: JSON.stringify(what) };
  const { [field]: _, ...rest } = what;
  return { name, json: JSON.stringify(rest), attachment: await file.arrayBuffer() };
}

/** @param {Reply} reply @returns {any} */
function unpacked({ status, contentType, body }) {
  const isJson = contentType.startsWith("application/json");
  if (status >= 200 && status < 300) return isJson ? JSON.parse(textOf(body)) : new Blob([body], { type: contentType });
  const problems = isJson ? JSON.parse(textOf(body))?.problems : null;
  throw new ProgramProblem(status, problems?.length ? problems : [{ text: `The library answered with an error (${status}).` }]);
}
