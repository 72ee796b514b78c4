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
  return html`<h2>Pull order</h2>
    <table class="tbl near">
      <caption class="vh">
        Size classes, the first to be pulled first
      </caption>
      <thead>
        <tr>
          <th scope="col">Piece</th>
          <th scope="col">Last</th>
          <th scope="col">Pull between</th>
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
                  one.pulled
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
      one.outlook
        ? html`<div class="near">
            <p>${shape(place)}<b>${one.name}.</b> ${one.outlook.from}</p>
            <ul class="dots">
              ${one.outlook.notes.map((note) => html`<li class="small">${glue(note)}</li>`)}
            </ul>
          </div>`
        : nothing,
    )}`;
}

/** Both ends of a window, each with its day where they differ. @param {[number, number, number]} window @param {number} now */
export function span([low, , high], now) {
  const whole = midnight(low) !== midnight(high);
  return whole ? `${dayTime(low, now)} – ${dayTime(high, now)}` : `${clock(low)} – ${clock(high)}`;
}
