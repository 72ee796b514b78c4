/** The brine bench: water for a vessel or the meat, strength in every measure, salt and cure for it. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { factList } from '../widgets/facts.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { choose, chooseCut, option, pick } from '../widgets/pick.js';
import { cautions, evidence, nextSteps, sayVerdict, strip, verdictStrip } from '../widgets/verdict.js';
import { REMARKS, amounts, strengths } from '../words/brine.js';
import { UNITS } from '../words/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').AskBrine} AskBrine */
/** @typedef {import('../types').BrineSheet} BrineSheet */
/** @typedef {import('../types').Scale} Scale */
/** @typedef {import('../widgets/form.js').Read} Read */

/** @type {[string, string][]} */
const VESSELS = [
  ['bag', 'A bag'],
  ['box', 'A box'],
  ['round', 'A round pot'],
  ['water', 'So much water'],
];

/** Inside measures of each vessel. @type {Record<string, [string, string][]>} */
const SIDES = {
  box: [
    ['length', 'Inside length'],
    ['width', 'Inside width'],
    ['depth', 'Depth of the brine'],
  ],
  round: [
    ['across', 'Inside, across'],
    ['depth', 'Depth of the brine'],
  ],
};

/** @type {[Scale, string][]} */
const SCALES = [
  ['percent', 'Per cent of salt in water and salt'],
  ['salometer', 'Degrees on a salometer'],
  ['gravity', 'Specific gravity on a hydrometer'],
  ['per_litre', 'Grams to a litre of water'],
  ['per_us_gallon', 'Pounds to a US gallon of water'],
  ['per_imperial_gallon', 'Pounds to an Imperial gallon of water'],
];

