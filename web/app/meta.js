/** Records about this browser rather than the user's work: what each may hold. */
import { REASONS } from '../words/en/storage.js';

/** Starter recipes were put in. */
export const BEGUN = 'meta/begun';
/** Ids of the batches put away, so that a start need not read them. Only a hint: each is read soon after. */
export const AWAY = 'meta/away';
/** What the last calendar file left in the calendar, so that the next can take it off. */
export const SENT = 'meta/calendar';
/** When the last file was exported. */
export const EXPORTED = 'meta/last-export';
/** What is being typed in a form, by tab and form. */
export const DRAFT = 'meta/draft-';

/** Why a record cannot be used that no version of this page has written. */
export const ODD = REASONS.form;

const isText = (/** @type {unknown} */ value) => typeof value === 'string';
const isNumber = (/** @type {unknown} */ value) => typeof value === 'number';
const isJob = (/** @type {any} */ job) => Array.isArray(job) && isText(job[0]) && isNumber(job[1]);
const isPair = (/** @type {any} */ pair) => Array.isArray(pair) && isText(pair[0]) && isText(pair[1]);

/** @type {[string, (data: any) => boolean][]} */
const FORMS = [
  [BEGUN, ({ at }) => isNumber(at)],
  [AWAY, ({ ids }) => Array.isArray(ids) && ids.every(isText)],
  [SENT, ({ jobs }) => Array.isArray(jobs) && jobs.every(isJob)],
  [EXPORTED, ({ made }) => isText(made) && !Number.isNaN(Date.parse(made))],
  [DRAFT, ({ texts }) => Array.isArray(texts) && texts.every(isPair)],
];

/**
 * Why it cannot be used, or null. What a later page keeps under another name is left alone.
 * @param {string} key
 * @param {any} data
 */
export function metaFault(key, data) {
  const [, good] = FORMS.find(([name]) => (name === DRAFT ? key.startsWith(name) : key === name)) ?? [];
  return !good || good(data) ? null : ODD;
}
