/** The log of the fire and the chill: what it asks of the core, what it keeps, and where its parts stand. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { glue } from '../words/glue.js';
import { problemStrip } from './answer.js';
import { FireAfter } from './fire-after.js';
import { FireBefore, UNLIT } from './fire-before.js';
import { fireChart } from './fire-chart.js';
import { pullOrder, span, standing } from './fire-order.js';
import { FirePad } from './fire-pad.js';
import { doubts, readings } from './fire-readings.js';
import { smoker } from './fire-smoker.js';
import { chill, published, rules, stillOpen, worth } from './fire-worth.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Fire} Fire */
/** @typedef {import('../types').FireReading} FireReading */
/** @typedef {import('./tick.js').Ticker} Ticker */

export class FireLog {
  /** @param {App} app @param {string} id @param {Ticker} ticker @param {'fire' | 'pack'} stage */
  constructor(app, id, ticker, stage) {
    this.stage = stage;
    this.app = app;
    this.id = id;
    this.ticker = ticker;
    this.pad = new FirePad(app, (reading, corrects) => this.#log(reading, corrects));
    const change = (/** @type {(fire: Fire) => Fire} */ work) => this.#change(work);
    this.before = new FireBefore(app, change);
    this.after = new FireAfter(app, change);
    /** @type {import('./fire-readings.js').Acts} */
    this.acts = {
      change,
      mark: (place, what, says) => this.#mark(place, what, says),
      correct: (reading, place) => this.pad.correct(reading, place),
    };
  }

  /** @type {{ batch: Batch, settings: import('../types').Settings, at: number, answer: ReturnType<typeof ask<'fire_log'>> } | null} one answer for both columns */
  #last = null;

  /** @param {Batch} batch */
  ask(batch) {
    const at = this.app.now();
    const { settings } = this.app;
    if (this.#last?.batch !== batch || this.#last.settings !== settings || Math.abs(at - this.#last.at) > 1000) {
      this.#last = { batch, settings, at, answer: this.#asked(batch) };
    }
    return this.#last.answer;
  }

  /** @param {Batch} batch */
  #asked(batch) {
    return ask('fire_log', { batch, now: this.app.now(), settings: this.app.settings });
  }

  /**
   * @param {(fire: Fire) => Fire} change
   * @param {import('../app.js').Undo} [undo]
   */
  #change(change, undo) {
    const work = () =>
      this.app.shelf.changeBatch(this.id, (batch) => ({ ...batch, fire: change(batch.fire ?? UNLIT) }));
    return this.app.act(work, undo);
  }

  /** @param {number} place @param {Partial<FireReading>} what @param {string} [says] */
  #mark(place, what, says) {
    const set = (/** @type {Partial<FireReading>} */ some) => (/** @type {Fire} */ fire) => ({
      ...fire,
      readings: fire.readings.map((one, at) => (at === place ? { ...one, ...some } : one)),
    });
    const back = { struck: false, sure: false };
    return this.#change(set(what), says ? { says, here: true, back: () => this.#change(set(back)) } : undefined);
  }

  /** @param {FireReading} reading @param {number | null} corrects */
  async #log(reading, corrects) {
    const kept = await this.#change((fire) => ({
      ...fire,
      readings: [...fire.readings.map((one, at) => (at === corrects ? { ...one, struck: true } : one)), reading],
    }));
    if (!kept) return false;
    const batch = this.app.shelf.batches.get(this.id);
    const sheet = batch && this.ask(batch).ok;
    const one = reading.class === undefined ? undefined : sheet?.classes[reading.class];
    const window = one?.outlook?.window;
    this.app.say(
      `${one?.name ?? 'Cabinet'}: logged. ${
        sheet?.doubts.length
          ? 'A reading is in question.'
          : window
            ? `Pull between ${span(window, this.app.now())}.`
            : ''
      }`,
    );
    return true;
  }

  /** What stands in the column of the card. @param {Batch} batch */
  leaf(batch) {
    const { ok, problems } = this.ask(batch);
    if (problems) return html`<div class="block">${problemStrip(this.app, problems)}</div>`;
    if (!ok || ok.classes.length === 0) return nothing;
    const asked = doubts(batch, ok, this.acts);
    if (this.stage === 'pack') {
      if (!ok.classes.some((one) => one.pulled)) return nothing;
      const now = this.app.now();
      return [asked, this.pad.draw(ok), ok.classes.map((one, i) => chill(one, i, now)), published(ok, true)];
    }
    return [
      this.before.draw(batch, ok),
      asked,
      standing(ok, this.app.now()),
      this.pad.draw(ok),
      smoker(this.app, ok.smoker),
      published(ok, false),
    ];
  }

  /** The picture and what it is worth. @param {Batch} batch */
  plate(batch) {
    const { ok } = this.ask(batch);
    if (!ok || ok.classes.length === 0) return nothing;
    if (this.stage === 'pack' && !ok.classes.some((one) => one.pulled)) return nothing;
    const now = this.app.now();
    const picture = fireChart(ok, now, this.app.settings.units);
    const care = html`<section class="block cautions">
      ${ok.cautions.map((text) => html`<p class="caution">${glue(text)}</p>`)}
    </section>`;
    const rows = readings(batch, ok, now, this.acts);
    if (this.stage === 'pack') return [picture, this.after.draw(batch, ok), rows, care];
    const order = pullOrder(
      ok,
      now,
      (of, name) => this.ticker.set(this.id, { of }, `${name} is pulled. Now chill it.`),
      (of) => this.ticker.take(this.id, of),
    );
    return [order, picture, stillOpen(ok), ok.classes.map(worth), rules(ok), rows, care];
  }
}
