import { html } from 'lit-html';
import { HEARD } from '../../words/en/places.js';

/**
 * A picture from the sheet in index.html. Words stand beside it, so it is hidden from screen readers.
 * @param {string} name
 * @param {string} [of] class
 */
export function icon(name, of = 'ic') {
  return html`<svg class=${of} aria-hidden="true" focusable="false"><use href="#${name}"></use></svg>`;
}

/** The shape of a size class: the same in every table and list. @param {number} at */
export function shape(at) {
  return html`<span class="key">${icon(`k-${at % 6}`, '')}</span>`;
}

/** @param {string} tag @param {boolean} [small] */
export function tagMark(tag, small = false) {
  return html`<span class=${small ? 'tag s' : 'tag'}><span class="vh">${HEARD.tag}</span>${tag}</span>`;
}
