/** Cure, Fire and Pack: the jobs of one stage with their clock times. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { stayAwake } from '../widgets/awake.js';
import { batchHead, running } from '../widgets/batch-head.js';
import { calendarButton } from '../widgets/calendar.js';
import { cardSteps } from '../widgets/card.js';
import { CureStage } from '../widgets/cure-stage.js';
import { FireLog } from '../widgets/fire-log.js';
import { icon } from '../widgets/icon.js';
import { outcome } from '../widgets/outcome.js';
import { Ticker, boxId, onceOnly } from '../widgets/tick.js';
import { strip } from '../widgets/verdict.js';
import { week } from '../widgets/week.js';
import { windowTable } from '../widgets/windows.js';
import { glue } from '../words/glue.js';
import { STAGES } from '../words/names.js';
import { dayTime } from '../words/time.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Job} Job */
/** @typedef {import('../types').Stage} Stage */
/** @typedef {import('../types').State} State */

/** @type {Partial<Record<Stage, string>>} */
const LEADS = {
  cure: 'Cold, turned, and left until the clock says so.',
  fire: 'Dry first, then smoke and heat.',
  pack: 'Chill fast, then pack and label.',
};

/** Where the steps belong, for a batch that has no jobs yet. @param {import('../types').Do} act */
const stageOf = (act) =>
  ['cure', 'rinse', 'soak'].includes(act) ? 'cure' : ['chill', 'pack'].includes(act) ? 'pack' : 'fire';

