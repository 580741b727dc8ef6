// What a teacher's task is made of, without a page: which of it still goes with the rig, names of files, a table of what was
// handed in.

/** @import { ClassTask, HandIn, LessonNow, Table, TaskChoices } from "../shared/requests.js" */

/**
 * The task with only what the rig has: after another rig or day was chosen, some of it may be gone.
 * @param {ClassTask} task
 * @param {TaskChoices} choices
 * @returns {ClassTask}
 */
export function withoutUnknown(task, choices) {
  /** @param {{ name: string }[]} all @returns {Set<string>} */
  const names = all => new Set(all.map(one => one.name));
  const controls = names(choices.controls), estimates = names(choices.estimates);
  const kinds = new Set(choices.questions.map(question => question.kind));
  return { ...task, controls: task.controls.filter(control => controls.has(control.field)),
    estimates: task.estimates.filter(name => estimates.has(name)), shown: task.shown.filter(kind => kinds.has(kind)) };
}

/**
 * What is asked and hidden where nobody has said anything yet: on a rig as it is all of it; on one with something wrong nothing
 * is hidden but the key, for the answer shows whether it is put right.
 * @param {ClassTask} task
 * @param {TaskChoices} choices
 * @returns {ClassTask}
 */
export function asUsual(task, choices) {
  const isExercise = task.causes > 0;
  return { ...task, shown: isExercise ? choices.questions.map(question => question.kind) : [],
    estimates: isExercise ? [] : choices.estimates.map(estimate => estimate.name) };
}

/** A file's name for a title. @param {string} title */
export function nameFor(title) {
  return title.normalize("NFKD").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "").slice(0, 40)
    .replace(/-+$/, "") || "task";
}

/** Lines of a text, the empty ones left out. @param {string} text */
export function linesOf(text) { return text.split("\n").map(line => line.trim()).filter(Boolean); }

/** A number that was typed; null for nothing or no number. @param {string} text */
export function numberOf(text) {
  const trimmed = text.trim().replace(",", ".");
  return trimmed !== "" && Number.isFinite(Number(trimmed)) ? Number(trimmed) : null;
}

/**
 * What was handed in as a table, the program's own answers in the last row.
 * @param {LessonNow} lesson
 * @returns {Table}
 */
export function tableOf({ asked, handIns, headline }) {
  const columns = ["Name", "At", ...asked.map(one => one.unit ? `${one.question} (${one.unit})` : one.question),
    "Changed", "What the program says of it"].map(title => ({ title, isNumber: false }));
  /** @param {HandIn} one */
  const row = one => [one.name, one.at, ...asked.map(question => one.estimates[question.name] ?? ""), one.changes.join("; "),
    one.outcome];
  return { columns, rows: [...handIns.map(row),
    ["The program", "", ...asked.map(question => question.answer ?? ""), "", headline]] };
}

/**
 * The same for a file: a spreadsheet takes a text that begins like a formula for one, and these were written by others.
 * @param {Table} table
 * @returns {Table}
 */
export function withoutFormulas(table) {
  /** @param {string} cell */
  const plain = cell => /^[=+@\t]|^-(?!\d+([.,]\d+)?( |$))/.test(cell) ? `'${cell}` : cell;
  return { ...table, rows: table.rows.map(row => row.map(plain)) };
}
