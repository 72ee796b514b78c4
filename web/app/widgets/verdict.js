/** Verdict strip, its evidence, and what to do next. */
import { html, nothing } from 'lit-html';
import { PROFILES } from '../../words/en/profiles.js';
import { CARE, NEXT, nitrateIn } from '../../words/en/dose-picture.js';
import { cautionText, cautionTexts } from '../../words/en/cautions.js';
import { glue } from '../../words/glue.js';
import { nextWords } from '../../words/en/next-steps.js';
import { verdictBasis, verdictSays, verdictSource, verdictWord } from '../../words/en/verdict.js';
import { dialled } from './dial.js';
import { doseStrip } from './dose-strip.js';
import { icon } from './icon.js';

/** @typedef {import('../../words/en/next-steps.js').Advice} Advice */
/** @typedef {import('../types').Caution} Caution */
/** @typedef {import('../types').Mark} Mark */
/** @typedef {import('../types').Verdict} Verdict */

/**
 * @param {Mark} mark
 * @param {string} word
 * @param {unknown} says
 * @param {unknown} [more]
 */
export function strip(mark, word, says, more = nothing) {
  return html`<div class="verdict ${mark}">
    <span class="mark">${icon(`s-${mark}`, '')}</span>
    <div><strong class="word">${word}</strong>${says ? html`<p>${says}</p>` : nothing}${more}</div>
  </div>`;
}

/** @param {Verdict} verdict */
export function verdictStrip(verdict) {
  return strip(verdict.mark, verdictWord(verdict), glue(verdictSays(verdict)));
}

/** What must not be weighed out, or not without a word: it stands before any figure. @param {Verdict | null | undefined} verdict */
export const isAmiss = (verdict) =>
  Boolean(verdict && (verdict.held || verdict.mark === 'stop' || verdict.mark === 'care'));

/** Where the dose lies. @param {Verdict} verdict */
export function dosePicture(verdict) {
  return html`<figure class="gap">${doseStrip(verdict)}</figure>`;
}

/** Basis, rule and source, as one text. @param {Verdict} verdict */
export const source = (verdict) =>
  `${verdictBasis(verdict)} ${PROFILES[verdict.profile]}. ${glue(verdictSource(verdict))}`;

/** What it stands on: basis, rule and source. @param {Verdict} verdict */
export function basedOn(verdict) {
  return html`${nitrate(verdict)}
    <p class="src">${source(verdict)}</p>`;
}

/** The picture with what it stands on. @param {Verdict} verdict */
export function evidence(verdict) {
  return html`<figure class="gap">
    ${doseStrip(verdict)} ${nitrate(verdict)}
    <figcaption class="src">${source(verdict)}</figcaption>
  </figure>`;
}

/** @param {Verdict} verdict */
function nitrate({ nitrate: going }) {
  if (!going || going.high <= 0) return nothing;
  return html`<p class="near">${nitrateIn(going)}</p>`;
}

/** @param {Advice[]} list */
export function advice(list) {
  return html`<ol class="steps">
    ${list.map(
      ({ head, text }) =>
        html`<li>
          <span><b>${dialled(head)}</b>${dialled(text)}</span>
        </li>`,
    )}
  </ol>`;
}

/** Where it stands above already whom to call. @param {Verdict} verdict @returns {Verdict} */
export const signsSaid = (verdict) => ({ ...verdict, next: verdict.next.filter(({ is }) => is !== 'someone_ate') });

/** @param {Verdict} verdict @param {string} [head] */
export function nextSteps(verdict, head = NEXT) {
  if (verdict.next.length === 0) return nothing;
  // On paper an ordinary list says it already; what is out of range must stand there.
  return html`<section class="block ${verdict.mark === 'ok' ? 'noprint' : ''}">
    <h2>${head}</h2>
    ${advice(nextWords(verdict.next))}
  </section>`;
}

/** @param {Caution[]} list */
export function cautions(list) {
  if (list.length === 0) return nothing;
  return html`<section class="block cautions">
    <h2>${CARE}</h2>
    <ul class="gap">
      ${list.map(
        (one) =>
          html`<li class="caution">
            <p>${dialled(cautionText(one.key))}</p>
            <small>${one.source}</small>
          </li>`,
      )}
    </ul>
  </section>`;
}

/** Beside a job, in one line; nothing where there is none. @param {import('../types').CautionKey[]} keys */
export function cautionLine(keys) {
  return keys.length ? html`<p class="caution gap noprint">${dialled(cautionTexts(keys))}</p>` : nothing;
}

/**
 * Said once when the verdict changes, a stop at once and loudly.
 * @param {import('../app.js').App} app
 * @param {Verdict} verdict
 */
export function sayVerdict(app, verdict) {
  app.say(`${verdictWord(verdict)}. ${verdictSays(verdict)}`, { urgent: verdict.held, of: 'verdict' });
}
