/** How long a recipe stays in for meat of one thickness: asked where the clock needs it, and which of two times holds. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { ASK_THICK, twoTimes } from '../../words/en/until.js';
import { choose, cutOptions } from './pick.js';
import { thickStep } from './thick-step.js';
import { thickness } from './until.js';
import { UNTIL } from '../../words/en/cure-clock.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Draft} Draft */
/** @typedef {import('../types').Until} Until */

/** What of a form a draft asks for. @param {import('./form.js').Form} form */
export function cutOf(form) {
  const [cut, thickness] = [form.text('cut'), form.text('thick')];
  return { ...(cut && { cut }), ...(thickness && { thickness }) };
}

/** Until when a draft would stay in if it went in now; nothing where no step of it says. @param {Draft} draft @param {import('../types').Settings} settings @param {number} now @returns {Until | null} */
export function untilOf({ batch }, settings, now) {
  const timed = batch.pieces.length > 0 && batch.recipe.steps.some(({ do: act }) => act === 'cure');
  return timed ? (ask('cure_clock', { batch, now, settings }).ok?.until ?? null) : null;
}

/**
 * The cut and how thick it is, for a recipe that is in no batch yet. Only a rub and a cover brine go by thickness.
 * @param {App} app @param {import('./form.js').Form} form which has `cut` and `thick`
 * @param {Draft} draft @param {Until | null} until
 */
export function howThick(app, form, { thick, batch: { recipe } }, until) {
  const step = recipe.steps.find(({ do: act }) => act === 'cure');
  if (!step || !['rub', 'cover_brine'].includes(recipe.method)) return nothing;
  const put = (/** @type {string} */ key) => (/** @type {string} */ to) => {
    form.type(key, to);
    // The usual thickness is that of the cut.
    if (key === 'cut') form.drop('thick');
    app.draw();
  };
  const cut = form.text('cut');
  const units = /** @type {'us' | 'metric'} */ (form.text('units', app.settings.units));
  return html`${choose({ id: 'f-cut', label: UNTIL.cut, value: cut, options: cutOptions(app, cut) }, put('cut'))}
  ${cut ? thickStep(thick, units, put('thick')) : nothing}
  ${!thick && step.lasts ? html`<p class="small near">${ASK_THICK}</p>` : whichHolds(recipe, until, app.now())}`;
}

/** One line where the recipe's hours and the clock's differ. @param {import('../types').Recipe} recipe @param {Until | null} until @param {number} begun */
function whichHolds({ steps }, until, begun) {
  const own = steps.find(({ do: act }) => act === 'cure')?.lasts;
  return until?.differs && own ? html`<p class="near which">${twoTimes(until, own, begun)}</p>` : nothing;
}

/**
 * Of a batch that is not in yet: how thick it is, where the answer needs that, and which of two times holds.
 * @param {App} app @param {string} id @param {import('../types').Batch} batch
 * @param {(at: number) => unknown} [edit] where the thickness is typed on this very screen
 */
export function beforeIn(app, id, batch, edit) {
  if (!batch.pieces.length || batch.ticks.some(({ of }) => of === 'rub')) return nothing;
  const now = app.now();
  const until = ask('cure_clock', { batch, now, settings: app.settings }).ok?.until;
  return until
    ? html`${thickness(app, id, batch, until.needs_thickness, edit)} ${whichHolds(batch.recipe, until, now)}`
    : nothing;
}
