/** One job on the clock rail: when on the left, what on the right, and a box to tick it. */
import { html } from 'lit-html';
import { glue } from '../../words/glue.js';
import { jobHead } from '../../words/en/jobs.js';
import { clock, dayWord, midnight } from '../../words/time.js';
import { icon, tagMark } from './icon.js';
import { DUE } from '../../words/en/batches.js';

/** @typedef {import('../types').Job} Job */

/**
 * @param {object} spec
 * @param {import('../app.js').App} spec.app
 * @param {import('./tick.js').Ticker} spec.ticker
 * @param {Job} spec.job
 * @param {import('../types').Batch} spec.batch
 * @param {boolean} spec.tickable
 * @param {boolean} spec.first
 */
export function jobRow({ app, ticker, job, batch, tickable, first }) {
  // Weighing is not one tick but a list of its own, and what is early is asked about on its stage.
  const boxed = tickable && !['weigh', 'cure:0', 'read'].includes(job.id) && !job.early;
  const head = jobHead(job, { app, batch });
  return html`<li class="day ${first ? 'first' : ''}">
    <span class="when">${when(job, app.now())}</span>
    <a class="job" href="#/batch/${job.batch}/${job.stage}"
      ><b>${glue(head)}</b><span class="p">${tagMark(batch.tag, true)}${batch.name}</span></a
    >
    ${boxed ? ticker.box({ id: job.batch, batch, mark: { of: job.id }, label: DUE.label(head, batch.name), says: DUE.ticked(head) }) : icon('s-go')}
  </li>`;
}

/** @param {Job} job @param {number} now */
function when(job, now) {
  if (job.due === null) return html`<span class="d">${DUE.next}</span>`;
  const day = dayWord(job.due, now);
  return html`<span class="d">${job.now ? DUE.due(midnight(job.due) === midnight(now) ? null : day) : day}</span
    ><span class="num">${clock(job.due)}</span>`;
}
