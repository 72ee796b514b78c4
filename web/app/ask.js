/**
 * Questions to the core, typed: the name of the question decides what goes in and what comes out.
 */
import { FAILED, ask as reckon } from './core.js';
import { rests } from './rests.js';
import { worded } from './words/wrong.js';

/** @typedef {import('./types').Answers} Answers */
/** @typedef {import('./types').Request} Request */
/** @typedef {import('./core.js').Problem} Problem */
/**
 * @template {keyof Answers} Q
 * @typedef {Extract<Request, Record<Q, unknown>>[Q]} Content
 */

/** Questions that are answered with times of a batch: none of them forgets when nobody is about. @type {Set<string>} */
const RESTED = new Set(['next', 'cure_clock', 'calendar', 'labels']);

/** @param {any} content */
const withRests = (content) => ({ ...content, rests: rests(content.settings, content.now) });

/**
 * @template {keyof Answers} Q
 * @param {Q} question
 * @param {Content<Q>} content
 * @returns {import('./core.js').Answer<Answers[Q]>}
 */
export function ask(question, content) {
  const answer = reckon({ [question]: RESTED.has(String(question)) ? withRests(content) : content });
  return answer.problems ? { problems: answer.problems.map(worded) } : answer;
}

/**
 * @param {Problem[] | undefined} problems
 * @returns {boolean} true when the core itself failed, so that no figure may be shown
 */
export function failed(problems) {
  return problems?.some(({ code }) => code === FAILED) ?? false;
}
