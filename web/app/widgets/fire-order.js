/** When to pull each class, the first first. */
import { html, nothing } from 'lit-html';
import { glue } from '../words/glue.js';
import { clock, dayTime, midnight } from '../words/time.js';
import { shape } from './icon.js';

/** @typedef {import('../types').FireClass} FireClass */
/** @typedef {import('../types').FireSheet} FireSheet */

const NOW = 'Pull it now';

/**
 * @param {FireSheet} sheet
 * @param {number} now
 * @param {(of: string, name: string) => unknown} pulled
 * @param {(of: string) => unknown} back
 */
export function pullOrder({ classes, order }, now, pulled, back) {
  const places = [...order, ...classes.keys()].filter((place, at, all) => all.indexOf(place) === at);
  // Before the first reading there is no fire to count from.
  const lit = classes.some(({ points }) => points.length > 0);
  return html`<h2>Pull order</h2>
    ${lit ? nothing : html`<p class="small near">No reading yet. So long it usually takes once it hangs in the heat:</p>`}
    <table class="tbl near">
      <caption class="vh">
        Size classes, the first to be pulled first
      </caption>
      <thead>
        <tr>
          <th scope="col">Piece</th>
          <th scope="col">Last</th>
          <th scope="col">${lit ? 'Pull between' : 'Usually takes'}</th>
        </tr>
      </thead>
      <tbody>
        ${places.map((place) => {
          const one = classes[place];
          if (!one) return nothing;
          const of = `pull:${place}`;
          const act = one.pulled ? () => back(of) : () => pulled(of, one.name);
          return html`<tr>
            <td>
              ${shape(place)}${one.name}<small>target ${one.target.text}</small>
              <div class="noprint near">
                ${
                  lit || one.pulled
                    ? html`<button type="button" class="btn quiet less" @click=${act}>
                        ${one.pulled ? 'Not pulled' : 'Pulled just now'}<span class="vh">: ${one.name}</span>
                      </button>`
                    : nothing
                }
              </div>
            </td>
            <td class="nowrap">${one.last?.text ?? (one.probe && !one.pulled ? 'not measured' : '–')}</td>
            <td>${when(one, lit, now)}</td>
          </tr>`;
        })}
      </tbody>
    </table>
    ${classes.map((one, place) =>
      one.outlook && lit && !one.reached
        ? html`<div class="near">
            <p>${shape(place)}<b>${one.name}.</b> ${one.outlook.from}</p>
            <ul class="dots">
              ${one.outlook.notes.map((note) => html`<li class="small">${glue(note)}</li>`)}
            </ul>
          </div>`
        : nothing,
    )}`;
}

/** @param {FireClass} one @param {boolean} lit @param {number} now */
function when(one, lit, now) {
  const window = one.outlook?.window;
  if (one.pulled) return html`pulled ${dayTime(one.pulled, now)}`;
  if (one.reached) return html`<b>${NOW}</b><small>at its target since ${dayTime(one.reached, now)}</small>`;
  if (!window) return one.outlook ? 'not within a day' : html`<small>${one.no_outlook}</small>`;
  if (!lit) return html`<span>${long(window[0] - now)} to ${long(window[2] - now)}</span>`;
  return html`<span>${span(window, now)}</span><small>likely ${dayTime(window[1], now)}</small>${
      one.probe ? html`<small>put the probe in before it comes off</small>` : nothing
    }`;
}

/**
 * Where each class stands, in a line; the first to be pulled first.
 * @param {FireSheet} sheet
 * @param {number} now
 */
export function standing({ classes, order }, now) {
  const rows = order.flatMap((place) => {
    const one = classes[place];
    return one?.last && !one.pulled ? [{ place, one }] : [];
  });
  if (rows.length === 0) return nothing;
  return html`<ul class="now-at" aria-label="Where they stand">
    ${rows.map(({ place, one }) => {
      const window = one.outlook?.window;
      const what = one.reached ? NOW : window ? `Pull about ${dayTime(window[1], now)}` : '';
      return html`<li>
        <span>${shape(place)}${one.name}</span><span class="nowrap">${one.last?.text} of ${one.target.text}</span
        ><span class="what">${what}</span>
      </li>`;
    })}
  </ul>`;
}

/** About so long, for a forecast. @param {number} ms */
function long(ms) {
  const minutes = Math.max(5, Math.round(ms / 300_000) * 5);
  return minutes < 90 ? `${minutes} min` : `${Math.round(minutes / 30) / 2} h`;
}

/** Both ends of a window, each with its day where they differ. @param {[number, number, number]} window @param {number} now */
export function span([low, , high], now) {
  const whole = midnight(low) !== midnight(high);
  return whole ? `${dayTime(low, now)} – ${dayTime(high, now)}` : `${clock(low)} – ${clock(high)}`;
}
