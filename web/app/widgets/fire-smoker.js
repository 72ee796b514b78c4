/** What fires told of this smoker: visible, kept and forgotten by a touch. */
import { html, nothing } from 'lit-html';
import { airWords } from '../words/fire.js';
import { count } from '../words/names.js';

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
    <h2>Your smoker</h2>
    ${air ? html`<p class="near">From ${count(fires, 'fire')}: ${airWords(air)}</p>` : nothing}
    ${
      fresh
        ? html`<p class="near">This fire tells how your smoker warms. Kept, the next forecast begins there.</p>
            <button
              type="button"
              class="btn wide"
              @click=${() => put([...all, tells], 'Kept. The next forecast begins there.')}
            >
              Keep what this fire told
            </button>`
        : nothing
    }
    ${
      all.length
        ? html`<div class="acts gap">
            <button type="button" class="btn less" @click=${() => put([], 'What the fires told is forgotten.')}>
              Forget what the fires told
            </button>
          </div>`
        : nothing
    }
  </section>`;
}
