/** The cure clock: what is to be said of it, and under Why how each size class comes to its hour. */
import { html, nothing } from 'lit-html';
import { MIDDLES, THUMBS, notedWords } from '../words/clock.js';
import { glue } from '../words/glue.js';
import { about, dayTime } from '../words/time.js';
import { profile } from './clock-profile.js';
import { icon } from './icon.js';
import { strip } from './verdict.js';

/** @typedef {import('../types').Class} Class */
/** @typedef {import('../types').CureClock} CureClock */

/** The refrigerator and the rest that is no mere reason. @param {CureClock['notes']} notes */
export function clockNotes(notes) {
  return notes.map(({ mark, what }) => {
    const [word, says] = notedWords(what);
    return html`<div class="gap">${strip(mark, word, glue(says))}</div>`;
  });
}

/** Under the fold. @param {CureClock} clock @param {number} now */
export function clockWhy(clock, now) {
  const { capped, recipe } = clock.until ?? {};
  return html`<p>
      The answer is the 9 in 10 hour of your thickest piece, beyond 3 days up to whole days. Thickness sets the time;
      weight sets the dose. More cure never makes it faster. A forecast, never a guarantee: the cut has the last word.
    </p>
    ${recipe == null ? nothing : html`<p>By your recipe: ${dayTime(recipe, now)}.</p>`}
    ${
      capped
        ? html`<p>
            Raw meat stays in its cure until ${dayTime(capped.last, now)} at most. ${capped.source}
            (${STATUS[capped.status] ?? capped.status}).
          </p>`
        : nothing
    }
    ${clock.classes.map((one) => sizeClass(one, clock, now))}
    <p>
      A grey middle is a matter of looks only if it was kept cold and is cooked through. Raw or cold-smoked it is not
      acceptable.
    </p>`;
}

/** @type {Record<string, string>} */
const STATUS = { judgement: 'our own judgement' };

/** @param {Class} one @param {CureClock} clock @param {number} now */
function sizeClass(one, clock, now) {
  // The row that the answer is taken from has its times as the answer has them.
  const row =
    clock.until?.kind === 'forecast' && !clock.until.capped
      ? clock.until.classes.find((row) => row.class === one.at)
      : undefined;
  /** @param {import('../types').Span3} span */
  const answered = (span) => (row ? { ...span, earliest: row.from, latest: row.until } : span);
  return html`<div class="class">
    <div class="row-h">
      <h3>${icon(`k-${one.at % 6}`, 'key')}${one.name}, ${one.thickness}</h3>
      <span class="flag ${one.mark}">${icon(`s-${one.mark}`, '')}<span>${MIDDLES[one.state]}</span></span>
    </div>
    ${one.out === null ? nothing : html`<p class="near">It came out ${dayTime(one.out, now)}.</p>`}
    <table class="tbl times">
      <caption class="vh">
        ${one.name}: forecast times
      </caption>
      <thead>
        <tr>
          <th scope="col"><span class="vh">What</span></th>
          <th scope="col">1 in 10 by</th>
          <th scope="col">Half by</th>
          <th scope="col">9 in 10 by</th>
        </tr>
      </thead>
      <tbody>
        ${one.colour ? times('Colour', answered(one.colour), now) : nothing}
        ${times('Even salt', one.colour ? one.even : answered(one.even), now)}
      </tbody>
    </table>
    ${profile(one, clock, now)} ${rules(one)}
  </div>`;
}

/** @param {CureClock} clock */
export function soaking({ classes }) {
  return classes.map(({ soak, name }) =>
    soak
      ? html`<p class="near">
          <b>Soaking ${name}</b>, in water changed each half hour: ${soak.changed.join(' to ')}.
          ${soak.still ? html`In three times its weight of still water: ${soak.still.join(' to ')}.` : html`Still water does not bring it so far.`}
        </p>`
      : nothing,
  );
}

/** @param {string} what @param {import('../types').Span3} span @param {number} now */
function times(what, { earliest, likely, latest }, now) {
  return html`<tr>
    <th scope="row">${what}</th>
    ${[earliest, likely, latest].map((at) => html`<td>${about(at, now)}</td>`)}
  </tr>`;
}

/** Rules of thumb, and what the clock says of them. @param {Class} one */
function rules({ rules, name }) {
  return html`<h4>Rules of thumb, beside it</h4>
    <p class="small">They go by thickness or weight; salt goes by the square of the thickness.</p>
    <table class="tbl times">
      <caption class="vh">
        ${name}: rules of thumb
      </caption>
      <thead>
        <tr>
          <th scope="col">Rule</th>
          <th scope="col">It gives</th>
          <th scope="col">Centre then</th>
        </tr>
      </thead>
      <tbody>
        ${rules.map(
          (rule) =>
            html`<tr>
              <th scope="row">${THUMBS[rule.rule]}</th>
              <td>${rule.gives}</td>
              <td>${rule.centre} % of final</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
}
