/** The log of the fire and the chill: what it asks of the core, and what it keeps. */
import { ask } from '../ask.js';
import { FireAfter } from './fire-after.js';
import { FireBefore, UNLIT } from './fire-before.js';
import { span } from './fire-next.js';
import { FirePad } from './fire-pad.js';
import { pieceName } from '../../words/en/cuts.js';
import { SMOKER, logged } from '../../words/en/fire-readings.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Fire} Fire */
/** @typedef {import('../types').FireReading} FireReading */

export class FireLog {
  /** @param {App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.id = id;
    this.pad = new FirePad(app, (reading, corrects) => this.#log(reading, corrects));
    const change = (/** @type {(fire: Fire) => Fire} */ work) => this.#change(work);
    this.before = new FireBefore(app, change, (cover) => this.#cover(cover));
    this.after = new FireAfter(app, change);
    /** @type {import('./fire-readings.js').Acts} */
    this.acts = {
      change,
      mark: (place, what, says) => this.#mark(place, what, says),
      correct: (reading) => this.pad.correct(reading),
    };
  }

  /** @param {Batch} batch */
  ask(batch) {
    return ask('fire_log', { batch, now: this.app.now(), settings: this.app.settings });
  }

  /**
   * @param {(fire: Fire) => Fire} change
   * @param {import('../app.js').Said} [undo]
   */
  #change(change, undo) {
    const work = () =>
      this.app.shelf.changeBatch(this.id, (batch) => ({ ...batch, fire: change(batch.fire ?? UNLIT) }));
    return this.app.act(work, undo);
  }

  /**
   * A pan or a wrap. Before the first reading it is there from the start, then from now on.
   * @param {import('../types').Cover} cover
   */
  #cover(cover) {
    const at = this.app.now();
    const work = () =>
      this.app.shelf.changeBatch(this.id, (batch) => {
        const fire = batch.fire ?? UNLIT;
        const bare = batch.ticks.filter(({ of }) => of !== 'pan' && !of.startsWith('wrap:'));
        const lit = fire.readings.some(({ struck }) => !struck);
        if (!lit || cover === 'dry') return { ...batch, ticks: bare, fire: { ...fire, cover } };
        const on = (/** @type {string} */ of) => batch.ticks.find((tick) => tick.of === of) ?? { of, at };
        const pan = batch.ticks.filter(({ of }) => of === 'pan');
        const put = cover === 'pan' ? [on('pan')] : [...pan, ...batch.pieces.map((_, place) => on(`wrap:${place}`))];
        const from = cover === 'pan' && fire.cover === 'wrapped' ? 'dry' : fire.cover;
        return { ...batch, fire: { ...fire, cover: from }, ticks: [...bare, ...put] };
      });
    return this.app.act(work);
  }

  /** @param {number} place @param {Partial<FireReading>} what @param {string} [says] */
  #mark(place, what, says) {
    const set = (/** @type {Partial<FireReading>} */ some) => (/** @type {Fire} */ fire) => ({
      ...fire,
      readings: fire.readings.map((one, at) => (at === place ? { ...one, ...some } : one)),
    });
    return this.#change(set(what), says ? { says, here: true } : undefined);
  }

  /** @param {FireReading} reading @param {string | null} corrects */
  async #log(reading, corrects) {
    const asked = document.getElementById('odd');
    const kept = await this.#change((fire) => ({
      ...fire,
      readings: [...fire.readings.map((one) => (one.id === corrects ? { ...one, struck: true } : one)), reading],
    }));
    if (!kept) return false;
    // What is asked now stands above the keys.
    if (!asked) document.getElementById('odd')?.focus();
    const batch = this.app.shelf.batches.get(this.id);
    const sheet = batch && this.ask(batch).ok;
    const one = reading.class === undefined ? undefined : sheet?.classes[reading.class];
    const window = one?.outlook?.window;
    this.app.say(
      logged(
        one ? pieceName(one.of) : SMOKER,
        Boolean(sheet?.doubts.length),
        window ? span(window, this.app.now()) : undefined,
      ),
    );
    return true;
  }
}
