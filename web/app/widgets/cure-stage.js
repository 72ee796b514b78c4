/** The part of the Cure stage that goes by the clock: forecast, refrigerator, cut. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from './answer.js';
import { clockClasses, clockNotes } from './clock.js';
import { CutForm } from './cut-form.js';
import { FridgeForm } from './fridge-form.js';

/** @typedef {import('../types').Batch} Batch */

export class CureStage {
  /** @param {import('../app.js').App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.fridge = new FridgeForm(app, id);
    this.cut = new CutForm(app, id);
  }

  /** What is said of the whole, beside the jobs. @param {Batch} batch */
  leaf(batch) {
    const { ok, problems } = this.#ask(batch);
    if (problems) return problemStrip(this.app, problems);
    return ok ? clockNotes(ok, this.app.now()) : nothing;
  }

  /** Size classes, log, cut. @param {Batch} batch */
  plate(batch) {
    const { ok } = this.#ask(batch);
    if (!ok) return nothing;
    return html`${clockClasses(ok, this.app.now())} ${this.fridge.draw(batch)} ${this.cut.draw(batch, ok)}`;
  }

  /** Nothing is asked before the rub is on. @param {Batch} batch */
  #ask(batch) {
    if (!batch.ticks.some(({ of }) => of === 'rub')) return { ok: null, problems: undefined };
    const { app } = this;
    const soak = this.cut.soakTo;
    return ask('cure_clock', { batch, now: app.now(), settings: app.settings, ...(soak && { soak_to: soak }) });
  }
}
