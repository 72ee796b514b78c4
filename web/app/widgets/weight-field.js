/** A weight of meat in one box or in two, with the other way of weighing at the end of the frame. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { WEIGHT } from '../../words/en/controls.js';
import { unitBeside, wrong } from './field.js';

/** @typedef {import('./form.js').Form} Form */
/** @typedef {import('../types').BothWays} BothWays */
/** @typedef {'metric' | 'us'} System */

/** The form under which what is typed is kept; the dose begins with the same. */
export const HOW_MUCH = 'how-much';
/** What most bags of the first cure say. */
export const USUAL_NITRITE = '6.25';

/** What is in the boxes, as one text in the grammar of the core. @param {Form} form @param {System} units */
export function weightText(form, units) {
  // A box of nought is a box that nobody has filled yet.
  const typed = (/** @type {string} */ key) => form.text(key).trim().replace(/^0+$/, '');
  if (units === 'metric') return typed('grams');
  const [pounds, ounces] = [typed('pounds'), typed('ounces')];
  // Whoever types a unit into a box means it.
  if (/[a-z]/i.test(pounds + ounces)) return `${pounds} ${ounces}`.trim();
  return [pounds && `${pounds} lb`, ounces && `${ounces} oz`].filter(Boolean).join(' ');
}

/**
 * Writes what is typed in the other way of weighing.
 * @param {Form} form
 * @param {System} to
 * @param {import('../types').Draft | undefined} draft of what was typed
 */
export function weighIn(form, to, draft) {
  const weight = draft?.weight;
  const typed = form.text('grams').trim();
  for (const key of ['grams', 'pounds', 'ounces']) form.drop(key);
  form.type('units', to);
  if (!weight) return;
  if (to === 'metric') form.type('grams', weight.grams);
  // Of so little the number was meant in the other way all along.
  else if (draft.odd === 'little' && bare(typed)) form.type('pounds', typed);
  else {
    form.type('pounds', weight.pounds);
    form.type('ounces', weight.ounces);
  }
}

/** A number without a unit. @param {string} typed */
export const bare = (typed) => /^[\d.,]+$/.test(typed);

/** A pound has so many ounces. */
const OUNCES = 16;

/** More ounces than a pound has are carried over, in words. @param {Form} form @param {System} units @param {BothWays | null | undefined} weight */
function carried(form, units, weight) {
  const typed = Number(form.text('ounces').trim().replace(',', '.'));
  return units === 'us' && weight && typed >= OUNCES ? WEIGHT.carried(weight.pounds, weight.ounces) : '';
}

/**
 * @param {Form} form
 * @param {{ label: string, units: System, turn: () => void, weight?: BothWays | null }} spec turn: to the other way of
 * weighing; weight: what is typed, both ways
 * @param {{ typed: () => void, left: () => void }} on
 */
export function weightField(form, { label, units, turn, weight }, { typed, left }) {
  const problem = form.problem('weight');
  const id = form.id('weight');
  const says = carried(form, units, weight);
  const told = [problem && `${id}-err`, says && `${id}-says`].filter(Boolean).join(' ');
  /** @param {string} key @param {string} name @param {string} unit @param {string} [at] */
  const box = (key, name, unit, at = form.id(key)) =>
    html`<span class="part"
      ><input
        id=${at}
        type="text"
        inputmode="decimal"
        autocomplete="off"
        enterkeyhint="done"
        aria-label=${WEIGHT.box(label, name)}
        aria-invalid=${problem ? 'true' : nothing}
        aria-describedby=${told || nothing}
        .value=${live(form.text(key))}
        @input=${(/** @type {{ target: HTMLInputElement }} */ { target }) => {
          form.type(key, target.value);
          typed();
        }}
        @change=${left}
        @focus=${(/** @type {{ target: HTMLInputElement }} */ { target }) => target.select()}
      /><span class="unit" aria-hidden="true">${unitBeside(unit, form.text(key))}</span></span
    >`;
  return html`<div class="field ${problem ? 'bad' : ''}">
    <label for=${id}>${label}</label>
    ${problem ? wrong(`${id}-err`, problem.message) : nothing}
    <div class="nf weight">
      ${units === 'us' ? [box('pounds', WEIGHT.parts.pounds, 'lb', id), box('ounces', WEIGHT.parts.ounces, 'oz')] : box('grams', WEIGHT.parts.grams, 'g', id)}
      <button type="button" aria-label=${units === 'us' ? WEIGHT.toGrams : WEIGHT.toPounds} @click=${turn}>
        ${units === 'us' ? 'g' : 'lb'}
      </button>
    </div>
    ${says ? html`<p class="says" id="${id}-says" data-say="figures">${says}</p>` : nothing}
  </div>`;
}
