/** Today: what is due over all batches, what is under way, and the doors to everything else. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { problemStrip } from '../widgets/answer.js';
import { calendarButton } from '../widgets/calendar.js';
import { miniPunch } from '../widgets/batch-head.js';
import { icon, tagMark } from '../widgets/icon.js';
import { jobRow } from '../widgets/job-row.js';
import { Ticker } from '../widgets/tick.js';
import { week } from '../widgets/week.js';
import { count } from '../words/names.js';
import { clock, longDay } from '../words/time.js';

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
      <div class="clock">
        <h1 tabindex="-1">${longDay(app.now())}</h1>
        <span class="num">${clock(app.now())}</span>
      </div>
      ${problems ? problemStrip(app, problems) : nothing} ${empty ? welcome(app) : nothing}
      ${
        shown.length
          ? html`<ol class="days" aria-label="What comes next">
                ${rows}
              </ol>
              ${
                jobs.length > shown.length
                  ? html`<button type="button" class="btn quiet wide gap" @click=${showAll}>
                      Show all ${jobs.length} jobs
                    </button>`
                  : nothing
              }`
          : nothing
      }
      ${
        empty
          ? nothing
          : html`${list('Under way', false)} ${list('Finished, to put away', true)}
              <div class="block"><a class="btn main wide" href="#/start">Start a batch</a></div>`
      }
      ${calendarButton(app, open, 'all')}
    </div>`;

    const plate = html`<div class="plate">
      <div class="wide-only">${empty ? wayOfWork() : week(states, app.shelf.batches, app.now())}</div>
      ${doors(app)}
    </div>`;
    return { title: 'Today', view: [leaf, plate] };
  }

  return { draw };
}

/** @param {App} app @param {State} state */
function alarm(app, { batch: id, says }) {
  const batch = app.shelf.batches.get(id);
  return html`<a class="alarm" href="#/batch/${id}/weigh"
    ><span class="mark">${icon('s-stop', '')}</span
    ><span class="text"><b>${batch?.name} is held</b>${says}. Read what to do.</span>${icon('s-go')}</a
  >`;
}

/** @param {App} app @param {State} state */
function underWay(app, state) {
  const batch = app.shelf.batches.get(state.batch);
  if (!batch) return nothing;
  return html`<li>
    <a class="batch" href="#/batch/${state.batch}/${state.stage}"
      >${tagMark(batch.tag)}<b>${batch.name}</b
      ><span class="p"
        >${
          state.held
            ? html`<span class="flag stop">${icon('s-stop', '')}${state.says}</span>`
            : html`${miniPunch(state)}<span>${state.says}</span>`
        }</span
      ></a
    >
  </li>`;
}

/** Begins the batch to walk through. @param {App} app */
export async function demo(app) {
  const id = newId();
  const batch = { ...app.starters.demo, tag: app.shelf.freeTag(app.starters.demo.tag) };
  const kept = await app.act(() => app.shelf.store.put(`batch/${id}`, batch), {
    says: `Batch ${batch.tag} is begun.`,
    back: () => app.shelf.store.remove(`batch/${id}`),
  });
  if (kept) app.go(`#/batch/${id}/pieces`);
}

/** @param {App} app */
function welcome(app) {
  return html`<p class="opening">
      Weigh the meat, and this card says what cure and salt to weigh for exactly that, whether the dose is in range, and
      what to do next and when.
    </p>
    <p class="small near">It works with no signal, and keeps everything in this browser. Nothing is sent anywhere.</p>
    <div class="block"><a class="btn main wide" href="#/start">Start a batch</a></div>
    <div class="gap">
      <button type="button" class="btn wide" @click=${() => demo(app)}>Try the demo batch</button>
    </div>`;
}

/** What a wide screen shows before there is a week to draw. */
function wayOfWork() {
  return html`<h2>One batch, five holes to punch</h2>
    <ol class="steps">
      <li>
        <span><b>Pieces</b>Say what is on the board: how many, how heavy, how thick.</span>
      </li>
      <li>
        <span><b>Weigh</b>Zero the scale once. Add each thing until the scale shows what the card shows.</span>
      </li>
      <li>
        <span><b>Cure</b>Turn and rinse when the clock says so.</span>
      </li>
      <li>
        <span><b>Fire</b>Dry, smoke, cook.</span>
      </li>
      <li>
        <span><b>Pack</b>Chill, pack, label, and hand the recipe on.</span>
      </li>
    </ol>`;
}

/** @param {App} app */
function doors(app) {
  const away = app.shelf.awayCount;
  return html`<nav aria-label="Other jobs">
    <h2 class="block">When in doubt</h2>
    <div class="doors">
      ${door('#/cards', 'Something went wrong', 'It froze, it got warm, the fire went out, the dose was wrong')}
      ${door('#/dose', 'Check a dose', 'Cure already on the meat? See where it lands.')}
    </div>
    <h2 class="block">Beforehand</h2>
    <div class="doors">
      ${door('#/bag', 'Plan the bag', 'What a day’s birds or an animal will give, and what to buy')}
      ${door('#/plan', 'Plan back', 'Ready by a day: when to begin, beside your sleep')}
      ${door('#/recipes', 'Recipes', `${count(app.shelf.recipes.size, 'card')}, to open, write and hand on`)}
      ${door('#/read', 'Read a recipe', 'Spoons and cups from a friend, as grams with a verdict')}
    </div>
    <h2 class="block">At the bench</h2>
    <div class="doors">
      ${door('#/brine', 'The brine bench', 'Water, strength, salt and cure for a bucket or a bag')}
      ${door('#/spoons', 'Spoon and scale', 'Weigh your own spoons once, check the scale, make a premix')}
    </div>
    <h2 class="block">In the house</h2>
    <div class="doors">
      ${door('#/stock', 'Stock', 'Cure and salt in the house, the freezer, who got what')}
      ${app.shelf.size ? door('#/past', 'All batches', 'Search, side by side, what to change next time') : nothing}
      ${away ? door('#/away', 'Put away', `${count(away, 'batch', 'batches')} finished or thrown out`) : nothing}
      ${door('#/help', 'Help', 'The whole job, the words of the trade, the sources')}
      ${door('#/keep', 'Keep and settings', 'Units, scale, the file with everything in it')}
    </div>
  </nav>`;
}

/** @param {string} href @param {string} head @param {string} says */
function door(href, head, says) {
  return html`<a href=${href}
    ><span><b>${head}</b><span class="small">${says}</span></span
    >${icon('s-go')}</a
  >`;
}
