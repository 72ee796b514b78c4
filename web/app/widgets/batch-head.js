/** Head of a batch: its tag, its name, and the punch rail of the five stages. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { whereWords } from '../../words/en/jobs.js';
import { STAGES } from '../../words/en/names.js';
import { clock, dayOfDate, fullDate } from '../../words/time.js';
import { doubtStrip } from './doubts.js';
import { icon } from './icon.js';
import { oddTime } from './odd-time.js';
import { BATCHES, HEAD } from '../../words/en/batches.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Stage} Stage */
/** @typedef {import('../types').State} State */

const ORDER = /** @type {Stage[]} */ (Object.keys(STAGES));

/**
 * Where a batch stands now, or null when it cannot be said.
 * @param {import('../app.js').App} app
 * @param {string} id
 * @param {Batch} batch
 * @returns {State | null}
 */
export function stateOf(app, id, batch) {
  const { ok } = ask('next', { batches: [{ id, batch }], now: app.now(), settings: app.settings });
  return ok?.batches[0] ?? null;
}

/**
 * The step that is begun and not over: begun is not done. What takes time is done when its end is past, or when a later
 * step is begun.
 * @param {State | null} state
 */
export function running(state) {
  const last = state?.jobs.findLast(({ id, ticked }) => id.startsWith('step:') && ticked !== null);
  return !state?.finished && Number(last?.ends) > Date.now() ? last : undefined;
}

/**
 * The parts of a drawn screen that are the same on every stage of a batch.
 * @param {import('../app.js').App} app
 * @param {string} id
 * @param {Batch} batch
 * @param {State | null} state
 * @param {string} shown the stage this screen is about
 * @returns {Pick<import('../app.js').Drawn, 'back' | 'name' | 'head'>}
 */
export function batchHead(app, id, batch, state, shown) {
  return {
    back: { href: '#/today', text: BATCHES, tag: batch.tag },
    name: batch.name,
    head: [
      rail(id, state, shown),
      state ? doubtStrip(app, id, batch, said(app, id, state.doubts), shown) : nothing,
      state ? oddTime(app, id, batch, state.odd_times) : nothing,
    ],
  };
}

/**
 * A batch is judged as it keeps in the cold. Where all that is left of it lies in the freezer, its day is that of Stock.
 * @param {import('../app.js').App} app @param {string} id @param {import('../types').Doubt[]} doubts
 */
function said(app, id, doubts) {
  const left = [...app.shelf.stock.values()].filter((one) => one.batch === id && !one.gone);
  const frozen = left.length > 0 && left.every((one) => one.frozen);
  return frozen ? doubts.filter(({ kind }) => kind !== 'past_keeping') : doubts;
}

/** @param {string} id @param {State | null} state @param {string} shown */
function rail(id, state, shown) {
  return html`<nav class="punch" aria-label=${HEAD.stages}>
    <ol>
      ${ORDER.map((stage) => {
        const where = placeOn(stage, state);
        return html`<li class=${where}>
          <a href="#/batch/${id}/${stage}" aria-current=${stage === shown ? 'page' : nothing}
            ><span class="hole">${icon('s-tick', '')}</span>${STAGES[stage]}${
              where ? html`<span class="vh">${where === 'done' ? HEAD.done : HEAD.inHand}</span>` : nothing
            }</a
          >
        </li>`;
      })}
    </ol>
  </nav>`;
}

/**
 * How many pieces, when killed, how far: under Why, and on paper.
 * @param {Batch} batch
 * @param {State | null} state
 */
export function batchNote(batch, state) {
  const pieces = batch.pieces.reduce((sum, piece) => sum + piece.count, 0);
  return html`<p class="small">
    ${
      pieces
        ? HEAD.pieces(
            pieces,
            batch.pieces.some(({ about }) => Boolean(about)),
          )
        : nothing
    }${
      batch.killed ? HEAD.killed(dayOfDate(batch.killed)) : nothing
    }${state ? sentence(whereWords(state)) : nothing}${batch.closed ? HEAD.away : nothing}
    ${printed()}
  </p>`;
}

/** On paper, when it was printed. */
export function printed() {
  return html`<span class="paper-only">${HEAD.printed(fullDate(Date.now()), clock(Date.now()))}</span>`;
}

/** @param {string} text */
function sentence(text) {
  return !text || text.endsWith('.') ? text : `${text}.`;
}

/** The same as five small holes, for lists. @param {State} state */
export function miniPunch(state) {
  return html`<span class="mini" aria-hidden="true"
    >${ORDER.map((stage) => html`<i class=${placeOn(stage, state)}></i>`)}</span
  >`;
}

/**
 * @param {Stage} stage
 * @param {State | null} state
 * @returns {'done' | 'hand' | ''}
 */
function placeOn(stage, state) {
  if (!state) return '';
  if (state.finished) return 'done';
  const at = ORDER.indexOf(stage) - ORDER.indexOf(running(state)?.stage ?? state.stage);
  return at < 0 ? 'done' : at === 0 ? 'hand' : '';
}
