/** Temperatures in a sentence: in the person's scale first, with the other in brackets. */
import { REGION } from './locale.js';

let us = REGION === 'US';

/** Which scale stands first, by the settings. @param {import('../app/types').System} units */
export function speakIn(units) {
  us = units === 'us';
}

/** `4 °C (40 °F)`, `2 to 4 °C (36 to 40 °F)`. @param {number | string} c @param {number | string} f */
export const degrees = (c, f) => (us ? `${f} °F (${c} °C)` : `${c} °C (${f} °F)`);
