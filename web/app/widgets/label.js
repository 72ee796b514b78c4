/** Labels as they are printed: sized in millimetres, black on white, on a sheet to cut or on narrow tape. */
import { html, nothing } from 'lit-html';
import { shortCode } from '../words/names.js';
import { fullDate } from '../words/time.js';

/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Paper} Paper */
/** @typedef {import('../types').Link} Link */
/**
 * @typedef {object} Sheet
 * @property {Paper} paper
 * @property {Batch} batch
 * @property {string} id
 * @property {number} count
 * @property {string[]} weights of the first packs; the rest get a line
 * @property {string} to who gets a gift; empty for a line to write on
 * @property {'a4' | 'letter' | 'tape'} stock
 * @property {Link | null | undefined} link
 * @property {number} now
 */

const QUIET = 4;

/** @param {Sheet} sheet */
export function sheetOf(sheet) {
  return html`<div class="cut ${sheet.stock}">
    ${Array.from({ length: sheet.count }, (_, at) => label(sheet, at))}
  </div>`;
}

/** @param {Sheet} sheet @param {number} at */
function label({ paper, batch, id, count, weights, to, link, now }, at) {
  const weight = paper.weight ?? weights[at];
  const of = { bag: 'Bag', pack: 'Pack', gift: 'Gift' }[paper.kind];
  return html`<article class="lbl ${paper.kind}" aria-label="${of} label ${at + 1} of ${count}">
    <div class="top2">
      <div>
        <h3>${paper.head}</h3>
        <p>${paper.what}</p>
        ${
          // How many of them is known of the whole batch, not of a part of it.
          paper.kind === 'pack' && !/\d/.test(paper.what) ? html`<p>Pieces<span class="rule"></span></p>` : nothing
        }
        <p>${of} ${at + 1} of ${count}, <b class="nowrap">${shortCode(batch.tag, id)}</b></p>
        <p>
          ${weight ? html`<b>${weight}</b>${paper.weight ? ', green weight' : nothing}` : html`Weight<span class="rule"></span>`}
        </p>
      </div>
      ${link && link.qr_size ? square(link) : nothing}
    </div>
    <p class="use">${paper.keep}${paper.until === null ? nothing : html` <b>${fullDate(paper.until)}</b>`}</p>
    <p class="fine">${paper.basis}</p>
    <dl>
      ${
        paper.made === null
          ? nothing
          : html`<dt>${paper.kind === 'bag' ? 'In the cure' : 'Packed'}</dt>
              <dd>${fullDate(paper.made)}</dd>`
      }
      ${paper.facts.map(
        ({ label, value }) =>
          html`<dt>${label}</dt>
            <dd>${valueOf(label, value)}</dd>`,
      )}
    </dl>
    ${paper.blanks.map((name) =>
      to && name.startsWith('Given to')
        ? html`<p>Given to <b>${to}</b>, ${fullDate(now)}</p>`
        : html`<p class="sign">${name}</p>`,
    )}
    <p class="foot">${paper.foot.join(' ')}</p>
  </article>`;
}

/** A day is written as a day; what is empty gets a line to write on. @param {string} label @param {string} value */
function valueOf(label, value) {
  if (!value) return html`<span class="rule"></span>`;
  return label === 'Date killed' ? fullDate(new Date(`${value}T12:00`).getTime()) : value;
}

/** The recipe to scan. @param {Link} link */
function square({ qr_size, qr_path }) {
  const side = qr_size + 2 * QUIET;
  return html`<svg
    class="qr"
    viewBox="${-QUIET} ${-QUIET} ${side} ${side}"
    role="img"
    aria-label="Square with the recipe"
  >
    <rect class="paper" x=${-QUIET} y=${-QUIET} width=${side} height=${side} />
    <path d=${qr_path} />
  </svg>`;
}
