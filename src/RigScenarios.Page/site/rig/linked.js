// A rig that came in the address (a link). It takes no other rig's place: where one is left here that isn't saved, that one is
// shown, and the reader says what becomes of the two.
import { pageOf } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import { ask } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { isRigLink, LinkProblem, rigIn } from "../shared/rig-link.js";
import { inWords, say } from "../shared/tell.js";
import { isSameRig, Rig } from "./state.js";
import { textAt } from "./tree.js";
import { Versions } from "./versions.js";

/** @typedef {import("./state.js").Shown} Shown */
/** @typedef {import("./state.js").Place} Place */
/** @typedef {{ shown: Shown, place: Place }} Linked */

/**
 * Opens the rig of this page's address, or the one that is left here. False: there is no link, or none that can be read, which is
 * told.
 * @param {Rig} rig
 * @param {Shown} blank a new rig
 */
export async function openLinked(rig, blank) {
  // A link that is pasted into this page's address does not load the page anew.
  addEventListener("hashchange", () => { if (isRigLink(location.hash)) location.reload(); });
  if (!isRigLink(location.hash)) return false;
  const linked = await read(location.hash);
  // The address says from now on which rig this is, and a reload finds what was made of it.
  history.replaceState(null, "", linked ? addressOf(linked.place) : location.pathname + location.search);
  if (!linked) return false;
  const kept = Rig.kept(linked.place)?.value;
  if (kept && !isSameRig(kept, linked.shown)) {
    rig.open(kept, { ...linked.place, version: kept.place?.version ?? null },
      { unsaved: true, opened: blank.given, beside: kept.beside ?? null });
    offer(rig, linked);
  } else {
    open(rig, linked, null);
    tell("This rig came with the link. It isn't saved as a file yet; this window keeps it meanwhile.");
  }
  return true;
}

/** @param {string} hash @returns {Promise<Linked | null>} */
async function read(hash) {
  try {
    const { given, build, day } = await rigIn(hash), alone = await ask("rig-alone", { given, file: null, build, day });
    return { shown: { given: alone.given, view: alone.view },
      place: { file: null, build: alone.build, day: alone.day, version: null } };
  } catch (error) {
    if (!(error instanceof LinkProblem) && !(error instanceof ProgramProblem)) throw error;
    tell(error instanceof ProgramProblem ? error.problems.map(inWords).join(" ") : error.message);
    return null;
  }
}

/** @param {Rig} rig @param {Linked} linked @param {any} beside */
function open(rig, { shown, place }, beside) {
  rig.open(shown, place, { unsaved: true, beside });
  document.title = `${rig.text("title") || "A rig"} — your own rig`;
}

/** @param {Rig} rig @param {Linked} linked */
function offer(rig, linked) {
  const name = textAt(linked.shown.given, "title") || "without a name";
  const done = (/** @type {any} */ beside, /** @type {string} */ words) => {
    open(rig, linked, beside);
    byId("link-choice").hidden = true;
    tell(words);
    byId("page-title").focus();
  };
  tell(`The link carries a rig: “${name}”. Another one is left here that isn't saved, so that one is shown.`);
  byId("link-choice").hidden = false;
  byId("link-beside").hidden = !besides(rig).hasRoom;
  byId("link-beside").onclick = () => {
    const versions = besides(rig);
    versions.add(linked.shown);
    done(versions.toKeep(), `“${name}” is in the form now. The rig that was left here stands beside it, under “Side by side”.`);
  };
  byId("link-instead").onclick = () => done(null, `“${name}” is in the form now. The rig that was left here is forgotten.`);
  byId("link-leave").onclick = () => { byId("link-choice").hidden = true; tell(""); };
}

/** The rigs that stand side by side here. @param {Rig} rig */
function besides(rig) {
  const versions = new Versions();
  versions.bringBack(rig.beside, () => null);
  if (versions.isBegun) versions.keep(rig.shown, null);
  else versions.add(rig.shown);
  return versions;
}

/** @param {Place} place */
const addressOf = ({ build, day }) => pageOf.rig(build === "rig" && day === "day" ? {} : { build, day });

/** @param {string} words */
function tell(words) {
  byId("linked").hidden = words === "";
  say(byId("linked-told"), words);
}
