/** Two wedges over the days: colour to the centre, evenly salted. They rise from earliest to latest. */
import { nothing, svg, html } from 'lit-html';
import { about, midnight, shortDay } from '../words/time.js';

/** @typedef {import('../types').Class} Class */
/** @typedef {import('../types').Span3} Span3 */

const MOST = 6;

/** @param {Class} one @param {number} begun @param {number} now */
export function bars(one, begun, now) {
  const begin = midnight(begun);
  const last = Math.max(one.even.latest, one.colour?.latest ?? 0, now);
  const day = (/** @type {number} */ n) => new Date(begin).setDate(new Date(begin).getDate() + n);
  const days = Math.ceil((last - begin) / 86_400_000) + 1;
  const end = day(days);
  // As many labels as there is room for.
  const every = Math.ceil(days / MOST);
  const share = (/** @type {number} */ ms) => (100 * (Math.min(Math.max(ms, begin), end) - begin)) / (end - begin);
  const rows = [
    ...(one.colour ? [/** @type {const} */ (['Colour to the centre', one.colour, 'fill'])] : []),
    /** @type {const} */ (['Evenly salted', one.even, 'fill even']),
  ];
  const height = rows.length * 60 + 24;
  return html`<svg
    class="week cure-bars"
    height=${height}
    role="img"
    aria-label="${one.name}: the times of the table below as bars"
  >
    ${Array.from({ length: Math.ceil(days / every) }, (_, n) => day(n * every)).map(
      (ms) => svg`<line class="day-line" x1="${share(ms)}%" x2="${share(ms)}%" y1="24" y2=${height - 20}/>
        <text class="q" x="${share(ms)}%" dx="3" y=${height - 4}>${every > 1 ? shortDay(ms).slice(4) : shortDay(ms).slice(0, 3)}</text>`,
    )}
    ${rows.map(([what, span, look], n) => row(what, span, look, n * 60))}
    <line class="now-halo" x1="${share(now)}%" x2="${share(now)}%" y1="20" y2=${height - 18} />
    <line class="now" x1="${share(now)}%" x2="${share(now)}%" y1="20" y2=${height - 18} />
  </svg>`;

  /** @param {string} what @param {Span3} span @param {string} look @param {number} y */
  function row(what, { earliest, latest }, look, y) {
    const [from, to] = [share(earliest), share(latest)];
    return svg`<text class="b" x="0" y=${y + 15}>${what}</text>
      <rect class="lane" x="0" y=${y + 24} width="100%" height="26"/>
      <svg x="${from}%" y=${y + 24} width="${Math.max(to - from, 0.5)}%" height="26" viewBox="0 0 100 26" preserveAspectRatio="none"><path class=${look} d="M0 26L100 0V26z"/></svg>
      ${to < 100 ? svg`<rect class=${look} x="${to}%" y=${y + 24} width="${100 - to}%" height="26"/>` : nothing}
      <line class="foot" x1="0" x2="100%" y1=${y + 50} y2=${y + 50}/>
      <title>${what}: ${about(earliest, now)} to ${about(latest, now)}</title>`;
  }
}
