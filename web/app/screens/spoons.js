/** Spoon and scale: weigh your own level spoons once, hold a scale against what is known, thin a cure. */
import { html, nothing } from 'lit-html';
import { ask, readFields } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { factList } from '../widgets/facts.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { choose, option, pick } from '../widgets/pick.js';
import { advice, strip } from '../widgets/verdict.js';
import { INGREDIENTS, itemName } from '../../words/en/ingredients.js';
import { AIM as AIM_WORD, BACK, BAG, MEAT } from '../../words/en/fields.js';
import {
  ABOUT,
  SCALE,
  SPOON,
  THIN,
  TITLE,
  holds,
  mixHolds,
  mixKept,
  nthWeight,
  spoonFor,
  spoonOf,
} from '../../words/en/spoon-scale.js';
import { REMOVE, remove as removeWord } from '../../words/en/controls.js';
import { mixName, sameMix } from '../../words/en/mixes.js';
import { UNITS } from '../../words/en/names.js';
import {
  doseRange,
  scaleRow,
  scaleWords,
  spoonHolds,
  spoonWhy,
  stockLabel,
  stockSteps,
} from '../../words/en/spoons.js';

/** ppm: what is thinned to this stays in range under every rule of the list but that of a belly in a brine. */
const AIM = '130';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Cure} Cure */
/** @typedef {import('../types').OwnSpoon} OwnSpoon */
/** @typedef {import('../widgets/form.js').Read} Read */

/** @param {App} app @returns {import('../app.js').Screen} */
export function spoons(app) {
  const own = ownSpoon(app);
  const held = ownScale(app);
  const thin = thinned(app);
  const draw = () => ({
    title: TITLE,
    back: { href: '#/more', text: BACK.more },
    view: [
      html`<div class="leaf">
        <h1 tabindex="-1">${TITLE}</h1>
        <p class="small near">${ABOUT}</p>
        ${own()}
      </div>`,
      html`<div class="plate"><div class="stick">${held()} ${thin()}</div></div>`,
    ],
  });
  return { draw };
}

