/** Words of the page for keys of the core. */
import { E } from './english.js';

/** @type {Record<import('../../app/types').Stage, string>} */
export const STAGES = { pieces: 'Pieces', weigh: 'Weigh', cure: 'Cure', fire: 'Fire', pack: 'Pack' };

/** @type {Record<import('../../app/types').Method, string>} */
export const METHODS = {
  rub: 'Rub',
  cover_brine: 'Brine, until even',
  ground: `Mixed into ${E.mince}`,
  pick_up: 'Strong brine, short',
  pumped: 'Injected',
  pumped_and_covered: 'Injected, then covered',
};

/** Methods with a brine; of some only a share goes into the meat. @param {string} method */
export const hasBrine = (method) => !['rub', 'ground'].includes(method);
/** @param {string} method */
export const takesShare = (method) => hasBrine(method) && method !== 'cover_brine';

/** @type {Record<import('../../app/types').Eaten, string>} */
export const EATEN = {
  cooked: 'Cooked before it is eaten',
  hung_for_months: 'Hung for months, eaten raw',
};

/** @type {Record<import('../../app/types').Share['of'], string>} */
export const BASES = {
  green_weight: 'of the meat',
  meat_and_water: 'of meat and water',
  brine: 'of the water',
  piece: 'a piece',
};

/** @type {Record<string, string>} */
export const KINDS = { bird: 'Birds', red: E.redMeat, boar: E.WildBoar, hare: 'Hare and rabbit' };

/** @type {Record<import('../../app/types').Group, string>} */
export const GROUPS = {
  cure: 'Cures',
  salt: 'Salt',
  sugar: 'Sugar',
  liquid: 'Liquids',
  fat: 'Fat',
  spice: 'Spices',
};

/** @type {Record<'metric' | 'us', { mass?: string, meat: string, length: string, temperature: string }>} */
export const UNITS = {
  metric: { mass: 'g', meat: 'g', length: 'mm', temperature: '°C' },
  // A US weight is pounds and ounces together, so a bare number there means nothing; of meat to be cured it is pounds.
  us: { meat: 'lb', length: 'in', temperature: '°F' },
};

/**
 * @param {number} n
 * @param {string} one
 * @param {string} [many]
 */
export function count(n, one, many = `${one}s`) {
  return `${n} ${n === 1 ? one : many}`;
}

/**
 * A status of the tables in words that a cook knows.
 * @param {import('../../app/types').Status} status
 */
export const statusWords = (status) => STATUSES[status];

/** @type {Record<import('../../app/types').Status, string>} */
const STATUSES = {
  published: 'published',
  quoted: 'quoted',
  memory: 'from memory',
  uncontrolled: 'weighed at home',
  judgement: 'our own estimate',
  common_practice: 'common practice, no source',
};

/**
 * By which a bag without its card is found: the tag, and the end of the id.
 * @param {string} tag
 * @param {string} id
 */
export const shortCode = (tag, id) => `${tag}-${id.slice(-4).toUpperCase()}`;
