/** Too much cure: two lines, whom to call, then one question at a time. What the core says besides stands under Why. */
import { html, nothing } from 'lit-html';
import { ATE } from '../../words/en/put-in.js';
import { CARDS } from '../../words/en/trouble.js';
import { NO_WEIGHT, WAYS, spread } from '../../words/en/trouble-ways.js';
import { verdictSays, verdictWord } from '../../words/en/verdict.js';
import { dialled } from './dial.js';
import { cautions, evidence, nextSteps, signsSaid, strip } from './verdict.js';
import { why } from './why.js';

/**
 * @param {import('./trouble-flow.js').TroubleFlow} flow of the card for a dose
 * @param {import('../types').Verdict} verdict
 * @param {boolean} spooned it was measured by the spoon
 */
export function tooMuch(flow, verdict, spooned) {
  const { more_meat: more } = verdict;
  // Where no weight of meat is known to thin it, nobody is asked whether there is any.
  flow.known = [
    ['dose_judged', 'too_much'],
    ...(more ? [] : /** @type {[import('../types').Ask, 'no'][]} */ ([['more_meat', 'no']])),
  ];
  const { ok } = flow.sheet();
  const { say } = flow;
  const [first, second] = CARDS.dose.now;
  // Once it is known what to do, what held until then is no longer said.
  return html`${ok?.remedy ? flow.end(ok.remedy, { judged: true }) : strip('stop', verdictWord(verdict), dialled(say(first)), html`<p>${dialled(say(second))}</p>`)}
  ${ok?.remedy?.act === 'thin_now' && more ? html`<p class="near"><b>${spread(more, verdict)}</b></p>` : nothing}
  ${ok?.remedy && spooned && !more ? html`<p class="near">${NO_WEIGHT}</p>` : nothing}
  ${ok?.remedy ? nothing : html`<p class="near"><b>${verdictSays(verdict)}</b></p>`} ${someoneAte(say)}
  ${ok ? [flow.question(ok), flow.given(ok)] : nothing}
  ${why(
    'dose',
    html`${ok?.remedy ? html`<p>${verdictSays(verdict)}</p>` : nothing} ${evidence(verdict)}
    ${nextSteps(signsSaid(verdict))} ${ok?.remedy ? html`<p>${say(WAYS[ok.remedy.way].why)}</p>` : nothing}
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
