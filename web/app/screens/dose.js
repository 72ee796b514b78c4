/**
 * I already put cure on it: what went on, judged as it is typed, with what is known filled in. Where it is too much the
 * two lines to do now stand first, then whom to call, then one question at a time.
 */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { knownOf } from '../widgets/dose-known.js';
import { meatAndCure } from '../widgets/dose-meat.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { pick } from '../widgets/pick.js';
import { tooMuch } from '../widgets/too-much.js';
import { TroubleFlow } from '../widgets/trouble-flow.js';
import { MEASURES, asked, withPutIn } from '../widgets/put-in.js';
import { cautions, evidence, nextSteps, sayVerdict, strip, verdictStrip } from '../widgets/verdict.js';
import { BACK, BAG, CANNOT_SAY, MEAT, WATER } from '../../words/en/fields.js';
import { ASKS, EATEN, MEASURE, SECOND, TITLE, TO_BATCH, VERDICT } from '../../words/en/put-in.js';
import { SCALE } from '../../words/en/weigh-out.js';
import { mixName } from '../../words/en/mixes.js';
import { UNITS, hasBrine, takesShare } from '../../words/en/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').AskDose} AskDose */
/** @typedef {import('../types').Method} Method */
/** @typedef {import('../types').Eaten} Eaten */
/** @typedef {import('../widgets/put-in.js').Measure} Measure */
/** @typedef {import('../widgets/form.js').Read} Read */

