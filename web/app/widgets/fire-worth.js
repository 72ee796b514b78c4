/** What the readings are worth: by which rule it is cooked, chilled in time, and what else is published. */
import { html, nothing, svg } from 'lit-html';
import { pieceName } from '../../words/en/cuts.js';
import { aboutWords, leftWords, rowWords, stageWords, wayWords } from '../../words/en/chill.js';
import { FIRE_STATES, TABLES, conditionWords, heatWords, ruleWords } from '../../words/en/fire.js';
import { glue } from '../../words/glue.js';
import { dayTime } from '../../words/time.js';
import { shape } from './icon.js';
import { strip } from './verdict.js';
import { CHILL_WAYS, CREDIT, HEADS } from '../../words/en/at-the-fire.js';

/** @typedef {import('../types').FireClass} FireClass */
/** @typedef {import('../types').FireSheet} FireSheet */

/** @type {Record<import('../types').FireState, import('../types').Mark>} */
export const MARKS = {
  made_it: 'ok',
  by_table: 'care',
  not_yet: 'care',
  colder: 'care',
  dried_first: 'stop',
  cannot_say: 'ask',
  in_doubt: 'ask',
};

/** @param {FireClass} one @param {number} place */
export function worth(one, place) {
  const { credit } = one;
  return html`<section class="block">
    <div class="row-h">
      <h2>${shape(place)}${pieceName(one.of)}</h2>
      ${credit ? html`<span class="num credit-num">${credit.num}<span class="u">${CREDIT.of(credit.of)}</span></span>` : nothing}
    </div>
    ${
      credit
        ? html`<div class="credit" role="img" aria-label=${CREDIT.says(credit.num, credit.of)}>
            ${Array.from({ length: 7 }, (_, i) => {
              const full = Math.max(0, Math.min(10, credit.tenths - 10 * i));
              return html`<svg aria-hidden="true">${svg`<rect width="${full * 10}%" height="100%"/>`}</svg>`;
            })}
          </div>`
        : nothing
    }
    <div class="gap">${strip(MARKS[one.state], FIRE_STATES[one.state], glue(heatWords(one)))}</div>
  </section>`;
}

/** The rules the verdicts stand on, each once. @param {FireSheet} sheet */
export function rules({ classes }) {
  const texts = classes.flatMap(({ credit, rule }) =>
    credit ? [conditionWords(credit.conditions), TABLES[credit.table], ruleWords(rule)] : [ruleWords(rule)],
  );
  return html`<section class="block">
    <h2>${HEADS.rules}</h2>
    ${[...new Set(texts)].map((text) => html`<p class="src">${glue(text)}</p>`)}
  </section>`;
}

/** Chilling by every published option, with its source. @param {FireClass} one @param {number} place @param {number} now */
export function chillWays(one, place, now) {
  if (one.chill.length === 0) return nothing;
  return html`<section class="block">
    <h2>${shape(place)}${CHILL_WAYS.head(pieceName(one.of))}</h2>
    ${stages(CHILL_WAYS.caption, one.chill, now)}
    <p class="small">${CHILL_WAYS.note()}</p>
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
        <th scope="col">${CHILL_WAYS.stage}</th>
        <th scope="col">${CHILL_WAYS.left}</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (row) =>
          html`<tr>
            <td>${stageWords(row.stage)}<small>${glue(wayWords(row.stage))}</small></td>
            <td>
              <span class="${row.left.is === 'late' ? 'flag' : ''} ${row.left.is === 'late' ? 'stop' : ''}"
                >${leftWords(row.left)}</span
              >${
                row.until ? html`<small>${CHILL_WAYS.until(dayTime(row.until, now))}</small>` : nothing
              }${row.expected ? html`<small>${CHILL_WAYS.expected(dayTime(row.expected, now))}</small>` : nothing}
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
    .map((one) => {
      const { title, says, source } = aboutWords(one);
      return html`<details class="block fold">
        <summary><h2>${title}</h2></summary>
        <p>${glue(says)}</p>
        <table class="tbl near">
          <caption class="vh">
            ${title}
          </caption>
          <tbody>
            ${one.rows.map((row) => {
              const [what, figure] = rowWords(row);
              return html`<tr>
                <th scope="row">${glue(what)}</th>
                <td>${glue(figure)}</td>
              </tr>`;
            })}
          </tbody>
        </table>
        <p class="src">${glue(source)}</p>
      </details>`;
    });
}
