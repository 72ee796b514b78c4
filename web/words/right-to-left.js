/**
 * Stands in the place of lit-html where the language runs right to left: figures in what is drawn are set apart. What goes
 * into an attribute stays as it is.
 */
import { html as plain } from 'lit-html';
import { isolated } from './figures.js';

export * from 'lit-html';

/** Which values of a template stand between tags. @type {WeakMap<TemplateStringsArray, boolean[]>} */
const between = new WeakMap();

/** @param {TemplateStringsArray} strings */
function placesOf(strings) {
  let inTag = false;
  return strings.map((part) => {
    const mark = part.match(/[<>](?=[^<>]*$)/)?.[0];
    if (mark) inTag = mark === '<';
    return !inTag;
  });
}

/** @param {unknown} value @returns {unknown} */
const apart = (value) =>
  typeof value === 'string' ? isolated(value) : Array.isArray(value) ? value.map((one) => apart(one)) : value;

/** @type {typeof plain} */
export const html = (strings, ...values) => {
  let places = between.get(strings);
  if (!places) between.set(strings, (places = placesOf(strings)));
  return plain(strings, ...values.map((value, at) => (places[at] ? apart(value) : value)));
};
