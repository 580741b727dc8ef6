// The library comes as one file: a tar archive (POSIX.1-1988, "ustar") in Zstandard (RFC 8878). One file to load instead of
// thirty, and small on every server, also on those that compress nothing. Each of its files is handed out as soon as it is
// unpacked, while the rest still comes.
import { Decompress } from "./fzstd/fzstd-0.1.1.js";

const BLOCK = 512, NAME = 100, SIZE = 124, SIZE_END = 136;
/** So much is unpacked at a time: the browser translates the first file meanwhile. */
const PIECE = 1 << 17;
const NOTHING = new Uint8Array();

/** @typedef {{ give: (bytes: Uint8Array<ArrayBuffer>) => void, fail: (why: unknown) => void }} Waiting */

export class Unpacking {
  /** @type {Map<string, Uint8Array<ArrayBuffer>>} */
  #files = new Map();
  /** @type {Map<string, Waiting>} */
  #waiting = new Map();
  #zstd = new Decompress(bytes => this.#take(bytes));
  /** What stands before a file, as far as it is there. */
  #head = new Uint8Array(BLOCK);
  #headAt = 0;
  /** The file that is being unpacked, and what of it, rounded up to whole blocks, is still to come. */
  #name = "";
  #file = new Uint8Array();
  #fileAt = 0;
  #toCome = 0;
  #hasEnded = false;
  /** Why no more files come. @type {unknown} */
  #why = null;

  /**
   * Unpacks what comes. What goes wrong is told to those who wait for a file.
   * @param {AsyncIterable<Uint8Array>} packed
   */
  async read(packed) {
    try {
      for await (const bytes of packed) await this.#unpack(bytes);
      this.#push(NOTHING, true);
      if (!this.#hasEnded) throw new Error("The packed file is cut off.");
      this.#why = new Error("It is not in the packed file.");
    } catch (error) {
      this.#why = error;
    }
    for (const [name, waiting] of this.#waiting) waiting.fail(this.#missing(name));
  }

  /**
   * One of the files, once it is there.
   * @param {string} name
   * @returns {Promise<Uint8Array<ArrayBuffer>>}
   */
  file(name) {
    const file = this.#files.get(name);
    if (file) return Promise.resolve(file);
    if (this.#why) return Promise.reject(this.#missing(name));
    return new Promise((give, fail) => { this.#waiting.set(name, { give, fail }); });
  }

  /** @param {string} name */
  #missing(name) {
    const why = this.#why instanceof Error ? this.#why.message : String(this.#why);
    return new Error(`${name} can't be had: ${why}`, { cause: this.#why });
  }

  /** @param {Uint8Array} bytes */
  async #unpack(bytes) {
    for (let at = 0; at < bytes.length; at += PIECE) {
      const before = this.#files.size;
      this.#push(bytes.subarray(at, at + PIECE), false);
      // Who got a file does something with it before the next one.
      if (this.#files.size > before) await new Promise(next => { setTimeout(next); });
    }
  }

  /** @param {Uint8Array} bytes @param {boolean} isLast */
  #push(bytes, isLast) {
    try {
      this.#zstd.push(bytes, isLast);
    } catch (error) {
      throw new Error(`The packed file is damaged or cut off (${error.message}).`, { cause: error });
    }
  }

  /** The next of the archive. @param {Uint8Array} bytes */
  #take(bytes) {
    for (let at = 0; at < bytes.length;) {
      const rest = bytes.subarray(at);
      at += this.#toCome > 0 ? this.#takeFile(rest) : this.#takeHead(rest);
    }
  }

  /** @param {Uint8Array} bytes @returns {number} how many were taken */
  #takeHead(bytes) {
    const taken = Math.min(bytes.length, BLOCK - this.#headAt);
    this.#head.set(bytes.subarray(0, taken), this.#headAt);
    this.#headAt += taken;
    if (this.#headAt === BLOCK) this.#beginFile();
    return taken;
  }

  #beginFile() {
    this.#headAt = 0;
    // The archive ends with blocks of nothing.
    if (this.#head[0] === 0) { this.#hasEnded = true; return; }
    const size = Number.parseInt(text(this.#head, SIZE, SIZE_END - SIZE), 8);
    if (!(size >= 0)) throw new Error("it has no list of files");
    this.#name = text(this.#head, 0, NAME);
    this.#file = new Uint8Array(size);
    this.#fileAt = 0;
    this.#toCome = Math.ceil(size / BLOCK) * BLOCK;
    if (size === 0) this.#give();
  }

  /** @param {Uint8Array} bytes @returns {number} how many were taken */
  #takeFile(bytes) {
    const taken = Math.min(bytes.length, this.#toCome), content = Math.min(taken, this.#file.length - this.#fileAt);
    this.#file.set(bytes.subarray(0, content), this.#fileAt);
    this.#fileAt += content;
    this.#toCome -= taken;
    if (content > 0 && this.#fileAt === this.#file.length) this.#give();
    return taken;
  }

  #give() {
    this.#files.set(this.#name, this.#file);
    this.#waiting.get(this.#name)?.give(this.#file);
    this.#waiting.delete(this.#name);
  }
}

/** The letters before the first zero. @param {Uint8Array} bytes @param {number} from @param {number} most */
function text(bytes, from, most) {
  const field = bytes.subarray(from, from + most), end = field.indexOf(0);
  return new TextDecoder().decode(end < 0 ? field : field.subarray(0, end));
}
