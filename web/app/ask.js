/**
 * Questions to the core, typed: the name of the question decides what goes in and what comes out.
 */
import { FAILED, ask as reckon } from './core.js';
import { rests } from './rests.js';
import { labelled, worded } from '../words/en/wrong.js';

/** @typedef {import('./types').Answers} Answers */
/** @typedef {import('./types').Request} Request */
/** @typedef {import('./core.js').Problem} Problem */
/**
 * @template {keyof Answers} Q
 * @typedef {Extract<Request, Record<Q, unknown>>[Q]} Content
 */

/** Questions that are answered with times of a batch: none of them forgets when nobody is about. @type {Set<string>} */
const RESTED = new Set(['next', 'cure_clock', 'calendar', 'labels']);

/** Only the device knows where it is: minutes that its clock is ahead of Greenwich. @param {number} now */
const east = (now) => -new Date(now).getTimezoneOffset();

/** @param {string} question @param {any} content */
const placed = (question, content) => ({
  ...content,
  rests: rests(content.settings, content.now),
  ...(question === 'next' && { east: east(content.now) }),
});

/**
 * @template {keyof Answers} Q
 * @param {Q} question
 * @param {Content<Q>} content
 * @returns {import('./core.js').Answer<Answers[Q]>}
 */
export function ask(question, content) {
  const answer = reckon({ [question]: RESTED.has(String(question)) ? placed(String(question), content) : content });
  return answer.problems ? { problems: answer.problems.map(worded) } : answer;
}

/**
 * @param {Problem[] | undefined} problems
 * @returns {boolean} true when the core itself failed, so that no figure may be shown
 */
export function failed(problems) {
  return problems?.some(({ code }) => code === FAILED) ?? false;
}

/** @typedef {import('./types').ReadField & { label: string }} Labelled */

/**
 * What was typed in a form, read; what is wrong with a field says its label.
 * @param {Labelled[]} fields
 * @param {import('./types').System} units
 * @returns {import('./core.js').Answer<Answers['read']>}
 */
export function readFields(fields, units) {
  const { ok, problems } = ask('read', { fields: fields.map(({ label, ...field }) => field), units });
  if (!ok) return { problems };
  const labelOf = (/** @type {string} */ key) => fields.find((field) => field.key === key)?.label ?? '';
  return { ok: { ...ok, problems: ok.problems.map((problem) => labelled(problem, labelOf(problem.field))) } };
}
