// The addresses of pages, made and read in one place.

const within = encodeURIComponent;

/** The pieces of a file's name, each encoded, the slashes kept. @param {string} id */
const pieces = id => id.split("/").map(within).join("/");

export const pageOf = {
  /** The form, with a file and which of its builds and days; or for a new rig. @param {Record<string, string | null>} [place] */
  rig(place = {}) {
    const said = Object.entries(place).flatMap(([name, value]) => value ? [[name, value]] : []);
    return said.length > 0 ? `/rig?${new URLSearchParams(said)}` : "/rig";
  },
  /** A file as text. @param {string} id */
  file: id => `/file/${pieces(id)}`,
  /** The teacher's page, with a task that is kept; or for a new one. @param {string} [name] */
  task: name => name ? `/class?${new URLSearchParams({ task: name })}` : "/class",
  /** A notebook, with values for its parameters. @param {string} name @param {Record<string, string>} [values] */
  notebook: (name, values) => `/n/${within(name)}${values ? `#${new URLSearchParams(values)}` : ""}`,
};

/** The notebook that this page shows. */
export function notebookHere() { return decodeURIComponent(location.pathname.split("/").pop() ?? ""); }

/** The code of the task that this page shows. */
export function codeHere() { return decodeURIComponent(location.pathname.split("/").pop() ?? ""); }

/** The kept task that the teacher's page shows; null for a new one. */
export function taskHere() { return new URLSearchParams(location.search).get("task"); }

/** The file that this page shows as text. */
export function fileHere() { return location.pathname.split("/").slice(2).map(decodeURIComponent).join("/"); }

/** Where a link to this page opens, as a sentence. */
export const LINKS_OPEN = "It opens on this machine while the program runs.";
