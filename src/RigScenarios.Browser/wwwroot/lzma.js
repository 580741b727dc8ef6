// What an .lzma file holds, unpacked as its bytes come. The library is a quarter smaller than deflated that way, and no browser
// unpacks anything smaller by itself. The format: I. Pavlov, "LZMA specification", 2015, whose names are used here.
// This runs once over all of the library before the first answer: hence the plain arrays, and numbers that stay integers.

const STATES = 12, POSITIONS = 16, LENGTH_STATES = 4, LITERAL_PROBS = 0x300, ONE = 1 << 11, MOVE = 5, TOP = 1 << 24;
const FIRST_LONG_SLOT = 14, ALIGN_BITS = 4, LEAST_MATCH = 2, HEADER = 13;
/** No step reads more: 22 bits by their probability and 26 plain ones. */
const MOST_PER_STEP = 20;

/** @param {number} count @returns {Uint16Array} probabilities, each one half */
const halves = count => new Uint16Array(count).fill(ONE / 2);

/** Reads bits by their probability. */
class RangeDecoder {
  bytes = new Uint8Array();
  at = 0;
  // Range and code as 32 bits without sign: an array keeps them such, a property would box them.
  #now = new Uint32Array([0xffffffff, 0]);

  begin() {
    for (this.at = 1; this.at < 5;) this.#now[1] = (this.#now[1] << 8) | this.bytes[this.at++];
  }

  /** @param {Uint16Array} probs @param {number} index @returns {number} 0 or 1 */
  bit(probs, index) {
    const now = this.#now, prob = probs[index];
    let range = now[0], code = now[1], bit = 0;
    const bound = Math.imul(range >>> 11, prob) >>> 0;
    if (code < bound) {
      range = bound;
      probs[index] = prob + ((ONE - prob) >>> MOVE);
    } else {
      range = (range - bound) >>> 0;
      code = (code - bound) >>> 0;
      probs[index] = prob - (prob >>> MOVE);
      bit = 1;
    }
    if (range < TOP) {
      range = (range << 8) >>> 0;
      code = ((code << 8) | this.bytes[this.at++]) >>> 0;
    }
    now[0] = range;
    now[1] = code;
    return bit;
  }

  /** Bits without a probability. @param {number} count */
  plain(count) {
    const now = this.#now;
    let value = 0;
    for (; count > 0; count--) {
      now[0] >>>= 1;
      const bit = now[1] >= now[0] ? 1 : 0;
      if (bit) now[1] -= now[0];
      if (now[0] < TOP) {
        now[0] <<= 8;
        now[1] = (now[1] << 8) | this.bytes[this.at++];
      }
      value = (value << 1) | bit;
    }
    return value;
  }

  /** A number of so many bits, the highest first. @param {Uint16Array} probs @param {number} from @param {number} bits */
  tree(probs, from, bits) {
    let node = 1;
    for (let i = 0; i < bits; i++) node = (node << 1) | this.bit(probs, from + node);
    return node - (1 << bits);
  }

  /** The same, the lowest first. @param {Uint16Array} probs @param {number} from @param {number} bits */
  reverse(probs, from, bits) {
    let node = 1, value = 0;
    for (let i = 0; i < bits; i++) {
      const bit = this.bit(probs, from + node);
      node = (node << 1) | bit;
      value |= bit << i;
    }
    return value;
  }
}

/** The lengths of matches. */
class LengthDecoder {
  #choice = halves(2);
  #low = halves(POSITIONS << 3);
  #middle = halves(POSITIONS << 3);
  #high = halves(1 << 8);

