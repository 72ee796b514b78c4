/** What a weight comes to: each thing to weigh, until when it stays in, and one line on the dose. All of it is the core's. */
import { html, nothing } from 'lit-html';
import { ANSWER, RANGE, WHY } from '../../words/en/how-much.js';
import { looksLike } from '../../words/en/weights.js';
import { glue } from '../../words/glue.js';
import { verdictSays, verdictWord } from '../../words/en/verdict.js';
import { TOO_COARSE, coarseWords, lineName, lineWhy, spoonSource } from '../../words/en/weigh.js';
import { about, dayTime } from '../../words/time.js';
import { num } from './figure.js';
import { icon } from './icon.js';
import { source as verdictSource, strip, verdictStrip } from './verdict.js';

/** @typedef {import('../types').WeighSheet} WeighSheet */
/** @typedef {import('../types').WeighLine} WeighLine */
/** @typedef {import('../types').CureClock} CureClock */

/** What is weighed while nothing is typed: the form of the answer. */
const EMPTY = [
  [ANSWER.cure, 'g'],
  [ANSWER.salt, 'g'],
];

/**
 * @param {object} spec
 * @param {WeighSheet | undefined} spec.sheet nothing while there is no weight
 * @param {{ until: number | null, under: unknown, now: number }} [spec.time] the hour it comes out, and what stands below
 */
export function answerRows({ sheet, time }) {
  const lines = sheet ? [...sheet.bowl, ...sheet.vessel] : [];
  return html`<div class="answers">
    ${sheet ? lines.map((line) => row(line, sheet)) : EMPTY.map(([name, unit]) => bare(name ?? '', unit ?? ''))}
    ${time ? hour(time) : nothing}
  </div>`;
}

/** @param {{ until: number | null, under: unknown, now: number }} time */
function hour({ until, under, now }) {
  return html`<div class="ans time">
    <b>${ANSWER.until}</b>
    ${
      until === null
        ? html`<span class="num until none"
            ><span class="vh">${ANSWER.notYet}</span><span aria-hidden="true">–</span></span
          >`
        : html`<span class="num until">${dayTime(until, now)}</span><small>${under}</small>`
    }
  </div>`;
}

/** @param {WeighLine} line @param {WeighSheet} sheet */
function row(line, sheet) {
  const unsure = line.cure && (sheet.coarse || sheet.verdict.held);
  return html`<div class="ans" data-line=${line.id}>
    <div>
      <b>${line.cure && !sheet.premix ? ANSWER.cure : lineName(line)}</b>
      ${line.spoon ? html`<small>${looksLike(line.spoon)}</small>` : nothing}
    </div>
    <span class="window ${unsure ? 'unsure' : ''}">${num(line.add)}</span>
  </div>`;
}

/** @param {string} name @param {string} unit */
function bare(name, unit) {
  return html`<div class="ans">
    <div><b>${name}</b></div>
    <span class="window none"
      ><span class="num"
        ><span class="vh">${ANSWER.notYet}</span><span aria-hidden="true">–</span><span class="u">${unit}</span></span
      ></span
    >
  </div>`;
}

/**
 * The figures once more under the title, while a keyboard takes half of a short screen.
 * @param {WeighSheet} sheet
 * @param {number | null} until
 * @param {number} now
 */
export function peek({ bowl, verdict, coarse }, until, now) {
  // What is not plainly in range has more to say than fits there.
  if (verdict.mark !== 'ok' || coarse) return nothing;
  return html`<p class="peek" aria-hidden="true">
    ${bowl.slice(0, 2).map((line) => html`<span>${line.cure ? ANSWER.cure : lineName(line)} <b>${line.add.text}</b></span>`)}
    ${until === null ? nothing : html`<b>${dayTime(until, now)}</b>`}
  </p>`;
}

/** What is not plainly in range stands before the figures. @param {WeighSheet} sheet */
export function answerDoubt({ verdict, coarse }) {
  if (coarse) return strip('care', TOO_COARSE, glue(coarseWords(coarse)));
  return verdict.mark === 'ok' ? nothing : verdictStrip(verdict);
}

/** In range, in one line under the figures. @param {WeighSheet} sheet @param {string} [step] of the scale, where a coarser one would not do */
export function answerVerdict({ verdict, coarse }, step) {
  if (coarse || verdict.mark !== 'ok') return nothing;
  const ppm = verdict.nitrite?.typical;
  return html`<p class="inrange">
    <span class="flag ok">${icon('s-ok', '')}<span>${RANGE.word(verdictWord(verdict), step)}</span></span>
    <span class="small">${RANGE.limit(ppm, verdict.limit)}</span>
  </p>`;
}

/**
 * Where the figures come from.
 * @param {{ sheet: WeighSheet, clock: CureClock | undefined, usual: boolean, now: number }} spec
 */
export function answerWhy({ sheet, clock, usual, now }) {
  const { verdict } = sheet;
  const [size] = clock?.classes ?? [];
  const ready = size?.colour ?? size?.even;
  return html`<p>${glue(verdictSays(verdict))}</p>
    ${sheet.bowl.map(
      (line) =>
        html`<p>
          ${WHY.line(lineName(line), Number.parseFloat(line.exact).toFixed(2), line.add.text)}
          ${line.why ? glue(lineWhy(line.why)) : nothing}
          ${line.spoon ? html`<span class="src">${WHY.spoon(spoonSource(line.spoon.source))}</span>` : nothing}
        </p>`,
    )}
    ${
      ready && size
        ? html`<p>${WHY.time(size.thickness, about(ready.likely, now), about(ready.latest, now))}</p>`
        : nothing
    }
    ${usual && ready ? html`<p class="src">${WHY.usual}</p>` : nothing}
    <p class="src">${verdictSource(verdict)}</p>`;
}
