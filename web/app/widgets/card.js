/** A recipe worked for one weight: shares, amounts, steps. The same on its own screen, when it is edited and when a link is opened. */
import { html, nothing } from 'lit-html';
import { glue } from '../words/glue.js';
import { BASES } from '../words/names.js';
import { STEPS, stepText } from '../words/steps.js';
import { lineName } from '../words/weigh.js';

/** @typedef {import('../types').RecipeCard} RecipeCard */
/** @typedef {import('../types').Recipe} Recipe */

/** What the share is of, where it is not the head's, and what it aims at. @param {import('../types').CardRow} row */
const rowNote = ({ of, aim, with_cure: withCure }) =>
  [of !== 'green_weight' && BASES[of], aim && `aim ${aim}`, withCure && 'with what is in the cure']
    .filter(Boolean)
    .join(', ');

/** @param {RecipeCard} card */
export function cardTable(card) {
  return html`<table class="tbl">
    <caption class="vh">
      What goes in
    </caption>
    <thead>
      <tr>
        <th scope="col">On green weight</th>
        <th scope="col">Per cent</th>
        <th scope="col">For <span class="nowrap">${card.weight.text}</span></th>
      </tr>
    </thead>
    <tbody>
      ${card.rows.map(
        (row) =>
          html`<tr>
            <td>${lineName(row)}${rowNote(row) ? html`<small>${rowNote(row)}</small>` : nothing}</td>
            <td><span class="nowrap">${row.share}</span></td>
            <td><span class="nowrap">${row.amount.text}</span></td>
          </tr>`,
      )}
    </tbody>
  </table>`;
}

/** @param {RecipeCard['steps']} steps */
export function cardSteps(steps) {
  if (steps.length === 0) return nothing;
  return html`<ol class="steps card-steps">
    ${steps.map(
      (step) =>
        html`<li>
          <span><b>${STEPS[step.do]}</b>${glue(stepText(step))}</span>
        </li>`,
    )}
  </ol>`;
}

/** @param {RecipeCard} card @param {Recipe} recipe */
export function cardFoot(card, recipe) {
  return html`<p class="block">
      ${
        card.allergens.length
          ? html`<b>Contains, by the allergen list:</b> ${card.allergens.join(', ')}.`
          : 'Nothing on the allergen list is named on this card. Read the packets of what you use.'
      }
      ${card.unknown.length ? html`<b>Allergens not known, read the packet:</b> ${card.unknown.join(', ')}.` : nothing}
    </p>
    ${recipe.notes ? html`<p class="gap"><b>Remarks:</b> ${recipe.notes}</p>` : nothing}`;
}
