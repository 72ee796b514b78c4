/** The weigh-out: what goes onto the scale now, the list, and the way on where the dose must not stay as it is. */
import { html } from 'lit-html';
import { E } from './english.js';

/** @typedef {import('../../app/types').Figure} Figure */

export const TITLE = 'Weigh';
/** @param {string} batch */
export const title = (batch) => `Weigh, ${batch}`;

export const NO_MEAT = { says: 'No meat yet, so no figures.', go: 'Say how much meat' };
export const TO_PIECES = 'Go to the pieces';
export const ELSEWHERE = 'Elsewhere';
export const PRINT = 'Print this sheet';

/** What is in hand at the scale. */
export const HAND = {
  add: 'Add',
  estimate: 'Estimate',
  shows: 'Scale shows',
  apart: 'In a tub of its own.',
  first: 'Bowl on the scale, set to zero once.',
  same: 'Same bowl, do not zero again.',
  eachBag: 'A bowl for each bag, the scale set to zero for each.',
  /** @param {number} at @param {number} of @param {string} how */
  which: (at, of, how) => `${at} of ${of}. ${how}`,
  /** @param {string} figure @param {boolean} apart */
  isIn: (figure, apart) => (apart ? `${figure} is measured` : `${figure} is in the bowl`),
};

/** Where the sizes are bagged apart. Bags count from 0. */
export const BAG = {
  /** @param {number} bag @param {Figure} green */
  of: (bag, green) => `Bag ${bag + 1}, ${green.text}`,
  /** @param {number} bag @param {Figure} add */
  add: (bag, add) => `Bag ${bag + 1}: ${add.text}`,
  /** @param {number} bag */
  off: (bag) => `Bag ${bag + 1} is off on this scale`,
  /** @param {number} low @param {number} high */
  means: (low, high) =>
    `What the scale shows may mean ${low} to ${high} ppm. Bag the sizes together, or take a finer scale.`,
};

/** The dose in range, in two pieces that do not break. @param {string} range @param {number} limit @returns {[string, string]} */
export const doseAndLimit = (range, limit) => [`${range} ppm,`, `limit ${limit}.`];

/** Once all is weighed. */
export const AFTER = {
  in: 'All in',
  allIn: 'All in.',
  /** @param {Figure} total */
  bowlHolds: (total) => html`All in, the bowl holds <b class="nowrap">${total.text}</b>.`,
  /** @type {Record<'rub' | 'label', string>} what is true once it is pressed */
  done: { rub: 'All of it is on: done just now', label: `It is ${E.labelled}: done just now` },
  label: 'Print or copy its label',
  ticked: 'Everything here is done.',
  toCure: 'All in. Go to the cure',
};

/** The list. */
export const LIST = {
  /** @param {boolean} bags the sizes are bagged apart @param {boolean} weighed every piece was on the scale */
  sum: (bags, weighed) => `All in, ${bags ? 'the bowls hold' : 'the bowl holds'}${weighed ? '' : ', usually'}`,
  apart: 'In a tub of its own',
  more: html`Not enough to cover it? Make more of the same at <a href="#/brine">Brine</a>. Never add plain water.`,
  then: 'Then',
};

/** Some of the meat was on no scale yet. */
export const NOT_WEIGHED = {
  head: 'Not all is weighed',
  go: 'Weigh the pieces',
  /** @param {unknown} green how much it is */
  says: (green) => html`It is ${green} of meat. Nothing can be marked done until every piece was on the scale.`,
};

/** A scale that is too coarse, and the mix that helps. */
export const MIX = {
  /** @param {number} parts */
  use: (parts) => `Use a 1-in-${parts} mix`,
  /** @param {number} parts @param {[unknown, unknown]} range */
  useTo: (parts, [low, high]) => `Use a 1-in-${parts} mix: ${low}–${high} ppm`,
  /** @param {number} parts */
  first: (parts) => `First make the 1-in-${parts} mix`,
  back: 'Back to the cure itself',
  on: 'The list works with the mix now.',
  off: 'The list works with the cure itself now.',
};

/** The dose holds the batch. */
export const HELD = {
  head: 'Ways out',
  says: 'Nothing can be marked done until its numbers change.',
  /** @param {string} aim */
  aim: (aim) => `Weigh for ${aim} in this batch`,
  /** @param {string} aim */
  aimed: (aim) => `This batch is weighed for ${aim}. The recipe is as it was.`,
  pieces: 'Change the pieces',
  threw: `I threw it ${E.thrown}`,
  list: 'The list, while the batch is held',
  noTicks: 'Nothing can be marked done while the batch is held.',
};

/** Why these grams. */
export const WHY = {
  /** @param {Figure} add */
  usually: (add) => `Usually ${add.text}.`,
  spoon: 'The spoon figure shows a mistake. Never measure by it.',
};

export const SCALE = { head: 'Another scale here?', asks: 'The smallest step your scale shows' };
