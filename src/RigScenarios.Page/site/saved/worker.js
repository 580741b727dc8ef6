// A worker of a saved page: it holds the library that the page carries. The reader's own files are those that came with the page;
// it keeps no others.
import { LibraryEnd } from "../browser/library-end.js";

/** @type {any} The worker itself: what types say of `self` is of a page. */
const here = self;

const end = new LibraryEnd({
  post: (message, transfer = []) => here.postMessage(message, transfer),
  load: async (library, told, progress) => (await import(library)).start(told, progress),
  own: {
    all: async () => Object.entries(globalThis.carried.saved.own).map(([name, text]) =>
      ({ name, bytes: new TextEncoder().encode(text) })),
    // As they came: nothing changes them.
    get: async () => { throw new Error("A saved page keeps no files."); },
    put: async () => { throw new Error("A saved page keeps no files."); },
    onChanged: () => {},
  },
});
/** What the page posts, one message after the other. @param {import("../browser/messages.js").ToWorker} message */
export function take(message) { end.take(message); }
