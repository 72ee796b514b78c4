/** What fields, rows, ticks and answers say wherever they stand. */
import { count } from './names.js';

export const REMOVE = 'Remove';
/** @param {string} what */
export const remove = (what) => `Remove ${what}`;

/** Rows that move. */
export const MOVE = {
  up: 'Up',
  down: 'Down',
  /** @param {string} what */
  upWhat: (what) => `Move ${what} up`,
  /** @param {string} what */
  downWhat: (what) => `Move ${what} down`,
};

export const FIELD = {
  optional: '(may be left empty)',
  which: 'Which is meant',
};

/** Above a form that cannot be read. @param {number} n */
export const toPutRight = (n) => `${count(n, 'thing')} to put right`;

export const CUT = {
  asks: 'Which cut?',
  hint: 'Belly (bacon) has its own limits.',
  notSaid: 'Not said',
  choose: 'Choose',
  other: 'Something else',
};

/** A weight, in grams or in pounds and ounces. */
export const WEIGHT = {
  parts: { pounds: 'pounds', ounces: 'ounces', grams: 'grams' },
  toGrams: 'g, weigh in grams',
  toPounds: 'lb, weigh in pounds and ounces',
  /** @param {string} label of the field @param {string} part */
  box: (label, part) => `${label}, ${part}`,
  /** @param {string} pounds @param {string} ounces */
  carried: (pounds, ounces) => `That is ${pounds} lb ${ounces} oz.`,
};

export const THICK = {
  label: 'Thickest piece',
  /** @param {string} most */
  upTo: (most) => `Up to ${most}`,
  thinner: 'Thinner',
  thicker: 'Thicker',
};

export const UNDO = 'Undo';
/** @param {string} what */
export const undo = (what) => `Undo: ${what}`;

/** On paper, over the rule on which the hour of a tick is written. */
export const TIME = 'Time';

/** Before an older tick goes. */
export const UNTICK = {
  /** @param {string} what @param {string} when */
  asks: (what, when) => `${what} was marked ${when}, and other things since. Undo it? What came after stays.`,
  no: 'Leave it',
  yes: 'Undo it',
};

/** Before a job is done ahead of its time. */
export const AHEAD = {
  /** @param {string} job @param {string} early when it is due, as a sentence */
  asks: (job, early) => `${job}: ${early} Now all the same?`,
  no: 'Not yet',
  yes: 'Yes, now',
};

export const NO_FIGURES = { head: 'No figures', again: 'Work it out again' };

/** Where a screen cannot be drawn. */
export const FAILED = {
  how: 'What is saved in this browser is not touched. Reload the page. If that does not help, export the file.',
  reload: 'Reload',
  export: 'Export the file',
  batches: 'Batches',
  made: 'The file is made.',
  refused: 'No file made: the browser gave nothing. Close other tabs of this page, then try again.',
};

/** What in a recipe may be a cure. */
export const SETTLE = {
  head: 'To settle',
  none: 'No cure in this line',
  toLine: 'Go to this line',
  toCures: 'Put it under Cure',
  leaveOut: 'Leave it out',
  no: 'No',
  yes: 'Yes',
  /** @param {string} name */
  noCure: (name) => `${name}: no cure.`,
  /** @param {string} name */
  leftOut: (name) => `${name}: left out.`,
  /** @param {string} name @param {string} holds */
  holds: (name, holds) => `${name}: ${holds}.`,
};
