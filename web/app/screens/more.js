/** More: trouble, planning, tools and what this page is. Rows only, nothing to fill in. */
import { html } from 'lit-html';
import { door } from '../widgets/doors.js';
import { icon } from '../widgets/icon.js';
import { demo } from './today.js';
import { MORE, PLACES } from '../../words/en/places.js';

/** @type {[string, [string, string, string?][]][]} */
const ROWS = [
  [
    MORE.trouble,
    [
      ['#/cards', MORE.cards, MORE.cardsFor],
      ['#/dose', MORE.dose],
    ],
  ],
  [
    MORE.plan,
    [
      ['#/plan', MORE.ready, MORE.readyFor],
      ['#/bag', MORE.list, MORE.listFor],
    ],
  ],
  [
    MORE.tools,
    [
      ['#/brine', MORE.brine],
      ['#/spoons', MORE.spoons, MORE.spoonsFor],
    ],
  ],
  [
    MORE.page,
    [
      ['#/keep', MORE.keep],
      ['#/help', MORE.help],
      ['#/sources', MORE.sources],
    ],
  ],
];

/** @param {import('../app.js').App} app @returns {import('../app.js').Screen} */
export function more(app) {
  const sample = html`<button type="button" @click=${() => demo(app)}>
    <span><b>${MORE.sample}</b></span
    >${icon('s-go')}
  </button>`;
  function draw() {
    const view = html`<div class="leaf">
      ${ROWS.map(
        ([head, rows], at) =>
          html`<section class="more">
            <h2>${head}</h2>
            <div class="doors slim">
              ${rows.map(([href, word, says]) => door(href, word, says))} ${at === ROWS.length - 1 ? sample : ''}
            </div>
          </section>`,
      )}
    </div>`;
    return { title: PLACES.more, name: PLACES.more, one: true, view };
  }
  return { draw };
}
