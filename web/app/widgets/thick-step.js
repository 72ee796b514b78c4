/** The thickest piece, typed or in steps of a rule: the usual one of the cut until somebody has measured. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { readFields } from '../ask.js';
import { THICK } from '../../words/en/controls.js';
import { UNITS } from '../../words/en/names.js';
import { oddThick } from '../../words/en/pieces.js';
import { wrong } from './field.js';

/** @typedef {import('../types').System} System */

/** What is in the field and not read yet: it outlives whatever is drawn meanwhile. */
const TYPED = 'thick-typed';
/** Where the steps begin, of a cut whose thickness is not known. */
const BEGIN = { metric: '25 mm', us: '1 in' };
/** What can be said of it at one touch, where nothing is usual of the cut: no piece is thicker than that. */
const UP_TO = { metric: ['25 mm', '50 mm', '75 mm'], us: ['1 in', '2 in', '3 in'] };

/**
 * @param {import('./form.js').Form} form which has `thick`
 * @param {import('../types').Thick | null} thick
 * @param {System} units
 * @param {() => void} draw
 */
export function thickStep(form, thick, units, draw) {
  const problem = form.problem('thick');
  const read = (/** @type {string} */ text) => {
    const asked = {
      key: 'thick',
      label: THICK.label,
      kind: /** @type {const} */ ('length'),
      unit: UNITS[units].length,
      text,
    };
    const { ok, problems } = readFields([asked], units);
    return { value: ok?.values[0]?.value, wrong: problems ?? ok?.problems ?? [] };
  };
  /** What is typed counts at every key; while it cannot be read no other stands for it. @param {string} text */
  const typed = (text) => {
    form.type(TYPED, text);
    form.drop('thick');
    const { value } = read(text);
    if (value) form.type('thick', value);
    draw();
  };
  const put = (/** @type {string} */ text) => {
    const { value, wrong } = read(text);
    if (value) {
      anew(form);
      form.type('thick', value);
    } else form.mark(wrong);
    draw();
  };
  if (!thick && !form.typed.includes(TYPED)) {
    return html`<div class="stepf" role="group" aria-labelledby="thick-l">
      <span class="lab" id="thick-l">${THICK.label}</span>
      <div class="acts">
        ${UP_TO[units].map(
          (text) => html`<button type="button" class="btn less" @click=${() => put(text)}>${THICK.upTo(text)}</button>`,
        )}
      </div>
    </div>`;
  }
  /** @param {string | null | undefined} to @param {string} name @param {string} sign */
  const step = (to, name, sign) =>
    html`<button type="button" aria-label=${name} ?disabled=${!to} @click=${() => to && put(to)}>${sign}</button>`;
  return html`<div class="stepf" role="group" aria-labelledby="thick-l">
    <span class="lab" id="thick-l">${THICK.label}</span>
    <div class="stepper">
      ${step(thick ? thick.thinner : BEGIN[units], THICK.thinner, '−')}<input
        id="f-thick"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        enterkeyhint="done"
        aria-labelledby="thick-l"
        aria-invalid=${problem ? 'true' : nothing}
        aria-describedby=${problem ? 'f-thick-err' : nothing}
        placeholder="–"
        .value=${live(form.text(TYPED, thick?.now))}
        @input=${(/** @type {{ target: HTMLInputElement }} */ { target }) => typed(target.value)}
        @change=${(/** @type {{ target: HTMLInputElement }} */ { target }) => put(target.value)}
        @blur=${(/** @type {{ target: HTMLInputElement }} */ { target }) => unread(form) && put(target.value)}
        @focus=${(/** @type {{ target: HTMLInputElement }} */ { target }) => target.select()}
      />${step(thick ? thick.thicker : BEGIN[units], THICK.thicker, '+')}
    </div>
    ${problem ? wrong('f-thick-err', problem.message) : nothing}
    ${thick?.odd ? html`<p class="says">${oddThick(thick.odd, thick.now)}</p>` : nothing}
  </div>`;
}

/** Something is typed that is no thickness yet: no hour goes by it, and none by another. @param {import('./form.js').Form} form */
export const unread = (form) => Boolean(form.problem('thick')) || (form.typed.includes(TYPED) && !form.text('thick'));

/** Another cut has a usual thickness of its own. @param {import('./form.js').Form} form */
export function anew(form) {
  form.drop('thick');
  form.drop(TYPED);
}
