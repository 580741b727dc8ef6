// What the reader wants of a notebook: the state of the controls, what is pinned beside it, and the runs for both.
import { addressOf, readAddress, writeAddress } from "./address.js";
import { Answers } from "./answers.js";
import { Article } from "./article.js";
import { isOutside, missing } from "./controls.js";
import { copyLink } from "./dialog.js";
import { Followers } from "./followers.js";
import { NotebookPlaces } from "./places.js";
import { RunWords } from "./run-words.js";
import { addTools, askWhatToSave } from "./save.js";
import { Strip } from "./strip.js";
import { LINKS_OPEN } from "../shared/addresses.js";
import { makeDrawing } from "../shared/drawing.js";
import { makeMoving } from "../shared/moving.js";
import { listen } from "../shared/program.js";
import { RunQueue } from "../shared/run-queue.js";

/** @import { Problem } from "../shared/requests.js" */
/** @import { Notebook, State, Values, VersionName } from "./types.js" */

export class LivePage {
  /** @type {Notebook | null} */
  notebook = null;
  /** @type {Strip | null} */
  strip = null;
  /** @type {Article | null} */
  article = null;
  /** The notebook's own values. @type {Values} */
  defaults = {};
  /** What the controls say. @type {Values} */
  now = {};
  /** What is pinned beside it. @type {Values | null} */
  pinned = null;
  /** @type {Problem[]} */
  problems = [];
  followers = new Followers();

  #isBroken = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #afterMove;
  #places = new NotebookPlaces();
  #answers = new Answers(this);
  #elements;

  /**
   * @param {string} name the notebook's
   * @param {{ article: HTMLElement, message: HTMLElement, told: HTMLElement }} elements
   */
  constructor(name, elements) {
    this.#elements = elements;
    const send = listen({ kind: "notebook", name }, {
      message: json => json.kind === "notebook" ? this.#begin(/** @type {any} */ (json)) : this.#answers.receive(json),
      broken: words => this.#broken(words),
      gone: shelf => shelf.notebooks.some(other => other.name === name) ? "" : "There is no notebook of this name on the shelf.",
    });
    this.queues = { now: new RunQueue("now", send), pinned: new RunQueue("pinned", send) };
    this.draw = makeDrawing(() => this.article, () => this.queues.now.running || this.queues.pinned.running);
    this.moving = makeMoving(elements.article, {
      allows: part => this.#places.of(part) !== undefined,
      move: (part, millimetres, at, isSettled) => {
        const parameter = this.#places.of(part);
        if (!parameter || !this.strip) return;
        this.strip.places(parameter.name)?.move(part.dataset.part ?? "", millimetres);
        this.#change(parameter.name, at, isSettled);
      },
    });
    this.words = new RunWords(this, elements.told);
    // Another address of this page, typed or pasted or from the history.
    addEventListener("hashchange", () => this.#take(readAddress()));
  }

  /** @param {string} words */
  #broken(words) {
    this.#isBroken = true;
    for (const queue of Object.values(this.queues)) queue.forget();
    this.article?.settled("now");
    this.article?.settled("pinned");
    this.strip?.tellRun("");
    this.say(words, true);
  }

  /** Before there is an article the words stand in its place, later at the controls. @param {string} words */
  say(words, isProblem = false) {
    this.strip?.tellTrouble(words);
    const { message } = this.#elements;
    message.textContent = this.strip ? "" : words;
    message.hidden = !message.textContent;
    message.classList.toggle("problem", isProblem);
  }

