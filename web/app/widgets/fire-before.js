/** Before the fire: the smoker, who will eat, when to take out, by which rule. */
import { html, nothing } from 'lit-html';
import { pieceName } from '../../words/en/cuts.js';
import { ASKED, noLower, ruleWords } from '../../words/en/fire.js';
import { glue } from '../../words/glue.js';
import { field } from './field.js';
import { Form } from './form.js';
import { choose, option, pick } from './pick.js';
import { AIM, BEFORE, PROBES } from '../../words/en/fire-readings.js';

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
        [{ key: 'target', label: AIM.out, kind: 'core', unit, optional: true, stored: fire.target ?? '' }],
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
        [{ key: 'wrap', label: AIM.wrap, kind: 'core', unit, optional: true, stored: fire.wrap_at ?? '' }],
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
        <span>${BEFORE.head}<br /><span class="small">${BEFORE.says(asked)}</span></span>
      </summary>
      <p>${BEFORE.how}</p>
      <div class="gap">
        ${pick(
          {
            name: 'fan',
            legend: BEFORE.fan,
            options: [
              ['no', BEFORE.still],
              ['yes', BEFORE.fanned],
            ],
            value: fire.fan ? 'yes' : 'no',
          },
          (value) => set({ fan: value === 'yes' }),
        )}
        ${pick(
          {
            name: 'cover',
            legend: BEFORE.cover,
            options: [
              ['dry', BEFORE.dry],
              ['pan', BEFORE.pan],
              ['wrapped', BEFORE.wrapped],
            ],
            value: covered(batch, fire),
            hint: fire.readings.some(({ struck }) => !struck) ? BEFORE.fromNow : '',
          },
          (cover) => this.cover(cover),
        )}
        ${pick(
          {
            name: 'risk',
            legend: BEFORE.eats,
            hint: BEFORE.risk,
            options: [
              ['yes', BEFORE.someone],
              ['no', BEFORE.nobody],
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
                label: AIM.wrap,
                hint: AIM.wrapHint,
                unit,
                stored: fire.wrap_at ?? '',
                optional: true,
              })}
              <button class="btn wide">${AIM.setWrap}</button>
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
                label: AIM.out,
                hint: AIM.outHint(),
                unit,
                stored: fire.target ?? '',
                optional: true,
              })}
              <button class="btn wide">${AIM.setOut}</button>
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
    <summary>${PROBES.head}</summary>
    <p class="small">${PROBES.says}</p>
    ${classes.map((one, place) => {
      const by = String(shares.find(([own]) => own === place)?.[1] ?? '');
      return choose(
        {
          id: `probe-${place}`,
          label: PROBES.of(pieceName(one.of)),
          value: by,
          options: [
            option('', PROBES.own, by === ''),
            ...classes.flatMap((other, at) =>
              at === place ? [] : [option(String(at), PROBES.other(pieceName(other.of)), by === String(at))],
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
