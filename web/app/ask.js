/**
 * Questions to the core, typed: the name of the question decides what goes in and what comes out.
 */
import { FAILED, ask as reckon } from './core.js';

/** @typedef {import('./types').Answers} Answers */
/** @typedef {import('./types').Request} Request */
/** @typedef {import('./core.js').Problem} Problem */
/**
 * @template {keyof Answers} Q
 * @typedef {Extract<Request, Record<Q, unknown>>[Q]} Content
 */

/**
 * @template {keyof Answers} Q
 * @param {Q} question
 * @param {Content<Q>} content
 * @returns {import('./core.js').Answer<Answers[Q]>}
 */
export function ask(question, content) {
  return reckon({ [question]: content });
}

/**
 * @param {Problem[] | undefined} problems
 * @returns {boolean} true when the core itself failed, so that no figure may be shown
 */
export function failed(problems) {
  return problems?.some(({ code }) => code === FAILED) ?? false;
}
