// The page's state in its address, behind the "#": what the controls say and, after a slash, what is pinned. So a link carries
// it, and a reload keeps it. Form: #build=tripod&degreesColder=5/pinned?build=tripod&degreesColder=0

/** @import { State, Values } from "./types.js" */

/**
 * What the address says: `now` holds what is named there, `pinned` is null where nothing is pinned.
 * @returns {State}
 */
export function readAddress() {
  const [now, ...rest] = location.hash.slice(1).split("/");
  const pinned = rest.find(part => part === "pinned" || part.startsWith("pinned?"));
  return { now: pairs(now), pinned: pinned === undefined ? null : pairs(pinned.slice("pinned?".length)) };
}

/**
 * The address of this page in that state. Values that are the notebook's own are written too: it may be edited later.
 * @param {State} state
 * @param {Values} defaults
 */
export function addressOf(state, defaults) {
  const isPlain = state.pinned === null && Object.keys(defaults).every(name => state.now[name] === defaults[name]);
  const hash = isPlain ? "" : `#${text(state.now)}${state.pinned ? `/pinned?${text(state.pinned)}` : ""}`;
  return location.pathname + location.search + hash;
}

/**
 * Writes the state into the address. The present entry of the history is changed, so that "back" leads to the page before.
 * @param {State} state
 * @param {Values} defaults
 */
export function writeAddress(state, defaults) {
  const address = addressOf(state, defaults);
  if (address !== location.pathname + location.search + location.hash) history.replaceState(history.state, "", address);
}

/** @param {string} query @returns {Values} */
function pairs(query) {
  return Object.fromEntries(new URLSearchParams(query));
}

/** @param {Values} values */
function text(values) {
  return new URLSearchParams(values).toString();
}
