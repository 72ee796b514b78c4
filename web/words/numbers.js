/** Numbers as they stand in a sentence. */

/** Thousands apart, from five digits on: `10 000`. @param {number} number */
export const grouped = (number) =>
  number < 10_000 ? String(number) : String(number).replace(/\B(?=(\d{3})+$)/g, '\u202f');
