/** All batches: search, a bag without a label, two side by side, a year with its weights. */
import { html } from 'lit-html';
import { count } from './names.js';

export const TITLE = 'All batches';

export const SEEK = {
  label: 'Search',
  hint: 'Name, tag or code on the bag, species, ingredient, day, who got a pack, notes.',
  year: 'Year',
  allYears: 'All years',
};

/** @param {string} year @param {number} batches */
export const yearWith = (year, batches) => `${year}, ${count(batches, 'batch', 'batches')}`;

/** A bag whose label is gone. */
export const BAG = {
  head: 'A bag without a label',
  says: 'Weigh and measure it. The likeliest batch is on top.',
  weight: 'What it weighs',
  hint: 'For example 7 oz.',
  thickness: 'Thickest part',
};

/**
 * How many are listed.
 * @param {number} batches
 * @param {boolean} bagged by what a bag weighs or measures
 * @param {number} unread still to be read from the store
 */
export const listed = (batches, bagged, unread) =>
  `${count(batches, 'batch', 'batches')}${bagged ? ' it may be of' : ''}${unread ? `, ${unread} still being read` : ''}`;

/** @param {string} weight */
export const trimmed = (weight) => html`Trimmed weight <b class="nowrap">${weight}</b>`;

/** @param {string} total */
export const cameOutOf = (total) => html`Came out <b>${total}</b>, of those where both are noted.`;

/** @param {string} weight @param {string} out what came out, where it is noted */
export const trimmedAnd = (weight, out) => `${weight} trimmed${out ? `, ${out} came out` : ''}`;

/**
 * @param {string} code
 * @param {string} day
 * @param {boolean} away
 */
export const underName = (code, day, away) => `${code}, ${day}${away ? ', closed' : ''}`;

/** @param {string} change */
export const toChange = (change) => `To change: ${change}`;

export const ROW = { back: 'Open again', beside: 'Side by side', notStarted: 'not started', year: 'Not started' };

/** Two batches side by side. */
export const BESIDE = {
  head: 'Side by side',
  one: 'Choose one more below.',
  none: 'not noted',
  started: 'Started',
  recipe: 'Recipe',
  pieces: 'Pieces',
  out: 'Came out',
  cut: 'Cut',
  taste: 'Taste',
  change: 'To change',
  notes: 'Notes',
};
