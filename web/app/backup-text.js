/**
 * The text of the exported file, written and read a slice at a time: with ten thousand records, or with junk, the
 * screen goes on drawing meanwhile.
 */
import { canonical } from './records.js';
import { Slices } from './slices.js';

/** A part longer than this holds what no person typed; it is not read. */
const LONGEST_PART = 2_000_000;
/** So many characters are looked at before the clock is. */
const STRIDE = 50_000;
/** The lists of the file whose things are read one by one. */
const LISTS = ['records', 'aside'];

/**
 * @typedef {object} Watch
 * @property {(share: number) => void} [progress] how much is done, 0 to 1
 * @property {AbortSignal} [signal] stops it
 */

/** It is not the text of a file, or not all of it. */
export class Damaged extends Error {}

/**
 * @param {Record<string, unknown>} head
 * @param {any[]} records
 * @param {any[]} aside
 * @param {Watch} [watch]
 * @returns {Promise<string>}
 */
export async function write(head, records, aside, watch = {}) {
  const sum = await checksum(records, aside, watch);
  const lists = [];
  for (const list of [records, aside])
    lists.push(`[\n${(await each(list, (one) => JSON.stringify(one))).join(',\n')}\n]`);
  const rest = JSON.stringify(head).slice(0, -1);
  return `${rest},\n"records":${lists[0]},\n"aside":${lists[1]},\n"sum":${JSON.stringify(sum)}}\n`;
}

/**
 * Reads the file into its parts; a thing in a list that is too long comes as null.
 * @param {string} text
 * @param {Watch} [watch]
 * @returns {Promise<any>}
 */
export async function parse(text, { progress = () => {}, signal } = {}) {
  const slices = new Slices();
  let at = 0;
  const pause = async () => {
    progress(at / text.length);
    await slices.next();
    signal?.throwIfAborted();
  };
  const skip = () => {
    while (at < text.length && ' \n\r\t'.includes(text.charAt(at))) at++;
    return text.charAt(at);
  };
  const take = (/** @type {string} */ wanted) => {
    if (skip() !== wanted) throw new Damaged();
    at++;
  };
  /** Goes past one value, whatever is in it. */
  const pass = async () => {
    const from = at;
    skip();
    let depth = 0;
    for (let seen = 0; at < text.length; seen++) {
      if (seen % STRIDE === 0 && slices.full) await pause();
      const char = text.charAt(at);
      if (char === '"') {
        at = endOfText(text, at + 1);
      } else if (char === '{' || char === '[') depth++;
      else if (char === '}' || char === ']') {
        if (depth === 0) break;
        depth--;
        if (depth === 0) {
          at++;
          break;
        }
      } else if (char === ',' && depth === 0) break;
      at++;
    }
    return at - from > LONGEST_PART ? null : read(text.slice(from, at));
  };

  /** By their names, whatever these are: an object takes `__proto__` for something else. @type {Map<string, any>} */
  const file = new Map();
  take('{');
  while (skip() !== '}') {
    if (file.size > 0) take(',');
    skip();
    const name = nameAt(text, at, (to) => (at = to));
    take(':');
    if (!LISTS.includes(name) || skip() !== '[') file.set(name, await pass());
    else {
      const list = [];
      take('[');
      while (skip() !== ']') {
        if (list.length > 0) take(',');
        list.push(await pass());
        if (slices.full) await pause();
      }
      at++;
      file.set(name, list);
    }
  }
  at++;
  if (skip() !== '') throw new Damaged();
  return Object.fromEntries(file);
}

/**
 * The quotation mark that ends a text; those after an odd number of backslashes belong to it.
 * @param {string} text
 * @param {number} from
 */
function endOfText(text, from) {
  for (let end = text.indexOf('"', from); end >= 0; end = text.indexOf('"', end + 1)) {
    let slashes = 0;
    while (text.charAt(end - 1 - slashes) === '\\') slashes++;
    if (slashes % 2 === 0) return end;
  }
  return text.length;
}

/**
 * The name of a part.
 * @param {string} text
 * @param {number} at
 * @param {(to: number) => void} done
 */
function nameAt(text, at, done) {
  if (text.charAt(at) !== '"') throw new Damaged();
  const end = endOfText(text, at + 1);
  if (end === text.length || end - at > 100) throw new Damaged();
  done(end + 1);
  return String(read(text.slice(at, end + 1)));
}

/** @param {string} text */
function read(text) {
  try {
    return JSON.parse(text);
  } catch {
    throw new Damaged();
  }
}

/**
 * The digest of what is in the file, whatever the order of fields and the white space.
 * @param {any[]} records
 * @param {any[]} aside
 * @param {Watch} [watch]
 * @returns {Promise<string | null>} null where the browser has no digests: over plain http from another machine
 */
export async function checksum(records, aside, watch = {}) {
  if (!globalThis.crypto?.subtle) return null;
  // By way of JSON, so that what the file cannot hold does not count.
  const plain = (/** @type {any} */ one) => canonical(JSON.parse(JSON.stringify(one)));
  const [a, b] = [await each(aside, plain, watch), await each(records, plain, watch)];
  const whole = new Blob(['{"aside":[', a.join(','), '],"records":[', b.join(','), ']}']);
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', await whole.arrayBuffer()));
  return 'sha256:' + Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * @template T, U
 * @param {T[]} list
 * @param {(one: T, place: number) => U} work
 * @param {Watch} [watch]
 * @returns {Promise<U[]>}
 */
export async function each(list, work, { progress = () => {}, signal } = {}) {
  const slices = new Slices();
  const done = [];
  for (const [place, one] of list.entries()) {
    done.push(work(one, place));
    if (!slices.full) continue;
    progress((place + 1) / list.length);
    await slices.next();
    signal?.throwIfAborted();
  }
  return done;
}
