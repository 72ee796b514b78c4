/** Salt across a piece, now and at the planned rinse, and the same as a table. */
import { html, nothing, svg } from 'lit-html';
import { countedPieces } from '../../words/en/cuts.js';
import { dayTime } from '../../words/time.js';
import { ACROSS } from '../../words/en/cure-clock.js';

/** @typedef {import('../types').Class} Class */
/** @typedef {import('../types').CureClock} CureClock */
/** @typedef {import('../types').Point} Point */

const HEIGHT = 200;

/** @param {Class} one @param {CureClock} clock @param {number} now */
export function profile({ profile, of, thickness, goal }, { planned, ended }, now) {
  const name = countedPieces(of);
  // With skin on the points go all the way through; else the other half is the same again.
  const through = Number(profile.at(-1)?.at) > 600;
  const whole = through
    ? profile
    : [
        ...profile,
        ...profile
          .toReversed()
          .slice(1)
          .map((p) => ({ ...p, at: 1000 - p.at })),
      ];
  const shown = ended === null ? ACROSS.now : ACROSS.out;
  const rinse = planned === null ? null : ACROSS.rinse(dayTime(planned, now));
  // The band of the fast and the slow goes over the top at first; the lines set the scale.
  const top = Math.min(Math.max(1300, ...profile.map((p) => Math.max(p.now[1], p.rinse) * 1.1)), 4000);
  const y = (/** @type {number} */ share) => (HEIGHT * (1 - Math.min(share, top) / top)).toFixed(1);
  const line = (/** @type {(p: Point) => number} */ of, /** @type {Point[]} */ points = whole) =>
    points.map((p) => `${p.at} ${y(of(p))}`).join('L');
  const band = `M${line((p) => p.now[0])}L${line((p) => p.now[2], whole.toReversed())}z`;
  return html`<figure class="gap">
      <svg class="salt-profile" height="260" role="img" aria-label=${ACROSS.says(name, thickness)}>
        <svg y="16" width="100%" height=${HEIGHT} viewBox="0 0 1000 ${HEIGHT}" preserveAspectRatio="none">
          <path class="band" d=${band} />
          <path class="goal" d="M0 ${y(1000)}H1000" />
          ${rinse ? svg`<path class="rinse" d="M${line((p) => p.rinse)}"/>` : nothing}
          <path class="present" d="M${line((p) => p.now[1])}" />
          <path class="frame" d="M0 0V${HEIGHT}H1000V0" />
        </svg>
        <text class="q" x="50%" y="12" text-anchor="middle">${ACROSS.cut(thickness)}</text>
        <text class="q" x="6" y=${16 + HEIGHT + 22}>${ACROSS.outside}</text>
        <text class="q" x=${through ? '100%' : '50%'} y=${16 + HEIGHT + 22} text-anchor=${through ? 'end' : 'middle'}>
          ${through ? ACROSS.skin : ACROSS.middle}
        </text>
        ${through ? nothing : svg`<text class="q" x="100%" dx="-6" y=${16 + HEIGHT + 22} text-anchor="end">${ACROSS.outside}</text>`}
      </svg>
      <figcaption class="legend">
        <span
          ><svg width="34" height="12" aria-hidden="true"><path class="present" d="M0 6h34" /></svg
          >${ACROSS.shaded(shown)}</span
        >
        ${
          rinse
            ? html`<span
                ><svg width="34" height="12" aria-hidden="true"><path class="rinse" d="M0 6h34" /></svg>${rinse}</span
              >`
            : nothing
        }
        <span
          ><svg width="34" height="12" aria-hidden="true"><path class="goal" d="M0 6h34" /></svg
          >${ACROSS.even(goal)}</span
        >
      </figcaption>
    </figure>
    <table class="tbl times">
      <caption class="vh">
        ${ACROSS.caption(name)}
      </caption>
      <thead>
        <tr>
          <th scope="col">${ACROSS.depth}</th>
          <th scope="col">${shown}</th>
          ${rinse ? html`<th scope="col">${ACROSS.rinseHead}</th>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${profile
          .filter((_, n) => n % 2 === 0)
          .map(
            (point) =>
              html`<tr>
                <th scope="row">${point.depth}</th>
                <td>${ACROSS.share(point.now_text, !goal)}</td>
                ${rinse ? html`<td>${ACROSS.share(point.rinse_text, !goal)}</td>` : nothing}
              </tr>`,
          )}
      </tbody>
    </table>`;
}
