/** Start a batch: by which recipe. */
import { html } from 'lit-html';
import { newId } from '../shelf.js';
import { icon, tagMark } from '../widgets/icon.js';
import { METHODS, count } from '../words/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */

/** @param {App} app @returns {import('../app.js').Screen} */
export function start(app) {
  function draw() {
    const cards = app.shelf.cards();
    const view = html`<div class="leaf">
      <h1 tabindex="-1">Start a batch</h1>
      <p class="lead near">By which recipe? What is on the board comes next.</p>
      <div class="doors" role="list">
        ${cards.map(
          ([, recipe]) =>
            html`<div role="listitem">
              <button type="button" class="tagged" @click=${() => begin(app, recipe)}>
                ${tagMark(recipe.tag)}<span
                  ><b>${recipe.name}</b
                  ><span class="small">${METHODS[recipe.method]}, ${count(recipe.steps.length, 'step')}</span></span
                >${icon('s-go')}
              </button>
            </div>`,
        )}
      </div>
      ${cards.length === 0 ? html`<p class="block">There is no recipe yet. Write one, or open a link.</p>` : ''}
      <div class="block"><a class="btn wide" href="#/recipes">All recipes, or a new one</a></div>
    </div>`;
    return { title: 'Start a batch', back: { href: '#/today', text: 'Batches' }, one: true, view };
  }

  return { draw };
}

/** @param {App} app @param {Recipe} recipe */
export async function begin(app, recipe) {
  const id = newId();
  const tag = app.shelf.freeTag(recipe.tag);
  /** @type {import('../types').Batch} */
  const batch = { tag, name: recipe.name, recipe, pieces: [], premix: false, ticks: [], closed: false };
  const kept = await app.act(() => app.shelf.add(`batch/${id}`, batch), {
    says: `Batch ${tag} is begun.`,
  });
  if (kept) app.go(`#/batch/${id}/pieces`);
}
