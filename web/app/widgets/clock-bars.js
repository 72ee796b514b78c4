/** A wedge over the days: it rises from when one in ten is through to the hour at which nine in ten are. */
import { html, nothing, svg } from 'lit-html';
import { countedPieces } from '../../words/en/cuts.js';
import { about, dayName, dayOf, midnight } from '../../words/time.js';
import { SIZES } from '../../words/en/cure-clock.js';

const MOST = 6;

/**
 * @param {import('../types').Class} one
 * @param {import('../types').ClassUntil} row
 * @param {{ begun: number, last: number, now: number }} over what the days run
 */
export function bars(one, { from, until }, { begun, last, now }) {
  const begin = midnight(begun);
  const day = (/** @type {number} */ n) => new Date(begin).setDate(new Date(begin).getDate() + n);
  const days = Math.ceil((last - begin) / 86_400_000) + 1;
  const end = day(days);
  // As many labels as there is room for.
  const every = Math.ceil(days / MOST);
  const share = (/** @type {number} */ ms) => (100 * (Math.min(Math.max(ms, begin), end) - begin)) / (end - begin);
  const [rises, full] = [share(from), share(until)];
  return html`<svg
    class="week cure-bars"
    height="54"
    role="img"
    aria-label=${SIZES.bar(countedPieces(one.of), about(from, now), about(until, now))}
  >
    <rect class="lane" x="0" y="2" width="100%" height="26" />
    <svg
      x="${rises}%"
      y="2"
      width="${Math.max(full - rises, 0.5)}%"
      height="26"
      viewBox="0 0 100 26"
      preserveAspectRatio="none"
    >
      <path class="fill" d="M0 26L100 0V26z" />
    </svg>
    ${full < 100 ? svg`<rect class="fill" x="${full}%" y="2" width="${100 - full}%" height="26"/>` : nothing}
    <line class="foot" x1="0" x2="100%" y1="28" y2="28" />
    ${Array.from({ length: Math.ceil(days / every) }, (_, n) => day(n * every)).map(
      (ms) => svg`<line class="day-line" x1="${share(ms)}%" x2="${share(ms)}%" y1="2" y2="34"/>
        <text class="q" x="${share(ms)}%" dx="3" y="50">${every > 1 ? dayOf(ms) : dayName(ms)}</text>`,
    )}
    <line class="now-halo" x1="${share(now)}%" x2="${share(now)}%" y1="0" y2="32" />
    <line class="now" x1="${share(now)}%" x2="${share(now)}%" y1="0" y2="32" />
  </svg>`;
}
