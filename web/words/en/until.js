/** How long it stays in its cure, in words. */
import { E } from './english.js';
import { dayOf, dayTime, isDated } from '../time.js';

/** @typedef {import('../../app/types').Until} Until */

const HOUR = 3_600_000;

/** What a time rests on, on a bag's label. @type {Record<import('../../app/types').Basis, string>} */
export const BY = {
  forecast: 'by then 9 in 10 pieces this thick are cured to the middle',
  recipe: 'by the time in the recipe',
  usual: 'as is usual: the recipe gives no time',
  published: 'by a published time',
};

/** Hours up to three days, then days. @param {number} ms */
const long = (ms) => (ms > 72 * HOUR ? `${Math.round(ms / HOUR / 24)} days` : `${Math.round(ms / HOUR)} h`);

/**
 * `1 Dec, about 40 h in all, 16 h to go`; the date only where the hour it stands beside has none. An hour that was moved
 * out of the night says so, or the same meat has another number of hours at each hour of the day.
 * @param {number} begun
 * @param {{ at: number, moved: boolean }} until
 * @param {number} now
 */
export function inAll(begun, { at, moved }, now) {
  const left = at - now;
  const over = left < HOUR || now - begun < HOUR ? '' : `, ${long(left)} to go`;
  const day = isDated(at, now) ? 'About' : `${dayOf(at)}, about`;
  return `${day} ${long(at - begun)} in all${moved ? ', your night kept free' : ''}${over}`;
}

/** The one reason. @param {Until} until @param {number} now */
export function reason({ capped, kind, through }, now) {
  if (capped)
    return `Raw meat is kept no longer in it. ${kind === 'forecast' ? `9 in 10 would take until ${dayTime(capped.wants, now)}: its middle may stay ${E.grey}.` : ''}`;
  if (kind === 'recipe') return 'That is the time of the recipe.';
  if (kind === 'usual') return 'The recipe gives no time: this is usual.';
  return `By then 9 in 10 pieces this thick are ${through === 'even' ? 'salted evenly' : 'cured to the middle'}.`;
}

/** @type {Record<import('../../app/types').Basis, (at: string) => string>} */
const UNTIL_BY = {
  recipe: (at) => `By the recipe: ${at}.`,
  usual: (at) => `As is usual: ${at}.`,
  forecast: (at) => `By the sizes whose thickness is known: ${at}.`,
  published: (at) => `By a published time: ${at}.`,
};

/** An hour that knows nothing of how thick it is. @param {import('../../app/types').Basis} kind @param {string} at */
export const untilBy = (kind, at) => UNTIL_BY[kind](at);

/** Where a recipe has hours of its own and nobody has said what for. @param {string} own */
export const askThick = (own) =>
  `By the recipe: ${own}. Choose your cut: that may be too short for a piece as thick as yours.`;

/** The recipe's hours and the clock's differ: which holds, and why. @param {Until} until @param {string} own of the recipe @param {number} begun */
export function twoTimes(until, own, begun) {
  const holds = until.kind === 'recipe' ? 'You go by the recipe.' : `Go by the clock. ${reason(until, begun)}`;
  return `The recipe says ${own}, the clock ${long(Number(until.clock) - begun)}. ${holds}`;
}
