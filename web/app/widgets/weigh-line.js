/** A line of the weigh-out in the list: what it is, how much, and when it was ticked. On paper also what the scale shows. */
import { html, nothing } from 'lit-html';
import { TIME } from '../../words/en/controls.js';
import { BAG, HAND } from '../../words/en/weigh-out.js';
import { glue } from '../../words/glue.js';
import { changedWords, lineName, todoWords } from '../../words/en/weigh.js';
import { ends, num } from './figure.js';
import { icon } from './icon.js';
import { boxId } from './tick.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').BagList} BagList */
/** @typedef {import('../types').WeighLine} WeighLine */
/** @typedef {import('./tick.js').Ticker} Ticker */

/**
 * @param {object} spec
 * @param {string} spec.id of the batch
 * @param {Batch} spec.batch
 * @param {Ticker} spec.ticker
 * @param {WeighLine} spec.line
 * @param {boolean} spec.now the line in hand, which stands above the list
 * @param {boolean} spec.open ticks may be set
 * @param {BagList[]} spec.bags where the sizes are bagged apart: what of it goes into each
 */
export function weighLine({ id, batch, ticker, line, now, open, bags }) {
  const apart = ofEachBag(bags, line);
  const name = lineName(line);
  return html`<li class="line ${line.ticked !== null ? 'done' : now ? 'now' : ''}" data-time=${TIME}>
    ${ticker.box({ id, batch, mark: line.tick, label: `${name}, ${line.add.text}`, disabled: !open })}
    <div class="nm">
      <label for=${boxId(id, line.id)}>${name}</label>${ticker.stamp(batch, line.id)}
      ${apart.map(({ bag, one }) => html`<small class="nowrap">${BAG.add(bag, one.add)}</small> `)}
    </div>
    <div class="fig">
      <div>
        <span class="cap paper-only">${HAND.add}</span>
        ${line.range ? html`<span class="num add long">${ends(line.range)}</span>` : num(line.add, 'add')}
      </div>
      ${
        line.reads && !line.range && !apart.length
          ? html`<div class="reads paper-only"><span class="cap">${HAND.shows}</span>${num(line.reads, 'window')}</div>`
          : nothing
      }
    </div>
    ${line.changed ? html`<p class="flag care">${icon('s-care', '')}<span>${glue(changedWords(line.changed))}</span></p>` : nothing}
    ${ticker.wayBack(id, batch, line.id, name)}
  </li>`;
}

/** What of a line goes into each bag. @param {BagList[]} bags @param {WeighLine} line */
export function ofEachBag(bags, line) {
  return bags.flatMap(({ bag, green, bowl, vessel, outcome, nitrite }) => {
    const one = [...bowl, ...vessel].find(({ id }) => id === line.id);
    return one ? [{ bag, green, outcome, nitrite, one }] : [];
  });
}

/**
 * A job after the weighing.
 * @param {{ id: string, batch: Batch, ticker: Ticker, todo: import('../types').Todo, now: boolean, open: boolean }} spec
 */
export function todoLine({ id, batch, ticker, todo, now, open }) {
  const { id: of } = todo;
  const text = todoWords(todo);
  const done = batch.ticks.some((tick) => tick.of === of);
  return html`<li class="line ${done ? 'done' : now ? 'now' : ''}" data-time=${TIME}>
    ${ticker.box({ id, batch, mark: { of }, label: text, disabled: !open })}
    <div class="nm"><label for=${boxId(id, of)}>${text}</label>${ticker.stamp(batch, of)}</div>
    ${ticker.wayBack(id, batch, of, text)}
  </li>`;
}
