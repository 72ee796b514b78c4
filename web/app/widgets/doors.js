/** Rows that lead elsewhere, at the foot of a screen. The last is the one door for whatever went wrong. */
import { html } from 'lit-html';
import { icon } from './icon.js';
import { WRONG } from '../../words/en/batches.js';

/** @param {string} href @param {unknown} head @param {unknown} [says] */
export function door(href, head, says) {
  return html`<a href=${href}
    ><span><b>${head}</b>${says ? html`<span class="small">${says}</span>` : ''}</span>${icon('s-go')}</a
  >`;
}

/** @param {string} label for a screen reader @param {unknown} rows */
export function doors(label, rows) {
  return html`<nav class="doors slim noprint" aria-label=${label}>${rows} ${door('#/cards', WRONG)}</nav>`;
}
