/** What stands around every screen: the way back, the light, and the bars that wait for an answer. */
import { html, nothing } from 'lit-html';
import { door } from './doors.js';
import { icon, tagMark } from './icon.js';
import { lightButton } from './light.js';
import { places } from './places.js';
import { BARS, HEARD, MORE, NAME, PRESS } from '../../words/en/places.js';

/** @typedef {import('../app.js').App} App */

/**
 * @param {App} app
 * @param {import('../app.js').Drawn} drawn
 */
export function frame(app, { back, name, head, peek, one = false, view }) {
  return html`<a class="skip" href="#main" @click=${toMain}>${HEARD.skip}</a>
    <div class="masthead">
      <header class="top ${head ? 'within' : ''}">
        ${back ? wayOut(app, back) : name ? nothing : html`<span class="back">${NAME}</span>`}
        ${name ? html`<h1 tabindex="-1">${name}</h1>` : nothing} ${lightButton(app.draw)}
      </header>
      ${head ?? places(app.here)} ${peek ?? nothing}
    </div>
    <aside class="bars" aria-label=${HEARD.notices}>${bars(app)}</aside>
    <main id="main" tabindex="-1" class="spread ${one ? 'one' : ''} ${head ? 'stage' : ''}">${view}</main>
    ${
      // A screen of a batch has it among rows of its own, as have these two.
      head || ['cards', 'how-much'].includes(app.here)
        ? nothing
        : html`<footer class="doors slim foot noprint">${door('#/cards', MORE.cards)}</footer>`
    }`;
}

/** Out of a batch by its tag; out of what can be opened anywhere to where one came from. @param {App} app @param {NonNullable<import('../app.js').Drawn['back']>} back */
function wayOut({ came }, { tag, ...more }) {
  const { href, text } = more.href === '#/more' && came ? came : more;
  return html`<a class="back" href=${href}
    >${icon('s-back', '')}${tag ? html`<span class="vh">${HEARD.fromBatch(text)}</span>${tagMark(tag)}` : text}</a
  >`;
}

/** @param {App} app */
function bars(app) {
  const { undo, fault, trouble, update } = app;
  return [
    update
      ? notice('', BARS.newVersion, [
          [PRESS.reload, update],
          [PRESS.later, () => ((app.update = null), app.draw())],
        ])
      : nothing,
    !trouble && app.shelf.store.newer > 0 ? notice('', BARS.old, [[PRESS.reload, () => location.reload()]]) : nothing,
    trouble
      ? notice('stop', trouble.message, [
          trouble.kind === 'newer'
            ? [PRESS.reload, () => location.reload()]
            : [trouble.kind === 'cleared' ? PRESS.putBack : PRESS.again, () => app.shelf.store.retry()],
          [PRESS.export, () => app.go('#/keep')],
        ])
      : nothing,
    fault ? notice('stop', BARS.notKept(fault), [[PRESS.close, () => ((app.fault = null), app.draw())]]) : nothing,
    undo ? notice('', undo.says, [[PRESS.undo, () => app.takeBack()]]) : nothing,
  ];
}

/**
 * @param {string} of
 * @param {string} says
 * @param {[string, () => unknown][]} acts
 */
function notice(of, says, acts) {
  return html`<div class="notice ${of}">
    <p data-say="figures">${says}</p>
    <div class="acts">
      ${acts.map(([word, act]) => html`<button type="button" class="btn" @click=${act}>${word}</button>`)}
    </div>
  </div>`;
}

/** Past the head, to what is done here: the first field of what is asked, else the pinned action. @param {Event} event */
function toMain(event) {
  event.preventDefault();
  const to =
    document.querySelector('.asked input') ??
    document.querySelector('.pin .btn') ??
    document.querySelector('main :is(input, select, textarea, button, a)') ??
    document.querySelector('#main');
  /** @type {HTMLElement | null} */ (to)?.focus();
}
