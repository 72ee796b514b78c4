/** One thing to weigh: what to add, what the scale will show, and the spoon that would catch a slip. */
import { html, nothing } from 'lit-html';
import { glue } from '../words/glue.js';
import { ends, num } from './figure.js';
import { icon } from './icon.js';
import { boxId, onceOnly } from './tick.js';

/** @typedef {import('../types').WeighLine} WeighLine */
/** @typedef {import('../types').Spoon} Spoon */

/**
 * @param {object} spec
 * @param {string} spec.id of the batch
 * @param {import('../types').Batch} spec.batch
 * @param {import('./tick.js').Ticker} spec.ticker
 * @param {WeighLine} spec.line
 * @param {boolean} spec.now the line in hand
 * @param {boolean} spec.open ticks may be set
 * @param {string} spec.place `in the bowl`, `in its vessel`
 * @param {boolean} spec.care the dose is not plainly in range, so that the tick of a cure is not what is offered first
 */
export function weighLine({ id, batch, ticker, line, now, open, place, care }) {
  const ticked = line.ticked !== null;
  return html`<li class="line ${ticked ? 'done' : now ? 'now' : ''}">
    ${ticker.box({ id, batch, mark: line.tick, label: `${line.name}, ${line.add.text}`, disabled: !open })}
    <div class="nm"><label for=${boxId(id, line.id)}>${line.name}</label>${ticker.stamp(batch, line.id)}</div>
    <div class="fig">
      <div>
        <span class="cap">${line.range ? 'Estimate' : ticked ? 'Added' : 'Add'}</span>
        ${line.range ? html`<span class="num add long">${ends(line.range)}</span>` : num(line.add, 'add')}
      </div>
      ${
        line.reads && !line.range
          ? html`<div class="reads"><span class="cap">Scale will show</span>${num(line.reads, 'window')}</div>`
          : nothing
      }
    </div>
    ${line.range ? html`<p class="why">Usually ${line.add.text}. Weigh all pieces first.</p>` : nothing}
    ${line.spoon ? spoonLine(line.spoon, line.is_cure) : nothing}
    ${line.why ? html`<p class="why">${glue(line.why)}</p>` : nothing}
    ${line.changed ? html`<p class="flag care">${icon('s-care', '')}<span>${glue(line.changed)}</span></p>` : nothing}
    ${ticker.wayBack(id, batch, line.id, line.name)}
    ${
      now && open
        ? html`<button
            type="button"
            class="btn ${care && line.is_cure ? '' : 'main'}"
            @click=${(/** @type {MouseEvent} */ e) => onceOnly(e) && ticker.set(id, line.tick)}
          >
            Tick: ${line.add.text} is ${place}
          </button>`
        : nothing
    }
  </li>`;
}

/** @param {Spoon} spoon @param {boolean} cure */
function spoonLine({ unit, low, typical, high }, cure) {
  return html`<p class="spoon">
    ${unit[0]?.toUpperCase()}${unit.slice(1)}<span class="lth"
      ><span class="vh">at least</span>${low}<i></i><span class="vh">usually</span><b>${typical}</b><i></i
      ><span class="vh">at most</span>${high}</span
    >${cure ? html`<span class="loose">Weigh this one: a spoon is too loose.</span>` : nothing}
  </p>`;
}
