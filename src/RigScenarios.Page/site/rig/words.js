// Lengths of time, clock times and bare numbers, as people write them. The server has the last word on what is accepted.

/** The longest block that a day can have, in minutes: what is longer is told as a mistake, and drawn no longer than this. */
export const longestBlock = 2880;

/** @type {{ [unit: string]: number }} */
const unitMinutes = { h: 60, hour: 60, hours: 60, min: 1, minute: 1, minutes: 1, m: 1, s: 1 / 60, sec: 1 / 60, d: 1440, day: 1440,
  days: 1440 };

/**
 * Minutes of "1 h 30 min", "1.5 h", "90 min", "1:30"; null where it can't be told or no block can be that long.
 * @param {string | undefined} text
 * @returns {number | null}
 */
export function minutesOf(text) {
  const trimmed = plain(text).toLowerCase();
  const clock = /^(\d{1,2}):(\d{2})$/.exec(trimmed);
  const minutes = clock ? Number(clock[1]) * 60 + Number(clock[2]) : sumOf(trimmed);
  return minutes !== null && minutes > 0 && minutes <= longestBlock ? minutes : null;
}

/** @param {string} text */
function sumOf(text) {
  if (text.length > 60 || !/^(\d+(\.\d+)?\s*[a-z]+\s*)+$/.test(text)) return null;
  let sum = 0;
  for (const [, amount, unit] of text.matchAll(/(\d+(?:\.\d+)?)\s*([a-z]+)/g)) {
    if (!Object.hasOwn(unitMinutes, unit)) return null;
    sum += Number(amount) * unitMinutes[unit];
  }
  return sum;
}

/**
 * "1 h 15 min".
 * @param {number} minutes
 */
export function lengthText(minutes) {
  const whole = Math.floor(minutes / 60 + 1e-9), rest = Math.round((minutes - whole * 60) * 10) / 10;
  return [whole > 0 ? `${whole} h` : "", rest > 0 || whole === 0 ? `${rest} min` : ""].filter(Boolean).join(" ");
}

/**
 * "90" is taken for minutes and "1:30" for hours and minutes; anything else stays as it was written.
 * @param {string} text
 */
export function asLength(text) {
  const trimmed = plain(text);
  if (/^\d+(\.\d+)?$/.test(trimmed)) return `${trimmed} min`;
  const minutes = /^\d{1,2}:\d{2}$/.test(trimmed) ? minutesOf(trimmed) : null;
  return minutes === null ? text.trim() : lengthText(minutes);
}

/**
 * "6:30", "0630" and "6.30" are taken for half past six; anything else stays as it was written.
 * @param {string} text
 */
export function asClock(text) {
  const found = /^(\d{1,2})[:.]?(\d{2})$/.exec(plain(text));
  return found ? `${found[1].padStart(2, "0")}:${found[2]}` : text.trim();
}

/**
 * The clock time so many minutes after the first; without a first, the time since.
 * @param {string | undefined} starts
 * @param {number} minutesLater
 */
export function clockOf(starts, minutesLater) {
  const clock = /^(\d{1,2}):(\d{2})$/.exec(asClock(starts ?? ""));
  if (!clock) return lengthText(minutesLater);
  const all = Math.round(Number(clock[1]) * 60 + Number(clock[2]) + minutesLater);
  const two = (/** @type {number} */ number) => String(number).padStart(2, "0");
  return `${two(Math.floor(all / 60) % 24)}:${two(all % 60)}`;
}

/**
 * A bare number gets the unit that the field is in; a number with a unit stays as it was written.
 * @param {string} text
 * @param {string} unit
 */
export function withUnit(text, unit) {
  const number = plain(text);
  return /^[+-]?(\d+[.,]?\d*|[.,]\d+)$/.test(number) && unit ? `${number} ${unit}` : text.trim();
}

/**
 * The number of "-8 °C" or "-8 C" for a slider in that unit; null where the text is in another unit or no number.
 * @param {string | undefined} text
 * @param {string} unit
 * @returns {number | null}
 */
export function numberIn(text, unit) {
  const found = /^([+-]?(?:\d+\.?\d*|\.\d+))\s*(.*)$/.exec(plain(text));
  if (!found) return null;
  const same = found[2] === "" || found[2].replace("°", "").toLowerCase() === unit.replace("°", "").toLowerCase();
  return same ? Number(found[1]) : null;
}

/**
 * A short name that isn't taken: lower-case letters, digits and hyphens, as the files want it.
 * @param {string} wish
 * @param {(name: string) => boolean} taken
 * @param {string} otherwise where nothing of the wish can stand in such a name
 */
export function freeName(wish, taken, otherwise = "thing") {
  const stem = wish.normalize("NFKD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "").slice(0, 40) || otherwise;
  const start = /^[a-z]/.test(stem) ? stem : `x-${stem}`;
  let name = start;
  for (let i = 2; taken(name); i++) name = `${start}-${i}`;
  return name;
}

// Full-width digits, long minus signs and the like, as plain ones. For reading a number only: what was typed stays.
/** @param {string | undefined} text */
function plain(text) { return String(text ?? "").normalize("NFKC").trim().replace(/^[−–]/, "-"); }
