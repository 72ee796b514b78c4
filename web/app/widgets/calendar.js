/** The jobs as a file for the phone's calendar, with an alarm at each; what is no longer to do is taken off. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { cautionTexts } from '../../words/en/cautions.js';
import { CALENDAR, jobHead, jobText } from '../../words/en/jobs.js';
import { FILE } from '../../words/en/batches.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */

/**
 * @param {App} app
 * @param {[string, Batch][]} batches
 * @param {'one' | 'all'} which
 */
export function calendarButton(app, batches, which) {
  const { ok } = asked(app, batches, which);
  if (!ok || (!ok.jobs && !ok.cancelled)) return nothing;
  return html`<div class="block noprint">
    <button type="button" class="btn wide" @click=${() => hand(app, batches, which)}>
      ${ok.jobs ? FILE.put(ok.jobs, which === 'all') : FILE.takeOff(ok.cancelled)}
    </button>
    <p class="small near">${FILE.says(ok.jobs, ok.cancelled)}</p>
  </div>`;
}

/** Of one batch only its own jobs are replaced. @param {[string, Batch][]} batches @param {'one' | 'all'} which */
function ownOf(batches, which) {
  return (/** @type {[string, number]} */ [uid]) => which === 'all' || uid.startsWith(`${batches[0]?.[0]}-`);
}

/**
 * The file; with words for its jobs where it is handed over, and not where they are only counted.
 * @param {App} app @param {[string, Batch][]} batches @param {'one' | 'all'} which
 * @param {import('../types').JobWords[]} [jobs]
 */
function asked(app, batches, which, jobs = []) {
  return ask('calendar', {
    batches: batches.map(([id, batch]) => ({ id, batch })),
    earlier: app.shelf.sent.filter(ownOf(batches, which)),
    words: { ...CALENDAR, jobs },
    now: app.now(),
    settings: app.settings,
  });
}

/** @param {App} app @param {[string, Batch][]} batches @returns {import('../types').JobWords[]} */
function worded(app, batches) {
  const { now, settings } = app;
  const { ok } = ask('next', { batches: batches.map(([id, batch]) => ({ id, batch })), now: now(), settings });
  return batches.flatMap(([, batch], at) => {
    const jobs = ok?.batches[at]?.jobs ?? [];
    const seen = { app, batch };
    return jobs.map((job) => ({
      batch: job.batch,
      id: job.id,
      head: jobHead(job, seen),
      text: [jobText(job, seen), cautionTexts(job.cautions)].filter(Boolean).join('\n'),
    }));
  });
}

/** @param {App} app @param {[string, Batch][]} batches @param {'one' | 'all'} which */
async function hand(app, batches, which) {
  const { ok } = asked(app, batches, which, worded(app, batches));
  if (!ok) return;
  const url = URL.createObjectURL(new Blob([ok.text], { type: 'text/calendar' }));
  const tag = which === 'one' ? `-${batches[0]?.[1].tag}` : '';
  Object.assign(document.createElement('a'), { href: url, download: `cure-reckoner${tag}.ics` }).click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  const own = ownOf(batches, which);
  const rest = app.shelf.sent.filter((one) => !own(one));
  await app.act(() => app.shelf.keepSent([...rest, ...ok.sent]));
}
