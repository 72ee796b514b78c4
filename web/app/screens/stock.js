/** Stock: what came in and what is left of it, packs first in first out, and who got what. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { answered } from '../widgets/answer.js';
import { field, wrong } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { icon } from '../widgets/icon.js';
import { choose, option } from '../widgets/pick.js';
import { cautionLine } from '../widgets/verdict.js';
import { whoEats } from '../widgets/who-eats.js';
import { INGREDIENTS } from '../../words/en/ingredients.js';
import { pieceName } from '../../words/en/cuts.js';
import { doubtWords } from '../../words/en/doubts.js';
import { markOf } from '../widgets/doubts.js';
import { shortCode } from '../../words/en/names.js';
import { inHouse } from '../../words/en/stock.js';
import { fullDate } from '../../words/time.js';
import { CAME, GOES, HEADS, PACKS, TITLE, useBy } from '../../words/en/larder.js';
import { PLACES, showMore } from '../../words/en/places.js';

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
  /** @type {import('../widgets/who-eats.js').Eats} */
  let eats = '';
  let unsaid = false;
  const gift = new Form('gift', 'gift');

  /** @param {string} id @param {any} data @param {string} says */
  const keep = (id, data, says) =>
    app.act(() => app.shelf.add(`stock/${id}`, data), {
      says,
    });

  const add = async () => {
    const bags = item === 'bags';
    const fields = bags
      ? [{ key: 'count', label: CAME.howMany, kind: /** @type {const} */ ('count') }]
      : [{ key: 'weight', label: CAME.howMuch, kind: /** @type {const} */ ('mass'), unit: 'g' }];
    const read = came.read(fields, app.settings.units);
    const name = came.text('name').trim();
    const unnamed = item === 'own' && !name;
    if (unnamed) came.mark([{ code: 'missing', field: 'name', message: CAME.noName, choices: [] }]);
    if (read && !unnamed) {
      const data = {
        item,
        ...(item === 'own' ? { name } : {}),
        ...(bags ? { count: Number(read['count']), weight: '0 g' } : { weight: read['weight'] }),
        at: app.now(),
      };
      if (await keep(newId(), data, CAME.added)) {
        came.clear();
        stays = true;
      }
    }
    app.draw();
    focusErrors();
  };

  const addPack = async () => {
    const read = packed.read([{ key: 'weight', label: PACKS.weight, kind: 'mass', unit: 'g' }], app.settings.units);
    const name = packed.text('name').trim();
    if (!name) packed.mark([{ code: 'missing', field: 'name', message: PACKS.noName, choices: [] }]);
    const day = packed.text('until');
    if (!day) packed.mark([{ code: 'missing', field: 'until', message: PACKS.noDay, choices: [] }]);
    if (read && name && day) {
      const until = day ? new Date(`${day}T12:00`).getTime() : null;
      const data = { item: 'pack', name, weight: read['weight'], at: app.now(), ...(until ? { until } : {}) };
      if (await keep(newId(), data, PACKS.added(name))) packed.clear();
    }
    app.draw();
    focusErrors();
  };

  /** @param {string} id @param {string} to */
  const goes = (id, to) =>
    app.act(() => app.shelf.changeStock(id, (one) => ({ ...one, to, gone: app.now() })), { says: GOES.done(to) });

  /** @param {string} id @param {string} name */
  const remove = async (id, name) => {
    await app.act(() => app.shelf.remove(`stock/${id}`), {
      says: CAME.removed(name),
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
          ${showMore(left)}
        </button>`
      : nothing;

  function draw() {
    const answer = larder();
    const view = html`<div class="leaf">
      <h1 tabindex="-1">${TITLE}</h1>
      ${answered(app, answer, ({ rows, packs, gone }) => [
        html`<section class="sec">
          <h2>${HEADS.goods}</h2>
          ${
            rows.length
              ? html`<ul class="days">
                  ${rows.map(thing)}
                </ul>`
              : html`<p class="lead">${CAME.nothing}</p>`
          }
          <details class="block noprint" ?open=${stays || came.typed.length > 0}>
            <summary>${CAME.head}</summary>
            ${errorSummary(came)}
            ${choose(
              {
                id: 'came-item',
                label: CAME.what,
                value: item,
                options: html`${app.tables.ingredients
                  .filter(({ group }) => group !== 'liquid')
                  .map(({ key }) =>
                    option(key, INGREDIENTS[key], key === item),
                  )}${option('bags', CAME.bags, item === 'bags')}${option('own', CAME.own, item === 'own')}`,
              },
              (value) => ((item = value), app.draw()),
            )}
            ${item === 'own' ? field(came, { key: 'name', label: CAME.name, look: 'words' }, { typed: app.draw }) : nothing}
            ${
              item === 'bags'
                ? field(
                    came,
                    { key: 'count', label: CAME.howMany, keys: 'numeric', look: 'small' },
                    { typed: app.draw },
                  )
                : field(came, { key: 'weight', label: CAME.howMuch, unit: 'g', look: 'small' }, { typed: app.draw })
            }
            <button type="button" class="btn wide" @click=${add}>${CAME.add}</button>
          </details>
        </section>`,
        html`<section class="sec">
          <h2>${HEADS.packs}</h2>
          <p class="lead">${PACKS.lead}</p>
          ${
            packs.length
              ? html`<ul class="days">
                    ${packs.slice(0, packsShown).map(pack)}
                  </ul>
                  ${more(packs.length - packsShown, () => (packsShown = packs.length))}`
              : html`<p>${PACKS.nothing}</p>`
          }
          <p class="small near noprint">${PACKS.fromLabels}</p>
          <details class="block noprint" ?open=${packed.typed.length > 0}>
            <summary>${PACKS.head}</summary>
            ${errorSummary(packed)}
            ${field(packed, { key: 'name', label: PACKS.what, look: 'words' }, { typed: app.draw })}
            ${field(packed, { key: 'weight', label: PACKS.weight, unit: 'g', look: 'small' }, { typed: app.draw })}
            <div class="field">
              <label for="packed-until">${PACKS.until}<span class="opt">${PACKS.untilFrom}</span></label>
              ${packed.problem('until') ? wrong('packed-until-err', packed.problem('until')?.message ?? '') : nothing}
              <input
                id="packed-until"
                class="plainfield"
                type="date"
                .value=${packed.text('until')}
                @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => packed.type('until', target.value)}
              />
            </div>
            <button type="button" class="btn wide" @click=${addPack}>${PACKS.add}</button>
          </details>
        </section>`,
        html`<section class="sec">
          <h2>${HEADS.gone}</h2>
          ${gone.length ? nothing : html`<p>${GOES.nothing}</p>`}
          <ul class="days">
            ${gone
              .slice(0, goneShown)
              .map(
                ({ name, weight, batch, to, gone }) =>
                  html`<li class="held">
                    <b>${name}${code(batch)}, ${weight?.text ?? PACKS.notWeighed}</b
                    ><span>${to}, ${gone === null ? nothing : fullDate(gone)}</span>
                  </li>`,
              )}
          </ul>
          ${more(gone.length - goneShown, () => (goneShown = gone.length))}
        </section>`,
      ])}
    </div>`;
    return { title: TITLE, back: { href: '#/today', text: PLACES.today }, one: true, view };
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
          ${CAME.remove}<span class="vh">${CAME.of(name)}</span>
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
  function pack({ id, name, weight, batch, frozen, until, over, doubts, raw }) {
    const of = app.shelf.batches.get(batch);
    // What its batch is in doubt of stands in place of a date; a date that is past is told below.
    const grave = doubts.find(({ kind }) => kind !== 'past_keeping');
    const day = until === null ? PACKS.noUseBy : useBy(frozen, fullDate(until));
    const give = async () => {
      const to = gift.text('to').trim();
      if (!to) gift.mark([{ code: 'missing', field: 'to', message: GOES.noName, choices: [] }]);
      else if (!eats) unsaid = true;
      else if (await goes(id, to)) ((giving = ''), gift.clear());
      app.draw();
      if (unsaid) /** @type {HTMLElement | null} */ (document.querySelector('[name=eats]'))?.focus();
    };
    const begin = () => {
      [giving, eats, unsaid] = [id, '', false];
      gift.clear();
      app.draw();
    };
    /** @type {import('../types').CautionKey[]} */
    const cautions = raw ? ['gift-raw', 'label-shot'] : ['label-shot'];
    return html`<li class="held">
      <b>${name}${code(batch)}, ${weight?.text ?? PACKS.notWeighed}</b>
      ${
        grave && of
          ? html`<span class="flag ${markOf(grave)}"
              >${icon(`s-${markOf(grave)}`, '')}<span>${doubtWords(grave, of, pieceName).says}</span></span
            >`
          : over
            ? html`<span class="flag care">${icon('s-care', '')}<span>${day}${PACKS.past}</span></span>`
            : html`<span>${day}${until !== null && until - app.now() < 2 * DAY_MS ? PACKS.next : ''}</span>`
      }
      ${
        giving === id
          ? html`${eats === 'someone' ? nothing : cautionLine(cautions)}
              ${field(gift, { key: 'to', label: GOES.who, look: 'words' }, { typed: app.draw })}
              ${whoEats(eats, unsaid, cautions, (now) => (([eats, unsaid] = [now, false]), app.draw()))}
              <span class="acts"
                ><button type="button" class="btn less" @click=${give}>${GOES.add}</button
                ><button type="button" class="btn quiet less" @click=${() => ((giving = ''), app.draw())}>
                  ${GOES.notNow}
                </button></span
              >`
          : html`<span class="acts noprint"
              ><button type="button" class="btn quiet less" @click=${() => goes(id, GOES.here)}>
                ${GOES.eaten}<span class="vh">: ${name}</span></button
              ><button type="button" class="btn quiet less" @click=${begin}>
                ${GOES.given}<span class="vh">: ${name}</span></button
              >${
                app.shelf.batches.has(batch)
                  ? html`<a class="btn quiet less" href="#/batch/${batch}/tag"
                      >${GOES.gift}<span class="vh">: ${name}</span></a
                    >`
                  : nothing
              }</span
            >`
      }
    </li>`;
  }

  return { draw };
}
