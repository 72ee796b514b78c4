/** Ready by a day: when each batch has to start. */
import { E } from './english.js';
import { html } from 'lit-html';

export const TITLE = 'Ready by a day';
export const ABOUT = 'When to start each batch, around your sleep, your fridge, your smoker and your rack.';

/** Where a batch lies, in the order of the core. */
export const WHERE = ['in the fridge', 'over the fire', 'on the rack'];
export const RACKS = ['Shelves of the fridge', 'Racks of the smoker'];

export const ASK = {
  day: 'Ready by',
  hour: 'At what time',
  asleep: 'Asleep each night',
  away: E.outAllDay,
  awayHint: 'Both empty: not this time.',
  from: 'From',
  until: 'Until',
  byArea: 'Goes by the area below, where a batch is weighed and measured.',
  sizes: 'Shelves and racks by their size',
  sizesFor: 'Then room is counted by what the pieces lie on, side by side, not by batches.',
  howMany: 'How many',
  wide: 'Wide',
  deep: 'Deep',
};

/** @param {string} where */
export const atOnce = (where) => `Batches at once ${where}`;

/** @param {string} what @returns {[string, string]} */
export const stepper = (what) => [`One fewer: ${what}`, `One more: ${what}`];

export const EMPTY = {
  says: 'There is no batch to plan yet.',
  start: 'Start a batch',
  plan: 'It is drawn here as soon as there is a batch.',
};

export const PLAN = {
  head: 'The plan',
  fits: 'It can be ready',
  late: 'Not ready by then',
  unsaid: 'Cannot say yet',
  fill: 'Fill in the day, the time and how many batches each place takes.',
  inTime: 'All that is started is ready in time.',
  /** @param {string} time */
  start: (time) => `Start by ${time} at the latest.`,
  below: 'See below what stands in the way.',
  /** @param {string} time */
  earliest: (time) => `The earliest for all of it is ${time}.`,
  note: `Times as the cure clock and the recipe have them, to the quarter of an hour. How long a step may wait is our own ${E.judgement}. The clock never takes a piece out: the thermometer does.`,
};

/** What stands under a batch. */
export const BATCH = {
  ways: 'What would make it fit',
  /** @param {string} time */
  latest: (time) => html`Latest start <b class="nowrap">${time}</b>. `,
  /** @param {string} time */
  ready: (time) => html`Ready <b class="nowrap">${time}</b>. `,
  /** @param {string} time */
  now: (time) => html`Started now, it is ready <b class="nowrap">${time}</b>. `,
  /** @param {string} slack beyond three days it is whole days */
  spare: (slack) => {
    const [, days] = /^(\d+) d$/.exec(slack) ?? [];
    return days ? html`${days} days to spare.` : html`To spare: ${slack}.`;
  },
  /** @param {string} name */
  tasks: (name) => `Tasks of ${name}`,
  /** @param {string} tag */
  free: (tag) => `Let all steps of ${tag} find their own time`,
};

/** What stands under a step. */
export const STEP = {
  /** @param {string} time */
  tended: (time) => `Somebody stays with it until ${time}.`,
  /** @param {string} time */
  moved: (time) => `Moved from ${time}, so that you can rest.`,
  put: 'Put to this time by you.',
  earlier: '1 h earlier',
  later: '1 h later',
};
