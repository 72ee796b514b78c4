/** Spoon and scale: weigh your own level spoons once, hold a scale against what is known, thin a cure. */
import { html, nothing } from 'lit-html';
import { ask, readFields } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { factList } from '../widgets/facts.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { choose, option, pick } from '../widgets/pick.js';
import { advice, strip } from '../widgets/verdict.js';
import { mixName, sameMix } from '../words/mixes.js';
import { UNITS } from '../words/names.js';
import { doseRange, scaleRow, scaleWords, spoonHolds, spoonWhy, stockLabel, stockSteps } from '../words/spoons.js';

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
    title: 'Spoon and scale',
    back: { href: '#/more', text: 'More' },
    view: [
      html`<div class="leaf">
        <h1 tabindex="-1">Spoon and scale</h1>
        <p class="small near">A spoon is not a weight, and a scale can be wrong. Settle both once.</p>
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
  const nameOf = (/** @type {string} */ item) =>
    pantry.find(({ key }) => key === item)?.name ?? item.replace(/^own\//, '');
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
            label: `Weight ${n + 1}`,
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
    await set([...others(ok.spoon), ok.spoon], 'Your spoon is kept.');
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
      <h2 class="block">Your own level spoon</h2>
      <p class="near">
        Fill it, draw a knife across, tip it onto the scale. Ten times: the figure then stands in place of the general
        range, with its spread.
      </p>
      ${choose(
        {
          id: 's-item',
          label: 'What is in the spoon',
          value: item,
          options: [
            ...pantry.map(({ key, name }) => option(key, name, key === item)),
            option('own', 'Something of my own', item === 'own'),
          ],
        },
        put('item'),
      )}
      ${
        item === 'own'
          ? field(
              form,
              { key: 'name', label: 'What it is called', hint: 'As recipes call it.', look: 'words' },
              { typed: app.draw },
            )
          : nothing
      }
      ${pick(
        {
          name: 'spoon',
          legend: 'Which spoon',
          options: [
            ['tsp', 'teaspoon'],
            ['tbsp', 'tablespoon'],
          ],
          value: form.text('spoon', 'tsp'),
        },
        put('spoon'),
      )}
      ${pick(
        {
          name: 'how',
          legend: 'How did you weigh them',
          options: [
            ['one', 'One by one'],
            ['all', 'All together'],
          ],
          value: form.text('how', 'one'),
        },
        put('how'),
      )}
      ${
        together
          ? field(
              form,
              { key: 'count', label: 'How many spoons', stored: '10', keys: 'numeric', look: 'small' },
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
          label: together ? 'Weight of all together, in grams' : 'Weights, in grams',
          hint: together ? 'Such as 52.3.' : 'With a semicolon between: 5.1; 5.3; 5.0.',
          look: 'words',
        },
        { typed: app.draw },
      )}
      <div class="gap" aria-live="polite">
        ${ok ? strip('ok', spoonHolds(ok), spoonWhy(ok)) : problems ? problemStrip(app, problems) : nothing}
      </div>
      <div class="gap"><button type="submit" class="btn wide main">Keep this spoon</button></div>
      ${keptList(
        'Spoons that are kept',
        was().map((one) => ({
          name: `${one.tablespoon ? 'Tablespoon' : 'Teaspoon'}, ${nameOf(one.item)}`,
          says: `${one.grams[0]} to ${one.grams[2]}, usually ${one.grams[1]}`,
          what: `the spoon for ${nameOf(one.item)}`,
          remove: () => set(others(one), 'The spoon is removed.'),
        })),
      )}
    </form>`;
  };
}

