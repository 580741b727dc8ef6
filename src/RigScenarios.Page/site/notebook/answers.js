// What comes back from the runs of a notebook, and where it goes.
import { tellUpdated } from "../shared/drawing.js";
import { WHY_STOPPED } from "../shared/run-queue.js";

/** @import { LineMessage, Part } from "../shared/requests.js" */
/** @import { RunQueue } from "../shared/run-queue.js" */
/** @import { Choice, Told, VersionName } from "./types.js" */

/** A page that has its notebook. @typedef {import("./live-page.js").LivePage & { strip: import("./strip.js").Strip,
 * article: import("./article.js").Article }} Page */

export class Answers {
  /** @type {Record<string, (json: LineMessage, queue: RunQueue, name: VersionName, page: Page) => unknown>} */
  #by = {
    parameters: this.#parameters, cell: this.#cell, progress: this.#progress, inSight: this.#inSight, done: this.#done,
    failed: this.#failed, problems: this.#problems, stopped: this.#stopped,
  };

  /** @param {import("./live-page.js").LivePage} page */
  constructor(page) { this.page = page; }

  /** @param {LineMessage} json */
  receive(json) {
    const name = json.queue === "pinned" ? "pinned" : "now";
    if (!this.page.article || !this.page.strip || (name === "pinned" && !this.page.pinned)) return;
    this.#by[json.kind]?.call(this, json, this.page.queues[name], name, /** @type {Page} */ (this.page));
  }

  /**
   * The values that the program settled on, unless the reader has moved on.
   * @param {LineMessage} json @param {RunQueue} queue @param {VersionName} name @param {Page} page
   */
  #parameters(json, queue, name, page) {
    /** @type {{ name: string, value: string, choices: Choice[] }[]} */
    const parameters = json.parameters;
    const { running } = queue;
    if (name === "now") for (const parameter of parameters) page.strip.useChoices(parameter.name, parameter.choices);
    if (running?.run === json.run && running && (name === "pinned" || !queue.isWaiting)) page.adopt(name, running, parameters);
  }

  /**
   * A cell of a run that was overtaken counts too: the program goes on from it.
   * @param {LineMessage} json @param {RunQueue} _queue @param {VersionName} name @param {Page} page
   */
  #cell(json, _queue, name, page) {
    /** @type {(Part & Partial<Told>)[]} */
    const parts = json.parts;
    page.article.show(json.cell, name, parts);
    if (name === "now") page.strip.hear(json.cell, /** @type {any} */ (parts.filter(part => part.type === "control")));
    page.moving.arm();
    page.draw();
  }

  /** @param {LineMessage} json @param {RunQueue} queue @param {VersionName} name @param {Page} page */
  #progress(json, queue, name, page) {
    if (queue.running?.run !== json.run) return;
    page.article.progress(json.cell, name, json.fraction, json.text);
    if (json.text) page.strip.tellRun(json.text, json.fraction, true);
  }

  /**
   * What the reader sees is there; the rest comes after it, or is overtaken.
   * @param {LineMessage} json @param {RunQueue} queue @param {VersionName} name @param {Page} page
   */
  async #inSight(json, queue, name, page) {
    const run = queue.answered(json.run);
    if (!run) return;
    await page.draw();
    tellUpdated(run, name, { milliseconds: json.milliseconds, rerun: json.rerun });
  }

  /** @param {LineMessage} json @param {RunQueue} queue @param {VersionName} name @param {Page} page */
  async #done(json, queue, name, page) {
    const run = queue.ended(json.run, true);
    page.article.mended(name);
    if (!run) return;
    page.followers.learn(name, run.content.values, json.rerun);
    this.#settle(queue, name, page);
    if (!queue.running) page.words.done(json.milliseconds);
    await page.draw();
    if (!run.isAnswered) tellUpdated(run, name, { milliseconds: json.milliseconds, rerun: json.rerun });
    if (name === "now") page.words.answers();
  }

  /** @param {LineMessage} json @param {RunQueue} queue @param {VersionName} name @param {Page} page */
  #failed(json, queue, name, page) {
    if (!queue.ended(json.run, false)) return;
    const isPlaced = page.article.failed(json.cell, name, json.text, json.line);
    this.#settle(queue, name, page);
    page.strip.tellRun(isPlaced ? "One part could not be computed; it says why." : json.text);
    page.followers.forget(name);
  }

  /** @param {LineMessage} json @param {RunQueue} queue @param {VersionName} name @param {Page} page */
  #problems(json, queue, name, page) {
    if (!queue.ended(json.run, false)) return;
    this.#settle(queue, name, page);
    /** @type {import("../shared/requests.js").Problem[]} */
    const problems = json.problems;
    if (name === "pinned") {
      page.say(`The pinned version cannot be run: ${problems.map(problem => problem.text).join(" ")}`, true);
      return;
    }
    page.problems = problems;
    const rest = page.strip.say(problems);
    page.strip.tellRun("Not run: see the words at the control.");
    if (rest.length > 0) page.say(rest.join(" "), true);
  }

  /** @param {LineMessage} json @param {RunQueue} queue @param {VersionName} name @param {Page} page */
  #stopped(json, queue, name, page) {
    const run = queue.ended(json.run, false);
    if (!run) return;
    // Overtaken, but by nothing of this page: what the reader wants is still to be run.
    if (json.why === "overtaken" && !queue.running && !queue.isWaiting) {
      queue.want(run.content, run.at);
      return;
    }
    this.#settle(queue, name, page, true);
    page.followers.forget(name);
    page.strip.tellRun(WHY_STOPPED[json.why] ?? "");
  }

  /** Nothing is on its way any more. @param {RunQueue} queue @param {VersionName} name @param {Page} page */
  #settle(queue, name, page, isCutShort = false) {
    page.article.settled(name, isCutShort);
    if (name === "now" && !queue.running && !queue.isWaiting) page.moving.settled();
  }
}
