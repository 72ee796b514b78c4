/** The jobs of one stage: where the batch stands, the rows to tick, and the one in hand as an answer. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { glue } from '../../words/glue.js';
import { cautionTexts } from '../../words/en/cautions.js';
import { COLD, jobHead, jobText } from '../../words/en/jobs.js';
import { STAGES } from '../../words/en/names.js';
import { dayTime } from '../../words/time.js';
import { running } from './batch-head.js';
import { cardSteps } from './card.js';
import { forbidden } from './doubts.js';
import { dialled } from './dial.js';
import { icon } from './icon.js';
import { tickButton } from './pinned.js';
import { boxId } from './tick.js';
import { cautionLine } from './verdict.js';
import { TIME } from '../../words/en/controls.js';
import { JOB, NO_JOB } from '../../words/en/stages.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Job} Job */
/** @typedef {import('../types').Stage} Stage */
/** @typedef {import('../types').State} State */
/** @typedef {ReturnType<StageJobs['look']>} Seen */

/** Where the steps belong, for a batch that has no jobs yet. @param {import('../types').Do} act */
const stageOf = (act) =>
  ['cure', 'rinse', 'soak'].includes(act) ? 'cure' : ['chill', 'pack'].includes(act) ? 'pack' : 'fire';

/** Past mending, and not one size of several alone. @param {Batch} batch @param {import('../types').Doubt[]} doubts */
const allLost = ({ pieces }, doubts) =>
  forbidden(doubts.filter((one) => one.class === null)) ||
  (pieces.length > 0 && pieces.every((_, at) => forbidden(doubts.filter((one) => one.class === at))));

/** The way into the cold once all of it is on. @param {Job} job */
export const isCold = ({ does }) => does.is === 'into_fridge';

/** How long it was on when it went into the cold, where that is long. @param {Job} job */
export const lateOf = ({ does }) => (does.is === 'into_fridge' ? does.on : null);

/** So few turns are shown whole; of more those about now, and the rest at a touch and on paper. */
const FEW_TURNS = 6;

/** The turns that are nowhere near: a cure of weeks has one or two each day. @param {Job[]} jobs */
function farTurns(jobs) {
  const turns = jobs.filter(({ id }) => id.startsWith('turn:'));
  if (turns.length <= FEW_TURNS) return new Set();
  const open = turns.findIndex(({ ticked, passed }) => ticked === null && !passed);
  const next = open < 0 ? turns.length : open;
  return new Set(turns.filter((_, at) => at < next - 1 || at > next + 1));
}

export class StageJobs {
  /** All of the turns are shown. */
  #all = false;

  /** @param {App} app @param {string} id @param {Stage} stage @param {import('./tick.js').Ticker} ticker */
  constructor(app, id, stage, ticker) {
    this.app = app;
    this.id = id;
    this.stage = stage;
    this.ticker = ticker;
  }

  /** @param {Batch} batch */
  look(batch) {
    const { app, id, stage } = this;
    const { ok, problems } = ask('next', { batches: [{ id, batch }], now: app.now(), settings: app.settings });
    const state = ok?.batches[0] ?? null;
    // What is past mending has nothing to come: what was done stays to be read.
    const lost = state !== null && allLost(batch, state.doubts);
    const all = state?.jobs.filter(({ ticked }) => !lost || ticked !== null) ?? [];
    // What is read is logged, not ticked: it has no row.
    const jobs = all.filter((job) => job.stage === stage && job.does.is !== 'read_fire');
    const hand = all.find(({ ticked, passed }) => ticked === null && !passed);
    return {
      state,
      problems,
      jobs,
      hand,
      held: state?.held ?? false,
      lost,
      runs: lost ? undefined : running(state),
      /** In hand and of this stage. */
      here: hand?.stage === stage ? hand : undefined,
      /** The cure is on, so there is a clock. */
      begun: state !== null && !['pieces', 'weigh'].includes(state.stage),
      over: jobs.length > 0 && jobs.every(({ ticked, passed }) => ticked !== null || passed),
    };
  }

