/** The brine bench: water for a vessel or the meat, strength in every measure, salt and cure for it. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { factList } from '../widgets/facts.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { choose, chooseCut, option, pick } from '../widgets/pick.js';
import { cautions, evidence, nextSteps, sayVerdict, strip, verdictStrip } from '../widgets/verdict.js';
import {
  ABOUT,
  ANSWER,
  CURE,
  MEAT_COUNTS,
  PARTS,
  SIDES,
  STRENGTH,
  SUGAR_HINT,
  TITLE,
  VESSEL,
} from '../../words/en/brine-bench.js';
import { AIM, BACK, BAG, CANNOT_SAY, MEAT, WATER } from '../../words/en/fields.js';
import { REMARKS, amounts, strengths } from '../../words/en/brine.js';
import { UNITS } from '../../words/en/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').AskBrine} AskBrine */
/** @typedef {import('../types').BrineSheet} BrineSheet */
/** @typedef {import('../types').Scale} Scale */
/** @typedef {import('../widgets/form.js').Read} Read */

/** Inside measures of each vessel. @type {Record<string, (keyof typeof SIDES)[]>} */
const MEASURED = { box: ['length', 'width', 'depth'], round: ['across', 'depth'] };

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
    const list = [{ key: 'meat', label: MEAT.label, kind: 'mass', unit: units.meat, optional }];
    for (const key of MEASURED[vessel] ?? []) list.push({ key, label: SIDES[key], kind: 'length', unit: units.length });
    if (vessel === 'water') list.push({ key: 'water', label: PARTS.water, kind: 'mass', unit: units.mass });
    if (reads()) {
      const unit = units.temperature;
      list.push({ key: 'at', label: STRENGTH.warm, kind: 'temperature', unit, optional: true });
    }
    list.push({ key: 'sugar', label: PARTS.sugar, kind: 'share', unit: '%', optional: true });
    if (cure !== 'none') {
      list.push({ key: 'nitrite', label: BAG.nitrite, kind: 'printed', unit: '%' });
      list.push({
        key: 'nitrate',
        label: BAG.nitrate,
        kind: 'printed_nitrate',
        unit: '%',
        optional: true,
      });
      if (cure === 'aim') list.push({ key: 'aim', label: AIM, kind: 'share', unit: 'ppm' });
      else list.push({ key: 'weight', label: PARTS.cure, kind: 'mass', unit: 'g' });
    }
    return list;
  }

  /** @param {Record<string, string | null>} values @returns {AskBrine} */
  function question(values) {
    const { vessel, scale, cure, cut } = chosen();
    const { meat, water, at, sugar, nitrite, nitrate, aim, weight } = values;
    const sides = Object.fromEntries((MEASURED[vessel] ?? []).map((key) => [key, values[key] ?? '']));
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
    const side = (/** @type {keyof typeof SIDES} */ key) =>
      field(form, { key, label: SIDES[key], unit: units.length, look: 'small' }, on);

    const leaf = html`<div class="leaf">
      <form novalidate @submit=${check}>
        ${errorSummary(form)}
        <h1 tabindex="-1">${TITLE}</h1>
        <p class="small near">${ABOUT}</p>
        ${pick({ name: 'vessel', legend: VESSEL.asks, options: Object.entries(VESSEL.kinds), value: vessel }, put('vessel'))}
        ${(MEASURED[vessel] ?? []).map(side)}
        ${
          vessel === 'water'
            ? field(
                form,
                {
                  key: 'water',
                  label: PARTS.water,
                  hint: units.mass ? WATER.grams : WATER.pounds,
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
            label: MEAT.label,
            hint: MEAT_COUNTS,
            unit: units.meat,
            keys: units.mass ? 'decimal' : 'text',
            optional: vessel !== 'bag' && cure === 'none',
          },
          on,
        )}
        ${choose(
          {
            id: 'f-scale',
            label: STRENGTH.measure,
            value: scale,
            options: Object.entries(STRENGTH.measures).map(([key, word]) => option(key, word, key === scale)),
          },
          put('scale'),
        )}
        ${field(form, { key: 'strength', label: STRENGTH.how, stored: '10', keys: 'decimal', look: 'small' }, on)}
        ${
          reads()
            ? field(
                form,
                {
                  key: 'at',
                  label: STRENGTH.warm,
                  hint: STRENGTH.warmHint(),
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
          { key: 'sugar', label: PARTS.sugar, hint: SUGAR_HINT, unit: '%', look: 'small', optional: true },
          on,
        )}
        ${pick(
          {
            name: 'cure',
            legend: CURE.asks,
            options: Object.entries(CURE.ways),
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
                    label: BAG.nitrite,
                    hint: CURE.bagHint,
                    unit: '%',
                  },
                  on,
                ),
                field(
                  form,
                  {
                    key: 'nitrate',
                    label: BAG.nitrate,
                    hint: BAG.someNitrate,
                    unit: '%',
                  },
                  on,
                ),
                cure === 'aim'
                  ? field(
                      form,
                      {
                        key: 'aim',
                        label: AIM,
                        hint: CURE.aimHint,
                        unit: 'ppm',
                      },
                      on,
                    )
                  : field(form, { key: 'weight', label: PARTS.cure, unit: 'g' }, on),
              ]
        }
        <div class="block"><button type="submit" class="btn wide ${sheet ? '' : 'main'}">${ANSWER.go}</button></div>
      </form>
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2 id="brine-h" tabindex="-1">${ANSWER.weigh}</h2>
        ${
          sheet
            ? drawn(sheet)
            : answer
              ? problemStrip(app, answer.problems ?? [])
              : strip('ask', CANNOT_SAY, html`${form.wrong.map(({ message }) => html`<span>${message} </span>`)}`)
        }
      </div>
    </div>`;
    return { title: TITLE, back: { href: '#/more', text: BACK.more }, view: [leaf, plate] };
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
  const figures = { water, cure, salt, sugar };
  const parts = /** @type {(keyof typeof figures)[]} */ (Object.keys(figures));
  const weighed = parts.flatMap((part) => {
    const figure = figures[part];
    return figure ? [{ label: PARTS[part], value: figure.text }] : [];
  });
  return html`${factList(weighed)} ${verdict ? html`<div class="gap">${verdictStrip(verdict)}</div>` : nothing}
    ${verdict ? html`${evidence(verdict)} ${nextSteps(verdict)}` : nothing}
    <h3 class="gap">${ANSWER.strong}</h3>
    ${factList(strengths(sheet))}
    <h3 class="gap">${ANSWER.much}</h3>
    ${factList(amounts(sheet))}
    <ul class="near small">
      ${sheet.remarks.map((remark) => html`<li>${REMARKS[remark]}</li>`)}
    </ul>
    ${verdict ? cautions(verdict.cautions) : nothing}`;
}
