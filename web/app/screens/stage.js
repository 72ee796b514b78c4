/** Cure: the jobs of the stage with their clock times, and how long it takes. */
import { html, nothing } from 'lit-html';
import { problemStrip } from '../widgets/answer.js';
import { batchHead, batchNote } from '../widgets/batch-head.js';
import { calendarButton } from '../widgets/calendar.js';
import { CureStage } from '../widgets/cure-stage.js';
import { doors } from '../widgets/doors.js';
import { toLog } from '../widgets/fridge-form.js';
import { beforeIn } from '../widgets/how-long.js';
import { pinned, tickButton } from '../widgets/pinned.js';
import { StageJobs, isCold } from '../widgets/stage-jobs.js';
import { stageAction, stageAnswer } from '../widgets/stage-view.js';
import { Ticker } from '../widgets/tick.js';
import { week } from '../widgets/week.js';
import { jobHead, jobText } from '../../words/en/jobs.js';
import { ELSEWHERE } from '../../words/en/batches.js';
import { CURE, LOG_FRIDGE, cureTitle, next } from '../../words/en/stages.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../widgets/stage-jobs.js').Seen} Seen */

/** In the cure, held or not: what the refrigerator read is how a doubt is cleared. @param {Batch} batch */
const begun = ({ ticks }) => ticks.some(({ of }) => of === 'rub');

/** What is past mending is left in until nothing. @param {import('../types').State} state */
const lost = ({ doubts }) => doubts.some(({ weight }) => weight === 'forbids');

/** @param {import('../app.js').App} app @param {string} id @returns {import('../app.js').Screen} */
export function cure(app, id) {
  const jobs = new StageJobs(app, id, 'cure', new Ticker(app));
  const clock = new CureStage(app, id);

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const seen = jobs.look(batch);
    const { state, problems } = seen;
    const counts = state && (begun(batch) || !state.held);
    const leaf = html`<div class="leaf answer">
      ${problems ? problemStrip(app, problems) : answer(batch, seen)}
      ${seen.jobs.length ? jobs.rows(batch, seen, { whole: true }) : state ? jobs.toRead(batch, seen) : nothing}
      ${counts ? clock.leaf(batch, lost(state)) : nothing} ${batchNote(batch, state)}
      ${calendarButton(app, [[id, batch]], 'one')} ${doors(ELSEWHERE, nothing)}
    </div>`;
    const seenClock = counts ? clock.plate(batch) : nothing;
    const plate = html`<div class="plate ${seenClock === nothing ? 'wide-only' : ''}">
      ${seenClock}
      <div class="stick wide-only noprint block">${state ? week(app, [state]) : nothing}</div>
    </div>`;
    return {
      title: cureTitle(batch.name),
      ...batchHead(app, id, batch, state, 'cure'),
      view: [html`<h2 class="vh">${CURE}</h2>`, leaf, plate],
    };
  }

  /** What is next, and the button that ticks it. @param {Batch} batch @param {Seen} seen */
  function answer(batch, { here, hand, held, state }) {
    const own = () =>
      held
        ? nothing
        : here
          ? pinned(here.early && begun(batch) ? toFridge() : jobs.done(batch, here))
          : hand
            ? pinned(jobs.goTo(hand.stage))
            : nothing;
    // In the cure the answer is until when; before it and after it, what is next.
    const until = state && begun(batch) && !lost(state) ? clock.answer(batch) : nothing;
    const seen = { app, batch };
    const cold =
      here && isCold(here) && !held
        ? html`<p class="near"><b>${jobHead(here, seen)}.</b> ${jobText(here, seen)}</p>`
        : nothing;
    const comes = () =>
      until !== nothing
        ? until
        : here
          ? jobs.answer(batch, here, false)
          : hand
            ? html`<p class="say">${next(jobHead(hand, seen))}</p>`
            : nothing;
    return html`${cold} ${stageAnswer(batch, state?.doubts ?? [], comes)}
    ${stageAction(id, state?.doubts ?? [], 'cure', own)} ${state?.held ? nothing : beforeIn(app, id, batch)}`;
  }

  /** While nothing is due, what there is to do is to look how cold it lies: what is typed is logged, or else it is asked. */
  const toFridge = () =>
    tickButton(LOG_FRIDGE, () => {
      const field = /** @type {HTMLInputElement | null} */ (document.getElementById('fridge-reads'));
      if (field?.value) field.form?.requestSubmit();
      else toLog();
    });

  return { draw, arrive: () => location.hash.endsWith('/fridge') && toLog() };
}
