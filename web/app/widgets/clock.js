/** The cure clock: what is to be said of it, and each size class with its bars, its profile and its times. */
import { html, nothing } from 'lit-html';
import { glue } from '../words/glue.js';
import { about, dayTime } from '../words/time.js';
import { bars } from './clock-bars.js';
import { profile } from './clock-profile.js';
import { icon } from './icon.js';
import { strip } from './verdict.js';

/** @typedef {import('../types').Class} Class */
/** @typedef {import('../types').CureClock} CureClock */

/** @param {CureClock} clock @param {number} now */
export function clockNotes(clock, now) {
  return html`<section class="block">
    <h2>How long</h2>
    <p class="lead">
      A forecast, never a guarantee: eight in ten are through between earliest and latest. The cut has the last word.
    </p>
    ${clock.ended === null ? nothing : html`<p class="near">It came out ${dayTime(clock.ended, now)}.</p>`}
    ${clock.notes.map(({ mark, word, says }) => html`<div class="gap">${strip(mark, word, glue(says))}</div>`)}
  </section>`;
}

/** @param {CureClock} clock @param {number} now */
export function clockClasses(clock, now) {
  if (clock.classes.length === 0) return nothing;
  return html`<section class="block">
    <h2>By size class</h2>
    ${clock.classes.map((one) => sizeClass(one, clock, now))}
    <p class="legend">
      <span
        ><svg width="44" height="18" aria-hidden="true"><path class="fill" d="M0 18L28 2H44V18z" /></svg>Rising: may be
        through. Full height: it is</span
      >
      <span
        ><svg width="12" height="20" aria-hidden="true"><path class="mark" d="M6 0v20" /></svg>Now</span
      >
    </p>
    <p class="small near">
      A grey middle is a matter of looks only if it was kept cold and is cooked through. Raw or cold-smoked it is not
      acceptable.
    </p>
  </section>`;
}

/** @param {Class} one @param {CureClock} clock @param {number} now */
function sizeClass(one, clock, now) {
  const ready = one.colour ?? one.even;
  return html`<div class="class">
    <div class="row-h">
      <h3>${icon(`k-${one.at % 6}`, 'key')}${one.name}</h3>
      <span class="flag ${one.mark}">${icon(`s-${one.mark}`, '')}<span>${one.word}</span></span>
    </div>
    ${one.out === null ? nothing : html`<p class="near">It came out ${dayTime(one.out, now)}.</p>`}
    <p class="say">
      ${one.thickness}. ${one.colour ? 'Colour at the centre' : 'Evenly salted'}: likely
      <b class="nowrap">${about(ready.likely, now)}</b>, at the latest
      <b class="nowrap">${about(ready.latest, now)}</b>.
    </p>
    ${bars(one, Number(clock.begun), now)}
    <table class="tbl times">
      <caption class="vh">
        ${one.name}: forecast times
      </caption>
      <thead>
        <tr>
          <th scope="col"><span class="vh">What</span></th>
          <th scope="col">Earliest</th>
          <th scope="col">Likely</th>
          <th scope="col">Latest</th>
        </tr>
      </thead>
      <tbody>
        ${one.colour ? times('Colour', one.colour, now) : nothing} ${times('Even salt', one.even, now)}
      </tbody>
    </table>
    ${
      one.soak
        ? html`<p class="near">
            <b>Soaking</b>, in water changed each half hour: ${one.soak.changed}.
            ${one.soak.still ? html`In three times its weight of still water: ${one.soak.still}.` : html`Still water does not bring it so far.`}
          </p>`
        : nothing
    }
    <details class="gap">
      <summary>Salt through it<span class="vh">, ${one.name}</span></summary>
      ${profile(one, clock, now)} ${rules(one)}
    </details>
  </div>`;
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
              <th scope="row">${rule.name}</th>
              <td>${rule.gives}</td>
              <td>${rule.centre} % of final</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
}
