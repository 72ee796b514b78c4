/** Fire: who comes out next, which piece the probe is in, and a reading in two taps. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { stayAwake } from '../widgets/awake.js';
import { batchHead, batchNote } from '../widgets/batch-head.js';
import { calendarButton } from '../widgets/calendar.js';
import { forbidden } from '../widgets/doubts.js';
import { doors } from '../widgets/doors.js';
import { fireChart } from '../widgets/fire-chart.js';
import { FireLog } from '../widgets/fire-log.js';
import { firstOut, firstWrap, lostOf, nextOut, outTable, outlooks, wrapDue } from '../widgets/fire-next.js';
import { doubts, readings } from '../widgets/fire-readings.js';
import { smoker } from '../widgets/fire-smoker.js';
import { published, rules, worth } from '../widgets/fire-worth.js';
import { pinned } from '../widgets/pinned.js';
import { StageJobs } from '../widgets/stage-jobs.js';
import { stageAction, stageAnswer } from '../widgets/stage-view.js';
import { Ticker, onceOnly } from '../widgets/tick.js';
import { cautionLine } from '../widgets/verdict.js';
import { why } from '../widgets/why.js';
import { pieceName } from '../../words/en/cuts.js';
import { ELSEWHERE } from '../../words/en/batches.js';
import { FIRE_CAUTIONS } from '../../words/en/fire.js';
import { glue } from '../../words/glue.js';
import { jobHead } from '../../words/en/jobs.js';
import { HEADS, IS, ONE_PROBE, beforeFire, title, NEXT } from '../../words/en/at-the-fire.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').FireSheet} FireSheet */
/** @typedef {import('../widgets/stage-jobs.js').Seen} Seen */

