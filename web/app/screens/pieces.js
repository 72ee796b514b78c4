/** Pieces: what is on the board, and the green weight that every share is worked from. */
import { lastTime } from '../widgets/outcome.js';
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { aboutBatch } from '../widgets/about-batch.js';
import { problemStrip } from '../widgets/answer.js';
import { batchHead, stateOf } from '../widgets/batch-head.js';
import { ends, num } from '../widgets/figure.js';
import { icon, shape } from '../widgets/icon.js';
import { PieceForm } from '../widgets/piece-form.js';
import { strip } from '../widgets/verdict.js';
import { count } from '../words/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').PieceRow} PieceRow */
/** @typedef {import('../types').PieceSheet} PieceSheet */

/** @param {App} app @param {string} id @returns {import('../app.js').Screen} */
export function pieces(app, id) {
  const form = new PieceForm(app, id);
  const about = aboutBatch(app, id);

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const { ok, problems } = ask('pieces', { pieces: batch.pieces, settings: app.settings });
    const any = batch.pieces.length > 0;
    const open = batch.pieces.findIndex(({ weight }) => !weight);
    // A weight that no such piece has is asked about before anything is worked from it.
    const odd = ok?.rows.some(({ doubt }) => doubt) ?? false;
    const leaf = html`<div class="leaf">
      ${batchHead(id, batch, stateOf(app, id, batch), 'pieces')}
      <section class="sec">
        <h2>Pieces</h2>
        <p class="lead">Trimmed and patted dry. Pieces of one size make a class; measure the thickest part of it.</p>
        ${lastTime(app, id, batch)} ${any && ok ? sheetOf(ok) : nothing}
        ${any && problems ? html`<div class="gap">${problemStrip(app, problems)}</div>` : nothing}
      </section>
      ${
        any && ok
          ? html`<div class="block">
                ${
                  open < 0 || form.begun
                    ? nothing
                    : html`<button type="button" class="btn main wide" @click=${() => form.edit(open)}>
                        Weigh the ${ok.rows[open]?.name}
                      </button>`
                }
              </div>
              <div class="gap">
                <a class="btn wide ${open < 0 && !form.begun && !odd ? 'main' : ''}" href="#/batch/${id}/weigh"
                  >${odd ? 'The weights are right: go to weigh-out' : 'Go to weigh-out'}</a
                >
              </div>`
          : nothing
      }
      ${about(batch)}
    </div>`;
    const plate = html`<div class="plate"><div class="stick">${form.draw(batch, any)}</div></div>`;
    return {
      title: `Pieces, ${batch.name}`,
      back: { href: '#/today', text: 'Today' },
      view: any ? [leaf, plate] : [leaf, plate],
    };
  }

  /** @param {PieceSheet} sheet */
  function sheetOf(sheet) {
    return html`<table class="tbl">
        <caption class="vh">
          Size classes
        </caption>
        <thead>
          <tr>
            <th scope="col">Size class</th>
            <th scope="col">All</th>
          </tr>
        </thead>
        <tbody>
          ${sheet.rows.map(row)}
        </tbody>
      </table>
      <div class="total">
        <div>
          <span class="cap"
            >Green weight, ${count(sheet.count, 'piece')}${sheet.weighed ? '' : ', usual for what is not weighed'}</span
          >
          ${num(sheet.green)}
        </div>
      </div>
      ${
        sheet.green_range
          ? html`<p>
              <b class="nowrap">${ends(sheet.green_range)}</b> until all is weighed. Nothing can be ticked on the
              weigh-out before that.
            </p>`
          : html`<p class="small">Every share on this card is worked from this weight.</p>`
      }
      ${sheet.mixed ? html`<div class="block">${strip('care', 'Mixed sizes', sheet.mixed)}</div>` : nothing}`;
  }

  /** @param {PieceRow} row @param {number} at */
  function row(row, at) {
    const weighed = row.range === null;
    return html`<tr id="class-${at}">
      <td>
        ${shape(at)}${row.name}<small
          >${weighed ? '' : 'usually '}${row.each.text}
          each${row.thickness ? `, ${row.thickness.text} thick` : ''}</small
        >
        ${row.source ? html`<small>${row.source}</small>` : nothing}
        ${row.doubt ? html`<p class="flag care">${icon('s-care', '')}<span>${row.doubt}</span></p>` : nothing}
      </td>
      <td>
        ${
          weighed
            ? html`<span class="nowrap">${row.all.text}</span>`
            : html`<span class="nowrap">${row.range && ends(row.range)}</span><small>not weighed yet</small>`
        }
        <div class="noprint near">
          <button type="button" class="btn quiet less" aria-label="Change ${row.name}" @click=${() => form.edit(at)}>
            Change
          </button>
        </div>
      </td>
    </tr>`;
  }

  return { draw };
}
