/** What a sentence says in the person's own units; the other scale of degrees stands only on labels and under Why. */
import { REGION } from './locale.js';

let us = REGION === 'US';

/** Which units are the person's, by the settings. @param {import('../app/types').System} units */
export function speakIn(units) {
  us = units === 'us';
}

/** Whichever is in the person's units. @param {string} metric @param {string} pounds */
export const inUnits = (metric, pounds) => (us ? pounds : metric);

/** `4 °C` or `40 °F`, `2 to 4 °C`. @param {number | string} c @param {number | string} f */
export const degrees = (c, f) => inUnits(`${c} °C`, `${f} °F`);

/** The person's scale, with the other in brackets. @param {number | string} c @param {number | string} f */
export const bothDegrees = (c, f) => inUnits(`${c} °C (${f} °F)`, `${f} °F (${c} °C)`);
