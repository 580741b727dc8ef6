// Which place of the form a path of the file belongs to, where no field of the form is about that very path.

/** A path that a sentence names, in its brackets: " (parts.own-camera.size)". */
export const namedPath = / \(((?:parts|builds|days|chargers|kit)\.[a-z0-9.-]+)\)/g;

/**
 * The places to look for, best first: a thing of the rig is "kit.NAME", the question for one that is missing "missing.QUESTION".
 * @param {string} path
 * @param {string | null} build
 * @param {{ things: { name: string, question: string, own: string | null, part: string | null }[] }} view
 * @returns {string[]}
 */
export function placesOf(path, build, { things }) {
  const [group, name, inner, item] = path.split("."), inBuild = group === "builds" && name === build;
  const named = (/** @type {string} */ question) => {
    const thing = things.find((candidate) => candidate.question === question);
    return thing ? `kit.${thing.name}` : `missing.${question}`;
  };
  if (inBuild && ["devices", "regulators", "splitters", "places"].includes(inner))
    return [item ? `kit.${item}` : named("camera")];
  if (inBuild && inner === "battery" && item === "age") return [`builds.${build}.battery.age.bought`];
  if (inBuild && (inner === "battery" || inner === "plate")) return [named(inner)];
  if (inBuild && inner === "on-head") return [named("head")];
  if (inBuild && inner === "on-legs") return [named("legs")];
  if (group === "parts")
    return things.filter(({ own, part }) => own === name || part === name).map((thing) => `kit.${thing.name}`);
  if (group === "chargers") return ["asked.charger-bays"];
  if (group === "batteries") return ["asked.battery-count"];
  if (group === "costs") return ["costs.budget"];
  if (group === "journeys") return ["asked.journey-by"];
  return [];
}
