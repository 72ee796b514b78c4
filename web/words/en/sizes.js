/** Pieces: how much meat, each size of it, and the form that adds or changes one. */
import { html } from 'lit-html';
import { degrees, inUnits } from '../degrees.js';
import { E } from './english.js';
import { count } from './names.js';

export const TITLE = 'Pieces';
/** @param {string} batch */
export const titleOf = (batch) => `Pieces, ${batch}`;

/** How much meat there is. @param {number} pieces @param {boolean} about @param {boolean} weighed */
export const inAll = (pieces, about, weighed) =>
  `Meat, trimmed: ${about ? 'about ' : ''}${count(pieces, 'piece')}${weighed ? '' : ', usual for what is not weighed'}`;

export const ANSWER = {
  /** @param {string | undefined} name */
  weigh: (name) => `Weigh the ${name}`,
  go: 'Go to Weigh',
  right: 'The weights are right. Go to Weigh',
  /** @param {unknown} range */
  until: (range) => html`<b class="nowrap">${range}</b> until all is weighed. Nothing can be marked done before that.`,
  from: 'Every figure of this batch is worked from this weight.',
  mixed: 'Mixed sizes',
  elsewhere: 'Elsewhere',
};

export const TABLE = {
  sizes: 'Sizes',
  size: 'Size',
  all: 'All',
  notWeighed: 'not weighed yet',
  change: 'Change',
  /** @param {string} name */
  changeWhat: (name) => `Change ${name}`,
};

/** A piece of a size. @param {string} weight @param {boolean} weighed @param {string | undefined} thickness */
export const eachOf = (weight, weighed, thickness) =>
  `${weighed ? '' : 'usually '}${weight} each${thickness ? `, ${thickness} thick` : ''}`;

export const WHY =
  'Trimmed and patted dry. Pieces of one size stand together; the thickest part of each size is measured.';

/** @param {string} name @param {string} source */
export const sourceOf = (name, source) => `${name}: ${source}`;

export const HEADS = { change: 'Change this size', add: 'Add a size', first: 'How much meat' };

export const ASK = {
  cut: 'What is it?',
  choose: 'Choose',
  other: 'Something else',
  chooseIt: 'Choose what it is from the list.',
  call: 'What you call it',
  callHint: `For example: ${E.aSmallBird}.`,
  word: 'Your own word for it',
  wordHint: 'For example: mallard breast, large.',
  name: 'The name',
  howMany: 'How many pieces',
  /** @param {string} n */
  unit: (n) => (n === '1' ? 'piece' : 'pieces'),
  aboutHint: 'Worked out from the weight: count them.',
  allWeight: 'Weight of all of them',
  eachWeight: 'Weight of each',
  weight: 'Weight',
  grams: 'In grams. Empty: not weighed yet.',
  pounds: 'For example 3 lb 4 oz, or 1480 g. Empty: not weighed yet.',
  weightIs: 'The weight is',
  thickest: 'Thickest part',
  thickestHint: E.thumb,
  skin: 'Skin or rind',
  bone: 'Bone',
  before: 'Before the cure it was',
  bag: 'Bag',
  bagIn: 'Which bag is it in?',
  bagHint: 'A size in a bag of its own is weighed out by itself.',
  save: 'Save the change',
  add: 'Add to the batch',
  leave: 'Leave as it was',
  remove: 'Remove it',
};

/** Answers, each with its key. */
export const CHOICES = {
  of: { all: 'of all together', each: 'of each' },
  skin: { off: 'off', on: 'on one side' },
  bone: { out: 'out', in: 'in, and weighed with it' },
  thawed: { fresh: 'fresh', thawed: 'frozen, thawed' },
};

/** @type {Record<'count' | 'thick' | 'bag', [string, string]>} */
export const STEPPERS = {
  count: ['One fewer', 'One more'],
  thick: ['1 mm thinner', '1 mm thicker'],
  bag: ['One bag back', 'Next bag'],
};

/**
 * What a piece of a cut weighs, and who says so.
 * @param {string} cut
 * @param {readonly (string | number)[]} grams low, usual, high
 * @param {string} source
 * @param {string} status
 */
export const usualOf = (cut, [low, usual, high], source, status) =>
  `${cut}, one piece: ${inUnits(`${low} to ${high} g, usually ${usual} g`, `${ounces(low)} to ${ounces(high)}, usually ${ounces(usual)}`)}. ${source} (${status})`;

/** @param {string | number | undefined} grams */
const ounces = (grams) => `${(Number(grams) / 28.349523125).toFixed(1)} oz`;

export const SAYS = {
  changed: 'The size is changed.',
  added: 'The size is in the batch.',
  addedUnweighed: 'Added without a weight. Weigh it before the cure.',
  removed: 'The size is removed.',
  removedAll: 'The size and its readings are removed.',
};

/** @param {boolean} changed @param {string} odd what is odd about its weight */
export const heard = (changed, odd) => `${changed ? 'Changed' : 'Added to the batch'}. ${odd}`;

/** What a cut shows. @type {Record<import('../../app/types').Cutting, string>} */
export const FOUND = {
  even: 'Cured to the middle',
  ring: `A middle that has not ${E.coloured}`,
  too_salty: 'Too salty outside',
  bland: 'Bland in the middle',
};

/** When it is cut. */
export const CUT = {
  head: 'When it is cut',
  about: 'Tell what the cut shows. Later times go by it.',
  other: 'Other meat',
  /** @param {string} kind @param {number} cuts @param {string} learnt */
  learnt: (kind, cuts, learnt) => html`<b>${kind}</b>, ${count(cuts, 'cut')}: ${learnt}`,
  forget: 'Forget what the cuts taught',
  forgotten: 'What the cuts taught is forgotten.',
  which: 'Which was cut?',
  found: 'What it shows',
  ring: `How wide the ${E.grey} middle is`,
  keep: 'Save what the cut shows',
  kept: 'Saved. The clock goes by it from now on.',
  soakTo: 'Salt to come down to',
  soak: 'Too salty: soak it down to',
  soakHint: 'Salt wanted, in %. Soak times appear with each size.',
  soakHow: () =>
    `Soak it at ${degrees('2 to 4', '36 to 40')}. That takes out salt; it does not undo an overdose of cure. Fry a slice, taste.`,
};

/** The cure is weighed already. */
export const LATE = {
  head: 'The cure is weighed',
  says: 'It is for the sizes above. Meat that comes now needs its own cure, in a bag of its own.',
  own: 'Weigh its own cure',
};