/** @param {import('../app.js').App} app @param {string} id @returns {import('../app.js').Screen} */
export function fire(app, id) {
  const ticker = new Ticker(app);
  const jobs = new StageJobs(app, id, 'fire', ticker);
  const log = new FireLog(app, id);

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const seen = jobs.look(batch);
    // Before the meat is in the cure there is nothing to log, unless something was logged already.
    const lit = batch.fire !== undefined || (seen.begun && !seen.held);
    const { ok, problems } = lit ? log.ask(batch) : { ok: undefined, problems: undefined };
    const wrong = problems ?? seen.problems;
    return {
      title: title(batch.name),
      ...batchHead(app, id, batch, seen.state, 'fire'),
      view: [
        html`<h2 class="vh">${HEADS.screen}</h2>`,
        wrong
          ? html`<div class="leaf answer">${problemStrip(app, wrong)}</div>`
          : ok?.classes.length
            ? burning(batch, ok, seen)
            : waiting(batch, seen),
      ],
    };
  }

  /** Nothing to log yet. @param {Batch} batch @param {Seen} seen */
  function waiting(batch, seen) {
    const { state, here, hand } = seen;
    const own = () =>
      here && !seen.held ? pinned(jobs.done(batch, here)) : hand ? pinned(jobs.goTo(hand.stage)) : nothing;
    return html`<div class="leaf answer">
        ${stageAnswer(batch, state?.doubts ?? [], () => (here ? jobs.answer(batch, here) : jobs.none(seen)))}
        ${stageAction(id, state?.doubts ?? [], 'fire', own)} ${here ? cautionLine(here.cautions) : nothing}
      </div>
      <div class="plate rest">
        ${seen.jobs.length ? jobs.rows(batch, seen) : jobs.toRead(batch, seen)}
        ${why('fire', html`${batchNote(batch, state)} ${calendarButton(app, [[id, batch]], 'one')}`)}
        ${doors(ELSEWHERE, nothing)}
      </div>`;
  }

  /** @param {Batch} batch @param {FireSheet} sheet @param {Seen} seen */
  function burning(batch, sheet, seen) {
    const now = app.now();
    const all = seen.state?.doubts ?? [];
    const lost = lostOf(all);
    const read = sheet.classes.some(({ points }) => points.length > 0) || sheet.cabinet.length > 0;
    // Drying comes before the heat: till then its job is what is in hand, and a reading may be logged below.
    const unread = seen.here?.does.is === 'read_fire';
    // Smoke that cooks nothing brings no piece to its target: it is a job like drying.
    const cool = Boolean(seen.here?.cautions.includes('cold-smoke'));
    const heat = read || unread || (!cool && seen.here && /^(?:smoke|cook|dry_out)$/.test(doOf(batch, seen.here.id)));
    const answer = stageAnswer(batch, all, () =>
      heat ? nextOut(sheet, now, lost) : seen.here ? jobs.answer(batch, seen.here) : ahead(batch, seen),
    );
    const { pad } = log;
    // The log is the action, unless something else has to be done first, or the next one has to come out.
    const out = firstOut(sheet, lost);
    const wrap = firstWrap(sheet);
    const other = pad.begun
      ? undefined
      : !heat
        ? seen.here
          ? jobs.done(batch, seen.here)
          : seen.hand && jobs.goTo(seen.hand.stage)
        : out?.reached
          ? takenOut(out)
          : wrap && wrapDue(wrap)
            ? wrappedNow(wrap.one)
            : out
              ? undefined
              : seen.hand && seen.hand.stage !== 'fire'
                ? jobs.goTo(seen.hand.stage)
                : seen.here && !seen.held
                  ? jobs.done(batch, seen.here)
                  : undefined;
    const action = other ? stageAction(id, all, 'fire', () => pinned(other)) : nothing;
    const pin = !other && !forbidden(all) && stageAction(id, all, 'fire', () => 'log') === 'log';
    return html`<div class="leaf answer">
        ${pad.notLogged} ${pad.correcting ? nothing : doubts(batch, sheet, log.acts)} ${answer}
        ${sheet.in_cure ? html`<p class="near">${NEXT.inCure}</p>` : read ? nothing : early(batch)} ${action}
        ${(!heat || cool) && seen.here ? cautionLine(seen.here.cautions) : nothing}
        ${pad.which(
          sheet,
          batch.pieces,
          sheet.order.find((place) => !lost.has(place)),
        )}
      </div>
      <div class="leaf act">${pad.keys(sheet, { pin, alone: action === nothing })}</div>
      <div class="plate rest">
        ${outTable(
          sheet,
          now,
          (of, name) => ticker.set(id, { of }, of.startsWith('wrap') ? IS.wrappedNow(name) : outOf(sheet, of, name)),
          (of) => ticker.take(id, of),
          batch.fire?.wrap_at !== undefined || sheet.classes.some(({ wrapped }) => wrapped !== null),
          lost,
        )}
        <p class="caution gap">${ONE_PROBE}</p>
        ${jobs.rows(batch, seen)} ${smoker(app, sheet.smoker)} ${why('fire', reasons(batch, sheet, seen, now))}
        ${log.before.draw(batch, sheet)} ${readings(batch, sheet, now, log.acts)} ${doors(ELSEWHERE, nothing)}
      </div>`;
  }

  /** @param {Batch} batch @param {Seen} seen */
  function ahead(batch, { hand, jobs: all }) {
    const first = all.find(({ ticked }) => ticked === null);
    if (!hand || !first) return nothing;
    return html`<p class="small">${beforeFire(jobHead(hand, { app, batch }))}</p>
      ${jobs.answer(batch, first)}`;
  }

  /** What was not read hot enough is not to be chilled. @param {FireSheet} sheet @param {string} of @param {string} name */
  const outOf = ({ classes }, of, name) =>
    classes[Number(of.split(':')[1])]?.reached ? IS.outNow(name) : IS.outOnly(name);

  /** Before the heat: it came out of its cure early, and that is not over with its tick. @param {Batch} batch */
  function early(batch) {
    const notes = ask('cure_clock', { batch, now: app.now(), settings: app.settings }).ok?.notes ?? [];
    return notes.some(({ what }) => what.is === 'came_out_early') ? html`<p class="near">${NEXT.early}</p>` : nothing;
  }

  /** What a job does. @param {Batch} batch @param {string} job its id */
  const doOf = ({ recipe }, job) => recipe.steps[Number(job.split(':')[1])]?.do ?? '';

  /** @param {import('../types').FireClass} one */
  function takenOut({ record, of: piece }) {
    const name = pieceName(piece);
    const of = `pull:${record.place}`;
    const press = (/** @type {MouseEvent} */ e) => onceOnly(e) && ticker.set(id, { of }, IS.outNow(name));
    return html`<button type="button" class="btn main" @click=${press}>${IS.out(name)}</button>`;
  }

  /** @param {import('../types').FireClass} one */
  function wrappedNow({ record, of: piece }) {
    const name = pieceName(piece);
    const press = (/** @type {MouseEvent} */ e) =>
      onceOnly(e) && ticker.set(id, { of: `wrap:${record.place}` }, IS.wrappedNow(name));
    return html`<button type="button" class="btn main" @click=${press}>${IS.wrapped(name)}</button>`;
  }

  /** @param {Batch} batch @param {FireSheet} sheet @param {Seen} seen @param {number} now */
  function reasons(batch, sheet, seen, now) {
    return html`${batchNote(batch, seen.state)} ${jobs.cautions(seen)} ${fireChart(sheet, now, app.settings.units)}
    ${outlooks(sheet)} ${sheet.classes.map(worth)} ${rules(sheet)} ${published(sheet, false)}
    ${sheet.cautions.map((key) => html`<p class="caution gap">${glue(FIRE_CAUTIONS[key])}</p>`)}
    ${calendarButton(app, [[id, batch]], 'one')}`;
  }

  return { draw, ...watch(app, (event) => log.pad.typed(event)) };
}

/**
 * The clock on the pad and the windows go on while nobody touches it, and the screen does not sleep.
 * @param {import('../app.js').App} app
 * @param {(event: KeyboardEvent) => void} typed what a keyboard does
 */
export function watch(app, typed) {
  let timer = 0;
  let sleep = () => {};
  return {
    arrive() {
      sleep = stayAwake();
      addEventListener('keydown', typed);
      timer = setInterval(() => app.draw(), 30_000);
    },
    leave() {
      clearInterval(timer);
      removeEventListener('keydown', typed);
      sleep();
    },
  };
}
