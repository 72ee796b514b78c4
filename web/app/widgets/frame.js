/** What stands around every screen: the way back, the light, and the bars that wait for an answer. */
import { html, nothing } from 'lit-html';
import { LIGHTS, lightNow, setLight } from './light.js';
import { icon } from './icon.js';

/** @typedef {import('../app.js').App} App */

/**
 * @param {App} app
 * @param {import('../app.js').Drawn} drawn
 */
export function frame(app, { back, one = false, view }) {
  return html`<a class="skip" href="#main" @click=${toMain}>Skip to the card</a>
    <header class="top">
      ${
        back
          ? html`<a class="back" href=${back.href}>${icon('s-back', '')}${back.text}</a>`
          : html`<span class="back">Cure Reckoner</span>`
      }
      ${lights(app)}
    </header>
    <aside class="bars" aria-label="Notices">${bars(app)}</aside>
    <main id="main" tabindex="-1" class="spread ${one ? 'one' : ''}">${view}</main>`;
}

/** @param {App} app */
function lights(app) {
  const now = lightNow();
  return html`<div class="light" role="group" aria-label="Screen light">
    ${LIGHTS.map(
      ([light, word]) =>
        html`<button
          type="button"
          aria-pressed=${light === now ? 'true' : 'false'}
          @click=${() => {
            setLight(light);
            app.draw();
          }}
        >
          ${word}
        </button>`,
    )}
  </div>`;
}

/** @param {App} app */
function bars(app) {
  const { undo, fault, trouble, update } = app;
  return [
    update
      ? notice('', 'A new version of this page is ready.', [
          ['Reload', update],
          ['Later', () => ((app.update = null), app.draw())],
        ])
      : nothing,
    trouble
      ? notice('stop', trouble.message, [
          ['Try again', () => app.shelf.store.retry()],
          ['Export the file', () => app.go('#/keep')],
        ])
      : nothing,
    fault
      ? notice('stop', `The last change was not kept. ${fault}`, [['Close', () => ((app.fault = null), app.draw())]])
      : nothing,
    undo ? notice('', undo.says, [['Undo', () => app.takeBack()]]) : nothing,
  ];
}

/**
 * @param {string} of
 * @param {string} says
 * @param {[string, () => unknown][]} acts
 */
function notice(of, says, acts) {
  return html`<div class="notice ${of}" role="status">
    <p>${says}</p>
    <div class="acts">
      ${acts.map(([word, act]) => html`<button type="button" class="btn" @click=${act}>${word}</button>`)}
    </div>
  </div>`;
}

/** @param {Event} event */
function toMain(event) {
  event.preventDefault();
  document.getElementById('main')?.focus();
}
