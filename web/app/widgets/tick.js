/** The box that is ticked, and the question before an old tick is taken away. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { AHEAD, UNDO, UNTICK, undo } from '../../words/en/controls.js';
import { COLD, jobHead, tooEarly } from '../../words/en/jobs.js';
import { dayTime } from '../../words/time.js';
import { icon } from './icon.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/**
 * A tick before it has its time.
 * @typedef {Omit<import('../types').Tick, 'at'>} Mark
 */

/** Sets and takes away ticks of batches. The newest tick goes at a touch; an older one is asked about first. */
export class Ticker {
  /** @type {string} the tick that is asked about */
  #asking = '';
  /** @type {Map<string, boolean>} boxes whose change is being stored: a drawing meanwhile must not turn them back */
  #pending = new Map();

  /** @param {App} app */
  constructor(app) {
    this.app = app;
  }

  /**
   * @param {string} id of the batch
   * @param {Mark} mark
   * @param {string} [says] what to say beside Undo, where the line goes away once it is ticked
   * @param {number} [at] when it was, if not now
   */
  set(id, mark, says, at = this.app.now()) {
    const tick = { ...mark, at };
    this.#asking = '';
    return this.#hold(
      `${id} ${mark.of}`,
      true,
      this.app.act(
        () =>
          this.app.shelf.changeBatch(id, (batch) =>
            batch.ticks.some(({ of }) => of === mark.of) ? batch : { ...batch, ticks: [...batch.ticks, tick] },
          ),
        says ? { says } : undefined,
      ),
    );
  }

  /**
   * @param {string} id
   * @param {string} of
   */
  take(id, of) {
    this.#asking = '';
    return this.#hold(
      `${id} ${of}`,
      false,
      this.app.act(() => this.#without(id, of)),
    );
  }

  /** @param {string} box @param {boolean} ticked @param {Promise<boolean>} work */
  async #hold(box, ticked, work) {
    this.#pending.set(box, ticked);
    const kept = await work;
    this.#pending.delete(box);
    if (!kept) this.app.draw();
    return kept;
  }

  /** @param {string} id @param {string} of */
  #without(id, of) {
    return this.app.shelf.changeBatch(id, (batch) => ({
      ...batch,
      ticks: batch.ticks.filter((tick) => tick.of !== of),
    }));
  }

  /**
   * @param {string} id
   * @param {Batch} batch
   * @param {Mark} mark
   * @param {{ says?: string, early?: string | null, late?: string | null }} [more] `early`: its time is still to come;
   * `late`: it may have been done long ago. Either is asked about
   */
  turn(id, batch, mark, { says, early, late } = {}) {
    if (!batch.ticks.some(({ of }) => of === mark.of)) {
      if (!early && !late) return this.set(id, mark, says);
    } else if (isNewest(batch, mark.of)) return this.take(id, mark.of);
    this.#asking = `${id} ${mark.of}`;
    this.app.draw();
    /** @type {HTMLElement | null} */ (document.querySelector('.asks button'))?.focus();
  }

  /**
   * @param {{ id: string, batch: Batch, mark: Mark, label: string, disabled?: boolean, says?: string, early?: string | null, late?: string | null }} spec
   */
  box({ id, batch, mark, label, disabled = false, says, early, late }) {
    const ticked = this.#pending.get(`${id} ${mark.of}`) ?? batch.ticks.some(({ of }) => of === mark.of);
    return html`<span class="box"
      ><input
        type="checkbox"
        id=${boxId(id, mark.of)}
        data-tick=${mark.of}
        aria-label=${label}
        ?disabled=${disabled && !ticked}
        .checked=${live(ticked)}
        @click=${onceOnly}
        @change=${() => this.turn(id, batch, mark, { says, early, late })}
      />${icon('s-tick', '')}</span
    >`;
  }

  /**
   * When it was ticked.
   * @param {Batch} batch
   * @param {string} of
   */
  stamp(batch, of) {
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
        aria-label=${undo(name)}
        @click=${() => this.take(id, of)}
      >
        ${UNDO}
      </button>`;
    }
    if (!tick || !this.asks(id, of)) return nothing;
    return this.#question({
      box: boxId(id, of),
      asks: UNTICK.asks(name, dayTime(tick.at, this.app.now())),
      no: UNTICK.no,
      yes: UNTICK.yes,
      act: () => this.take(id, of),
    });
  }

  /** @param {string} id @param {string} of */
  asks(id, of) {
    return this.#asking === `${id} ${of}`;
  }

  /**
   * The question before a job whose time is still to come, once its box was touched.
   * @param {string} id
   * @param {Batch} batch
   * @param {import('../types').Job} job
   */
  ahead(id, batch, job) {
    const { id: of, early, ticked, does } = job;
    if (!early || ticked !== null || !this.asks(id, of)) return nothing;
    return this.#question({
      box: boxId(id, of),
      asks: AHEAD.asks(jobHead(job, { app: this.app, batch }), tooEarly(early, does)),
      no: AHEAD.no,
      yes: AHEAD.yes,
      act: () => this.set(id, { of }),
    });
  }

  /**
   * When it went into the cold, where it was on for long by then.
   * @param {string} id
   * @param {Batch} batch
   * @param {import('../types').Job} job
   */
  whenIn(id, batch, { id: of, does }) {
    const rub = batch.ticks.find((tick) => tick.of === 'rub');
    if (does.is !== 'into_fridge' || !does.on || !rub || !this.asks(id, of)) return nothing;
    const asks = COLD.asks(does.on);
    const went = (/** @type {number} */ at) => (/** @type {MouseEvent} */ e) =>
      onceOnly(e) && this.set(id, { of }, undefined, at);
    return html`<div class="asks noprint" role="group" aria-label=${asks}>
      <p>${asks}</p>
      <div class="acts">
        <button type="button" class="btn less" @click=${went(rub.at)}>${COLD.then}</button>
        <button type="button" class="btn less" @click=${went(this.app.now())}>${COLD.now}</button>
        <button type="button" class="btn quiet less" @click=${went(this.app.now())}>${COLD.notSure}</button>
      </div>
    </div>`;
  }

  /** @param {{ box: string, asks: string, no: string, yes: string, act: () => unknown }} spec */
  #question({ box, asks, no, yes, act }) {
    const leave = () => {
      this.#asking = '';
      this.app.draw();
      document.getElementById(box)?.focus();
    };
    return html`<div class="asks noprint" role="group" aria-label=${asks}>
      <p>${asks}</p>
      <div class="acts">
        <button type="button" class="btn less" @click=${leave}>${no}</button>
        <button type="button" class="btn less" @click=${act}>${yes}</button>
      </div>
    </div>`;
  }
}

/**
 * The second click of a double click is nobody's wish: after the first, another line may lie under the finger.
 * @param {MouseEvent} event
 */
export function onceOnly(event) {
  if (event.detail > 1) event.preventDefault();
  return event.detail <= 1;
}

/** @param {string} id @param {string} of */
export function boxId(id, of) {
  return `t-${id}-${of.replaceAll(':', '-')}`;
}

/** @param {Batch} batch @param {string} of */
function isNewest(batch, of) {
  return batch.ticks.at(-1)?.of === of;
}
