// What isn't saved yet is kept by the browser: in this window, where a reload or a stop of the program finds it again, and for
// a later window of this browser, which only offers it.

/** Keeps a value under a name; false where the browser keeps nothing. @param {string} name @param {unknown} value */
export function keep(name, value) {
  const text = JSON.stringify(value);
  return [ofWindow, ofBrowser].map((storage) => {
    try { storage().setItem(name, text); return true; } catch { return false; }
  }).some(Boolean);
}

/**
 * What is kept, and whether this window left it or another one; null if nothing is.
 * @param {string} name
 * @returns {{ value: any, isHere: boolean } | null}
 */
export function kept(name) {
  for (const storage of [ofWindow, ofBrowser]) {
    try {
      const value = JSON.parse(storage().getItem(name) ?? "null");
      if (value !== null) return { value, isHere: storage === ofWindow };
    } catch { /* no storage, or nothing readable in it */ }
  }

  return null;
}

/** Forgets it everywhere. @param {string} name */
export function forget(name) {
  for (const storage of [ofWindow, ofBrowser]) try { storage().removeItem(name); } catch { /* nothing was kept */ }
}

// A browser that is told to keep nothing throws as soon as its storage is named.
function ofWindow() { return window.sessionStorage; }
function ofBrowser() { return window.localStorage; }
