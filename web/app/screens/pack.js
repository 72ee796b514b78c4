/** Pack: chill first, by its own clock; what is weighed and labelled waits until it reads cold. */
import { html, nothing } from 'lit-html';
import { problemStrip } from '../widgets/answer.js';
import { batchHead, batchNote } from '../widgets/batch-head.js';
import { calendarButton } from '../widgets/calendar.js';
import { chillAfter, chillAnswer, chillRows, chilling } from '../widgets/chill.js';
import { door, doors } from '../widgets/doors.js';
import { forbidden } from '../widgets/doubts.js';
import { fireChart } from '../widgets/fire-chart.js';
import { FireLog } from '../widgets/fire-log.js';
import { doubts, readings } from '../widgets/fire-readings.js';
import { chillWays, published } from '../widgets/fire-worth.js';
import { outcome } from '../widgets/outcome.js';
import { pinned } from '../widgets/pinned.js';
import { StageJobs } from '../widgets/stage-jobs.js';
import { stageAction, stageAnswer } from '../widgets/stage-view.js';
import { Ticker } from '../widgets/tick.js';
import { cautionLine } from '../widgets/verdict.js';
import { why } from '../widgets/why.js';
import { FIRE_CAUTIONS } from '../../words/en/fire.js';
import { glue } from '../../words/glue.js';
import { jobHead } from '../../words/en/jobs.js';
import { watch } from './fire.js';
import { NEXT } from '../../words/en/batches.js';
import { DOORS, END, HEAD, beforeThat, title } from '../../words/en/packing.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').FireSheet} FireSheet */
/** @typedef {import('../widgets/stage-jobs.js').Seen} Seen */

/** All of it is out and was read cold. @param {FireSheet} sheet */
const readCold = ({ classes }) => classes.every(({ pulled, record }) => pulled !== null && record.chill.is === 'done');

/**
 * What reads cold is weighed and labelled now: the hour was for what nobody had read yet.
 * @param {Seen} seen @returns {Seen}
 */
function packable(seen) {
  /** @template {import('../types').Job | undefined} J @param {J} job @returns {J} */
  const now = (job) =>
    job?.does.is === 'step' && job.does.step.do === 'pack' ? { ...job, early: null, due: null } : job;
  return { ...seen, jobs: seen.jobs.map(now), here: now(seen.here), hand: now(seen.hand) };
}

