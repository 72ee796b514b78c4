/** Before the fire: the smoker, who will eat, when to take out, by which rule. */
import { html, nothing } from 'lit-html';
import { ASKED, noLower, ruleWords } from '../words/fire.js';
import { glue } from '../words/glue.js';
import { field } from './field.js';
import { Form } from './form.js';
import { choose, option, pick } from './pick.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Fire} Fire */
/** @typedef {import('../types').FireSheet} FireSheet */

/** @type {Fire} a log that is not begun */
export const UNLIT = { fan: false, cover: 'dry', readings: [] };

export class FireBefore {
  #target = new Form('fire');
  #wrap = new Form('wrap');

  /**
   * @param {import('../app.js').App} app
   * @param {(change: (fire: Fire) => Fire) => Promise<unknown>} change
   * @param {(cover: import('../types').Cover) => Promise<unknown>} cover puts it on now, where the fire is lit
   */
  constructor(app, change, cover) {
    this.app = app;
    this.change = change;
    this.cover = cover;
  }

  /** @param {Batch} batch @param {FireSheet} sheet */
  draw(batch, sheet) {
    const fire = batch.fire ?? UNLIT;
    const set = (/** @type {Partial<Fire>} */ some) => this.change((now) => ({ ...now, ...some }));
    const unit = this.app.settings.units === 'us' ? '°F' : '°C';
    const asked = fire.at_risk !== undefined;
    const send = (/** @type {Event} */ event) => {
      event.preventDefault();
      const read = this.#target.read(
        [{ key: 'target', label: 'Take out at', kind: 'temperature', unit, optional: true, stored: fire.target ?? '' }],
        this.app.settings.units,
      );
      if (!read) return this.app.draw();
      const target = read['target'];
      this.#target.clear();
      return this.change(({ target: _, ...rest }) => (target ? { ...rest, target } : rest));
    };
    const wrapped = covered(batch, fire) === 'wrapped';
    const plan = (/** @type {Event} */ event) => {
      event.preventDefault();
      const read = this.#wrap.read(
        [{ key: 'wrap', label: 'Wrap it at', kind: 'temperature', unit, optional: true, stored: fire.wrap_at ?? '' }],
        this.app.settings.units,
      );
      if (!read) return this.app.draw();
      const at = read['wrap'];
      this.#wrap.clear();
      return this.change(({ wrap_at: _, ...rest }) => (at ? { ...rest, wrap_at: at } : rest));
    };
    const rules = [...new Map(sheet.classes.map((one) => [one.rule.of, one])).values()];
    const lower = sheet.classes.some((one) => one.record.needed.no_lower === null);
    return html`<details class="fold noprint">
      <summary>
        <span
          >Before the fire<br /><span class="small"
            >${asked ? 'fan, water pan, who eats it' : 'not said yet: who eats it'}</span
          ></span
        >
      </summary>
      <p>
        Rinsed, dried to a pellicle, the probe in the thickest part of the largest piece and another in the smallest.
      </p>
      <div class="gap">
        ${pick(
          {
            name: 'fan',
            legend: 'Does a fan move the air?',
            options: [
              ['no', 'Still'],
              ['yes', 'Fan'],
            ],
            value: fire.fan ? 'yes' : 'no',
          },
          (value) => set({ fan: value === 'yes' }),
        )}
        ${pick(
          {
            name: 'cover',
            legend: 'How do the pieces stand?',
            options: [
              ['dry', 'Dry'],
              ['pan', 'Water pan'],
              ['wrapped', 'Wrapped'],
            ],
            value: covered(batch, fire),
            hint: fire.readings.some(({ struck }) => !struck) ? 'A pan or a wrap put on now counts from now.' : '',
          },
          (cover) => this.cover(cover),
        )}
        ${pick(
          {
            name: 'risk',
            legend: 'Who will eat it?',
            hint: 'At risk: under 5, old, pregnant or ill.',
            options: [
              ['yes', 'Someone at risk'],
              ['no', 'Nobody at risk'],
            ],
            value: /** @type {'yes' | 'no'} */ (asked ? (fire.at_risk ? 'yes' : 'no') : ''),
          },
          (value) => set({ at_risk: value === 'yes' }),
        )}
      </div>
      ${
        wrapped
          ? nothing
          : html`<form class="gap" novalidate @submit=${plan}>
              ${field(this.#wrap, {
                key: 'wrap',
                label: 'Wrap it at',
                hint: 'Empty: it stays bare. The times go by it.',
                unit,
                stored: fire.wrap_at ?? '',
                optional: true,
              })}
              <button class="btn wide">Set when to wrap</button>
            </form>`
      }
      ${sheet.classes.length > 1 ? probes(fire, sheet, set) : nothing}
      ${rules.map(
        (one) =>
          html`<p class="caution"><b class="nowrap">${one.consumer.text}</b> ${glue(ruleWords(one.rule))}</p>
            ${
              one.record.needed.by === 'consumer'
                ? nothing
                : html`<p class="caution">
                    <b class="nowrap">${one.needed.text}</b> ${glue(ASKED[one.record.needed.by])}
                  </p>`
            }
            ${noLower(one) ? html`<p class="small">${glue(noLower(one))}</p>` : nothing}`,
      )}
      ${
        lower
          ? html`<form class="gap" novalidate @submit=${send}>
              ${field(this.#target, {
                key: 'target',
                label: 'Take out at',
                hint: 'Empty: the consumer temperature. Below it only time at temperature counts, by the table and on its conditions. Whole red game: from 62.8 °C (145 °F) on, with 3 minutes of rest.',
                unit,
                stored: fire.target ?? '',
                optional: true,
              })}
              <button class="btn wide">Set the target</button>
            </form>`
          : nothing
      }
    </details>`;
  }
}

/** How the pieces stand now. @param {Batch} batch @param {Fire} fire @returns {import('../types').Cover} */
export function covered({ ticks, pieces }, fire) {
  const done = (/** @type {string} */ what) => ticks.some(({ of }) => of === what);
  if (fire.cover === 'wrapped' || pieces.every((_, at) => done(`wrap:${at}`))) return 'wrapped';
  return done('pan') ? 'pan' : (fire.cover ?? 'dry');
}

/**
 * Which class has a probe of its own, and by whose the others go.
 * @param {Fire} fire @param {FireSheet} sheet @param {(some: Partial<Fire>) => unknown} set
 */
function probes(fire, { classes }, set) {
  const shares = fire.shares ?? [];
  const held = shares.length > 0;
  return html`<details class="gap" ?open=${held}>
    <summary>One probe for several sizes</summary>
    <p class="small">
      A size without a probe goes by another: its time is reckoned by its own thickness. It counts as not measured until
      a probe is in it.
    </p>
    ${classes.map((one, place) => {
      const by = String(shares.find(([own]) => own === place)?.[1] ?? '');
      return choose(
        {
          id: `probe-${place}`,
          label: `Probe of ${one.name}`,
          value: by,
          options: [
            option('', 'Its own', by === ''),
            ...classes.flatMap((other, at) =>
              at === place ? [] : [option(String(at), `That of ${other.name}`, by === String(at))],
            ),
          ],
        },
        (value) => {
          const rest = shares.filter(([own]) => own !== place);
          return set({ shares: value === '' ? rest : [...rest, [place, Number(value)]] });
        },
      );
    })}
  </details>`;
}
