/** A recipe worked for one weight: shares, amounts, steps. The same on its own screen, when it is edited and when a link is opened. */
import { html, nothing } from 'lit-html';
import { glue } from '../../words/glue.js';
import { BASES } from '../../words/en/names.js';
import { STEPS, stepText } from '../../words/en/steps.js';
import { lineName } from '../../words/en/weigh.js';
import { icon } from './icon.js';
import { CARD } from '../../words/en/batches.js';

/** @typedef {import('../types').RecipeCard} RecipeCard */
/** @typedef {import('../types').Recipe} Recipe */

/** What the share is of, where it is not the head's. @param {import('../types').CardRow} row */
const rowNote = ({ of, with_cure: withCure }) =>
  [of !== 'green_weight' && BASES[of], withCure && CARD.withCure].filter(Boolean).join(', ');

/** What each cure aims at, for Why. @param {RecipeCard} card */
export const cardAims = ({ rows }) =>
  rows.map((row) => (row.aim ? html`<p class="near">${lineName(row)}: ${CARD.aim(row.aim)}.</p>` : nothing));

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

/** @param {RecipeCard} card @param {(at: number) => boolean} [here] which of its steps; all without it */
export function cardSteps({ steps, low }, here = () => true) {
  if (steps.length === 0) return nothing;
  return html`<ol class="steps card-steps">
    ${steps.map((step, at) =>
      here(at)
        ? html`<li>
            <span
              ><b>${STEPS[step.do]}</b
              >${glue(stepText(step))}${low.map((one) => (one.step === at ? tooLow(one) : nothing))}</span
            >
          </li>`
        : nothing,
    )}
  </ol>`;
}

/** @param {RecipeCard['low'][number]} low */
const tooLow = ({ until, least, known }) =>
  html`<span class="flag care">${icon('s-care', '')}<span>${CARD.low(until, least, known)}</span></span>`;

/** @param {RecipeCard} card @param {Recipe} recipe */
export function cardFoot(card, recipe) {
  return html`<p class="block">${CARD.contains(card.allergens)} ${CARD.unknown(card.unknown)}</p>
    ${recipe.notes ? html`<p class="gap">${CARD.remarks} ${recipe.notes}</p>` : nothing}`;
}
