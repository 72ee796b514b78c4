/** Hours in which nobody is about, as moments: the core knows no time zone. */
import { midnight } from '../words/time.js';

/** @typedef {import('./types').House} House */
/** @typedef {import('./types').Rest} Rest */

/** Until something is set. @type {House} */
export const HOUSE = { hours: ['22:30', '06:30', '', ''], room: [6, 1, 2], racks: [null, null] };
/** So many days back and ahead: what is overdue keeps its hour, and a plan reaches far. */
const BACK = 45;
const AHEAD = 115;

/** What was made last: every question of a day asks for the same. @type {{ key: string, rests: Rest[] }} */
let made = { key: '', rests: [] };

/**
 * Asleep and in the blind, for every day around now.
 * @param {{ house?: House }} settings
 * @param {number} now
 * @returns {Rest[]}
 */
export function rests({ house = HOUSE }, now) {
  const [asleep, up, out, back] = house.hours;
  const key = [midnight(now), ...house.hours].join();
  if (made.key !== key) made = { key, rests: [...daily(asleep, up, now), ...daily(out, back, now)] };
  return made.rests;
}

/**
 * The same hours of every day, as clock times of this place.
 * @param {string} begins `22:30`
 * @param {string} ends
 * @param {number} now
 * @returns {Rest[]}
 */
function daily(begins, ends, now) {
  const [from, to] = [begins, ends].map((at) => at.split(':').map(Number));
  if (from?.length !== 2 || to?.length !== 2) return [];
  const at = (/** @type {number} */ day, /** @type {number[]} */ [hour = 0, minute = 0], later = 0) => {
    const date = new Date(midnight(now));
    date.setDate(date.getDate() + day + later);
    return date.setHours(hour, minute);
  };
  const over = at(0, to) <= at(0, from) ? 1 : 0;
  return Array.from({ length: BACK + AHEAD }, (_, n) => ({ from: at(n - BACK, from), to: at(n - BACK, to, over) }));
}
