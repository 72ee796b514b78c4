/** What is wrong with what was typed, in words: what is wrong, then what to type. */
import { grouped } from './numbers.js';
import { say } from './fact.js';

/** @type {import('./fact.js').Words<import('../types').Wrong>} */
const WRONG = {
  bags_not_counted: ({ most }) => `Type how many bags came in: 1 to ${grouped(most)}.`,
};

/**
 * A problem of the core with its words.
 * @template {import('../core.js').Problem} P
 * @param {P} problem
 * @returns {P}
 */
export const worded = (problem) => (problem.wrong ? { ...problem, message: say(WRONG, problem.wrong) } : problem);
