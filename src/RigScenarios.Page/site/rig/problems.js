// Problems stand at the field that they are about. What has no field on the page is told in one place below the answer.
import { el } from "../shared/parts.js";
import { freshId, inWords } from "../shared/tell.js";

export class ProblemNotes {
  #notes = [];

  constructor(form, rest) {
    this.form = form;
    this.rest = rest;
  }

  show(problems) {
    for (const { note, field } of this.#notes) {
      note.remove();
      field?.removeAttribute("aria-invalid");
      if (field) this.#describe(field, (ids) => ids.filter((id) => id !== note.id));
    }

    const fields = new Map([...this.form.querySelectorAll("[data-path]")].map((field) => [field.dataset.path, field]));
    const homeless = [];
    this.#notes = problems.flatMap((problem) => {
      const field = fieldOf(fields, problem.path ?? "");
      if (!field) { homeless.push(problem); return []; }
      const note = el("p", { class: "problem", id: freshId("problem") }, inWords(problem));
      (field.closest(".field") ?? field.parentElement).append(note);
      // Only fields can be said to be wrong; a group has its note within it.
      if (field.matches("input, select, textarea")) {
        if (problem.severity !== "warning") field.setAttribute("aria-invalid", "true");
        this.#describe(field, (ids) => [...ids, note.id]);
      }
      return [{ note, field }];
    });
    this.rest.hidden = homeless.length === 0;
    this.rest.replaceChildren(...homeless.map((problem) => el("li", {}, problem.path ? `${problem.path}: ` : "",
      inWords(problem))));
  }

  #describe(field, edit) {
    const ids = edit((field.getAttribute("aria-describedby") ?? "").split(" ").filter(Boolean));
    if (ids.length > 0) field.setAttribute("aria-describedby", ids.join(" ")); else field.removeAttribute("aria-describedby");
  }
}

// The field with that path, or the nearest one around it: "things.monitor.own" where there is none for
// "things.monitor.own.power.0".
function fieldOf(fields, path) {
  for (let at = path; at !== ""; at = at.slice(0, Math.max(0, at.lastIndexOf("."))))
    if (fields.has(at)) return fields.get(at);
  return null;
}
