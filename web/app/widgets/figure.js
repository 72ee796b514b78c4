import { html } from 'lit-html';

/** @typedef {import('../types').Figure} Figure */

/** Longer than this, a figure is set smaller, or it would leave the line: `12 lb 13.2 oz`. */
const LONG = 6;

/**
 * A number and its unit, the number large.
 * @param {Figure} figure
 * @param {string} [of] class that gives the size
 */
export function num(figure, of = '') {
  const long = figure.num.length > LONG ? 'long' : '';
  return html`<span class="num ${of} ${long}">${figure.num}<span class="u">${figure.unit}</span></span>`;
}

/**
 * Both ends of a range: `3.1 – 4.0 kg`.
 * @param {[Figure, Figure]} ends
 */
export function ends([low, high]) {
  if (low.text === high.text) return low.text;
  return low.unit === high.unit ? `${low.num} – ${high.text}` : `${low.text} – ${high.text}`;
}
