/** A weight that is rather another unit is asked about where it is seen. */
import { html, nothing } from 'lit-html';
import { ODD_WEIGHT } from '../../words/en/how-much.js';
import { strip } from './verdict.js';
import { bare } from './weight-field.js';

/**
 * @param {import('./form.js').Form} form
 * @param {import('../types').Draft} draft
 * @param {import('../types').System} units
 * @param {() => void} draw
 * @param {string} [key] of the field, where a bare number counts as grams
 */
export function oddWeight(form, { odd }, units, draw, key = 'grams') {
  if (!odd) return nothing;
  const typed = form.text(key).trim();
  // A bare number that is too little in grams was meant in kilograms or in pounds.
  const meant = odd === 'little' && units === 'metric' && bare(typed) ? [`${typed} kg`, `${typed} lb`] : [];
  const put = (/** @type {string} */ weight) => () => {
    form.type(key, weight);
    draw();
  };
  return strip(
    'care',
    ODD_WEIGHT.head,
    ODD_WEIGHT[odd],
    meant.length
      ? html`<div class="acts noprint">
          ${meant.map((weight) => html`<button type="button" class="btn" @click=${put(weight)}>${ODD_WEIGHT.itIs(weight)}</button>`)}
        </div>`
      : nothing,
  );
}
