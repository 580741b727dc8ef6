// Which rig this is: a new one, a file's build and day, or what this or another window left unsaved.
import { pageOf } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import { ask } from "../shared/program.js";
import { el } from "../shared/parts.js";
import { Rig } from "./state.js";

/** @typedef {import("./state.js").Shown} Shown */
/** @typedef {import("./state.js").Place} Place */

/**
 * Opens what the address names.
 * @param {Rig} rig
 * @param {Shown & { build: string, day: string }} blank a new rig
 */
export async function openPlace(rig, blank) {
  const asked = new URLSearchParams(location.search), file = asked.get("file");
  if (!file) {
    const place = { file: null, build: blank.build, day: blank.day, version: null };
    // A rig that came with a link keeps the names of its build and its day, and what was made of it lies under them.
    const named = { ...place, build: asked.get("build") ?? place.build, day: asked.get("day") ?? place.day };
    open(rig, blank, Rig.kept(named) ? named : place);
    return;
  }

  const opened = await ask("rig-given", { file, build: asked.get("build"), day: asked.get("day") });
  const exact = { file, build: opened.build, day: opened.day };
  history.replaceState(null, "", `${pageOf.rig(exact)}${location.hash}`);
  open(rig, opened, { ...exact, version: opened.version });
  showChoices(rig, opened, exact);
  showPlace(rig);
}

// The rig as it is, or as this window left it; what another window left is only offered.
/** @param {Rig} rig @param {Shown} shown @param {Place} place */
function open(rig, { given, view }, place) {
  const kept = Rig.kept(place);
  const openKept = () => kept && rig.open(kept.value, { ...place, version: kept.value.place?.version ?? place.version },
    { unsaved: true, opened: given, beside: kept.value.beside ?? null });
  if (kept?.isHere) openKept(); else rig.open({ given, view }, place);
  byId("kept").hidden = !kept?.isHere;
  byId("left").hidden = !kept || kept.isHere;
  byId("bring-back").onclick = () => {
    openKept();
    byId("left").hidden = true;
    byId("kept").hidden = false;
    byId("start-fresh").focus();
  };
  byId("leave-it").onclick = () => { rig.forget(); byId("left").hidden = true; };
  byId("start-fresh").onclick = () => {
    rig.forget();
    location.assign(rig.place.file ? location.href : pageOf.rig());
  };
}

/** The rig is a file now, and nothing of it is unsaved. @param {Rig} rig */
export function showSaved(rig) {
  for (const note of ["kept", "left", "linked"]) byId(note).hidden = true;
  showPlace(rig);
}

/** What the page says of the file. @param {Rig} rig */
function showPlace(rig) {
  const file = rig.place.file ?? "", name = file.split("/").pop(), isSample = !file.startsWith("own/");
  document.title = `${rig.text("title") || name} — your own rig`;
  byId("page-title").textContent = isSample ? "Start from a sample" : "Your own rig";
  byId("page-lead").textContent = isSample
    ? `This is a copy of the sample ${name}. Change what you like and save it under a name of your own; `
      + "the sample stays as it is."
    : `This is your file ${name}. What the form doesn't show, and every remark in the file, stays as it is when you save.`;
}

// Which of its builds and days.
/** @param {Rig} rig @param {any} opened @param {{ [key: string]: string }} place */
function showChoices(rig, opened, place) {
  byId("place").hidden = false;
  for (const [key, choices] of [["build", opened.builds], ["day", opened.days]]) {
    const select = byId(`place-${key}`, HTMLSelectElement);
    select.replaceChildren(...choices.map((/** @type {any} */ choice) =>
      el("option", { value: choice.name }, choice.title || choice.name)));
    select.value = place[key];
    select.addEventListener("change", () => {
      const [build, day] = ["build", "day"].map((name) => byId(`place-${name}`, HTMLSelectElement).value);
      location.assign(pageOf.rig({ file: rig.place.file, build, day }));
    });
  }
}
