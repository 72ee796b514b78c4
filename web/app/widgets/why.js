/**
 * Why / Source: sums, ranges, rules, where a figure comes from and how sure it is. Shut until it was opened on this
 * screen; it holds nothing that a figure or an action depends on, neither a condition nor a doubt. On paper it is open.
 */
import { html } from 'lit-html';
import { WHY } from '../../words/en/batches.js';

const KEY = 'cure-reckoner.why';

/** Screens on which it was opened. It belongs to the device, as the light does. */
const opened = new Set(stored());

/** @returns {string[]} */
function stored() {
  try {
    const names = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return Array.isArray(names) ? names : [];
  } catch {
    return [];
  }
}

/**
 * @param {string} screen its name, the same at every coming
 * @param {unknown} body
 */
export function why(screen, body) {
  const turned = (/** @type {{ target: HTMLDetailsElement }} */ { target }) => {
    if (target.open) opened.add(screen);
    else opened.delete(screen);
    try {
      localStorage.setItem(KEY, JSON.stringify([...opened]));
    } catch {
      // A browser that keeps nothing knows it until the page is closed.
    }
  };
  return html`<details class="why" ?open=${opened.has(screen)} @toggle=${turned}>
    <summary>${WHY}</summary>
    <div>${body}</div>
  </details>`;
}
