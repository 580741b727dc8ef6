// Saving the rig as an ordinary scenario file, and what one can do with it then.
import { api, inPath } from "../shared/api.js";
import { el } from "../shared/parts.js";
import { inWords, say } from "../shared/tell.js";
import { freeName } from "./words.js";

export class Save {
  /** @param {import("./state.js").Rig} rig */
  constructor(rig) {
    this.rig = rig;
    const byId = (/** @type {string} */ id) => /** @type {any} */ (document.getElementById(id));
    this.form = byId("save-form");
    this.name = byId("save-name");
    this.told = byId("save-told");
    this.conflict = byId("save-conflict");
    this.after = byId("save-after");
    this.command = byId("save-command");
    this.links = byId("save-links");
    this.state = byId("save-state");
    this.form.addEventListener("submit", (event) => { event.preventDefault(); this.#save(false); });
    byId("save-replace").addEventListener("click", () => this.#save(true));
    byId("save-look").addEventListener("click",
      () => window.open(`/file/own/${encodeURIComponent(this.#fileName())}`, "_blank", "noopener"));
    byId("save-copy").addEventListener("click", async () => {
      await navigator.clipboard?.writeText(this.command.textContent)
        .then(() => say(byId("save-copied"), "Copied."), () => say(byId("save-copied"), "Mark the line and copy it."));
    });
    this.name.addEventListener("input", () => { this.conflict.hidden = true; this.named = true; });
    rig.addEventListener("opened", () => {
      const file = rig.place.file;
      this.named = file?.startsWith("own/") ?? false;
      this.name.value = this.named ? file.slice(4) : file ? `my-${file.split("/").pop()}` : "my-rig.yaml";
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

  /** @param {boolean} replace */
  async #save(replace) {
    const { file, build, day, version } = this.rig.place, name = this.#fileName();
    this.name.value = name;
    this.conflict.hidden = true;
    this.name.removeAttribute("aria-invalid");
    say(this.told, "Saving …");
    try {
      const isSame = file === `own/${name}`;
      const saved = await api("POST", "/api/rig/save",
        { given: this.rig.given, name, file, build, day, version: isSame ? version : null, replace });
      this.named = true;
      this.rig.saved({ file: saved.id, build: saved.build, day: saved.day, version: saved.version });
      say(this.state, "");
      this.#tell(saved);
    } catch (error) {
      if (!error.problems) throw error;
      say(this.told, error.problems.map(inWords).join(" "));
      this.conflict.hidden = error.status !== 409;
      if (error.problems.some((problem) => problem.path === "name")) this.name.setAttribute("aria-invalid", "true");
    }
  }

  /** @param {{ id: string, build: string, day: string, version: string, command: string }} saved */
  #tell(saved) {
    const at =
      `file=${encodeURIComponent(saved.id)}&build=${encodeURIComponent(saved.build)}&day=${encodeURIComponent(saved.day)}`;
    history.replaceState(null, "", `/rig?${at}`);
    say(this.told, `Saved as ${saved.id.replace(/^own\//, "")}.`);
    this.after.hidden = false;
    say(this.command, saved.command);
    const notebook = new URLSearchParams({ scenario: saved.id, build: saved.build, days: saved.day });
    this.links.replaceChildren(
      el("li", {}, el("a", { href: `/n/00-will-it-work#${notebook}` }, "Open it in notebook 00: will it work?")),
      el("li", {}, el("a", { href: `/file/${inPath(saved.id)}` }, "Edit it as text")));
  }
}
