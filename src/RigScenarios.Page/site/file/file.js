// The page of a scenario file as text.
import { fileHere, pageOf } from "../shared/addresses.js";
import { byId } from "../shared/elements.js";
import { Check } from "./check.js";
import { Help } from "./help.js";
import { Lines } from "./lines.js";
import { Save } from "./save.js";
import { ask } from "../shared/program.js";
import { inWords, say } from "../shared/tell.js";
import { TextKeys } from "./keys.js";

const id = fileHere();

start();

async function start() {
  const told = byId("file-told");
  let file;
  try {
    file = await ask("file", { id });
  } catch (error) {
    if (!error.problems) throw error;
    say(told, error.problems.map(inWords).join(" "));
    const kept = Save.kept(id);
    if (kept) showKept(kept.value.text);
    return;
  }

  const text = byId("text", HTMLTextAreaElement), kept = file.writable ? Save.kept(id) : null;
  document.title = `${file.id.split("/").pop()} as text`;
  byId("file-title").textContent = file.id.split("/").pop() ?? "";
  byId("as-form", HTMLAnchorElement).href = pageOf.rig({ file: file.id });
  byId("as-form").hidden = false;
  text.value = file.text;
  text.readOnly = !file.writable;
  byId("editor").hidden = false;
  say(told, !file.writable ? "A sample: it can be read here, not changed. Save a copy to change it."
    : kept?.isHere ? "This is how you left it in this window; it isn't saved yet." : "");
  told.hidden = told.textContent === "";

  const lines = new Lines(text, byId("gutter"));
  const help = new Help(text, lines);
  const check = new Check(text, lines, () => file.id);
  const save = new Save(text, { id: file.id, version: file.version, writable: file.writable,
    hasReturns: file.text.includes("\r\n") }, file.text.replaceAll("\r\n", "\n"), (problems) => check.show(problems));
  new TextKeys(text, { toFields: () => help.focus() });
  lines.show();
  check.show(file.problems);
  check.now();
  help.soon();
  const restore = () => { save.restore(kept?.value); lines.show(); check.now(); };
  if (kept?.isHere) restore();
  else if (kept) offer(restore);
  document.addEventListener("keydown", (event) => {
    if ((event.ctrlKey || event.metaKey) && !event.shiftKey && !event.altKey && event.key.toLowerCase() === "s") {
      event.preventDefault();
      if (file.writable) save.save(); else save.askName();
    }
  });
  const line = Number(new URLSearchParams(location.search).get("line"));
  if (line > 0) lines.goTo(line, 1); else { text.setSelectionRange(0, 0); lines.showHere(); }
}

/** Another window left a text unsaved. @param {() => void} restore */
function offer(restore) {
  byId("left").hidden = false;
  byId("bring-back").onclick = () => { restore(); byId("left").hidden = true; byId("text").focus(); };
}

/** The file is gone or nobody answers, but this window still has what was written. @param {string} words */
function showKept(words) {
  const text = byId("text", HTMLTextAreaElement);
  byId("editor").hidden = false;
  byId("save-form").hidden = true;
  text.readOnly = true;
  text.value = words;
  new Lines(text, byId("gutter")).show();
  byId("file-told").textContent += " Below is what you wrote in this window; load the page again when the program runs.";
}
