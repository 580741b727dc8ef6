// @ts-nocheck: program.js takes its place.
// The line to the server: opened again by itself when it broke, with words for the reader meanwhile.
import { api, pageKey } from "./api.js";

const PAUSES = [300, 600, 1200, 2500, 5000];
// The server's word for "another page needed the place": see Conversation.cs.
const MADE_ROOM = 4001;
const DOINGS = ["pointerdown", "keydown", "focus"];

/**
 * Opens the line at `path`. `on.message(json)` gets what comes; `on.open()` and `on.broken(words)` tell how it stands;
 * `on.gone(shelf)` may say in words why there is nothing at the other end any more, going by what is on the shelf.
 * Gives `send(json)`, which is true when it went out; what doesn't is lost, for after an opening the page runs anew anyway.
 */
export function connect(path, on) {
  const address = `${location.protocol === "https:" ? "wss" : "ws"}://${location.host}${path}`;
  let socket = null, tries = 0, timer = 0, isLeaving = false;

  function open() {
    socket = new WebSocket(address, ["rig", pageKey()].filter(Boolean));
    let wasOpen = false;
    socket.addEventListener("open", () => { wasOpen = true; tries = 0; on.open?.(); });
    socket.addEventListener("message", event => on.message(JSON.parse(event.data)));
    socket.addEventListener("close", async event => {
      if (isLeaving) return;
      if (event.code === MADE_ROOM) {
        on.broken("This page was left alone, and its place was needed for another one. What you see stays; it goes on as soon "
          + "as you come back to it.");
        openAtDoing();
        return;
      }
      const { words, isFinal } = await why(wasOpen);
      on.broken(words);
      if (!isFinal) timer = setTimeout(open, PAUSES[Math.min(tries++, PAUSES.length - 1)]);
    });
  }

  // At the reader's next doing and not by itself, or two pages would take each other's place for ever.
  function openAtDoing() {
    const done = new AbortController();
    for (const doing of DOINGS) addEventListener(doing, () => { done.abort(); open(); }, { capture: true, signal: done.signal });
  }

  // A browser does not say why a line was refused; an ordinary request to the same server does.
  async function why(wasOpen) {
    try {
      const words = on.gone?.(await api("GET", "/api/shelf"));
      if (words) return { words, isFinal: true };
      return { words: wasOpen ? "The line to the program broke. Trying again…"
        : "The program has no line free for this page. Is it open in many windows? Trying again…" };
    } catch (error) {
      return {
        words: error.status === 0
          ? "The program behind this page has gone. What you see stays. Start it again (rigscenarios open); "
            + "this page then goes on by itself, or open the new address that it prints."
          : error.message,
      };
    }
  }

  addEventListener("pagehide", () => { isLeaving = true; clearTimeout(timer); socket?.close(); });
  // Back from the browser's memory of pages: the line was closed above.
  addEventListener("pageshow", event => { if (event.persisted) { isLeaving = false; open(); } });
  open();
  return json => {
    if (socket?.readyState !== WebSocket.OPEN) return false;
    socket.send(JSON.stringify(json));
    return true;
  };
}
