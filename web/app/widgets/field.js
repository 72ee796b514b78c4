/** One field of a form, with its label, hint, error and, where a number can be read two ways, the choice. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { FIELD } from '../../words/en/controls.js';
import { icon } from './icon.js';

/** @typedef {import('./form.js').Form} Form */
/**
 * @typedef {object} FieldSpec
 * @property {string} key
 * @property {string} label
 * @property {string} [hint]
 * @property {string} [unit] stands beside the field, and counts for a bare number
 * @property {string} [stored] what to show until something is typed
 * @property {'number' | 'words' | 'small'} [look]
 * @property {[string, string]} [stepper] what the two buttons say to a screen reader
 * @property {number} [by] how much a step is, 1 if not given
 * @property {number} [least] the stepper goes no lower
 * @property {'text' | 'numeric' | 'decimal'} [keys] the keys a phone shows; those for numbers, where there is a unit
 * @property {boolean} [optional]
 * @property {string} [says] how it was read
 */

/**
 * @param {Form} form
 * @param {FieldSpec} spec
 * @param {{ typed?: () => void, left?: () => void }} [on] typed: at every key; left: when the field is left
 */
export function field(form, spec, { typed = () => {}, left = () => {} } = {}) {
  const { key, label, hint, unit, look = 'number', stepper } = spec;
  const id = form.id(key);
  const text = form.text(key, plainStored(spec));
  const problem = form.problem(key);
  const told = [hint && `${id}-hint`, problem && `${id}-err`, spec.says && `${id}-says`].filter(Boolean).join(' ');
  const put = (/** @type {string} */ now) => {
    form.type(key, now);
    typed();
  };
  /** @param {1 | -1} way */
  const step = (way) => {
    const blank = text.trim() === '';
    const number = Number(blank ? 0 : text.trim().replace(',', '.'));
    if (Number.isNaN(number)) return;
    // From an empty field up it is one, however fine the steps are.
    const to = number + way * (blank && way > 0 ? 1 : (spec.by ?? 1));
    put(String(Math.max(spec.least ?? 0, round(to))));
    left();
  };
  const stepButton = (/** @type {1 | -1} */ way) =>
    html`<button type="button" aria-label=${stepper?.[way === 1 ? 1 : 0] ?? ''} @click=${() => step(way)}>
      ${way === 1 ? '+' : '−'}
    </button>`;
  const classes = ['nf', stepper ? '' : 'plain', look === 'words' ? 'words' : '', look === 'small' ? 'small' : ''];

  return html`<div class="field ${problem ? 'bad' : ''}">
    <label for=${id}>${label}${spec.optional ? html`<span class="opt"> ${FIELD.optional}</span>` : nothing}</label>
    ${hint ? html`<span class="hint" id="${id}-hint">${hint}</span>` : nothing}
    ${problem ? wrong(`${id}-err`, problem.message) : nothing}
    ${
      problem?.choices?.length
        ? html`<div class="acts" role="group" aria-label=${FIELD.which}>
            ${problem.choices.map(
              (choice) =>
                html`<button
                  type="button"
                  class="btn less"
                  @click=${() => {
                    put(choice);
                    left();
                    document.getElementById(id)?.focus();
                  }}
                >
                  ${choice}
                </button>`,
            )}
          </div>`
        : nothing
    }
    <div class=${classes.join(' ')}>
      ${stepper ? stepButton(-1) : nothing}
      <input
        id=${id}
        type="text"
        autocomplete="off"
        autocapitalize=${look === 'words' ? 'sentences' : 'off'}
        spellcheck="false"
        inputmode=${spec.keys ?? (unit && look !== 'words' ? 'decimal' : 'text')}
        enterkeyhint="done"
        .value=${live(text)}
        aria-invalid=${problem ? 'true' : nothing}
        aria-describedby=${told || nothing}
        @input=${(/** @type {{ target: HTMLInputElement }} */ { target }) => put(target.value)}
        @change=${left}
        @focus=${(/** @type {{ target: HTMLInputElement }} */ { target }) => look !== 'words' && target.select()}
      />
      <span class="unit">${unitBeside(unit, text)}</span>
      ${stepper ? stepButton(1) : nothing}
    </div>
    ${spec.says ? html`<p class="says" id="${id}-says">${spec.says}</p>` : nothing}
  </div>`;
}

/** The unit of a field, while what is typed has none of its own. @param {string | undefined} unit @param {string} text */
export const unitBeside = (unit, text) => (unit && !/[^\d\s.,½¼¾⅓⅔⅛⅜⅝⅞/+-]/.test(text) ? unit : nothing);

/**
 * @param {string} id
 * @param {string} message
 */
export function wrong(id, message) {
  return html`<p class="err" id=${id}>${icon('s-stop')}<span>${message}</span></p>`;
}

/**
 * `1480 g` beside the unit g is shown as `1480`.
 * @param {FieldSpec} spec
 */
function plainStored({ stored = '', unit }) {
  return unit && stored.endsWith(` ${unit}`) ? stored.slice(0, -unit.length - 1) : stored;
}

// Steps of 0.1 must not show 0.30000000000000004.
/** @param {number} n */
function round(n) {
  return Math.round(n * 1000) / 1000;
}