/** @param {App} app */
function ownSpoon(app) {
  const form = new Form('s', 'spoons');
  const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
    form.type(key, now);
    app.draw();
  };
  const pantry = app.tables.ingredients.filter(({ spoon, key }) => spoon && key !== 'water');
  // What the pantry has not goes by its name: `own/Marsh seed mix`.
  const nameOf = (/** @type {string} */ item) => itemName({ item }).replace(/^own\//, '');
  const itemOf = () => {
    const item = form.text('item', 'cure-1');
    return item === 'own' ? `own/${form.text('name').trim()}` : item;
  };

  function question() {
    const together = form.text('how', 'one') === 'all';
    const texts = form
      .text('weights')
      .split(/[;\n]|,\s/)
      .flatMap((part) => (part.trim() ? [part.trim()] : []));
    const weights = texts.map((text) => (/[a-z]/i.test(text) ? text : `${text} g`));
    return {
      item: itemOf(),
      tablespoon: form.text('spoon', 'tsp') === 'tbsp',
      weights,
      settings: app.settings,
      ...(together && { count: Number(form.text('count', '10')) || 0 }),
    };
  }

  /** The words of the core come back for the fields of this form. */
  function answer() {
    const { weights } = question();
    const read = form.text('weights').trim()
      ? readFields(
          weights.map((text, n) => ({
            key: `${n}`,
            label: nthWeight(n + 1),
            kind: /** @type {const} */ ('mass'),
            text,
          })),
          app.settings.units,
        )
      : null;
    const wrong = read?.problems ?? read?.ok?.problems ?? [];
    if (wrong.length > 0) return { problems: wrong };
    return ask('spoon', question());
  }

  const keep = async (/** @type {Event} */ event) => {
    event.preventDefault();
    const { ok, problems } = answer();
    if (!ok) {
      form.mark(
        (problems ?? []).slice(0, 1).map((problem) => ({
          ...problem,
          field: problem.field === 'item' && form.text('item') === 'own' ? 'name' : 'weights',
        })),
      );
      app.draw();
      return focusErrors();
    }
    await set([...others(ok.spoon), ok.spoon], SPOON.isKept);
    form.clear();
    app.draw();
  };
  const was = () => app.settings.spoons ?? [];
  const others = (/** @type {OwnSpoon} */ { item, tablespoon }) =>
    was().filter((one) => one.item !== item || one.tablespoon !== tablespoon);
  const set = (/** @type {OwnSpoon[]} */ list, /** @type {string} */ says) => {
    return app.act(() => app.shelf.changeSettings({ spoons: list }), { says, here: true });
  };

  return () => {
    const typed = form.text('weights').trim() !== '';
    const { ok, problems } = typed ? answer() : {};
    const together = form.text('how', 'one') === 'all';
    const item = form.text('item', 'cure-1');
    return html`<form novalidate @submit=${keep}>
      ${errorSummary(form)}
      <h2 class="block">${SPOON.head}</h2>
      <p class="near">${SPOON.how}</p>
      ${choose(
        {
          id: 's-item',
          label: SPOON.item,
          value: item,
          options: [
            ...pantry.map(({ key }) => option(key, INGREDIENTS[key], key === item)),
            option('own', SPOON.own, item === 'own'),
          ],
        },
        put('item'),
      )}
      ${
        item === 'own'
          ? field(form, { key: 'name', label: SPOON.name, hint: SPOON.nameHint, look: 'words' }, { typed: app.draw })
          : nothing
      }
      ${pick(
        {
          name: 'spoon',
          legend: SPOON.which,
          options: Object.entries(SPOON.spoons),
          value: form.text('spoon', 'tsp'),
        },
        put('spoon'),
      )}
      ${pick(
        {
          name: 'how',
          legend: SPOON.weighed,
          options: Object.entries(SPOON.ways),
          value: form.text('how', 'one'),
        },
        put('how'),
      )}
      ${
        together
          ? field(
              form,
              { key: 'count', label: SPOON.count, stored: '10', keys: 'numeric', look: 'small' },
              {
                typed: app.draw,
              },
            )
          : nothing
      }
      ${field(
        form,
        {
          key: 'weights',
          label: together ? SPOON.together : SPOON.one,
          hint: together ? SPOON.togetherHint : SPOON.oneHint,
          look: 'words',
        },
        { typed: app.draw },
      )}
      <div class="gap" data-say="figures">
        ${ok ? strip('ok', spoonHolds(ok), spoonWhy(ok)) : problems ? problemStrip(app, problems) : nothing}
      </div>
      <div class="gap"><button type="submit" class="btn wide main">${SPOON.keep}</button></div>
      ${keptList(
        SPOON.kept,
        was().map((one) => ({
          name: spoonOf(one.tablespoon, nameOf(one.item)),
          says: holds(one.grams),
          what: spoonFor(nameOf(one.item)),
          remove: () => set(others(one), SPOON.removed),
        })),
      )}
    </form>`;
  };
}

/** @param {App} app */
function ownScale(app) {
  const form = new Form('k', 'scale');
  /** @type {Read[]} */
  const fields = [{ key: 'reads', label: SCALE.reads, kind: 'mass', unit: 'g' }];
  return () => {
    const known = form.text('known').trim();
    const values = known ? form.read(fields, app.settings.units, { quiet: true }) : null;
    const { ok, problems } = values?.reads
      ? ask('scale', { checks: [[known, values.reads]], settings: app.settings })
      : {};
    const on = { typed: app.draw };
    return html`<section role="group" aria-labelledby="k-h">
      <h2 id="k-h">${SCALE.head}</h2>
      <p class="near">${SCALE.how}</p>
      ${field(form, { key: 'known', label: SCALE.known, hint: SCALE.knownHint, look: 'words' }, on)}
      ${field(form, { key: 'reads', label: SCALE.reads, unit: 'g', look: 'small' }, on)}
      <div class="gap" data-say="figures">
        ${
          ok
            ? html`${strip(ok.fits ? 'ok' : 'care', ...scaleWords(ok.fits))} ${factList(ok.rows.map(scaleRow))}`
            : problems
              ? problemStrip(app, problems)
              : nothing
        }
      </div>
    </section>`;
  };
}

