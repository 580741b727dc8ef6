// What a student has written and set, kept in this window until it is closed: a reload or a tablet that slept finds it again, and
// the next student, in a new window, does not.

/**
 * `student`: the key of this page; `name`, `estimates`, `settings`: what was written and set.
 * @typedef {{ student: string | null, name: string, estimates: Record<string, string>, settings: Record<string, string> }} Draft
 */

/** @param {unknown} value @returns {Record<string, string>} */
function texts(value) {
  if (typeof value !== "object" || value === null) return {};
  return Object.fromEntries(Object.entries(value).filter(([, text]) => typeof text === "string"));
}

/**
 * What is kept of a task's code; an empty draft where nothing is, or nothing that can be read.
 * @param {string} code
 * @returns {Draft}
 */
export function readDraft(code) {
  /** @type {any} */
  let kept = null;
  try { kept = JSON.parse(sessionStorage.getItem(`rig-lesson-${code}`) ?? "null"); } catch { /* nothing readable */ }
  return { student: typeof kept?.student === "string" ? kept.student : null,
    name: typeof kept?.name === "string" ? kept.name : "", estimates: texts(kept?.estimates), settings: texts(kept?.settings) };
}

/** @param {string} code @param {Draft} draft */
export function writeDraft(code, draft) {
  try { sessionStorage.setItem(`rig-lesson-${code}`, JSON.stringify(draft)); } catch { /* a browser that keeps nothing */ }
}

/**
 * The settings that still go with the controls: the teacher may have locked one meanwhile, or narrowed it.
 * @param {Record<string, string>} settings
 * @param {import("../shared/requests.js").ClassControl[]} controls
 */
export function stillOpen(settings, controls) {
  /** @param {import("../shared/requests.js").ClassControl} control @param {string} value */
  const takes = (control, value) => value === control.default || (control.kind === "number"
    ? value !== "" && Number(value) >= (control.minimum ?? -Infinity) && Number(value) <= (control.maximum ?? Infinity)
    : control.choices.some(choice => choice.value === value));
  return Object.fromEntries(controls.filter(({ name }) => name in settings)
    .filter(control => takes(control, settings[control.name])).map(({ name }) => [name, settings[name]]));
}
