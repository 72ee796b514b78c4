/** How long a recipe stays in for meat of one thickness: asked where the clock needs it, and which of two times holds. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { askThick, twoTimes } from '../../words/en/until.js';
import { choose, cutOptions } from './pick.js';
import { anew, thickStep, unread } from './thick-step.js';
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

/** Whether how long a recipe is in goes by how thick the piece is. @param {import('../types').Recipe} recipe */
const byThickness = ({ method, steps }) =>
  ['rub', 'cover_brine'].includes(method) && steps.some(({ do: act }) => act === 'cure');

/**
 * Until when a draft would stay in if it went in now; nothing where no step of it says, and none where that goes by a
 * thickness that nobody has said: the hours of a recipe may be too few for the piece.
 * @param {import('./form.js').Form} form @param {Draft} draft @param {import('../types').Settings} settings @param {number} now @returns {Until | null}
 */
export function untilOf(form, { batch, thick }, settings, now) {
  if (unread(form) || (byThickness(batch.recipe) && !thick)) return null;
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
  if (!step || !byThickness(recipe)) return nothing;
  const choice = (/** @type {string} */ to) => {
    form.type('cut', to);
    // The usual thickness is that of the cut.
    anew(form);
    app.draw();
  };
  const cut = form.text('cut');
  const units = /** @type {'us' | 'metric'} */ (form.text('units', app.settings.units));
  return html`${choose({ id: 'f-cut', label: UNTIL.cut, value: cut, options: cutOptions(app, cut) }, choice)}
  ${cut ? thickStep(form, thick, units, app.draw) : nothing}
  ${!thick && step.lasts ? html`<p class="small near">${askThick(step.lasts)}</p>` : whichHolds(recipe, until, app.now())}`;
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
