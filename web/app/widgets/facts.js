/** Labels with their values. */
import { html } from 'lit-html';
import { glue } from '../../words/glue.js';

/** @param {{ label: string, value: string }[]} facts */
export function factList(facts) {
  return html`<dl class="dl">
    ${facts.map(
      ({ label, value }) =>
        html`<dt>${label}</dt>
          <dd class=${value.length > 18 ? 'words' : ''}>${glue(value)}</dd>`,
    )}
  </dl>`;
}
