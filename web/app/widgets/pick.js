/** One of a few, all in sight. */
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { icon } from './icon.js';

/**
 * @template {string} V
 * @param {{ name: string, legend: string, hidden?: boolean, hint?: string, long?: boolean, options: [V, string][], value: V }} spec
 * @param {(value: V) => void} chosen
 */
export function pick({ name, legend, hidden = false, hint, long = false, options, value }, chosen) {
  return html`<fieldset class="field">
    <legend class=${hidden ? 'vh' : 'lab'}>${legend}</legend>
    ${hint ? html`<span class="hint">${hint}</span>` : nothing}
    <div class="pick ${long ? 'long' : ''}">
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
 * @param {{ id: string, label: string, hint?: string, value: string, options: unknown }} spec
 * @param {(value: string) => void} chosen
 */
export function choose({ id, label, hint, value, options }, chosen) {
  return html`<div class="field">
    <label for=${id}>${label}</label>
    ${hint ? html`<span class="hint" id="${id}-hint">${hint}</span>` : nothing}
    <select
      id=${id}
      aria-describedby=${hint ? `${id}-hint` : nothing}
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