/** @param {App} app @returns {import('../app.js').Screen} */
export function brine(app) {
  const form = new Form('f', 'brine');
  const chosen = () => ({
    vessel: form.text('vessel', 'bag'),
    scale: /** @type {Scale} */ (form.text('scale', 'percent')),
    cure: form.text('cure', 'none'),
    cut: form.text('cut'),
  });
  const reads = () => ['salometer', 'gravity'].includes(chosen().scale);

  /** @returns {Read[]} */
  function fields() {
    const { vessel, cure } = chosen();
    const units = UNITS[app.settings.units];
    const optional = vessel !== 'bag' && cure === 'none';
    /** @type {Read[]} */
    const list = [{ key: 'meat', label: 'Meat, green weight', kind: 'mass', unit: units.mass, optional }];
    for (const [key, label] of SIDES[vessel] ?? []) list.push({ key, label, kind: 'length', unit: units.length });
    if (vessel === 'water') list.push({ key: 'water', label: 'Water', kind: 'mass', unit: units.mass });
    if (reads()) {
      const unit = units.temperature;
      list.push({ key: 'at', label: 'How warm the brine was', kind: 'temperature', unit, optional: true });
    }
    list.push({ key: 'sugar', label: 'Sugar', kind: 'share', unit: '%', optional: true });
    if (cure !== 'none') {
      list.push({ key: 'nitrite', label: 'Nitrite printed on the packet', kind: 'printed', unit: '%' });
      list.push({
        key: 'nitrate',
        label: 'Nitrate printed on the packet',
        kind: 'printed_nitrate',
        unit: '%',
        optional: true,
      });
      if (cure === 'aim') list.push({ key: 'aim', label: 'Aim, going in', kind: 'share', unit: 'ppm' });
      else list.push({ key: 'weight', label: 'Cure', kind: 'mass', unit: 'g' });
    }
    return list;
  }

  /** @param {Record<string, string | null>} values @returns {AskBrine} */
  function question(values) {
    const { vessel, scale, cure, cut } = chosen();
    const { meat, water, at, sugar, nitrite, nitrate, aim, weight } = values;
    const sides = Object.fromEntries((SIDES[vessel] ?? []).map(([key]) => [key, values[key] ?? '']));
    return {
      vessel: /** @type {AskBrine['vessel']} */ ({ shape: vessel, ...sides, ...(vessel === 'water' && { water }) }),
      strength: form.text('strength', '10'),
      scale,
      settings: app.settings,
      ...(meat && { meat }),
      ...(reads() && at && { at }),
      ...(sugar && { sugar }),
      ...(cure !== 'none' && cut && { cut }),
      ...(cure !== 'none' &&
        nitrite && {
          cure: { nitrite, ...(nitrate && { nitrate }), ...(aim && { aim }), ...(weight && { weight }) },
        }),
    };
  }

  const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
    form.type(key, now);
    app.draw();
  };

  function draw() {
    const values = form.read(fields(), app.settings.units, { quiet: true });
    const answer = values ? ask('brine', question(values)) : null;
    const sheet = answer?.ok;
    if (sheet?.verdict) sayVerdict(app, sheet.verdict);
    const units = UNITS[app.settings.units];
    const on = { typed: app.draw };
    const { vessel, scale, cure } = chosen();
    const side = (/** @type {string} */ key, /** @type {string} */ label) =>
      field(form, { key, label, unit: units.length, look: 'small' }, on);

    const leaf = html`<div class="leaf">
      <form novalidate @submit=${check}>
        ${errorSummary(form)}
        <h1 tabindex="-1">The brine bench</h1>
        <p class="small near">Water for a vessel or for the meat, how strong it is, and the salt and cure for it.</p>
        ${pick({ name: 'vessel', legend: 'Where does it stand', options: VESSELS, value: vessel }, put('vessel'))}
        ${(SIDES[vessel] ?? []).map(([key, label]) => side(key, label))}
        ${
          vessel === 'water'
            ? field(
                form,
                {
                  key: 'water',
                  label: 'Water',
                  hint: units.mass ? 'In grams; a litre is 1000 g.' : 'A US quart weighs 2 lb 1.4 oz.',
                  unit: units.mass,
                },
                on,
              )
            : nothing
        }
        ${field(
          form,
          {
            key: 'meat',
            label: 'Meat, green weight',
            hint: 'It takes up room, and the cure counts over meat and brine together.',
            unit: units.mass,
            optional: vessel !== 'bag' && cure === 'none',
          },
          on,
        )}
        ${choose(
          {
            id: 'f-scale',
            label: 'Strength in',
            value: scale,
            options: SCALES.map(([key, word]) => option(key, word, key === scale)),
          },
          put('scale'),
        )}
        ${field(form, { key: 'strength', label: 'How strong', stored: '10', keys: 'decimal', look: 'small' }, on)}
        ${
          reads()
            ? field(
                form,
                {
                  key: 'at',
                  label: 'How warm the brine was',
                  hint: 'Empty: 16 °C (60 °F).',
                  unit: units.temperature,
                  look: 'small',
                  optional: true,
                },
                on,
              )
            : nothing
        }
        ${field(
          form,
          { key: 'sugar', label: 'Sugar', hint: 'Per cent of the water.', unit: '%', look: 'small', optional: true },
          on,
        )}
        ${pick(
          {
            name: 'cure',
            legend: 'Cure in it',
            options: [
              ['none', 'None'],
              ['aim', 'For an aim'],
              ['weight', 'So much, judge it'],
            ],
            value: cure,
          },
          put('cure'),
        )}
        ${
          cure === 'none'
            ? nothing
            : [
                chooseCut(app, chosen().cut, put('cut')),
                field(
                  form,
                  {
                    key: 'nitrite',
                    label: 'Nitrite printed on the packet',
                    hint: 'Read it off the packet. Saltpetre has none: type 0.',
                    unit: '%',
                  },
                  on,
                ),
                field(
                  form,
                  {
                    key: 'nitrate',
                    label: 'Nitrate printed on the packet',
                    hint: 'Cure no. 2 has some. Empty: none.',
                    unit: '%',
                  },
                  on,
                ),
                cure === 'aim'
                  ? field(
                      form,
                      {
                        key: 'aim',
                        label: 'Aim, going in',
                        hint: 'Of nitrite, such as 150 ppm; of nitrate where the packet has no nitrite.',
                        unit: 'ppm',
                      },
                      on,
                    )
                  : field(form, { key: 'weight', label: 'Cure', unit: 'g' }, on),
              ]
        }
        <div class="block"><button type="submit" class="btn wide ${sheet ? '' : 'main'}">Work it out</button></div>
      </form>
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2 id="brine-h" tabindex="-1">What to weigh</h2>
        ${
          sheet
            ? drawn(sheet)
            : answer
              ? problemStrip(app, answer.problems ?? [])
              : strip('ask', 'Cannot say yet', html`${form.wrong.map(({ message }) => html`<span>${message} </span>`)}`)
        }
      </div>
    </div>`;
    return { title: 'The brine bench', back: { href: '#/more', text: 'More' }, view: [leaf, plate] };
  }

  const check = (/** @type {Event} */ event) => {
    event.preventDefault();
    const good = form.read(fields(), app.settings.units);
    app.draw();
    if (!good) return focusErrors();
    const head = document.getElementById('brine-h');
    head?.focus();
    head?.scrollIntoView({ block: 'start' });
  };

  return { draw };
}

/** @param {BrineSheet} sheet */
function drawn(sheet) {
  const { water, cure, salt, sugar, verdict } = sheet;
  const weighed = [
    ['Water', water],
    ['Cure', cure],
    ['Salt', salt],
    ['Sugar', sugar],
  ].flatMap(([label, figure]) =>
    figure ? [{ label: String(label), value: /** @type {import('../types').Figure} */ (figure).text }] : [],
  );
  return html`${factList(weighed)} ${verdict ? html`<div class="gap">${verdictStrip(verdict)}</div>` : nothing}
    ${verdict ? html`${evidence(verdict)} ${nextSteps(verdict)}` : nothing}
    <h3 class="gap">How strong it is</h3>
    ${factList(strengths(sheet))}
    <h3 class="gap">How much it is</h3>
    ${factList(amounts(sheet))}
    <ul class="near small">
      ${sheet.remarks.map((remark) => html`<li>${REMARKS[remark]}</li>`)}
    </ul>
    ${verdict ? cautions(verdict.cautions) : nothing}`;
}