/** @param {App} app @param {string} id @param {Stage} stage @returns {import('../app.js').Screen} */
export function stage(app, id, stage) {
  const ticker = new Ticker(app);
  const cure = stage === 'cure' ? new CureStage(app, id) : null;
  const log = stage === 'fire' || stage === 'pack' ? new FireLog(app, id, ticker, stage) : null;

  // Where readings were logged before, the pad is what the hand reaches for; it keeps its place while one stays here.
  const busy = app.shelf.batches.get(id)?.fire?.readings.length;
  const after = outcome(app, id);

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const { ok, problems } = ask('next', { batches: [{ id, batch }], now: app.now(), settings: app.settings });
    const state = ok?.batches[0] ?? null;
    const jobs = state?.jobs.filter((job) => job.stage === stage) ?? [];
    const hand = state?.jobs.find(({ ticked, passed }) => ticked === null && !passed);
    const runs = running(state);
    const over = jobs.every(({ ticked, passed }) => ticked !== null || passed);
    // Before the meat is in the cure there is nothing to log, unless something was logged already.
    const lit = batch.fire !== undefined || (state && !['pieces', 'weigh'].includes(state.stage) && !state.held);
    const leaf = html`<div class="leaf">
      ${batchHead(id, batch, state, stage)} ${lit && log && busy ? log.leaf(batch) : nothing}
      <section class="sec">
        <h2>${STAGES[stage]}</h2>
        ${problems ? html`<div class="gap">${problemStrip(app, problems)}</div>` : nothing}
        ${state ? before(state) : nothing}
        ${
          jobs.length
            ? html`<p class="lead">${LEADS[stage]}</p>
                <ol class="tally">
                  ${jobs.map((job) => line(batch, job, job === hand && !state?.held, state?.held ?? false, job === runs))}
                </ol>`
            : state
              ? toRead(batch, state)
              : nothing
        }
      </section>
      ${
        over && jobs.length && hand && hand.stage !== stage
          ? html`<div class="block noprint">
              <a class="btn wide main" href="#/batch/${id}/${hand.stage}"
                >Go to ${hand.stage === 'fire' ? 'the fire' : hand.stage}</a
              >
            </div>`
          : nothing
      }
      ${lit && log && !busy ? log.leaf(batch) : nothing} ${state && !state.held ? cure?.leaf(batch) : nothing}
      ${state?.finished && !batch.closed ? finish(batch) : nothing}
      ${stage === 'pack' ? [after(batch), handOn(batch)] : nothing} ${calendarButton(app, [[id, batch]], 'one')}
    </div>`;
    const seen = lit && log ? log.plate(batch) : state && !state.held && cure ? cure.plate(batch) : nothing;
    const plate = html`<div class="plate ${seen === nothing ? 'wide-only' : ''}">
      ${seen}
      <div class="stick wide-only noprint block">${state ? week([state], app.shelf.batches, app.now()) : nothing}</div>
    </div>`;
    return { title: `${STAGES[stage]}, ${batch.name}`, back: { href: '#/today', text: 'Today' }, view: [leaf, plate] };
  }

  /** The steps of the recipe, where there is no job yet. @param {Batch} batch @param {State} state */
  function toRead({ recipe }, state) {
    const steps = ask('card', { recipe, settings: app.settings }).ok?.steps;
    const own = steps?.filter((_, at) => stageOf(recipe.steps[at]?.do ?? 'rest') === stage) ?? [];
    if (own.length === 0) return html`<p class="lead">This recipe has nothing to do in this stage.</p>`;
    return html`<p class="lead">
        ${state.held ? 'Nothing goes on until the dose is in order. Then:' : 'To read, until the meat is in the cure:'}
      </p>
      ${cardSteps(own)}`;
  }

  /** @param {State} state */
  function before(state) {
    if (state.held) {
      return html`<a class="alarm gap" href="#/batch/${id}/weigh"
        ><span class="mark">${icon('s-stop', '')}</span
        ><span class="text"><b>${state.says}</b>Read what to do.</span>${icon('s-go')}</a
      >`;
    }
    if (state.stage !== 'pieces' && state.stage !== 'weigh') return nothing;
    return html`<div class="gap">
      ${strip(
        'ask',
        'No clock yet',
        'The times begin when the meat is in the cure.',
        html`<div class="acts">
          <a class="btn less" href="#/batch/${id}/${state.stage}">Go to ${STAGES[state.stage]}</a>
        </div>`,
      )}
    </div>`;
  }

  /** @param {Batch} batch @param {Job} job @param {boolean} now @param {boolean} held @param {boolean} runs */
  function line(batch, job, now, held, runs) {
    const own = batch.ticks.some((tick) => tick.of === job.id);
    // The first step begins with the last tick of the weigh-out, so there is nothing to tick.
    const given = job.ticked !== null && !own;
    return html`<li class="line ${runs ? 'begun' : job.ticked !== null ? 'done' : now ? 'now' : ''}">
      ${
        given
          ? html`<span class="box given">${icon('s-tick', '')}</span>
              <div class="nm"><b>${job.head}</b><span class="stamp">${dayTime(job.ticked ?? 0, app.now())}</span></div>`
          : html`${ticker.box({ id, batch, mark: { of: job.id }, label: job.head, disabled: held, early: job.early })}
              <div class="nm"><label for=${boxId(id, job.id)}>${job.head}</label>${ticker.stamp(batch, job.id)}</div>`
      }
      ${
        runs
          ? html`<p class="text">
              Begun ${dayTime(Number(job.ticked), app.now())}, ends
              <b class="nowrap">${dayTime(Number(job.ends), app.now())}</b>
            </p>`
          : nothing
      }
      ${
        job.passed
          ? html`<p class="flag care">${icon('s-care', '')}<span>Passed over: a later step is ticked.</span></p>`
          : nothing
      }
      ${
        job.ticked === null && !job.passed && job.due !== null
          ? html`<p class="text">
              <b class="nowrap">${dayTime(job.due, app.now())}</b>${
                job.ends !== null && job.ends !== job.due
                  ? html`, ends <b class="nowrap">${dayTime(job.ends, app.now())}</b>`
                  : nothing
              }${job.now ? html` <span class="flag now">due</span>` : nothing}
            </p>`
          : nothing
      }
      ${job.text ? html`<p class="text">${glue(job.text)}</p>` : nothing} ${windowTable(job.windows, app.now())}
      ${job.caution ? html`<p class="caution">${glue(job.caution)}</p>` : nothing}
      ${ticker.wayBack(id, batch, job.id, job.head)} ${ticker.ahead(id, job)}
      ${
        now && !ticker.asks(id, job.id)
          ? html`<button
              type="button"
              class="btn main"
              @click=${(/** @type {MouseEvent} */ e) => onceOnly(e) && ticker.turn(id, batch, { of: job.id }, { early: job.early })}
            >
              ${job.ends === null ? 'Done just now' : 'Begun just now'}<span class="vh">: ${job.head}</span>
            </button>`
          : nothing
      }
    </li>`;
  }

  /** @param {Batch} batch */
  function finish(batch) {
    const set = (/** @type {boolean} */ closed) => app.shelf.changeBatch(id, (one) => ({ ...one, closed }));
    const putAway = async () => {
      const kept = await app.act(() => set(true), { says: `${batch.name} is put away.`, back: () => set(false) });
      if (kept) app.go('#/today');
    };
    const packed = [...app.shelf.stock.values()].some((one) => one.batch === id);
    return html`<div class="block">
      <p>Every step is ticked.</p>
      ${
        packed
          ? nothing
          : html`<a class="btn main wide near" href="#/batch/${id}/labels">Label the packs and put them on the list</a>`
      }
      <button type="button" class="btn ${packed ? 'main' : 'quiet'} wide near" @click=${putAway}>
        Put the batch away
      </button>
    </div>`;
  }

  /** @param {Batch} batch */
  function handOn(batch) {
    const same = app.shelf.cards().find(([, recipe]) => recipe.name === batch.recipe.name);
    return html`<nav class="doors block noprint" aria-label="Next">
      <a href="#/batch/${id}/labels"
        ><span><b>Labels and tags</b><span class="small">For the bag, the packs and what you give.</span></span
        >${icon('s-go')}</a
      >
      ${
        same
          ? html`<a href="#/recipe/${same[0]}"
              ><span><b>Hand on this recipe</b><span class="small">As a link or on paper.</span></span
              >${icon('s-go')}</a
            >`
          : nothing
      }
    </nav>`;
  }

  if (!log) return { draw };
  let timer = 0;
  let sleep = () => {};
  return {
    draw,
    arrive() {
      sleep = stayAwake();
      // The clock on the pad and the windows go on while nobody touches it.
      timer = setInterval(() => app.draw(), 30_000);
    },
    leave() {
      clearInterval(timer);
      sleep();
    },
  };
}
