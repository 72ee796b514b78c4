/** The steps after weighing: what, how long, how warm. */
import { html, nothing } from 'lit-html';
import { UNITS } from '../../words/en/names.js';
import { STEPS as DOES } from '../../words/en/steps.js';
import { field } from './field.js';
import { choose, option } from './pick.js';
import { Rows, moved, rowActs } from './rows.js';
import { STEPS, stepLine } from '../../words/en/recipes.js';

/** @typedef {import('../screens/edit.js').Editor} Editor */
/** @typedef {import('../types').Do} Do */
/** @typedef {import('../types').Step} Step */
/** @typedef {import('../types').Recipe} Recipe */
/** @typedef {'lasts' | 'turn_every' | 'at' | 'until'} Part */

/** @type {Do[]} steps that end at a temperature in the meat */
const HEATED = ['smoke', 'cook', 'dry_out'];

/** @param {Editor} editor */
export function stepFields({ app, form, set, left }) {
  const rows = new Rows(form, 'steps');

  /** @param {number} at @param {Partial<Step>} part @returns {(recipe: Recipe) => Recipe} */
  const put = (at, part) => (recipe) => ({
    ...recipe,
    steps: recipe.steps.map((step, n) => (n === at ? { ...step, ...part } : step)),
  });

  const move = async (/** @type {number} */ at, /** @type {number} */ to) => {
    if (await set((recipe) => ({ ...recipe, steps: moved(recipe.steps, at, to) }))) rows.move(at, to);
    app.draw();
  };

  const remove = async (/** @type {number} */ at) => {
    const gone = await set((recipe) => ({ ...recipe, steps: recipe.steps.toSpliced(at, 1) }), STEPS.removed);
    if (gone) rows.drop(at);
    app.draw();
  };

  const add = () => set((recipe) => ({ ...recipe, steps: [...recipe.steps, { do: 'rest' }] }));

  /** @param {Recipe} recipe */
  return (recipe) => {
    const names = rows.names(recipe.steps.length);
    return html`${recipe.steps.map((step, at) => one(step, at, `step-${names[at]}`, recipe.steps.length))}
      <div class="group"><button type="button" class="btn quiet" @click=${add}>${STEPS.add}</button></div>`;
  };

  /** @param {Step} step @param {number} at @param {string} key @param {number} length */
  function one(step, at, key, length) {
    const { temperature } = UNITS[app.settings.units];
    const word = STEPS.nth(at + 1, DOES[step.do]);
    /** @param {Part} part @param {string} label @param {string} unit @param {import('../types').FieldKind} kind */
    const entry = (part, label, unit, kind) =>
      field(
        form,
        {
          key: `${key}-${part}`,
          label,
          unit,
          stored: step[part] ?? '',
          look: 'small',
          // Days and minutes are typed with their unit.
          ...(kind === 'time' && { keys: 'text' }),
        },
        {
          typed: app.draw,
          left: left(
            {
              key: `${key}-${part}`,
              label: STEPS.field(word, label),
              kind,
              unit,
              optional: true,
              stored: step[part] ?? '',
            },
            (recipe, value) => put(at, { [part]: value })(recipe),
          ),
        },
      );
    const heated = HEATED.includes(step.do) || step.until;
    const turned = step.do === 'cure' || step.turn_every;
    return html`<details class="group">
      <summary>
        <span>${stepLine(at + 1, DOES[step.do], step.lasts, step.until)}</span>
      </summary>
      ${choose(
        {
          id: `f-${key}-do`,
          label: STEPS.what,
          value: step.do,
          options: Object.entries(DOES).map(([act, name]) => option(act, name, act === step.do)),
        },
        (act) => set(put(at, { do: /** @type {Do} */ (act) })),
      )}
      <p class="small gap">${STEPS.leaveEmpty}</p>
      <div class="twofold">
        ${entry('lasts', STEPS.lasts, 'h', 'time')} ${turned ? entry('turn_every', STEPS.turn, 'h', 'time') : nothing}
        ${entry('at', STEPS.at, temperature, 'temperature')}
        ${heated ? entry('until', STEPS.until, temperature, HEATED.includes(step.do) ? 'core' : 'temperature') : nothing}
      </div>
      ${field(
        form,
        { key: `${key}-note`, label: STEPS.own, stored: step.note ?? '', look: 'words' },
        {
          typed: app.draw,
          left: async () => {
            if (await set(put(at, { note: form.text(`${key}-note`, step.note).trim() }))) form.drop(`${key}-note`);
          },
        },
      )}
      ${rowActs({ name: word, at, length, move: (to) => move(at, to), remove: () => remove(at) })}
    </details>`;
  }
}
