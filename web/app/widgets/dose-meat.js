/** The meat and the cure that a dose is judged on: one row that tells them as they are now, with its questions folded in. */
import { html, nothing } from 'lit-html';
import { readFields } from '../ask.js';
import { glue } from '../../words/glue.js';
import { BAG, MEAT } from '../../words/en/fields.js';
import { cutName } from '../../words/en/cuts.js';
import { mixName } from '../../words/en/mixes.js';
import { UNITS } from '../../words/en/names.js';
import { ASKS, ROW } from '../../words/en/put-in.js';
import { field } from './field.js';
import { chooseCut, pick } from './pick.js';
import { bare } from './weight-field.js';

/**
 * @typedef {object} Asked
 * @property {import('../app.js').App} app
 * @property {import('./form.js').Form} form
 * @property {ReturnType<typeof import('./dose-known.js').knownOf>} known before anything was typed
 * @property {string} packet
 * @property {string} cut
 * @property {{ open: boolean }} fold
 * @property {(key: string) => (now: string) => void} put
 * @property {{ typed: () => void }} on
 */

/** Never what was known once: what is judged stands beside the amount. @param {Asked} asked */
function row({ app, form, known, packet, cut }) {
  const { units } = app.settings;
  const typed = form.text('green', known.green);
  const asked = { key: 'green', label: '', kind: /** @type {const} */ ('mass'), unit: UNITS[units].meat, text: typed };
  const weight = readFields([asked], units).ok?.values[0]?.value;
  if (!weight) return '';
  const nitrite = form.text('nitrite', known.nitrite).trim();
  // What is no number says so at its field, and stands in no row.
  const cure = packet === 'known' ? bare(nitrite) && ROW.cure(nitrite) : packet === 'unknown' ? ROW.unknown : packet;
  // The batch's name tells its meat until somebody says another cut.
  const meat = known.name && cut === (known.cut ?? '') ? [weight, known.name] : [ROW.meat(weight, cutName(cut))];
  return [...meat, cure].filter(Boolean).join(', ');
}

/** @param {Asked} asked */
export function meatAndCure(asked) {
  const { app, form, known, packet, cut, fold, put, on } = asked;
  const unit = UNITS[app.settings.units].meat;
  return html`<details
    class="known"
    ?open=${fold.open}
    @toggle=${(/** @type {{ target: HTMLDetailsElement }} */ { target }) => (fold.open = target.open)}
  >
    <summary>
      <span>${glue(row(asked) || ASKS.meat)}</span
      >${fold.open ? nothing : html`<span class="small noprint">${ROW.change}</span>`}
    </summary>
    ${field(
      form,
      {
        key: 'green',
        label: MEAT.label,
        stored: known.green,
        hint: unit === 'g' ? undefined : MEAT.pounds,
        // Pounds and ounces want letters.
        keys: unit === 'g' ? 'decimal' : 'text',
        unit,
      },
      on,
    )}
    ${chooseCut(app, cut, put('cut'))}
    ${pick(
      {
        name: 'packet',
        legend: ASKS.printed,
        options: [
          ...Object.entries(ASKS.isPrinted),
          ...(app.settings.mixes ?? []).map(mixName).map((name) => /** @type {[string, string]} */ ([name, name])),
        ],
        value: packet,
      },
      put('packet'),
    )}
    ${
      packet === 'known'
        ? [
            field(
              form,
              { key: 'nitrite', label: BAG.nitrite, hint: ASKS.bagHint, unit: '%', stored: known.nitrite },
              on,
            ),
            field(form, { key: 'nitrate', label: BAG.nitrate, hint: BAG.someNitrate, unit: '%' }, on),
          ]
        : nothing
    }
  </details>`;
}
