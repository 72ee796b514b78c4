/** Every reading of a log, and the questions about them. */
import { html, nothing } from 'lit-html';
import { newId } from '../shelf.js';
import { pieceName } from '../../words/en/cuts.js';
import { ODD } from '../../words/en/fire.js';
import { glue } from '../../words/glue.js';
import { clock, dayTime } from '../../words/time.js';
import { strip } from './verdict.js';
import { DOUBT, LIST, PAD, SMOKER } from '../../words/en/fire-readings.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Fire} Fire */
/** @typedef {import('../types').FireReading} FireReading */
/** @typedef {import('../types').FireSheet} FireSheet */
/**
 * What can be done about a reading.
 * @typedef {{
 *   change: (change: (fire: Fire) => Fire) => Promise<unknown>,
 *   mark: (place: number, what: Partial<FireReading>, says?: string) => Promise<unknown>,
 *   correct: (reading: FireReading) => void,
 * }} Acts
 */

/** One question about a reading at a time, so that the keys stay in sight. @param {Batch} batch @param {FireSheet} sheet @param {Acts} acts */
export function doubts(batch, sheet, acts) {
  const all = batch.fire?.readings ?? [];
  const others = sheet.doubts.length - 1;
  return sheet.doubts.slice(0, 1).map(({ reading: place, odd, choices }) => {
    const reading = all[place];
    if (!reading) return nothing;
    const one = reading.class === undefined ? undefined : sheet.classes[reading.class];
    const name = reading.class === undefined ? SMOKER : one && pieceName(one.of);
    const meant = (/** @type {string} */ temperature) =>
      acts.change((fire) => ({
        ...fire,
        readings: [
          ...fire.readings.map((one, at) => (at === place ? { ...one, struck: true } : one)),
          { ...reading, id: newId(), temperature, sure: true },
        ],
      }));
    const asks = DOUBT.asked(name, reading.temperature, clock(reading.at));
    return html`<div class="block" id="odd" tabindex="-1" role="group" aria-label=${asks} data-say="figures">
      ${strip(
        'ask',
        asks,
        others ? html`${glue(ODD[odd])} ${DOUBT.others(others)}` : glue(ODD[odd]),
        html`<div class="acts">
          ${choices.map(
            (text) => html`<button type="button" class="btn" @click=${() => meant(text)}>${PAD.itWas(text)}</button>`,
          )}
          ${
            // No meat is hotter than boiling water, whoever says so.
            odd === 'boiling'
              ? nothing
              : html`<button type="button" class="btn" @click=${() => acts.mark(place, { sure: true })}>
                  ${DOUBT.right}
                </button>`
          }
          <button type="button" class="btn" @click=${() => acts.correct(reading)}>${DOUBT.correct}</button>
          <button type="button" class="btn" @click=${() => acts.mark(place, { struck: true }, DOUBT.crossedOut)}>
            ${DOUBT.crossOut}
          </button>
        </div>`,
      )}
    </div>`;
  });
}

/** So many readings are in sight; the others are a touch away, and on paper. */
const IN_SIGHT = 8;

/** Every reading, the newest first. @param {Batch} batch @param {FireSheet} sheet @param {number} now @param {Acts} acts */
export function readings(batch, sheet, now, acts) {
  const rows = (batch.fire?.readings ?? []).map((reading, place) => ({ reading, place })).reverse();
  if (rows.length === 0) return nothing;
  return html`<details class="fold readings-log">
    <summary>${LIST.all(rows.length)}</summary>
    <table class="tbl near">
      <caption class="vh">
        ${LIST.caption}
      </caption>
      <thead>
        <tr>
          <th scope="col">${LIST.time}</th>
          <th scope="col">${LIST.piece}</th>
          <th scope="col">${LIST.read}</th>
          <th scope="col" class="noprint"><span class="vh">${LIST.change}</span></th>
        </tr>
      </thead>
      <tbody>
        ${rows.map(({ reading, place }, at) => {
          const one = reading.class === undefined ? undefined : sheet.classes[reading.class];
          const name = reading.class === undefined ? SMOKER : one ? pieceName(one.of) : LIST.gone;
          const which = LIST.which(name, reading.temperature, clock(reading.at));
          return html`<tr class="${reading.struck ? 'struck' : ''} ${at < IN_SIGHT ? '' : 'older'}">
            <td>
              ${dayTime(reading.at, now)}${reading.struck ? html`<span class="vh">${LIST.crossedOut}</span>` : nothing}
            </td>
            <td>${name}</td>
            <td class="nowrap">${reading.temperature}</td>
            <td class="noprint">
              ${
                reading.struck
                  ? html`<button
                      type="button"
                      class="btn quiet less"
                      @click=${() => acts.mark(place, { struck: false })}
                    >
                      ${LIST.count(which)}
                    </button>`
                  : html`<button type="button" class="btn quiet less" @click=${() => acts.correct(reading)}>
                      ${LIST.correct(which)}
                    </button>`
              }
            </td>
          </tr>`;
        })}
      </tbody>
    </table>
    ${
      rows.length > IN_SIGHT
        ? html`<button type="button" class="btn quiet wide gap noprint more" @click=${showAll}>
            ${LIST.showAll(rows.length)}
          </button>`
        : nothing
    }
  </details>`;
}

/** @param {Event} event */
function showAll({ target }) {
  /** @type {HTMLElement} */ (target).closest('details')?.classList.add('all');
}
