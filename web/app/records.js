/**
 * The shape of a stored record, its versions, and what makes one unreadable.
 */
import { withIds } from './places.js';
import { REASONS, refused, unreadable } from '../words/en/storage.js';

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
/** More parts than any record that a person has typed. */
const MOST_PARTS = 100_000;

/**
 * How old records become new ones: the first step of a kind turns version 1 into version 2, and so on.
 * A step is never changed once it has shipped.
 * @type {Steps}
 */
export const STEPS = {
  settings: [],
  recipe: [],
  batch: [
    // Size classes and readings have ids of their own. Those of before are called by their places.
    (batch) => withIds(batch),
    // Whose hours it goes by, bags and bones, what nobody counted, what was thrown out: of before there is none. A page
    // that does not know these words is to leave the record alone.
    (batch) => batch,
    // What was wrapped or got a pan of water while it hung, and at what it is to be wrapped: of before there is none.
    (batch) => batch,
    // A reading of the refrigerator that was asked about and is right, and what was rinsed before the rest: of before there
    // is none.
    (batch) => batch,
  ],
  stock: [],
  meta: [],
};

/** Whether it is a name that this page gives; those of a later page are not for it to judge. @param {unknown} key */
export function isKey(key) {
  return typeof key === 'string' && KEY.test(key);
}

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
  return { key, v: steps[kindOf(key)].length + 1, at: new Date().toISOString(), data: composed(data) };
}

/** The same with every text composed (Unicode NFC): what looks alike is alike. @param {any} data @returns {any} */
function composed(data) {
  if (typeof data === 'string') return data.normalize('NFC');
  if (Array.isArray(data)) return data.map(composed);
  if (data === null || typeof data !== 'object') return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, composed(value)]));
}

/**
 * Brings a stored record to the present version, or says why it cannot be read. `newer`: a later version of the page
 * wrote it, so it is sound and not for this one to touch.
 * @param {any} raw
 * @param {Rules} rules
 * @returns {{ record: Rec, reason?: undefined, newer?: undefined } | { record?: undefined, reason: string, newer?: boolean }}
 */
export function read(raw, { steps, validate }) {
  if (raw === null || typeof raw !== 'object') return { reason: REASONS.noRecord };
  const { key, v, at, data } = raw;
  if (!isKey(key)) return { reason: REASONS.name, newer: true };
  if (typeof at !== 'string' || Number.isNaN(Date.parse(at))) return { reason: REASONS.noDate };
  if (data === null || typeof data !== 'object') return { reason: REASONS.nothing };
  const path = steps[kindOf(key)];
  const newest = path.length + 1;
  if (!Number.isInteger(v) || v < 1) return { reason: REASONS.noVersion };
  if (v > newest) {
    return { reason: REASONS.newer, newer: true };
  }
  if (!plain(data)) return { reason: REASONS.odd };

  let now = data;
  try {
    for (const step of path.slice(v - 1)) now = step(now);
  } catch (error) {
    console.error(error);
    return { reason: REASONS.older };
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
 * Whether it is made of texts, numbers, switches, lists and named parts alone, and of no more than fits a record. The
 * browser can store a thing that holds itself, and such a thing has no end.
 * @param {any} data
 */
function plain(data) {
  let parts = 0;
  const good = (/** @type {any} */ value, /** @type {number} */ levels) => {
    if (++parts > MOST_PARTS) return false;
    if (value === null || typeof value === 'string' || typeof value === 'boolean') return true;
    if (typeof value === 'number') return Number.isFinite(value);
    // A part that is not there is the same as one that is undefined.
    if (value === undefined) return levels < DEEPEST;
    if (typeof value !== 'object' || levels === 0) return false;
    const kind = Object.getPrototypeOf(value);
    if (!Array.isArray(value) && kind !== Object.prototype && kind !== null) return false;
    for (const part of Object.values(value)) if (!good(part, levels - 1)) return false;
    return true;
  };
  return good(data, DEEPEST);
}

/** The rules refuse what was to be stored. */
export class Refused extends Error {
  /** @param {string} reason */
  constructor(reason) {
    super(refused(reason));
    this.name = 'Refused';
  }
}

/** A change was asked for on a record that cannot be read. The next reading sets it aside, if it is not a newer one. */
export class Unreadable extends Error {
  /** @param {string} reason */
  constructor(reason) {
    super(unreadable(reason));
    this.name = 'Unreadable';
  }
}
