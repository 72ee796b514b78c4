/** Batches: the list of all, the head of each, the jobs of the week, and what is done with a batch as a whole. */
import { html, nothing } from 'lit-html';
import { degrees } from '../degrees.js';
import { E } from './english.js';
import { count } from './names.js';
import { allergenWords } from './ingredients.js';

export const BATCHES = 'Batches';
/** The rows at the foot of a screen, to a screen reader. */
export const ELSEWHERE = 'Elsewhere';
export const NEXT = 'Next';
export const WRONG = 'Something went wrong';
export const WHY = 'Why / Source';

/** What is due, over all of them. */
export const DUE = {
  none: 'No batch yet.',
  howMuch: 'How much cure?',
  head: 'Next jobs',
  list: 'What comes next',
  /** @param {number} jobs */
  showAll: (jobs) => `Show all ${jobs} jobs`,
  underWay: 'Under way',
  finished: 'Finished, to close',
  next: 'Next',
  /** @param {string | null} day none: today */
  due: (day) => (day === null ? 'Due today' : `Due ${day}`),
  /** @param {string} job @param {string} batch */
  label: (job, batch) => `${job}, ${batch}`,
  /** @param {string} job */
  ticked: (job) => `${job}: done.`,
};

/** @param {string} batch @param {string} doubt */
export const held = (batch, doubt) => html`<b>${batch} is held</b>${doubt} Read what to do.`;

/** Where the others lie. */
export const OTHERS = {
  list: 'Other batches',
  stock: 'Freezer and stock',
  stockSays: 'what to eat first, who got what',
  all: 'All batches',
  allSays: 'side by side, what to change next time',
  away: 'Closed',
  /** @param {number} n */
  awaySays: (n) => `${count(n, 'batch', 'batches')} finished or ${E.thrownAway}`,
  start: 'Start from a recipe',
};

/** Starting one. */
export const START = {
  head: 'Start a batch',
  which: 'By which recipe? The pieces come next.',
  /** @param {string} method @param {number} steps */
  says: (method, steps) => `${method}, ${count(steps, 'step')}`,
  noRecipe: 'There is no recipe yet. Write one, or open a link.',
  recipes: 'All recipes, or a new one',
  /** @param {string} tag */
  started: (tag) => `Batch ${tag} is started.`,
};

/** A batch that is not here, or not yet. */
export const MISSING = {
  title: 'Batch',
  reading: 'Reading the batch',
  head: 'Not here',
  batch: 'This batch',
  /** @param {string} what */
  says: (what) => `${what} is not in this browser. It was deleted, or the address is from another device.`,
  go: 'Go to Batches',
};

/** The head of a batch, and its line under Why. */
export const HEAD = {
  stages: 'Stages of this batch',
  done: ', done',
  inHand: ', in hand',
  /** @param {number} n @param {boolean} about */
  pieces: (n, about) => `${about ? 'About ' : ''}${count(n, 'piece')}. `,
  /** @param {string} day */
  killed: (day) => `Killed ${day}. `,
  away: ' Closed.',
  /** @param {string} day @param {string} at */
  printed: (day, at) => `Printed ${day}, ${at}.`,
};

/** What is in doubt, under the head. */
export const DOUBT = {
  /** @param {number} n */
  more: (n) => `and ${n} more`,
  label: 'In doubt',
  clear: 'Clear it',
  card: 'What now?',
  clearDoubt: 'Clear the doubt',
};

/** Its name, tag and notes. */
export const ABOUT = {
  head: 'About this batch: name, tag, day of the kill',
  name: 'Name',
  tag: 'Tag',
  tagHint: 'Two capital letters, to write on the bag.',
  /** @param {string} what */
  wrongName: (what) => `The name: ${what}`,
  /** @param {string} what */
  wrongTag: (what) => `The tag: ${what}`,
  killed: 'Day of the kill',
  remarks: 'Notes',
  empty: ' (may be left empty)',
  takeUp: 'Open it again',
  notThrown: `It was not ${E.thrownAway}: open it again`,
  remove: 'Delete this batch',
  /** @param {string} name */
  removed: (name) => `${name} is deleted.`,
};

/** @param {string | undefined} name */
export const thrownOut = (name) => `${name ?? 'The batch'} is closed as ${E.thrownAway}.`;

/** The week as a picture. */
export const WEEK = {
  head: 'This week',
  says: 'The jobs of the next seven days, by batch; the same as in the list',
  full: 'In the cure, drying or over the fire: full height is done',
  mark: 'A job with a clock time',
  held: 'Held',
  /** @param {string} job @param {string} at */
  job: (job, at) => `${job}, ${at}`,
};

/** The plan as a picture. */
export const LANES = {
  /** @param {number} batches @param {string} until */
  says: (batches, until) =>
    `The tasks of ${count(batches, 'batch', 'batches')} until ${until}; the same as in the lists`,
  rest: 'Rest',
  readyBy: 'Ready by',
};

/** The file for the phone's calendar. */
export const FILE = {
  /** @param {number} jobs @param {boolean} all */
  put: (jobs, all) => `Put ${count(jobs, 'job')} ${all ? 'of all batches ' : ''}in the calendar`,
  /** @param {number} jobs @param {number} off no longer to do */
  says: (jobs, off) =>
    jobs
      ? `A file for the calendar of this phone, with an alarm at each job. Open it again after a change: it replaces the old jobs.${off ? ` ${count(off, 'old job')} ${off === 1 ? 'comes' : 'come'} off.` : ''}`
      : 'A file for the calendar of this phone: open it, and their alarms are gone.',
  /** @param {number} jobs */
  takeOff: (jobs) => `Take ${count(jobs, 'job')} off the calendar`,
};

/** A recipe worked for one weight. */
export const CARD = {
  caption: 'What goes in',
  of: 'On trimmed weight',
  perCent: '%',
  /** @param {string} weight */
  weight: (weight) => html`For <span class="nowrap">${weight}</span>`,
  /** @param {string} aim */
  aim: (aim) => `aim ${aim}`,
  withCure: 'with what is in the cure',
  /** @param {string} until @param {string} least @param {boolean} known which meat it is */
  low: (until, least, known) =>
    known
      ? `${until} is under ${least} for this meat. Cook it to that.`
      : `${until} is too low for any game: ${least} at least, birds, boar and hare ${degrees(74, 165)}.`,
  /** @param {import('../../app/types').Allergen[]} allergens */
  contains: (allergens) =>
    allergens.length
      ? html`<b>Contains, by the allergen list:</b> ${allergenWords(allergens)}.`
      : 'Nothing on the allergen list is named in this recipe. Read the bags of what you use.',
  /** @param {string[]} unknown */
  unknown: (unknown) =>
    unknown.length ? html`<b>Allergens not known, read the bag:</b> ${unknown.join(', ')}.` : nothing,
  remarks: html`<b>Notes:</b>`,
};
