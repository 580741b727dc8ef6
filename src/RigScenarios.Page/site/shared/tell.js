// Telling: problems as readable texts, and texts in live regions.

/** A problem as one readable text. @param {import("./requests.js").Problem} problem */
export function inWords(problem) {
  let text = problem.text;
  if (problem.nearest) text += ` Did you mean “${problem.nearest}”?`;
  if (problem.accepted) text += ` Accepted: ${problem.accepted}${/[.!?]$/.test(problem.accepted) ? "" : "."}`;
  return text;
}

/**
 * Shows a text in a live region only when it changed, so that a screen reader doesn't say it twice.
 * @param {Element} region
 * @param {string} text
 */
export function say(region, text) {
  if (region.textContent !== text) region.textContent = text;
}

/** A name that no other element of the page has. @param {string} stem */
export function freshId(stem) { return `${stem}-${++given}`; }

let given = 0;
