/**
 * I already put cure on it: what went on, judged as it is typed, with what is known filled in. Where it is too much the
 * two lines to do now stand first, then whom to call, then one question at a time.
 */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { knownOf } from '../widgets/dose-known.js';
import { field } from '../widgets/field.js';
import { Form, errorSummary, focusErrors } from '../widgets/form.js';
import { chooseCut, pick } from '../widgets/pick.js';
import { tooMuch } from '../widgets/too-much.js';
import { TroubleFlow } from '../widgets/trouble-flow.js';
import { MEASURES, asked, withPutIn } from '../widgets/put-in.js';
import { cautions, evidence, nextSteps, sayVerdict, strip, verdictStrip } from '../widgets/verdict.js';
import { mixName } from '../words/mixes.js';
import { UNITS, hasBrine, takesShare } from '../words/names.js';

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
    const unit = UNITS[app.settings.units].mass;
    return [
      { key: 'green', label: 'Meat, trimmed', kind: 'mass', unit, stored: known.green },
      ...(takesShare(method)
        ? /** @type {Read[]} */ ([{ key: 'take', label: 'How much of the brine goes in', kind: 'share', unit: '%' }])
        : []),
      ...(method === 'pick_up'
        ? /** @type {Read[]} */ ([
            {
              key: 'thickness',
              label: 'Thickest part of the thinnest piece',
              kind: 'length',
              unit: UNITS[app.settings.units].length,
              optional: true,
            },
            { key: 'stays', label: 'How long in the brine', kind: 'time', unit: 'h', optional: true },
          ])
        : []),
      ...(hasBrine(method)
        ? /** @type {Read[]} */ ([
            { key: 'water', label: 'Water in the brine', kind: 'mass', unit },
            { key: 'dissolved', label: 'Salt and sugar in the brine', kind: 'mass', unit, optional: true },
          ])
        : []),
      { key: 'amount', label: 'I already put in', kind: 'amount', unit: measure },
      ...(packet === 'known'
        ? /** @type {Read[]} */ ([
            {
              key: 'nitrite',
              label: 'Nitrite printed on the bag',
              kind: 'printed',
              unit: '%',
              stored: known.nitrite,
            },
            {
              key: 'nitrate',
              label: 'Nitrate printed on the bag',
              kind: 'printed_nitrate',
              unit: '%',
              optional: true,
            },
          ])
        : []),
      ...(second
        ? /** @type {Read[]} */ ([
            { key: 'amount2', label: 'How much of the second', kind: 'amount', unit: 'g' },
            { key: 'nitrite2', label: 'Nitrite printed on the second', kind: 'printed', unit: '%' },
            {
              key: 'nitrate2',
              label: 'Nitrate printed on the second',
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

  function draw() {
    const values = form.read(fields(), app.settings.units, { quiet: true });
    const answer = values ? ask('check_dose', question(values)) : null;
    const verdict = answer?.ok;
    if (verdict) sayVerdict(app, verdict);
    else app.say('Cannot say yet.');
    const unit = UNITS[app.settings.units].mass;
    const on = { typed: app.draw };
    const { method, eaten, measure, packet, second } = chosen();
    const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
      form.type(key, now);
      app.draw();
    };

    const went = html`<form class="leaf asked" novalidate @submit=${check}>
      ${errorSummary(form)}
      ${field(
        form,
        {
          key: 'amount',
          label: 'I already put in',
          ...asked(measure),
        },
        on,
      )}
      ${pick({ name: 'measure', legend: 'Measure', hidden: true, look: 'snug', options: MEASURES, value: measure }, put('measure'))}
    </form>`;
    const others = html`<form class="leaf ways" novalidate @submit=${check}>
      <details
        ?open=${rest}
        @toggle=${(/** @type {{ target: HTMLDetailsElement }} */ { target }) => (rest = target.open)}
      >
        <summary>
          <span>The meat and the cure${known.says ? html` <span class="small">${known.says}</span>` : nothing}</span>
        </summary>
        ${pick(
          {
            name: 'method',
            legend: 'How was it put on',
            options: [
              ['rub', 'Rubbed, in a bag'],
              ['cover_brine', 'In a brine'],
              ['ground', 'Mixed into mince'],
              ['pick_up', 'Short, in a strong brine'],
              ['pumped', 'Pumped'],
              ['pumped_and_covered', 'Pumped, then covered'],
            ],
            value: method,
          },
          put('method'),
        )}
        ${field(form, { key: 'green', label: 'Meat, trimmed', stored: known.green, hint: unit ? undefined : 'For example 3 lb 4 oz, or 1480 g.', unit }, on)}
        ${chooseCut(app, chosen().cut, put('cut'))}
        ${
          takesShare(method)
            ? field(
                form,
                {
                  key: 'take',
                  label: 'How much of the brine goes in',
                  hint: 'By pump or by pick-up, per cent of green weight; 10 % is usual.',
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
                    label: 'Thickest part of the thinnest piece',
                    hint: 'Thin pieces even out with the brine; then pick-up is no basis.',
                    unit: UNITS[app.settings.units].length,
                    optional: true,
                  },
                  on,
                ),
                field(form, { key: 'stays', label: 'How long in the brine', unit: 'h', optional: true }, on),
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
                    label: 'Water in the brine',
                    hint: unit ? 'In grams; a litre is 1000 g.' : 'A US quart weighs 2 lb 1.4 oz.',
                    unit,
                  },
                  on,
                ),
                field(
                  form,
                  {
                    key: 'dissolved',
                    label: 'Salt and sugar in the brine',
                    hint: 'All that is dissolved, without the cure.',
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
            name: 'packet',
            legend: 'Is the nitrite printed on the packet',
            options: [
              ['known', 'Yes, I can read it'],
              ['unknown', 'I do not know'],
              ...(app.settings.mixes ?? []).map(mixName).map((name) => /** @type {[string, string]} */ ([name, name])),
            ],
            value: packet,
          },
          put('packet'),
        )}
        ${
          packet === 'known'
            ? [
                field(
                  form,
                  {
                    key: 'nitrite',
                    label: 'Nitrite printed on the bag',
                    hint: 'Read it off the packet. Pink salt for the table has none.',
                    unit: '%',
                    stored: known.nitrite,
                  },
                  on,
                ),
                field(
                  form,
                  {
                    key: 'nitrate',
                    label: 'Nitrate printed on the bag',
                    hint: 'Cure no. 2 has some. Empty: none.',
                    unit: '%',
                  },
                  on,
                ),
              ]
            : nothing
        }
        ${pick(
          {
            name: 'second',
            legend: 'Did a second agent go in',
            options: [
              ['no', 'No, only that'],
              ['yes', 'Yes, another'],
            ],
            value: second ? 'yes' : 'no',
          },
          put('second'),
        )}
        ${
          second
            ? [
                field(form, { key: 'amount2', label: 'How much of the second', hint: 'Weighed.', unit: 'g' }, on),
                field(
                  form,
                  {
                    key: 'nitrite2',
                    label: 'Nitrite printed on the second',
                    hint: 'Saltpetre has none: type 0.',
                    unit: '%',
                  },
                  on,
                ),
                field(
                  form,
                  {
                    key: 'nitrate2',
                    label: 'Nitrate printed on the second',
                    hint: 'As sodium nitrate. Empty: none.',
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
            legend: 'How is it eaten',
            options: [
              ['cooked', 'Cooked, or within weeks'],
              ['hung_for_months', 'Hung for months, raw'],
            ],
            value: eaten,
          },
          put('eaten'),
        )}
      </details>
      <div class="block">
        <button type="submit" class="btn wide ${verdict?.held || verdict ? '' : 'main'}">Check it</button>
      </div>
      ${verdict && values ? keepWith(values) : nothing}
    </form>`;
    const judged = html`<section class="leaf answered" aria-labelledby="verdict-h">
      <h2 class="vh" id="verdict-h" tabindex="-1">Verdict</h2>
      ${
        verdict
          ? verdict.outcome === 'over' && verdict.held
            ? tooMuch(flow, verdict, measure.endsWith('sp'))
            : html`${verdictStrip(verdict)} ${evidence(verdict)}
              ${nextSteps(verdict, verdict.held ? 'What to do next' : 'To be sure')} ${cautions(verdict.cautions)}`
          : answer
            ? problemStrip(app, answer.problems ?? [])
            : strip(
                'ask',
                'Cannot say yet',
                form.text('amount').trim()
                  ? html`${form.wrong.map(({ message }) => html`<span>${message} </span>`)}`
                  : 'Type how much cure went on.',
              )
      }
    </section>`;
    return {
      title: 'Cure already on',
      name: 'Cure already on',
      back: { href: id ? `#/batch/${id}/weigh` : '#/more', text: id ? 'Batch' : 'More' },
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
        says: 'What was put in is kept with the batch.',
      });
      if (!kept) return;
      form.clear();
      app.go(`#/batch/${batchId}/weigh`);
    };
    return html`<section class="block noprint">
      <h3>Keep it with a batch</h3>
      <p class="small">The batch is judged by this amount from then on, over its own pieces.</p>
      <div class="field">
        <label for="f-batch">Which batch</label>
        <select
          id="f-batch"
          @change=${(/** @type {{ target: HTMLSelectElement }} */ { target }) => chooseBatch(target.value)}
        >
          <option value="" ?selected=${!batchId}>Choose one</option>
          ${open.map(([id, batch]) => html`<option value=${id} ?selected=${id === batchId}>${batch.tag} ${batch.name}</option>`)}
        </select>
      </div>
      <div class="gap">
        <button type="button" class="btn quiet wide" ?disabled=${!batchId} @click=${keep}>Keep it there</button>
      </div>
    </section>`;
  }

  const chooseBatch = (/** @type {string} */ id) => {
    batchId = id;
    app.draw();
  };

  return { draw };
}
