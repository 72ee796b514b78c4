/** Stock: what came in and what is left of it, packs first in first out, and who got what. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { answered } from '../widgets/answer.js';
import { field, wrong } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { icon } from '../widgets/icon.js';
import { choose, option } from '../widgets/pick.js';
import { doubtWords, markOf } from '../words/doubts.js';
import { shortCode, pieceName } from '../words/names.js';
import { inHouse } from '../words/stock.js';
import { fullDate } from '../words/time.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').PackRow} PackRow */
/** @typedef {import('../types').LarderRow} LarderRow */

const DAY_MS = 86_400_000;
/** So many packs are drawn at first; more at a touch. The answer for a key that is typed comes at once then. */
const IN_SIGHT = 40;

/** @param {App} app @returns {import('../app.js').Screen} */
export function stock(app) {
  const came = new Form('came', 'stock');
  const packed = new Form('packed', 'packs');
  let item = 'cure-1';
  /** More than one thing comes in at a time, so the form stays open. */
  let stays = false;
  /** @type {string} the pack that is being given away */
  let giving = '';
  const gift = new Form('gift', 'gift');

  /** @param {string} id @param {any} data @param {string} says */
  const keep = (id, data, says) =>
    app.act(() => app.shelf.add(`stock/${id}`, data), {
      says,
    });

  const add = async () => {
    const bags = item === 'bags';
    const fields = bags
      ? [{ key: 'count', label: 'How many', kind: /** @type {const} */ ('count') }]
      : [{ key: 'weight', label: 'How much', kind: /** @type {const} */ ('mass'), unit: 'g' }];
    const read = came.read(fields, app.settings.units);
    const name = came.text('name').trim();
    const unnamed = item === 'own' && !name;
    if (unnamed) came.mark([{ code: 'missing', field: 'name', message: 'Type what it is called.', choices: [] }]);
    if (read && !unnamed) {
      const data = {
        item,
        ...(item === 'own' ? { name } : {}),
        ...(bags ? { count: Number(read['count']), weight: '0 g' } : { weight: read['weight'] }),
        at: app.now(),
      };
      if (await keep(newId(), data, 'It is written down.')) {
        came.clear();
        stays = true;
      }
    }
    app.draw();
    focusErrors();
  };

  const addPack = async () => {
    const read = packed.read([{ key: 'weight', label: 'Weight', kind: 'mass', unit: 'g' }], app.settings.units);
    const name = packed.text('name').trim();
    if (!name) packed.mark([{ code: 'missing', field: 'name', message: 'Type what is in it.', choices: [] }]);
    const day = packed.text('until');
    if (!day)
      packed.mark([{ code: 'missing', field: 'until', message: 'Give the use-by from its label.', choices: [] }]);
    if (read && name && day) {
      const until = day ? new Date(`${day}T12:00`).getTime() : null;
      const data = { item: 'pack', name, weight: read['weight'], at: app.now(), ...(until ? { until } : {}) };
      if (await keep(newId(), data, `${name} is in the list.`)) packed.clear();
    }
    app.draw();
    focusErrors();
  };

  /** @param {string} id @param {string} to */
  const goes = (id, to) =>
    app.act(() => app.shelf.changeStock(id, (one) => ({ ...one, to, gone: app.now() })), { says: `Gone: ${to}.` });

  /** @param {string} id @param {string} name */
  const remove = async (id, name) => {
    await app.act(() => app.shelf.remove(`stock/${id}`), {
      says: `${name} is deleted.`,
    });
  };

  /** @type {{ of: unknown[], answer: ReturnType<typeof ask<'larder'>> } | null} */
  let last = null;
  let packsShown = IN_SIGHT;
  let goneShown = IN_SIGHT;

  /** What is in the house: asked again where the stock, the batches, the settings or the minute is another. */
  function larder() {
    const { stock: here, batches: all } = app.shelf;
    const minute = Math.floor(app.now() / 60_000);
    const of = [app.settings, minute, ...here.keys(), ...here.values(), ...all.values()];
    if (last && of.length === last.of.length && of.every((one, at) => one === last?.of[at])) return last.answer;
    const things = [...here].map(([id, stock]) => ({ id, stock }));
    const since = Math.min(...things.filter(({ stock }) => stock.item !== 'pack').map(({ stock }) => stock.at));
    const ofPacks = new Set(things.map(({ stock }) => stock.batch));
    // A batch that was done before anything came in took nothing of it; of those with a pack here the standing counts.
    const batches = [...all]
      .filter(([id, { ticks }]) => ofPacks.has(id) || ticks.some(({ at }) => at >= since))
      .map(([id, batch]) => ({ id, batch }));
    last = { of, answer: ask('larder', { stock: things, batches, now: app.now(), settings: app.settings }) };
    return last.answer;
  }

  /** @param {number} left @param {() => void} show */
  const more = (left, show) =>
    left > 0
      ? html`<button type="button" class="btn quiet wide gap noprint" @click=${() => (show(), app.draw())}>
          Show ${left} more
        </button>`
      : nothing;

  function draw() {
    const answer = larder();
    const view = html`<div class="leaf">
      <h1 tabindex="-1">Stock</h1>
      ${answered(app, answer, ({ rows, packs, gone }) => [
        html`<section class="sec">
          <h2>Cure, salt, spice</h2>
          ${
            rows.length
              ? html`<ul class="days">
                  ${rows.map(thing)}
                </ul>`
              : html`<p class="lead">Nothing is written down yet.</p>`
          }
          <details class="block noprint" ?open=${stays || came.typed.length > 0}>
            <summary>Write down what came in</summary>
            ${errorSummary(came)}
            ${choose(
              {
                id: 'came-item',
                label: 'What',
                value: item,
                options: html`${app.tables.ingredients
                  .filter(({ group }) => group !== 'liquid')
                  .map(({ key, name }) =>
                    option(key, name, key === item),
                  )}${option('bags', 'Bags', item === 'bags')}${option('own', 'Something else', item === 'own')}`,
              },
              (value) => ((item = value), app.draw()),
            )}
            ${item === 'own' ? field(came, { key: 'name', label: 'Name', look: 'words' }, { typed: app.draw }) : nothing}
            ${
              item === 'bags'
                ? field(came, { key: 'count', label: 'How many', keys: 'numeric', look: 'small' }, { typed: app.draw })
                : field(came, { key: 'weight', label: 'How much', unit: 'g', look: 'small' }, { typed: app.draw })
            }
            <button type="button" class="btn wide" @click=${add}>Write it down</button>
          </details>
        </section>`,
        html`<section class="sec">
          <h2>Freezer and larder</h2>
          <p class="lead">The one to eat first stands on top.</p>
          ${
            packs.length
              ? html`<ul class="days">
                    ${packs.slice(0, packsShown).map(pack)}
                  </ul>
                  ${more(packs.length - packsShown, () => (packsShown = packs.length))}`
              : html`<p>No pack is on the list.</p>`
          }
          <p class="small near noprint">
            Packs of a batch come in by one touch from its labels: on the Pack stage, Labels and tags.
          </p>
          <details class="block noprint" ?open=${packed.typed.length > 0}>
            <summary>Put another pack in</summary>
            ${errorSummary(packed)}
            ${field(packed, { key: 'name', label: 'What is in it', look: 'words' }, { typed: app.draw })}
            ${field(packed, { key: 'weight', label: 'Weight', unit: 'g', look: 'small' }, { typed: app.draw })}
            <div class="field">
              <label for="packed-until">Use by<span class="opt"> (from its label)</span></label>
              ${packed.problem('until') ? wrong('packed-until-err', packed.problem('until')?.message ?? '') : nothing}
              <input
                id="packed-until"
                class="plainfield"
                type="date"
                .value=${packed.text('until')}
                @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => packed.type('until', target.value)}
              />
            </div>
            <button type="button" class="btn wide" @click=${addPack}>Put it in the list</button>
          </details>
        </section>`,
        html`<section class="sec">
          <h2>Who got what</h2>
          ${gone.length ? nothing : html`<p>Nothing was eaten or given away yet.</p>`}
          <ul class="days">
            ${gone
              .slice(0, goneShown)
              .map(
                ({ name, weight, batch, to, gone }) =>
                  html`<li class="held">
                    <b>${name}${code(batch)}, ${weight?.text ?? 'not weighed'}</b
                    ><span>${to}, ${gone === null ? nothing : fullDate(gone)}</span>
                  </li>`,
              )}
          </ul>
          ${more(gone.length - goneShown, () => (goneShown = gone.length))}
        </section>`,
      ])}
    </div>`;
    return { title: 'Stock', back: { href: '#/today', text: 'Batches' }, one: true, view };
  }

  /** @param {LarderRow} row */
  function thing(row) {
    const last = row.ids.at(-1) ?? '';
    const { name, left, went } = inHouse(row);
    return html`<li class="held">
      <b>${name}: ${left}</b>
      ${row.short ? html`<span class="flag care">${icon('s-care', '')}<span>${went}</span></span>` : html`<span>${went}</span>`}
      <span class="acts noprint"
        ><button type="button" class="btn quiet less" @click=${() => remove(last, name)}>
          Delete the last entry<span class="vh"> of ${name}</span>
        </button></span
      >
    </li>`;
  }

  /** The code on the bag, where the batch is here. @param {string} id */
  function code(id) {
    const tag = app.shelf.batches.get(id)?.tag;
    return tag ? `, ${shortCode(tag, id)}` : '';
  }

  /** @param {PackRow} row */
  function pack({ id, name, weight, batch, frozen, until, over, doubts }) {
    const of = app.shelf.batches.get(batch);
    // What its batch is in doubt of stands in place of a date; a date that is past is told below.
    const grave = doubts.find(({ kind }) => kind !== 'past_keeping');
    const by = frozen ? 'Frozen. Best by' : 'Use by';
    const day = until === null ? 'No use-by is written down.' : `${by} ${fullDate(until)}.`;
    const give = async () => {
      const to = gift.text('to').trim();
      if (!to) gift.mark([{ code: 'missing', field: 'to', message: 'Type who gets it.', choices: [] }]);
      else if (await goes(id, to)) ((giving = ''), gift.clear());
      app.draw();
    };
    return html`<li class="held">
      <b>${name}${code(batch)}, ${weight?.text ?? 'not weighed'}</b>
      ${
        grave && of
          ? html`<span class="flag ${markOf(grave)}"
              >${icon(`s-${markOf(grave)}`, '')}<span
                >${doubtWords(grave, of, (piece) => pieceName(app, piece)).says}</span
              ></span
            >`
          : over
            ? html`<span class="flag care">${icon('s-care', '')}<span>${day} That day is past.</span></span>`
            : html`<span>${day}${until !== null && until - app.now() < 2 * DAY_MS ? ' Eat it next.' : ''}</span>`
      }
      ${
        giving === id
          ? html`${field(gift, { key: 'to', label: 'Who gets it', look: 'words' }, { typed: app.draw })}
              <span class="acts"
                ><button type="button" class="btn less" @click=${give}>Write it down</button
                ><button type="button" class="btn quiet less" @click=${() => ((giving = ''), app.draw())}>
                  Not now
                </button></span
              >`
          : html`<span class="acts noprint"
              ><button type="button" class="btn quiet less" @click=${() => goes(id, 'Eaten here')}>
                Eaten<span class="vh">: ${name}</span></button
              ><button type="button" class="btn quiet less" @click=${() => ((giving = id), gift.clear(), app.draw())}>
                Given away<span class="vh">: ${name}</span></button
              >${
                app.shelf.batches.has(batch)
                  ? html`<a class="btn quiet less" href="#/batch/${batch}/tag"
                      >Gift tag<span class="vh">: ${name}</span></a
                    >`
                  : nothing
              }</span
            >`
      }
    </li>`;
  }

  return { draw };
}
