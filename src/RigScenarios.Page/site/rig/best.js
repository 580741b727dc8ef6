// The best rig for the money: asked for with a button, for it takes long; stopped by the next change, or another button.
import { byId } from "../shared/elements.js";
import { addKeepTools } from "../shared/keep-tools.js";
import { drawFigures, el, makeCautions, showParts } from "../shared/parts.js";
import { inWords, say } from "../shared/tell.js";
import { isSame } from "./tree.js";

/** @type {Record<string, string>} */
const STOPPED = {
  time: "Stopped: it took longer than a run may.",
  memory: "Stopped: it needed more memory than a run may. Close pages that you don't need.",
};

/** Where nothing can search for it, what can is said. */
export function tellBestElsewhere() {
  byId("best").replaceChildren(el("p", { class: "help no-print" }, "Which rig is the best for that? The search through the parts "
    + "library needs the program on a computer: it opens the file of this rig, and has a button for it in this place."));
}

export class BestRig {
  /** @type {import("../shared/run-queue.js").RunQueue} */
  #queue;
  /** What was searched for, while something is shown of it. @type {any} */
  #given = null;
  #soFar = "";
  #whyStopped = "";

  /** @param {import("./state.js").Rig} rig @param {import("./line.js").FormLine} line */
  constructor(rig, line) {
    this.rig = rig;
    this.find = byId("best-find", HTMLButtonElement);
    this.stop = byId("best-stop", HTMLButtonElement);
    this.told = byId("best-told");
    this.search = byId("best-search");
    this.progress = byId("best-progress", HTMLProgressElement);
    this.words = byId("best-so-far");
    this.found = byId("best-found");
    this.old = byId("best-old");
    this.parts = byId("best-parts");
    this.cautions = byId("best-cautions");
    this.#queue = line.queue("best", {
      message: (json) => this.#receive(json),
      broken: () => {
        if (this.#isBusy) this.#rest("The line to the program broke, and the search with it. Look for it again.");
        this.#queue.forget();
      },
    });
    this.find.addEventListener("click", () => this.#begin());
    this.stop.addEventListener("click", () => this.#stop("Stopped."));
    rig.addEventListener("opened", () => this.#show(null));
    rig.onChanged(({ isLook }) => {
      if (isLook) return;
      this.#stop("Stopped, because the rig was changed.");
      this.#tellOld();
    });
  }

  get #isBusy() { return this.#queue.running !== null || this.#queue.isWaiting; }

  #begin() {
    const { file, build, day } = this.rig.place;
    this.#show(null);
    this.#soFar = this.#whyStopped = "";
    say(this.words, "");
    this.progress.removeAttribute("value");
    this.search.hidden = this.stop.hidden = false;
    say(this.told, "Looking for it …");
    this.#queue.want({ given: this.rig.given, file, build, day });
  }

  /** @param {string} why in words */
  #stop(why) {
    if (!this.#isBusy) return;
    this.#whyStopped ||= why;
    this.#queue.stop();
    // What had not been sent yet is just forgotten.
    if (!this.#isBusy) this.#rest(why);
  }

  /** @param {any} json */
  #receive(json) {
    if (json.kind === "progress" || json.kind === "best-rig") {
      const { running } = this.#queue;
      if (!running || running.run !== json.run) return;
      if (json.kind === "best-rig") this.#show(json, running.content.given);
      else this.#tell(json);
      return;
    }
    const ended = this.#queue.ended(json.run, json.kind === "done");
    if (!ended || this.#isBusy) return;
    if (json.kind === "problems") this.#rest(json.problems.map(inWords).join(" "));
    else if (json.kind === "stopped") this.#rest(`${STOPPED[json.why] ?? this.#whyStopped} ${this.#soFar} `
      + (this.#given === null ? "Nothing that holds all musts was among them." : "What was found so far stands below."));
    else this.#rest(null);
  }

  // As often as it comes: seen, and not read out.
  /** @param {{ fraction: number, text: string }} progress */
  #tell({ fraction, text }) {
    this.progress.value = fraction;
    this.#soFar = text;
    say(this.words, text);
  }

  /** Nothing is on its way any more. @param {string | null} words null: what was said stays */
  #rest(words) {
    if (document.activeElement === this.stop) this.find.focus({ preventScroll: true });
    this.search.hidden = this.stop.hidden = true;
    if (words === null) return;
    this.told.classList.remove("visually-hidden");
    say(this.told, words);
  }

  /** @param {any} found null for nothing @param {any} [given] what it was searched for */
  async #show(found, given = null) {
    this.#given = given;
    this.found.hidden = found === null;
    // The answer below says it to those who see; this, to those who listen.
    this.told.classList.toggle("visually-hidden", found !== null);
    say(this.told, found?.text ?? "");
    showParts(this.parts, found?.parts ?? []);
    this.cautions.replaceChildren(...[makeCautions(found?.cautions ?? [])].filter((list) => list !== null));
    this.#tellOld();
    addKeepTools(this.parts);
    await drawFigures(this.parts);
  }

  // It stays to be read, and says what it is.
  #tellOld() { this.old.hidden = this.#given === null || isSame(this.#given, this.rig.given); }
}
