// The blocks of a day as they stand in the tree: what can be done with them, and how long they are drawn.
import { freeName, lengthText, longestBlock, minutesOf } from "./words.js";

/** @typedef {import("./states.js").Block} Block */
/** @typedef {{ [name: string]: Block }} Blocks */

/**
 * One block a place earlier (-1) or later (1); the same blocks where it can't go.
 * @param {Blocks} blocks
 * @param {string} name
 * @param {number} by
 * @returns {Blocks}
 */
export function moved(blocks, name, by) {
  const entries = Object.entries(blocks), at = entries.findIndex(([key]) => key === name), to = at + by;
  if (at < 0 || to < 0 || to >= entries.length) return blocks;
  [entries[at], entries[to]] = [entries[to], entries[at]];
  return Object.fromEntries(entries);
}

/**
 * One more block after another.
 * @param {Blocks} blocks
 * @param {string | null} after
 * @returns {{ blocks: Blocks, name: string }}
 */
export function added(blocks, after) {
  const entries = Object.entries(blocks), at = entries.findIndex(([key]) => key === after);
  const name = freeName("new-block", (taken) => Object.hasOwn(blocks, taken));
  entries.splice(at < 0 ? entries.length : at + 1, 0, [name, { title: "New block", length: "30 min", others: "standby" }]);
  return { blocks: Object.fromEntries(entries), name };
}

/**
 * Without a block, and which one comes into its place.
 * @param {Blocks} blocks
 * @param {string} name
 * @returns {{ blocks: Blocks, next: string | null }}
 */
export function removed(blocks, name) {
  const names = Object.keys(blocks), at = names.indexOf(name);
  const { [name]: _, ...left } = blocks;
  return { blocks: left, next: names[at + 1] ?? names[at - 1] ?? null };
}

/**
 * With other lengths, in minutes.
 * @param {Blocks} blocks
 * @param {{ [name: string]: number }} minutes
 * @returns {Blocks}
 */
export function resized(blocks, minutes) {
  return Object.fromEntries(Object.entries(blocks).map(([name, block]) =>
    [name, Object.hasOwn(minutes, name) ? { ...block, length: lengthText(minutes[name]) } : block]));
}

/**
 * How long a day is in all; `isWhole` is false where a length can't be read and isn't counted.
 * @param {Blocks} blocks
 * @returns {{ minutes: number, isWhole: boolean }}
 */
export function lengthOf(blocks) {
  const lengths = Object.values(blocks).map((block) => minutesOf(block.length));
  return { minutes: lengths.reduce((/** @type {number} */ sum, length) => sum + (length ?? 0), 0),
    isWhole: lengths.every((length) => length !== null) };
}

/**
 * The lengths after an edge between two blocks was moved: the one gives what the other takes. The last edge makes the day longer
 * or shorter.
 * @param {{ name: string, minutes: number }[]} before
 * @param {number} at the block whose end is moved
 * @param {number} minutes how long it shall be
 * @param {number} least the shortest that a block becomes by this
 * @returns {{ [name: string]: number }}
 */
export function edgeMoved(before, at, minutes, least) {
  const block = before[at], next = before[at + 1];
  let wanted = Math.min(longestBlock, Math.max(Math.min(least, Math.max(block.minutes, 1)), minutes));
  if (!next) return { [block.name]: wanted };
  const both = block.minutes + next.minutes;
  wanted = Math.max(Math.min(least, both / 2), Math.min(wanted, both - Math.min(least, Math.max(next.minutes, 1))));
  return { [block.name]: wanted, [next.name]: both - wanted };
}

/**
 * The hours that are written under a day: minutes after its start, never more than a few dozen.
 * @param {number} total minutes
 * @param {number} offset minutes from midnight to its start
 * @returns {number[]}
 */
export function hourMarks(total, offset) {
  const every = [30, 60, 120, 180, 360, 720, 1440].find((step) => total / step <= 9) ?? Math.ceil(total / 9 / 1440) * 1440;
  const marks = [];
  for (let minute = Math.ceil(offset / every) * every - offset; minute <= total; minute += every) marks.push(minute);
  return marks;
}
