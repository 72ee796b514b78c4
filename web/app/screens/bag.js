/** Plan the bag: what birds or an animal will give, what to buy for them, and the room they take. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { problemStrip } from '../widgets/answer.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { icon } from '../widgets/icon.js';
import { choose, option, pick } from '../widgets/pick.js';
import { cautions } from '../widgets/verdict.js';
import { GAME, weighedWords } from '../../words/en/game.js';
import { bagBasis, houseRoom, isMemory, leftWords, rackRoom, spread, wanted } from '../../words/en/plan.js';
import { glue } from '../../words/glue.js';
import { KINDS, UNITS } from '../../words/en/names.js';
import { isoDay } from '../../words/time.js';
import { PLACES } from '../../words/en/places.js';
import {
  ASK,
  BEFORE,
  BUY,
  HEADS,
  RESULT,
  SAYS,
  STARTED,
  STEPPERS,
  TITLE,
  each,
  enough,
  gameWords,
  inPlan,
  notWritten,
  piecesAnd,
  piecesOf,
  start,
  weightHint,
  weightOfOne,
} from '../../words/en/shopping.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').BagAsk} BagAsk */
/** @typedef {import('../types').BagSheet} BagSheet */
/** A row of the plan with the id of the recipe it is for. @typedef {BagAsk & { card?: string }} Row */

/** Where a bird or an animal stands in the list. @param {import('../types').GameName} game */
function groupOf({ kind, key }) {
  if (kind === 'boar') return HEADS.large;
  if (kind !== 'bird') return KINDS[kind] ?? kind;
  if (/goose|gander|brant/.test(key)) return HEADS.geese;
  return /pheasant|grouse|chukar|bobwhite|dove|turkey/.test(key) ? HEADS.land : HEADS.ducks;
}

