// Problems stand at the field that they are about. What has no field on the page is told in one place below the answer.
import { el } from "../shared/parts.js";
import { freshId, inWords } from "../shared/tell.js";
import { placesOf } from "./paths.js";
import { around } from "./tree.js";

/** @typedef {{ path?: string, text: string, severity?: string, accepted?: string, nearest?: string }} Problem */

export class ProblemNotes {
  /** @type {{ note: HTMLElement, field: HTMLElement }[]} */
  #notes = [];

  /** @param {import("./state.js").Rig} rig @param {HTMLElement} form @param {HTMLElement} rest */
  constructor(rig, form, rest) {
    this.rig = rig;
    this.form = form;
    this.rest = rest;
  }

  /** Shows these in the place of those before. @param {Problem[]} problems */
  show(problems) {
    for (const { note, field } of this.#notes) {
      note.remove();
      field.removeAttribute("aria-invalid");
      this.#describe(field, (ids) => ids.filter((id) => id !== note.id));
    }
    this.#notes = [];
    this.rest.replaceChildren();
    this.#tellAll(problems);
  }

  /** Shows more of them, all at one field. @param {Problem[]} problems @param {string} path */
  add(problems, path) { this.#tellAll(problems.map((problem) => ({ ...problem, path }))); }

  /** @param {Problem[]} problems */
  #tellAll(problems) {
    const fields = fieldsIn(this.form);
    for (const problem of problems) {
      const field = fieldAt(this.rig, fields, problem.path ?? "");
      if (field) this.#notes.push(this.#tell(problem, field));
      else this.rest.append(el("li", {}, inWords(problem)));
    }
    this.rest.hidden = this.rest.childElementCount === 0;
  }

  /** @param {Problem} problem @param {HTMLElement} field */
  #tell(problem, field) {
    const note = el("p", { class: "problem", id: freshId("problem") }, inWords(problem));
    (field.closest(".field") ?? field.parentElement)?.append(note);
    // What is wrong is not left folded.
    unfold(field);
    // Only fields can be said to be wrong; a group has its note within it.
    if (field.matches("input, select, textarea")) {
      if (problem.severity !== "warning") field.setAttribute("aria-invalid", "true");
      this.#describe(field, (ids) => [...ids, note.id]);
    }
    return { note, field };
  }

  /** @param {HTMLElement} field @param {(ids: string[]) => string[]} edit */
  #describe(field, edit) {
    const ids = edit((field.getAttribute("aria-describedby") ?? "").split(" ").filter(Boolean));
    if (ids.length > 0) field.setAttribute("aria-describedby", ids.join(" ")); else field.removeAttribute("aria-describedby");
  }
}

// Opens whatever it is folded in.
/** @param {HTMLElement} field */
function unfold(field) {
  for (let fold = field.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    if (fold instanceof HTMLDetailsElement) fold.open = true;
}

/**
 * The fields of the form by their paths.
 * @param {HTMLElement} form
 * @returns {Map<string, HTMLElement>}
 */
function fieldsIn(form) {
  const all = /** @type {HTMLElement[]} */ ([...form.querySelectorAll("[data-path]")]);
  // A text beside a list of choices has the path of the choices: what is shown of the two comes first.
  return new Map(all.filter((field) => field.dataset.path).sort((one, other) => Number(other.hidden) - Number(one.hidden))
    .map((field) => [field.dataset.path ?? "", field]));
}

// The field at a path or around it; for what no field is about, the thing that it is about.
/** @param {import("./state.js").Rig} rig @param {Map<string, HTMLElement>} fields @param {string} path */
function fieldAt(rig, fields, path) {
  for (const candidate of [path, ...placesOf(path, rig.place.build, rig.view)]) {
    const found = around(fields.keys(), candidate);
    if (found !== null) return fields.get(found) ?? null;
  }
  return null;
}

/** Whether there is a field at a path. @param {import("./state.js").Rig} rig @param {HTMLElement} form @param {string} path */
export function hasField(rig, form, path) { return fieldAt(rig, fieldsIn(form), path) !== null; }

/**
 * Goes to the field at a path, or the nearest around it; true if there is one.
 * @param {import("./state.js").Rig} rig
 * @param {HTMLElement} form
 * @param {string} path
 */
export function goTo(rig, form, path) {
  const field = fieldAt(rig, fieldsIn(form), path);
  if (!field) return false;
  unfold(field);
  field.scrollIntoView({ block: "center" });
  const focused = field.matches("input, select, textarea, button") ? field
    : field.querySelector("input, select, textarea, button");
  /** @type {HTMLElement} */ (focused)?.focus({ preventScroll: true });
  return true;
}
