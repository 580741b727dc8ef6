// The answer, which builds up while the form is filled in. Asked for after each change; what is shown stays until the new
// answer is there.
import { tellSeen, tellUpdated } from "../shared/drawing.js";
import { drawFigures } from "../shared/parts.js";
import { WHY_STOPPED } from "../shared/run-queue.js";
import { inWords } from "../shared/tell.js";
import { AnswerView } from "./answer-view.js";
import { Work } from "./work.js";

const typing = 150;

export class Answer extends EventTarget {
  #isBegun = false;
  #timer = 0;
  #typedAt = 0;
  #slow = 0;
  #drawing = Promise.resolve();
  /** The answer whose charts and drawings are still to come. */
  /** @type {any} */
  #partless = null;
  /** @type {import("../shared/run-queue.js").RunQueue} */
  #queue;

  /** @param {import("./state.js").Rig} rig @param {HTMLElement} form @param {import("./line.js").FormLine} line */
  constructor(rig, form, line) {
    super();
    this.rig = rig;
    this.view = new AnswerView(rig, form);
    this.work = new Work();
    this.#queue = line.queue("now", {
      message: (json) => this.#receive(json),
      open: () => { if (this.#isBegun) this.#want(performance.now(), true); },
      broken: (words) => {
        this.#queue.forget();
        this.#rest();
        this.view.tellAway(`${words} What you entered is kept in this window.`);
      },
    });
    addEventListener("scroll", () => this.#draw(true), { passive: true, capture: true });
    // The file's text is made for who looks at it.
    this.view.file.addEventListener("toggle", () => { if (this.view.file.open) this.#want(performance.now(), true); });
    // Whoever leaves a field, or presses Enter in it, is done with the word.
    form.addEventListener("change", () => { if (this.#timer) this.#want(this.#typedAt, true); });
    rig.onChanged((detail) => { if (!detail.isLook) this.#changed(detail.isQuick); });
  }

  /** Whenever a new answer is shown. @param {(answer: any) => void} told */
  onAnswered(told) { this.addEventListener("answered", (event) => told(/** @type {CustomEvent} */ (event).detail)); }

  /**
   * Whenever all of a new answer is shown, with its charts and drawings, which may come after the rest.
   * @param {(answer: any) => void} told
   */
  onDrawn(told) { this.addEventListener("drawn", (event) => told(/** @type {CustomEvent} */ (event).detail)); }

  /** Whenever the rig is refused as it is. @param {(problems: any[]) => void} told */
  onRefused(told) { this.addEventListener("refused", (event) => told(/** @type {CustomEvent} */ (event).detail)); }

  /** Whether the rig has changed since the question whose answer is shown. */
  get isBehind() {
    return this.#timer !== 0 || this.rig.isAsking || this.#queue.isWaiting
      || (this.#queue.running !== null && !this.#queue.running.isAnswered);
  }

  // Half a word is no answer; a slider, a choice or the pointer means what is there now.
  /** @param {boolean} isQuick */
  #changed(isQuick) {
    const at = performance.now();
    this.#isBegun = true;
    this.#typedAt = at;
    clearTimeout(this.#timer);
    this.#timer = isQuick ? 0 : setTimeout(() => this.#want(at, true), typing);
    if (isQuick) this.#want(at, false);
  }

  /** @param {number} at @param {boolean} isSettled */
  #want(at, isSettled) {
    clearTimeout(this.#timer);
    this.#timer = 0;
    if (!this.#slow) this.#slow = setTimeout(() => this.view.isBusy = true, 400);
    const { file, build, day } = this.rig.place;
    this.#queue.want({ given: this.rig.given, file, build, day, brief: !this.view.file.open }, at, isSettled);
  }

  /** @param {boolean} onlyVisible */
  #draw(onlyVisible) {
    // One chart that can't be drawn does not keep the next from being drawn.
    this.#drawing = this.#drawing.catch(() => {}).then(() => drawFigures(this.view.parts, onlyVisible));
    return this.#drawing;
  }

  // What is out of sight is drawn when nobody waits for what is in sight.
  #drawRest() { setTimeout(() => { if (!this.#queue.running && !this.isBehind) this.#draw(false); }, 60); }

  /** @param {any} json */
  async #receive(json) {
    if (json.kind === "answer") return this.#answered(json);
    if (json.kind === "parts") return this.#cameParts(json);
    // What is found after the answer is of use only while that answer is the newest.
    if (json.kind === "progress" || json.kind === "rests-on" || json.kind === "would-work") {
      if (this.#queue.running?.run !== json.run || this.isBehind) return;
      if (json.kind === "progress") this.work.tell(json.fraction);
      else if (json.kind === "rests-on") this.view.showRests(json.restsOn);
      else this.work.show(json);
      return;
    }
    const ended = this.#queue.ended(json.run, json.kind === "done");
    if (!ended) return;
    this.#rest();
    if (json.kind !== "done") this.work.giveUp();
    // The answer stands; only the search after it came to no end.
    if (json.kind === "stopped" && ended.isAnswered && json.why !== "overtaken") return this.work.tellStopped(json.why);
    if (json.kind === "done") this.#drawRest();
    else if (json.kind === "problems") this.#tellProblems(json);
    else if (json.kind === "stopped" && WHY_STOPPED[json.why]) this.view.tellAway(WHY_STOPPED[json.why]);
  }

  /** @param {any} json */
  async #answered(json) {
    const run = this.#queue.answered(json.run);
    this.view.tellAway("");
    const isStale = this.view.show(json);
    if (isStale) this.work.giveUp(); else this.work.begin(json.seeks);
    if (json.view && !this.isBehind) this.rig.look(json.view);
    this.dispatchEvent(new CustomEvent("answered", { detail: json }));
    if (run) tellSeen(run, "rs-verdict");
    this.#partless = json.parts ? null : json;
    if (json.parts) await this.#drawn(json, run);
  }

  /** @param {any} json */
  async #cameParts(json) {
    const answer = this.#partless, { running } = this.#queue;
    if (answer?.run !== json.run) return;
    this.#partless = null;
    this.view.showParts(json.parts);
    await this.#drawn(answer, running?.run === json.run ? running : null);
  }

  /** @param {any} answer @param {import("../shared/run-queue.js").Run | null} run the newest; null where it is overtaken */
  async #drawn(answer, run) {
    this.dispatchEvent(new CustomEvent("drawn", { detail: answer }));
    await this.#draw(true);
    if (run) tellUpdated(run, "rig", { milliseconds: 0, rerun: [] });
  }

  // Nothing is on its way any more.
  #rest() {
    clearTimeout(this.#slow);
    this.#slow = 0;
    this.view.isBusy = false;
  }

  /** @param {{ status: number, problems: any[] }} refusal */
  #tellProblems({ status, problems }) {
    const isFormsFault = status < 500;
    this.view.tellAway(`${problems.map(inWords).join(" ")}${isFormsFault ? "" : " What you entered is kept in this window."}`);
    if (isFormsFault) this.dispatchEvent(new CustomEvent("refused", { detail: problems }));
  }
}
