// The program as a server on this machine, and the one place that asks a network for anything: requests over HTTP, and a line for
// each page (a WebSocket), opened again by itself when it broke, with words for the reader meanwhile.
import { ProgramProblem } from "./program-problem.js";

/** @import { Line, LineListener, Program, Send } from "./requests.js" */

const PAUSES = [300, 600, 1200, 2500, 5000];
// The server's word for "another page needed the place": see Conversation.cs.
const MADE_ROOM = 4001;
const DOINGS = ["pointerdown", "keydown", "focus"];

const within = encodeURIComponent;

/**
 * Where each request goes: method, address, and what stands in its body.
 * @type {Record<string, (what: any) => [method: string, address: string, body?: unknown]>}
 */
const REQUESTS = {
  "abilities": () => ["GET", "/api/abilities"],
  "shelf": () => ["GET", "/api/shelf"],
  "picture": ({ notebook }) => ["GET", `/picture/${within(notebook)}`],
  "page": ({ notebook, values }) => ["GET", `/api/page/${within(notebook)}?${new URLSearchParams(values)}`],
  "page-that-answers": ({ notebook, values }) =>
    ["GET", `/api/page-that-answers/${within(notebook)}?${new URLSearchParams(values)}`],
  "page-that-answers-size": ({ notebook }) => ["GET", `/api/page-that-answers/${within(notebook)}/size`],
  "file": ({ id }) => ["GET", `/api/files/${id.split("/").map(within).join("/")}`],
  "save-file": ({ name, ...body }) => ["PUT", `/api/files/own/${within(name)}`, body],
  "check-text": body => ["POST", "/api/text/check", body],
  "text-help": body => ["POST", "/api/text/help", body],
  "rig-questions": () => ["GET", "/api/rig/questions"],
  "rig-given": place => ["GET", `/api/rig/given?${new URLSearchParams(Object.entries(place).filter(([, value]) => value))}`],
  "rig-alone": body => ["POST", "/api/rig/alone", body],
  "rig-edit": body => ["POST", "/api/rig/edit", body],
  // A line about the log, and below it the file as it is: it may be large.
  "rig-log": ({ log, ...what }) => ["POST", "/api/rig/log", new Blob([JSON.stringify(what), "\n", log])],
  "rig-sheet": body => ["POST", "/api/rig/take-along", body],
  "notebook-sheet": ({ notebook, ...body }) => ["POST", `/api/take-along/${within(notebook)}`, body],
  "save-rig": body => ["POST", "/api/rig/save", body],
  "class-tasks": () => ["GET", "/api/class/tasks"],
  "class-places": ({ file }) => ["GET", `/api/class/places?${new URLSearchParams({ file })}`],
  "class-choices": body => ["POST", "/api/class/choices", body],
  "class-task": ({ name }) => ["GET", `/api/class/task/${within(name)}`],
  "save-class-task": ({ name, ...body }) => ["PUT", `/api/class/task/${within(name)}`, body],
  "class-sheet": body => ["POST", "/api/class/sheet", body],
  "class-lesson": ({ name }) => ["GET", `/api/class/lesson/${within(name)}`],
  "tell-class": ({ name, ...body }) => ["POST", `/api/class/lesson/${within(name)}`, body],
  "lesson-state": ({ code, student }) => ["GET", `/api/lesson/${within(code)}/state?${new URLSearchParams({ student })}`],
  "lesson-view": ({ code, ...body }) => ["POST", `/api/lesson/${within(code)}/view`, body],
  "hand-in": ({ code, ...body }) => ["POST", `/api/lesson/${within(code)}/hand-in`, body],
};

/** What is given as a file and not as JSON. */
const FILES = new Set(["picture", "page", "page-that-answers", "rig-sheet", "notebook-sheet", "class-sheet"]);

/** @type {Program} */
export const server = {
  async ask(name, what, signal) {
    const [method, address, body] = REQUESTS[name](what);
    const response = await reach(method, address, body, signal);
    if (response.ok && FILES.has(name)) return /** @type {any} */ (await response.blob());
    const json = await response.json().catch(() => null);
    if (response.ok) return json;
    throw new ProgramProblem(response.status, json?.problems?.length ? json.problems : [{ text: unexplained(response.status) }]);
  },
  listen: (line, on) => new ServerLine(addressOf(line), on).send,
};

