// What devices do in a block: a state for each one named, another for all that are not named, off if neither is given.

/** @typedef {{ [name: string]: any }} Block a block of the day as it stands in the tree */
/** @typedef {{ name: string, question: string, title: string }} Thing */

const passive = new Set(["battery", "plate", "regulator", "lens", "lens-adapter", "other", "head", "legs"]);

/**
 * The names of the things that are switched on and off in blocks.
 * @param {Thing[]} things
 */
export function devicesOf(things) {
  return things.filter((thing) => !passive.has(thing.question)).map((thing) => thing.name);
}

/** @param {Block} block @param {string} device @returns {string} */
export function stateOf(block, device) { return block.states?.[device] || block.others || "off"; }

/**
 * The one state of all devices, or "mixed".
 * @param {Thing[]} things
 * @param {Block} block
 * @returns {string}
 */
export function stateOfAll(things, block) {
  const states = new Set(devicesOf(things).map((device) => stateOf(block, device)));
  if (states.size === 0) return block.others || Object.values(block.states ?? {})[0] || "off";
  return states.size === 1 ? [...states][0] : "mixed";
}

/**
 * The block with all devices doing the same. What it says of things that are not on this rig stays: other builds use it.
 * @param {Thing[]} things
 * @param {Block} block
 * @param {string} state
 * @returns {Block}
 */
export function withAll(things, block, state) {
  const { states, ...rest } = block;
  const strangers = Object.entries(states ?? {}).filter(([device]) => !things.some((thing) => thing.name === device));
  return { ...rest, others: state, ...(strangers.length > 0 ? { states: Object.fromEntries(strangers) } : {}) };
}

/**
 * The block with one device doing something of its own.
 * @param {Block} block
 * @param {string} device
 * @param {string} state
 * @returns {Block}
 */
export function withOne(block, device, state) { return { ...block, states: { ...block.states, [device]: state } }; }

/** @param {Block} block */
export function isRolling(block) { return ["yes", "true"].includes(String(block.rolling).toLowerCase()); }
