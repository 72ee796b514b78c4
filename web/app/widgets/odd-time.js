/** The question about a time that cannot be right, under the head of a batch: one at a time, the first first. */
import { html, nothing } from 'lit-html';
import { ODD_TIME, doneAt, oddTimeWords } from '../../words/en/odd-times.js';
import { glue } from '../../words/glue.js';
import { localTime } from '../../words/time.js';
import { icon } from './icon.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').OddTime} OddTime */

const KILL = 'killed';

/** @param {App} app @param {string} id @param {Batch} batch @param {OddTime[]} all */
export function oddTime(app, id, batch, all) {
  const [one, ...rest] = all;
  if (!one) return nothing;
  const { says, deed } = oddTimeWords(one, batch, app.now());
  /** @param {(batch: Batch) => Batch} change */
  const act = (change) => app.act(() => app.shelf.changeBatch(id, change), { says: ODD_TIME.corrected, here: true });
  // Both that cannot be right together: either may be the wrong one.
  const other = one.than ?? (one.odd === 'before_kill' || one.odd === 'long_after_kill' ? KILL : null);
  return html`<section class="doubt ask" aria-label=${ODD_TIME.label}>
    <span class="mark">${icon('s-ask', '')}</span>
    <div>
      <strong data-say>${glue(says)}</strong> <span>${deed}</span>
      <details class="more noprint">
        <summary>${ODD_TIME.correct}</summary>
        <div class="mend">
          ${field(batch, one.of, one.at, act)} ${other ? field(batch, other, timeOf(batch, other), act) : nothing}
          ${
            one.odd === 'long_after_kill'
              ? html`<button type="button" class="btn less" @click=${() => act(frozen)}>${ODD_TIME.frozen}</button>`
              : nothing
          }
          ${rest.length ? html`<p class="small">${ODD_TIME.more(rest.length)}</p>` : nothing}
        </div>
      </details>
    </div>
  </section>`;
}

/** @param {Batch} batch @param {string} of */
const timeOf = (batch, of) => batch.ticks.find((tick) => tick.of === of)?.at ?? 0;

/** @param {Batch} batch */
const frozen = (batch) => ({ ...batch, pieces: batch.pieces.map((piece) => ({ ...piece, thawed: true })) });

/**
 * A time or a day to be typed, and the button that puts it in place of what is odd.
 * @param {Batch} batch @param {string} of @param {number} at @param {(change: (batch: Batch) => Batch) => unknown} act
 */
function field(batch, of, at, act) {
  const day = of === KILL;
  const label = day ? ODD_TIME.day : ODD_TIME.of(doneAt(of, batch));
  const key = `odd-${of.replaceAll(':', '-')}`;
  const put = (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    const typed = new FormData(/** @type {HTMLFormElement} */ (event.target)).get('at');
    if (typeof typed !== 'string' || typed === '') return;
    act((now) => corrected(now, of, at, typed));
  };
  return html`<form class="field" novalidate @submit=${put}>
    <label for=${key}>${label}</label>
    <input
      id=${key}
      name="at"
      class=${day ? 'plainfield' : 'when-at'}
      type=${day ? 'date' : 'datetime-local'}
      value=${day ? batch.killed : localTime(at)}
    />
    <button type="submit" class="btn less">${ODD_TIME.put}</button>
  </form>`;
}

/** @param {Batch} batch @param {string} of @param {number} at @param {string} typed @returns {Batch} */
function corrected(batch, of, at, typed) {
  if (of === KILL) return { ...batch, killed: typed };
  const time = new Date(typed).getTime();
  const right = (/** @type {any} */ one) => ({ ...one, at: time });
  if (of === 'fridge')
    return { ...batch, fridge: (batch.fridge ?? []).map((one) => (one.at === at ? right(one) : one)) };
  return { ...batch, ticks: batch.ticks.map((tick) => (tick.of === of ? right(tick) : tick)) };
}
