/** The refrigerator's log: what was read, frozen days, power cuts. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { pieceName } from '../../words/en/cuts.js';
import { doubtWords } from '../../words/en/doubts.js';
import { UNITS } from '../../words/en/names.js';
import { dayTime } from '../../words/time.js';
import { field, wrong } from './field.js';
import { Form, errorSummary, focusErrors } from './form.js';
import { choose, option } from './pick.js';
import { strip } from './verdict.js';
import { FRIDGE, SEEN, WHERE } from '../../words/en/cure-clock.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').FridgeReading} FridgeReading */
/** @typedef {import('../types').Seen} Seen */
/** @typedef {import('../types').Thermometer} Thermometer */

/** @param {FridgeReading} one @param {FridgeReading} other */
const same = (one, other) => (one.id ? one.id === other.id : one.at === other.at && one.what === other.what);

/** To what is asked of the log, or else to where it is typed. @param {Event} [event] */
export function toLog(event) {
  event?.preventDefault();
  /** @type {HTMLElement | null} */ (document.querySelector('#fridge .ask button, #fridge-reads'))?.focus();
}

export class FridgeForm {
  #form;
  /** The entry that is asked about before it is deleted, and what would be said no more. @type {{ of: FridgeReading, says: string } | undefined} */
  #going;

  /** @param {import('../app.js').App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.id = id;
    this.#form = new Form('fridge', `fridge.${id}`);
  }

  /** @param {Batch} batch @param {import('../types').ColdAsked[]} asked */
  draw(batch, asked) {
    const form = this.#form;
    const what = /** @type {Seen} */ (form.text('what', 'read'));
    const of = /** @type {Thermometer} */ (form.text('of', 'fridge'));
    const log = batch.fridge ?? [];
    const units = UNITS[this.app.settings.units];
    const late = form.problem('at');
    return html`<section class="block" id="fridge">
      <h2>${FRIDGE.head}</h2>
      ${asked.slice(0, 1).map((one) => this.#question(batch, one))}
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
        @click=${() => this.#delete(batch, reading, at)}
      >
        ${FRIDGE.takeOut}
      </button>
      ${this.#going && same(this.#going.of, reading) ? this.#sure(batch, at, this.#going.says) : nothing}
    </li>`;
  }

  /** Was it this, or that? @param {Batch} batch @param {import('../types').ColdAsked} asked */
  #question(batch, { reading: place, reads, choices }) {
    const one = batch.fridge?.[place];
    if (!one) return nothing;
    const set = (/** @type {Partial<FridgeReading>} */ right) => () =>
      this.#put(
        (batch.fridge ?? []).map((other) => (same(other, one) ? { ...other, ...right } : other)),
        FRIDGE.corrected,
      );
    return html`<div class="gap" data-say="figures">
      ${strip(
        'ask',
        FRIDGE.asks(reads, choices),
        FRIDGE.odd,
        html`<div class="acts noprint">
          ${choices.map(
            (choice) =>
              html`<button type="button" class="btn" @click=${set({ reads: choice })}>${FRIDGE.was(choice)}</button>`,
          )}
          <button type="button" class="btn" @click=${set({ sure: true })}>${FRIDGE.isRight(reads)}</button>
        </div>`,
      )}
    </div>`;
  }

  /** What bears a doubt is asked about once: deleted, it would be said no more. @param {Batch} batch @param {FridgeReading} reading @param {number} at */
  #delete(batch, reading, at) {
    const fridge = (batch.fridge ?? []).toSpliced(at, 1);
    const left = new Set(this.#doubts({ ...batch, fridge }).map(({ kind }) => kind));
    const gone = this.#doubts(batch).filter(({ kind }) => kind !== 'cold_in_question' && !left.has(kind));
    if (gone.length === 0) return this.#out(fridge);
    this.#going = { of: reading, says: gone.map((doubt) => doubtWords(doubt, batch, pieceName).says).join(' ') };
    this.app.draw();
    return /** @type {HTMLElement | null} */ (document.querySelector('.readings .asks button'))?.focus();
  }

  /** @param {Batch} batch @param {number} at @param {string} says */
  #sure(batch, at, says) {
    const leave = () => {
      this.#going = undefined;
      this.app.draw();
    };
    const asks = FRIDGE.clears(says);
    return html`<div class="asks noprint" role="group" aria-label=${asks}>
      <p>${asks}</p>
      <div class="acts">
        <button type="button" class="btn less" @click=${leave}>${FRIDGE.keep}</button>
        <button type="button" class="btn less" @click=${() => this.#out((batch.fridge ?? []).toSpliced(at, 1))}>
          ${FRIDGE.wrong}
        </button>
      </div>
    </div>`;
  }

  /** @param {FridgeReading[]} fridge */
  #out(fridge) {
    this.#going = undefined;
    return this.#put(fridge, FRIDGE.isOut);
  }

  /** @param {Batch} batch */
  #doubts(batch) {
    const { app, id } = this;
    const { ok } = ask('next', { batches: [{ id, batch }], now: app.now(), settings: app.settings });
    return ok?.batches[0]?.doubts ?? [];
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
