// The first visit says in one sentence what this is, where what is entered stays, and what a margin is worth. Said until it is
// answered, and then never again in this browser.
import { el } from "./parts.js";
import { ask } from "./program.js";

const SEEN = "rig-first-visit";

/**
 * Where what is entered stays: true for each end. A server answers the machine that it runs on, or others on its network too.
 * @param {{ folder: boolean }} abilities
 * @param {string} host by which this page was reached
 */
export function whereItStays({ folder }, host) {
  if (!folder) return "everything stays in this browser, and nothing that you enter is sent anywhere";
  return /^(localhost|127(\.\d+){3}|\[?::1\]?)$/.test(host) ? "everything stays on this machine, and nothing is sent anywhere"
    : "everything goes to the computer that this page came from, and nowhere else";
}

/** The sentence. @param {{ folder: boolean }} abilities @param {string} host */
export function firstSentence(abilities, host) {
  return "RigScenarios works out whether a camera rig lasts its day and what stops it first; "
    + `${whereItStays(abilities, host)}; its margins are only as good as the figures that you enter, so heed the cautions under `
    + "each answer, and the makers' limits go first.";
}

/**
 * Says it at the head of the page, unless it was answered before. Where the program does not say what it is, nothing is promised.
 * @param {Element} main
 */
export async function welcome(main) {
  if (wasSeen()) return;
  const abilities = await ask("abilities", {}).catch(() => null);
  if (!abilities) return;
  const understood = el("button", { type: "button" }, "Understood");
  const note = el("section", { class: "note first-visit no-print", id: "first-visit", "aria-label": "On the first visit" },
    el("p", {}, firstSentence(abilities, location.hostname)), understood);
  understood.addEventListener("click", () => {
    keepSeen();
    note.remove();
    const heading = main.querySelector("h1");
    heading?.setAttribute("tabindex", "-1");
    heading?.focus({ preventScroll: true });
  });
  main.prepend(note);
}

function wasSeen() {
  try { return localStorage.getItem(SEEN) !== null; } catch { return false; }
}

// A browser that keeps nothing says it again at the next visit.
function keepSeen() {
  try { localStorage.setItem(SEEN, "yes"); } catch { /* nothing is kept */ }
}
