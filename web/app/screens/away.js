/** Batches that are finished or thrown out. */
import { html, nothing } from 'lit-html';
import { icon, tagMark } from '../widgets/icon.js';
import { AWAY, PLACES, showMore } from '../../words/en/places.js';

/** @typedef {import('../app.js').App} App */

/** So many are drawn at a time. */
const PAGE = 50;

/** @param {App} app @returns {import('../app.js').Screen} */
export function away(app) {
  let shown = PAGE;
  function draw() {
    const batches = app.shelf.away();
    const view = html`<div class="leaf">
      <h1 tabindex="-1">${AWAY.title}</h1>
      <p class="lead near">${AWAY.lead(app.shelf.awayCount)}</p>
      <ul class="days gap">
        ${batches.slice(0, shown).map(
          ([id, batch]) =>
            html`<li>
              <a class="batch" href="#/batch/${id}/pieces"
                >${tagMark(batch.tag)}<b>${batch.name}</b>${batch.thrown_out === undefined ? nothing : html`<span class="p"><span class="flag stop">${icon('s-stop', '')}${AWAY.thrownOut}</span></span>`}</a
              >
            </li>`,
        )}
      </ul>
      ${
        batches.length > shown
          ? html`<button type="button" class="btn quiet wide gap" @click=${() => ((shown += PAGE), app.draw())}>
              ${showMore(PAGE)}
            </button>`
          : nothing
      }
    </div>`;
    return { title: AWAY.title, back: { href: '#/today', text: PLACES.today }, one: true, view };
  }

  return { draw };
}
