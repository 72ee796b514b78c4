/** A batch: finds it, and hands it to the screen of the stage. */
import { html } from 'lit-html';
import { fire } from './fire.js';
import { labels } from './labels.js';
import { pack } from './pack.js';
import { pieces } from './pieces.js';
import { cure } from './stage.js';
import { weigh } from './weigh.js';
import { BATCHES, MISSING } from '../../words/en/batches.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../app.js').Screen} Screen */

/** @type {Record<string, (app: App, id: string, part: string) => Screen>} */
const SCREENS = { pieces, weigh, cure, fire, pack, labels, tag: labels };

/** @param {App} app @param {import('../router.js').Place} place @returns {Screen} */
export function batch(app, { id, part }) {
  const inner = (SCREENS[part] ?? pieces)(app, id, part);
  return {
    ...inner,
    draw: () => (app.shelf.batches.has(id) ? inner.draw() : (waits(app, id) ?? missing(MISSING.batch))),
  };
}

/** A batch put away that is not read yet: it is read now. @param {App} app @param {string} id */
function waits(app, id) {
  const read = app.shelf.fetch(id);
  if (!read) return null;
  read.then(app.draw);
  return { title: MISSING.title, view: html`<div class="leaf"><h1 tabindex="-1">${MISSING.reading}</h1></div>` };
}

/**
 * What stands where a record was that is gone by now: deleted here, or in another tab.
 * @param {string} what
 * @returns {import('../app.js').Drawn}
 */
export function missing(what) {
  return {
    title: MISSING.head,
    back: { href: '#/today', text: BATCHES },
    one: true,
    view: html`<div class="leaf">
      <h1 tabindex="-1">${MISSING.head}</h1>
      <p class="near">${MISSING.says(what)}</p>
      <div class="block"><a class="btn wide" href="#/today">${MISSING.go}</a></div>
    </div>`,
  };
}
