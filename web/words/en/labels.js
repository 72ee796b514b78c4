/** Words on labels and tags for facts of the core. */
import { bothDegrees } from '../degrees.js';
import { E } from './english.js';
import { say } from '../fact.js';
import { statusWords } from './names.js';
import { fullDate } from '../time.js';
import { cutName } from './cuts.js';
import { allergenWords, itemWithin } from './ingredients.js';
import { KEEPS } from './keeping.js';

/** @typedef {import('../../app/types').Meat} Meat */
/** @typedef {import('../../app/types').Inside} Inside */

/** How a pack is kept, before its date; `date` is true where there is one. @type {Record<import('../../app/types').KeepWord, (date: boolean) => string>} */
export const KEEP = {
  in_cure: (date) => `Keep at ${bothDegrees('2 to 4', '36 to 40')}.${date ? ' In the cure until' : ' In the cure.'}`,
  cold: (date) => `Keep cold, ${bothDegrees(4, 40)} or colder.${date ? ' Use by' : ''}`,
  cold_vacuum: (date) => `Vacuum pack: keep at ${bothDegrees(3, 37)} or colder.${date ? ' Use by' : ''}`,
  frozen: (date) => `Keep frozen, ${bothDegrees('−18', 0)}.${date ? ` ${E.bestBy}` : ''}`,
  not_yet: () => 'Do not eat it yet.',
  do_not_eat: () => 'DO NOT EAT.',
};

/** What is written on by hand. @type {Record<import('../../app/types').Blank, string>} */
export const BLANKS = {
  birds: 'Birds in all',
  hunter: 'Hunter’s name and address',
  signature: 'Hunter’s signature',
  from: 'From',
  given_to: 'Given to, and date',
};

/** @type {Record<import('../../app/types').CureSalt, string>} */
const SALTS = { nitrite: 'sodium nitrite', nitrate: 'sodium nitrate' };
const SALT = 'salt';

/** In the middle of a sentence; a person's own word stays as it was typed. @param {Meat} meat */
const cutOf = ({ cut, name }) => cutName(cut)?.toLowerCase() ?? name;

/** `8 mallard breast, 8 teal breast` @param {Meat[]} meats */
export const meatWords = (meats) =>
  meats.map((meat) => (meat.count === null ? cutOf(meat) : `${meat.count} ${cutOf(meat)}`)).join(', ');

/** @type {import('../fact.js').Words<Inside>} */
const INSIDE = {
  meat: ({ of }) => cutOf(of),
  item: ({ of }) => itemWithin(of),
  // `cure no. 1 (salt, sodium nitrite)`; what stands in brackets in its name gives way.
  cure: ({ item, salts }) => {
    const name = item ? itemWithin({ item, name: '' }).replace(/ \(.*\)$/, '') : 'cure';
    return `${name} (${[SALT, ...salts.map((salt) => SALTS[salt])].join(', ')})`;
  },
};

/** @param {import('../../app/types').Allergen[]} allergens @param {string[]} unread */
function contains(allergens, unread) {
  if (!allergens.length && !unread.length) return 'The recipe names no listed allergen; the bags were not read.';
  return [
    ...(allergens.length ? [`Contains: ${allergenWords(allergens)}.`] : []),
    ...(unread.length ? [`Not known, read the bag: ${unread.join(', ')}.`] : []),
  ].join(' ');
}

/** @param {string} salt @param {[number, number] | null} ppm */
const wentIn = (salt, ppm) => (ppm ? [`${salt} ${ppm[0]} to ${ppm[1]} ppm going in`] : []);

/**
 * What a fact is called, and what stands beside it; nothing where it is to be written by hand.
 * @type {import('../fact.js').Words<import('../../app/types').PaperFact, [string, string]>}
 */
const FACTS = {
  species: () => ['Species, number', ''],
  killed: ({ on }) => ['Date killed', on && fullDate(new Date(`${on}T12:00`).getTime())],
  no_cure: () => ['Cured', 'no, salt only'],
  cured: ({ nitrite, nitrate }) => ['Cured', [...wentIn('nitrite', nitrite), ...wentIn('nitrate', nitrate)].join(', ')],
  cured_weakly: () => ['Cured', 'too weakly to count'],
  cure_unknown: () => ['Cured', 'how much is not known'],
  raw: () => ['Cooked', 'no, raw'],
  cooked: ({ read }) => ['Cooked', `to ${read.text} in the middle`],
  cook_to: ({ needed }) => ['Cooked', `no: cook to ${needed.text} before eating`],
  not_cooked: () => ['Cooked', 'no'],
  contents: ({ inside, allergens, unread }) => [
    'Ingredients',
    `${inside.map((one) => say(INSIDE, one)).join(', ')}. ${contains(allergens, unread)}`,
  ],
};

/** @param {import('../../app/types').PaperFact} fact */
export const paperFact = (fact) => say(FACTS, fact);

/** What a date rests on, with its source. @param {import('../../app/types').KeptBy} by */
export const keptBy = ({ row, source, status }) => `${KEEPS[row]} (${source}, ${statusWords(status)})`;
