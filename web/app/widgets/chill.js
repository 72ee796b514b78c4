/** The chill as an answer: which size has to be how cold by when, and what follows when it is missed. */
import { html, nothing } from 'lit-html';
import { pieceName } from '../../words/en/cuts.js';
import { IN_TIME, LOST, MISSED, UNSEEN, stageWords } from '../../words/en/chill.js';
import { dayTime, nearTime } from '../../words/time.js';
import { shape } from './icon.js';
import { CHILL, ROWS } from '../../words/en/packing.js';

/** @typedef {import('../types').FireClass} FireClass */
/** @typedef {import('../types').FireSheet} FireSheet */

/** What has to be read cold and was not yet; the one whose time ends first comes first. @param {FireSheet} sheet */
export function chilling({ classes }) {
  const until = (/** @type {FireClass} */ { record }) =>
    record.chill.is === 'running' ? record.chill.until : Infinity;
  return classes
    .map((one, place) => ({ one, place }))
    .filter(({ one }) => one.pulled !== null && one.record.chill.is !== 'done')
    .sort((a, b) => until(a.one) - until(b.one));
}

/** The stage of the chill that is running, and the one after it. @param {FireClass} one */
function stageOf({ record, chill }) {
  const until = record.chill.is === 'running' ? record.chill.until : null;
  const at = chill.findIndex((row) => row.until !== null && row.until === until);
  const next = chill[at + 1];
  return { until, row: chill[at], then: next?.stage.of === chill[at]?.stage.of ? next : undefined };
}

/** @param {FireSheet} sheet @param {number} now */
export function chillAnswer(sheet, now) {
  const [first] = chilling(sheet);
  if (!first) return nothing;
  const { until, row } = stageOf(first.one);
  if (until === null) {
    const late = first.one.record.chill.is === 'late';
    return html`<p class="say">${late ? CHILL.late(pieceName(first.one.of)) : CHILL.unseen(pieceName(first.one.of))}</p>
      <p class="reason">${late ? LOST : UNSEEN}</p>`;
  }
  return html`<p class="say">${CHILL.say(pieceName(first.one.of), row && stageWords(row.stage))}</p>
    <p class="big">${CHILL.by(dayTime(until, now))}</p>
    <p class="reason">${MISSED}</p>`;
}

/** What comes then, and how it is in time: behind the keys, which stand in sight together with the hour. @param {FireSheet} sheet */
export function chillAfter(sheet) {
  const [first] = chilling(sheet);
  if (!first) return nothing;
  const { until, then } = stageOf(first.one);
  return until === null ? nothing : html`<p>${IN_TIME} ${CHILL.then(then && stageWords(then.stage))}</p>`;
}

/** Each size, and where its chill stands. @param {FireSheet} sheet @param {number} now */
export function chillRows(sheet, now) {
  const rows = sheet.classes.flatMap((one, place) => (one.chill.length ? [{ one, place }] : []));
  return html`<ul class="now-at" aria-label=${ROWS.list}>
    ${rows.map(({ one, place }) => {
      const { until, row } = stageOf(one);
      const at = one.points.at(-1);
      return html`<li>
        <span>${shape(place)}${pieceName(one.of)}</span
        >${at && one.last ? html`<span class="small">${ROWS.read(one.last.text, nearTime(at.at, now))}</span>` : nothing}<span
          class="what"
          >${{ done: ROWS.cold, late: ROWS.late }[String(one.record.chill.is)] ?? (until ? CHILL.by(nearTime(until, now)) : ROWS.unseen)}</span
        >
      </li>`;
    })}
  </ul>`;
}
