/**
 * Unpacks an .lzma file, as its format is laid down in the LZMA specification that comes with the LZMA SDK. Half as large
 * as what browsers unpack by themselves, and quick enough to be done at the start.
 */

const BITS = 11;
const HALF = 1 << (BITS - 1);
const RATE = 5;
/** What `lc` and `pb` of the head must be, and `lp` nothing: the packer knows no others. */
const LITERAL_BITS = 3;
const PLACE_BITS = 2;
const HEAD_BYTES = 13;

/** Where each group of probabilities begins. */
const MATCH = 0;
const REPEATED = MATCH + 12 * 16;
const REPEATED_0 = REPEATED + 12;
const REPEATED_1 = REPEATED_0 + 12;
const REPEATED_2 = REPEATED_1 + 12;
const SHORT = REPEATED_2 + 12;
const SLOT = SHORT + 12 * 16;
const SPECIAL = SLOT + 4 * 64;
const ALIGN = SPECIAL + 128;
const LENGTH = ALIGN + 16;
/** Two choices, three trees. */
const LOW = 2;
const MIDDLE = LOW + 16 * 8;
const HIGH = MIDDLE + 16 * 8;
const REPEATED_LENGTH = LENGTH + HIGH + 256;
const LITERAL = REPEATED_LENGTH + HIGH + 256;
const LITERAL_SIZE = 0x300;

/**
 * @param {Uint8Array} from
 * @returns {Uint8Array<ArrayBuffer>}
 */
export function unlzma(from) {
  const head = new DataView(from.buffer, from.byteOffset);
  const to = new Uint8Array(head.getUint32(5, true));
  const odds = new Uint16Array(LITERAL + (LITERAL_SIZE << LITERAL_BITS)).fill(HALF);
  // The range, and the code in it. The first byte of the stream is always nothing.
  let range = 0xffffffff;
  let code = head.getUint32(HEAD_BYTES + 1);
  let next = HEAD_BYTES + 5;
  let here = 0;
  let state = 0;
  let [last, before, third, fourth] = [0, 0, 0, 0];

  while (here < to.length) {
    const place = here & ((1 << PLACE_BITS) - 1);
    if (!bit(MATCH + (state << 4) + place)) {
      to[here] = literal();
      here += 1;
      state = state < 4 ? 0 : state < 10 ? state - 3 : state - 6;
      continue;
    }
    let length;
    if (bit(REPEATED + state)) {
      if (!bit(REPEATED_0 + state)) {
        if (!bit(SHORT + (state << 4) + place)) {
          to[here] = /** @type {number} */ (to[here - last - 1]);
          here += 1;
          state = state < 7 ? 9 : 11;
          continue;
        }
      } else if (!bit(REPEATED_1 + state)) [last, before] = [before, last];
      else if (!bit(REPEATED_2 + state)) [last, before, third] = [third, last, before];
      else [last, before, third, fourth] = [fourth, last, before, third];
      length = lengthOf(REPEATED_LENGTH, place);
      state = state < 7 ? 8 : 11;
    } else {
      [before, third, fourth] = [last, before, third];
      length = lengthOf(LENGTH, place);
      last = distance(length);
      state = state < 7 ? 7 : 10;
    }
    const end = here + length + 2;
    for (; here < end; here += 1) to[here] = /** @type {number} */ (to[here - last - 1]);
  }
  return to;

  /** @param {number} at */
  function bit(at) {
    const odd = /** @type {number} */ (odds[at]);
    const bound = (range >>> BITS) * odd;
    if (code < bound) {
      range = bound;
      odds[at] = odd + (((1 << BITS) - odd) >> RATE);
      refill();
      return 0;
    }
    range -= bound;
    code -= bound;
    odds[at] = odd - (odd >> RATE);
    refill();
    return 1;
  }

  function refill() {
    if (range >= 1 << 24) return;
    range = (range << 8) >>> 0;
    code = ((code << 8) | /** @type {number} */ (from[next])) >>> 0;
    next += 1;
  }

  /**
   * A number of so many bits, the highest first.
   * @param {number} at
   * @param {number} bits
   */
  function tree(at, bits) {
    let found = 1;
    for (let left = bits; left; left -= 1) found = (found << 1) | bit(at + found);
    return found - (1 << bits);
  }

  /**
   * The same, the lowest first.
   * @param {number} at
   * @param {number} bits
   */
  function turned(at, bits) {
    let node = 1;
    let found = 0;
    for (let place = 0; place < bits; place += 1) {
      const one = bit(at + node);
      node = (node << 1) | one;
      found |= one << place;
    }
    return found;
  }

  function literal() {
    const at = LITERAL + LITERAL_SIZE * ((here && /** @type {number} */ (to[here - 1])) >> (8 - LITERAL_BITS));
    let found = 1;
    // After a match it is mostly not what would have gone on there.
    if (state >= 7) {
      let other = /** @type {number} */ (to[here - last - 1]);
      while (found < 0x100) {
        const guess = (other >> 7) & 1;
        other <<= 1;
        const one = bit(at + ((1 + guess) << 8) + found);
        found = (found << 1) | one;
        if (guess !== one) break;
      }
    }
    while (found < 0x100) found = (found << 1) | bit(at + found);
    return found;
  }

  /**
   * @param {number} at
   * @param {number} place
   */
  function lengthOf(at, place) {
    if (!bit(at)) return tree(at + LOW + (place << 3), 3);
    if (!bit(at + 1)) return 8 + tree(at + MIDDLE + (place << 3), 3);
    return 16 + tree(at + HIGH, 8);
  }

  /** @param {number} length */
  function distance(length) {
    const slot = tree(SLOT + (Math.min(length, 3) << 6), 6);
    if (slot < 4) return slot;
    const bits = (slot >> 1) - 1;
    const far = (2 | (slot & 1)) << bits;
    if (slot < 14) return far + turned(SPECIAL + far - slot, bits);
    // Bits as likely as not, then four that are not.
    let found = 0;
    for (let left = bits - 4; left; left -= 1) {
      range >>>= 1;
      const one = code >= range ? 1 : 0;
      if (one) code -= range;
      found = (found << 1) | one;
      refill();
    }
    return far + (found << 4) + turned(ALIGN, 4);
  }
}
