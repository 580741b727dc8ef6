// The addresses of pages, made and read in one place: those of the folder, in which all pages lie beside each other. The pages of
// the local server have their own (shared/addresses.js), with the same names.

/** Notebooks that are there as pages with their results and need the program to answer. @type {Set<string>} */
const asPages = new Set([/* notebooks as pages */]);

const within = encodeURIComponent;

export const pageOf = {
  /** The form, with a file and which of its builds and days; or for a new rig. @param {Record<string, string | null>} [place] */
  rig(place = {}) {
    const said = Object.entries(place).flatMap(([name, value]) => value ? [[name, value]] : []);
    return said.length > 0 ? `rig.html?${new URLSearchParams(said)}` : "rig.html";
  },
  /** A file as text. @param {string} id */
  file: id => `file.html?${new URLSearchParams({ file: id })}`,
  /** The teacher's page is one of the program's: the shelf says so. @param {string} [_name] */
  task: _name => "index.html",
  /** A notebook, with values for its parameters. @param {string} name @param {Record<string, string>} [values] */
  notebook: (name, values) => asPages.has(name) ? `notebooks/${within(name)}.html`
    : `notebook.html?${new URLSearchParams({ notebook: name })}${values ? `#${new URLSearchParams(values)}` : ""}`,
};

/** @param {string} name */
const said = name => new URLSearchParams(location.search).get(name);

/** The notebook that this page shows. */
export function notebookHere() { return said("notebook") ?? ""; }

/** The code of the task that this page shows: here there is none. */
export function codeHere() { return ""; }

/** The kept task that the teacher's page shows: here there is none. */
export function taskHere() { return null; }

/** The file that this page shows as text. */
export function fileHere() { return said("file") ?? ""; }

/** Where a link to this page opens, as a sentence. */
export const LINKS_OPEN = "It opens wherever this folder can be reached at this address.";
