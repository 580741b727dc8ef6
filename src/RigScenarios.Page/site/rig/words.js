// Lengths of time, clock times and bare numbers, as people write them. The server has the last word on what is accepted.

const unitMinutes = { h: 60, hour: 60, hours: 60, min: 1, minute: 1, minutes: 1, m: 1, s: 1 / 60, sec: 1 / 60, d: 1440, day: 1440,
  days: 1440 };

// Minutes of "1 h 30 min", "1.5 h", "90 min", "1:30"; null where it can't be told.
export function minutesOf(text) {
  const trimmed = String(text ?? "").trim().toLowerCase();
  const clock = /^(\d{1,2}):(\d{2})$/.exec(trimmed);
  if (clock) return Number(clock[1]) * 60 + Number(clock[2]);
  if (!/^(\d+(\.\d+)?\s*[a-z]+\s*)+$/.test(trimmed)) return null;
  let sum = 0;
  for (const [, amount, unit] of trimmed.matchAll(/(\d+(?:\.\d+)?)\s*([a-z]+)/g)) {
    if (!(unit in unitMinutes)) return null;
    sum += Number(amount) * unitMinutes[unit];
  }
  return sum;
}

export function lengthText(minutes) {
  const whole = Math.floor(minutes / 60 + 1e-9), rest = Math.round((minutes - whole * 60) * 10) / 10;
  return [whole > 0 ? `${whole} h` : "", rest > 0 || whole === 0 ? `${rest} min` : ""].filter(Boolean).join(" ");
}

// "90" is taken for minutes and "1:30" for hours and minutes; anything else stays as it was written.
export function asLength(text) {
  const trimmed = text.trim();
  if (/^\d+(\.\d+)?$/.test(trimmed)) return `${trimmed} min`;
  return /^\d{1,2}:\d{2}$/.test(trimmed) ? lengthText(minutesOf(trimmed)) : trimmed;
}

// "6:30", "0630" and "6.30" are taken for half past six; anything else stays as it was written.
export function asClock(text) {
  const found = /^(\d{1,2})[:.]?(\d{2})$/.exec(text.trim());
  return found ? `${found[1].padStart(2, "0")}:${found[2]}` : text.trim();
}

export function clockOf(starts, minutesLater) {
  const clock = /^(\d{1,2}):(\d{2})$/.exec(starts ?? "");
  if (!clock) return lengthText(minutesLater);
  const all = Math.round(Number(clock[1]) * 60 + Number(clock[2]) + minutesLater);
  const two = (number) => String(number).padStart(2, "0");
  return `${two(Math.floor(all / 60) % 24)}:${two(all % 60)}`;
}

// A bare number gets the unit that the field is in; a number with a unit stays as it was written.
export function withUnit(text, unit) {
  const trimmed = text.trim().replace(/^[−–]/, "-");
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(trimmed) && unit ? `${trimmed} ${unit}` : trimmed;
}

// The number of "-8 °C" or "-8 C" for a slider in that unit; null where the text is in another unit or no number.
export function numberIn(text, unit) {
  const found = /^([+-]?(?:\d+\.?\d*|\.\d+))\s*(.*)$/.exec(String(text ?? "").trim().replace(/^[−–]/, "-"));
  if (!found) return null;
  const same = found[2] === "" || found[2].replace("°", "").toLowerCase() === unit.replace("°", "").toLowerCase();
  return same ? Number(found[1]) : null;
}

// A short name that isn't taken: lower-case letters, digits and hyphens, as the files want it.
export function freeName(wish, taken) {
  const stem = wish.normalize("NFKD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "").slice(0, 40) || "thing";
  const start = /^[a-z]/.test(stem) ? stem : `x-${stem}`;
  let name = start;
  for (let i = 2; taken(name); i++) name = `${start}-${i}`;
  return name;
}
