/** The week ahead by batch: a wedge for what becomes ready, a mark for each job with a clock time. */
import { html, nothing, svg } from 'lit-html';
import { jobHead, whereWords } from '../../words/en/jobs.js';
import { dayTime, midnight, weekDay } from '../../words/time.js';
import { WEEK } from '../../words/en/batches.js';

/** @typedef {import('../types').State} State */
/** @typedef {import('../types').Batch} Batch */

const DAYS = 7;
const LANE = 118;
const TOP = 40;

/** @param {import('../app.js').App} app @param {State[]} states */
export function week(app, states) {
  const now = app.now();
  const begin = midnight(now);
  const day = (/** @type {number} */ n) => new Date(begin).setDate(new Date(begin).getDate() + n);
  const end = day(DAYS);
  const at = (/** @type {number} */ ms) => `${(100 * (clamp(ms, begin, end) - begin)) / (end - begin)}%`;
  const lanes = states.slice(0, 6);
  const height = TOP + lanes.length * LANE;
  return html`<h2>${WEEK.head}</h2>
    <figure class="gap">
      <svg class="week" height=${height} role="img" aria-label=${WEEK.says}>
        ${Array.from(
          { length: DAYS },
          (_, n) => svg`<line class="day-line" x1=${at(day(n))} x2=${at(day(n))} y1="28" y2=${height}/>
            <text class=${n === 0 ? 'b' : 'q'} x=${at(day(n))} dx="6" y="18">${weekDay(day(n))}</text>`,
        )}
        <line class="head-line" x1="0" x2="100%" y1="28" y2="28" />
        ${lanes.map((state, n) => lane(app, state, app.shelf.batches.get(state.batch), TOP + n * LANE, { at, begin, end, now }))}
        <svg x=${at(now)} y="22" overflow="visible"><path class="now-head" d="M-7 0h14l-7 10z" /></svg>
      </svg>
      <figcaption class="legend">
        <span
          ><svg width="44" height="18" aria-hidden="true"><path class="fill" d="M0 18L28 2H44V18z" /></svg
          >${WEEK.full}</span
        >
        <span
          ><svg width="12" height="20" aria-hidden="true"><path class="mark" d="M6 0v20" /></svg>${WEEK.mark}</span
        >
      </figcaption>
    </figure>`;
}

/**
 * @param {import('../app.js').App} app
 * @param {State} state
 * @param {Batch | undefined} batch
 * @param {number} y
 * @param {{ at: (ms: number) => string, begin: number, end: number, now: number }} scale
 */
function lane(app, state, batch, y, { at, begin, end, now }) {
  if (!batch) return nothing;
  const base = y + 68;
  const own = state.jobs;
  // What was begun early or late runs from its tick, and ends where the next step was begun or the batch finished.
  const long = own
    .map((job, n) => ({
      from: Number(job.ticked ?? job.due),
      to: Math.min(
        Number(job.ends),
        ...own.slice(n + 1).map(({ id, ticked }) => (ticked === null || id.startsWith('turn') ? Infinity : ticked)),
      ),
    }))
    .filter(({ from, to }) => to > Math.max(from, begin) && from < end);
  const marks = own.filter(
    ({ due, ticked, passed }) => ticked === null && !passed && Number(due) >= begin && Number(due) < end,
  );
  const next = marks[0];
  return svg`<text class="name" x="6" y=${y + 22}>${batch.tag}<tspan class="q" font-weight="400" dx="8">${batch.name}</tspan></text>
    ${
      state.held
        ? svg`<rect x="0" y=${y + 34} width="100%" height="34" fill="url(#hatch-held)"/>
            <text class="b held" x="8" y=${y + 92}>${WEEK.held}</text>`
        : svg`<rect class="lane" x="0" y=${y + 34} width="100%" height="34"/>
            ${long.map(({ from, to }) => wedge(parseFloat(at(from)), parseFloat(at(to)), y + 34))}
            <line class="foot" x1="0" x2="100%" y1=${base} y2=${base}/>
            ${marks.map(
              ({
                due,
              }) => svg`<line class="mark-halo" x1=${at(Number(due))} x2=${at(Number(due))} y1=${y + 28} y2=${base + 6}/>
              <line class="mark" x1=${at(Number(due))} x2=${at(Number(due))} y1=${y + 28} y2=${base + 6}/>`,
            )}
            <line class="now" x1=${at(now)} x2=${at(now)} y1=${y + 28} y2=${base + 6}/>
            ${next ? svg`<text class="b" x=${at(Number(next.due))} y=${base + 24} text-anchor=${anchorOf(Number(next.due), begin, end)}>${WEEK.job(jobHead(next, { app, batch }), dayTime(Number(next.due), now))}</text>` : svg`<text class="q" x="6" y=${base + 24}>${whereWords(state)}</text>`}`
    }`;
}

/** @param {number} from @param {number} to in per cent @param {number} y */
function wedge(from, to, y) {
  // Stretched in width only; it holds no text and no line whose thickness matters.
  return svg`<svg x="${from}%" y=${y} width="${to - from}%" height="34" viewBox="0 0 100 34" preserveAspectRatio="none"><path class="fill" d="M0 34L100 0V34z"/></svg>`;
}

/** @param {number} ms @param {number} begin @param {number} end */
function anchorOf(ms, begin, end) {
  const share = (ms - begin) / (end - begin);
  return share < 0.35 ? 'start' : share > 0.65 ? 'end' : 'middle';
}

/** @param {number} n @param {number} least @param {number} most */
function clamp(n, least, most) {
  return Math.min(Math.max(n, least), most);
}
