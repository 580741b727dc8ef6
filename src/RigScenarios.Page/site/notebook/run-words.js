// What the strip and a screen reader are told of the runs of a notebook.

/** `strip()`, `article()` and `queues()` are asked for when they are needed; `told` is the element that a screen reader hears. */
export function makeRunWords(strip, article, told, queues) {
  let afterMoment = 0, speaking = 0;
  return {
    /** Words come only after a moment: a run that is done at once needs none. */
    working() {
      clearTimeout(afterMoment);
      afterMoment = setTimeout(() => { if (queues().now.running) strip().tellRun("Working…", null, true); }, 400);
    },
    done(milliseconds) {
      clearTimeout(afterMoment);
      const isBusy = Object.values(queues()).some(queue => queue.running);
      if (!isBusy) strip().tellRun(milliseconds >= 1000 ? `Done in ${(milliseconds / 1000).toFixed(1)} s.` : "");
    },
    /** A screen reader hears the answers once the reader has come to rest, and not at every step of a slider. */
    answers() {
      clearTimeout(speaking);
      speaking = setTimeout(() => { told.textContent = article().answers("now").map(part => part.text).join(" "); }, 900);
    },
  };
}
