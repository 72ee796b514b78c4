/** The packs of a batch on the list of the freezer: put in from their labels, and given from their tag. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { field } from './field.js';
import { Form, errorSummary, focusErrors } from './form.js';
import { icon } from './icon.js';
import { choose, option } from './pick.js';
import { whoEats } from './who-eats.js';
import { GIVE, PUT } from '../../words/en/packing.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').PackRow} PackRow */
/**
 * @typedef {object} Going
 * @property {number} count
 * @property {string[]} weights of the first of them, as they are stored
 * @property {number | null} until
 * @property {string | null} out weight of all, where each is weighed
 * @property {boolean} frozen
 * @property {() => void} done
 * @property {() => void} give goes on to the gift tag
 */

const UNWEIGHED = '0 g';

export class PackBook {
  #form;
  #pack = '';
  /** Asked of each gift. @type {import('./who-eats.js').Eats} */
  #eats = '';
  /** It was pressed before that was said. */
  #unsaid = false;
  /** Who got the last one: said where it was pressed. */
  #gave = '';

  /** @param {App} app @param {string} id */
  constructor(app, id) {
    this.app = app;
    this.id = id;
    this.#form = new Form('given', `given.${id}`);
  }

  /** Packs of this batch that are here, the one to eat first on top. @returns {PackRow[]} */
  here() {
    const mine = [...this.app.shelf.stock].filter(([, { batch }]) => batch === this.id);
    const { ok } = ask('larder', {
      stock: mine.map(([id, stock]) => ({ id, stock })),
      batches: [],
      now: this.app.now(),
      settings: this.app.settings,
    });
    return ok?.packs ?? [];
  }

  /** The pack that is to be given; the first until another is chosen. */
  pack() {
    const here = this.here();
    return this.#pack === 'none' ? undefined : (here.find(({ id }) => id === this.#pack) ?? here[0]);
  }

  /** Who gets it. */
  to() {
    return this.#form.text('to').trim();
  }

  choosePack() {
    const here = this.here();
    const chosen = this.pack()?.id ?? 'none';
    return html`${errorSummary(this.#form)}
    ${
      here.length
        ? choose(
            {
              id: 'given-pack',
              label: GIVE.which,
              value: chosen,
              options: [
                ...here.map(({ id, weight }, at) =>
                  option(id, GIVE.pack(at + 1, here.length, weight?.text), id === chosen),
                ),
                option('none', GIVE.other, chosen === 'none'),
              ],
            },
            (id) => {
              this.#pack = id;
              this.app.draw();
            },
          )
        : nothing
    }
    ${field(
      this.#form,
      {
        key: 'to',
        label: GIVE.who,
        hint: GIVE.whoHint,
        look: 'words',
        optional: true,
      },
      { typed: this.app.draw },
    )}`;
  }

  /** @param {Going} going */
  putIn(going) {
    const { app } = this;
    const here = this.here();
    if (here.length) {
      return html`<p class="block noprint flag ok">${icon('s-ok', '')}<b>${PUT.onList(here.length)}</b></p>
        <div class="gap acts noprint">
          <button type="button" class="btn" @click=${going.give}>${PUT.give}</button>
          <a class="btn quiet" href="#/stock">${PUT.see}</a>
        </div>`;
    }
    return html`<div class="block noprint">
      <button type="button" class="btn wide" @click=${() => this.#put(going)}>
        ${PUT.went(going.count, going.frozen)}
      </button>
      <p class="small near">${PUT.says(going.weights.length >= going.count)}</p>
      ${app.shelf.batches.get(this.id)?.after?.out || !going.out ? nothing : html`<p class="small">${PUT.inAll(going.out)}</p>`}
    </div>`;
  }

  /** @param {Going} going */
  async #put({ count, weights, until, out, frozen, done }) {
    const { app, id } = this;
    const name = app.shelf.batches.get(id)?.name ?? '';
    /** @type {import('../shelf.js').Move[]} */
    const packs = Array.from({ length: count }, (_, at) => ({
      key: `stock/${newId()}`,
      from: undefined,
      to: {
        item: 'pack',
        name,
        weight: weights[at] ?? UNWEIGHED,
        batch: id,
        at: app.now(),
        ...(frozen ? { frozen } : {}),
        ...(until === null ? {} : { until }),
      },
    }));
    const batch = app.shelf.batches.get(id);
    if (out && batch && !batch.after?.out) {
      packs.push({ key: `batch/${id}`, from: batch, to: { ...batch, after: { ...batch.after, out } } });
    }
    const kept = await app.act(() => app.shelf.move(packs), {
      says: PUT.gone(count, frozen),
    });
    if (kept) done();
    app.draw();
  }

  /**
   * Who eats it, what follows from that, and the button.
   * @param {string | undefined} weight of a pack that is not on the list @param {import('../types').Paper} tag
   */
  give(weight, tag) {
    const pack = this.pack();
    const to = this.to();
    return html`<section class="block noprint" id="give">
      ${
        this.#gave && !to
          ? html`<p class="flag ok" id="gave" tabindex="-1">${icon('s-ok', '')}<b>${GIVE.noted(this.#gave)}</b></p>`
          : nothing
      }
      ${whoEats(this.#eats, this.#unsaid, tag.foot, (eats) => {
        [this.#eats, this.#unsaid] = [eats, false];
        this.app.draw();
      })}
      <button type="button" class="btn wide gap" @click=${() => this.#give(pack, weight)}>${GIVE.given(to)}</button>
    </section>`;
  }

  /** @param {PackRow | undefined} pack @param {string | undefined} weight */
  async #give(pack, weight) {
    const { app } = this;
    const to = this.to();
    if (!to) {
      this.#form.mark([{ code: 'missing', field: 'to', message: GIVE.noWho, choices: [] }]);
      app.draw();
      return focusErrors();
    }
    if (!this.#eats) {
      this.#unsaid = true;
      app.draw();
      /** @type {HTMLElement | null} */ (document.querySelector('#give input'))?.focus();
      return;
    }
    const key = `stock/${pack?.id ?? newId()}`;
    const old = pack && app.shelf.stock.get(pack.id);
    const name = app.shelf.batches.get(this.id)?.name ?? '';
    const data = {
      ...(old ?? { item: 'pack', name, weight: weight ?? UNWEIGHED, batch: this.id, at: app.now() }),
      to,
      gone: app.now(),
    };
    const kept = await app.act(() => app.shelf.move([{ key, from: old, to: data }]), {
      says: GIVE.noted(to),
    });
    if (kept) {
      this.#form.clear();
      [this.#pack, this.#eats, this.#gave] = ['', '', to];
    }
    app.draw();
    // The page is long, and what was pressed stands at its foot.
    document.getElementById('gave')?.focus();
  }
}
