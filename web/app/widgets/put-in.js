/** Says what went in as cure when it was not the weigh-out: a spoon, or another weight. */
import { html, nothing } from 'lit-html';
import { BAG } from '../../words/en/fields.js';
import { MEASURE, MEASURES as WORDS, PUT_IN, SPOON, judgedOn } from '../../words/en/put-in.js';
import { field } from './field.js';
import { Form, errorSummary, focusErrors } from './form.js';
import { pick } from './pick.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').PutIn} PutIn */
/** @typedef {keyof typeof WORDS} Measure */

export const MEASURES = /** @type {[Measure, string][]} */ (Object.entries(WORDS));
const WHOLE_BAG = /** @type {Measure} */ (MEASURES.map(([measure]) => measure).find((one) => one.includes('#')));

/**
 * How an amount is asked for in a measure: what stands beside the field, and steps where it is spoons.
 * @param {Measure} measure
 * @returns {Partial<import('./field.js').FieldSpec>}
 */
export function asked(measure) {
  if (measure.endsWith('g')) return { unit: 'g' };
  return {
    unit: measure.startsWith('heaped') ? SPOON.heaped : SPOON.level,
    stepper: [SPOON.less, SPOON.more],
    by: 0.5,
    least: 0.5,
  };
}

/**
 * A stored amount as number and measure: `1 tbsp` is `1` and `tbsp`.
 * @param {string} amount
 * @returns {[string, Measure]}
 */
export function measureOf(amount) {
  const [, packet] = /^1 (?:bag|packet) of (.*?)\s*g$/.exec(amount) ?? [];
  if (packet) return [packet, WHOLE_BAG];
  const [, text = amount, unit = 'g'] = /^(.*?)\s*(g|(?:heaped )?tb?sp)$/.exec(amount) ?? [];
  return [text, /** @type {Measure} */ (unit)];
}

/**
 * The batch with what went in; where nothing did, a second agent goes too.
 * @param {Batch} batch
 * @param {PutIn | undefined} put_in
 * @param {PutIn | undefined} also
 * @returns {Batch}
 */
export function withPutIn({ put_in: _, also: __, ...rest }, put_in, also) {
  return put_in ? { ...rest, put_in, ...(also && { also }) } : rest;
}

/** The weight of the cure that is ticked. @param {Batch} batch */
const cureIn = ({ ticks }) => ticks.find(({ of }) => of.startsWith('cure:'))?.weight;

/** @typedef {{ parts: number, nitrite?: string | null, nitrate?: string | null }} Mix */

/** The mix that the list is worked with, and how strong it is. @param {import('../types').WeighSheet} sheet @returns {Mix | null} */
function mixOn({ bowl, vessel }) {
  const line = [...bowl, ...vessel].find(({ cure }) => cure?.is === 'one_in');
  if (line?.cure?.is !== 'one_in') return null;
  const { nitrite = null, nitrate = null } = line.tick;
  return { parts: line.cure.parts, nitrite, nitrate };
}

export class PutInForm {
  open = false;

  #form;
  /** @type {Measure | null} */
  #measure = null;
  /** @type {'instead' | 'beside' | null} */
  #instead = null;
  /** @type {'mix' | 'neat' | ''} */
  #which = '';

  /** @param {App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.id = id;
    this.#form = new Form('f', `put-in.${id}`);
    this.open = this.#form.typed.length > 0;
  }

  show() {
    this.open = true;
    this.app.draw();
    document.getElementById('f-amount')?.focus();
  }

  /** @param {Batch} batch @param {import('../types').WeighSheet} sheet */
  draw(batch, sheet) {
    const mix = mixOn(sheet);
    const ofMix = mix !== null && this.#which === 'mix';
    const [text, unit] = measureOf(batch.put_in?.amount ?? ' tsp');
    const measure = this.#measure ?? unit;
    const on = { typed: this.app.draw };
    const ticked = cureIn(batch);
    return html`<details
      class="block noprint"
      ?open=${this.open}
      @toggle=${(/** @type {{ target: HTMLDetailsElement }} */ { target }) => (this.open = target.open)}
    >
      <summary>${batch.put_in ? PUT_IN.was : PUT_IN.other}</summary>
      <form novalidate @submit=${(/** @type {Event} */ e) => this.#send(e, batch, measure, mix)}>
        ${errorSummary(this.#form)}
        <p class="small">${PUT_IN.about}</p>
        ${mix ? this.#asksWhich(mix) : nothing}
        ${field(
          this.#form,
          {
            key: 'amount',
            label: PUT_IN.amount,
            stored: text,
            ...asked(measure),
          },
          on,
        )}
        ${pick(
          { name: 'measure', legend: MEASURE, hidden: true, look: 'snug', options: MEASURES, value: measure },
          (now) => {
            this.#measure = now;
            this.app.draw();
          },
        )}
        ${ofMix ? nothing : this.#packet(batch, on)}
        ${
          ticked
            ? html`<div id=${this.#form.id('instead')} tabindex="-1">
                ${pick(
                  {
                    name: 'instead',
                    legend: PUT_IN.ticked(ticked),
                    options: [
                      ['instead', PUT_IN.instead],
                      ['beside', PUT_IN.beside],
                    ],
                    value: this.#replaces(batch),
                  },
                  (now) => {
                    this.#instead = now || null;
                    this.#form.drop('instead');
                    this.app.draw();
                  },
                )}
              </div>`
            : nothing
        }
        <div class="block pair">
          ${
            batch.put_in
              ? html`<button
                  type="button"
                  class="btn quiet"
                  @click=${() => this.put(batch, undefined, PUT_IN.asListed)}
                >
                  ${PUT_IN.after}
                </button>`
              : nothing
          }
          <button type="submit" class="btn">${PUT_IN.judge}</button>
        </div>
      </form>
    </details>`;
  }

  /**
   * What the packet says.
   * @param {Batch} batch
   * @param {{ typed: () => void }} on
   */
  #packet(batch, on) {
    return html`${field(
      this.#form,
      {
        key: 'nitrite',
        label: BAG.nitrite,
        hint: PUT_IN.bagHint,
        unit: '%',
        stored: this.#printed(batch).nitrite ?? '',
      },
      on,
    )}
    ${field(
      this.#form,
      {
        key: 'nitrate',
        label: BAG.nitrate,
        hint: BAG.someNitrate,
        unit: '%',
        stored: this.#printed(batch).nitrate ?? '',
      },
      on,
    )}`;
  }

