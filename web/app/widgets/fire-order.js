/** When to pull each class, the first first. */
import { html, nothing } from 'lit-html';
import { glue } from '../words/glue.js';
import { clock, dayTime, midnight } from '../words/time.js';
import { shape } from './icon.js';

/** @typedef {import('../types').FireSheet} FireSheet */

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
          const window = one.outlook?.window;
          const of = `pull:${place}`;
          return html`<tr>
            <td>
              ${shape(place)}${one.name}<small>target ${one.target.text}</small>
              <div class="noprint near">
                ${
                  !lit && !one.pulled
                    ? nothing
                    : one.pulled
                      ? html`<button type="button" class="btn quiet less" @click=${() => back(of)}>
                          Not pulled<span class="vh">: ${one.name}</span>
                        </button>`
                      : html`<button type="button" class="btn quiet less" @click=${() => pulled(of, one.name)}>
                          Pulled just now<span class="vh">: ${one.name}</span>
                        </button>`
                }
              </div>
            </td>
            <td class="nowrap">${one.last?.text ?? '–'}</td>
            <td>
              ${
                one.pulled
                  ? html`pulled ${dayTime(one.pulled, now)}`
                  : one.reached
                    ? html`<b>Pull it now</b><small>at its target since ${dayTime(one.reached, now)}</small>`
                    : window && !lit
                      ? html`<span>${long(window[0] - now)} to ${long(window[2] - now)}</span>`
                      : window
                        ? html`<span>${span(window, now)}</span><small>likely ${dayTime(window[1], now)}</small>`
                        : one.outlook
                          ? 'not within a day'
                          : html`<small>${one.no_outlook}</small>`
              }
            </td>
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
      const what = one.reached ? 'Pull it now' : window ? `Pull about ${dayTime(window[1], now)}` : '';
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
