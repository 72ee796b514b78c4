/** What is in doubt on a batch, under its rail on every screen. It is never folded and has no cross to close it. */
import { html, nothing } from 'lit-html';
import { pieceName } from '../../words/en/cuts.js';
import { doubtWords, surely, underWay } from '../../words/en/doubts.js';
import { toLog } from './fridge-form.js';
import { icon } from './icon.js';
import { DOUBT } from '../../words/en/batches.js';

/** What is said with the word Stop has its colour too. @param {import('../types').Doubt} doubt @returns {import('../types').Mark} */
export const markOf = (doubt) =>
  doubt.weight === 'forbids' || (doubt.weight === 'holds' && surely(doubt))
    ? 'stop'
    : doubt.weight === 'holds'
      ? 'ask'
      : 'care';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Doubt} Doubt */

/** What is read or seen is logged a long way down its screen: the way there goes on to the field. */
const LOG = 'cure/fridge';

/** Where a doubt is cleared. @type {Partial<Record<import('../types').Clears, string>>} */
const WHERE = {
  change_recipe: 'weigh',
  weigh_pieces: 'pieces',
  say_cure: 'weigh',
  read_packet: 'weigh',
  mend_dose: 'weigh',
  read_cold: LOG,
  answer_cold: LOG,
  say_cold: LOG,
  cool_now: LOG,
  thaw: LOG,
  rinse: 'cure',
  answer_reading: 'fire',
  read_hot: 'fire',
  finish_now: 'fire',
  chill: 'pack',
};

/** Which card says what to do about it, where a deed is too little. @type {Partial<Record<import('../types').Kind, string>>} */
const CARDS = {
  warm: 'warm',
  too_warm: 'warm',
  power_off: 'power',
  frozen: 'froze',
  chill_late: 'slow_cool',
  chill_unread: 'slow_cool',
};

/** Past mending. @param {Doubt[]} doubts */
export const forbidden = (doubts) =>
  doubts.some(({ weight, clears }) => weight === 'forbids' || (weight === 'holds' && clears === 'nothing'));

/** The stage at which the gravest of what is in doubt is cleared, and where on it. @param {Doubt[]} doubts */
export function clearAt(doubts) {
  const first = doubts.find((doubt) => doubt.weight === 'holds' && !underWay(doubt));
  return first && WHERE[first.clears];
}

/**
 * The gravest that is about all of the batch. One size's over the fire or in the chill says nothing of another's.
 * @param {Doubt[]} doubts
 */
export const ofAll = (doubts) =>
  doubts.find(
    (doubt) =>
      doubt.weight !== 'warns' && !underWay(doubt) && (doubt.class === null || !['fire', 'pack'].includes(doubt.stage)),
  );

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
  const away = where !== undefined && !where.startsWith(`${here}`);
  // What is thrown away has no card: nothing is left to be done about it.
  const card = first.weight === 'forbids' ? undefined : CARDS[first.kind];
  return html`<section class="doubt ${mark}" aria-label=${DOUBT.label}>
    <span class="mark">${icon(`s-${mark}`, '')}</span>
    <div>
      <strong data-say>${says}</strong>
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
    ${
      away || (where === LOG && !card)
        ? html`<a class="noprint" href="#/batch/${id}/${where}" @click=${away ? nothing : toLog}>${DOUBT.clear}</a>`
        : card
          ? html`<a class="noprint" href="#/cards/${card}">${DOUBT.card}</a>`
          : nothing
    }
  </section>`;
}
