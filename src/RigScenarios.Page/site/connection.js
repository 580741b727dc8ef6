// The line to the server: opened again by itself when it broke, with words for the reader meanwhile.
import { api } from "./api.js";

const PAUSES = [300, 600, 1200, 2500, 5000];

/**
 * Opens the line at `path`. `on.message(json)` gets what comes; `on.open()` and `on.broken(words)` tell how it stands;
 * `on.gone(shelf)` may say in words why there is nothing at the other end any more, going by what is on the shelf.
 * Gives `send(json)`, which is true when it went out; what doesn't is lost, for after an opening the page runs anew anyway.
 */
export function connect(path, on) {
  const address = `${location.protocol === "https:" ? "wss" : "ws"}://${location.host}${path}`;
  let socket = null, tries = 0, timer = 0, isLeaving = false;

  function open() {
    socket = new WebSocket(address);
    let wasOpen = false;
    socket.addEventListener("open", () => { wasOpen = true; tries = 0; on.open?.(); });
    socket.addEventListener("message", event => on.message(JSON.parse(event.data)));
    socket.addEventListener("close", async () => {
      if (isLeaving) return;
      const { words, isFinal } = await why(wasOpen);
      on.broken(words);
      if (!isFinal) timer = setTimeout(open, PAUSES[Math.min(tries++, PAUSES.length - 1)]);
    });
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
