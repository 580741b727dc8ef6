// Workers that a test plays: what the page posts is kept, and the test says what comes back.
import { Workers } from "../../../src/RigScenarios.Page/site/browser/workers.js";

const bytesOf = json => new TextEncoder().encode(JSON.stringify(json)).buffer;

export class PretendWorker {
  posted = [];
  isEnded = false;
  postMessage(message) { this.posted.push(message); }
  terminate() { this.isEnded = true; }

  /** The worker posts something. */
  post(message) { this.onmessage({ data: message }); }
  /** What was posted of a kind. */
  all(kind) { return this.posted.filter(message => message.kind === kind); }
  last(kind) { return this.all(kind).at(-1); }
  /** What was said on its lines. */
  get said() { return this.all("say").map(message => JSON.parse(message.json)); }
  /** Something comes on the line that was opened last. */
  tell(json) { this.post({ kind: "told", line: this.last("open").line, message: bytesOf(json) }); }
  /** The request that is on its way is answered. */
  reply(json, status = 200, contentType = "application/json") {
    this.post({ kind: "reply", id: this.last("ask").id, reply: { status, contentType, body: bytesOf(json), fileName: null } });
  }
}

/** A room of workers, and those that were made for it so far. */
export function pretendWorkers() {
  const made = [];
  const makeWorker = () => {
    const worker = new PretendWorker();
    made.push(worker);
    return worker;
  };
  return { made, makeWorker, workers: new Workers({ library: "boot.js", makeWorker: /** @type {any} */ (makeWorker) }) };
}

/** Promises that follow each other are all done after this. */
export const settled = async () => { for (let i = 0; i < 20; i++) await null; };
