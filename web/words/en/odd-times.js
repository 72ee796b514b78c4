/** What is asked about a time that cannot be right. */
import { dayOfDate, dayTime } from '../time.js';
import { count } from './names.js';
import { STARTS, STEPS, TURNS } from './steps.js';

/** @typedef {import('../../app/types').Batch} Batch */
/** @typedef {import('../../app/types').OddTime} OddTime */

export const ODD_TIME = {
  label: 'A time in question',
  correct: 'Correct it',
  day: 'Day of the kill',
  put: 'Correct',
  /** @param {string} what */
  of: (what) => `Time of ${what}`,
  frozen: 'It was frozen',
  corrected: 'Corrected.',
  /** @param {number} n */
  more: (n) => `${count(n, 'more time')} to ask about after it.`,
};

/** What was done at it, as its job has it. @param {string} of @param {Batch} batch */
export function doneAt(of, { recipe }) {
  const [kind, at] = of.split(':');
  const step = recipe.steps[Number(at)];
  if (kind === 'step' && step) return `“${STEPS[step.do]}”`;
  if (kind === 'turn') return `“${TURNS[recipe.method][0]}”`;
  if (kind === 'rub') return `“${STARTS[recipe.method][0]}”`;
  if (kind === 'fridge') return 'the fridge reading';
  return kind === 'end' ? 'the end' : 'taking out';
}

/** @type {Record<import('../../app/types').Untimely, string>} */
const DEEDS = {
  to_come: 'Correct it, or look at the clock of this device.',
  before_kill: 'Correct the one that is wrong. Was the clock of this device put right in between?',
  earlier: 'Correct the one that is wrong. Was the clock of this device put right in between?',
  long_after_kill: 'Was it frozen? If not, correct the time or the day.',
};

/**
 * What is odd about it, and what to do.
 * @param {OddTime} one
 * @param {Batch} batch
 * @param {number} now
 * @returns {{ says: string, deed: string }}
 */
export function oddTimeWords({ of, at, odd, than }, batch, now) {
  const kill = batch.killed ? dayOfDate(batch.killed) : '';
  const what = `${capital(doneAt(of, batch))}, ${dayTime(at, now)}`;
  const before = batch.ticks.find((tick) => tick.of === than);
  const says = {
    to_come: () => `${of === 'killed' ? `${ODD_TIME.day}, ${kill}` : what}: still to come.`,
    before_kill: () => `${what}: before the day of the kill, ${kill}.`,
    earlier: () => `${what}: before ${doneAt(than ?? '', batch)}${before ? `, ${dayTime(before.at, now)}` : ''}.`,
    long_after_kill: () => `${what}: weeks after the kill, ${kill}.`,
  };
  return { says: says[odd](), deed: DEEDS[odd] };
}

/** @param {string} text */
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
