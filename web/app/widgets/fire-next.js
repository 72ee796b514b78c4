/** Who comes out of the fire next, and when: the answer of its screen; and all of them in a table. */
import { html, nothing } from 'lit-html';
import { pieceName } from '../../words/en/cuts.js';
import { FIRE_STATES, NOT_MEASURED, NO_OUTLOOK, outlookBasis, outlookNote, wayUp } from '../../words/en/fire.js';
import { glue } from '../../words/glue.js';
import { clock, dayTime, midnight, nearTime } from '../../words/time.js';
import { MARKS } from './fire-worth.js';
import { icon, shape } from './icon.js';
import { HEADS, LONG, NEXT, TABLE } from '../../words/en/at-the-fire.js';

/** @typedef {import('../types').FireClass} FireClass */
/** @typedef {import('../types').FireSheet} FireSheet */

/** Places of the sizes that are past mending: they have no hour and no turn. @typedef {Set<number | null>} Lost */

/** @param {import('../types').Doubt[]} doubts @returns {Lost} */
export const lostOf = (doubts) => new Set(doubts.filter(({ weight }) => weight === 'forbids').map((one) => one.class));

/** The first that is not out yet; where no time can be told, the first of the list. @param {FireSheet} sheet @param {Lost} lost */
export function firstOut({ classes, order }, lost) {
  const at = order.find((place) => !lost.has(place));
  return at === undefined ? classes.find(({ pulled }, place) => pulled === null && !lost.has(place)) : classes[at];
}

/** @param {FireSheet} sheet */
const isLit = ({ classes }) => classes.some(({ points }) => points.length > 0);

/** @param {FireSheet} sheet @param {number} now @param {Lost} lost */
export function nextOut(sheet, now, lost) {
  const one = firstOut(sheet, lost);
  if (!one) return lost.size ? nothing : html`<p class="say">${NEXT.allOut}</p>`;
  const window = one.outlook?.window;
  const take = NEXT.take(one.target.text, one.hold);
  if (one.reached) {
    return html`<p class="say">${NEXT.now(pieceName(one.of))}</p>
      <p class="under">${NEXT.since(nearTime(one.reached, now), lastRead(one, now))}</p>`;
  }
  const wrap = firstWrap(sheet);
  if (wrap && wrapDue(wrap)) {
    return html`<p class="say">${NEXT.wrapNow(pieceName(wrap.one.of))}</p>
      <p class="under">${lastRead(wrap.one, now)} ${take}</p>`;
  }
  // Of several without a time none is the first: the heat of the smoker says which.
  // Of a size without a time nobody knows that it is not the first.
  const other = sheet.classes.find(
    (each, at) => each !== one && each.pulled === null && !lost.has(at) && !each.outlook?.window,
  );
  if (!isLit(sheet) && other) {
    return html`<p class="say">${NEXT.logFirst}</p>
      <p class="under">${NEXT.noFirst}</p>`;
  }
  if (!isLit(sheet)) {
    return html`<p class="say">${NEXT.first(pieceName(one.of))}</p>
      <p class="under">${window ? NEXT.usually(long(window[0] - now), long(window[2] - now)) : nothing}${take}</p>`;
  }
  if (one.outlook?.fire_out) {
    return html`<p class="say">${NEXT.fireOut}</p>
      <p class="under">
        ${NEXT.fallen(pieceName(one.of), lastRead(one, now), window ? span(window, now) : undefined)}
      </p>`;
  }
  return html`<p class="say">
      ${other && window ? NEXT.perhaps(pieceName(one.of), span(window, now)) : NEXT.out(pieceName(one.of), window ? span(window, now) : undefined)}
    </p>
    <p class="under">
      ${other && window ? html`<b>${NEXT.other(pieceName(other.of))}</b>` : nothing}
      ${window ? NEXT.likelyThen(nearTime(window[1], now)) : NEXT.noTime(one.no_outlook ? NO_OUTLOOK[one.no_outlook] : undefined)}${
        wrap ? NEXT.wrap(pieceName(wrap.one.of), nearTime(wrap.at, now)) : nothing
      }${take}
      ${lastRead(one, now)}
    </p>`;
}

/** The size that is to be wrapped first, and when. @param {FireSheet} sheet */
export function firstWrap({ classes }) {
  const due = classes.flatMap((one) =>
    one.outlook?.wrap && one.pulled === null && one.reached === null ? [{ one, at: one.outlook.wrap }] : [],
  );
  return due.sort((a, b) => a.at - b.at)[0];
}

/** It was read, and is warm enough; by the forecast alone nothing is wrapped. @param {{ one: FireClass, at: number }} wrap */
export const wrapDue = ({ one, at }) => at <= (one.points.at(-1)?.at ?? 0);

/** How old the last reading of it is. @param {FireClass} one @param {number} now */
function lastRead({ last, last_of: of, points, probe, pulled }, now) {
  const at = points.at(-1)?.at;
  if (last && at) return NEXT.read(last.text, nearTime(at, now), of, pulled !== null && at >= pulled);
  return probe && !pulled ? html`<b>${NOT_MEASURED}</b>` : NEXT.unread;
}

