// A saved page that answers carries all that it needs: the pages' scripts, the library, and what it was saved with. This script
// takes it out, in the page and in the workers that it starts, and hands it out under the names that it has elsewhere. A plain
// script, not a module: where a page was opened from a file, Chromium makes no worker of a module.

class Carried {
  /** What stands before a carried file's name where an address is needed (RFC 2606: nobody answers there). */
  BASE = "https://carried.invalid/";
  /** What the page was saved with: see AnsweringPage.cs; in a worker only the reader's own files. @type {any} */
  saved = null;
  /** Done when all of the file has been read: the library stands at its end. @type {Promise<unknown>} */
  whole;

  /** The modules in an order in which each comes after all that it imports. @type {[name: string, text: string][]} */
  #scripts = [];
  /** @type {Map<string, Blob>} */
  #files = new Map();
  /** @type {Map<string, string>} */
  #addresses = new Map();
  #ownText;

  /** @param {string} ownText the text of this script, for workers */
  constructor(ownText) {
    this.#ownText = ownText;
    this.whole = new Promise(done => {
      if (!globalThis.document) return;
      addEventListener("DOMContentLoaded", () => { this.#takeFiles(); done(undefined); }, { once: true });
    });
  }

  /** A module that is carried. @param {unknown} address @returns {Promise<any>} */
  async load(address) {
    const found = this.#addresses.get(this.#nameOf(address));
    if (!found) throw new Error(`${this.#nameOf(address)} is missing.`);
    return import(found);
  }

  /** Shows the page: first what it was saved with. */
  async beginPage() {
    this.saved = await this.#unpacked("saved");
    this.#useScripts(await this.#unpacked("scripts"));
    for (const text of await this.#unpacked("charts")) await this.#run(text);
    for (const name of ["saved/here.js", "notebook/live.js"]) await this.load(`assets/${name}`);
  }

  /** The charts' script, for a page to keep. */
  async charts() { return new Blob([(await this.#unpacked("charts"))[0]]); }

  /** A worker with the library. Only once the page is whole. */
  makeWorker() {
    const worker = new Worker(this.#scriptOf(`${this.#ownText}\ncarried.beginWorker();`));
    let isReady = false;
    worker.addEventListener("message", ({ data }) => { isReady ||= data.kind === "ready"; });
    // Nothing of it comes from elsewhere: one that ends before it is ready is one that this browser doesn't start.
    worker.addEventListener("error", event => {
      if (isReady) return;
      event.stopImmediatePropagation();
      event.preventDefault();
      worker.dispatchEvent(new MessageEvent("message", { data: { kind: "failed", why: "start", detail: event.message ?? "" } }));
    });
    worker.postMessage({ scripts: this.#scripts, files: this.#files, own: this.saved.own });
    return worker;
  }

  /** In a worker: the first message brings what is carried; those that come before the library's script is there wait for it. */
  beginWorker() {
    /** @type {any} The worker itself: what types say of `self` is of a page. */
    const here = self;
    /** @type {Promise<(message: unknown) => void> | null} */
    let taking = null;
    // Not `onmessage`: a worker that has it is taken by the runtime for one of its own threads, and never starts.
    here.addEventListener("message", (/** @type {MessageEvent} */ { data }) => {
      if (taking) { taking.then(take => take(data), () => {}); return; }
      this.#files = data.files;
      this.saved = { own: data.own };
      this.#useScripts(data.scripts);
      // Nothing is asked of a network.
      here.fetch = async (/** @type {unknown} */ address) => this.#answer(address);
      taking = this.load("assets/saved/worker.js").then(({ take }) => take);
      taking.catch(error => here.postMessage({ kind: "failed", why: "start", detail: String(error.message ?? error) }));
    });
  }

  /** What a server would answer. @param {unknown} address */
  #answer(address) {
    const file = this.#files.get(this.#nameOf(address instanceof Request ? address.url : address));
    return file ? new Response(file) : new Response(null, { status: 404 });
  }

  /** @param {unknown} address */
  #nameOf(address) { return String(address).replace(this.BASE, ""); }

  /** @param {string} text */
  #scriptOf(text) { return URL.createObjectURL(new Blob([text], { type: "text/javascript" })); }

  /** @param {[name: string, text: string][]} scripts */
  #useScripts(scripts) {
    this.#scripts = scripts;
    for (const [name, text] of scripts) this.#addresses.set(name, this.#scriptOf(text.replaceAll(/"carried:([^"]+)"/g,
      (_, other) => JSON.stringify(this.#addresses.get(other)))));
  }

  #takeFiles() {
    for (const element of document.querySelectorAll("script[data-file]")) {
      const name = element.dataset.carried ?? "";
      this.#files.set(name, new Blob([this.#bytesOf(name)]));
      element.remove();
    }
  }

  /** What stands packed in an element of the page. @param {string} name @returns {Uint8Array<ArrayBuffer>} */
  #bytesOf(name) {
    const text = document.querySelector(`script[data-carried="${name}"]`)?.textContent ?? "";
    /** @type {any} Its reading of base64 is in browsers of 2025 and later. */
    const bytes = Uint8Array;
    return bytes.fromBase64 ? bytes.fromBase64(text) : Uint8Array.from(atob(text), letter => letter.charCodeAt(0));
  }

  /** @param {string} name */
  async #unpacked(name) {
    const stream = new Blob([this.#bytesOf(name)]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
    return JSON.parse(await new Response(stream).text());
  }

  /** A script that is no module. @param {string} text @returns {Promise<unknown>} */
  #run(text) {
    return new Promise((resolve, reject) => {
      const element = document.createElement("script");
      element.onload = resolve;
      element.onerror = reject;
      element.src = this.#scriptOf(text);
      document.head.append(element);
    });
  }
}

globalThis.carried = new Carried(globalThis.document?.currentScript?.textContent ?? "");
