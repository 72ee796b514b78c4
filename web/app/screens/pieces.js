/** Pieces: how much meat, the weight that every share is worked from; and each size of it. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { aboutBatch } from '../widgets/about-batch.js';
import { problemStrip } from '../widgets/answer.js';
import { batchHead, batchNote, stateOf } from '../widgets/batch-head.js';
import { doors } from '../widgets/doors.js';
import { ends, num } from '../widgets/figure.js';
import { beforeIn } from '../widgets/how-long.js';
import { icon, shape } from '../widgets/icon.js';
import { lastTime } from '../widgets/outcome.js';
import { PieceForm } from '../widgets/piece-form.js';
import { pinned } from '../widgets/pinned.js';
import { stageAction } from '../widgets/stage-view.js';
import { strip } from '../widgets/verdict.js';
import { why } from '../widgets/why.js';
import { pieceName } from '../../words/en/cuts.js';
import { cautionText } from '../../words/en/cautions.js';
import { glue } from '../../words/glue.js';
import { cutSource, mixedWords, oddRow } from '../../words/en/pieces.js';
import { ANSWER, HEADS, TABLE, TITLE, WHY, eachOf, inAll, sourceOf, titleOf } from '../../words/en/sizes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').PieceRow} PieceRow */
/** @typedef {import('../types').PieceSheet} PieceSheet */

/** @param {App} app @param {string} id @returns {import('../app.js').Screen} */
export function pieces(app, id) {
  // What is weighed next is not asked for again by itself.
  const form = new PieceForm(app, id, () => (adding = !app.shelf.batches.get(id)?.pieces.some(({ weight }) => weight)));
  const about = aboutBatch(app, id);
  // Asked for at once where nothing is weighed yet; shut once a size is stored.
  let adding = !app.shelf.batches.get(id)?.pieces.length;

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const state = stateOf(app, id, batch);
    const { ok, problems } = ask('pieces', { pieces: batch.pieces, settings: app.settings });
    const any = batch.pieces.length > 0;
    return {
      title: titleOf(batch.name),
      ...batchHead(app, id, batch, state, 'pieces'),
      view: [
        html`<h2 class="vh">${TITLE}</h2>`,
        html`<div class="leaf answer">
          ${any && ok ? answer(batch, ok, state?.doubts ?? []) : any && problems ? problemStrip(app, problems) : nothing}
          ${any ? nothing : form.draw(batch, any)} ${lastTime(app, id, batch)}
        </div>`,
        html`<div class="plate rest">
          ${any && ok ? sizes(ok) : nothing} ${any ? asked(batch) : nothing}
          ${any && ok ? why('pieces', [batchNote(batch, state), reasons(ok)]) : nothing} ${about(batch)}
          ${doors(ANSWER.elsewhere, nothing)}
        </div>`,
      ],
    };
  }

  /** @param {Batch} batch @param {PieceSheet} sheet @param {import('../types').Doubt[]} doubts */
  function answer(batch, sheet, doubts) {
    const open = batch.pieces.findIndex(({ weight }) => !weight);
    // A weight or a thickness that no such piece has is asked about before anything is worked from it.
    const odd = sheet.rows.some(oddRow);
    const next =
      open >= 0
        ? html`<button type="button" class="btn main" @click=${() => form.edit(open)}>
            ${ANSWER.weigh(pieceName(sheet.rows[open]?.of ?? {}))}
          </button>`
        : html`<a class="btn main" href="#/batch/${id}/weigh">${odd ? ANSWER.right : ANSWER.go}</a>`;
    return html`<p class="small">${inAll(sheet.count, sheet.about, sheet.weighed)}</p>
      <div class="fig total">${num(sheet.green)}</div>
      ${form.begun ? nothing : stageAction(id, doubts, 'pieces', () => pinned(next))}
      ${
        sheet.green_range
          ? html`<p class="reason">${ANSWER.until(ends(sheet.green_range))}</p>`
          : html`<p class="reason">${ANSWER.from}</p>`
      }
      ${form.begun || sheet.green_range ? nothing : beforeIn(app, id, batch, (at) => form.edit(at))}
      ${
        sheet.mixed
          ? html`<div class="gap" id="mixed" tabindex="-1">
              ${strip('care', ANSWER.mixed, mixedWords(sheet.mixed))}
            </div>`
          : nothing
      }
      ${sheet.cautions.map(({ key }) => html`<p class="caution gap">${glue(cautionText(key))}</p>`)}`;
  }

  /** @param {PieceSheet} sheet */
  function sizes(sheet) {
    return html`<table class="tbl">
      <caption class="vh">
        ${TABLE.sizes}
      </caption>
      <thead>
        <tr>
          <th scope="col">${TABLE.size}</th>
          <th scope="col">${TABLE.all}</th>
        </tr>
      </thead>
      <tbody>
        ${sheet.rows.map(row)}
      </tbody>
    </table>`;
  }

  /** @param {PieceRow} row @param {number} at */
  function row(row, at) {
    const weighed = row.range === null;
    return html`<tr id="class-${at}">
      <td>
        ${shape(at)}${pieceName(row.of)}<small>${eachOf(row.each.text, weighed, row.thickness?.text)}</small>
        ${oddRow(row) ? html`<p class="flag care">${icon('s-care', '')}<span>${oddRow(row)}</span></p>` : nothing}
      </td>
      <td>
        ${
          weighed
            ? html`<span class="nowrap">${row.all.text}</span>`
            : html`<span class="nowrap">${row.range && ends(row.range)}</span><small>${TABLE.notWeighed}</small>`
        }
        <div class="noprint near">
          <button
            type="button"
            class="btn quiet less"
            aria-label=${TABLE.changeWhat(pieceName(row.of))}
            @click=${() => form.edit(at)}
          >
            ${TABLE.change}
          </button>
        </div>
      </td>
    </tr>`;
  }

  /** What is asked next: another size, or the one that is being changed. @param {Batch} batch */
  function asked(batch) {
    return html`<details
      class="fold noprint"
      ?open=${adding || form.begun}
      @toggle=${(/** @type {{ target: HTMLDetailsElement }} */ { target }) => (adding = target.open)}
    >
      <summary>${form.changes(batch) ? HEADS.change : HEADS.add}</summary>
      ${form.draw(batch, true)}
    </details>`;
  }

  /** @param {PieceSheet} sheet */
  function reasons(sheet) {
    return html`<p class="near">${WHY}</p>
      ${sheet.rows.map(({ of, source }) => (source ? html`<p class="src">${sourceOf(pieceName(of), cutSource(source))}</p>` : nothing))}
      ${sheet.cautions.map(({ source }) => html`<p class="src">${source}</p>`)}`;
  }

  return { draw };
}
