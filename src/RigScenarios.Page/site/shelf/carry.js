// Own files where they lie in no folder: one of the device is opened, one that is kept goes to the device, or is kept no longer.
import { pageOf } from "../shared/addresses.js";
import { chosenFile, FileProblem, saveToDevice } from "../shared/device-files.js";
import { takeIn } from "../shared/opened-file.js";
import { el } from "../shared/parts.js";
import { ask, forgetFile } from "../shared/program.js";
import { ProgramProblem } from "../shared/program-problem.js";
import { inWords, say } from "../shared/tell.js";

/** @import { FileOnShelf } from "../shared/requests.js" */

/** "Open a file of this device". @param {HTMLElement} place */
export function offerToOpen(place) {
  const told = el("p", { role: "status" });
  const input = el("input", { type: "file", id: "device-file", accept: ".yaml,.yml,application/yaml,text/plain" });
  input.addEventListener("change", () => tellRefused(told, async () => {
    const file = await chosenFile(input);
    if (!file) return;
    say(told, `Opening ${file.name} …`);
    location.assign(pageOf.rig({ file: await takeIn(file) }));
  }));
  place.append(el("div", { class: "field" }, el("label", { for: "device-file" }, "Open a scenario file of this device"),
    input, el("p", { class: "help" },
      "It is copied to what this browser keeps, and goes nowhere else; the file itself stays as it is.")), told);
  place.hidden = false;
}

/** What can be done with one that this browser keeps. @param {HTMLElement} row @param {FileOnShelf} file */
export function addCarryTools(row, { id, name, title }) {
  const told = el("span", { class: "help", role: "status" });
  const tool = (/** @type {string} */ label, /** @type {() => Promise<void>} */ doing) => el("button", { type: "button",
    class: "quiet", "aria-label": `${title || name}: ${label.toLowerCase()}`, onclick: () => tellRefused(told, doing) }, label);
  let isSure = false;
  const forget = tool("Forget it", async () => {
    if (!isSure) {
      isSure = true;
      forget.textContent = "Yes, forget it";
      forget.removeAttribute("aria-label");
      say(told, "Then it is gone, unless you have it as a file too.");
      return;
    }
    await forgetFile(id);
    row.remove();
  });
  row.append(tool("Save to this device", async () => {
    say(told, await saveToDevice((await ask("file", { id })).text, name));
  }), forget, told);
}

/** @param {HTMLElement} told @param {() => Promise<void>} doing */
async function tellRefused(told, doing) {
  try {
    await doing();
  } catch (error) {
    if (error instanceof ProgramProblem) say(told, error.problems.map(inWords).join(" "));
    else if (error instanceof FileProblem) say(told, error.message);
    else throw error;
  }
}
