/** What the stages share: what is filled while something is in doubt, and the rows at the foot. */
import { html, nothing } from 'lit-html';
import { clearAt, forbidden } from './doubts.js';
import { pinned } from './pinned.js';
import { DOUBT } from '../../words/en/batches.js';

/** @typedef {import('../types').Doubt} Doubt */

/**
 * The one action of a stage. While something is in doubt it is what clears it: elsewhere the way there, here the stage's
 * own; where nothing clears it there is none.
 * @param {string} id @param {Doubt[]} doubts @param {import('../types').Stage} here
 * @param {() => unknown} own a pinned action, or nothing
 */
export function stageAction(id, doubts, here, own) {
  if (forbidden(doubts)) return nothing;
  const where = clearAt(doubts);
  if (where && where !== here) {
    return pinned(html`<a class="btn main" href="#/batch/${id}/${where}">${DOUBT.clearDoubt}</a>`);
  }
  return own();
}
