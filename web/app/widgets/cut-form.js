/** What the cut shows, kept for the next clock; and soaking, when it is too salty. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { learntWords } from '../words/clock.js';
import { KINDS, UNITS, count } from '../words/names.js';
import { field } from './field.js';
import { Form, errorSummary, focusErrors } from './form.js';
import { choose, option } from './pick.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').CureClock} CureClock */
/** @typedef {import('../types').Cutting} Cutting */
/** @typedef {import('../types').Finding} Finding */

/** @type {Record<Cutting, string>} */
const FOUND = {
  even: 'Coloured all through',
  ring: 'A middle that has not coloured',
  too_salty: 'Too salty outside',
  bland: 'Bland in the middle',
};

export class CutForm {
  #form = new Form('cut');

  /** @param {import('../app.js').App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.id = id;
  }

  /** Salt to soak down to, as far as it can be read. @returns {string | undefined} */
  get soakTo() {
    if (!this.#form.text('soak').trim()) return undefined;
    const values = this.#form.read(
      [{ key: 'soak', label: 'Salt to come down to', kind: 'share', unit: '%' }],
      this.app.settings.units,
      {
        quiet: true,
      },
    );
    return values?.soak ?? undefined;
  }

  /** @param {Batch} batch @param {CureClock} clock */
  draw(batch, clock) {
    if (clock.classes.length === 0) return nothing;
    const form = this.#form;
    const cut = form.text('class', String(clock.classes[0]?.at));
    const found = /** @type {Cutting} */ (form.text('found', 'even'));
    const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
      form.type(key, now);
      this.app.draw();
    };
    return html`<section class="block noprint">
      <h2>When it is cut</h2>
      <p class="near">What the cut shows teaches the clock how fast salt goes into your meat.</p>
      ${clock.learnt.map(
        (learnt) =>
          html`<p class="near" data-learnt>
            <b>${KINDS[learnt.kind] ?? 'Other meat'}</b>, ${count(learnt.cuts, 'cut')}: ${learntWords(learnt)}
          </p>`,
      )}
      ${
        this.app.settings.learned?.length
          ? html`<div class="acts">
              <button
                type="button"
                class="btn less"
                @click=${() => this.#put([], 'What the cuts taught is forgotten.')}
              >
                Forget what the cuts taught
              </button>
            </div>`
          : nothing
      }
      <form novalidate @submit=${(/** @type {Event} */ e) => this.#send(e, batch, Number(cut), found)}>
        ${errorSummary(form)}
        ${choose(
          {
            id: 'cut-class',
            label: 'Which was cut',
            value: cut,
            options: clock.classes.map(({ at, name }) => option(String(at), name, String(at) === cut)),
          },
          put('class'),
        )}
        ${choose(
          {
            id: 'cut-found',
            label: 'What it shows',
            value: found,
            options: Object.entries(FOUND).map(([key, word]) => option(key, word, key === found)),
          },
          put('found'),
        )}
        ${
          found === 'ring'
            ? field(
                form,
                { key: 'ring', label: 'How wide the grey middle is', unit: UNITS[this.app.settings.units].length },
                { typed: this.app.draw },
              )
            : nothing
        }
        <div class="block"><button type="submit" class="btn wide">Keep what the cut shows</button></div>
      </form>
      ${
        clock.classes.some(({ goal }) => goal)
          ? field(
              form,
              {
                key: 'soak',
                label: 'Too salty: soak it down to',
                hint: 'In per cent of salt. The times appear with each size class.',
                unit: '%',
                optional: true,
              },
              { typed: this.app.draw },
            )
          : nothing
      }
      ${
        clock.classes.some(({ soak }) => soak)
          ? html`<p class="near">
              Soak it at 2 to 4 °C (36 to 40 °F). That takes out salt; it does not undo an overdose of cure. Fry a slice
              and taste it: that is the last word.
            </p>`
          : nothing
      }
    </section>`;
  }

  /** @param {Event} event @param {Batch} batch @param {number} at @param {Cutting} found */
  async #send(event, batch, at, found) {
    event.preventDefault();
    const form = this.#form;
    const unit = UNITS[this.app.settings.units].length;
    const values =
      found === 'ring'
        ? form.read(
            [{ key: 'ring', label: 'How wide the grey middle is', kind: 'length', unit }],
            this.app.settings.units,
          )
        : {};
    const asked = { batch, class: at, found, at: this.app.now(), ...(values?.ring && { ring: values.ring }) };
    const { ok, problems } = values ? ask('learn_cut', asked) : { ok: null, problems: [] };
    form.mark((problems ?? []).map((one) => ({ ...one, field: found === 'ring' ? 'ring' : 'class' })));
    if (!ok) {
      this.app.draw();
      return focusErrors();
    }
    if (await this.#put([...(this.app.settings.learned ?? []), ok], 'Kept. The clock goes by it from now on.')) {
      form.clear();
      this.app.draw();
    }
  }

  /** @param {Finding[]} learned @param {string} says */
  #put(learned, says) {
    return this.app.act(() => this.app.shelf.changeSettings({ learned }), { says, here: true });
  }
}
