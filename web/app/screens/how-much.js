/**
 * How much: the weight, the cut and what the bag says; cure, salt and until when as they are typed. Nothing is asked
 * before the answer, and nothing is a batch before it is saved as one.
 */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { newId } from '../shelf.js';
import { problemStrip } from '../widgets/answer.js';
import { door, doors } from '../widgets/doors.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { answerRows, answerDoubt, answerVerdict, answerWhy, peek } from '../widgets/how-much-answer.js';
import { choose, cutOptions, pick } from '../widgets/pick.js';
import { oddWeight } from '../widgets/odd-weight.js';
import { pinned } from '../widgets/pinned.js';
import { anew, thickStep, unread } from '../widgets/thick-step.js';
import { advice, sayVerdict, strip } from '../widgets/verdict.js';
import { HOW_MUCH, USUAL_NITRITE, weighIn, weightField, weightText } from '../widgets/weight-field.js';
import { why } from '../widgets/why.js';
import { cutName } from '../../words/en/cuts.js';
import {
  ANSWER,
  ASKS,
  MIX,
  NIGHT_FREE,
  ODD_BAG,
  OTHER_WAYS,
  SAVE,
  TITLE,
  WRONG,
  ifUsual,
  stays,
  staysHere,
} from '../../words/en/how-much.js';
import { premixSteps } from '../../words/en/weigh.js';
import { MIX as MIXING } from '../../words/en/weigh-out.js';
import { glue } from '../../words/glue.js';
import { inAll, reason } from '../../words/en/until.js';
import { initials } from './recipes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Draft} Draft */
/** @typedef {import('../types').Until} Until */
/** @typedef {import('../types').WeighSheet} WeighSheet */

