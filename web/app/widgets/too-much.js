/** Too much cure: two lines, whom to call, then one question at a time. What the core says besides stands under Why. */
import { html, nothing } from 'lit-html';
import { ATE, FIGURES } from '../../words/en/put-in.js';
import { CARDS } from '../../words/en/trouble.js';
import { NO_WEIGHT, WAYS, spread } from '../../words/en/trouble-ways.js';
import { verdictSays, verdictWord } from '../../words/en/verdict.js';
import { dialled } from './dial.js';
import { cautions, evidence, nextSteps, signsSaid, strip } from './verdict.js';
import { why } from './why.js';

/** @typedef {import('../types').Ask} Ask */
/** @typedef {import('../types').Choice} Choice */

/**
 * @param {import('./trouble-flow.js').TroubleFlow} flow of the card for a dose
 * @param {import('../types').Verdict} verdict
 * @param {{ spooned: boolean, method?: import('../types').Method, howOn: unknown }} how spooned: it was measured by the
 * spoon; method: where somebody has said it, or the batch's recipe does; howOn: asks it
 */
export function tooMuch(flow, verdict, { spooned, method, howOn }) {
  const { more_meat: more } = verdict;
  // How it went on is asked once, and where no weight of meat is known to thin it, nobody is asked whether there is any.
  flow.known = [
    ['dose_judged', 'too_much'],
    ...(method === 'rub' ? /** @type {[Ask, Choice][]} */ ([['how_on', 'rubbed']]) : []),
    ...(more ? [] : /** @type {[Ask, Choice][]} */ ([['more_meat', 'no']])),
  ];
  const inside = flow.answer('how_on') === 'inside';
  // It was judged as a rub: which brine, and how much of it, comes before anything is thrown away.
  flow.asksOn = () => !method && flow.answer('how_on') === 'inside';
  // And nothing is thrown away by figures that somebody is still typing.
  const typing = method && method !== 'rub' && !inside;
  const { ok } = flow.sheet();
  const remedy = flow.asksOn() || typing ? null : ok?.remedy;
  const { say } = flow;
  const [first, second] = CARDS.dose.now;
  // Once it is known what to do, what held until then is no longer said.
  return html`${remedy ? flow.end(remedy, { judged: true }) : strip('stop', verdictWord(verdict), dialled(say(first)), html`<p>${dialled(say(second))}</p>`)}
  ${remedy?.act === 'thin_now' && more ? html`<p class="near"><b>${spread(more, verdict)}</b></p>` : nothing}
  ${remedy && spooned && !more ? html`<p class="near">${NO_WEIGHT}</p>` : nothing}
  ${remedy ? nothing : html`<p class="near"><b>${verdictSays(verdict)}</b></p>`} ${someoneAte(say)}
  ${flow.asksOn() ? html`<div class="block" id="question" tabindex="-1">${howOn}</div>` : nothing}
  ${
    typing
      ? html`<div class="gap">
          <button type="button" class="btn wide" @click=${() => flow.give('how_on', 'inside')}>${FIGURES}</button>
        </div>`
      : ok
        ? [flow.question(ok), flow.given(ok)]
        : nothing
  }
  ${why(
    'dose',
    html`${remedy ? html`<p>${verdictSays(verdict)}</p>` : nothing} ${evidence(verdict)}
    ${nextSteps(signsSaid(verdict))} ${remedy ? html`<p>${say(WAYS[remedy.way].why)}</p>` : nothing}
    ${cautions(verdict.cautions)}`,
  )}`;
}

/** Whom to call, before anything is asked. @param {(text: string) => string} say */
export function someoneAte(say) {
  const [signs = '', poison = ''] = CARDS.eaten.now;
  return html`<div class="caution gap">
    <p><b>${ATE}</b> ${dialled(say(signs))}</p>
    <p>${dialled(say(poison))}</p>
  </div>`;
}
