// As much of a browser as modules want while they are loaded, and as tests of logic need: no page, no drawing.

class Watcher {
  observe() { /* nothing is ever seen */ }
  disconnect() { /* nor was it */ }
}

/** What `keep` and others find where a browser keeps things. */
export class Storage {
  #kept = new Map();
  getItem(name) { return this.#kept.get(name) ?? null; }
  setItem(name, text) { this.#kept.set(name, String(text)); }
  removeItem(name) { this.#kept.delete(name); }
}

/** Puts the page at an address; `history.replaceState` goes on from there. */
export function goTo(address) {
  const { pathname, search, hash, protocol, host, origin } = new URL(address, "http://localhost");
  globalThis.location = /** @type {any} */ ({ pathname, search, hash, protocol, host, origin });
}

const listened = new EventTarget();
Object.assign(globalThis, {
  window: globalThis,
  document: { getElementById: () => null, addEventListener() { /* no events come */ }, documentElement: { dataset: {} } },
  ResizeObserver: Watcher,
  IntersectionObserver: Watcher,
  sessionStorage: new Storage(),
  localStorage: new Storage(),
  addEventListener: listened.addEventListener.bind(listened),
  dispatchEvent: listened.dispatchEvent.bind(listened),
});
globalThis.history = /** @type {any} */ ({ state: null, replaceState: (_state, _title, address) => goTo(address) });
goTo("/");
