// The rig to carry elsewhere: as a link that holds all of it, and, where own files lie in no folder, as a file of the device.
import { pageOf } from "../shared/addresses.js";
import { saveToDevice } from "../shared/device-files.js";
import { byId } from "../shared/elements.js";
import { ask } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { LONGEST_LINK, linkOf } from "../shared/rig-link.js";
import { inWords, say } from "../shared/tell.js";

/** @typedef {import("../shared/requests.js").Abilities} Abilities */

export class Carry {
  /**
   * @param {import("./state.js").Rig} rig
   * @param {import("./save.js").Save} save
   * @param {Abilities} can
   */
  constructor(rig, save, can) {
    this.rig = rig;
    this.save = save;
    this.can = can;
    this.told = byId("carry-told");
    this.field = byId("link-field");
    this.text = byId("link-text", HTMLInputElement);
    byId("link-take").addEventListener("click", () => this.#tellRefused(() => this.#takeLink()));
    byId("device-save").hidden = can.folder;
    byId("device-save").addEventListener("click", () => this.#tellRefused(() => this.#saveToDevice()));
    this.text.addEventListener("focus", () => this.text.select());
    // What was taken is of the rig before.
    rig.onChanged(({ isLook }) => { if (!isLook) this.#tell(""); });
  }

  async #takeLink() {
    await this.rig.settled();
    const { file, build, day } = this.rig.place;
    const alone = await ask("rig-alone", { given: this.rig.given, file, build, day });
    const link = new URL(pageOf.rig() + await linkOf(alone), location.href).href;
    if (link.length > LONGEST_LINK) {
      this.#tell(`As a link this rig has ${inNumbers(link.length)} characters. Messengers and mail may cut what is longer than `
        + `${inNumbers(LONGEST_LINK)}, so it is not given as one. Save it as a file, and send that.`);
      return;
    }
    const isCopied = await copied(link);
    this.#tell(`${isCopied ? "Copied" : "Mark it and copy it"}: ${inNumbers(link.length)} characters, all of the rig but the `
      + "remarks of its file. What stands behind the “#” is sent to no server; whoever has the link has the rig."
      + this.#whereItOpens());
    this.text.value = link;
    this.field.hidden = false;
    if (!isCopied) this.text.focus();
  }

  #whereItOpens() {
    return this.can.folder ? " It opens on this machine, while the program runs; what begins at the “#” also goes behind the "
      + "address of any other form." : "";
  }

  async #saveToDevice() {
    this.#tell("Making the file …");
    const id = await this.save.toFile();
    if (!id) { this.#tell(""); return; }
    const { text } = await ask("file", { id });
    this.#tell(await saveToDevice(text, id.replace(/^own\//, "")));
  }

  /** @param {() => Promise<void>} doing */
  async #tellRefused(doing) {
    try {
      await doing();
    } catch (error) {
      if (!(error instanceof ProgramProblem)) throw error;
      this.#tell(error.problems.map(inWords).join(" "));
    }
  }

  /** @param {string} words */
  #tell(words) {
    this.field.hidden = true;
    say(this.told, words);
  }
}

/** @param {string} text */
async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** @param {number} number */
const inNumbers = number => number.toLocaleString("en");
