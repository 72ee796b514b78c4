/** Spoons to the nearest quarter, as they stand beside a weight: they show a slip, and are never a way to measure. */
import { SPOONS } from './weigh.js';

const QUARTERS = ['', '¼', '½', '¾'];

/** @param {string} text @returns {string} `1¾` for `1.8` */
function quarters(text) {
  const n = Math.round(Number(text) * 4);
  if (!(n > 0)) return '¼';
  return `${n >= 4 ? Math.floor(n / 4) : ''}${QUARTERS[n % 4] ?? ''}`;
}

/** `Looks like 1–1¾ level tsp` @param {import('../../app/types').Spoon} spoon */
export const looksLikeHead = (spoon) => looksLike(spoon).replace('l', 'L');

/** @param {import('../../app/types').Spoon} spoon @returns {string} `looks like 1–1¾ level tsp` */
export function looksLike({ low, high, unit }) {
  const [from, to] = [quarters(low), quarters(high)];
  return `looks like ${from === to ? from : `${from}–${to}`} ${SPOONS[unit]}`;
}