/** @param {App} app @param {import('../router.js').Place} place @returns {import('../app.js').Screen} */
export function dose(app, { id }) {
  const form = new Form('f', 'dose');
  const known = knownOf(app, id);
  const flow = new TroubleFlow(app, 'dose');
  let batchId = id;
  // What is not known must be asked for; what is may be looked at.
  let rest = !known.green;
  const meat = { open: rest };
  const chosen = () => ({
    method: /** @type {Method} */ (form.text('method', known.method ?? 'rub')),
    eaten: /** @type {Eaten} */ (form.text('eaten', known.eaten ?? 'cooked')),
    measure: /** @type {Measure} */ (form.text('measure', 'tsp')),
    packet: form.text('packet', 'known'),
    mix: app.settings.mixes?.find((mix) => mixName(mix) === form.text('packet')),
    cut: form.text('cut', known.cut),
    second: form.text('second', 'no') === 'yes',
  });

  /** @returns {Read[]} */
  function fields() {
    const { method, measure, packet, second } = chosen();
    const { mass: unit, meat } = UNITS[app.settings.units];
    return [
      { key: 'green', label: MEAT.label, kind: 'mass', unit: meat, stored: known.green },
      ...(takesShare(method)
        ? /** @type {Read[]} */ ([{ key: 'take', label: ASKS.take, kind: 'share', unit: '%' }])
        : []),
      ...(method === 'pick_up'
        ? /** @type {Read[]} */ ([
            {
              key: 'thickness',
              label: ASKS.thickness,
              kind: 'length',
              unit: UNITS[app.settings.units].length,
              optional: true,
            },
            { key: 'stays', label: ASKS.stays, kind: 'time', unit: 'h', optional: true },
          ])
        : []),
      ...(hasBrine(method)
        ? /** @type {Read[]} */ ([
            { key: 'water', label: ASKS.water, kind: 'mass', unit },
            { key: 'dissolved', label: ASKS.dissolved, kind: 'mass', unit, optional: true },
          ])
        : []),
      { key: 'amount', label: ASKS.amount, kind: 'amount', unit: measure },
      ...(packet === 'known'
        ? /** @type {Read[]} */ ([
            {
              key: 'nitrite',
              label: BAG.nitrite,
              kind: 'printed',
              unit: '%',
              stored: known.nitrite,
            },
            {
              key: 'nitrate',
              label: BAG.nitrate,
              kind: 'printed_nitrate',
              unit: '%',
              optional: true,
            },
          ])
        : []),
      ...(second
        ? /** @type {Read[]} */ ([
            { key: 'amount2', label: SECOND.amount, kind: 'amount', unit: 'g' },
            { key: 'nitrite2', label: SECOND.nitrite, kind: 'printed', unit: '%' },
            {
              key: 'nitrate2',
              label: SECOND.nitrate,
              kind: 'printed_nitrate',
              unit: '%',
              optional: true,
            },
          ])
        : []),
    ];
  }

  /** @param {Record<string, string | null>} values @returns {AskDose} */
  function question({ green, water, dissolved, take, thickness, stays, amount, nitrite, nitrate, ...second }) {
    const { method, eaten, cut, mix } = chosen();
    return {
      method,
      eaten,
      green: green ?? '',
      put_in: {
        amount: amount ?? '',
        step: app.settings.scale_step,
        ...(nitrite && { nitrite }),
        ...(nitrate && { nitrate }),
        ...(mix?.made && { nitrite: mix.nitrite, nitrate: mix.nitrate, made: mix.made }),
      },
      settings: app.settings,
      ...(second.amount2 && {
        also: {
          amount: second.amount2,
          step: app.settings.scale_step,
          ...(second.nitrite2 && { nitrite: second.nitrite2 }),
          ...(second.nitrate2 && { nitrate: second.nitrate2 }),
        },
      }),
      ...(water && { water }),
      ...(dissolved && { dissolved }),
      ...(take && { take }),
      ...(cut && { cut }),
      ...(thickness && { thickness }),
      ...(stays && { stays }),
    };
  }

  /** Where the steps of the scale leave the dose open, the way to weigh so little. @param {import('../types').Verdict} verdict */
  const byCoarse = ({ word }) =>
    chosen().measure === 'g' && word.startsWith('may_be')
      ? html`<p class="near noprint"><a href="#/spoons">${VERDICT.mix}</a></p>`
      : nothing;

  /** What a scale cannot show is part of the dose. */
  const byScale = () =>
    pick(
      {
        name: 'scale',
        legend: SCALE.asks,
        look: 'tight',
        options: app.tables.scale_steps.map((step) => [step, step]),
        value: app.settings.scale_step,
      },
      (scale_step) => app.act(() => app.shelf.changeSettings({ scale_step })),
    );

  function draw() {
    const values = form.read(fields(), app.settings.units, { quiet: true });
    const answer = values ? ask('check_dose', question(values)) : null;
    const verdict = answer?.ok;
    if (verdict) sayVerdict(app, verdict);
    else app.say(VERDICT.notYet, { of: 'verdict' });
    const unit = UNITS[app.settings.units].mass;
    const on = { typed: app.draw };
    const { method, eaten, measure, packet, second } = chosen();
    const over = verdict?.outcome === 'over' && verdict.held;
    const said = form.typed.includes('method') ? method : known.method;
    const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
      form.type(key, now);
      app.draw();
    };

    // Whoever says a spoon and no number means one of it.
    const measured = (/** @type {Measure} */ now) => {
      if (now.endsWith('sp') && !form.text('amount').trim()) form.type('amount', '1');
      put('measure')(now);
    };

    // The card on too much asks this too, and then it stands there: never both at once.
    const howOn = pick(
      {
        name: 'method',
        legend: ASKS.method,
        look: 'long',
        options: Object.entries(ASKS.methods),
        value: over && !said ? '' : method,
      },
      (now) => {
        // Of a brine more is asked.
        rest = true;
        flow.forget('how_on');
        put('method')(now);
      },
    );

    const went = html`<form class="leaf asked" novalidate @submit=${check}>
      ${errorSummary(form)} ${field(form, { key: 'amount', label: ASKS.amount, ...asked(measure) }, on)}
      ${pick({ name: 'measure', legend: MEASURE, hidden: true, look: 'snug', options: MEASURES, value: measure }, measured)}
      ${measure.endsWith('g') ? byScale() : nothing}
      ${meatAndCure({ app, form, known, packet, cut: chosen().cut, fold: meat, put, on })}
    </form>`;
    const others = html`<form class="leaf ways" novalidate @submit=${check}>
      <details
        ?open=${rest}
        @toggle=${(/** @type {{ target: HTMLDetailsElement }} */ { target }) => (rest = target.open)}
      >
        <summary><span>${ASKS.rest}</span></summary>
        ${over && !said ? nothing : howOn}
        ${
          takesShare(method)
            ? field(
                form,
                {
                  key: 'take',
                  label: ASKS.take,
                  hint: ASKS.takeHint,
                  unit: '%',
                },
                on,
              )
            : nothing
        }
        ${
          method === 'pick_up'
            ? [
                field(
                  form,
                  {
                    key: 'thickness',
                    label: ASKS.thickness,
                    hint: ASKS.thicknessHint,
                    unit: UNITS[app.settings.units].length,
                    optional: true,
                  },
                  on,
                ),
                field(form, { key: 'stays', label: ASKS.stays, unit: 'h', optional: true }, on),
              ]
            : nothing
        }
        ${
          hasBrine(method)
            ? [
                field(
                  form,
                  {
                    key: 'water',
                    label: ASKS.water,
                    hint: unit ? WATER.grams : WATER.pounds,
                    unit,
                  },
                  on,
                ),
                field(
                  form,
                  {
                    key: 'dissolved',
                    label: ASKS.dissolved,
                    hint: ASKS.dissolvedHint,
                    unit,
                    optional: true,
                  },
                  on,
                ),
              ]
            : nothing
        }
        ${pick(
          {
            name: 'second',
            legend: SECOND.asks,
            options: Object.entries(SECOND.ways),
            value: second ? 'yes' : 'no',
          },
          put('second'),
        )}
        ${
          second
            ? [
                field(form, { key: 'amount2', label: SECOND.amount, hint: SECOND.weighed, unit: 'g' }, on),
                field(
                  form,
                  {
                    key: 'nitrite2',
                    label: SECOND.nitrite,
                    hint: SECOND.nitriteHint,
                    unit: '%',
                  },
                  on,
                ),
                field(
                  form,
                  {
                    key: 'nitrate2',
                    label: SECOND.nitrate,
                    hint: SECOND.nitrateHint,
                    unit: '%',
                  },
                  on,
                ),
              ]
            : nothing
        }
        ${pick(
          {
            name: 'eaten',
            legend: EATEN.asks,
            options: Object.entries(EATEN.ways),
            value: eaten,
          },
          put('eaten'),
        )}
      </details>
      <div class="block">
        <button type="submit" class="btn wide ${verdict?.held || verdict ? '' : 'main'}">${ASKS.check}</button>
      </div>
      ${verdict && values ? keepWith(values) : nothing}
    </form>`;
    const judged = html`<section class="leaf answered" aria-labelledby="verdict-h">
      <h2 class="vh" id="verdict-h" tabindex="-1">${VERDICT.head}</h2>
      ${
        verdict
          ? over
            ? tooMuch(flow, verdict, { spooned: measure.endsWith('sp'), method: said, howOn })
            : html`${verdictStrip(verdict)} ${evidence(verdict)} ${byCoarse(verdict)}
              ${nextSteps(verdict, verdict.held ? undefined : VERDICT.sure)} ${cautions(verdict.cautions)}`
          : answer
            ? problemStrip(app, answer.problems ?? [])
            : strip(
                'ask',
                CANNOT_SAY,
                form.text('amount').trim()
                  ? html`${form.wrong.map(({ message }) => html`<span>${message} </span>`)}`
                  : VERDICT.type,
              )
      }
    </section>`;
    return {
      title: TITLE,
      name: TITLE,
      back: { href: id ? `#/batch/${id}/weigh` : '#/more', text: id ? BACK.batch : BACK.more },
      view: [went, judged, others],
    };
  }

  const check = (/** @type {Event} */ event) => {
    event.preventDefault();
    const good = form.read(fields(), app.settings.units);
    app.draw();
    if (!good) return focusErrors();
    const head = document.getElementById('verdict-h');
    head?.focus();
    head?.parentElement?.scrollIntoView({ block: 'nearest' });
  };

  /** @param {Record<string, string | null>} values */
  function keepWith(values) {
    const open = app.shelf.open().filter(([, batch]) => batch.recipe.method === chosen().method);
    if (open.length === 0) return nothing;
    const keep = async () => {
      const { put_in, also } = question(values);
      const kept = await app.act(() => app.shelf.changeBatch(batchId, (batch) => withPutIn(batch, put_in, also)), {
        says: TO_BATCH.done,
      });
      if (!kept) return;
      form.clear();
      app.go(`#/batch/${batchId}/weigh`);
    };
    return html`<section class="block noprint">
      <h3>${TO_BATCH.head}</h3>
      <p class="small">${TO_BATCH.about}</p>
      <div class="field">
        <label for="f-batch">${TO_BATCH.which}</label>
        <select
          id="f-batch"
          @change=${(/** @type {{ target: HTMLSelectElement }} */ { target }) => chooseBatch(target.value)}
        >
          <option value="" ?selected=${!batchId}>${TO_BATCH.choose}</option>
          ${open.map(([id, batch]) => html`<option value=${id} ?selected=${id === batchId}>${batch.tag} ${batch.name}</option>`)}
        </select>
      </div>
      <div class="gap">
        <button type="button" class="btn quiet wide" ?disabled=${!batchId} @click=${keep}>${TO_BATCH.go}</button>
      </div>
    </section>`;
  }

  const chooseBatch = (/** @type {string} */ id) => {
    batchId = id;
    app.draw();
  };

  return { draw };
}
