/** How the job goes, by the demo batch; and the words of the trade, with where the figures come from. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { statusWords } from '../../words/en/names.js';
import { demo } from './today.js';
import { glossary } from '../../words/en/glossary.js';
import { HELP, SOURCES, TABLES, TITLES, job, sourcesOf } from '../../words/en/help.js';
import { MORE, PLACES } from '../../words/en/places.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Status} Status */

const BACK = { href: '#/more', text: PLACES.more };

/** @param {string} head @param {[string, Status | null][]} all sources, each with its status */
function list(head, all) {
  return html`<details class="gap">
    <summary>${sourcesOf(head, all.filter(([source]) => source).length)}</summary>
    <ul class="bullets">
      ${all.map(([source, status]) =>
        source ? html`<li>${source}${status ? html`, <b>${statusWords(status)}</b>` : nothing}</li>` : nothing,
      )}
    </ul>
  </details>`;
}

/** @param {App} app @returns {import('../app.js').Screen} */
export function help(app) {
  function draw() {
    const view = html`<div class="leaf help">
      <h1 tabindex="-1">${TITLES.job}</h1>
      <p class="lead near">${HELP.lead}</p>
      <div class="gap">
        <button type="button" class="btn wide" @click=${() => demo(app)}>${MORE.sample}</button>
      </div>
      <p class="caution">${HELP.decide}</p>
      <section class="sec">
        <h2>${HELP.head}</h2>
        <ol class="steps">
          ${job().map(
            ([head, says]) =>
              html`<li>
                <span><b>${head}</b>${says}</span>
              </li>`,
          )}
        </ol>
      </section>
    </div>`;
    return { title: TITLES.job, back: BACK, one: true, view };
  }

  return { draw };
}

/** @param {App} app @returns {import('../app.js').Screen} */
export function sources(app) {
  function draw() {
    const { ingredients } = app.tables;
    const tables = ask('sources', {}).ok?.tables ?? [];
    // Each source once, whatever it is of.
    const spoons = /** @type {[string, Status][]} */ ([
      ...new Map(ingredients.map(({ source, status }) => [source + status, [source, status]])).values(),
    ]);
    const view = html`<div class="leaf help">
      <h1 tabindex="-1">${TITLES.sources}</h1>
      <section class="sec">
        <h2>${SOURCES.head}</h2>
        <p class="lead">${SOURCES.lead}</p>
        ${tables.map(([of, all]) => list(TABLES[of], all))} ${list(SOURCES.spoons, spoons)}
      </section>
      <section class="sec">
        <h2>${SOURCES.words}</h2>
        <dl class="words">
          ${glossary().map(
            ([word, says]) =>
              html`<dt>${word}</dt>
                <dd>${says}</dd>`,
          )}
        </dl>
      </section>
    </div>`;
    return { title: TITLES.sources, back: BACK, one: true, view };
  }

  return { draw };
}
