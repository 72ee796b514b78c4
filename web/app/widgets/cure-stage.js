/** The part of the Cure stage that goes by the clock: forecast, refrigerator, cut. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from './answer.js';
import { clockNotes, clockWhy, soaking } from './clock.js';
import { CutForm } from './cut-form.js';
import { FridgeForm } from './fridge-form.js';
import { sizes, untilAnswer } from './until.js';
import { why } from './why.js';

/** @typedef {import('../types').Batch} Batch */

export class CureStage {
  /** @param {import('../app.js').App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.id = id;
    this.fridge = new FridgeForm(app, id);
    this.cut = new CutForm(app, id);
  }

  /** Until when it stays in, and why. @param {Batch} batch */
  answer(batch) {
    const { ok, problems } = this.#ask(batch);
    if (problems) return problemStrip(this.app, problems);
    return ok ? untilAnswer(this.app, this.id, batch, ok) : nothing;
  }

  /**
   * What is to be known of it, each size where sizes differ, and the reasons.
   * @param {Batch} batch
   * @param {boolean} lost it is past mending, and no hour is told
   */
  leaf(batch, lost) {
    const { ok } = this.#ask(batch);
    if (!ok) return nothing;
    const now = this.app.now();
    // What came out has no use for what to take out first.
    const over = lost || ok.ended !== null;
    const notes = over ? ok.notes.filter(({ mark }) => mark !== 'ok') : ok.notes;
    return html`${clockNotes(notes)} ${over ? nothing : sizes(ok, now)}
    ${ok.classes.length ? why('cure', clockWhy(ok, now)) : nothing}`;
  }

  /** Log, cut, soaking. @param {Batch} batch */
  plate(batch) {
    const { ok } = this.#ask(batch);
    if (!ok) return nothing;
    return html`${this.fridge.draw(batch, ok.asked)} ${this.cut.draw(batch, ok)} ${soaking(ok)}`;
  }

  /** Nothing is asked before the rub is on. @param {Batch} batch */
  #ask(batch) {
    if (!batch.ticks.some(({ of }) => of === 'rub')) return { ok: null, problems: undefined };
    const { app } = this;
    const soak = this.cut.soakTo;
    return ask('cure_clock', { batch, now: app.now(), settings: app.settings, ...(soak && { soak_to: soak }) });
  }
}
