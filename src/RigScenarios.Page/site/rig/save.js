// Saving the rig as an ordinary scenario file, and what one can do with it then.
import { byId } from "../shared/elements.js";
import { pageOf } from "../shared/addresses.js";
import { ask } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { el } from "../shared/parts.js";
import { inWords, say } from "../shared/tell.js";
import { freeName } from "./words.js";

const KEPT_HERE = "This browser keeps it, on this device only, and until its data are cleared. As a file of the device it can go "
  + "anywhere: the command line and the notebooks of the program on a computer take it.";

export class Save {
  /** @param {import("./state.js").Rig} rig @param {import("../shared/requests.js").Abilities} can */
  constructor(rig, can) {
    this.rig = rig;
    this.can = can;
    if (!can.folder) byId("save-about").textContent = KEPT_HERE;
    this.form = byId("save-form");
    this.name = byId("save-name", HTMLInputElement);
    this.told = byId("save-told");
    this.conflict = byId("save-conflict");
    this.after = byId("save-after");
    this.command = byId("save-command");
    this.links = byId("save-links");
    this.state = byId("save-state");
    this.form.addEventListener("submit", (event) => { event.preventDefault(); this.#save(false); });
    byId("save-replace").addEventListener("click", () => this.#save(true));
    byId("save-look").addEventListener("click",
      () => window.open(pageOf.file(`own/${this.#fileName()}`), "_blank", "noopener"));
    byId("save-copy").addEventListener("click", async () => {
      await navigator.clipboard?.writeText(this.command.textContent)
        .then(() => say(byId("save-copied"), "Copied."), () => say(byId("save-copied"), "Mark the line and copy it."));
    });
    this.name.addEventListener("input", () => { this.conflict.hidden = true; this.named = true; });
    rig.addEventListener("opened", () => {
      const file = rig.place.file;
      this.named = file?.startsWith("own/") ?? false;
      this.name.value = this.named && file ? file.slice(4) : file ? `my-${file.split("/").pop()}` : "my-rig.yaml";
      this.after.hidden = this.conflict.hidden = true;
      say(this.told, "");
    });
    rig.onChanged(() => {
      if (!this.named) this.name.value = rig.place.file ? this.name.value
        : `${freeName(rig.text("title"), () => false, "my-rig")}.yaml`;
      say(this.state, rig.unsaved ? "Not saved yet; kept in this window meanwhile." : "");
    });
  }

  #fileName() {
    const name = this.name.value.trim();
    return /\.ya?ml$/i.test(name) ? name : `${name}.yaml`;
  }

  /** The own file that holds the rig as it is now; it is saved if need be. Null where that is refused, which is told. */
  async toFile() {
    await this.rig.settled();
    const { file } = this.rig.place;
    return !this.rig.unsaved && file?.startsWith("own/") ? file : await this.#save(false);
  }

  /** @param {boolean} replace @returns {Promise<string | null>} the file's id */
  async #save(replace) {
    const name = this.#fileName();
    this.name.value = name;
    this.conflict.hidden = true;
    this.name.removeAttribute("aria-invalid");
    say(this.told, "Saving …");
    await this.rig.settled();
    const { given, place: { file, build, day, version } } = this.rig;
    try {
      const isSame = file === `own/${name}`;
      const saved = await ask("save-rig",
        { given, name, file, build, day, version: isSame ? version : null, replace });
      this.named = true;
      this.rig.saved({ file: saved.id, build: saved.build, day: saved.day, version: saved.version }, given);
      if (!this.rig.unsaved) say(this.state, "");
      this.#tell(saved);
      return saved.id;
    } catch (error) {
      if (!(error instanceof ProgramProblem)) throw error;
      say(this.told, error.problems.map(inWords).join(" "));
      this.conflict.hidden = error.status !== 409;
      if (error.problems.some((problem) => problem.path === "name")) this.name.setAttribute("aria-invalid", "true");
      return null;
    }
  }

  /** @param {{ id: string, build: string, day: string, version: string, command: string }} saved */
  #tell(saved) {
    const { id: file, build, day } = saved;
    history.replaceState(null, "", pageOf.rig({ file, build, day }));
    const name = saved.id.replace(/^own\//, "");
    say(this.told, `Saved as ${name}${this.can.folder ? "" : ", in this browser"}.`);
    this.after.hidden = false;
    say(this.command, saved.command);
    byId("save-terminal").hidden = !this.can.folder;
    const notebook = pageOf.notebook("00-will-it-work", { scenario: file, build, days: day });
    this.links.replaceChildren(
      this.can.folder ? el("li", {}, el("a", { href: notebook }, "Open it in notebook 00: will it work?")) : "",
      el("li", {}, el("a", { href: pageOf.file(saved.id) }, "Edit it as text")));
    // A browser may clear what nobody asked it to keep.
    if (!this.can.folder) navigator.storage?.persist?.().catch(() => { /* it keeps it as long as it likes */ });
  }
}
