// What devices do in a block: a state for each one named, another for all that are not named, off if neither is given.

const passive = new Set(["battery", "plate", "regulator", "lens", "other", "head", "legs"]);

// The things that are switched on and off in blocks.
export function devicesOf(rig) {
  return Object.entries(rig.things).filter(([, thing]) => !passive.has(thing.role)).map(([name]) => name);
}

export function stateOf(block, device) { return block.states?.[device] ?? block.others ?? "off"; }

// The one state of all devices, or "mixed".
export function stateOfAll(rig, block) {
  const states = new Set(devicesOf(rig).map((device) => stateOf(block, device)));
  if (states.size === 0) return block.others ?? (Object.values(block.states ?? {})[0] || "off");
  return states.size === 1 ? [...states][0] : "mixed";
}

// All devices do the same. What the block says of things that are not in this rig stays: other builds of the file use it.
export function setAll(rig, block, state) {
  const strangers = Object.entries(block.states ?? {}).filter(([device]) => !(device in rig.things));
  block.others = state;
  if (strangers.length > 0) block.states = Object.fromEntries(strangers); else delete block.states;
}

// One device does something of its own.
export function setOne(block, device, state) { block.states = { ...block.states, [device]: state }; }
