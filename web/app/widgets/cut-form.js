/** What the cut shows, kept for the next clock; and soaking, when it is too salty. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { countedPieces } from '../../words/en/cuts.js';
import { learntWords } from '../../words/en/clock.js';
import { KINDS, UNITS } from '../../words/en/names.js';
import { field } from './field.js';
import { Form, errorSummary, focusErrors } from './form.js';
import { choose, option } from './pick.js';
import { CUT, FOUND } from '../../words/en/sizes.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').CureClock} CureClock */
/** @typedef {import('../types').Cutting} Cutting */
/** @typedef {import('../types').Finding} Finding */

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
      [{ key: 'soak', label: CUT.soakTo, kind: 'share', unit: '%' }],
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
      <h2>${CUT.head}</h2>
      <p class="near">${CUT.about}</p>
      ${clock.learnt.map(
        (learnt) =>
          html`<p class="near" data-learnt>
            ${CUT.learnt(KINDS[learnt.kind] ?? CUT.other, learnt.cuts, learntWords(learnt))}
          </p>`,
      )}
      ${
        this.app.settings.learned?.length
          ? html`<div class="acts">
              <button type="button" class="btn less" @click=${() => this.#put([], CUT.forgotten)}>${CUT.forget}</button>
            </div>`
          : nothing
      }
      <form novalidate @submit=${(/** @type {Event} */ e) => this.#send(e, batch, Number(cut), found)}>
        ${errorSummary(form)}
        ${choose(
          {
            id: 'cut-class',
            label: CUT.which,
            value: cut,
            options: clock.classes.map(({ at, of }) => option(String(at), countedPieces(of), String(at) === cut)),
          },
          put('class'),
        )}
        ${choose(
          {
            id: 'cut-found',
            label: CUT.found,
            value: found,
            options: Object.entries(FOUND).map(([key, word]) => option(key, word, key === found)),
          },
          put('found'),
        )}
        ${
          found === 'ring'
            ? field(
                form,
                { key: 'ring', label: CUT.ring, unit: UNITS[this.app.settings.units].length },
                { typed: this.app.draw },
              )
            : nothing
        }
        <div class="block"><button type="submit" class="btn wide">${CUT.keep}</button></div>
      </form>
      ${
        clock.classes.some(({ goal }) => goal)
          ? field(
              form,
              {
                key: 'soak',
                label: CUT.soak,
                hint: CUT.soakHint,
                unit: '%',
                optional: true,
              },
              { typed: this.app.draw },
            )
          : nothing
      }
      ${clock.classes.some(({ soak }) => soak) ? html`<p class="near">${CUT.soakHow()}</p>` : nothing}
    </section>`;
  }

  /** @param {Event} event @param {Batch} batch @param {number} at @param {Cutting} found */
  async #send(event, batch, at, found) {
    event.preventDefault();
    const form = this.#form;
    const unit = UNITS[this.app.settings.units].length;
    const values =
      found === 'ring'
        ? form.read([{ key: 'ring', label: CUT.ring, kind: 'length', unit }], this.app.settings.units)
        : {};
    const asked = { batch, class: at, found, at: this.app.now(), ...(values?.ring && { ring: values.ring }) };
    const { ok, problems } = values ? ask('learn_cut', asked) : { ok: null, problems: [] };
    form.mark((problems ?? []).map((one) => ({ ...one, field: found === 'ring' ? 'ring' : 'class' })));
    if (!ok) {
      this.app.draw();
      return focusErrors();
    }
    if (await this.#put([...(this.app.settings.learned ?? []), ok], CUT.kept)) {
      form.clear();
      this.app.draw();
    }
  }

  /** @param {Finding[]} learned @param {string} says */
  #put(learned, says) {
    return this.app.act(() => this.app.shelf.changeSettings({ learned }), { says, here: true });
  }
}
