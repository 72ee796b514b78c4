/** Words for what may hold nitrite or nitrate and is not counted. */

/** @type {Record<import('../../app/types').Why, (name: string) => string>} */
export const MAY_HOLD = {
  not_asked: (name) => `${name}: does its packet say nitrite, nitrate, or E249 to E252?`,
  holds: (name) => `${name}: its packet names nitrite or nitrate. It goes under cure, with its per cent.`,
  name_says_so: (name) => `${name}: its name says nitrite or nitrate. Read its packet again.`,
  not_read: (name) => `“${name}” was not read. Does it call for cure?`,
};

/** @type {Record<import('../../app/types').Holds, string>} */
export const HOLDS = { unknown: 'Not sure', none: 'No', yes: 'Yes' };
