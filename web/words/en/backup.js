/** Everything as one file, and back again. */
import { html } from 'lit-html';
import { count } from './names.js';

/** @typedef {import('../../app/backup.js').Counts} Counts */

/** Why no file was made. */
export const NOT_MADE = {
  unread: 'No file made: the browser gave nothing. Close other tabs of this page, then press Try again at the top.',
  /** @param {Counts} shown @param {Counts} holds */
  incomplete: (shown, holds) =>
    `The file would hold ${holds.batches} of ${shown.batches} batches, ${holds.recipes} of ${shown.recipes} recipes ` +
    `and ${holds.stock} of ${shown.stock} entries of the stock, so it was not made. Press Try again at the ` +
    'top of the page, or reload it. Then export again.',
};

/** Why a file is not taken. @type {Record<import('../../app/backup.js').Refusal['code'], string>} */
export const NOT_TAKEN = {
  cancelled: 'Nothing was changed.',
  'not-json': 'The file is cut short or damaged and cannot be read. Nothing was changed. Use another copy of the file.',
  'not-a-backup':
    'This is not a file that Cure Reckoner exported. Nothing was changed. Its name begins with cure-reckoner.',
  'newer-backup': 'A newer version of this page made the file. Reload the page to get that version, then try again.',
};

/** What a record of a file is called that has no name. @param {number} n */
export const record = (n) => `record ${n}`;
/** @param {string} name @param {number} n */
export const recordOf = (name, n) => `${name} (record ${n})`;

/** @type {Record<import('../../app/backup.js').Plan['sum'], string>} */
export const SUMS = {
  matches: 'The file is whole.',
  differs: 'The file was changed or damaged after it was made. Look at each record.',
  unchecked: 'Whether the file is whole could not be checked.',
};

export const FILE = {
  export: 'Export everything',
  import: 'Import a file',
  importHint: 'You see what is in it before anything is saved.',
  notDone: 'Not done',
  done: 'Done',
  cancel: 'Cancel',
  writing: 'Writing the file',
  reading: 'Reading the file',
};

/** @param {string} what @param {number} share */
export const progress = (what, share) => `${what}: ${Math.floor(share * 100)} %`;

/** What taking a file would do. */
export const PLAN = {
  head: 'What is in the file',
  more: 'Show more of them',
  leave: 'Leave all as it is',
  store: 'Save what is chosen',
  mine: 'Mine',
  noDate: 'no date',
  /** @param {string} when */
  mineOf: (when) => `Mine, of ${when}`,
  /** @param {string} when */
  theirsOf: (when) => `The file's, of ${when}`,
  /** @param {number} n */
  allMine: (n) => `Mine for all ${n}`,
  /** @param {number} n */
  allTheirs: (n) => `The file's for all ${n}`,
};

/**
 * @param {string} made when; empty where the file does not say
 * @param {import('../../app/backup.js').Plan['sum']} sum
 * @param {{ fresh: number, same: number, asked: number, unreadable: number }} of
 */
export const inFile = (made, sum, { fresh, same, asked, unreadable }) =>
  `${made ? `Made ${made}. ` : ''}${SUMS[sum]} ${count(fresh, 'record')} new here, ${same} the same as here, ` +
  `${asked} to choose, ${unreadable} that cannot be read.`;

/** @param {string} name @param {boolean} inPlace of a starter */
export const comes = (name, inPlace) =>
  html`<b>${name}</b>: ${inPlace ? 'in place of the starter here.' : 'new here, will be saved.'}`;

/** @param {string} name @param {string | undefined} reason */
export const leftOut = (name, reason) => html`<b>${name}</b>: cannot be read, since ${reason}. It is left out.`;

/** @param {string} name */
export const differs = (name) => html`<b>${name}</b> is different here and in the file.`;

/** @param {Counts} holds @param {Counts} shown */
export const exported = ({ batches, recipes, stock }, shown) =>
  `The file holds ${count(batches, 'batch', 'batches')} of ${shown.batches}, ` +
  `${count(recipes, 'recipe')} of ${shown.recipes} and ${stock} of ${shown.stock} in the stock.`;

/** @param {number} written @param {number} skipped */
export const imported = (written, skipped) =>
  `${count(written, 'record')} saved.${skipped ? ` ${skipped} left, since they have changed here meanwhile.` : ''}`;

/** @param {string} day @param {string} time */
export const dayAndTime = (day, time) => `${day}, ${time}`;

/** What stands in the settings about it. */
export const COPY = {
  head: 'Everything as one file',
  why: 'Recipes and batches are in this browser only. A browser can lose them: the file is your copy.',
  never: html`<b>Nothing has been exported from this browser yet.</b>`,
  /** @param {string} when */
  last: (when) => html`Last export: <b>${when}</b>.`,
  /** @param {number} recipes @param {number} batches */
  here: (recipes, batches) => `Here are ${count(recipes, 'recipe')} and ${count(batches, 'batch', 'batches')}.`,
};
