/** Why these grams: the sum behind each line, what a spoon of it holds, what the dose stands on, and which scale. */
import { html, nothing } from 'lit-html';
import { SCALE, WHY } from '../../words/en/weigh-out.js';
import { glue } from '../../words/glue.js';
import { verdictSays } from '../../words/en/verdict.js';
import { lineName, lineWhy, sheetFacts, spoonSource } from '../../words/en/weigh.js';
import { looksLikeHead } from '../../words/en/weights.js';
import { factList } from './facts.js';
import { pick } from './pick.js';
import { basedOn, cautions, dosePicture, nextSteps } from './verdict.js';
import { why } from './why.js';

/** @typedef {import('../types').WeighSheet} WeighSheet */

/** @param {WeighSheet} sheet @param {unknown} note */
export function weighWhy(sheet, note) {
  const { verdict } = sheet;
  const said = verdict.mark === 'ok';
  return why(
    'weigh',
    html`${note} ${said ? html`<p class="near">${glue(verdictSays(verdict))}</p>` : nothing} ${dosePicture(verdict)}
    ${basedOn(verdict)} ${factList(sheetFacts(sheet.facts))} ${said ? nextSteps(verdict) : nothing} ${lines(sheet)}
    ${cautions(verdict.cautions)}`,
  );
}

/** The same where the dose holds the batch: what is said of it stands above. @param {WeighSheet} sheet @param {unknown} note */
export function basis(sheet, note) {
  return why(
    'weigh',
    html`${note} ${basedOn(sheet.verdict)} ${factList(sheetFacts(sheet.facts))} ${cautions(sheet.verdict.cautions)}`,
  );
}

/** @param {WeighSheet} sheet */
function lines({ bowl, vessel }) {
  const rows = [...bowl, ...vessel].filter(({ why: how, spoon, range }) => how || spoon || range);
  if (rows.length === 0) return nothing;
  return html`<dl class="sums">
      ${rows.map(
        ({ item, cure, why: how, spoon, range, add }) =>
          html`<dt>${lineName({ item, cure })}</dt>
            <dd>
              ${range ? html`${WHY.usually(add)} ` : nothing}${how ? html`${glue(lineWhy(how))} ` : nothing}${
                spoon
                  ? html`<span class="nowrap">${looksLikeHead(spoon)}.</span>
                      <span class="noprint">${spoonSource(spoon.source)}</span>`
                  : nothing
              }
            </dd>`,
      )}
    </dl>
    ${rows.some(({ spoon }) => spoon) ? html`<p class="small near">${WHY.spoon}</p>` : nothing}`;
}

/** @param {import('../app.js').App} app */
export function scale(app) {
  return html`<details class="fold noprint">
    <summary>${SCALE.head}</summary>
    ${pick(
      {
        name: 'scale',
        legend: SCALE.asks,
        look: 'tight',
        options: app.tables.scale_steps.map((step) => [step, step]),
        value: app.settings.scale_step,
      },
      (step) => app.act(() => app.shelf.changeSettings({ scale_step: step })),
    )}
  </details>`;
}
