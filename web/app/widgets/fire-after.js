/** Yield and salt, by the weight after the fire. */
import { html, nothing } from 'lit-html';
import { afterBasis } from '../words/fire.js';
import { glue } from '../words/glue.js';
import { worded } from '../words/wrong.js';
import { field } from './field.js';
import { Form } from './form.js';
import { strip } from './verdict.js';

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
        [{ key: 'out', label: 'Weight after the fire', kind: 'mass', unit, optional: true, stored: out }],
        this.app.settings.units,
      );
      if (!read) return this.app.draw();
      const weight = read['out'];
      this.#out.clear();
      return this.change(({ out: _, ...rest }) => (weight ? { ...rest, out: weight } : rest));
    };
    return html`<section class="block">
      <h2>Weight after the fire</h2>
      ${after_wrong ? html`<div class="gap">${strip('ask', 'Cannot say yet', glue(worded(after_wrong).message))}</div>` : nothing}
      ${
        after
          ? html`<p class="near">
                <b class="nowrap">${after.share}</b> of the trimmed
                weight${
                  after.salt
                    ? html`, <b class="nowrap">${after.salt}</b> salt, <b class="nowrap">${after.brine}</b> salt in its
                        water, water activity about <b class="nowrap">${after.activity}</b> (an estimate)`
                    : nothing
                }.
              </p>
              <p class="src">${glue(afterBasis(after))}</p>`
          : nothing
      }
      <form class="noprint" novalidate @submit=${send}>
        ${field(this.#out, {
          key: 'out',
          label: 'All pieces together',
          hint: 'Weighed once they are cold.',
          unit,
          stored: out,
          optional: true,
        })}
        <button class="btn wide">Keep this weight</button>
      </form>
    </section>`;
  }
}
