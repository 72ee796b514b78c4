/** The plan as a picture: a lane for each batch, a bar for each task by its place, and the hours of rest behind them. */
import { html, nothing, svg } from 'lit-html';
import { dayTime, midnight, weekDay } from '../../words/time.js';
import { LANES } from '../../words/en/batches.js';

/** @typedef {import('../types').BackBatch} BackBatch */

const LANE = 74;
const TOP = 40;
const HOUR_MS = 3_600_000;
/** Looks of the places, by their number. */
const LOOKS = ['cold', 'fire', 'rack'];

/**
 * @param {BackBatch[]} plans
 * @param {string[]} places
 * @param {Map<string, import('../types').Batch>} batches
 * @param {{ rests: import('../types').Rest[], readyBy: number, now: number }} when
 */
export function timeline(plans, places, batches, { rests, readyBy, now }) {
  const last = Math.max(readyBy, ...plans.map(({ steps }) => steps.at(-1)?.at ?? 0));
  const [begin, end] = [midnight(now), last + 6 * HOUR_MS];
  const share = (/** @type {number} */ ms) => (100 * (Math.min(Math.max(ms, begin), end) - begin)) / (end - begin);
  const x = (/** @type {number} */ ms) => `${share(ms)}%`;
  const width = (/** @type {number} */ from, /** @type {number} */ to) => `${Math.max(0, share(to) - share(from))}%`;
  const height = TOP + plans.length * LANE;
  const days = dayStarts(begin, end);
  // As many day names as there is room for on a phone.
  const every = Math.ceil(days.length / 6);
  return html`<figure class="gap">
    <svg
      class="week timeline"
      height=${height}
      role="img"
      aria-label=${LANES.says(plans.length, dayTime(readyBy, now))}
    >
      ${rests
        .filter(({ from, to }) => to > begin && from < end)
        .map(
          ({ from, to }) =>
            svg`<rect class="rest" x=${x(from)} width=${width(from, to)} y="28" height=${height - 28}/>`,
        )}
      ${days.map(
        (day, n) => svg`<line class="day-line" x1=${x(day)} x2=${x(day)} y1="28" y2=${height}/>
          ${n % every === 0 && share(day) < 88 ? svg`<text class="q" x=${x(day)} dx="4" y="18">${weekDay(day)}</text>` : nothing}`,
      )}
      <line class="head-line" x1="0" x2="100%" y1="28" y2="28" />
      ${plans.map(({ batch, steps }, n) => {
        const y = TOP + n * LANE;
        const bars = steps.filter(({ place, ends, at }) => place !== null && ends > at);
        return svg`<text class="name" x="4" y=${y + 18}>${batches.get(batch)?.tag}</text>
          ${bars.map(({ at, ends, place }) => svg`<rect class=${LOOKS[place ?? 0] ?? ''} x=${x(at)} width=${width(at, ends)} y=${y + 26} height="28"/>`)}
          <line class="foot" x1="0" x2="100%" y1=${y + 54} y2=${y + 54}/>`;
      })}
      <line class="mark" x1=${x(readyBy)} x2=${x(readyBy)} y1="28" y2=${height} />
      <line class="now" x1=${x(now)} x2=${x(now)} y1="28" y2=${height} />
      <svg x=${x(now)} y="22" overflow="visible"><path class="now-head" d="M-7 0h14l-7 10z" /></svg>
    </svg>
    <figcaption class="legend timeline">
      ${places.map(
        (name, n) =>
          html`<span
            ><svg width="30" height="18" aria-hidden="true">
              <rect class=${LOOKS[n] ?? ''} x="1" y="1" width="28" height="16" /></svg
            >${name}</span
          >`,
      )}
      <span
        ><svg width="30" height="18" aria-hidden="true"><rect class="rest" width="30" height="18" /></svg
        >${LANES.rest}</span
      >
      <span
        ><svg width="12" height="20" aria-hidden="true"><path class="mark" d="M6 0v20" /></svg>${LANES.readyBy}</span
      >
    </figcaption>
  </figure>`;
}

/** @param {number} begin @param {number} end */
function dayStarts(begin, end) {
  const days = [];
  for (let day = begin; day < end;) {
    days.push(day);
    const next = new Date(day);
    day = next.setDate(next.getDate() + 1);
  }
  return days;
}