  /** The list is worked with a mix: so many grams may be of that or of the cure itself, and nobody guesses which. @param {Mix} mix */
  #asksWhich({ parts }) {
    return html`<div id=${this.#form.id('which')} tabindex="-1">
      ${pick(
        {
          name: 'which',
          legend: PUT_IN.which,
          options: [
            ['mix', PUT_IN.mix(parts)],
            ['neat', PUT_IN.neat],
          ],
          value: this.#which,
        },
        (now) => {
          this.#which = now;
          this.#form.drop('which');
          this.app.draw();
        },
      )}
      <p class="small near">${PUT_IN.holds(parts)}</p>
    </div>`;
  }

  /** Whether it went in for what is ticked or as well; nobody guesses that. @param {Batch} batch @returns {'instead' | 'beside' | ''} */
  #replaces({ put_in }) {
    return this.#instead ?? (put_in ? (put_in.instead ? 'instead' : 'beside') : '');
  }

  /** What the packet says, as far as it is known: of what was put in, or of the recipe's cure. @param {Batch} batch */
  #printed({ put_in, recipe }) {
    return put_in ?? recipe.cures[0] ?? { nitrite: '', nitrate: '', made: undefined };
  }

  /** @param {Batch} batch @returns {import('./form.js').Read[]} */
  #packetRead(batch) {
    const { nitrite, nitrate } = this.#printed(batch);
    return [
      { key: 'nitrite', label: BAG.nitrite, kind: 'printed', unit: '%', optional: true, stored: nitrite ?? '' },
      { key: 'nitrate', label: BAG.nitrate, kind: 'printed_nitrate', unit: '%', optional: true, stored: nitrate ?? '' },
    ];
  }

  /** @param {Event} event @param {Batch} batch @param {Measure} measure @param {Mix | null} mix */
  async #send(event, batch, measure, mix) {
    event.preventDefault();
    const ofMix = mix !== null && this.#which === 'mix';
    /** @type {import('./form.js').Read[]} */
    const fields = [
      {
        key: 'amount',
        label: PUT_IN.amount,
        kind: 'amount',
        unit: measure,
        stored: measureOf(batch.put_in?.amount ?? '')[0],
      },
    ];
    if (!ofMix) fields.push(...this.#packetRead(batch));
    const values = this.#form.read(fields, this.app.settings.units);
    const asked = cureIn(batch) && !this.#replaces(batch);
    if (asked) {
      const message = PUT_IN.say(cureIn(batch) ?? '');
      this.#form.mark([{ code: 'missing', field: 'instead', message }]);
    }
    const whichOne = mix !== null && !this.#which;
    if (whichOne) this.#form.mark([{ code: 'missing', field: 'which', message: PUT_IN.sayWhich(mix.parts) }]);
    if (asked || whichOne || !values?.amount) {
      this.app.draw();
      return focusErrors();
    }
    /** @type {PutIn} */
    const now = { amount: values.amount, step: this.app.settings.scale_step };
    if (cureIn(batch) && this.#replaces(batch) === 'instead') now.instead = true;
    const { nitrite: strength, nitrate: beside } = ofMix ? mix : values;
    if (strength) now.nitrite = strength;
    if (beside) now.nitrate = beside;
    // Of the same strength it is the same mix.
    const { nitrite, made } = this.#printed(batch);
    if (made && strength === nitrite) now.made = made;
    await this.put(batch, now, PUT_IN.judged(values.amount, ofMix));
  }

  /** @param {Batch} batch @param {PutIn | undefined} now @param {string} says */
  async put(batch, now, says) {
    const work = () => this.app.shelf.changeBatch(this.id, (was) => withPutIn(was, now, batch.also));
    const kept = await this.app.act(work, { says, here: true });
    if (!kept) return;
    this.#form.clear();
    this.#measure = null;
    this.#instead = null;
    this.#which = '';
    this.open = false;
    this.app.draw();
    document.querySelector('.verdict')?.scrollIntoView({ block: 'nearest' });
  }
}

/** What stands by the verdict while it is about something that was put in. @param {Batch} batch */
export function putInNote({ put_in, also }) {
  if (!put_in) return nothing;
  return html`<p class="gap">${judgedOn(put_in, also)}</p>`;
}