  /**
   * All jobs of the stage; of the one in hand, and of what runs, also how. What to take care of stands where a hand can still do
   * otherwise: at the answer, and under Why.
   * @param {Batch} batch @param {Seen} seen
   * @param {{ whole?: boolean }} [how] whole: how each is done, not only the one in hand
   */
  rows(batch, seen, { whole = false } = {}) {
    if (seen.jobs.length === 0) return nothing;
    const far = this.#all ? new Set() : farTurns(seen.jobs);
    const turns = seen.jobs.filter(({ id }) => id.startsWith('turn:')).length;
    return html`<ol class="tally">
        ${seen.jobs.map((job) => this.#row(batch, job, seen, { whole, far: far.has(job) }))}
      </ol>
      ${
        far.size
          ? html`<button
              type="button"
              class="btn quiet wide near noprint"
              @click=${() => ((this.#all = true), this.app.draw())}
            >
              ${JOB.showAll(turns)}
            </button>`
          : nothing
      }`;
  }

  /** @param {Batch} batch @param {Job} job @param {Seen} seen @param {{ whole: boolean, far: boolean }} how */
  #row(batch, job, { here, held, runs }, { whole, far }) {
    const { app, id, ticker } = this;
    const [head, text] = [jobHead(job, { app, batch }), jobText(job, { app, batch })];
    const now = job === here && !held;
    const own = batch.ticks.some((tick) => tick.of === job.id);
    // The first step begins with the last tick of the weigh-out, and what the log shows needs none: nothing to tick.
    const given = job.ticked !== null && !own;
    // How long a fire lasts its log says better.
    const tells = job === runs && !(given && this.stage === 'fire');
    const more = whole || now || tells ? '' : 'paper-only';
    return html`<li
      class="line ${far ? 'far' : ''} ${job === runs ? 'begun' : job.ticked !== null ? 'done' : now ? 'now' : ''}"
      data-time=${TIME}
    >
      ${
        given
          ? html`<span class="box given">${icon('s-tick', '')}</span>
              <div class="nm">
                <b>${glue(head)}</b><span class="stamp">${dayTime(job.ticked ?? 0, app.now())}</span>
              </div>`
          : html`${ticker.box({ id, batch, mark: { of: job.id }, label: head, disabled: held, early: job.early, late: lateOf(job) })}
              <div class="nm"><label for=${boxId(id, job.id)}>${glue(head)}</label>${ticker.stamp(batch, job.id)}</div>`
      }
      ${tells ? html`<p class="text">${JOB.ends(dayTime(Number(job.ends), app.now()))}</p>` : nothing}
      ${job.passed ? html`<p class="flag care">${icon('s-care', '')}<span>${JOB.passed}</span></p>` : nothing}
      ${job.ticked === null && !job.passed && job.due !== null ? this.#due(job, whole || now) : nothing}
      ${text ? html`<p class="text ${more}">${glue(text)}</p>` : nothing}
      ${job.cautions.length ? html`<p class="caution ${whole ? '' : 'paper-only'}">${dialled(cautionTexts(job.cautions))}</p>` : nothing}
      ${ticker.wayBack(id, batch, job.id, head)} ${ticker.ahead(id, batch, job)} ${ticker.whenIn(id, batch, job)}
    </li>`;
  }

  /** @param {Job} job @param {boolean} whole with its end */
  #due({ due, ends, now }, whole) {
    const at = this.app.now();
    return html`<p class="text">
      ${JOB.due(dayTime(Number(due), at), whole && ends !== null && ends !== due ? dayTime(ends, at) : null)}
      ${now ? html`<span class="flag now">${JOB.flag}</span>` : nothing}
    </p>`;
  }

  /**
   * A job as the answer of its screen: what, by when, how.
   * @param {Batch} batch @param {Job} job @param {boolean} [how] false where how it is done stands elsewhere
   */
  answer(batch, job, how = true) {
    const { due, ends, now } = job;
    const at = this.app.now();
    const seen = { app: this.app, batch };
    const text = how ? jobText(job, seen) : '';
    return html`<p class="say">${glue(jobHead(job, seen))}</p>
      ${due === null ? nothing : html`<p class="big">${JOB.at(dayTime(due, at), now)}</p>`}
      ${ends !== null && ends !== due ? html`<p class="under">${JOB.endsAt(dayTime(ends, at))}</p>` : nothing}
      ${text ? html`<p class="reason">${glue(text)}</p>` : nothing}`;
  }

  /** Where no job is in hand: why not. @param {Seen} seen */
  none({ begun, held, lost }) {
    if (lost) return nothing;
    if (begun && held) return html`<p class="say">${NO_JOB.held}</p>`;
    return html`<p class="say">${NO_JOB.head}</p>
      <p class="under">${NO_JOB.says}</p>`;
  }

  /** What to take care of in this stage, each once. @param {Seen} seen */
  cautions({ jobs }) {
    const keys = new Set(jobs.flatMap(({ cautions }) => cautions));
    return [...keys].map((key) => cautionLine([key]));
  }

  /** The button that ticks it; none before its time, when only its own row asks. @param {Batch} batch @param {Job} job */
  done(batch, job) {
    if (job.early) return nothing;
    const { id: of, ends } = job;
    const head = jobHead(job, { app: this.app, batch });
    const label = isCold(job) ? COLD.done : JOB.justNow(head, ends !== null);
    return tickButton(label, () => this.ticker.turn(this.id, batch, { of }, { late: lateOf(job) }));
  }

  /** The way to the stage that is in hand. @param {Stage} stage */
  goTo(stage) {
    return html`<a class="btn main" href="#/batch/${this.id}/${stage}">${JOB.goTo(STAGES[stage])}</a>`;
  }

  /** The steps of the recipe, where there is no job yet. @param {Batch} batch @param {Seen} seen */
  toRead({ recipe }, { held, lost }) {
    if (lost) return nothing;
    const card = ask('card', { recipe, settings: this.app.settings }).ok;
    const here = (/** @type {number} */ at) => stageOf(recipe.steps[at]?.do ?? 'rest') === this.stage;
    if (!card || !card.steps.some((_, at) => here(at))) return html`<p class="lead">${NO_JOB.nothing}</p>`;
    return html`<p class="lead">${held ? NO_JOB.heldThen : NO_JOB.toRead}</p>
      ${cardSteps(card, here)}`;
  }
}
