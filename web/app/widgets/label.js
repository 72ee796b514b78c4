/** Labels as they are printed: sized in millimetres, black on white, on a sheet to cut or on narrow tape. */
import { html, nothing } from 'lit-html';
import { cautionTexts } from '../../words/en/cautions.js';
import { doubtWords } from '../../words/en/doubts.js';
import { glue } from '../../words/glue.js';
import { BLANKS, KEEP, keptBy, meatWords, paperFact } from '../../words/en/labels.js';
import { shortCode } from '../../words/en/names.js';
import { clock, fullDate } from '../../words/time.js';
import { BY } from '../../words/en/until.js';
import { LABEL } from '../../words/en/packing.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Paper} Paper */
/** @typedef {import('../types').Link} Link */
/**
 * @typedef {object} Sheet
 * @property {Paper} paper
 * @property {Batch} batch
 * @property {string} id
 * @property {string} what what was typed of it, where that is not all of the batch
 * @property {number} count
 * @property {string[]} weights of the first packs; the rest get a line
 * @property {string} to who gets a gift; empty for a line to write on
 * @property {'a4' | 'letter' | 'tape'} stock
 * @property {Link | null | undefined} link
 * @property {number} now
 * @property {(piece: import('../types').Piece) => string} nameOf what a size class is called
 */

const QUIET = 4;

/** @param {Sheet} sheet */
export function sheetOf(sheet) {
  return html`<div class="cut ${sheet.stock}">
    ${Array.from({ length: sheet.count }, (_, at) => label(sheet, at))}
  </div>`;
}

/** @param {Sheet} sheet @param {number} at */
function label({ paper, batch, id, what, count, weights, to, link, now, nameOf }, at) {
  const weight = paper.weight ?? weights[at];
  const inIt = what || meatWords(paper.what);
  const of = LABEL.kinds[paper.kind];
  return html`<article class="lbl ${paper.kind}" aria-label=${LABEL.name(of, at + 1, count)}>
    <div class="top2">
      <div>
        <h3>${paper.head}</h3>
        <p>${inIt}</p>
        ${
          // How many of them is known of the whole batch, not of a part of it.
          paper.kind === 'pack' && !/\d/.test(inIt) ? html`<p>${LABEL.pieces}<span class="rule"></span></p>` : nothing
        }
        <p>${LABEL.place(of, at + 1, count, shortCode(batch.tag, id))}</p>
        <p>${weight ? LABEL.weighs(weight, Boolean(paper.weight)) : html`${LABEL.weight}<span class="rule"></span>`}</p>
      </div>
      ${link && link.qr_size ? square(link) : nothing}
    </div>
    ${paper.doubts.length ? doubtBox(paper, batch, nameOf) : nothing}
    <p class="use">
      ${KEEP[paper.keep](paper.until !== null)}${paper.until === null ? nothing : html` <b>${fullDate(paper.until)}${paper.kind === 'bag' ? ` ${clock(paper.until)}` : nothing}</b>`}
    </p>
    <p class="fine">${paper.by ? BY[paper.by] : paper.basis ? keptBy(paper.basis) : nothing}</p>
    <dl>
      ${
        paper.made === null
          ? nothing
          : html`<dt>${paper.kind === 'bag' ? LABEL.inCure : LABEL.packed}</dt>
              <dd>${fullDate(paper.made)}</dd>`
      }
      ${paper.facts.map((fact) => {
        const [label, value] = paperFact(fact);
        // What is empty gets a line to write on.
        return html`<dt>${label}</dt>
          <dd>${(fact.is === 'species' ? what : value) || html`<span class="rule"></span>`}</dd>`;
      })}
    </dl>
    ${paper.blanks.map((blank) =>
      to && blank === 'given_to'
        ? html`<p>${LABEL.given(to, fullDate(now))}</p>`
        : html`<p class="sign">${BLANKS[blank]}</p>`,
    )}
    <p class="foot">${glue(cautionTexts(paper.foot))}</p>
  </article>`;
}

/** What holds it, in a box above where a date would stand. @param {Paper} paper @param {Batch} batch @param {Sheet['nameOf']} nameOf */
function doubtBox({ doubts }, batch, nameOf) {
  // A label has room for two; what is past mending needs but one. The gravest stand first.
  const shown = doubts.slice(0, doubts[0]?.weight === 'forbids' ? 1 : 2);
  const more = doubts.length - shown.length;
  return html`<div class="box-doubt">
    ${shown.map((doubt) => {
      const { says, deed } = doubtWords(doubt, batch, nameOf);
      return html`<p><b>${glue(says)}</b> ${glue(deed)}</p>`;
    })}
    ${more ? html`<p>${LABEL.more(more)}</p>` : nothing}
  </div>`;
}

/** The recipe to scan. @param {Link} link */
function square({ qr_size, qr_path }) {
  const side = qr_size + 2 * QUIET;
  return html`<svg class="qr" viewBox="${-QUIET} ${-QUIET} ${side} ${side}" role="img" aria-label=${LABEL.code}>
    <rect class="paper" x=${-QUIET} y=${-QUIET} width=${side} height=${side} />
    <path d=${qr_path} />
  </svg>`;
}
