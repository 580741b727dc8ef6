// Files of the reader's own device: one is chosen to be read, or text is saved as one. Where the browser lets a page write to a
// place that its reader chose, it asks for the place; everywhere else the file goes to the downloads.
import { el } from "./parts.js";

/** As much as a scenario file may have: see RequestLimits.cs. */
const LARGEST = 2 * 1024 * 1024;
const KIND = { description: "Scenario file", accept: { "application/yaml": [".yaml", ".yml"] } };

/** Why a file can't be taken, in words. */
export class FileProblem extends Error {}

/**
 * The reader chooses a scenario file; null where nothing is chosen.
 * @param {HTMLInputElement} input of the type "file"
 * @returns {Promise<{ name: string, text: string } | null>} fails with a FileProblem
 */
export async function chosenFile(input) {
  const file = input.files?.[0];
  // So that the same file can be chosen again.
  input.value = "";
  return file ? { name: file.name, text: await textOf(file) } : null;
}

/** A scenario file's text. @param {File} file */
export async function textOf(file) {
  if (file.size > LARGEST) throw new FileProblem(`${file.name} has ${Math.ceil(file.size / 1024 / 1024)} MB; a scenario file has `
    + "2 MB at most.");
  const text = await file.text();
  if (text.includes("\u0000") || !/^\uFEFF?rigscenarios\b/m.test(text)) throw new FileProblem(`${file.name} is no scenario file: `
    + "such a file is text, and says “rigscenarios” in its first lines.");
  return text;
}

/**
 * Saves a text as a file of the device. Gives what to tell of it; "" where the reader chose no place.
 * @param {string} text
 * @param {string} name
 */
export async function saveToDevice(text, name) {
  try {
    const written = await writtenWhereChosen(text, name);
    if (written !== null) return written && `Saved on this device as ${written}.`;
  } catch (error) {
    if (error.name === "AbortError") return "";
    // Too long since the reader's click, or forbidden here: the downloads take it.
    if (error.name !== "SecurityError" && error.name !== "NotAllowedError") throw error;
  }
  download(text, name);
  return `Saved with your downloads as ${name}.`;
}

/** @param {string} text @param {string} name */
function download(text, name) {
  const address = URL.createObjectURL(new Blob([text], { type: "application/yaml" }));
  const link = el("a", { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  // Not before the browser has begun to read it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** The name of the file that was written; null where the browser has no way to ask for a place. @param {string} text
 *  @param {string} name @returns {Promise<string | null>} */
async function writtenWhereChosen(text, name) {
  if (!window.showSaveFilePicker) return null;
  const file = await window.showSaveFilePicker({ suggestedName: name, types: [KIND] });
  const writing = await file.createWritable();
  await writing.write(text);
  // What stood there stays until this moment.
  await writing.close();
  return file.name;
}
