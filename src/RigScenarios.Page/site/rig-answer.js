// The answer, which builds up while the form is filled in. Asked for after each change; what is shown stays until the new
// answer is there.
import { api } from "./api.js";
import { tellUpdated } from "./drawing.js";
import { drawFigures, el, showParts } from "./parts.js";
import { inWords, say } from "./tell.js";

const typing = 150, moving = 10, again = 3000, patience = 1500;
const elsewhere = { blocks: "the day", ambient: "how cold it is" };

export class Answer extends EventTarget {
  #timer = 0;
  #running = null;
  #isOverdue = false;

  constructor(draft, knowledge) {
    super();
    Object.assign(this, { draft, knowledge });
    const byId = (id) => document.getElementById(id);
    Object.assign(this, {
      element: byId("answer"), missing: byId("answer-missing"), spoken: byId("answer-spoken"), stale: byId("answer-stale"), away: byId("answer-away"), parts: byId("answer-parts"),
      figures: byId("answer-figures"), assumed: byId("answer-assumed"), assumedList: byId("assumed-list"), file: byId("answer-file"), text: byId("file-text"), strip: byId("answer-strip"),
    });
    // On a phone the sentence stands at the foot of the window until the answer itself is in view.
    new IntersectionObserver(([seen]) => { this.strip.hidden = seen.isIntersecting; }).observe(this.parts);
    // The file's text is made for who looks at it.
    this.file.addEventListener("toggle", () => { if (this.file.open) this.#soon(0); });
    draft.addEventListener("changed", ({ detail }) => {
      this.#changed = performance.now();
      this.#soon(detail.isQuick ? moving : typing);
    });
  }

  // When the reader did what the next question is about: the first change since the last one.
  #changed = 0;
  #run = 0;

  #soon(milliseconds) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => { this.#timer = 0; this.#ask(); }, milliseconds);
  }

  /** Whether the rig has changed since the question whose answer is shown. */
  get isBehind() { return this.#isOverdue || this.#timer !== 0; }

  // One question at a time, and of those that wait only the newest: so the picture follows a slider that never rests.
  async #ask() {
    if (this.#running) {
      this.#isOverdue = true;
      if (performance.now() - this.#running.since > patience) this.#running.abort();
      return;
    }

    const at = this.#changed;
    this.#running = Object.assign(new AbortController(), { since: performance.now() });
    const slow = setTimeout(() => this.element.setAttribute("aria-busy", "true"), 400);
    try {
      const { file, build, day } = this.draft.place;
      const answer = await api("POST", "/api/rig/answer", { draft: this.draft.value, file, build, day, brief: !this.file.open }, this.#running.signal);
      this.away.hidden = true;
      this.#show(answer);
      this.dispatchEvent(new CustomEvent("answered", { detail: answer }));
      await drawFigures(this.parts);
      tellUpdated({ run: ++this.#run, at }, "rig", { milliseconds: 0, rerun: [] });
    } catch (error) {
      if (error.name !== "AbortError") this.#tellRefusal(error);
    } finally {
      clearTimeout(slow);
      this.element.removeAttribute("aria-busy");
      this.#running = null;
      if (this.#isOverdue) { this.#isOverdue = false; this.#soon(0); }
    }
  }

  #tellRefusal(error) {
    if (!error.problems) throw error;
    const isFormsFault = error.status >= 400 && error.status < 500 && error.status !== 401 && error.status !== 403;
    this.away.hidden = false;
    say(this.away, `${error.problems.map(inWords).join(" ")}${isFormsFault ? "" : " What you entered is kept in this window."}`);
    if (isFormsFault) this.dispatchEvent(new CustomEvent("refused", { detail: error.problems }));
    else this.#soon(again);
  }

  #show(answer) {
    const errors = answer.problems.filter((problem) => problem.severity !== "warning").length;
    this.#showMissing(answer.missing);
    const spoken = answer.answer?.text ?? "";
    const toDo = errors > 0 ? `${errors === 1 ? "One thing" : `${errors} things`} to put right in the form.` : !spoken && answer.missing.length > 0 ? `Still to say: ${answer.missing.map((key) => this.#label(key)).join(", ")}.` : "";
    const further = answer.parts.filter((part) => part.type === "answer").map((part) => part.text);
    say(this.spoken, [toDo, spoken, ...further].filter(Boolean).join(" "));
    say(this.strip, spoken || toDo || "The answer appears here.");
    // While there is no picture yet, the list of what is still to say says it all.
    const isBegun = answer.parts.length > 0 || answer.missing.length === 0;
    const sentence = isBegun && answer.answer ? [{ type: "answer", ...answer.answer }] : [];
    const parts = [...sentence, ...answer.parts];
    // What was shown stays while something is to be put right, and says that it is from before.
    const isStale = errors > 0 && !parts.some((part) => part.type === "figure") && this.parts.querySelector("figure") !== null;
    this.element.classList.toggle("answer-old", isStale);
    this.stale.hidden = !isStale;
    if (!isStale) showParts(this.parts, parts);
    this.figures.replaceChildren(...[["Mass", answer.mass], ["Price", answer.price]].filter(([, value]) => value)
      .map(([name, value]) => el("div", {}, el("dt", {}, name), el("dd", {}, value))));
    this.assumed.hidden = answer.assumed.length === 0;
    say(this.assumed.firstElementChild, answer.assumed.length === 1 ? "One value was left open and is assumed" : `${answer.assumed.length} values were left open and are assumed`);
    this.assumedList.replaceChildren(...answer.assumed.map((assumed) => el("li", {}, el("span", { class: "assumed-name" }, assumed.name), ": ", el("strong", {}, assumed.value),
      assumed.why ? `. ${assumed.why}` : null,
      assumed.source ? el("span", { class: "assumed-source" }, ` (${assumed.source})`) : null)));
    this.file.hidden = !answer.isWhole;
    if (answer.text !== null || !answer.isWhole) say(this.text, answer.text ?? "");
  }

  #label(key) { return (this.knowledge.questions.find((question) => question.key === key)?.label ?? elsewhere[key] ?? key).toLowerCase(); }

  // What is missing is a list of places to go to, not a list of faults.
  #showMissing(missing) {
    this.missing.hidden = missing.length === 0;
    const links = missing.map((key) => el("li", {}, el("a", { href: document.getElementById(`question-${key}`) ? `#question-${key}` : `#${key}` }, this.#label(key))));
    this.missing.lastElementChild.replaceChildren(...links);
  }
}
