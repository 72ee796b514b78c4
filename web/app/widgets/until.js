/** Until when it stays in its cure: the hour, one reason, what is asked, and each size where sizes differ. */
import { html, nothing } from 'lit-html';
import { countedPieces, pieceName } from '../../words/en/cuts.js';
import { about, dayTime } from '../../words/time.js';
import { inAll, reason, untilBy } from '../../words/en/until.js';
import { bars } from './clock-bars.js';
import { icon } from './icon.js';
import { onceOnly } from './tick.js';
import { strip } from './verdict.js';
import { SIZES, UNTIL, WHICH } from '../../words/en/cure-clock.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').By} By */
/** @typedef {import('../types').CureClock} CureClock */

/** @param {import('../app.js').App} app @param {string} id @param {Batch} batch @param {CureClock} clock */
export function untilAnswer(app, id, batch, { until, begun, ended }) {
  const now = app.now();
  if (ended !== null) return html`<p class="near">${UNTIL.cameOut(dayTime(ended, now))}</p>`;
  if (!until) return nothing;
  // The hours of a recipe may be too few for a piece whose thickness nobody has said: that is asked first.
  if (until.needs_thickness.length) {
    return html`<section class="until">
      ${thickness(app, id, batch, until.needs_thickness)}
      <p class="small near">${untilBy(until.kind, dayTime(until.at, now))}</p>
      ${which(app, id, batch, until)}
    </section>`;
  }
  return html`<section class="until">
    <h2>${UNTIL.head}</h2>
    <p class="big">${dayTime(until.at, now)}</p>
    <p class="small">${inAll(begun ?? now, until, now)}</p>
    <p class="near">${reason(until, now)}</p>
    ${which(app, id, batch, until)}
  </section>`;
}

/**
 * @param {import('../app.js').App} app @param {string} id @param {Batch} batch @param {number[]} missing
 * @param {(at: number) => unknown} [edit] where it is typed on this very screen
 */
export function thickness(app, id, batch, missing, edit) {
  const [first] = missing;
  if (first === undefined) return nothing;
  const names = missing.flatMap((at) => batch.pieces[at] ?? []).map(pieceName);
  return strip(
    'ask',
    UNTIL.thick,
    UNTIL.thickSays(names),
    html`<div class="acts">
      ${
        edit
          ? html`<button type="button" class="btn less" @click=${() => edit(first)}>${UNTIL.typeThick}</button>`
          : html`<a class="btn less" href="#/batch/${id}/pieces">${UNTIL.typeThick}</a>`
      }
    </div>`,
  );
}

/** Recipe and clock say two times: the clock's holds unless somebody takes the recipe's. @param {import('../app.js').App} app @param {string} id @param {Batch} batch @param {import('../types').Until} until */
function which(app, id, batch, { clock, recipe, differs }) {
  if (!differs || clock === null || recipe === null) return nothing;
  const now = app.now();
  const by = (/** @type {By} */ by) => (/** @type {MouseEvent} */ e) =>
    onceOnly(e) && app.act(() => app.shelf.changeBatch(id, (one) => ({ ...one, by })));
  const other = batch.by === 'recipe' ? 'clock' : 'recipe';
  return html`<p class="small near">
    ${other === 'clock' ? WHICH.goes : WHICH.recipe(dayTime(recipe, now), recipe < clock)}
    <button type="button" class="btn quiet less noprint" @click=${by(other)}>
      ${WHICH.goBy(other, dayTime(other === 'clock' ? clock : recipe, now))}
    </button>
  </p>`;
}

/** A row for each size, with its slope. @param {CureClock} clock @param {number} now */
export function sizes({ until, classes, begun }, now) {
  const rows = until?.classes ?? [];
  if (rows.length < 2) return nothing;
  // All on one scale, so that a longer bar is a longer time.
  const last = Math.max(now, ...rows.map((row) => row.until));
  return html`<section class="block">
    <h2>${rows.some(({ first }) => first) ? SIZES.sooner : SIZES.each}</h2>
    ${rows.map((row) => {
      const one = classes.find(({ at }) => at === row.class);
      return html`<div class="size">
        <div class="row-h">
          <h3>${icon(`k-${row.class % 6}`, 'key')}${countedPieces(row.of)}</h3>
          <b class="nowrap">${about(row.until, now)}</b>
        </div>
        ${row.until <= now ? html`<p class="small">${SIZES.now}</p>` : nothing}
        ${one ? bars(one, row, { begun: Number(begun), last, now }) : nothing}
      </div>`;
    })}
    <p class="small">${SIZES.slope}</p>
  </section>`;
}
