/** Batches: what is due over all of them, what is under way, and where the others lie. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { problemStrip } from '../widgets/answer.js';
import { calendarButton } from '../widgets/calendar.js';
import { miniPunch } from '../widgets/batch-head.js';
import { door } from '../widgets/doors.js';
import { icon, tagMark } from '../widgets/icon.js';
import { jobRow } from '../widgets/job-row.js';
import { Ticker } from '../widgets/tick.js';
import { week } from '../widgets/week.js';
import { pieceName } from '../../words/en/cuts.js';
import { heldWords } from '../../words/en/doubts.js';
import { whereWords } from '../../words/en/jobs.js';
import { clock, longDay } from '../../words/time.js';
import { BATCHES, DUE, OTHERS, START, held } from '../../words/en/batches.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').State} State */

/** So many jobs fit a hand's width of screen; the rest is a touch away. */
const FIRST_JOBS = 6;

/** @param {App} app @returns {import('../app.js').Screen} */
export function today(app) {
  const ticker = new Ticker(app);
  let all = false;

  const showAll = () => {
    all = true;
    app.draw();
  };

  function draw() {
    const open = app.shelf.open();
    const { ok, problems } = ask('next', {
      batches: open.map(([id, batch]) => ({ id, batch })),
      now: app.now(),
      settings: app.settings,
    });
    const jobs = ok?.jobs ?? [];
    const states = ok?.batches ?? [];
    const nearest = new Set();
    const shown = all ? jobs : jobs.slice(0, FIRST_JOBS);
    const rows = shown.map((job, at) => {
      const batch = app.shelf.batches.get(job.batch);
      const first = !nearest.has(job.batch);
      nearest.add(job.batch);
      return batch ? jobRow({ app, ticker, job, batch, tickable: job.now || first, first: at === 0 }) : nothing;
    });
    const empty = open.length === 0;
    const list = (/** @type {string} */ head, /** @type {boolean} */ over) => {
      const some = states.filter(({ finished }) => finished === over);
      return some.length
        ? html`<section class="block">
            <h2>${head}</h2>
            <ul class="days gap">
              ${some.map((state) => underWay(app, state))}
            </ul>
          </section>`
        : nothing;
    };

    const leaf = html`<div class="leaf">
      ${states.filter(({ held }) => held).map((state) => alarm(app, state))}
      <p class="small">${longDay(app.now())}, ${clock(app.now())}</p>
      ${problems ? problemStrip(app, problems) : nothing}
      ${
        empty
          ? html`<p class="near">${DUE.none}</p>
              <div class="gap"><a class="btn main wide" href="#/how-much">${DUE.howMuch}</a></div>`
          : nothing
      }
      ${
        shown.length
          ? html`<h2>${DUE.head}</h2>
              <ol class="days" aria-label=${DUE.list}>
                ${rows}
              </ol>
              ${
                jobs.length > shown.length
                  ? html`<button type="button" class="btn quiet wide gap" @click=${showAll}>
                      ${DUE.showAll(jobs.length)}
                    </button>`
                  : nothing
              }`
          : nothing
      }
      ${list(DUE.underWay, false)} ${list(DUE.finished, true)} ${elsewhere(app)} ${calendarButton(app, open, 'all')}
    </div>`;
    const plate = html`<div class="plate wide-only">${week(app, states)}</div>`;
    return { title: BATCHES, name: BATCHES, one: empty, view: empty ? leaf : [leaf, plate] };
  }

  return { draw };
}

/** @param {App} app @param {State} state */
function alarm(app, { batch: id, doubts, stage }) {
  const batch = app.shelf.batches.get(id);
  if (!batch) return nothing;
  return html`<a class="alarm" href="#/batch/${id}/${stage}"
    ><span class="mark">${icon('s-stop', '')}</span
    ><span class="text">${held(batch.name, heldWords(doubts, batch, pieceName))}</span>${icon('s-go')}</a
  >`;
}

/** @param {App} app @param {State} state */
function underWay(app, state) {
  const batch = app.shelf.batches.get(state.batch);
  if (!batch) return nothing;
  // What forbids nothing yet is on the list too, or it is seen only by who opens the batch.
  const told = heldWords(state.doubts, batch, pieceName);
  return html`<li>
    <a class="batch" href="#/batch/${state.batch}/${state.stage}"
      >${tagMark(batch.tag)}<b>${batch.name}</b
      ><span class="p"
        >${
          state.held
            ? html`<span class="flag stop">${icon('s-stop', '')}${told}</span>`
            : html`${miniPunch(state)}<span>${whereWords(state)}</span>${
                told ? html`<span class="flag care">${icon('s-care', '')}${told}</span>` : nothing
              }`
        }</span
      ></a
    >
  </li>`;
}

/** Begins the batch to walk through. @param {App} app */
export async function demo(app) {
  const id = newId();
  const batch = { ...app.starters.demo, tag: app.shelf.freeTag(app.starters.demo.tag) };
  const kept = await app.act(() => app.shelf.add(`batch/${id}`, batch), {
    says: START.started(batch.tag),
  });
  if (kept) app.go(`#/batch/${id}/pieces`);
}

/** @param {App} app */
function elsewhere(app) {
  const away = app.shelf.awayCount;
  return html`<nav class="doors slim block" aria-label=${OTHERS.list}>
    ${door('#/stock', OTHERS.stock, OTHERS.stockSays)}
    ${app.shelf.size ? door('#/past', OTHERS.all, OTHERS.allSays) : nothing}
    ${away ? door('#/away', OTHERS.away, OTHERS.awaySays(away)) : nothing} ${door('#/start', OTHERS.start)}
  </nav>`;
}
