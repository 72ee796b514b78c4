/** A batch: finds it, and hands it to the screen of the stage. */
import { html } from 'lit-html';
import { pieces } from './pieces.js';
import { stage } from './stage.js';
import { weigh } from './weigh.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../app.js').Screen} Screen */

/** @param {App} app @param {import('../router.js').Place} place @returns {Screen} */
export function batch(app, { id, part }) {
  const make = part === 'pieces' ? pieces : part === 'weigh' ? weigh : stage;
  const inner = make(app, id, /** @type {import('../types').Stage} */ (part));
  return { ...inner, draw: () => (app.shelf.batches.has(id) ? inner.draw() : missing('This batch')) };
}

/**
 * What stands where a record was that is gone by now: deleted here, or in another tab.
 * @param {string} what
 * @returns {import('../app.js').Drawn}
 */
export function missing(what) {
  return {
    title: 'Not here',
    back: { href: '#/today', text: 'Today' },
    one: true,
    view: html`<div class="leaf">
      <h1 tabindex="-1">Not here</h1>
      <p class="near">${what} is not in this browser. It was deleted, or the address is from another device.</p>
      <div class="block"><a class="btn wide" href="#/today">Go to Today</a></div>
    </div>`,
  };
}
