/**
 * The shape of a stored record, its versions, and what makes one unreadable.
 */

/** @typedef {'settings' | 'recipe' | 'batch' | 'stock' | 'meta'} Kind */
/** @typedef {{ key: string, v: number, at: string, data: any }} Rec  `at` is the moment of the last change, ISO. */
/** @typedef {(data: any) => any} Step */
/** @typedef {Record<Kind, Step[]>} Steps */
/**
 * Says why data cannot be used, or null when it can. If it cannot tell, it throws, and nothing is set aside.
 * @typedef {(key: string, data: any) => string | null} Validator
 */
/** @typedef {{ steps: Steps, validate: Validator }} Rules */

const KEY = /^(?:settings|(?:recipe|batch|stock|meta)\/[\w-]{1,64})$/;
const DEEPEST = 24;

/**
 * How old records become new ones: the first step of a kind turns version 1 into version 2, and so on.
 * A step is never changed once it has shipped.
 * @type {Steps}
 */
export const STEPS = { settings: [], recipe: [], batch: [], stock: [], meta: [] };

/**
 * @param {string} key
 * @returns {Kind}
 */
export function kindOf(key) {
  if (!KEY.test(key)) throw new TypeError(`No record can be called ${JSON.stringify(key)}.`);
  return /** @type {Kind} */ (key.split('/', 1)[0]);
}

/**
 * @param {string} key
 * @param {any} data
 * @param {Steps} steps
 * @returns {Rec}
 */
export function seal(key, data, steps) {
  return { key, v: steps[kindOf(key)].length + 1, at: new Date().toISOString(), data };
}

/**
 * Brings a stored record to the present version, or says why it cannot be read.
 * @param {any} raw
 * @param {Rules} rules
 * @returns {{ record: Rec, reason?: undefined } | { record?: undefined, reason: string }}
 */
export function read(raw, { steps, validate }) {
  if (raw === null || typeof raw !== 'object') return { reason: 'it is not a record' };
  const { key, v, at, data } = raw;
  if (typeof key !== 'string' || !KEY.test(key)) return { reason: 'its name is not one that this page uses' };
  if (typeof at !== 'string' || Number.isNaN(Date.parse(at))) return { reason: 'it has no date' };
  if (data === null || typeof data !== 'object') return { reason: 'it has nothing in it' };
  if (deeperThan(DEEPEST, data)) return { reason: `it is nested deeper than ${DEEPEST}` };

  const path = steps[kindOf(key)];
  const newest = path.length + 1;
  if (!Number.isInteger(v) || v < 1) return { reason: 'it has no version' };
  if (v > newest) return { reason: `it is version ${v}, and this page reads up to version ${newest}` };

  let now = data;
  try {
    for (const step of path.slice(v - 1)) now = step(now);
  } catch (error) {
    return { reason: `version ${v} could not be brought to version ${newest}: ${error}` };
  }
  const refusal = validate(key, now);
  return refusal === null ? { record: { key, v: newest, at, data: now } } : { reason: refusal };
}

/**
 * The same text for the same content, whatever the order of its fields.
 * @param {any} value
 * @returns {string}
 */
export function canonical(value) {
  return JSON.stringify(value, (_, part) =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}

/**
 * @param {number} levels
 * @param {any} value
 * @returns {boolean}
 */
function deeperThan(levels, value) {
  if (value === null || typeof value !== 'object') return false;
  return levels === 0 || Object.values(value).some((part) => deeperThan(levels - 1, part));
}

/** A change was asked for on a record that cannot be read. The next reading sets the record aside. */
export class Unreadable extends Error {
  /**
   * @param {string} key
   * @param {string} reason
   */
  constructor(key, reason) {
    super(`The record ${key} cannot be read: ${reason}. It was not changed, and it is kept in the exported file.`);
    this.name = 'Unreadable';
  }
}