  /** The notebook came: at first, and again after each opening of the line. @param {Notebook} json */
  #begin(json) {
    const isSame = this.notebook && JSON.stringify(this.notebook) === JSON.stringify(json);
    this.#isBroken = false;
    this.say("");
    if (!isSame) this.#make(json);
    this.followers.forget("now", "pinned");
    this.article?.setPinned(this.pinned !== null);
    this.#runBoth(performance.now());
  }

  /** @param {Notebook} json */
  #make(json) {
    const before = this.article ? this.now : {};
    this.notebook = json;
    document.title = `${json.title}: RigScenarios`;
    this.defaults = Object.fromEntries(json.parameters.map(parameter => [parameter.name, parameter.default]));
    this.followers.clear();
    const strip = new Strip(json.parameters, {
      change: (name, at, isSettled) => this.#change(name, at, isSettled),
      covers: pixels => this.article?.covered(pixels),
      stop: () => { for (const queue of Object.values(this.queues)) queue.stop(); },
      pin: () => this.#pin(), unpin: () => this.#unpin(), swap: () => this.#swap(), link: () => this.#link(),
      save: () => askWhatToSave(json, this.now, this.article?.shown("now") ?? [], this.article?.answers("now") ?? [],
        this.pinned !== null),
      reset: () => this.#take({ now: { ...this.defaults }, pinned: this.pinned }),
    });
    this.strip = strip;
    this.#places.use(json.parameters, strip);
    this.article = new Article(this.#elements.article, json, strip.element, addTools);
    this.say("");
    const state = readAddress();
    this.now = this.#known({ ...this.defaults, ...before, ...state.now });
    this.pinned = state.pinned ? this.#known({ ...this.defaults, ...state.pinned }) : null;
    strip.show(this.now);
  }

  /** A link made when the notebook had other parameters still opens: what it does not know is left out. @param {Values} values */
  #known(values) {
    return Object.fromEntries(Object.entries(values).filter(([key]) => key in this.defaults));
  }

  /** @param {number} at */
  #runBoth(at) {
    this.#run("now", this.now, at, true);
    if (this.pinned) this.#run("pinned", this.pinned, at, true);
    this.words.working();
    this.describe();
  }

  /** @param {VersionName} version @param {Values} values @param {number} at @param {boolean} isSettled */
  #run(version, values, at, isSettled) {
    if (!this.#isBroken) this.article?.renewing(version, this.followers.of(version, values));
    this.queues[version].want({ values: { ...values }, inSight: this.article?.inSight() ?? [] }, at, isSettled);
  }

  /** @param {string} name @param {number} at @param {boolean} isSettled */
  #change(name, at, isSettled) {
    const { strip } = this, parameter = this.notebook?.parameters.find(other => other.name === name);
    if (!strip || !parameter) return;
    this.#places.follow(name, this.now);
    // Another file has its own temperature, charge and wind.
    if (parameter.kind === "scenario-file") strip.standOnFile();
    const values = strip.values(), value = values[name];
    if (this.problems.length > 0) {
      this.problems = [];
      strip.say([]);
      this.say("");
    }
    const wrong = missing(parameter, value);
    if (wrong) {
      if (isSettled) this.problems = [{ path: name, text: wrong }];
      strip.say(this.problems);
      return;
    }
    if (!isSettled && isOutside(parameter, value)) return;
    // Letting go of a slider tells the same value once more.
    const { now } = this.queues;
    const isThere = now.running?.content.values[name] === value || this.followers.isShown("now", name, value);
    if (isSettled && value === this.now[name] && isThere && !now.isWaiting) return;
    this.now = values;
    this.#run("now", values, at, isSettled);
    this.words.working();
    clearTimeout(this.#afterMove);
    this.#afterMove = setTimeout(() => this.describe(), isSettled ? 0 : 150);
  }

  /**
   * The values that the program settled on for a run: where a file has no such build it takes the first.
   * @param {VersionName} which
   * @param {import("../shared/run-queue.js").Run} run
   * @param {{ name: string, value: string }[]} parameters
   */
  adopt(which, run, parameters) {
    const settled = { ...this[which] };
    for (const parameter of parameters) settled[parameter.name] = parameter.value;
    // The notebook's own values as the program writes them ("samples/a.yaml" for a path): the same values, so nothing is changed.
    if (Object.keys(this.defaults).every(key => run.content.values[key] === this.defaults[key])) {
      Object.assign(this.defaults, settled);
      for (const [name, value] of Object.entries(settled)) this.strip?.setDefault(name, value);
    }
    run.content.values = settled;
    const isSame = JSON.stringify(settled) === JSON.stringify(this[which]);
    this[which] = settled;
    if (isSame) return;
    if (which === "now") this.strip?.showUntyped(settled);
    this.describe();
  }

  /** Brings strip and address to what is wanted now. */
  describe() {
    if (!this.strip) return;
    this.strip.describe(this.now);
    const apart = this.strip.showPinned(this.pinned, this.now);
    this.article?.nameVersions(apart.pinned, apart.now);
    writeAddress({ now: this.now, pinned: this.pinned }, this.defaults);
  }

  /** Goes to another state as a whole: the notebook's own, or one from an address. @param {State} state */
  #take(state) {
    if (!this.strip) return;
    const hadPinned = this.pinned !== null;
    this.now = this.#known({ ...this.defaults, ...state.now });
    this.pinned = state.pinned ? this.#known({ ...this.defaults, ...state.pinned }) : null;
    this.problems = [];
    this.strip.say([]);
    this.strip.show(this.now);
    if (hadPinned !== (this.pinned !== null)) this.article?.setPinned(this.pinned !== null);
    if (!this.pinned) this.#forgetPinned();
    this.#runBoth(performance.now());
  }

  #pin() {
    this.pinned = { ...this.now };
    this.article?.setPinned(true);
    this.article?.copyToPinned();
    this.draw();
    this.#run("pinned", this.pinned, performance.now(), true);
    this.describe();
    this.#elements.told.textContent = "Pinned. What you change now is shown beside it.";
  }

  #unpin() {
    this.pinned = null;
    this.#forgetPinned();
    this.article?.setPinned(false);
    this.describe();
    this.#elements.told.textContent = "Unpinned.";
  }

  #forgetPinned() {
    this.queues.pinned.stop();
    this.queues.pinned.forget();
    this.followers.forget("pinned");
  }

  #swap() {
    if (!this.pinned) return;
    [this.now, this.pinned] = [this.pinned, this.now];
    this.strip?.show(this.now);
    this.#runBoth(performance.now());
    this.#elements.told.textContent = "Swapped.";
  }

  async #link() {
    this.describe();
    const address = new URL(addressOf({ now: this.now, pinned: this.pinned }, this.defaults), location.href);
    if (await copyLink(address.href)) this.strip?.tellRun(`The link is copied. ${LINKS_OPEN}`);
  }
}
