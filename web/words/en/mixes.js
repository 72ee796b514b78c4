/** Mixes of the user's own, with salt or in water: how each is called, and that each is kept once. */

/** @typedef {import('../../app/types').Cure} Cure */

/** @param {Cure} mix */
export function mixName({ nitrite, nitrate, made }) {
  const second = Number.parseFloat(nitrate) > 0 ? ` and ${nitrate} nitrate` : '';
  return `My ${made?.in_water ? 'cure water' : `1-in-${made?.parts} mix`}, ${nitrite} nitrite${second}`;
}

/** True where both are the same thing in the jar; what it is meant for does not count. @param {Cure} a @param {Cure} b */
export function sameMix(a, b) {
  return a.nitrite === b.nitrite && a.nitrate === b.nitrate && a.made?.in_water === b.made?.in_water;
}
