/** Plan the bag: what birds or an animal will give, what to buy for them, and the room they take. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { problemStrip } from '../widgets/answer.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { icon } from '../widgets/icon.js';
import { choose, option } from '../widgets/pick.js';
import { cautions } from '../widgets/verdict.js';
import { glue } from '../words/glue.js';
import { KINDS, UNITS, count } from '../words/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').BagAsk} BagAsk */
/** @typedef {import('../types').BagSheet} BagSheet */

/** @param {App} app @returns {import('../app.js').Screen} */
export function bag(app) {
  const form = new Form('f', 'bag');
  const { game } = app.tables;
  /** What is in the bag outlives a look elsewhere, beside what is typed. @returns {BagAsk[]} */
  const rows = () => JSON.parse(form.text('rows', '[]'));
  const keep = (/** @type {BagAsk[]} */ now) => form.type('rows', JSON.stringify(now));
  const chosen = () => game.find(({ key }) => key === form.text('of'));
  const recipe = () => app.shelf.recipes.get(form.text('recipe'));

  /** @returns {import('../widgets/form.js').Read[]} */
  const fields = () => [
    { key: 'hunters', label: 'Hunters', kind: 'count', stored: '1' },
    { key: 'each', label: 'For each of them', kind: 'count', stored: '1' },
    ...(chosen()?.weighed
      ? /** @type {import('../widgets/form.js').Read[]} */ ([
          {
            key: 'weight',
            label: 'Weight of one animal',
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
      form.mark([{ code: 'missing', field: 'of', message: 'Choose what it is from the list.', choices: [] }]);
    }
    if (values && of) {
      const { hunters, each, weight } = values;
      keep([...rows(), { of, hunters: Number(hunters), each: Number(each), ...(weight && { weight }) }]);
      for (const key of ['of', 'each', 'weight']) form.drop(key);
      app.say('Added to the plan.');
    }
    app.draw();
    if (!values || !of) focusErrors();
  };

  function draw() {
    const inBag = rows();
    const batches = [...app.shelf.batches.values()];
    const answer = inBag.length
      ? ask('plan_bag', { rows: inBag, recipe: recipe(), batches, settings: app.settings })
      : null;
    const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
      form.type(key, now);
      app.draw();
    };
    const leaf = html`<div class="leaf">
      <form novalidate @submit=${add}>
        ${errorSummary(form)}
        <h1 tabindex="-1">Plan the bag</h1>
        <p class="small near">Before anything is weighed: what it will give, what to buy, and the room it takes.</p>
        ${choose(
          {
            id: form.id('of'),
            label: 'What is it',
            problem: form.problem('of')?.message,
            value: form.text('of'),
            options: [
              option('', 'Choose one', !chosen()),
              ...Object.entries(KINDS).map(
                ([kind, head]) =>
                  html`<optgroup label=${kind === 'boar' ? 'Wild boar and bear' : head}>
                    ${game
                      .filter((one) => one.kind === kind)
                      .map(({ key, name, weighed, memory }) =>
                        option(
                          key,
                          `${name}${weighed ? `, by weight ${weighed}` : ''}${memory ? ' (from memory)' : ''}`,
                          key === chosen()?.key,
                        ),
                      )}
                  </optgroup>`,
              ),
            ],
          },
          put('of'),
        )}
        <div class="twofold">
          ${field(form, { key: 'hunters', label: 'Hunters', stored: '1', keys: 'numeric', stepper: ['One hunter less', 'One hunter more'], least: 1 }, { typed: app.draw })}
          ${field(form, { key: 'each', label: 'Daily limit, or animals for each', stored: '1', keys: 'numeric', stepper: ['One less', 'One more'], least: 1 }, { typed: app.draw })}
        </div>
        ${
          chosen()?.weighed
            ? field(
                form,
                {
                  key: 'weight',
                  label: `Weight of one animal, ${chosen()?.weighed}`,
                  hint: chosen()?.needs_weight
                    ? 'There is no figure without it.'
                    : 'Empty: what is usual, with a wider range.',
                  unit: UNITS[app.settings.units].mass,
                },
                { typed: app.draw },
              )
            : nothing
        }
        <div class="block">
          <button type="submit" class="btn wide ${inBag.length ? '' : 'main'}">Add to the plan</button>
        </div>
      </form>
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>What it will give</h2>
        ${
          answer?.ok
            ? result(answer.ok, put)
            : answer
              ? problemStrip(app, answer.problems ?? [])
              : html`<p class="gap">Nothing is planned yet. Add the birds of a day, or an animal.</p>`
        }
      </div>
    </div>`;
    return { title: 'Plan the bag', back: { href: '#/today', text: 'Today' }, view: [leaf, plate] };
  }

  /** @param {BagSheet} sheet @param {(key: string) => (now: string) => void} put */
  function result(sheet, put) {
    const remove = (/** @type {number} */ at) => {
      keep(rows().filter((_, n) => n !== at));
      app.draw();
    };
    return html`<ul class="rows">
        ${sheet.rows.map(
          (row, at) =>
            html`<li>
              <b class="lead">${count(row.pieces, 'piece')}, ${row.name}</b>
              <p>${glue(row.all)}</p>
              <p class="small">Each ${glue(row.each)}.</p>
              ${
                row.memory
                  ? html`<p class="flag care">${icon('s-care', '')}<span>From memory, not looked up</span></p>`
                  : row.own
                    ? html`<p class="flag">${icon('s-tick', '')}<span>Your own weights</span></p>`
                    : nothing
              }
              <p class="small">${glue(row.basis)}</p>
              <div class="acts noprint">
                <button type="button" class="btn less" @click=${() => remove(at)}>
                  Take off the plan<span class="vh">: ${row.name}</span>
                </button>
              </div>
            </li>`,
        )}
      </ul>
      <p class="block">
        <b class="lead">Green weight in all: <span class="nowrap">${glue(sheet.green)}</span></b
        ><br />${count(sheet.pieces, 'piece')}, ${glue(sheet.range)}.
      </p>
      ${
        sheet.room
          ? html`<h3 class="block">Room on a rack</h3>
              <p class="small">${glue(sheet.room)}</p>`
          : nothing
      }
      <section class="block">
        <h3>What to buy</h3>
        ${choose(
          {
            id: form.id('recipe'),
            label: 'For which recipe',
            value: form.text('recipe'),
            options: [
              option('', 'No recipe yet', !recipe()),
              ...app.shelf.cards().map(([id, { name }]) => option(id, name, id === form.text('recipe'))),
            ],
          },
          put('recipe'),
        )}
        ${
          sheet.buy.length
            ? html`<ul class="rows">
                  ${sheet.buy.map(
                    ({ name, range, most }) =>
                      html`<li>
                        <b>${name}: <span class="nowrap">${glue(most)}</span></b
                        ><span class="small"> is enough. ${glue(range)}.</span>
                      </li>`,
                  )}
                </ul>
                <p class="small near">To buy by, not to weigh by: the weigh-out goes by the meat on the scale.</p>`
            : nothing
        }
        ${sheet.left ? html`<p class="gap"><b>At the end.</b> ${glue(sheet.left)}</p>` : nothing}
      </section>
      ${cautions(sheet.cautions)}
      ${
        recipe()
          ? html`<div class="block noprint">
              <button type="button" class="btn main wide" @click=${() => begin(sheet)}>
                Start a batch with this bag
              </button>
            </div>`
          : nothing
      }`;
  }

  /** The pieces come in unweighed: the scale has the word before anything is cured. @param {BagSheet} sheet */
  async function begin(sheet) {
    const card = recipe();
    if (!card) return;
    const id = newId();
    const tag = app.shelf.freeTag(card.tag);
    const pieces = sheet.rows.map(({ cut, name, pieces: n }) => ({ cut, name, count: n }));
    const batch = { tag, name: card.name, recipe: card, pieces, premix: false, ticks: [], closed: false };
    const kept = await app.act(() => app.shelf.store.put(`batch/${id}`, batch), {
      says: `Batch ${tag} is begun. Its pieces are still to be weighed.`,
      back: () => app.shelf.store.remove(`batch/${id}`),
    });
    if (!kept) return;
    form.clear();
    app.go(`#/batch/${id}/pieces`);
  }

  return { draw };
}
