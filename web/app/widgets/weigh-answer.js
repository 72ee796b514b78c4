/** What is in hand at the scale: how much to add, what the scale shows, and the one thing to press once it is in. */
import { html, nothing } from 'lit-html';
import { BAG, HAND, doseAndLimit } from '../../words/en/weigh-out.js';
import { cautionText } from '../../words/en/cautions.js';
import { dialled } from './dial.js';
import { verdictWord } from '../../words/en/verdict.js';
import { lineName } from '../../words/en/weigh.js';
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
  const how = apart ? HAND.apart : first ? HAND.first : HAND.same;
  const bags = line.range ? [] : ofEachBag(sheet.bags, line);
  if (bags.length) {
    return html`<p class="small noprint">${HAND.which(at, of, apart ? how : HAND.eachBag)}</p>
      <h3 class="what noprint">${lineName(line)}</h3>
      ${bags.map(
        ({ bag, green, one, outcome, nitrite }) =>
          html`<div class="fig noprint">
              <div><span class="cap">${BAG.of(bag, green)}</span>${num(one.add, 'add')}</div>
              ${one.reads ? html`<div class="reads"><span class="cap">${HAND.shows}</span>${num(one.reads, 'window')}</div>` : nothing}
            </div>
            ${
              outcome !== 'in_range' && line.cure
                ? strip('care', BAG.off(bag), nitrite ? BAG.means(nitrite.low, nitrite.high) : nothing)
                : nothing
            }`,
      )}`;
  }
  return html`<p class="small noprint">${HAND.which(at, of, how)}</p>
    <h3 class="what noprint">${lineName(line)}</h3>
    <div class="fig noprint">
      <div>
        <span class="cap">${line.range ? HAND.estimate : HAND.add}</span>
        ${line.range ? html`<span class="num add long">${ends(line.range)}</span>` : num(line.add, 'add')}
      </div>
      ${
        line.reads && !line.range
          ? html`<div class="reads"><span class="cap">${HAND.shows}</span>${num(line.reads, 'window')}</div>`
          : nothing
      }
    </div>`;
}

/**
 * @param {WeighLine} line
 * @param {boolean} apart it goes into a tub of its own
 * @param {boolean} care the dose is not plainly in range, so that the cure is not what is offered first
 * @param {() => unknown} tick
 */
export function lineAction(line, apart, care, tick) {
  const button = html`<button
    type="button"
    class="btn ${care && line.cure ? '' : 'main'}"
    @click=${(/** @type {MouseEvent} */ e) => onceOnly(e) && tick()}
  >
    ${HAND.isIn(line.add.text, apart)}
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
  const [dose, most] = doseAndLimit(low === high ? `${low}` : `${low}–${high}`, limit);
  return html`<p class="reason dose-line">
    <span class="flag ok">${icon('s-ok', '')}${verdictWord(verdict)}</span>
    <span class="nowrap">${dose}</span>
    <span class="nowrap">${most}</span>
  </p>`;
}

/** The one caution that stands where the cure is in hand. @param {Verdict} verdict */
export function poison({ cautions }) {
  const one = cautions.find(({ key }) => key === 'nitrite-locked');
  return one ? html`<p class="caution gap noprint">${dialled(cautionText(one.key))}</p>` : nothing;
}
