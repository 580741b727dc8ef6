// The addresses of pages, made and read in one place: those of a saved page, which stands alone. The pages of the local server
// have their own (shared/addresses.js), with the same names.

const within = encodeURIComponent;

export const pageOf = {
  /** There is no form beside a saved page. @param {Record<string, string | null>} [_place] */
  rig: _place => "",
  /** Nor a page that shows a file as text. @param {string} _id */
  file: _id => "",
  /** @param {string} [_name] */
  task: _name => "",
  /** Another notebook, where it was saved beside this one under its own name. @param {string} name
   * @param {Record<string, string>} [values] */
  notebook: (name, values) => `${within(name)}.html${values ? `#${new URLSearchParams(values)}` : ""}`,
};

/** The notebook that this page shows. @returns {string} */
export function notebookHere() { return globalThis.carried.saved.name; }

/** The code of the task that this page shows: here there is none. */
export function codeHere() { return ""; }

/** The kept task that the teacher's page shows: here there is none. */
export function taskHere() { return null; }

/** The file that this page shows as text: here there is none. */
export function fileHere() { return ""; }

/** Where a link to this page opens, as a sentence. */
export const LINKS_OPEN = "It opens on this device, as long as this file lies where it lies now.";
