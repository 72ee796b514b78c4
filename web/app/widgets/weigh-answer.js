/** What is in hand at the scale: how much to add, what the scale shows, and the one thing to press once it is in. */
import { html, nothing } from 'lit-html';
import { cautionText } from '../words/calls.js';
import { glue } from '../words/glue.js';
import { verdictWord } from '../words/verdict.js';
import { lineName } from '../words/weigh.js';
import { ends, num } from './figure.js';
import { icon } from './icon.js';
import { pinned } from './pinned.js';
import { onceOnly } from './tick.js';
import { strip, verdictStrip } from './verdict.js';
import { ofEachBag } from './weigh-line.js';

/** @typedef {import('../types').Todo} Todo */
/** @typedef {import('../types').Verdict} Verdict */
/** @typedef {import('../types').WeighLine} WeighLine */
/** @typedef {import('../types').WeighSheet} WeighSheet */

/** Where the sheet stands: the next line, then the next job, then nothing. @param {WeighSheet} sheet @param {import('../types').Batch} batch */
export function inHand(sheet, batch) {
  const lines = [...sheet.bowl, ...sheet.vessel];
  const line = lines.find(({ ticked }) => ticked === null);
  const todo = sheet.todo.find(({ id }) => !batch.ticks.some(({ of }) => of === id));
  return { line, todo: line ? undefined : todo, at: line ? lines.indexOf(line) + 1 : 0, of: lines.length };
}

/**
 * The line in hand: its name, what to add, what the scale shows then.
 * @param {WeighSheet} sheet
 * @param {{ line: WeighLine, at: number, of: number }} hand
 */
export function lineAnswer(sheet, { line, at, of }) {
  const apart = sheet.vessel.includes(line);
  const first = sheet.bowl.every(({ ticked }) => ticked === null);
  const how = apart
    ? 'In a vessel of its own.'
    : first
      ? 'Bowl on the scale, set to zero once.'
      : 'Same bowl, do not zero again.';
  const bags = line.range ? [] : ofEachBag(sheet.bags, line);
  if (bags.length) {
    return html`<p class="small noprint">
        ${at} of ${of}. ${apart ? how : 'A bowl for each bag, the scale set to zero for each.'}
      </p>
      <h3 class="what noprint">${lineName(line)}</h3>
      ${bags.map(
        ({ bag, green, one, outcome, nitrite }) =>
          html`<div class="fig noprint">
              <div><span class="cap">Bag ${bag + 1}, ${green.text}</span>${num(one.add, 'add')}</div>
              ${one.reads ? html`<div class="reads"><span class="cap">Scale shows</span>${num(one.reads, 'window')}</div>` : nothing}
            </div>
            ${
              outcome !== 'in_range' && line.cure
                ? strip(
                    'care',
                    `Bag ${bag + 1} is off on this scale`,
                    nitrite
                      ? html`What the scale shows may mean ${nitrite.low} to ${nitrite.high} ppm. Bag the sizes
                        together, or take a finer scale.`
                      : nothing,
                  )
                : nothing
            }`,
      )}`;
  }
  return html`<p class="small noprint">${at} of ${of}. ${how}</p>
    <h3 class="what noprint">${lineName(line)}</h3>
    <div class="fig noprint">
      <div>
        <span class="cap">${line.range ? 'Estimate' : 'Add'}</span>
        ${line.range ? html`<span class="num add long">${ends(line.range)}</span>` : num(line.add, 'add')}
      </div>
      ${
        line.reads && !line.range
          ? html`<div class="reads"><span class="cap">Scale shows</span>${num(line.reads, 'window')}</div>`
          : nothing
      }
    </div>`;
}

/**
 * @param {WeighLine} line
 * @param {string} place `in the bowl`
 * @param {boolean} care the dose is not plainly in range, so that the cure is not what is offered first
 * @param {() => unknown} tick
 */
export function lineAction(line, place, care, tick) {
  const button = html`<button
    type="button"
    class="btn ${care && line.cure ? '' : 'main'}"
    @click=${(/** @type {MouseEvent} */ e) => onceOnly(e) && tick()}
  >
    ${line.add.text} is ${place}
  </button>`;
  return care && line.cure ? html`<div class="acts gap noprint">${button}</div>` : pinned(button);
}

/**
 * The dose in one line where it is in range; in a box, with what the core says of it, where it is not. Nothing where a bag
 * of it is in doubt, which stands at the head and at its figure.
 * @param {Verdict} verdict
 * @param {import('../types').Doubt[]} doubts
 */
export function doseLine(verdict, doubts) {
  const { nitrite, mark, limit } = verdict;
  if (mark === 'ok' && doubts.some(({ kind }) => kind.startsWith('dose_'))) return nothing;
  if (mark !== 'ok' || !nitrite) return html`<div class="gap">${verdictStrip(verdict)}</div>`;
  const { low, high } = nitrite;
  return html`<p class="reason dose-line">
    <span class="flag ok">${icon('s-ok', '')}${verdictWord(verdict)}</span>
    <span class="nowrap">${low === high ? low : `${low}–${high}`} ppm,</span>
    <span class="nowrap">limit ${limit}.</span>
  </p>`;
}

/** The one caution that stands where the cure is in hand. @param {Verdict} verdict */
export function poison({ cautions }) {
  const one = cautions.find(({ key }) => key === 'nitrite-locked');
  return one ? html`<p class="caution gap noprint">${glue(cautionText(one))}</p>` : nothing;
}
