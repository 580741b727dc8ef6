// When the charts of an article are drawn: those on the screen at once, the others when the browser has a moment.

/**
 * Gives `draw()`, which draws what has changed and is done when the screen shows it.
 * @param {() => { hasWaiting(): boolean, draw(onlyVisible: boolean): Promise<void> } | null} article may be null at first
 * @param {() => unknown} isBusy
 */
export function makeDrawing(article, isBusy) {
  let isLater = false;
  /** @type {Promise<void>} */
  let queue = Promise.resolve();

  function later() {
    if (isLater || !article()?.hasWaiting()) return;
    isLater = true;
    setTimeout(() => {
      isLater = false;
      if (!isBusy()) article()?.draw(false);
    }, 60);
  }

  addEventListener("scroll", () => { if (article()?.hasWaiting()) article()?.draw(true); }, { passive: true });
  return () => {
    // One chart that cannot be drawn does not keep the next from being drawn.
    queue = queue.catch(() => {}).then(() => article()?.draw(true)).then(later);
    return queue;
  };
}

/**
 * For whoever measures: an event when the screen shows what stands in the page now. `drawn`: milliseconds from the reader's doing
 * until it stood there.
 * @param {import("./run-queue.js").Run} run
 * @param {string} name the event's
 */
export function tellSeen(run, name) {
  const detail = { run: run.run, drawn: performance.now() - run.at };
  const tell = () => dispatchEvent(new CustomEvent(name, { detail }));
  if (document.hidden) tell(); else requestAnimationFrame(tell);
}

/**
 * For whoever measures: the event "rs-updated" when the charts on the screen show a run. `drawn`: milliseconds from the
 * reader's doing until they were drawn; `milliseconds`: until the browser had put that frame together.
 * @param {import("./run-queue.js").Run} run
 * @param {string} queue
 * @param {{ milliseconds?: number, rerun?: number[] }} done
 */
export function tellUpdated(run, queue, done) {
  const drawn = performance.now() - run.at;
  performance.clearMeasures("rs-run");
  performance.measure("rs-run", { start: run.at, end: performance.now() });
  const tell = () => {
    const milliseconds = performance.now() - run.at;
    Object.assign(document.documentElement.dataset, { rsRun: String(run.run), rsMilliseconds: milliseconds.toFixed(1) });
    dispatchEvent(new CustomEvent("rs-updated",
      { detail: { run: run.run, queue, milliseconds, drawn, server: done.milliseconds, rerun: done.rerun } }));
  };
  if (document.hidden) return tell();
  return requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = tell;
    channel.port2.postMessage(null);
  });
}
