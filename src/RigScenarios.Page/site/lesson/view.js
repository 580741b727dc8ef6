// What a class is shown of a task: whatever the program sent, and nothing else is known here.
import { byId } from "../shared/elements.js";
import { drawFigures, el, makeTable, prose, showParts } from "../shared/parts.js";
import { say } from "../shared/tell.js";

/** @import { Asked, GivenSection, LessonView } from "../shared/requests.js" */

/** Words of several lines as paragraphs. @param {string} text */
export function paragraphs(text) {
  return text.split(/\n+/).map(line => line.trim()).filter(Boolean);
}

/**
 * What is hidden, in a sentence; "" where nothing is.
 * @param {Pick<LessonView, "hidden" | "isHiding" | "onHandIn">} view
 */
export function hiddenWords({ hidden, isHiding, onHandIn }) {
  if (!isHiding) return "";
  const what = hidden.length > 0 ? `Hidden: ${hidden.join(", ")}.` : "What is to be found is hidden.";
  return `${what} ${onHandIn ? "You see it when you have handed in." : "Your teacher shows it to all of you."}`;
}

/** @param {LessonView} view */
export function showView(view) {
  document.title = view.title;
  byId("lesson-title").textContent = view.title;
  byId("about").textContent = view.about;
  byId("text").replaceChildren(...[...paragraphs(view.text), ...view.known].map(line => el("p", {}, prose(line))));
  byId("days").replaceChildren(...view.days.map(line => el("li", {}, prose(line))));
  byId("given").replaceChildren(...view.given.map(section));
  byId("cautions").replaceChildren(...view.cautions.map(line => el("li", {}, prose(line))));
  showTold(view);
  showParts(byId("drawing"), view.parts.filter(part => part.type === "drawing"));
  const parts = byId("parts");
  showParts(parts, view.parts.filter(part => part.type !== "drawing"));
  drawFigures(parts);
}

/** @param {LessonView} view */
function showTold(view) {
  const answer = view.parts.find(part => part.type === "answer");
  // The whole answer stands below, with the same lines.
  byId("lines").replaceChildren(...(answer ? [] : view.lines).map(line => el("li", {}, el("strong", {}, `${line.title}: `),
    el("span", { class: "verdict" }, `${line.verdict}. `), prose(line.words))));
  byId("check").replaceChildren(...view.check.map(line => el("li", {}, prose(line))));
  const hidden = hiddenWords(view);
  say(byId("answer-told"), [answer?.text ?? "", hidden].filter(Boolean).join(" "));
}

/** @param {GivenSection} given */
function section(given) {
  const table = given.columns.length > 0
    ? makeTable({ columns: given.columns.map((title, i) => ({ title, isNumber: isFigures(given.rows, i) })), rows: given.rows })
    : el("ul", { class: "lines" }, given.rows.map(row => el("li", {}, prose(row[0]))));
  return el("section", {}, el("h3", {}, given.title), table, given.note ? el("p", { class: "help" }, prose(given.note)) : null);
}

/** Whether a column holds numbers only. @param {string[][]} rows @param {number} at */
export function isFigures(rows, at) {
  const cells = rows.map(row => row[at]).filter(cell => cell !== "");
  return cells.length > 0 && cells.every(cell => Number.isFinite(Number(cell)));
}

/**
 * The fields for one's own estimates; made anew only where others are asked.
 * @param {Asked[]} asked
 * @param {Record<string, string>} written
 * @param {boolean} isTold whether all is told, and nothing more is to be written
 * @param {(name: string, text: string) => void} changed
 */
export function showAsked(asked, written, isTold, changed) {
  const box = byId("asked");
  const key = JSON.stringify(asked.map(({ name, question }) => [name, question]));
  if (box.dataset.asked !== key) {
    box.dataset.asked = key;
    box.replaceChildren(...asked.map(one => askedRow(one, written[one.name] ?? "", changed)));
  }
  for (const one of asked) {
    const model = byId(`model-${one.name}`);
    byId(`estimate-${one.name}`, HTMLInputElement).readOnly = isTold;
    model.hidden = one.answer === null;
    model.textContent = one.answer === null ? "" : prose(`The program: ${one.answer}`);
  }
}

/** @param {Asked} asked @param {string} text @param {(name: string, text: string) => void} changed */
function askedRow({ name, question, unit }, text, changed) {
  const id = `estimate-${name}`;
  const field = el("input", { id, type: "text", maxlength: "300", autocomplete: "off", "aria-describedby": `model-${name}` });
  field.value = text;
  field.addEventListener("input", () => changed(name, field.value));
  return el("div", { class: "asked" }, el("label", { for: id }, question), el("div", { class: "row" }, field,
    unit ? el("span", { class: "unit" }, unit) : null), el("p", { class: "model", id: `model-${name}`, hidden: true }));
}
