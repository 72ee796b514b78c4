/** The jobs as a file for the phone's calendar, with an alarm at each. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { count } from '../words/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */

/**
 * @param {App} app
 * @param {[string, Batch][]} batches
 * @param {'one' | 'all'} which
 */
export function calendarButton(app, batches, which) {
  const { ok } = asked(app, batches);
  if (!ok?.jobs) return nothing;
  return html`<div class="block noprint">
    <button type="button" class="btn wide" @click=${() => hand(app, batches)}>
      Put ${count(ok.jobs, 'job')} ${which === 'all' ? 'of all batches ' : ''}in the calendar
    </button>
    <p class="small near">
      A file for the calendar of this phone, with an alarm at each job. Open it again after a change: it replaces the
      jobs of before.
    </p>
  </div>`;
}

/** @param {App} app @param {[string, Batch][]} batches */
function asked(app, batches) {
  return ask('calendar', {
    batches: batches.map(([id, batch]) => ({ id, batch })),
    now: app.now(),
    settings: app.settings,
  });
}

/** @param {App} app @param {[string, Batch][]} batches */
function hand(app, batches) {
  const { ok } = asked(app, batches);
  if (!ok) return;
  const url = URL.createObjectURL(new Blob([ok.text], { type: 'text/calendar' }));
  const tag = batches.length === 1 ? `-${batches[0]?.[1].tag}` : '';
  Object.assign(document.createElement('a'), { href: url, download: `cure-reckoner${tag}.ics` }).click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
