/** The jobs of a stage, wherever it is. */
import { html, nothing } from 'lit-html';

/** @param {string} batch */
export const cureTitle = (batch) => `Cure, ${batch}`;
export const CURE = 'Cure';
/** @param {string} job */
export const next = (job) => `Next: ${job}`;
export const LOG_FRIDGE = 'Log the fridge';

/** A row, and the job in hand as an answer. */
export const JOB = {
  /** @param {string} when */
  ends: (when) => html`Ends <b class="nowrap">${when}</b>`,
  /** @param {string} from @param {string | null} to where it ends */
  due: (from, to) =>
    html`<b class="nowrap">${from}</b>${to === null ? nothing : html`, ends <b class="nowrap">${to}</b>`}`,
  /** @param {string} when */
  endsAt: (when) => `ends ${when}`,
  /** @param {string} when @param {boolean} due by now */
  at: (when, due) => (due ? `Due ${when}` : when),
  flag: 'due',
  /** @param {number} n */
  showAll: (n) => `Show all ${n} turns`,
  passed: 'Skipped: a later step is done.',
  /** @param {string} job @param {boolean} lasts it takes time, so it is not done yet */
  justNow: (job, lasts) => (lasts ? `${job}: started just now` : `${job}: done just now`),
  /** @param {string} stage */
  goTo: (stage) => `Go to ${stage}`,
};

/** Where no job is in hand. */
export const NO_JOB = {
  held: 'Clear the doubt first.',
  head: 'No clock yet',
  says: 'The times start when the meat is in the cure.',
  nothing: 'This recipe has nothing to do in this stage.',
  heldThen: 'Clear the doubt first. Then:',
  toRead: 'Not yet: the meat is not in the cure.',
};