/** @param {string} method @param {string} address @param {unknown} body @param {AbortSignal} [signal] */
async function reach(method, address, body, signal) {
  try {
    return await fetch(address, {
      method,
      signal,
      headers: { "Rig-Key": pageKey(), ...(body === undefined ? {} : { "Content-Type": body instanceof Blob
        ? "application/octet-stream" : "application/json" }) },
      body: body === undefined || body instanceof Blob ? body : JSON.stringify(body),
    });
  } catch (error) {
    if (error.name === "AbortError") throw error;
    throw new ProgramProblem(0, [{ text: "The program behind this page does not answer. Is it still running?" }]);
  }
}

/**
 * The page's key, which each request for something shows: see enter.js. Read each time, for another window may have opened a
 * newer start of the program.
 */
function pageKey() {
  try { return localStorage.getItem("rig-key") ?? ""; } catch { return ""; }
}

/** @param {number} status */
function unexplained(status) {
  return status === 401 || status === 403
    ? "This page belongs to an earlier start of the program. Open the address that the program printed when it started."
    : `The program behind this page answered with an error (${status}).`;
}

/** @param {Line} line */
function addressOf(line) {
  const path = line.kind === "rig" ? "/api/rig/live" : `/api/live/${within(line.name)}`;
  return `${location.protocol === "https:" ? "wss" : "ws"}://${location.host}${path}`;
}

class ServerLine {
  /** @type {WebSocket | null} */
  #socket = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  #tries = 0;
  #isLeaving = false;

  /** @param {string} address @param {LineListener} on */
  constructor(address, on) {
    this.address = address;
    this.on = on;
    addEventListener("pagehide", () => { this.#isLeaving = true; clearTimeout(this.#timer); this.#socket?.close(); });
    // Back from the browser's memory of pages: the line was closed above.
    addEventListener("pageshow", event => { if (event.persisted) { this.#isLeaving = false; this.#open(); } });
    this.#open();
  }

  /** @type {Send} */
  send = json => {
    if (this.#socket?.readyState !== WebSocket.OPEN) return false;
    this.#socket.send(JSON.stringify(json));
    return true;
  };

  #open() {
    const socket = new WebSocket(this.address, ["rig", pageKey()].filter(Boolean));
    this.#socket = socket;
    let wasOpen = false;
    socket.addEventListener("open", () => { wasOpen = true; this.#tries = 0; this.on.open?.(); });
    socket.addEventListener("message", event => this.on.message(JSON.parse(event.data)));
    socket.addEventListener("close", event => this.#closed(event, wasOpen));
  }

  /** @param {CloseEvent} event @param {boolean} wasOpen */
  async #closed(event, wasOpen) {
    if (this.#isLeaving) return;
    if (event.code === MADE_ROOM) {
      this.on.broken("This page was left alone, and its place was needed for another one. What you see stays; it goes on as soon "
        + "as you come back to it.");
      this.#openAtDoing();
      return;
    }
    const { words, isFinal } = await this.#why(wasOpen);
    this.on.broken(words);
    if (!isFinal) this.#timer = setTimeout(() => this.#open(), PAUSES[Math.min(this.#tries++, PAUSES.length - 1)]);
  }

  // At the reader's next doing and not by itself, or two pages would take each other's place for ever.
  #openAtDoing() {
    const done = new AbortController();
    const open = () => { done.abort(); this.#open(); };
    for (const doing of DOINGS) addEventListener(doing, open, { capture: true, signal: done.signal });
  }

  /**
   * A browser does not say why a line was refused; an ordinary request to the same server does.
   * @param {boolean} wasOpen
   */
  async #why(wasOpen) {
    try {
      const shelf = await server.ask("shelf", {}), words = this.on.gone?.(shelf);
      if (words) return { words, isFinal: true };
      return { words: wasOpen ? "The line to the program broke. Trying again…"
        : "The program has no line free for this page. Is it open in many windows? Trying again…", isFinal: false };
    } catch (error) {
      return { words: error.status === 0
        ? "The program behind this page has gone. What you see stays. Start it again (rigscenarios open); "
          + "this page then goes on by itself, or open the new address that it prints."
        : error.message, isFinal: false };
    }
  }
}
