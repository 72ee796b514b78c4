/** What the readings are worth: by which rule it is cooked, chilled in time, and what else is published. */
import { html, nothing, svg } from 'lit-html';
import { glue } from '../words/glue.js';
import { dayTime } from '../words/time.js';
import { shape } from './icon.js';
import { strip } from './verdict.js';

/** @typedef {import('../types').FireClass} FireClass */
/** @typedef {import('../types').FireSheet} FireSheet */

/** @type {Record<import('../types').FireState, import('../types').Mark>} */
const MARKS = { made_it: 'ok', by_table: 'care', not_yet: 'care', cannot_say: 'ask' };

/** @param {FireClass} one @param {number} place */
export function worth(one, place) {
  const { credit } = one;
  return html`<section class="block">
    <div class="row-h">
      <h2>${shape(place)}${one.name}</h2>
      ${credit ? html`<span class="num credit-num">${credit.num}<span class="u">of ${credit.of} log</span></span>` : nothing}
    </div>
    ${
      credit
        ? html`<div class="credit" role="img" aria-label="${credit.num} of ${credit.of} log counted so far">
            ${Array.from({ length: 7 }, (_, i) => {
              const full = Math.max(0, Math.min(10, credit.tenths - 10 * i));
              return html`<svg aria-hidden="true">${svg`<rect width="${full * 10}%" height="100%"/>`}</svg>`;
            })}
          </div>`
        : nothing
    }
    <div class="gap" role="status">${strip(MARKS[one.state], one.word, glue(one.says))}</div>
    ${one.come_up ? html`<p class="caution gap">${glue(one.come_up)}</p>` : nothing}
  </section>`;
}

/** What the heat does not settle, before what it is worth. @param {FireSheet} sheet */
export function stillOpen({ open, classes }) {
  if (open.length === 0 || classes.every(({ points }) => points.length === 0)) return nothing;
  return html`<section class="block">
    ${strip(
      'care',
      'Heat is not all',
      'What follows speaks of the heat only. Still open:',
      html`<ul class="dots">
        ${open.map((says) => html`<li>${glue(says)}</li>`)}
      </ul>`,
    )}
  </section>`;
}

/** The rules the verdicts stand on, each once. @param {FireSheet} sheet */
export function rules({ classes }) {
  const texts = classes.flatMap(({ credit, rule }) => (credit ? [credit.conditions, credit.table, rule] : [rule]));
  return html`<section class="block">
    <h2>By which rule</h2>
    ${[...new Set(texts)].map((text) => html`<p class="src">${glue(text)}</p>`)}
  </section>`;
}

/** Chilling by the published options: the first in sight, the others at hand. @param {FireClass} one @param {number} place @param {number} now */
export function chill(one, place, now) {
  const [first] = one.chill;
  if (!first) return nothing;
  const own = one.chill.filter(({ name }) => name === first.name);
  const others = one.chill.filter(({ name }) => name !== first.name);
  return html`<section class="block">
    <h2>${shape(place)}${one.name}: chill</h2>
    ${stages('The way to chill that comes first', own, now)}
    ${
      others.length
        ? html`<details ?open=${own.some(({ late }) => late)}>
            <summary>The other published ways</summary>
            ${stages('Other published ways to chill', others, now)}
          </details>`
        : nothing
    }
    <p class="small">
      One way that holds to its end is enough. Expected: in a refrigerator at 3 °C, alone on its shelf, by a model; the
      readings decide.
    </p>
  </section>`;
}

/** @param {string} caption @param {FireClass['chill']} rows @param {number} now */
function stages(caption, rows, now) {
  return html`<table class="tbl near">
    <caption class="vh">
      ${caption}
    </caption>
    <thead>
      <tr>
        <th scope="col">Stage</th>
        <th scope="col">Left</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (row) =>
          html`<tr>
            <td>${row.stage}<small>${row.name}. ${glue(row.source)}.</small></td>
            <td>
              <span class=${row.late ? 'flag stop' : ''}>${row.says}</span>${
                row.until ? html`<small>until ${dayTime(row.until, now)}</small>` : nothing
              }${row.expected ? html`<small>expected ${dayTime(row.expected, now)}</small>` : nothing}
            </td>
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** Published tables by which nothing is judged, for whoever needs them. @param {FireSheet} sheet @param {boolean} cold */
export function published(sheet, cold) {
  return sheet.published
    .filter((one) => one.cold === cold)
    .map(
      ({ title, says, rows, source }) =>
        html`<details class="block fold">
          <summary><h2>${title}</h2></summary>
          <p>${glue(says)}</p>
          <table class="tbl near">
            <caption class="vh">
              ${title}
            </caption>
            <tbody>
              ${rows.map(
                ([what, figure]) =>
                  html`<tr>
                    <th scope="row">${glue(what)}</th>
                    <td>${glue(figure)}</td>
                  </tr>`,
              )}
            </tbody>
          </table>
          <p class="src">${glue(source)}</p>
        </details>`,
    );
}