/** @param {App} app */
function ownScale(app) {
  const form = new Form('k', 'scale');
  /** @type {Read[]} */
  const fields = [{ key: 'reads', label: 'What the scale shows', kind: 'mass', unit: 'g' }];
  return () => {
    const known = form.text('known').trim();
    const values = known ? form.read(fields, app.settings.units, { quiet: true }) : null;
    const { ok, problems } = values?.reads
      ? ask('scale', { checks: [[known, values.reads]], settings: app.settings })
      : {};
    const on = { typed: app.draw };
    return html`<section role="group" aria-labelledby="k-h">
      <h2 id="k-h">Hold the scale against what is known</h2>
      <p class="near">A weight made for scales, or water: 50 ml from a syringe weigh 49.9 g.</p>
      ${field(form, { key: 'known', label: 'What is on it', hint: '100 g, or 50 ml of water.', look: 'words' }, on)}
      ${field(form, { key: 'reads', label: 'What the scale shows', unit: 'g', look: 'small' }, on)}
      <div class="gap" aria-live="polite">
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
    const mass = UNITS[app.settings.units].mass;
    /** @type {Read[]} */
    const fields = [
      { key: 'meat', label: 'Meat, green weight', kind: 'mass', unit: mass },
      { key: 'nitrite', label: 'Nitrite printed on the packet', kind: 'printed', unit: '%' },
      { key: 'nitrate', label: 'Nitrate printed on the packet', kind: 'printed_nitrate', unit: '%', optional: true },
      { key: 'aim', label: 'Aim, going in', kind: 'share', unit: 'ppm', stored: AIM },
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
      <h2 id="t-h">Thin a cure for a coarse scale</h2>
      <p class="near">One part in ten is weighed ten times heavier, so a step of the scale matters ten times less.</p>
      ${pick(
        {
          name: 'way',
          legend: 'With what',
          options: [
            ['salt', 'Salt: a premix'],
            ['water', 'Water: a stock'],
          ],
          value: way,
        },
        (now) => {
          form.type('way', now);
          app.draw();
        },
      )}
      ${field(form, { key: 'meat', label: 'Meat, green weight', unit: mass, look: 'small' }, on)}
      ${field(form, { key: 'nitrite', label: 'Nitrite printed on the packet', unit: '%', look: 'small' }, on)}
      ${field(
        form,
        {
          key: 'nitrate',
          label: 'Nitrate printed on the packet',
          hint: 'Cure no. 2 has some. Empty: none.',
          unit: '%',
          look: 'small',
          optional: true,
        },
        on,
      )}
      ${field(form, { key: 'aim', label: 'Aim, going in', unit: 'ppm', stored: AIM, look: 'small' }, on)}
      <div class="gap" aria-live="polite">
        ${
          ok
            ? html`${factList([
                  { label: 'Weigh of it', value: ok.take.text },
                  { label: 'Neat on this scale', value: doseRange(ok.ranges[0]) },
                  { label: 'Thinned', value: doseRange(ok.ranges[1]) },
                ])}
                ${advice(stockSteps(ok))}
                <h3 class="gap">Write on it</h3>
                <ul class="rows">
                  ${stockLabel(ok).map((line) => html`<li>${line}</li>`)}
                </ul>
                <p class="gap">Made so? Keep it, and recipes and Check a dose offer it as a cure.</p>
                <div class="gap">
                  <button
                    type="button"
                    class="btn quiet wide"
                    @click=${() => set([...others(ok.mix), ok.mix], `Kept: ${mixName(ok.mix)}.`)}
                  >
                    Keep this ${way === 'water' ? 'stock' : 'premix'}
                  </button>
                </div>`
            : problems
              ? problemStrip(app, problems)
              : nothing
        }
      </div>
      ${keptList(
        'Premixes and stocks that are kept',
        was().map((mix) => ({
          name: mixName(mix),
          says: `1 part cure in ${mix.made?.parts}, strength known to ${mix.made?.off} either way`,
          what: mixName(mix),
          remove: () => set(others(mix), 'It is removed. Recipes that use it keep it.'),
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
            <b>${name}</b><br />${says}
            <div class="acts">
              <button type="button" class="btn less" aria-label="Remove ${what}" @click=${remove}>Remove</button>
            </div>
          </li>`,
      )}
    </ul>`;
}
