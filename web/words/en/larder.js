/** Freezer and stock: what came in and what is left of it, packs first in first out, and who got what. */

import { E } from './english.js';

export const TITLE = 'Freezer and stock';

export const HEADS = { goods: 'Cure, salt, spice', packs: 'Freezer and fridge', gone: 'Who got what' };

/** What came in. */
export const CAME = {
  nothing: 'Nothing is written down yet.',
  head: 'Write down what came in',
  what: 'What',
  bags: 'Bags',
  own: 'Something else',
  name: 'Name',
  howMany: 'How many',
  howMuch: 'How much',
  add: 'Write it down',
  noName: 'Type what it is called.',
  added: 'It is written down.',
  remove: 'Delete the last entry',
  /** @param {string} name */
  of: (name) => ` of ${name}`,
  /** @param {string} name */
  removed: (name) => `${name} is deleted.`,
};

/** Packs in the house. */
export const PACKS = {
  lead: 'The one to eat first stands on top.',
  nothing: 'No pack is on the list.',
  fromLabels: 'To add the packs of a batch: Pack stage, Labels and tags.',
  head: 'Put another pack in',
  what: 'What is in it',
  weight: 'Weight',
  until: 'Use by',
  untilFrom: ' (from its label)',
  add: 'Put it in the list',
  noName: 'Type what is in it.',
  noDay: 'Give the use-by from its label.',
  /** @param {string} name */
  added: (name) => `${name} is in the list.`,
  notWeighed: 'not weighed',
  past: ' That day is past.',
  next: ' Eat it next.',
  noUseBy: 'No use-by is written down.',
};

/** Until when a pack keeps. @param {boolean} frozen @param {string} day */
export const useBy = (frozen, day) => (frozen ? `Frozen. ${E.bestBy} ${day}.` : `Use by ${day}.`);

/** Where a pack goes. */
export const GOES = {
  eaten: 'Eaten',
  given: 'Given away',
  gift: 'Gift tag',
  /** Stored with the pack that was eaten. */
  here: 'Eaten here',
  who: 'Who gets it',
  noName: 'Type who gets it.',
  add: 'Write it down',
  notNow: 'Not now',
  nothing: 'Nothing was eaten or given away yet.',
  /** @param {string} to */
  done: (to) => `Gone: ${to}.`,
};
