/** What is in doubt on a batch, under its rail on every screen. It is never folded and has no cross to close it. */
import { html, nothing } from 'lit-html';
import { pieceName } from '../../words/en/cuts.js';
import { doubtWords, underWay } from '../../words/en/doubts.js';
import { icon } from './icon.js';
import { DOUBT } from '../../words/en/batches.js';

/** @param {import('../types').Doubt} doubt @returns {import('../types').Mark} */
export const markOf = ({ weight }) => (weight === 'forbids' ? 'stop' : weight === 'holds' ? 'ask' : 'care');

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Doubt} Doubt */

/** Where a doubt is cleared. @type {Partial<Record<import('../types').Clears, import('../types').Stage>>} */
const WHERE = {
  change_recipe: 'weigh',
  weigh_pieces: 'pieces',
  say_cure: 'weigh',
  read_packet: 'weigh',
  mend_dose: 'weigh',
  say_cold: 'cure',
  cool_now: 'cure',
  thaw: 'cure',
  rinse: 'cure',
  answer_reading: 'fire',
  read_hot: 'fire',
  finish_now: 'fire',
  chill: 'pack',
};

/** Past mending. @param {Doubt[]} doubts */
export const forbidden = (doubts) =>
  doubts.some(({ weight, clears }) => weight === 'forbids' || (weight === 'holds' && clears === 'nothing'));

/** The stage at which the gravest of what is in doubt is cleared. @param {Doubt[]} doubts */
export function clearAt(doubts) {
  const first = doubts.find((doubt) => doubt.weight === 'holds' && !underWay(doubt));
  return first && WHERE[first.clears];
}

/**
 * The gravest in full; of the rest how many, each in a line of its own where that is asked for.
 * @param {import('../app.js').App} app
 * @param {string} id
 * @param {Batch} batch
 * @param {Doubt[]} doubts
 * @param {string} [here] the stage that is shown
 */
export function doubtStrip(app, id, batch, doubts, here) {
  const open = doubts.filter((doubt) => !underWay(doubt));
  const [first, ...rest] = open;
  if (!first) return nothing;
  const mark = markOf(first);
  const { says, deed } = doubtWords(first, batch, pieceName);
  // Elsewhere the way to its stage; there, and where nothing clears it, the deed itself.
  const where = WHERE[first.clears];
  const away = where !== undefined && where !== here;
  return html`<div class="doubt ${mark}" role=${mark === 'stop' ? 'alert' : 'status'}>
    <span class="mark">${icon(`s-${mark}`, '')}</span>
    <div>
      <strong>${says}</strong>
      <span class=${away ? 'paper-only' : ''}>${deed}</span>
      ${
        rest.length
          ? html`<details class="more">
              <summary>${DOUBT.more(rest.length)}</summary>
              <ul>
                ${rest.map((doubt) => {
                  const more = doubtWords(doubt, batch, pieceName);
                  return html`<li>${icon(`s-${markOf(doubt)}`, '')}<b>${more.says}</b> ${more.deed}</li>`;
                })}
              </ul>
            </details>`
          : nothing
      }
    </div>
    ${away ? html`<a class="noprint" href="#/batch/${id}/${where}">${DOUBT.clear}</a>` : nothing}
  </div>`;
}
