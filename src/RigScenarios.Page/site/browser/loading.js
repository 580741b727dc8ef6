// How much of the library has come, where the page says what it waits for: a first visit takes a while on a slow network.

/** A reader who listens hears each change: so often is enough. */
const STEP = 20;

/** What the page waited for, until it says something else itself. @type {string | null} */
let shown = null;
let told = 0;

/** @param {number} loaded bytes @param {number} all */
export function tellLoading(loaded, all) {
  const place = document.querySelector("#page-told, #message");
  if (!place || all <= 0) return;
  shown ??= place.textContent;
  if (place.textContent !== shown) return;
  const percent = Math.floor((100 * loaded) / all / STEP) * STEP;
  if (percent <= told || percent >= 100) return;
  told = percent;
  shown = `The library is loading: ${percent} % is here. The next visit finds it on this device.`;
  place.textContent = shown;
}
