// Problems stand at the field that they are about. What has no field on the page is told in one place below the answer.
import { el } from "../shared/parts.js";
import { freshId, inWords } from "../shared/tell.js";
import { around } from "./tree.js";

/** @typedef {{ path?: string, text: string, severity?: string, accepted?: string, nearest?: string }} Problem */

export class ProblemNotes {
  /** @type {{ note: HTMLElement, field: HTMLElement }[]} */
  #notes = [];

  /** @param {HTMLElement} form @param {HTMLElement} rest */
  constructor(form, rest) {
    this.form = form;
    this.rest = rest;
  }

  /** @param {Problem[]} problems */
  show(problems) {
    for (const { note, field } of this.#notes) {
      note.remove();
      field.removeAttribute("aria-invalid");
      this.#describe(field, (ids) => ids.filter((id) => id !== note.id));
    }
    const fields = fieldsIn(this.form);
    /** @type {Problem[]} */
    const homeless = [];
    this.#notes = problems.flatMap((problem) => {
      const field = fields.get(around(fields.keys(), problem.path ?? "") ?? "");
      if (!field) homeless.push(problem);
      return field ? [this.#tell(problem, field)] : [];
    });
    this.rest.hidden = homeless.length === 0;
    this.rest.replaceChildren(...homeless.map((problem) => el("li", {}, inWords(problem))));
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

/**
 * Goes to the field at a path, or the nearest around it; true if there is one.
 * @param {HTMLElement} form
 * @param {string} path
 */
export function goTo(form, path) {
  const fields = fieldsIn(form), field = fields.get(around(fields.keys(), path) ?? "");
  if (!field) return false;
  unfold(field);
  field.scrollIntoView({ block: "center" });
  const focused = field.matches("input, select, textarea, button") ? field
    : field.querySelector("input, select, textarea, button");
  /** @type {HTMLElement} */ (focused)?.focus({ preventScroll: true });
  return true;
}
