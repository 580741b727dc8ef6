// Telling: problems as readable texts, and texts in live regions.

/** A problem as one readable text. */
export function inWords(problem) {
  let text = problem.text;
  if (problem.nearest) text += ` Did you mean “${problem.nearest}”?`;
  if (problem.accepted) text += ` Accepted: ${problem.accepted}${/[.!?]$/.test(problem.accepted) ? "" : "."}`;
  return text;
}

/** Shows a text in a live region only when it changed, so that a screen reader doesn't say it twice. */
export function say(region, text) {
  if (region.textContent !== text) region.textContent = text;
}

/** A name that no other element of the page has. */
export function freshId(stem) { return `${stem}-${++given}`; }

let given = 0;
