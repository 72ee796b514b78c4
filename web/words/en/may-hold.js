/** Words for what may hold nitrite or nitrate and is not counted. */
import { E } from './english.js';

/** @type {Record<import('../../app/types').Why, (name: string) => string>} */
export const MAY_HOLD = {
  not_asked: (name) => `${name}: does its bag say ${E.nitriteOn}?`,
  holds: (name) => `${name}: its bag names nitrite or nitrate. Put it under Cure, with its %.`,
  name_says_so: (name) => `${name}: its name says nitrite or nitrate. Read its bag again.`,
  not_read: (name) => `“${name}” was not read. Does this line call for cure?`,
  not_read_says_so: (name) =>
    `“${name}” was not read, and it names a cure. Put it under Cure, with its %, or leave it out.`,
};

/** @type {Record<import('../../app/types').Holds, string>} */
export const HOLDS = { unknown: 'Not sure', none: 'No', yes: 'Yes' };
