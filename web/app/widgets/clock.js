/** The cure clock: what is to be said of it, and under Why how each size class comes to its hour. */
import { html, nothing } from 'lit-html';
import { countedPieces } from '../../words/en/cuts.js';
import { MIDDLES, THUMBS, notedWords } from '../../words/en/clock.js';
import { statusWords } from '../../words/en/names.js';
import { glue } from '../../words/glue.js';
import { about, dayTime } from '../../words/time.js';
import { profile } from './clock-profile.js';
import { icon } from './icon.js';
import { strip } from './verdict.js';
import { REASONS, THUMB, TIMES, UNTIL, soaking as soakingWords } from '../../words/en/cure-clock.js';

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
  return html`<p>${REASONS.how}</p>
    ${recipe == null ? nothing : html`<p>${REASONS.recipe(dayTime(recipe, now))}</p>`}
    ${
      capped
        ? html`<p>${REASONS.capped(dayTime(capped.last, now), capped.source, statusWords(capped.status))}</p>`
        : nothing
    }
    ${clock.classes.map((one) => sizeClass(one, clock, now))}
    <p>${REASONS.middle}</p>`;
}

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
      <h3>${icon(`k-${one.at % 6}`, 'key')}${TIMES.head(countedPieces(one.of), one.thickness)}</h3>
      <span class="flag ${one.mark}">${icon(`s-${one.mark}`, '')}<span>${MIDDLES[one.state]}</span></span>
    </div>
    ${one.out === null ? nothing : html`<p class="near">${UNTIL.cameOut(dayTime(one.out, now))}</p>`}
    <table class="tbl times">
      <caption class="vh">
        ${TIMES.caption(countedPieces(one.of))}
      </caption>
      <thead>
        <tr>
          <th scope="col"><span class="vh">${TIMES.what}</span></th>
          <th scope="col">${TIMES.tenth}</th>
          <th scope="col">${TIMES.half}</th>
          <th scope="col">${TIMES.most}</th>
        </tr>
      </thead>
      <tbody>
        ${one.colour ? times(TIMES.colour, answered(one.colour), now) : nothing}
        ${times(TIMES.salt, one.colour ? one.even : answered(one.even), now)}
      </tbody>
    </table>
    ${profile(one, clock, now)} ${rules(one)}
  </div>`;
}

/** @param {CureClock} clock */
export function soaking({ classes }) {
  return classes.map(({ soak, of }) =>
    soak ? html`<p class="near">${soakingWords(countedPieces(of), soak.changed, soak.still)}</p>` : nothing,
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
function rules({ rules, of }) {
  return html`<h4>${THUMB.head}</h4>
    <p class="small">${THUMB.says}</p>
    <table class="tbl times">
      <caption class="vh">
        ${THUMB.caption(countedPieces(of))}
      </caption>
      <thead>
        <tr>
          <th scope="col">${THUMB.rule}</th>
          <th scope="col">${THUMB.gives}</th>
          <th scope="col">${THUMB.middle}</th>
        </tr>
      </thead>
      <tbody>
        ${rules.map(
          (rule) =>
            html`<tr>
              <th scope="row">${THUMBS[rule.rule]()}</th>
              <td>${rule.gives}</td>
              <td>${THUMB.ofFinal(rule.centre)}</td>
            </tr>`,
        )}
      </tbody>
    </table>`;
}