/** @param {App} app @returns {import('../app.js').Screen} */
export function bag(app) {
  const form = new Form('f', 'bag');
  const { game } = app.tables;
  const groups = [...new Set(game.map(groupOf))];
  /** What is in the bag outlives a look elsewhere, beside what is typed. @returns {Row[]} */
  const rows = () => JSON.parse(form.text('rows', '[]'));
  const keep = (/** @type {Row[]} */ now) => form.type('rows', JSON.stringify(now));
  /** Batches begun from this plan, while there is more in it. @returns {string[]} */
  const begun = () => JSON.parse(form.text('begun', '[]'));
  const chosen = () => game.find(({ key }) => key === form.text('of'));
  /** Of a large animal that was shared, pieces are counted: one haunch. */
  const byPiece = () => form.text('by') === 'pieces' && Boolean(chosen()?.weighed);
  const inAll = () => form.text('by') === 'all' || byPiece();
  const howMany = () => (byPiece() ? ASK.howManyPieces : ASK.howMany);
  /** Ids of the recipes of the plan, in the order of its rows. */
  const cards = () => [...new Set(rows().flatMap(({ card }) => (card && app.shelf.recipes.has(card) ? [card] : [])))];
  const killed = () => form.text('killed', isoDay(app.now()));

  /** @returns {import('../widgets/form.js').Read[]} */
  const fields = () => [
    ...(inAll() ? [] : [/** @type {const} */ ({ key: 'hunters', label: ASK.hunters, kind: 'count', stored: '1' })]),
    { key: 'each', label: inAll() ? howMany() : ASK.forEach, kind: 'count', stored: '1' },
    ...(chosen()?.weighed
      ? /** @type {import('../widgets/form.js').Read[]} */ ([
          {
            key: 'weight',
            label: ASK.weightOfOne,
            kind: 'mass',
            unit: UNITS[app.settings.units].mass,
            optional: !chosen()?.needs_weight,
          },
        ])
      : []),
  ];

  const add = (/** @type {Event} */ event) => {
    event.preventDefault();
    const values = form.read(fields(), app.settings.units);
    const of = chosen()?.key;
    if (!of) {
      form.mark([{ code: 'missing', field: 'of', message: SAYS.chooseIt, choices: [] }]);
    }
    if (values && of) {
      const { hunters = '1', each, weight } = values;
      // What is of one kind mostly goes into one recipe.
      const like = rows().findLast((row) => kindOf(row.of) === kindOf(of))?.card;
      keep([
        ...rows(),
        {
          of,
          hunters: Number(hunters),
          each: Number(each),
          ...(byPiece() && { by_piece: true }),
          ...(weight && { weight }),
          ...(like && { card: like }),
        },
      ]);
      for (const key of ['of', 'each', 'weight']) form.drop(key);
      app.say(SAYS.added);
    }
    app.draw();
    if (!values || !of) focusErrors();
  };

  const nameOf = (/** @type {string} */ of) => {
    const one = game.find(({ key }) => key === of);
    return one ? GAME[one.key] : '';
  };
  const kindOf = (/** @type {string} */ of) => game.find(({ key }) => key === of)?.kind;

  /** @param {Row[]} inBag */
  function answered(inBag) {
    const ids = cards();
    const at = (/** @type {string | undefined} */ card) => (card && ids.includes(card) ? ids.indexOf(card) : null);
    return ask('plan_bag', {
      rows: inBag.map(({ card, ...row }) => ({ ...row, called: nameOf(row.of), recipe: at(card) })),
      recipes: ids.flatMap((id) => app.shelf.recipes.get(id) ?? []),
      per_pack: Math.min(99, Math.max(1, Math.round(Number(form.text('per', '2'))) || 1)),
      stock: [...app.shelf.stock].map(([id, stock]) => ({ id, stock })),
      batches: [...app.shelf.batches.values()],
      settings: app.settings,
    });
  }

  function draw() {
    const inBag = rows();
    const answer = inBag.length ? answered(inBag) : null;
    const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
      form.type(key, now);
      app.draw();
    };
    const leaf = html`<div class="leaf">
      <form novalidate @submit=${add}>
        ${errorSummary(form)}
        <h1 tabindex="-1">${TITLE}</h1>
        <p class="small near">${BEFORE}</p>
        ${started()}
        ${choose(
          {
            id: form.id('of'),
            label: ASK.what,
            problem: form.problem('of')?.message,
            value: form.text('of'),
            options: [
              option('', ASK.choose, !chosen()),
              ...groups.map(
                (head) =>
                  html`<optgroup label=${head}>
                    ${game
                      .filter((one) => groupOf(one) === head)
                      .map((one) => option(one.key, gameWords(one), one === chosen()))}
                  </optgroup>`,
              ),
            ],
          },
          put('of'),
        )}
        ${pick(
          {
            name: 'by',
            legend: ASK.counted,
            options: /** @type {['each' | 'all' | 'pieces', string][]} */ ([
              ['each', ASK.each],
              ['all', ASK.all],
              ...(chosen()?.weighed ? [['pieces', ASK.pieces]] : []),
            ]),
            value: byPiece() ? 'pieces' : inAll() ? 'all' : 'each',
          },
          put('by'),
        )}
        ${
          inAll()
            ? field(
                form,
                {
                  key: 'each',
                  label: howMany(),
                  stored: '1',
                  keys: 'numeric',
                  stepper: STEPPERS.one,
                  least: 1,
                },
                { typed: app.draw },
              )
            : html`<div class="twofold">
                ${field(form, { key: 'hunters', label: ASK.hunters, stored: '1', keys: 'numeric', stepper: STEPPERS.hunter, least: 1 }, { typed: app.draw })}
                ${field(form, { key: 'each', label: ASK.limit, stored: '1', keys: 'numeric', stepper: STEPPERS.one, least: 1 }, { typed: app.draw })}
              </div>`
        }
        ${
          chosen()?.weighed
            ? field(
                form,
                {
                  key: 'weight',
                  label: weightOfOne(weighedWords(chosen()?.weighed ?? '')),
                  hint: weightHint(Boolean(chosen()?.needs_weight)),
                  unit: UNITS[app.settings.units].mass,
                },
                { typed: app.draw },
              )
            : nothing
        }
        <div class="block">
          <button type="submit" class="btn wide ${inBag.length ? '' : 'main'}">${ASK.add}</button>
        </div>
        ${answer?.ok ? html`<p class="near">${inPlan(answer.ok.pieces, glue(answer.ok.green))}</p>` : nothing}
      </form>
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>${RESULT.head}</h2>
        ${
          answer?.ok
            ? result(answer.ok, put)
            : answer
              ? problemStrip(app, answer.problems ?? [])
              : html`<p class="gap">${RESULT.nothing}</p>`
        }
      </div>
    </div>`;
    return { title: TITLE, back: { href: '#/more', text: PLACES.more }, view: [leaf, plate] };
  }

  /** What was begun from this plan, as long as there is more in it. */
  function started() {
    const some = begun().flatMap((id) => (app.shelf.batches.has(id) ? [id] : []));
    if (some.length === 0) return nothing;
    return html`<p class="block"><b>${STARTED.head}</b></p>
      <nav class="doors" aria-label=${STARTED.label}>
        ${some.map((id) => html`<a href="#/batch/${id}/pieces"><b>${app.shelf.batches.get(id)?.name}</b>${icon('s-go')}</a>`)}
      </nav>`;
  }

  /** @param {BagSheet} sheet @param {(key: string) => (now: string) => void} put */
  function result(sheet, put) {
    return html`<ul class="rows">
        ${sheet.rows.map((row, at) => line(row, at))}
      </ul>
      <p class="block">
        <b class="lead">${RESULT.green} <span class="nowrap">${glue(sheet.green)}.</span></b
        ><br />${piecesAnd(sheet.pieces, glue(spread(sheet.range)))}
      </p>
      ${
        sheet.room
          ? html`<h3 class="block">${RESULT.room}</h3>
              ${sheet.places.map((place) => html`<p class="near"><b>${glue(houseRoom(place))}</b></p>`)}
              <p class="small">${glue(rackRoom(sheet.room))}</p>
              ${
                sheet.places.length
                  ? nothing
                  : html`<p class="small noprint"><a href="#/plan">${RESULT.sayRoom}</a></p>`
              }`
          : nothing
      }
      <section class="block">
        <h3>${BUY.head}</h3>
        ${sheet.buy.length ? shopping(sheet, put) : html`<p class="near">${BUY.nothing}</p>`}
        ${sheet.left.map((left) => html`<p class="gap"><b>${BUY.atEnd}</b> ${glue(leftWords(left))}</p>`)}
      </section>
      ${cautions(sheet.cautions)} ${cards().length ? starts(sheet) : nothing}`;
  }

  /** @param {import('../types').BagRow} row @param {number} at */
  function line(row, at) {
    const change = (/** @type {string} */ card) => {
      keep(rows().map((one, n) => (n === at ? { ...one, card } : one)));
      app.draw();
    };
    const remove = () => {
      keep(rows().filter((_, n) => n !== at));
      app.draw();
    };
    const card = rows()[at]?.card ?? '';
    return html`<li>
      <b class="lead">${piecesOf(row.pieces, GAME[row.game])}</b>
      <p>${glue(spread(row.all))}</p>
      <p class="small">${each(glue(spread(row.each)))}</p>
      ${
        isMemory(row.basis)
          ? html`<p class="flag care">${icon('s-care', '')}<span>${RESULT.memory}</span></p>`
          : row.basis.is === 'own'
            ? html`<p class="flag">${icon('s-tick', '')}<span>${RESULT.own}</span></p>`
            : nothing
      }
      <p class="small">${glue(bagBasis(row.basis))}</p>
      ${choose(
        {
          id: form.id(`card-${at}`),
          label: ASK.recipe,
          value: card,
          options: [
            option('', ASK.noRecipe, !app.shelf.recipes.has(card)),
            ...app.shelf.cards().map(([id, { name }]) => option(id, name, id === card)),
          ],
        },
        change,
      )}
      <div class="acts gap noprint">
        <button type="button" class="btn less" @click=${remove}>
          ${RESULT.off}<span class="vh">: ${GAME[row.game]}</span>
        </button>
      </div>
    </li>`;
  }

  /** @param {BagSheet} sheet @param {(key: string) => (now: string) => void} put */
  function shopping(sheet, put) {
    return html`<ul class="rows">
        ${sheet.buy.map((buy) => {
          const { name, range, has, short } = wanted(buy);
          return html`<li>
            <b>${name}: <span class="nowrap">${glue(buy.most)}</span></b
            ><span class="small">${enough(glue(range))}</span>
            ${
              has
                ? html`<br /><span class="flag ${short ? 'care' : 'ok'}"
                      >${icon(short ? 's-care' : 's-ok', '')}<span>${glue(has)}</span></span
                    >`
                : nothing
            }
          </li>`;
        })}
      </ul>
      <p class="small near">${BUY.notWeigh}</p>
      ${field(
        form,
        {
          key: 'per',
          label: ASK.perPack,
          stored: '2',
          keys: 'numeric',
          stepper: STEPPERS.piece,
          least: 1,
          look: 'small',
        },
        { typed: () => put('per')(form.text('per', '2')) },
      )}
      <p class="small near noprint">
        ${sheet.buy.some(({ has }) => has === null) ? notWritten : html`<a href="#/stock">${BUY.stock}</a>`}
      </p>`;
  }

  /** One batch for each recipe of the plan. @param {BagSheet} sheet */
  function starts(sheet) {
    return html`<div class="block noprint">
      <div class="field">
        <label for=${form.id('killed')}>${ASK.killed}</label>
        <input
          id=${form.id('killed')}
          class="plainfield"
          type="date"
          .value=${killed()}
          @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => form.type('killed', target.value)}
        />
      </div>
      ${cards().map((card, at) => {
        const pieces = sheet.rows.filter((_, n) => rows()[n]?.card === card);
        const sum = pieces.reduce((all, row) => all + row.pieces, 0);
        return html`<button type="button" class="btn wide gap ${at ? '' : 'main'}" @click=${() => begin(sheet, card)}>
          ${start(app.shelf.recipes.get(card)?.name, sum)}
        </button>`;
      })}
    </div>`;
  }

  /**
   * The pieces come in unweighed: the scale has the word before anything is cured.
   * @param {BagSheet} sheet
   * @param {string} card
   */
  async function begin(sheet, card) {
    const recipe = app.shelf.recipes.get(card);
    if (!recipe) return;
    const id = newId();
    const tag = app.shelf.freeTag(recipe.tag);
    const mine = (/** @type {unknown} */ _, /** @type {number} */ n) => rows()[n]?.card === card;
    const pieces = sheet.rows
      .filter(mine)
      .map(({ cut, game: of, pieces: n }) => ({ id: newId(), cut, name: GAME[of], count: n }));
    const batch = { tag, name: recipe.name, recipe, pieces, killed: killed(), premix: false, ticks: [], closed: false };
    const before = rows();
    const kept = await app.act(() => app.shelf.add(`batch/${id}`, batch), {
      says: SAYS.started(tag),
      after: () => keep(before),
    });
    if (!kept) return;
    const left = before.filter((row) => row.card !== card);
    const all = [...begun(), id];
    if (left.length) {
      keep(left);
      form.type('begun', JSON.stringify(all));
      app.draw();
      scrollTo(0, 0);
    } else {
      form.clear();
      app.go(all.length > 1 ? '#/today' : `#/batch/${id}/pieces`);
    }
  }

  return { draw };
}