  /** @param {RangeDecoder} range @param {number} position */
  read(range, position) {
    if (!range.bit(this.#choice, 0)) return range.tree(this.#low, position << 3, 3);
    if (!range.bit(this.#choice, 1)) return 8 + range.tree(this.#middle, position << 3, 3);
    return 16 + range.tree(this.#high, 0, 8);
  }
}

export class LzmaDecoder {
  /** What is unpacked: as long as the whole, from the begin as far as `at`. */
  output = new Uint8Array();
  at = 0;
  #range = new RangeDecoder();
  #held = new Uint8Array();
  #came = 0;
  #lc = 0; #lpMask = 0; #pbMask = 0; #state = 0;
  #rep0 = 0; #rep1 = 0; #rep2 = 0; #rep3 = 0;
  #literals = halves(0);
  #isMatch = halves(STATES * POSITIONS);
  #isRep0Long = halves(STATES * POSITIONS);
  #isRep = halves(STATES); #isRepG0 = halves(STATES); #isRepG1 = halves(STATES); #isRepG2 = halves(STATES);
  #slots = halves(LENGTH_STATES << 6);
  #near = halves(1 + 128 - FIRST_LONG_SLOT);
  #align = halves(1 << ALIGN_BITS);
  #length = new LengthDecoder();
  #repLength = new LengthDecoder();

  /** Whether all of it is there. */
  get isWhole() { return this.#range.at > 0 && this.at === this.output.length; }

  /** Takes the next piece, and unpacks as far as what came allows. @param {Uint8Array} bytes */
  take(bytes) {
    this.#hold(bytes);
    // Whether a step's bytes are all here is known only beyond the most that one takes.
    if (this.#begin()) this.#unpack(this.#came - MOST_PER_STEP);
  }

  /** Nothing more comes: unpacks what is left. */
  end() {
    if (this.#begin()) this.#unpack(this.#came);
    if (!this.isWhole || this.#range.at > this.#came) throw new Error("The packed file is cut off.");
  }

  /** @param {Uint8Array} bytes */
  #hold(bytes) {
    const all = this.#came + bytes.length;
    if (all > this.#held.length) {
      const larger = new Uint8Array(Math.max(all, 2 * this.#held.length));
      larger.set(this.#held.subarray(0, this.#came));
      this.#held = larger;
      this.#range.bytes = larger.subarray(HEADER);
    }
    this.#held.set(bytes, this.#came);
    this.#came = all;
  }

  /** Reads what stands before the data, once it is there. Says whether it was read. */
  #begin() {
    if (this.#range.at > 0) return true;
    if (this.#came < HEADER + MOST_PER_STEP) return false;
    const view = new DataView(this.#held.buffer), properties = view.getUint8(0), size = view.getBigUint64(5, true);
    if (properties >= 9 * 5 * 5 || size > 0x7fffffffn) throw new Error("The packed file is damaged: its header is none.");
    this.#lc = properties % 9;
    this.#lpMask = (1 << (Math.trunc(properties / 9) % 5)) - 1;
    this.#pbMask = (1 << Math.trunc(properties / 45)) - 1;
    this.#literals = halves(LITERAL_PROBS * (this.#lpMask + 1) << this.#lc);
    this.output = new Uint8Array(Number(size));
    this.#range.begin();
    return true;
  }

  /** @param {number} until how much of the file may be read */
  #unpack(until) {
    const range = this.#range, size = this.output.length, last = until - HEADER;
    while (this.at < size && range.at <= last) {
      const position = this.at & this.#pbMask;
      if (!range.bit(this.#isMatch, (this.#state << 4) + position)) this.#literal(range);
      else if (range.bit(this.#isRep, this.#state)) this.#again(range, position);
      else this.#match(range, position);
    }
  }

  /** @param {RangeDecoder} range */
  #literal(range) {
    const { output, at } = this, probs = this.#literals, before = at > 0 ? output[at - 1] : 0;
    const from = LITERAL_PROBS * (((at & this.#lpMask) << this.#lc) + (before >> (8 - this.#lc)));
    let symbol = 1;
    if (this.#state >= 7) {
      for (let match = output[at - this.#rep0 - 1], isSame = true; isSame && symbol < 256; match <<= 1) {
        const expected = (match >> 7) & 1, bit = range.bit(probs, from + ((1 + expected) << 8) + symbol);
        symbol = (symbol << 1) | bit;
        isSame = bit === expected;
      }
    }
    while (symbol < 256) symbol = (symbol << 1) | range.bit(probs, from + symbol);
    output[this.at++] = symbol;
    this.#state = this.#state < 4 ? 0 : this.#state - (this.#state < 10 ? 3 : 6);
  }

  /** A match as far back as one of the last four. @param {RangeDecoder} range @param {number} position */
  #again(range, position) {
    const state = this.#state;
    if (!range.bit(this.#isRepG0, state)) {
      if (!range.bit(this.#isRep0Long, (state << 4) + position)) {
        this.#state = state < 7 ? 9 : 11;
        this.#copy(1);
        return;
      }
    } else {
      let back = this.#rep1;
      if (range.bit(this.#isRepG1, state)) {
        back = this.#rep2;
        if (range.bit(this.#isRepG2, state)) {
          back = this.#rep3;
          this.#rep3 = this.#rep2;
        }
        this.#rep2 = this.#rep1;
      }
      this.#rep1 = this.#rep0;
      this.#rep0 = back;
    }
    const length = LEAST_MATCH + this.#repLength.read(range, position);
    this.#state = state < 7 ? 8 : 11;
    this.#copy(length);
  }

  /** @param {RangeDecoder} range @param {number} position */
  #match(range, position) {
    this.#rep3 = this.#rep2;
    this.#rep2 = this.#rep1;
    this.#rep1 = this.#rep0;
    const length = this.#length.read(range, position);
    this.#state = this.#state < 7 ? 7 : 10;
    const slot = range.tree(this.#slots, Math.min(length, LENGTH_STATES - 1) << 6, 6);
    this.#rep0 = slot < 4 ? slot : this.#back(range, slot);
    this.#copy(LEAST_MATCH + length);
  }

  /** How far back. @param {RangeDecoder} range @param {number} slot */
  #back(range, slot) {
    const bits = (slot >> 1) - 1, back = (2 | (slot & 1)) << bits;
    return slot < FIRST_LONG_SLOT ? back + range.reverse(this.#near, back - slot, bits)
      : back + (range.plain(bits - ALIGN_BITS) << ALIGN_BITS) + range.reverse(this.#align, 0, ALIGN_BITS);
  }

  /** @param {number} length */
  #copy(length) {
    const { output } = this, end = this.at + length;
    let to = this.at, from = to - this.#rep0 - 1;
    if (from < 0 || from >= to || end > output.length) throw new Error("The packed file is damaged.");
    while (to < end) output[to++] = output[from++];
    this.at = end;
  }
}
