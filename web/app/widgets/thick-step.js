/** The thickest piece, in steps of a rule: the usual one of the cut until somebody has measured. */
import { html } from 'lit-html';
import { THICK } from '../../words/en/controls.js';

/** Where the steps begin, of a cut whose thickness is not known. */
const BEGIN = { metric: '25 mm', us: '1 in' };

/**
 * @param {import('../types').Thick | null} thick
 * @param {'metric' | 'us'} units
 * @param {(text: string) => void} put
 */
export function thickStep(thick, units, put) {
  /** @param {string | null | undefined} to @param {string} name @param {string} sign */
  const step = (to, name, sign) =>
    html`<button type="button" aria-label=${name} ?disabled=${!to} @click=${() => to && put(to)}>${sign}</button>`;
  return html`<div class="stepf" role="group" aria-labelledby="thick-l">
    <span class="lab" id="thick-l">${THICK.label}</span>
    <div class="stepper">
      ${step(thick ? thick.thinner : BEGIN[units], THICK.thinner, '−')}<output class="nowrap"
        >${thick?.now ?? '–'}</output
      >${step(thick ? thick.thicker : BEGIN[units], THICK.thicker, '+')}
    </div>
  </div>`;
}
