/** What is wrong with what was typed, in words: what is wrong, then what to type. */
import { grouped } from './numbers.js';
import { say } from './fact.js';

/** @type {import('./fact.js').Words<import('../types').Wrong>} */
const WRONG = {
  bags_not_counted: ({ most }) => `Type how many bags came in: 1 to ${grouped(most)}.`,
  too_large_to_reckon: () => 'These figures are too large to work with. Check each of them.',
  bag_wants_meat: () => 'A bag takes its brine by the meat. Type its trimmed weight, such as 1480 g or 3 lb 4 oz.',
  no_room_for_brine: () => 'The meat leaves no room for a brine. Take a larger pot, or fill it higher.',
  no_brine_strength: () =>
    'No salt brine is that strong. Type 10 %, 40 degrees or 1.074. 26.4 % (100 degrees) is all that dissolves.',
  cure_too_weak: () => 'This cure is too weak for that aim in this brine. Read the % on the bag, and the aim, again.',
};

/**
 * A problem of the core with its words.
 * @template {import('../core.js').Problem} P
 * @param {P} problem
 * @returns {P}
 */
export const worded = (problem) => (problem.wrong ? { ...problem, message: say(WRONG, problem.wrong) } : problem);
