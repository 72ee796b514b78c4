/** More: trouble, planning, tools and what this page is. Rows only, nothing to fill in. */
import { html } from 'lit-html';
import { door } from '../widgets/doors.js';
import { icon } from '../widgets/icon.js';
import { demo } from './today.js';

/** @type {[string, [string, string, string?][]][]} */
const ROWS = [
  [
    'Trouble',
    [
      ['#/cards', 'Something went wrong', 'warm, frozen, power out, leak, stall, fire out'],
      ['#/dose', 'I already put cure on it'],
    ],
  ],
  [
    'Plan',
    [
      ['#/plan', 'Ready by a day', 'works back from a date'],
      ['#/bag', 'Shopping list', 'for this weekend’s meat'],
    ],
  ],
  [
    'Tools',
    [
      ['#/brine', 'Brine'],
      ['#/spoons', 'Spoons, scale, 1-in-10 mix', 'test them, or make a mix for a coarse scale'],
    ],
  ],
  [
    'This page',
    [
      ['#/keep', 'Settings and backup'],
      ['#/help', 'How the job goes'],
      ['#/sources', 'Sources and words'],
    ],
  ],
];

/** @param {import('../app.js').App} app @returns {import('../app.js').Screen} */
export function more(app) {
  const sample = html`<button type="button" @click=${() => demo(app)}>
    <span><b>Try it with sample meat</b></span
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
    return { title: 'More', name: 'More', one: true, view };
  }
  return { draw };
}
