/** Start a batch: by which recipe. */
import { html } from 'lit-html';
import { newId } from '../shelf.js';
import { icon, tagMark } from '../widgets/icon.js';
import { METHODS } from '../../words/en/names.js';
import { BATCHES, START } from '../../words/en/batches.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */

/** @param {App} app @returns {import('../app.js').Screen} */
export function start(app) {
  function draw() {
    const cards = app.shelf.cards();
    const view = html`<div class="leaf">
      <h1 tabindex="-1">${START.head}</h1>
      <p class="lead near">${START.which}</p>
      <div class="doors" role="list">
        ${cards.map(
          ([, recipe]) =>
            html`<div role="listitem">
              <button type="button" class="tagged" @click=${() => begin(app, recipe)}>
                ${tagMark(recipe.tag)}<span
                  ><b>${recipe.name}</b
                  ><span class="small">${START.says(METHODS[recipe.method], recipe.steps.length)}</span></span
                >${icon('s-go')}
              </button>
            </div>`,
        )}
      </div>
      ${cards.length === 0 ? html`<p class="block">${START.noRecipe}</p>` : ''}
      <div class="block"><a class="btn wide" href="#/recipes">${START.recipes}</a></div>
    </div>`;
    return { title: START.head, back: { href: '#/today', text: BATCHES }, one: true, view };
  }

  return { draw };
}

/**
 * @param {App} app
 * @param {Recipe} recipe
 * @param {import('../types').Piece[]} [pieces] what is known of the meat: it goes on to the scale then
 * @param {boolean} [premix] with the cure thinned, where the scale is too coarse for it
 */
export async function begin(app, recipe, pieces = [], premix = false) {
  const id = newId();
  const tag = app.shelf.freeTag(recipe.tag);
  /** @type {import('../types').Batch} */
  const batch = { tag, name: recipe.name, recipe, pieces, premix, ticks: [], closed: false };
  const kept = await app.act(() => app.shelf.add(`batch/${id}`, batch), {
    says: START.started(tag),
  });
  if (kept) app.go(`#/batch/${id}/${pieces.length ? 'weigh' : 'pieces'}`);
}
