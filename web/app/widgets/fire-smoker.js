/** What fires told of this smoker: visible, kept and forgotten by a touch. */
import { html, nothing } from 'lit-html';
import { airWords } from '../../words/en/fire.js';
import { HEADS, SMOKER } from '../../words/en/at-the-fire.js';

/** @typedef {import('../types').Smoked} Smoked */

/** @param {import('../app.js').App} app @param {import('../types').Known} known */
export function smoker(app, { fires, air, tells }) {
  const all = app.settings.smoked ?? [];
  const put = (/** @type {Smoked[]} */ smoked, /** @type {string} */ said) => {
    return app.act(() => app.shelf.changeSettings({ smoked }), { says: said, here: true });
  };
  const fresh = tells && !all.some(({ at }) => at === tells.at);
  if (!fresh && all.length === 0) return nothing;
  return html`<section class="block noprint" data-smoker>
    <h2>${HEADS.smoker}</h2>
    ${air ? html`<p class="near">${SMOKER.from(fires, airWords(air))}</p>` : nothing}
    ${
      fresh
        ? html`<p class="near">${SMOKER.fresh}</p>
            <button type="button" class="btn wide" @click=${() => put([...all, tells], SMOKER.saved)}>
              ${SMOKER.save}
            </button>`
        : nothing
    }
    ${
      all.length
        ? html`<div class="acts gap">
            <button type="button" class="btn less" @click=${() => put([], SMOKER.forgotten)}>${SMOKER.forget}</button>
          </div>`
        : nothing
    }
  </section>`;
}