/** @param {import('../app.js').App} app @param {string} id @returns {import('../app.js').Screen} */
export function pack(app, id) {
  const ticker = new Ticker(app);
  const jobs = new StageJobs(app, id, 'pack', ticker);
  const log = new FireLog(app, id);
  const after = outcome(app, id);

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const seen = jobs.look(batch);
    const { ok, problems } = batch.fire ? log.ask(batch) : { ok: undefined, problems: undefined };
    const wrong = problems ?? seen.problems;
    // Out of the fire: from there on the chill is read.
    const out = ok?.classes.some(({ pulled }) => pulled !== null) ? ok : undefined;
    return {
      title: title(batch.name),
      ...batchHead(app, id, batch, seen.state, 'pack'),
      view: [
        html`<h2 class="vh">${HEAD}</h2>`,
        wrong
          ? html`<div class="leaf answer">${problemStrip(app, wrong)}</div>`
          : out
            ? fromFire(batch, out, seen)
            : plain(batch, seen),
      ],
    };
  }

  /** Nothing was read over a fire. @param {Batch} batch @param {Seen} seen */
  function plain(batch, seen) {
    return html`<div class="leaf answer">${jobAnswer(batch, seen)}</div>
      <div class="plate rest">
        ${seen.jobs.length ? jobs.rows(batch, seen) : jobs.toRead(batch, seen)}
        ${why('pack', html`${batchNote(batch, seen.state)} ${jobs.cautions(seen)} ${calendarButton(app, [[id, batch]], 'one')}`)}
        ${after(batch)} ${elsewhere(batch)}
      </div>`;
  }

  /** @param {Batch} batch @param {FireSheet} sheet @param {Seen} looked */
  function fromFire(batch, sheet, looked) {
    const seen = readCold(sheet) ? packable(looked) : looked;
    const now = app.now();
    const all = seen.state?.doubts ?? [];
    const [first] = chilling(sheet);
    const warm = first !== undefined;
    const { pad } = log;
    // What is typed is logged before anything else is done.
    const reads = warm || pad.begun;
    const pin = reads && !forbidden(all) && stageAction(id, all, 'pack', () => 'log') === 'log';
    return html`<div class="leaf answer">
        ${pad.notLogged} ${pad.correcting ? nothing : doubts(batch, sheet, log.acts)}
        ${warm ? stageAnswer(batch, all, () => chillAnswer(sheet, now)) : jobAnswer(batch, seen, pin ? () => nothing : pinned)}
        ${warm && !pin ? stageAction(id, all, 'pack', () => nothing) : nothing}
        ${pad.which(sheet, batch.pieces, first?.place)}
      </div>
      <div class="leaf act">${pad.keys(sheet, { pin, steps: true, alone: warm || forbidden(all) })}</div>
      <div class="plate rest">
        ${chillAfter(sheet)} ${chillRows(sheet, now)} ${jobs.rows(batch, seen)}
        ${why(
          'pack',
          html`${batchNote(batch, seen.state)} ${jobs.cautions(seen)} ${fireChart(sheet, now, app.settings.units)}
          ${sheet.classes.map((one, place) => chillWays(one, place, now))} ${published(sheet, true)}
          ${sheet.cautions.map((key) => html`<p class="caution gap">${glue(FIRE_CAUTIONS[key])}</p>`)}
          ${calendarButton(app, [[id, batch]], 'one')}`,
        )}
        ${readings(batch, sheet, now, log.acts)} ${warm ? nothing : log.after.draw(batch, sheet)} ${after(batch)}
        ${elsewhere(batch)}
      </div>`;
  }

  /**
   * The job in hand, or what is left once all is ticked.
   * @param {Batch} batch @param {Seen} seen @param {(action: unknown) => unknown} [pin] where its action stands
   */
  function jobAnswer(batch, seen, pin = pinned) {
    const { state, here, hand, held } = seen;
    if (state?.finished && !batch.closed) return finish(batch, pin);
    const all = state?.doubts ?? [];
    if (here) {
      return html`${stageAnswer(batch, all, () => jobs.answer(batch, here))}
      ${stageAction(id, all, 'pack', () => (held ? nothing : pin(jobs.done(batch, here))))}
      ${cautionLine(here.cautions)}`;
    }
    const [first] = seen.jobs.filter(({ ticked }) => ticked === null);
    const comes = () =>
      first && hand
        ? html`<p class="small">${beforeThat(jobHead(hand, { app, batch }))}</p>
            ${jobs.answer(batch, first)}`
        : jobs.none(seen);
    return html`${stageAnswer(batch, all, comes)}
    ${stageAction(id, all, 'pack', () => (hand ? pin(jobs.goTo(hand.stage)) : nothing))}`;
  }

  /** @param {Batch} batch @param {(action: unknown) => unknown} pin */
  function finish(batch, pin) {
    const set = () => app.shelf.changeBatch(id, (one) => ({ ...one, closed: true }));
    const putAway = async () => {
      const kept = await app.act(set, { says: END.isAway(batch.name) });
      if (kept) app.go('#/today');
    };
    const packed = [...app.shelf.stock.values()].some((one) => one.batch === id);
    const away = html`<button
      type="button"
      class="btn ${packed ? 'main' : 'quiet'} ${packed ? '' : 'wide'} ${packed ? '' : 'gap'}"
      @click=${putAway}
    >
      ${END.away}
    </button>`;
    return html`<p class="say">${END.ticked}</p>
      ${
        packed
          ? pin(away)
          : html`${pin(html`<a class="btn main" href="#/batch/${id}/labels">${END.label}</a>`)} ${away}`
      }`;
  }

  /** @param {Batch} batch */
  function elsewhere(batch) {
    const same = app.shelf.cards().find(([, recipe]) => recipe.name === batch.recipe.name);
    return doors(
      NEXT,
      html`${door(`#/batch/${id}/labels`, DOORS.labels)} ${same ? door(`#/recipe/${same[0]}`, DOORS.send) : nothing}`,
    );
  }

  return { draw, ...watch(app, (event) => log.pad.typed(event)) };
}
