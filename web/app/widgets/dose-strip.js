/** Where a dose lies between too little and over: a bar from zero to a round figure, the range a solid block. */
import { html, nothing, svg } from 'lit-html';
import { MARKS, picture } from '../../words/en/dose-picture.js';
import { verdictBasis } from '../../words/en/verdict.js';

/** @typedef {import('../types').Verdict} Verdict */

const TOP = 62;
const HIGH = 34;

/** @param {Verdict} verdict */
export function doseStrip(verdict) {
  const { nitrite, least, limit, axis, mark } = verdict;
  if (!nitrite) return nothing;
  const at = (/** @type {number} */ ppm) => `${(100 * Math.min(ppm, axis)) / axis}%`;
  const wide = (/** @type {number} */ from, /** @type {number} */ to) =>
    `${(100 * Math.max(0, Math.min(to, axis) - from)) / axis}%`;
  const { low, typical, high } = nitrite;
  const share = typical / axis;
  // The figures stand over the pointer but never leave the picture.
  const [x, anchor] = share < 0.3 ? ['0', 'start'] : share > 0.7 ? ['100%', 'end'] : [at(typical), 'middle'];
  // On a long axis the two marks come close, and their words need a row each.
  const close = axis > 300;
  const near = (limit - least) / axis < 0.25;
  const words = close
    ? svg`<text class="b" x=${at(limit)} dx="4" y="119">${MARKS.limit(limit)}</text>
        <path class="at" d="M0 0"/><text class="b" x=${at(least)} dx="4" y="137">${MARKS.least(least)}</text>
        <line class="at" x1=${at(least)} x2=${at(least)} y1="96" y2="138"/>`
    : svg`<text class="b" x=${at(least)} y="119" text-anchor=${near ? 'end' : 'middle'}>${MARKS.least(least)}</text>
        <text class="b" x=${at(limit)} y="119" text-anchor=${near ? 'start' : 'middle'}>${MARKS.limit(limit)}</text>`;
  const foot = close ? 156 : 137;
  return html`<svg
    class="strip-ppm ${mark} ${close ? 'tall' : ''}"
    role="img"
    aria-label=${picture(verdictBasis(verdict), verdict, nitrite)}
  >
    ${svg`<rect x="0" y=${TOP} width=${at(least)} height=${HIGH} fill="url(#hatch-low)"/>
    <rect class="bare" x=${at(least)} y=${TOP} width=${wide(least, limit)} height=${HIGH}/>
    <rect x=${at(limit)} y=${TOP} width=${wide(limit, axis)} height=${HIGH} fill="url(#hatch-over)"/>
    <rect class="frame" x="0" y=${TOP} width="100%" height=${HIGH}/>
    ${
      close
        ? nothing
        : svg`<svg x="4" y=${TOP + 6} width="70" height="22"><rect class="bare" width="70" height="22"/><text x="4" y="16">${MARKS.tooLittle}</text></svg>
      <svg x="100%" y=${TOP + 6} overflow="visible"><rect class="bare" x="-78" width="74" height="22"/><text x="-8" y="16" text-anchor="end">${MARKS.over}</text></svg>`
    }
    <line class="at" x1=${at(least)} x2=${at(least)} y1=${TOP - 6} y2=${TOP + HIGH + 6}/>
    <line class="at" x1=${at(limit)} x2=${at(limit)} y1=${TOP - 6} y2=${TOP + HIGH + 6}/>
    <rect class="halo" x=${at(low)} y=${TOP + 9} width=${wide(low, high)} height="16"/>
    <rect class="span" x=${at(low)} y=${TOP + 9} width=${wide(low, high)} height="16"/>
    ${high - low > axis / 20 ? svg`<line class="notch" x1=${at(typical)} x2=${at(typical)} y1=${TOP + 7} y2=${TOP + 27}/>` : nothing}
    <svg x=${at(typical)} y="40" overflow="visible"><path class="point" d="M-9 0h18l-9 15z"/></svg>
    <text class="ends" x=${x} y="28" text-anchor=${anchor}>${low === high ? low : `${low} – ${high}`}<tspan class="u" dx="5">${MARKS.unit}</tspan></text>
    ${words}
    <text class="q" x="0" y=${foot}>0</text><text class="q" x="100%" y=${foot} text-anchor="end">${MARKS.end(axis)}</text>`}
  </svg>`;
}
