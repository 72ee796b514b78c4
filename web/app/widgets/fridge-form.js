/** The refrigerator's log: what was read, frozen days, power cuts. */
import { html, nothing } from 'lit-html';
import { UNITS } from '../../words/en/names.js';
import { dayTime } from '../../words/time.js';
import { field, wrong } from './field.js';
import { Form, errorSummary, focusErrors } from './form.js';
import { choose, option } from './pick.js';
import { FRIDGE, SEEN, WHERE } from '../../words/en/cure-clock.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').FridgeReading} FridgeReading */
/** @typedef {import('../types').Seen} Seen */
/** @typedef {import('../types').Thermometer} Thermometer */

export class FridgeForm {
  #form;

  /** @param {import('../app.js').App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.id = id;
    this.#form = new Form('fridge', `fridge.${id}`);
  }

  /** @param {Batch} batch */
  draw(batch) {
    const form = this.#form;
    const what = /** @type {Seen} */ (form.text('what', 'read'));
    const of = /** @type {Thermometer} */ (form.text('of', 'fridge'));
    const log = batch.fridge ?? [];
    const units = UNITS[this.app.settings.units];
    const late = form.problem('at');
    return html`<section class="block">
      <h2>${FRIDGE.head}</h2>
      ${
        log.length
          ? html`<ul class="readings">
              ${log
                .map((reading, at) => ({ reading, at }))
                .sort((a, b) => b.reading.at - a.reading.at)
                .map(({ reading, at }) => this.#line(batch, reading, at))}
            </ul>`
          : nothing
      }
      <form novalidate @submit=${(/** @type {Event} */ e) => this.#send(e, what, of)}>
        ${errorSummary(form)}
        ${choose(
          {
            id: 'fridge-what',
            label: FRIDGE.saw,
            hint: FRIDGE.hint(),
            value: what,
            options: Object.entries(SEEN).map(([key, word]) => option(key, word, key === what)),
          },
          (now) => {
            form.type('what', now);
            this.app.draw();
          },
        )}
        ${field(
          form,
          {
            key: 'reads',
            label: FRIDGE.temperature,
            unit: units.temperature,
            optional: what !== 'read',
          },
          { typed: this.app.draw },
        )}
        ${choose(
          {
            id: 'fridge-of',
            label: FRIDGE.where,
            value: of,
            options: Object.entries(WHERE).map(([key, word]) => option(key, word, key === of)),
          },
          (now) => {
            form.type('of', now);
            this.app.draw();
          },
        )}
        <div class="field ${late ? 'bad' : ''}">
          <label for="fridge-at">${FRIDGE.when}<span class="opt">${FRIDGE.empty}</span></label>
          ${late ? wrong('fridge-at-err', late.message) : nothing}
          <input
            id="fridge-at"
            class="when-at"
            type="datetime-local"
            .value=${form.text('at')}
            aria-invalid=${late ? 'true' : nothing}
            aria-describedby=${late ? 'fridge-at-err' : nothing}
            @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => form.type('at', target.value)}
          />
        </div>
        <div class="block"><button type="submit" class="btn wide">${FRIDGE.put}</button></div>
      </form>
    </section>`;
  }

  /** @param {Batch} batch @param {FridgeReading} reading @param {number} at */
  #line(batch, reading, at) {
    const when = dayTime(reading.at, this.app.now());
    return html`<li>
      <span><b class="nowrap">${when}</b> ${FRIDGE.line(reading)}</span>
      <button
        type="button"
        class="btn less"
        aria-label=${FRIDGE.takeOutOf(when)}
        @click=${() => this.#put((batch.fridge ?? []).toSpliced(at, 1), FRIDGE.isOut)}
      >
        ${FRIDGE.takeOut}
      </button>
    </li>`;
  }

  /** @param {Event} event @param {Seen} what @param {Thermometer} of */
  async #send(event, what, of) {
    event.preventDefault();
    const form = this.#form;
    const batch = /** @type {Batch} */ (this.app.shelf.batches.get(this.id));
    const unit = UNITS[this.app.settings.units].temperature;
    const values = form.read(
      [{ key: 'reads', label: FRIDGE.temperature, kind: 'temperature', unit, optional: what !== 'read' }],
      this.app.settings.units,
    );
    const typed = form.text('at');
    const at = typed ? new Date(typed).getTime() : this.app.now();
    if (!(at <= this.app.now())) {
      form.mark([
        {
          code: 'too_large',
          field: 'at',
          message: FRIDGE.past,
        },
      ]);
    }
    if (!values || !(at <= this.app.now())) {
      this.app.draw();
      return focusErrors();
    }
    /** @type {FridgeReading} */
    const reading = { at, what };
    if (values.reads) {
      reading.reads = values.reads;
      if (of !== 'fridge') reading.of = of;
    }
    const log = [...(batch.fridge ?? []), reading].sort((a, b) => a.at - b.at);
    if (await this.#put(log, FRIDGE.logged(what, values.reads))) {
      form.clear();
      this.app.draw();
    }
  }

  /** @param {FridgeReading[]} now @param {string} says */
  #put(now, says) {
    return this.app.act(() => this.app.shelf.changeBatch(this.id, (one) => ({ ...one, fridge: now })), {
      says,
      here: true,
    });
  }
}
