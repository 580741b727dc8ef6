// The page of a scenario file as text.
import { api, inPath } from "./api.js";
import { Check } from "./file-check.js";
import { Help } from "./file-help.js";
import { Lines } from "./file-lines.js";
import { Save } from "./file-save.js";
import { inWords, say } from "./tell.js";
import { TextKeys } from "./file-keys.js";

const byId = (id) => document.getElementById(id);
const id = location.pathname.split("/").slice(2).map(decodeURIComponent).join("/");

start();

async function start() {
  const told = byId("file-told");
  let file;
  try {
    file = await api("GET", `/api/files/${inPath(id)}`);
  } catch (error) {
    if (!error.problems) throw error;
    say(told, error.problems.map(inWords).join(" "));
    const kept = Save.kept(id);
    if (kept) offer(kept);
    return;
  }

  const text = byId("text"), kept = Save.kept(id);
  document.title = `${file.id.split("/").pop()} as text`;
  byId("file-title").textContent = file.id.split("/").pop();
  byId("as-form").href = `/rig?file=${encodeURIComponent(file.id)}`;
  byId("as-form").hidden = false;
  text.value = kept && file.writable ? kept.text : file.text;
  text.readOnly = !file.writable;
  byId("editor").hidden = false;
  say(told, !file.writable ? "A sample: it can be read here, not changed. Save a copy to change it."
    : kept ? "This is how you left it in this window; it isn't saved yet." : "");
  told.hidden = told.textContent === "";

  const lines = new Lines(text, byId("gutter"));
  const help = new Help(text, lines);
  const check = new Check(text, lines, () => file.id);
  const save = new Save(text, { id: file.id, version: kept && file.writable ? kept.version : file.version, writable: file.writable, hasReturns: file.text.includes("\r\n") }, file.text.replaceAll("\r\n", "\n"), (problems) => check.show(problems));
  new TextKeys(text, { toFields: () => help.focus() });
  lines.show();
  check.show(file.problems);
  check.now();
  help.soon();
  if (kept && file.writable) save.restored();
  document.addEventListener("keydown", (event) => {
    if ((event.ctrlKey || event.metaKey) && !event.shiftKey && !event.altKey && event.key.toLowerCase() === "s") {
      event.preventDefault();
      if (file.writable) save.save(); else save.askName();
    }
  });
  const line = Number(new URLSearchParams(location.search).get("line"));
  if (line > 0) lines.goTo(line, 1); else { text.setSelectionRange(0, 0); lines.showHere(); }
}

// The file is gone or nobody answers, but this window still has what was written.
function offer(kept) {
  const text = byId("text");
  byId("editor").hidden = false;
  byId("save-form").hidden = true;
  text.readOnly = true;
  text.value = kept.text;
  new Lines(text, byId("gutter")).show();
  byId("file-told").textContent += " Below is what you wrote in this window; load the page again when the program runs.";
}
