// A worker that holds the library: what a page asks of it is answered by LibraryEnd.
import { LibraryEnd } from "./library-end.js";
import { OwnFiles } from "./own-files.js";

/** @type {any} The worker itself: what types say of `self` is of a page. */
const here = self;

const end = new LibraryEnd({
  post: (message, transfer = []) => here.postMessage(message, transfer),
  load: async (library, told, progress) => (await import(library)).start(told, progress),
  own: new OwnFiles(),
});
// Not `onmessage`: a worker that has it is taken by the runtime for one of its own threads, and never starts.
here.addEventListener("message", (/** @type {MessageEvent} */ event) => end.take(event.data));
