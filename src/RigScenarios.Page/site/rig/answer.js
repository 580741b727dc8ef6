// The answer, which builds up while the form is filled in. Asked for after each change; what is shown stays until the new
// answer is there.
import { connect } from "../shared/connection.js";
import { tellUpdated } from "../shared/drawing.js";
import { drawFigures, el, makeCautions, showParts } from "../shared/parts.js";
import { Work } from "./work.js";
import { RunQueue, WHY_STOPPED } from "../shared/run-queue.js";
import { inWords, say } from "../shared/tell.js";

const typing = 150;
const elsewhere = { blocks: "the day", ambient: "how cold it is" };

export class Answer extends EventTarget {
  #queue;
  #isBegun = false;
  #timer = 0;
  #slow = 0;
  #drawing = Promise.resolve();

  constructor(draft, knowledge) {
    super();
    Object.assign(this, { draft, knowledge });
    const byId = (id) => document.getElementById(id);
    Object.assign(this, {
      element: byId("answer"), missing: byId("answer-missing"), spoken: byId("answer-spoken"), stale: byId("answer-stale"),
      away: byId("answer-away"), parts: byId("answer-parts"), first: byId("answer-first"), cautions: byId("answer-cautions"),
      figures: byId("answer-figures"), assumed: byId("answer-assumed"), assumedList: byId("assumed-list"),
      file: byId("answer-file"), text: byId("file-text"), strip: byId("answer-strip"),
    });
    this.work = new Work(this.spoken);
    this.#queue = new RunQueue("now", connect("/api/rig/live", {
      message: (json) => this.#receive(json),
      open: () => { if (this.#isBegun) this.#want(performance.now(), true); },
      broken: (words) => {
        this.#queue.forget();
        this.#rest();
        this.#tellAway(`${words} What you entered is kept in this window.`);
      },
    }));
    // On a phone the sentence stands at the foot of the window until the answer itself is in view.
    new IntersectionObserver(([seen]) => { this.strip.hidden = seen.isIntersecting; }).observe(this.first);
    addEventListener("scroll", () => this.#draw(true), { passive: true, capture: true });
    // The file's text is made for who looks at it.
    this.file.addEventListener("toggle", () => { if (this.file.open) this.#want(performance.now(), true); });
    draft.addEventListener("changed", ({ detail }) => {
      const at = performance.now();
      this.#isBegun = true;
      clearTimeout(this.#timer);
      // Half a word is no answer; a slider, a choice or the pointer means what is there now.
      this.#timer = detail.isQuick ? 0 : setTimeout(() => this.#want(at, true), typing);
      if (detail.isQuick) this.#want(at, false);
    });
  }

  /** Whether the rig has changed since the question whose answer is shown. */
  get isBehind() {
    return this.#timer !== 0 || this.#queue.isWaiting || (this.#queue.running !== null && !this.#queue.running.isAnswered);
  }

  #want(at, isSettled) {
    clearTimeout(this.#timer);
    this.#timer = 0;
    if (!this.#slow) this.#slow = setTimeout(() => this.element.setAttribute("aria-busy", "true"), 400);
    const { file, build, day } = this.draft.place;
    this.#queue.want({ draft: this.draft.value, file, build, day, brief: !this.file.open }, at, isSettled);
  }

  #draw(onlyVisible) {
    // One chart that can't be drawn does not keep the next from being drawn.
    return this.#drawing = this.#drawing.catch(() => {}).then(() => drawFigures(this.parts, onlyVisible));
  }

  // What is out of sight is drawn when nobody waits for what is in sight.
  #drawRest() { setTimeout(() => { if (!this.#queue.running && !this.isBehind) this.#draw(false); }, 60); }

  async #receive(json) {
    if (json.kind === "answer") {
      const run = this.#queue.answered(json.run);
      this.away.hidden = true;
      this.#show(json);
      this.dispatchEvent(new CustomEvent("answered", { detail: json }));
      await this.#draw(true);
      if (run) tellUpdated(run, "rig", { milliseconds: 0, rerun: [] });
      return;
    }
    // What is found after the answer is of use only while that answer is the newest.
    if (json.kind === "progress" || json.kind === "would-work") {
      if (this.#queue.running?.run !== json.run || this.isBehind) return;
      if (json.kind === "progress") this.work.tell(json.fraction);
      else this.work.show(json);
      return;
    }
    const ended = this.#queue.ended(json.run, json.kind === "done");
    if (!ended) return;
    this.#rest();
    if (json.kind !== "done") this.work.giveUp();
    // The answer stands; only the search after it came to no end.
    if (json.kind === "stopped" && ended.isAnswered && json.why !== "overtaken") return this.work.tellStopped();
    if (json.kind === "done") this.#drawRest();
    else if (json.kind === "problems") this.#tellProblems(json);
    else if (json.kind === "stopped" && WHY_STOPPED[json.why]) this.#tellAway(WHY_STOPPED[json.why]);
  }

  // Nothing is on its way any more.
  #rest() {
    clearTimeout(this.#slow);
    this.#slow = 0;
    this.element.removeAttribute("aria-busy");
  }

  #tellAway(words) {
    this.away.hidden = false;
    say(this.away, words);
  }

  #tellProblems({ status, problems }) {
    const isFormsFault = status < 500;
    this.#tellAway(`${problems.map(inWords).join(" ")}${isFormsFault ? "" : " What you entered is kept in this window."}`);
    if (isFormsFault) this.dispatchEvent(new CustomEvent("refused", { detail: problems }));
  }

  #show(answer) {
    const errors = answer.problems.filter((problem) => problem.severity !== "warning").length;
    this.#showMissing(answer.missing);
    const spoken = answer.answer?.text ?? "";
    const toDo = errors > 0 ? `${errors === 1 ? "One thing" : `${errors} things`} to put right in the form.`
      : !spoken && answer.missing.length > 0 ? `Still to say: ${answer.missing.map((key) => this.#label(key)).join(", ")}.` : "";
    say(this.spoken, [toDo, spoken].filter(Boolean).join(" "));
    say(this.strip, spoken || toDo || "The answer appears here.");
    // While there is no picture yet, the list of what is still to say says it all.
    const isBegun = answer.first || answer.missing.length === 0;
    const first = answer.first ?? (isBegun && answer.answer ? { type: "answer", text: answer.answer.text, cautions: [] } : null);
    // What was shown stays while something is to be put right, and says that it is from before.
    const isStale = errors > 0 && !answer.first && this.parts.querySelector("figure") !== null;
    this.element.classList.toggle("answer-old", isStale);
    this.stale.hidden = !isStale;
    if (isStale) this.work.giveUp();
    else {
      showParts(this.first, first ? [first] : []);
      this.work.begin(answer.seeks);
      this.cautions.replaceChildren(...[first && makeCautions(answer.answer?.cautions)].filter(Boolean));
      showParts(this.parts, answer.parts);
    }
    this.figures.replaceChildren(...[["Mass", answer.mass], ["Price", answer.price]].filter(([, value]) => value)
      .map(([name, value]) => el("div", {}, el("dt", {}, name), el("dd", {}, value))));
    this.assumed.hidden = answer.assumed.length === 0;
    say(this.assumed.firstElementChild, answer.assumed.length === 1 ? "One value was left open and is assumed"
      : `${answer.assumed.length} values were left open and are assumed`);
    this.assumedList.replaceChildren(...answer.assumed.map((assumed) =>
      el("li", {}, el("span", { class: "assumed-name" }, assumed.name), ": ", el("strong", {}, assumed.value),
      assumed.why ? `. ${assumed.why}` : null,
      assumed.source ? el("span", { class: "assumed-source" }, ` (${assumed.source})`) : null)));
    this.file.hidden = !answer.isWhole;
    if (answer.text !== null || !answer.isWhole) say(this.text, answer.text ?? "");
  }

  #label(key) {
    return (this.knowledge.questions.find((question) => question.key === key)?.label ?? elsewhere[key] ?? key).toLowerCase();
  }

  // What is missing is a list of places to go to, not a list of faults.
  #showMissing(missing) {
    this.missing.hidden = missing.length === 0;
    const links = missing.map((key) => el("li", {},
      el("a", { href: document.getElementById(`question-${key}`) ? `#question-${key}` : `#${key}` }, this.#label(key))));
    this.missing.lastElementChild.replaceChildren(...links);
  }
}