/** @param {App} app */
function thinned(app) {
  const form = new Form('t', 'thinned');
  const was = () => app.settings.mixes ?? [];
  const others = (/** @type {Cure} */ mix) => was().filter((one) => !sameMix(one, mix));
  const set = (/** @type {Cure[]} */ list, /** @type {string} */ says) => {
    return app.act(() => app.shelf.changeSettings({ mixes: list }), { says, here: true });
  };
  return () => {
    const { mass, meat } = UNITS[app.settings.units];
    /** @type {Read[]} */
    const fields = [
      { key: 'meat', label: MEAT.label, kind: 'mass', unit: meat },
      { key: 'nitrite', label: BAG.nitrite, kind: 'printed', unit: '%' },
      { key: 'nitrate', label: BAG.nitrate, kind: 'printed_nitrate', unit: '%', optional: true },
      { key: 'aim', label: AIM_WORD, kind: 'share', unit: 'ppm', stored: AIM },
    ];
    const way = form.text('way', 'salt');
    const begun = form.text('meat').trim() && form.text('nitrite').trim();
    const values = begun ? form.read(fields, app.settings.units, { quiet: true }) : null;
    const { ok, problems } =
      values?.meat && values.nitrite && values.aim
        ? ask('stock', {
            in_water: way === 'water',
            meat: values.meat,
            nitrite: values.nitrite,
            ...(values.nitrate && { nitrate: values.nitrate }),
            aim: values.aim,
            settings: app.settings,
          })
        : { problems: begun ? form.wrong : undefined };
    const on = { typed: app.draw };
    return html`<section class="block" role="group" aria-labelledby="t-h">
      <h2 id="t-h">${THIN.head}</h2>
      <p class="near">${THIN.how}</p>
      ${pick(
        {
          name: 'way',
          legend: THIN.with,
          options: Object.entries(THIN.ways),
          value: way,
        },
        (now) => {
          form.type('way', now);
          app.draw();
        },
      )}
      ${field(form, { key: 'meat', label: MEAT.label, unit: meat, keys: mass ? 'decimal' : 'text', look: 'small' }, on)}
      ${field(form, { key: 'nitrite', label: BAG.nitrite, unit: '%', look: 'small' }, on)}
      ${field(
        form,
        {
          key: 'nitrate',
          label: BAG.nitrate,
          hint: BAG.someNitrate,
          unit: '%',
          look: 'small',
          optional: true,
        },
        on,
      )}
      ${field(form, { key: 'aim', label: AIM_WORD, unit: 'ppm', stored: AIM, look: 'small' }, on)}
      <div class="gap" data-say="figures">
        ${
          ok
            ? html`${factList([
                  { label: THIN.take, value: ok.take.text },
                  { label: THIN.neat, value: doseRange(ok.ranges[0]) },
                  { label: THIN.thinned, value: doseRange(ok.ranges[1]) },
                ])}
                ${advice(stockSteps(ok))}
                <h3 class="gap">${THIN.write}</h3>
                <ul class="rows">
                  ${stockLabel(ok).map((line) => html`<li>${line}</li>`)}
                </ul>
                <p class="gap">${THIN.made}</p>
                <div class="gap">
                  <button
                    type="button"
                    class="btn quiet wide"
                    @click=${() => set([...others(ok.mix), ok.mix], mixKept(mixName(ok.mix)))}
                  >
                    ${way === 'water' ? THIN.keep.water : THIN.keep.salt}
                  </button>
                </div>`
            : problems
              ? problemStrip(app, problems)
              : nothing
        }
      </div>
      ${keptList(
        THIN.kept,
        was().map((mix) => ({
          name: mixName(mix),
          says: mixHolds(mix),
          what: mixName(mix),
          remove: () => set(others(mix), THIN.removed),
        })),
      )}
    </section>`;
  };
}

/**
 * What is kept, each with its way out.
 * @param {string} head
 * @param {{ name: string, says: string, what: string, remove: () => unknown }[]} rows
 */
function keptList(head, rows) {
  if (rows.length === 0) return nothing;
  return html`<h3 class="block">${head}</h3>
    <ul class="rows">
      ${rows.map(
        ({ name, says, what, remove }) =>
          html`<li>
            <b>${name}.</b><br />${says}
            <div class="acts gap">
              <button type="button" class="btn less" aria-label=${removeWord(what)} @click=${remove}>${REMOVE}</button>
            </div>
          </li>`,
      )}
    </ul>`;
}
