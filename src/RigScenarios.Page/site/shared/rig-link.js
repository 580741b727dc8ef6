// A rig as a link: what was given of it, compact, in the part of the address behind the "#", which no browser sends to anybody.
// It is JSON, deflated (RFC 1951), written with the letters of base64url (RFC 4648, section 5).

/** @import { Tree } from "./requests.js" */

/**
 * What a link carries: what was given, and which of its builds and days the form shows.
 * @typedef {{ given: Tree, build: string, day: string }} LinkedRig
 */

const MARK = "#rig=";
/** What the text within means; another meaning gets another number. */
const VERSION = 1;

/** Messengers and mail programs cut longer addresses, or make no link of them. Common practice, no source. */
export const LONGEST_LINK = 8000;

/** What a link may hold at most when it is unpacked, in bytes: as much as a form may send. */
const LARGEST = 256 * 1024;
/** Trees of scenario files have some ten levels. */
const DEEPEST = 14;

/** A link that can't be read; its message says why, and what to do. */
export class LinkProblem extends Error {}

/** Whether an address's part behind "#" is a rig. @param {string} hash */
export function isRigLink(hash) { return hash.startsWith(MARK); }

/** The part behind "#" for a rig, "#" included. @param {LinkedRig} rig */
export async function linkOf({ given, build, day }) {
  const text = JSON.stringify([VERSION, build, day, given]);
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return MARK + lettersOf(new Uint8Array(await new Response(packed).arrayBuffer()));
}

/**
 * The rig in the part behind "#". It may come from anybody: what is no tree of texts is refused, and what means nothing in a rig
 * is told by the program later.
 * @param {string} hash
 * @returns {Promise<LinkedRig>} fails with a LinkProblem
 */
export async function rigIn(hash) {
  const found = read(await unpacked(bytesOf(hash.slice(MARK.length))));
  if (!Array.isArray(found)) throw new LinkProblem("What this link carries is no rig.");
  const [version, build, day, given] = found;
  if (version !== VERSION) throw new LinkProblem("This link was made by another version of these pages, which writes rigs in "
    + "another way. Ask for the rig as a file.");
  if (!isName(build) || !isName(day) || !isTree(given, DEEPEST) || Array.isArray(given))
    throw new LinkProblem("What this link carries is no rig.");
  return { given, build, day };
}

const BROKEN = "This link is not whole: something cut or changed it on its way. Ask for it again, or for the rig as a file.";

/** @param {string} text */
function read(text) {
  try { return JSON.parse(text); } catch { throw new LinkProblem(BROKEN); }
}

/** @param {Uint8Array<ArrayBuffer>} bytes */
async function unpacked(bytes) {
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
  const pieces = [];
  let size = 0;
  try {
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
      pieces.push(piece.value);
      size += piece.value.byteLength;
      if (size > LARGEST) break;
    }
  } catch {
    throw new LinkProblem(BROKEN);
  }
  if (size > LARGEST) {
    await reader.cancel();
    throw new LinkProblem("This link holds more than a rig can be.");
  }
  return await new Blob(pieces).text();
}

/** @param {unknown} name */
const isName = name => typeof name === "string" && name.length <= 200;

/** Whether it is groups and lists with texts at their ends. @param {unknown} tree @param {number} deep @returns {tree is Tree} */
function isTree(tree, deep) {
  if (typeof tree === "string") return deep < DEEPEST;
  return typeof tree === "object" && tree !== null && deep > 0 && Object.values(tree).every(inner => isTree(inner, deep - 1));
}

/** @param {Uint8Array} bytes */
function lettersOf(bytes) {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** @param {string} letters @returns {Uint8Array<ArrayBuffer>} */
function bytesOf(letters) {
  // Mail programs break long lines, and messengers write some letters otherwise.
  const clean = decoded(letters).replace(/\s/g, "").replaceAll("-", "+").replaceAll("_", "/");
  try {
    return Uint8Array.from(atob(clean), letter => letter.charCodeAt(0));
  } catch {
    throw new LinkProblem(BROKEN);
  }
}

/** @param {string} letters */
function decoded(letters) {
  try { return decodeURIComponent(letters); } catch { throw new LinkProblem(BROKEN); }
}
