// The library comes as one file: a tar archive (POSIX.1-1988, "ustar") in .lzma. One file to load instead of thirty, and small on
// every server, also on those that compress nothing. Each of its files is handed out as soon as it is unpacked, while the rest
// still comes.
import { LzmaDecoder } from "./lzma.js";

const BLOCK = 512, NAME = 100, SIZE = 124, SIZE_END = 136;
/** So much is unpacked at a time: the browser translates the first file meanwhile. */
const PIECE = 1 << 17;

/** @typedef {{ give: (bytes: Uint8Array<ArrayBuffer>) => void, fail: (why: unknown) => void }} Waiting */

export class Unpacking {
  /** @type {Map<string, Uint8Array<ArrayBuffer>>} */
  #files = new Map();
  /** @type {Map<string, Waiting>} */
  #waiting = new Map();
  #lzma = new LzmaDecoder();
  #at = 0;
  /** Why no more files come. @type {unknown} */
  #end = null;

  /**
   * Unpacks what comes. What goes wrong is told to those who wait for a file.
   * @param {AsyncIterable<Uint8Array>} packed
   */
  async read(packed) {
    try {
      for await (const bytes of packed) await this.#take(bytes);
      this.#lzma.end();
      this.#handOut();
      this.#end = new Error("It is not in the packed file.");
    } catch (error) {
      this.#end = error;
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
    if (this.#end) return Promise.reject(this.#missing(name));
    return new Promise((give, fail) => { this.#waiting.set(name, { give, fail }); });
  }

  /** @param {string} name */
  #missing(name) {
    const why = this.#end instanceof Error ? this.#end.message : String(this.#end);
    return new Error(`${name} can't be had: ${why}`, { cause: this.#end });
  }

  /** @param {Uint8Array} bytes */
  async #take(bytes) {
    for (let at = 0; at < bytes.length; at += PIECE) {
      this.#lzma.take(bytes.subarray(at, at + PIECE));
      // Who got a file does something with it before the next one.
      if (this.#handOut()) await new Promise(next => { setTimeout(next); });
    }
  }

  /** Hands out the files that are whole. Says whether there was one. */
  #handOut() {
    const { output, at: whole } = this.#lzma, before = this.#at;
    while (this.#at + BLOCK <= whole && output[this.#at] !== 0) {
      const name = text(output, this.#at, NAME), size = Number.parseInt(text(output, this.#at + SIZE, SIZE_END - SIZE), 8);
      const begin = this.#at + BLOCK;
      if (!(size >= 0)) throw new Error("The packed file is damaged: it has no list of files.");
      if (begin + size > whole) break;
      this.#give(name, /** @type {Uint8Array<ArrayBuffer>} */ (output.subarray(begin, begin + size)));
      this.#at = begin + Math.ceil(size / BLOCK) * BLOCK;
    }
    return this.#at > before;
  }

  /** @param {string} name @param {Uint8Array<ArrayBuffer>} bytes */
  #give(name, bytes) {
    this.#files.set(name, bytes);
    this.#waiting.get(name)?.give(bytes);
    this.#waiting.delete(name);
  }
}

/** The letters before the first zero. @param {Uint8Array} bytes @param {number} from @param {number} most */
function text(bytes, from, most) {
  const field = bytes.subarray(from, from + most), end = field.indexOf(0);
  return new TextDecoder().decode(end < 0 ? field : field.subarray(0, end));
}
