/** Past batches: search over all, a bag without a label, two side by side, a year at a time with its weights. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { stateOf } from '../widgets/batch-head.js';
import { icon, tagMark } from '../widgets/icon.js';
import { itemName } from '../../words/en/ingredients.js';
import { cutName, pieceName } from '../../words/en/cuts.js';
import { heldWords } from '../../words/en/doubts.js';
import { markOf } from '../widgets/doubts.js';
import { UNITS, shortCode } from '../../words/en/names.js';
import { cameOut, mayBe, totalOut } from '../../words/en/stock.js';
import { fullDate } from '../../words/time.js';
import {
  BAG,
  BESIDE,
  ROW,
  SEEK,
  TITLE,
  cameOutOf,
  listed as listedWords,
  toChange,
  trimmed,
  trimmedAnd,
  underName,
  yearWith,
} from '../../words/en/all-batches.js';
import { PLACES, showMore } from '../../words/en/places.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */

/** So many are drawn at a time. */
const PAGE = 30;

/** @param {App} app @returns {import('../app.js').Screen} */
export function past(app) {
  let sought = '';
  let year = '';
  let shown = PAGE;
  /** @type {string[]} ids of those that lie side by side, two at most */
  let beside = [];
  /** @type {Map<Batch, string>} all the words of a batch, made once */
  const words = new Map();
  /** What is in doubt on a batch, asked once for as long as it does not change. @type {WeakMap<Batch, import('../types').Doubt[]>} */
  const doubted = new WeakMap();
  const bag = new Form('bag');
  /** What the core last said of them, and of what it was asked. @type {{ of: string, said: import('../types').Ledger | undefined }} */
  let book = { of: '', said: undefined };

  /** @param {string} id @param {Batch} batch */
  function wordsOf(id, batch) {
    let all = words.get(batch);
    if (all === undefined) {
      const cuts = batch.pieces.map(({ cut, name }) => `${cutName(cut) ?? ''} ${name ?? ''}`);
      const { out, cut, taste, change } = batch.after ?? {};
      const inside = [
        ...batch.recipe.cures.map(({ item }) => itemName({ item })),
        ...batch.recipe.lines.map(({ item, name }) => `${itemName({ item })} ${name ?? ''}`),
      ];
      const days = [began(batch), ...batch.ticks.map(({ at }) => at)].filter((at) => at !== null);
      const parts = [
        batch.name,
        batch.tag,
        shortCode(batch.tag, id),
        batch.notes,
        batch.killed,
        batch.recipe.name,
        batch.recipe.notes,
        ...cuts,
        ...inside,
        ...new Set(days.map((at) => fullDate(at))),
      ];
      all = [...parts, out, cut, taste, change].filter(Boolean).join(' ').toLowerCase();
      words.set(batch, all);
    }
    return all;
  }

  /** Who got of which batch, by the packs in the stock. @returns {Map<string, string>} */
  function people() {
    const all = new Map();
    for (const [, { batch, to }] of app.shelf.stock) {
      if (batch && to) all.set(batch, `${all.get(batch) ?? ''} ${to.toLowerCase()}`);
    }
    return all;
  }

  /** @param {string} id */
  const lay = (id) => {
    beside = beside.includes(id) ? beside.filter((one) => one !== id) : [...beside, id].slice(-2);
    app.draw();
  };

  function draw() {
    const all = [...app.shelf.batches].sort(([a], [b]) => (a < b ? 1 : -1));
    const asked = sought.toLowerCase().split(/\s+/).filter(Boolean);
    const years = [...new Set(all.map(([, batch]) => yearOf(batch)))].sort().reverse();
    const got = asked.length ? people() : new Map();
    const says = (/** @type {string} */ id, /** @type {Batch} */ batch) => `${wordsOf(id, batch)}${got.get(id) ?? ''}`;
    const found = all.filter(
      ([id, batch]) => (!year || yearOf(batch) === year) && asked.every((word) => says(id, batch).includes(word)),
    );
    const listed = ledger(found);
    const rows = listed?.rows.map(({ batch, ...row }) => ({ id: batch, ...row }));
    const seen = bagged() && rows ? rows.map(({ id }) => id) : found.map(([id]) => id);
    const unread = app.shelf.size - app.shelf.batches.size;
    const view = html`<div class="leaf">
      <h1 tabindex="-1">${TITLE}</h1>
      <div class="field">
        <label for="seek">${SEEK.label}</label>
        <span class="hint" id="seek-hint">${SEEK.hint}</span>
        <input
          id="seek"
          class="plainfield"
          type="search"
          autocomplete="off"
          aria-describedby="seek-hint"
          .value=${sought}
          @input=${(/** @type {{ target: HTMLInputElement }} */ { target }) => ((sought = target.value), (shown = PAGE), app.draw())}
        />
      </div>
      <div class="field">
        <label for="year">${SEEK.year}</label>
        <select
          id="year"
          .value=${year}
          @change=${(/** @type {{ target: HTMLSelectElement }} */ { target }) => ((year = target.value), (shown = PAGE), app.draw())}
        >
          <option value="">${SEEK.allYears}</option>
          ${years.map((one) => html`<option value=${one}>${yearWith(one, all.filter(([, batch]) => yearOf(batch) === one).length)}</option>`)}
        </select>
      </div>
      <details class="block noprint" ?open=${bag.typed.length > 0}>
        <summary>${BAG.head}</summary>
        <p class="small near">${BAG.says}</p>
        ${field(bag, { key: 'weight', label: BAG.weight, unit: UNITS[app.settings.units].mass ?? '', hint: UNITS[app.settings.units].mass ? '' : BAG.hint, look: 'small', optional: true }, { typed: app.draw })}
        ${field(bag, { key: 'thickness', label: BAG.thickness, unit: UNITS[app.settings.units].length, look: 'small', optional: true }, { typed: app.draw })}
      </details>
      ${listed && year && !bagged() ? totals(listed) : nothing}
      ${beside.length ? sideBySide(beside.flatMap((id) => app.shelf.batches.get(id) ?? [])) : nothing}
      <p class="lead block" data-say="figures">${listedWords(seen.length, bagged(), unread)}</p>
      <ul class="days">
        ${seen.slice(0, shown).map((id) => {
          const batch = app.shelf.batches.get(id);
          return batch
            ? row(
                id,
                batch,
                rows?.find((one) => one.id === id),
              )
            : nothing;
        })}
      </ul>
      ${
        seen.length > shown
          ? html`<button type="button" class="btn quiet wide gap" @click=${() => ((shown += PAGE), app.draw())}>
              ${showMore(PAGE)}
            </button>`
          : nothing
      }
    </div>`;
    return { title: TITLE, back: { href: '#/today', text: PLACES.today }, one: true, view };
  }

  /** True where a bag is sought by what it weighs or measures. */
  const bagged = () => ['weight', 'thickness'].some((key) => bag.text(key).trim() !== '');

  /**
   * Weights of the batches of a year, or those that a bag may be of: asked once for as long as nothing changes.
   * @param {[string, Batch][]} found
   */
  function ledger(found) {
    if (!year && !bagged()) return undefined;
    const units = UNITS[app.settings.units];
    const read = bag.read(
      [
        { key: 'weight', label: BAG.weight, kind: 'mass', unit: units.mass, optional: true },
        { key: 'thickness', label: BAG.thickness, kind: 'length', unit: units.length, optional: true },
      ],
      app.settings.units,
    );
    if (!read) return undefined;
    const of = JSON.stringify([found.map(([id]) => id), read, app.settings.units]);
    if (book.of !== of) {
      const { ok } = ask('ledger', {
        batches: found.map(([id, { pieces, after }]) => ({ id, pieces, out: after?.out })),
        // Only packs of a batch have a weight to go by.
        stock: [...app.shelf.stock].flatMap(([id, stock]) => (stock.batch ? [{ id, stock }] : [])),
        weight: read['weight'],
        thickness: read['thickness'],
        settings: app.settings,
      });
      book = { of, said: ok };
    }
    return book.said;
  }

  /** @param {import('../types').Ledger} said */
  function totals({ green, out }) {
    return html`<section class="block">
      <h2>${year}</h2>
      <p class="lead">${trimmed(green)}</p>
      ${out ? html`<p>${cameOutOf(totalOut(out))}</p>` : nothing}
    </section>`;
  }

  /** @param {string} id @param {Batch} batch @param {Partial<import('../types').LedgerRow>} [book] */
  function row(id, batch, book) {
    return html`<li class="held">
      <a class="batch" href="#/batch/${id}/pack"
        >${tagMark(batch.tag)}<b>${batch.name}</b
        ><span class="p">${underName(shortCode(batch.tag, id), dayOf(batch), batch.closed)}</span></a
      >
      ${doubtOf(id, batch)} ${book?.why?.map((why) => html`<span>${mayBe(why, batch.pieces, pieceName)}</span>`)}
      ${
        book?.green && !book.why?.length
          ? html`<span>${trimmedAnd(book.green, book.out ? cameOut(book.out) : '')}</span>`
          : nothing
      }
      ${batch.after?.change ? html`<span>${toChange(batch.after.change)}</span>` : nothing}
      <span class="acts noprint"
        ><button type="button" class="btn quiet less" @click=${() => lay(id)}>
          ${beside.includes(id) ? ROW.back : ROW.beside}<span class="vh">: ${batch.name} ${batch.tag}</span>
        </button></span
      >
    </li>`;
  }

  /** What is past mending or still in doubt goes with a batch into every list. @param {string} id @param {Batch} batch */
  function doubtOf(id, batch) {
    const doubts = doubted.get(batch) ?? stateOf(app, id, batch)?.doubts ?? [];
    doubted.set(batch, doubts);
    const grave = doubts.find(({ weight, kind }) => weight !== 'warns' && kind !== 'past_keeping');
    const says = grave ? heldWords([grave], batch, pieceName) : '';
    return grave && says
      ? html`<span class="flag ${markOf(grave)}">${icon(`s-${markOf(grave)}`, '')}<span>${says}</span></span>`
      : nothing;
  }

  /** @param {Batch[]} two */
  function sideBySide(two) {
    /** @type {[string, (batch: Batch) => unknown][]} */
    const rows = [
      [BESIDE.started, dayOf],
      [BESIDE.recipe, ({ recipe }) => recipe.name],
      [BESIDE.pieces, ({ pieces }) => pieces.reduce((sum, { count }) => sum + count, 0)],
      [BESIDE.out, ({ after }) => after?.out],
      [BESIDE.cut, ({ after }) => after?.cut],
      [BESIDE.taste, ({ after }) => after?.taste],
      [BESIDE.change, ({ after }) => after?.change],
      [BESIDE.notes, ({ notes }) => notes],
    ];
    return html`<section class="block">
      <h2>${BESIDE.head}</h2>
      ${two.length < 2 ? html`<p class="small">${BESIDE.one}</p>` : nothing}
      <table class="tbl beside">
        <thead>
          <tr>
            <td></td>
            ${two.map(({ tag, name }) => html`<th scope="col">${tag} ${name}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.map(
            ([head, say]) =>
              html`<tr>
                <th scope="row">${head}</th>
                ${two.map((batch) => html`<td>${say(batch) || BESIDE.none}</td>`)}
              </tr>`,
          )}
        </tbody>
      </table>
    </section>`;
  }

  return { draw };
}

/** When the cure went on, or the kill. @param {Batch} batch */
const began = ({ ticks, killed }) =>
  ticks.find(({ of }) => of === 'rub')?.at ?? (killed ? new Date(`${killed}T12:00`).getTime() : null);

/** @param {Batch} batch */
function dayOf(batch) {
  const at = began(batch);
  return at === null ? ROW.notStarted : fullDate(at);
}

/** @param {Batch} batch */
function yearOf(batch) {
  const at = began(batch);
  return at === null ? ROW.year : String(new Date(at).getFullYear());
}
