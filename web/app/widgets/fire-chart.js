/** Readings, where they are going, the target and the cabinet. The figures stand in the tables beside it. */
import { html, nothing, svg } from 'lit-html';
import { pieceName } from '../../words/en/cuts.js';
import { clock } from '../../words/time.js';
import { CHART } from '../../words/en/at-the-fire.js';

/** @typedef {import('../types').FireSheet} FireSheet */
/** @typedef {import('../types').FirePoint} FirePoint */

const TOP = 34;
const FOOT = 310;
const HOUR = 3_600_000;

/**
 * @param {FireSheet} sheet
 * @param {number} now
 * @param {'us' | 'metric'} units
 */
export function fireChart(sheet, now, units) {
  const unit = units === 'us' ? '°F' : '°C';
  const read = [...sheet.classes.flatMap((one) => one.points), ...sheet.cabinet];
  if (read.length === 0) return nothing;
  const windows = sheet.classes.flatMap((one) => one.outlook?.window ?? []);
  const begin = Math.min(...read.map(({ at }) => at));
  const newest = Math.max(...read.map(({ at }) => at));
  // A log that was closed long ago ends with its last reading.
  const live = now - newest < 12 * HOUR;
  const last = Math.max(newest, live ? now : newest);
  // A late end of a wide band would press the readings into a corner: it runs out of the picture instead.
  const far = last + Math.max(1.5 * HOUR, 1.2 * (last - begin));
  const end = Math.min(far, Math.max(last, ...windows, begin + HOUR)) + 0.05 * HOUR;
  const lines = sheet.classes.map(({ line }) => line);
  const least = Math.min(units === 'us' ? 320 : 0, ...read.map(({ tenths }) => tenths));
  const most = Math.max(...lines, ...read.map(({ tenths }) => tenths)) + 50;
  const x = (/** @type {number} */ at) => (1000 * (at - begin)) / (end - begin);
  const y = (/** @type {number} */ tenths) => FOOT - ((FOOT - TOP) * (tenths - least)) / (most - least);
  const path = (/** @type {FirePoint[]} */ points) =>
    points.map(({ at, tenths }, i) => `${i ? 'L' : 'M'}${x(at).toFixed(1)} ${y(tenths).toFixed(1)}`).join('');
  const step = units === 'us' ? 500 : 200;
  const grid = [];
  for (let at = Math.ceil(least / step) * step; at < most; at += step) grid.push(at);
  const every = Math.max(1, Math.ceil((end - begin) / HOUR / 4)) * HOUR;
  const hours = [];
  for (let at = Math.ceil(begin / HOUR) * HOUR; at < end; at += every) hours.push(at);
  const part = (/** @type {number} */ at) => `${x(at) / 10}%`;
  return html`<figure class="gap">
    <svg class="fire-chart" role="img" aria-label=${finding(sheet, unit)}>
      ${svg`<svg width="100%" height="340" viewBox="0 0 1000 340" preserveAspectRatio="none">
        ${grid.map((at) => svg`<path class="grid" d="M0 ${y(at)}H1000"/>`)}
        ${sheet.cabinet.length ? svg`<path class="cabinet" d=${path(sheet.cabinet)}/>` : nothing}
        ${sheet.classes.map(({ outlook, points, line, pulled }) => {
          const last = points.at(-1);
          if (!outlook?.window || !last || pulled) return nothing;
          const [low, , high] = outlook.window;
          return svg`<path class="fan" d="M${x(last.at)} ${y(last.tenths)}L${x(low)} ${y(line)}L${x(high)} ${y(line)}Z"/>
            <path class="ahead" d=${path(outlook.course)}/>`;
        })}
        ${[...new Set(lines)].map((line) => svg`<path class="target" d="M0 ${y(line)}H1000"/>`)}
        ${sheet.classes.map((one) => svg`<path d=${path(one.points)}/>`)}
        ${live ? svg`<path class="now" d="M${x(now)} ${TOP - 12}V${FOOT}"/>` : nothing}
        <path d="M0 ${TOP - 12}V${FOOT}H1000"/>
      </svg>
      ${sheet.classes.map((one, i) =>
        one.points.map(
          ({ at, tenths }) =>
            svg`<svg x=${part(at)} y=${y(tenths)} overflow="visible"><use href="#k-${i % 6}" x="-8" y="-8" width="16" height="16" class="halo"/><use href="#k-${i % 6}" x="-6" y="-6" width="12" height="12"/></svg>`,
        ),
      )}
      ${hours.map((at) => svg`<text class="q" x=${part(at)} y="330" text-anchor=${anchor(x(at))}>${clock(at)}</text>`)}
      ${[...new Set(lines)].map((line) => svg`<text class="b" x="100%" y=${y(line) - 6} text-anchor="end">${line / 10} ${unit}</text>`)}
      ${live ? svg`<text class="b" x=${part(now)} y="14" text-anchor=${anchor(x(now))}>${CHART.now(clock(now))}</text>` : nothing}
      ${grid.map((at) => svg`<text class="q" x="-6" y=${y(at) + 5} text-anchor="end">${at / 10}</text>`)}
      <text class="q" x="-6" y="14" text-anchor="end">${unit}</text>`}
    </svg>
    <figcaption class="small">${CHART.legend}</figcaption>
  </figure>`;
}

/** Words at an edge stay in the picture. @param {number} x of a thousand */
const anchor = (x) => (x > 880 ? 'end' : x < 90 ? 'start' : 'middle');

/** @param {FireSheet} sheet @param {string} unit */
function finding({ classes }, unit) {
  const each = classes.map(({ of, points, outlook, pulled }) => {
    const name = pieceName(of);
    const last = points.at(-1);
    const read = last ? CHART.read(name, `${last.tenths / 10} ${unit}`, clock(last.at)) : CHART.unread(name);
    if (pulled) return CHART.out(read, clock(pulled));
    const window = outlook?.window;
    return window ? CHART.ahead(read, clock(window[0]), clock(window[2])) : read;
  });
  return `${each.join('. ')}.`;
}
