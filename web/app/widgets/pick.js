/** One of a few, all in sight. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { wrong } from './field.js';
import { CUTS } from '../../words/en/cuts.js';
import { CUT } from '../../words/en/controls.js';
import { KINDS } from '../../words/en/names.js';
import { icon } from './icon.js';

/**
 * @template {string} V
 * @param {{ name: string, legend: string, hidden?: boolean, hint?: string, problem?: string, look?: '' | 'long' | 'snug' | 'tight', options: [V, string][], value: V }} spec
 * @param {(value: V) => void} chosen
 */
export function pick({ name, legend, hidden = false, hint, problem, look = '', options, value }, chosen) {
  return html`<fieldset class="field ${problem ? 'bad' : ''}" aria-describedby=${problem ? `${name}-err` : nothing}>
    <legend class=${hidden ? 'vh' : 'lab'}>${legend}</legend>
    ${hint ? html`<span class="hint">${hint}</span>` : nothing} ${problem ? wrong(`${name}-err`, problem) : nothing}
    <div class="pick ${look}">
      ${options.map(
        ([key, word]) =>
          html`<label
            ><input
              type="radio"
              name=${name}
              value=${key}
              .checked=${live(key === value)}
              @change=${() => chosen(key)}
            />${icon('s-tick', 'tick')}<span>${word}</span></label
          >`,
      )}
    </div>
  </fieldset>`;
}

/**
 * One of many: the device's own list.
 * @param {{ id: string, label: string, hint?: string, problem?: string, value: string, options: unknown }} spec
 * @param {(value: string) => void} chosen
 */
export function choose({ id, label, hint, problem, value, options }, chosen) {
  return html`<div class="field ${problem ? 'bad' : ''}">
    <label for=${id}>${label}</label>
    ${hint ? html`<span class="hint" id="${id}-hint">${hint}</span>` : nothing}
    ${problem ? wrong(`${id}-err`, problem) : nothing}
    <select
      id=${id}
      aria-invalid=${problem ? 'true' : nothing}
      aria-describedby=${[hint && `${id}-hint`, problem && `${id}-err`].filter(Boolean).join(' ') || nothing}
      .value=${live(value)}
      @change=${(/** @type {{ target: HTMLSelectElement }} */ { target }) => chosen(target.value)}
    >
      ${options}
    </select>
  </div>`;
}

/**
 * @param {string} value
 * @param {string} word
 * @param {boolean} chosen
 */
export function option(value, word, chosen) {
  return html`<option value=${value} ?selected=${chosen}>${word}</option>`;
}

/**
 * Which cut it is, for a dose without pieces on a board.
 * @param {import('../app.js').App} app
 * @param {string} value
 * @param {(now: string) => void} put
 */
export function chooseCut(app, value, put) {
  return choose(
    {
      id: 'f-cut',
      label: CUT.asks,
      hint: CUT.hint,
      value,
      options: [
        option('', CUT.notSaid, value === ''),
        ...app.tables.cuts.map(({ key }) => option(key, CUTS[key], key === value)),
      ],
    },
    put,
  );
}

/**
 * The cuts of the table by their kind, and one that is in none.
 * @param {import('../app.js').App} app
 * @param {string} value
 */
export function cutOptions({ tables }, value) {
  const of = (/** @type {typeof tables.cuts} */ cuts) => cuts.map(({ key }) => option(key, CUTS[key], key === value));
  return [
    option('', CUT.choose, value === ''),
    Object.entries(KINDS).map(([kind, word]) => {
      const cuts = tables.cuts.filter((one) => one.kind === kind);
      return cuts.length ? html`<optgroup label=${word}>${of(cuts)}</optgroup>` : nothing;
    }),
    of(tables.cuts.filter(({ kind }) => !(kind in KINDS))),
    option('own', CUT.other, value === 'own'),
  ];
}
