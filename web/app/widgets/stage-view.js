/** What the stages share: what is filled while something is in doubt, and the rows at the foot. */
import { html, nothing } from 'lit-html';
import { clearAt, forbidden, ofAll } from './doubts.js';
import { pinned } from './pinned.js';
import { DOUBT } from '../../words/en/batches.js';
import { pieceName } from '../../words/en/cuts.js';
import { doubtWords } from '../../words/en/doubts.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Doubt} Doubt */

/**
 * The answer of a stage. While something holds all of the batch it is the deed that clears it: an hour in the largest
 * type would be believed, and stands small below it. What is past mending has no hour at all.
 * @param {Batch} batch @param {Doubt[]} doubts @param {() => unknown} own
 */
export function stageAnswer(batch, doubts, own) {
  const doubt = ofAll(doubts);
  if (!doubt) return own();
  if (doubt.weight === 'forbids') return nothing;
  return html`<p class="say">${doubtWords(doubt, batch, pieceName).deed}</p>
    <div class="set-back">${own()}</div>`;
}

/**
 * The one action of a stage. While something is in doubt it is what clears it: elsewhere the way there, here the stage's
 * own; where nothing clears it there is none.
 * @param {string} id @param {Doubt[]} doubts @param {import('../types').Stage} here
 * @param {() => unknown} own a pinned action, or nothing
 */
export function stageAction(id, doubts, here, own) {
  if (forbidden(doubts)) return nothing;
  const where = clearAt(doubts);
  if (where && !where.startsWith(here)) {
    return pinned(html`<a class="btn main" href="#/batch/${id}/${where}">${DOUBT.clearDoubt}</a>`);
  }
  return own();
}
