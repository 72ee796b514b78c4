/** Yield and salt, by the weight after the fire. */
import { html, nothing } from 'lit-html';
import { afterBasis } from '../../words/en/fire.js';
import { glue } from '../../words/glue.js';
import { worded } from '../../words/en/wrong.js';
import { field } from './field.js';
import { Form } from './form.js';
import { strip } from './verdict.js';
import { AFTER } from '../../words/en/fire-readings.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Fire} Fire */
/** @typedef {import('../types').FireSheet} FireSheet */

export class FireAfter {
  #out = new Form('out');

  /** @param {import('../app.js').App} app @param {(change: (fire: Fire) => Fire) => Promise<unknown>} change */
  constructor(app, change) {
    this.app = app;
    this.change = change;
  }

  /** @param {Batch} batch @param {FireSheet} sheet */
  draw(batch, { after, after_wrong }) {
    const unit = this.app.settings.units === 'us' ? 'oz' : 'g';
    const out = batch.fire?.out ?? '';
    const send = (/** @type {Event} */ event) => {
      event.preventDefault();
      const read = this.#out.read(
        [{ key: 'out', label: AFTER.head, kind: 'mass', unit, optional: true, stored: out }],
        this.app.settings.units,
      );
      if (!read) return this.app.draw();
      const weight = read['out'];
      this.#out.clear();
      return this.change(({ out: _, ...rest }) => (weight ? { ...rest, out: weight } : rest));
    };
    return html`<section class="block">
      <h2>${AFTER.head}</h2>
      ${after_wrong ? html`<div class="gap">${strip('ask', AFTER.cannotSay, glue(worded(after_wrong).message))}</div>` : nothing}
      ${
        after
          ? html`<p class="near">${AFTER.came(after)}</p>
              <p class="src">${glue(afterBasis(after))}</p>`
          : nothing
      }
      <form class="noprint" novalidate @submit=${send}>
        ${field(this.#out, {
          key: 'out',
          label: AFTER.all,
          hint: AFTER.hint,
          unit,
          stored: out,
          optional: true,
        })}
        <button class="btn wide">${AFTER.save}</button>
      </form>
    </section>`;
  }
}
