/** Marks of what is in doubt. */

/** @param {import('../types').Doubt} doubt @returns {import('../types').Mark} */
export const markOf = ({ weight }) => (weight === 'forbids' ? 'stop' : weight === 'holds' ? 'ask' : 'care');