/**
 * @param {FireSheet} sheet
 * @param {number} now
 * @param {(of: string, name: string) => unknown} out
 * @param {(of: string) => unknown} back
 * @param {boolean} wraps something is to be wrapped, or was
 * @param {Lost} lost
 */
export function outTable(sheet, now, out, back, wraps, lost) {
  const { classes, order } = sheet;
  const places = [...order, ...classes.keys()].filter((place, at, all) => all.indexOf(place) === at);
  // Before the first reading there is no fire to count from.
  const lit = isLit(sheet);
  return html`<h2>${HEADS.out}</h2>
    <table class="tbl near">
      <caption class="vh">
        ${TABLE.caption}
      </caption>
      <thead>
        <tr>
          <th scope="col">${TABLE.size}</th>
          <th scope="col">${lit ? TABLE.between : TABLE.takes}</th>
        </tr>
      </thead>
      <tbody>
        ${places.map((place) => {
          const one = classes[place];
          if (!one) return nothing;
          const of = `pull:${place}`;
          const act = one.pulled ? () => back(of) : () => out(of, pieceName(one.of));
          return html`<tr>
            <td>
              ${shape(place)}${pieceName(one.of)}<small
                >${one.pulled ? nothing : lastRead(one, now)}
                ${wordOf(one)}${one.wrapped ? TABLE.wrappedAt(nearTime(one.wrapped, now)) : nothing}</small
              >
            </td>
            <td>
              ${lost.has(place) && !one.pulled ? nothing : when(one, lit, now)}
              ${
                lit || one.pulled
                  ? html`<button type="button" class="btn quiet less noprint near" @click=${act}>
                      ${one.pulled ? TABLE.notOut : TABLE.isOut}<span class="vh">: ${pieceName(one.of)}</span>
                    </button>`
                  : nothing
              }
              ${
                wraps && lit && !one.pulled
                  ? html`<button
                      type="button"
                      class="btn quiet less noprint near"
                      @click=${() => (one.wrapped ? back(`wrap:${place}`) : out(`wrap:${place}`, pieceName(one.of)))}
                    >
                      ${one.wrapped ? TABLE.notWrapped : TABLE.isWrapped}<span class="vh">: ${pieceName(one.of)}</span>
                    </button>`
                  : nothing
              }
            </td>
          </tr>`;
        })}
      </tbody>
    </table>
    ${classes.map(({ come_up: up, of }, place) =>
      up ? html`<p class="reason">${shape(place)}<b>${pieceName(of)}.</b> ${glue(wayUp(up))}</p>` : nothing,
    )}`;
}

/** What can be said of it, once it was read; that it is not hot yet, its figures say. @param {FireClass} one */
function wordOf({ state, points }) {
  if (points.length === 0 || state === 'not_yet') return nothing;
  return html`<span class="flag ${MARKS[state]}">${icon(`s-${MARKS[state]}`, '')}${FIRE_STATES[state]}</span>`;
}

/** @param {FireClass} one @param {boolean} lit @param {number} now */
function when(one, lit, now) {
  const window = one.outlook?.window;
  if (one.pulled) return TABLE.out(nearTime(one.pulled, now));
  if (one.reached) return html`<b>${TABLE.now}</b>`;
  if (!window) return one.no_outlook ? html`<small>${NO_OUTLOOK[one.no_outlook]}.</small>` : TABLE.notToday;
  if (!lit) return html`<span>${TABLE.lasts(long(window[0] - now), long(window[2] - now))}</span>`;
  const whole = ends(window, now).map((end) => html`<span class="nowrap">${end}</span> `);
  return html`${whole}<small>${NEXT.likely(nearTime(window[1], now))}</small>`;
}

/** What each time is worked from, and what to know. @param {FireSheet} sheet */
export function outlooks({ classes }) {
  return classes.map(({ outlook, of, reached, pulled }, place) =>
    outlook && !reached && !pulled
      ? html`<div class="near">
          <p>${shape(place)}<b>${pieceName(of)}.</b> ${outlookBasis(outlook.from)}</p>
          <ul class="dots">
            ${outlook.notes.map((note) => html`<li class="small">${glue(outlookNote(note))}</li>`)}
          </ul>
        </div>`
      : nothing,
  );
}

/** About so long, for a forecast. @param {number} ms */
function long(ms) {
  const minutes = Math.max(5, Math.round(ms / 300_000) * 5);
  return minutes < 90 ? LONG.minutes(minutes) : LONG.hours(Math.round(minutes / 30) / 2);
}

/**
 * A window in pieces that are each read whole: one, or two where its ends are on two days.
 * @param {[number, number, number]} window @param {number} now
 */
function ends([low, , high], now) {
  const apart = midnight(low) !== midnight(high);
  return apart ? [`${dayTime(low, now)} –`, dayTime(high, now)] : [`${clock(low)}–${clock(high)}`];
}

/** Both ends of a window, each with its day where they differ. @param {[number, number, number]} window @param {number} now */
export const span = (window, now) => ends(window, now).join(' ');
