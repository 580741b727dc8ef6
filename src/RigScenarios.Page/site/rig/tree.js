// What somebody gave of a rig: a tree of texts, as a scenario file has it. A tree is never changed in place: a change gives a
// new one that shares with the old what stayed, so that every step back costs next to nothing.

/** @typedef {import("../shared/requests.js").Tree} Tree groups within groups, texts at their ends */

/**
 * What stands at a path such as "builds.rig.battery.charge"; undefined where nothing does.
 * @param {any} tree
 * @param {string | null} path
 * @returns {any}
 */
export function at(tree, path) {
  if (path === null) return undefined;
  let here = tree;
  for (const name of path.split(".")) {
    if (here === null || typeof here !== "object" || !Object.hasOwn(here, name)) return undefined;
    here = here[name];
  }
  return here;
}

/**
 * The text at a path, "" where there is none. A list of texts is written with commas.
 * @param {any} tree
 * @param {string | null} path
 * @returns {string}
 */
export function textAt(tree, path) {
  const found = at(tree, path);
  if (Array.isArray(found)) return found.filter((item) => typeof item === "string").join(", ");
  return typeof found === "string" ? found : "";
}

/**
 * The tree with something else at a path; groups on the way are made. Nothing ("", null, undefined) takes away what stands there,
 * and leaves the group around it: an empty group says that a thing is there.
 * @param {any} tree
 * @param {string} path
 * @param {any} value
 * @returns {Tree}
 */
export function withAt(tree, path, value) {
  const [name, ...rest] = path.split("."), group = tree !== null && typeof tree === "object" ? tree : {};
  const isNothing = value === "" || value === null || value === undefined;
  if (isNothing && !Object.hasOwn(group, name)) return group;
  if (rest.length > 0) {
    const inner = Object.hasOwn(group, name) ? group[name] : {};
    return own({ ...group }, name, withAt(inner, rest.join("."), value));
  }
  if (!isNothing) return own({ ...group }, name, value);
  const { [name]: _, ...left } = group;
  return left;
}

/**
 * As `withAt` with nothing, and every group around it goes too in which nothing else stands.
 * @param {any} tree
 * @param {string} path
 * @returns {Tree}
 */
export function without(tree, path) {
  const left = withAt(tree, path, ""), end = path.lastIndexOf("."), group = end < 0 ? null : at(left, path.slice(0, end));
  return group && Object.keys(group).length === 0 ? without(left, path.slice(0, end)) : left;
}

/**
 * A path with the names of this rig put in: "builds.{build}.stance" with {build: "rig"}. Null where a name is not known.
 * @param {string} pattern
 * @param {{ [name: string]: string | null | undefined }} names
 * @returns {string | null}
 */
export function filled(pattern, names) {
  let isKnown = true;
  const path = pattern.replace(/\{([a-z]+)\}/g, (_, name) => {
    const found = names[name];
    if (!found) isKnown = false;
    return found ?? "";
  });
  return isKnown ? path : null;
}

/**
 * The longest of `paths` that is `path` or lies around it: a problem deep in a group is told at the group. Null if none.
 * @param {Iterable<string>} paths
 * @param {string} path
 * @returns {string | null}
 */
export function around(paths, path) {
  const known = new Set(paths);
  for (let here = path; here !== ""; here = here.slice(0, Math.max(0, here.lastIndexOf("."))))
    if (known.has(here)) return here;
  return null;
}

/**
 * Whether two trees say the same in the same order.
 * @param {any} one
 * @param {any} other
 */
export function isSame(one, other) { return one === other || JSON.stringify(one) === JSON.stringify(other); }

// A name such as "__proto__" is a name like any other.
/** @param {Tree} group @param {string} name @param {any} value */
function own(group, name, value) {
  Object.defineProperty(group, name, { value, enumerable: true, configurable: true, writable: true });
  return group;
}
