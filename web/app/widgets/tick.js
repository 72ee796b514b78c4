/** The box that is ticked, and the question before an old tick is taken away. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { dayTime } from '../words/time.js';
import { icon } from './icon.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Tick} Tick */

/** Sets and takes away ticks of batches. The newest tick goes at a touch; an older one is asked about first. */
export class Ticker {
  /** @type {string} the tick that is asked about */
  #asking = '';

  /** @param {App} app */
  constructor(app) {
    this.app = app;
  }

  /**
   * @param {string} id of the batch
   * @param {string} of
   * @param {string | null} [weight]
   */
  set(id, of, weight) {
    /** @type {Tick} */
    const tick = weight ? { of, at: this.app.now(), weight } : { of, at: this.app.now() };
    this.#asking = '';
    return this.app.act(() =>
      this.app.shelf.changeBatch(id, (batch) =>
        batch.ticks.some((old) => old.of === of) ? batch : { ...batch, ticks: [...batch.ticks, tick] },
      ),
    );
  }

  /**
   * @param {string} id
   * @param {string} of
   */
  take(id, of) {
    this.#asking = '';
    return this.app.act(() =>
      this.app.shelf.changeBatch(id, (batch) => ({ ...batch, ticks: batch.ticks.filter((tick) => tick.of !== of) })),
    );
  }

  /**
   * @param {string} id
   * @param {Batch} batch
   * @param {string} of
   * @param {string | null} [weight]
   */
  turn(id, batch, of, weight) {
    if (!batch.ticks.some((tick) => tick.of === of)) return this.set(id, of, weight);
    if (isNewest(batch, of)) return this.take(id, of);
    this.#asking = `${id} ${of}`;
    this.app.draw();
  }

  /**
   * @param {{ id: string, batch: Batch, of: string, label: string, disabled?: boolean, weight?: string | null }} spec
   */
  box({ id, batch, of, label, disabled = false, weight }) {
    const ticked = batch.ticks.some((tick) => tick.of === of);
    return html`<span class="box"
      ><input
        type="checkbox"
        id=${boxId(id, of)}
        data-tick=${of}
        aria-label=${label}
        ?disabled=${disabled && !ticked}
        .checked=${live(ticked)}
        @change=${() => this.turn(id, batch, of, weight)}
      />${icon('s-tick', '')}</span
    >`;
  }

  /**
   * When it was ticked.
   * @param {string} id
   * @param {Batch} batch
   * @param {string} of
   */
  stamp(id, batch, of) {
    const tick = batch.ticks.find((one) => one.of === of);
    if (!tick) return nothing;
    return html`<span class="stamp">${dayTime(tick.at, this.app.now())}</span>`;
  }

  /**
   * The newest tick can be undone at a touch. An older one is asked about, once it was touched.
   * @param {string} id
   * @param {Batch} batch
   * @param {string} of
   * @param {string} name
   */
  wayBack(id, batch, of, name) {
    const tick = batch.ticks.find((one) => one.of === of);
    if (tick && isNewest(batch, of)) {
      return html`<button
        type="button"
        class="btn quiet less undo noprint"
        aria-label="Undo: ${name}"
        @click=${() => this.take(id, of)}
      >
        Undo
      </button>`;
    }
    if (!tick || this.#asking !== `${id} ${of}`) return nothing;
    const keep = () => {
      this.#asking = '';
      this.app.draw();
    };
    return html`<div class="asks noprint" role="group" aria-label="Take the tick away">
      <p>${name} was ticked ${dayTime(tick.at, this.app.now())}, and other things since. Take the tick away?</p>
      <div class="acts">
        <button type="button" class="btn quiet less" @click=${keep}>Keep it</button>
        <button type="button" class="btn less" @click=${() => this.take(id, of)}>Take it away</button>
      </div>
    </div>`;
  }
}

/** @param {string} id @param {string} of */
export function boxId(id, of) {
  return `t-${id}-${of.replaceAll(':', '-')}`;
}

/** @param {Batch} batch @param {string} of */
function isNewest(batch, of) {
  return batch.ticks.at(-1)?.of === of;
}
