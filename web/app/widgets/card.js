/** A recipe worked for one weight: shares, amounts, steps. The same on its own screen, when it is edited and when a link is opened. */
import { html, nothing } from 'lit-html';
import { glue } from '../../words/glue.js';
import { BASES } from '../../words/en/names.js';
import { STEPS, stepText } from '../../words/en/steps.js';
import { lineName } from '../../words/en/weigh.js';
import { CARD } from '../../words/en/batches.js';

/** @typedef {import('../types').RecipeCard} RecipeCard */
/** @typedef {import('../types').Recipe} Recipe */

/** What the share is of, where it is not the head's, and what it aims at. @param {import('../types').CardRow} row */
const rowNote = ({ of, aim, with_cure: withCure }) =>
  [of !== 'green_weight' && BASES[of], aim && CARD.aim(aim), withCure && CARD.withCure].filter(Boolean).join(', ');

/** @param {RecipeCard} card */
export function cardTable(card) {
  return html`<table class="tbl">
    <caption class="vh">
      ${CARD.caption}
    </caption>
    <thead>
      <tr>
        <th scope="col">${CARD.of}</th>
        <th scope="col">${CARD.perCent}</th>
        <th scope="col">${CARD.weight(card.weight.text)}</th>
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
  return html`<p class="block">${CARD.contains(card.allergens)} ${CARD.unknown(card.unknown)}</p>
    ${recipe.notes ? html`<p class="gap">${CARD.remarks} ${recipe.notes}</p>` : nothing}`;
}
