/** Who eats what is given away, and what follows from that. */
import { html, nothing } from 'lit-html';
import { cautionText } from '../../words/en/cautions.js';
import { EATS } from '../../words/en/packing.js';
import { glue } from '../../words/glue.js';
import { pick } from './pick.js';
import { strip } from './verdict.js';

/** @typedef {'' | 'someone' | 'nobody'} Eats whether somebody at risk eats it */

/**
 * @param {Eats} eats @param {boolean} unsaid it is missing, and was asked for
 * @param {string[]} foot cautions for whoever gets it @param {(eats: Eats) => void} chosen
 */
export const whoEats = (eats, unsaid, foot, chosen) =>
  html`${pick(
    {
      name: 'eats',
      legend: EATS.asks,
      hint: EATS.hint,
      problem: unsaid ? EATS.unsaid : '',
      options: [
        ['someone', EATS.someone],
        ['nobody', EATS.nobody],
      ],
      value: eats,
    },
    chosen,
  )}
  ${eats === 'someone' ? html`<div class="gap">${forThem(foot)}</div>` : nothing}`;

/** What somebody at risk must not eat of it, or how. @param {string[]} foot */
function forThem(foot) {
  const barred = foot.filter((key) => key === 'gift-raw' || key === 'label-shot');
  const raw = foot.includes('gift-raw');
  return html`${
    barred.length
      ? strip(
          'stop',
          EATS.notFor,
          barred.map((key) => html`<p>${glue(cautionText(key))}</p>`),
        )
      : nothing
  }
  ${raw ? nothing : html`<div class=${barred.length ? 'gap' : ''}>${strip('care', EATS.hot, EATS.heat(barred.length > 0))}</div>`}`;
}
