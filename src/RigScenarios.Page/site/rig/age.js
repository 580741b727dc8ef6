// How old the battery is: what somebody says of it holds on a day, and so does what was measured. The day is filled in here,
// for the program itself has no clock.
import { at, textAt, without, withAt } from "./tree.js";

/** Whether a field of the form says something of the battery's age. @param {string} key */
export const isOfAge = (key) => key.startsWith("age-") || key === "capacity-left";

/**
 * Sets a text of the age, and the day with the first one; the day goes with the last.
 * @param {import("./state.js").Rig} rig
 * @param {string} path
 * @param {string} text
 * @param {import("./state.js").Doing} doing
 */
export function setAge(rig, path, text, doing) {
  rig.change((given) => withAge(given, path, text, today()), doing);
}

/**
 * The tree with the text in it: with the day too where the age had nothing said of it yet, or is measured now; without the group
 * of the age where nothing is left to be said.
 * @param {import("./tree.js").Tree} given
 * @param {string} path
 * @param {string} text
 * @param {string} day
 */
export function withAge(given, path, text, day) {
  const group = `${path.split(".").slice(0, 3).join(".")}.age`, until = `${group}.until`;
  const before = Object.keys(at(given, group) ?? {}).length, after = withAt(given, path, text);
  const names = Object.keys(at(after, group) ?? {}), isLeft = names.some((name) => name !== "until");
  if (path === until) return names.length === 0 ? without(after, until) : after;
  if (!isLeft) return at(after, group) === undefined ? after : without(after, until);
  const isFirst = before === 0 || !path.startsWith(`${group}.`);
  return isFirst && textAt(after, until) === "" ? withAt(after, until, day) : after;
}

/** The day on this machine, as a file writes it. */
export function today() {
  const now = new Date(), two = (/** @type {number} */ number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