/** @param {App} app @returns {import('../app.js').Screen} */
export function howMuch(app) {
  const form = new Form('f', HOW_MUCH);
  const units = () => /** @type {'us' | 'metric'} */ (form.text('units', app.settings.units));
  const settings = () => ({ ...app.settings, units: units() });

  /** @returns {import('../widgets/form.js').Read[]} */
  const fields = () => [
    {
      key: 'weight',
      label: WRONG.weight,
      kind: 'mass',
      unit: 'g',
      stored: weightText(form, units()),
      optional: true,
    },
    { key: 'nitrite', label: WRONG.nitrite, kind: 'printed', unit: '%', stored: USUAL_NITRITE },
  ];

  /** What is typed, as the core has it; nothing while it cannot be read. */
  function reckoned() {
    const values = form.read(fields(), units(), { quiet: true });
    if (!values) return null;
    const cut = form.text('cut');
    const thickness = form.text('thick');
    return ask('draft', {
      settings: settings(),
      premix: form.text('premix') === 'yes',
      ...(cut && { cut, called: cutName(cut) ?? '' }),
      ...(values.weight && { weight: values.weight }),
      ...(values.nitrite && { nitrite: values.nitrite }),
      ...(thickness && { thickness }),
    });
  }

  function draw() {
    const now = app.now();
    const answer = reckoned();
    const draft = answer?.ok;
    const weighed = draft?.batch.pieces.length ? draft : null;
    const out = weighed && ask('weigh_out', { batch: weighed.batch, settings: settings() });
    // A bag that is asked about has no figure at all until somebody has read it once more: it would be ten times as much.
    const bag = draft?.bag && form.text('sure') !== form.text('nitrite') ? draft.bag.text : '';
    const sheet = bag ? undefined : out?.ok;
    // No hour by a thickness that cannot be read, and none where not even a usual one is known.
    const clock =
      weighed && sheet && weighed.thick && !weighed.thick.odd && form.text('cut') && !unread(form)
        ? ask('cure_clock', { batch: weighed.batch, now, settings: settings() }).ok
        : undefined;
    const comes = clock?.until ?? null;
    // What may not be weighed stays in until nothing.
    const until = sheet?.verdict.held ? null : (comes?.at ?? null);
    if (sheet) sayVerdict(app, sheet.verdict);
    const fine = sheet ? needsFine(draft) : false;
    const problems = answer?.problems ?? out?.problems;

    const view = [
      html`<form class="leaf asked" novalidate @submit=${(/** @type {Event} */ event) => event.preventDefault()}>
        ${questions(draft)}
      </form>`,
      html`<section class="leaf answered" aria-label=${ANSWER.label}>
        ${weighed ? oddWeight(form, weighed, units(), app.draw) : nothing} ${bag ? sayBag(bag) : nothing}
        ${sheet ? answerDoubt(sheet) : nothing}
        ${problems ? problemStrip(app, problems) : answerRows({ sheet, time: { until, now, under: comes && under(draft, comes, now) } })}
        ${sheet ? [weighed?.odd ? nothing : answerVerdict(sheet, fine ? app.settings.scale_step : undefined), scale(sheet, fine)] : problems || bag ? nothing : hint()}
        ${sheet ? action(sheet, draft) : nothing} ${sheet?.premix ? makeMix(sheet.premix) : nothing}
        ${sheet ? why('how-much', answerWhy({ sheet, clock, now, usual: draft?.thick?.usual ?? false })) : nothing}
      </section>`,
      html`<div class="leaf ways">
        ${doors(OTHER_WAYS.head, [door('#/read', OTHER_WAYS.paste), door('#/dose', OTHER_WAYS.on)])}
        ${weighed ? nothing : html`<p class="small near">${staysHere(app.offline)}</p>`}
      </div>`,
    ];
    return { title: TITLE, name: TITLE, peek: sheet && !weighed?.odd ? peek(sheet, until, now) : undefined, view };
  }

  /** @param {Draft | undefined} draft */
  function questions(draft) {
    const on = { typed: app.draw, left };
    const cut = form.text('cut');
    return html`${weightField(form, { label: ASKS.meat, units: units(), turn: () => turn(draft), weight: draft?.weight }, on)}
      <div class="twofold">
        ${choose({ id: 'f-cut', label: ASKS.cut, value: cut, options: cutOptions(app, cut) }, (key) => {
          form.type('cut', key);
          // The usual thickness is that of the cut.
          anew(form);
          app.draw();
        })}
        ${field(form, { key: 'nitrite', label: ASKS.bag, unit: '%', stored: USUAL_NITRITE }, on)}
      </div>
      ${cut ? thickStep(form, draft?.thick ?? null, units(), app.draw) : nothing}`;
  }

  /** What cannot be read is said once the field is left. */
  function left() {
    form.read(fields(), units());
    app.draw();
  }

  /** @param {Draft | undefined} draft */
  function turn(draft) {
    weighIn(form, units() === 'us' ? 'metric' : 'us', draft);
    const thick = form.text('thick');
    // On the steps of the other rule.
    if (thick) form.type('thick', reckoned()?.ok?.thick?.now ?? thick);
    app.draw();
    document.getElementById('f-weight')?.focus();
  }

  function hint() {
    const bag = weightText(form, units()) && form.wrong.every(({ field }) => field === 'nitrite');
    return html`<p class="near">${bag ? ASKS.noBag : ASKS.hint}</p>`;
  }

  /** A comma in the wrong place. @param {string} usual */
  function sayBag(usual) {
    const typed = form.text('nitrite');
    const sure = () => {
      form.type('sure', typed);
      app.draw();
    };
    const put = () => {
      form.type('nitrite', usual.replace(/[^\d.]/g, ''));
      app.draw();
    };
    return strip(
      'ask',
      ODD_BAG.head,
      ODD_BAG.says(usual),
      html`<div class="acts">
        <button type="button" class="btn" @click=${put}>${ODD_BAG.itIs(usual)}</button>
        <button type="button" class="btn" @click=${sure}>${ODD_BAG.itIs(`${typed} %`)}</button>
      </div>`,
    );
  }

  /** How the mix is made, of which so much is weighed. @param {import('../types').Premix} premix */
  function makeMix(premix) {
    return html`<section class="block">
      <h2>${MIXING.first(premix.parts)}</h2>
      ${advice(premixSteps(premix))}
    </section>`;
  }

  /** How long that is and what comes after; and where raw meat keeps no longer, that. @param {Draft | undefined} draft @param {Until} until @param {number} now */
  function under(draft, until, now) {
    const fridge = units() === 'us' ? '36–40 °F' : '2–4 °C';
    const more = until.capped ? reason(until, now) : until.moved ? NIGHT_FREE : '';
    const says = glue(stays(inAll(now, { ...until, moved: false }, now), fridge, draft?.cook?.text, more));
    // Nobody has measured: the hour holds for what is usual of the cut, and says so beside itself.
    return draft?.thick?.usual ? html`<strong>${ifUsual(draft.thick.now)}</strong> ${says}` : says;
  }

  /** Whether a scale of grams would not do. @param {Draft | undefined} draft */
  const needsFine = (draft) =>
    Boolean(
      draft && ask('weigh_out', { batch: draft.batch, settings: { ...settings(), scale_step: '1 g' } }).ok?.coarse,
    );

  /**
   * A fourth question, only where its answer moves the dose: so little cure is asked about before it is weighed on a scale
   * of grams, since a finer one is only taken for granted.
   * @param {WeighSheet} sheet @param {boolean} fine whether a scale of grams would not do
   */
  function scale({ coarse, premix }, fine) {
    if (!coarse && !premix && app.settings.scale_step === '0.1 g' && !fine) return nothing;
    return pick(
      {
        name: 'scale',
        legend: ASKS.scale,
        look: 'tight',
        options: app.tables.scale_steps.map((step) => [step, step]),
        value: app.settings.scale_step,
      },
      (scale_step) => app.act(() => app.shelf.changeSettings({ scale_step })),
    );
  }

  /** @param {WeighSheet} sheet @param {Draft | undefined} draft */
  function action({ coarse, verdict, premix }, draft) {
    const save = (/** @type {string} */ look) =>
      html`<button type="button" class="btn ${look} wide" @click=${() => draft && keep(draft)}>${SAVE.go}</button>`;
    if (coarse?.premix_parts && !premix) {
      const mix = () => {
        form.type('premix', 'yes');
        app.draw();
      };
      return [
        pinned(
          html`<button type="button" class="btn main wide" @click=${mix}>${MIX.use(coarse.premix_parts)}</button>`,
        ),
        html`<div class="gap">${save('quiet')}</div>`,
      ];
    }
    if (verdict.held) return html`<div class="gap">${save('quiet')}</div>`;
    const plain = () => {
      form.drop('premix');
      app.draw();
    };
    return [
      pinned(save('main')),
      premix
        ? html`<div class="gap">
            <button type="button" class="btn quiet wide" @click=${plain}>${MIX.off}</button>
          </div>`
        : nothing,
    ];
  }

  /** @param {Draft} draft */
  async function keep({ batch }) {
    const id = newId();
    const tag = app.shelf.freeTag(initials(batch.name) ?? batch.recipe.tag);
    const typed = form.typed.map((key) => /** @type {[string, string]} */ ([key, form.text(key)]));
    const kept = await app.act(() => app.shelf.add(`batch/${id}`, { ...batch, tag }), {
      says: SAVE.done(tag),
      after: () => {
        // What was typed stands there again: the way back never ends on an empty page.
        const again = new Form('f', HOW_MUCH);
        for (const [key, text] of typed) again.type(key, text);
        app.go('#/how-much', { replace: true });
      },
    });
    if (!kept) return;
    form.clear();
    app.go(`#/batch/${id}/weigh`);
  }

  return { draw };
}
