/** Shopping list: what birds or an animal will give, what to buy for it, the room it takes. */
import { html } from 'lit-html';
import { E } from './english.js';
import { count } from './names.js';
import { GAME, weighedWords } from './game.js';

export const TITLE = 'Shopping list';
export const BEFORE = 'Before anything is weighed: what it will give, what to buy, and the room it takes.';

/** Heads in the list of game, beside the kinds. */
export const HEADS = {
  large: `${E.WildBoar} and bear`,
  geese: 'Geese',
  land: 'Pheasants, grouse, turkeys, doves',
  ducks: 'Ducks',
};

/** What is asked. */
export const ASK = {
  what: 'What is it?',
  choose: 'Choose one',
  counted: 'How you count',
  each: 'For each person',
  all: 'In all',
  pieces: 'Pieces',
  hunters: 'People',
  forEach: 'For each of them',
  limit: E.forMany,
  howMany: 'How many in all',
  howManyPieces: 'How many pieces',
  weightOfOne: 'Weight of one animal',
  recipe: 'For which recipe?',
  noRecipe: 'No recipe yet',
  perPack: 'Pieces to a pack',
  killed: 'Day of the kill',
  add: 'Add to the plan',
};

/** @type {Record<'one' | 'hunter' | 'piece', [string, string]>} */
export const STEPPERS = {
  one: ['One fewer', 'One more'],
  hunter: ['One person fewer', 'One person more'],
  piece: ['One piece fewer', 'One piece more'],
};

/** @param {string | undefined} weighed how it is weighed, as `feathered` */
export const weightOfOne = (weighed) => `Weight of one animal, ${weighed}`;

/** @param {boolean} needed */
export const weightHint = (needed) =>
  needed ? 'There is no figure without it.' : 'Empty: what is usual, with a wider range.';

/**
 * A bird or an animal in the list; how it is weighed where there is no figure without.
 * @param {import('../../app/types').GameName} game
 */
export const gameWords = ({ key, needs_weight: needed, weighed, memory }) =>
  `${GAME[key]}${needed ? `, by weight ${weighedWords(weighed)}` : ''}${memory ? ' (from memory)' : ''}`;

export const SAYS = {
  chooseIt: 'Choose what it is from the list.',
  added: 'Added to the plan.',
  /** @param {string} tag */
  started: (tag) => `Batch ${tag} is started. Its pieces are still to be weighed.`,
};

/** @param {number} pieces @param {string} green */
export const inPlan = (pieces, green) =>
  html`<b>In the plan: ${count(pieces, 'piece')}, likely ${green}.</b> See below.`;

/** Batches that were started from it. */
export const STARTED = { head: 'Started from this plan, still to be weighed', label: 'Started from this plan' };

export const RESULT = {
  head: 'What it will give',
  nothing: 'Nothing is planned yet. Add the birds of a day, or an animal.',
  green: 'Trimmed weight in all:',
  room: 'Room on a rack',
  sayRoom: 'Say how large your shelves and racks are',
  memory: 'From memory',
  own: 'Your own weights',
  off: 'Take off the plan',
};

/** @param {number} pieces @param {string} spread */
export const piecesAnd = (pieces, spread) => `${count(pieces, 'piece')}, ${spread}.`;

/** @param {number} pieces @param {string} name */
export const piecesOf = (pieces, name) => `${count(pieces, 'piece')}, ${name}`;

/** @param {string} spread */
export const each = (spread) => `Each ${spread}.`;

export const BUY = {
  head: 'What to buy',
  nothing: 'Choose a recipe above and it stands here.',
  atEnd: 'At the end.',
  notWeigh: 'For buying only. Weigh out by the meat on the scale.',
  stock: 'Freezer and stock',
};

/** @param {string} range */
export const enough = (range) => html` is enough. ${range}.`;

export const notWritten = html`What is in the house and not written down yet:
  <a href="#/stock">write it down in Freezer and stock</a>.`;

/** @param {string | undefined} recipe @param {number} pieces */
export const start = (recipe, pieces) => `Start a batch: ${recipe}, ${count(pieces, 'piece')}`;
