/** Weigh: how much to add now, what the scale shows then, and the dose it makes. A stop when that must not go on. */
import { html, nothing } from 'lit-html';
import { ask, failed } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { stayAwake } from '../widgets/awake.js';
import { batchHead, batchNote, stateOf } from '../widgets/batch-head.js';
import { doors } from '../widgets/doors.js';
import { ends, num } from '../widgets/figure.js';
import { pinned, tickButton } from '../widgets/pinned.js';
import { isCold, lateOf } from '../widgets/stage-jobs.js';
import { stageAction } from '../widgets/stage-view.js';
import { PutInForm, putInNote } from '../widgets/put-in.js';
import { settle } from '../widgets/settle.js';
import { thrownOut } from '../widgets/thrown-out.js';
import { Ticker } from '../widgets/tick.js';
import { someoneAte } from '../widgets/too-much.js';
import { nextWords } from '../../words/en/next-steps.js';
import { advice, dosePicture, nextSteps, sayVerdict, signsSaid, strip, verdictStrip } from '../widgets/verdict.js';
import { doseLine, inHand, lineAction, lineAnswer, poison } from '../widgets/weigh-answer.js';
import { todoLine, weighLine } from '../widgets/weigh-line.js';
import { basis, scale, weighWhy } from '../widgets/weigh-why.js';
import {
  AFTER,
  ELSEWHERE,
  HELD,
  LIST,
  MIX,
  NOT_WEIGHED,
  NO_MEAT,
  PRINT,
  TITLE,
  TO_PIECES,
  title,
} from '../../words/en/weigh-out.js';
import { PUT_IN } from '../../words/en/put-in.js';
import { called } from '../../words/en/calls.js';
import { glue } from '../../words/glue.js';
import { COLD, jobHead, jobText } from '../../words/en/jobs.js';
import { TOO_COARSE, coarseWays, coarseWords, premixSteps, remarkWords, todoWords } from '../../words/en/weigh.js';
import { withAim } from './recipes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').State} State */
/** @typedef {import('../types').WeighSheet} WeighSheet */

/** @param {App} app @param {string} id @returns {import('../app.js').Screen} */
export function weigh(app, id) {
  const ticker = new Ticker(app);
  const putIn = new PutInForm(app, id);
  /** @type {() => void} */
  let sleep = () => {};

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const state = stateOf(app, id, batch);
    return {
      title: title(batch.name),
      ...batchHead(app, id, batch, state, 'weigh'),
      view: [html`<h2 class="vh">${TITLE}</h2>`, sheet(batch, state)],
    };
  }

  /** @param {Batch} batch @param {State | null} state */
  function sheet(batch, state) {
    if (batch.pieces.length === 0) {
      return html`<div class="leaf answer">
        <p class="say">${NO_MEAT.says}</p>
        ${pinned(html`<a class="btn main" href="#/batch/${id}/pieces">${NO_MEAT.go}</a>`)}
      </div>`;
    }
    const { ok, problems } = ask('weigh_out', { batch, settings: app.settings });
    if (!ok) {
      return html`<div class="leaf answer">
        ${problemStrip(app, problems)}
        ${failed(problems) ? nothing : html`<div class="block"><a class="btn wide" href="#/batch/${id}/pieces">${TO_PIECES}</a></div>`}
      </div>`;
    }
    sayVerdict(app, ok.verdict);
    return ok.verdict.held ? held(batch, ok, state) : free(batch, ok, state);
  }

  /** @param {Batch} batch @param {WeighSheet} sheet @param {State | null} state */
  function free(batch, sheet, state) {
    const { verdict, coarse } = sheet;
    // The ways out come before the list, unless those of the scale do.
    const ways = coarse ? advice(coarseWays(coarse)) : verdict.mark === 'ok' ? nothing : nextSteps(verdict);
    return html`<div class="leaf answer">${answer(batch, sheet, state)}</div>
      <div class="plate rest">
        ${ways} ${sheet.premix && mixLater(batch, sheet) ? makePremix(sheet.premix) : nothing} ${list(batch, sheet)}
        ${weighWhy(sheet, batchNote(batch, state))} ${putIn.draw(batch, sheet)} ${scale(app)}
        ${doors(
          ELSEWHERE,
          html`<button type="button" class="noprint" @click=${() => print()}>
            <span><b>${PRINT}</b></span>
          </button>`,
        )}
      </div>`;
  }

  /** The mix is in hand: how it is made stands with it. @param {Batch} batch @param {WeighSheet} sheet */
  const mixFirst = (batch, sheet) => Boolean(inHand(sheet, batch).line?.cure);

  /** It is still to be weighed, after something else; what is in needs no mix any more. @param {Batch} batch @param {WeighSheet} sheet */
  const mixLater = (batch, sheet) =>
    !mixFirst(batch, sheet) && [...sheet.bowl, ...sheet.vessel].some(({ cure, ticked }) => cure && ticked === null);

  /** @param {Batch} batch @param {WeighSheet} sheet @param {State | null} state */
  function answer(batch, sheet, state) {
    const { verdict, coarse } = sheet;
    const doubts = state?.doubts ?? [];
    const act = (/** @type {unknown} */ own) => stageAction(id, doubts, 'weigh', () => own);
    const { line, todo, at, of } = inHand(sheet, batch);
    // Of what was thrown out no dose is blessed.
    const dose = batch.thrown_out ? nothing : coarse ? coarseStrip(batch, coarse) : doseLine(verdict, doubts);
    const note = putInNote(batch);
    if (line) {
      const apart = sheet.vessel.includes(line);
      const care = verdict.mark === 'care' || Boolean(coarse);
      // Whether it is in already is asked before any is added.
      const asked = line.cure && state?.jobs.find(({ does, ticked }) => does.is === 'ask_cure' && ticked === null);
      const seen = { app, batch };
      return html`${
        asked
          ? html`<p class="say">${jobHead(asked, seen)}</p>
              <p class="reason">${jobText(asked, seen)}</p>`
          : lineAnswer(sheet, { line, at, of })
      }
      ${
        !sheet.weighed
          ? notWeighed(sheet)
          : sheet.can_tick
            ? lineAction(line, apart, care, () => ticker.set(id, line.tick))
            : nothing
      }
      ${sheet.premix && mixFirst(batch, sheet) ? makePremix(sheet.premix) : nothing} ${dose} ${note}
      ${line.cure ? poison(verdict) : nothing}`;
    }
    if (todo) {
      return html`<p class="small noprint">${AFTER.bowlHolds(sheet.bowl_total)}</p>
        <h3 class="what noprint">${todoWords(todo)}</h3>
        ${
          sheet.can_tick
            ? act(
                pinned(
                  tickButton(todo.id === 'rub' ? AFTER.done.rub : AFTER.done.label, () =>
                    ticker.set(id, { of: todo.id }),
                  ),
                ),
              )
            : nothing
        }
        ${todo.id === 'label' ? html`<p class="near noprint"><a href="#/batch/${id}/labels">${AFTER.label}</a></p>` : nothing}
        ${verdict.mark === 'ok' ? nextWords(verdict.next).map(({ head, text }) => html`<p class="reason">${glue(head)} ${glue(text)}</p>`) : nothing}
        ${dose} ${note}`;
    }
    const cold = state?.jobs.find((job) => isCold(job) && job.ticked === null);
    const on = batch.ticks.find(({ of }) => of === 'rub');
    if (cold && on) {
      return html`<p class="small noprint">${AFTER.allIn}</p>
        <h3 class="what noprint">${jobHead(cold, { app, batch })}</h3>
        ${act(pinned(tickButton(COLD.done, () => ticker.turn(id, batch, { of: cold.id }, { late: lateOf(cold) }))))}
        ${ticker.whenIn(id, batch, cold)}
        <p class="reason">${COLD.counts(on.at, app.now())}</p>
        ${dose} ${note}`;
    }
    return html`<p class="small noprint">${AFTER.ticked}</p>
      <h3 class="what noprint">${AFTER.in}</h3>
      ${act(pinned(html`<a class="btn main" href="#/batch/${id}/cure">${AFTER.toCure}</a>`))} ${dose} ${note}`;
  }

  /** @param {Batch} batch @param {WeighSheet} sheet */
  function list(batch, sheet) {
    const { line: hand, todo: job } = inHand(sheet, batch);
    const open = sheet.can_tick;
    // On the screen what is done comes first; the order of weighing is that of the list itself.
    const lines = (/** @type {import('../types').WeighLine[]} */ some) =>
      [...some]
        .sort((a, b) => Number(a.ticked === null) - Number(b.ticked === null))
        .map((line) => weighLine({ id, batch, ticker, line, now: open && line === hand, open, bags: sheet.bags }));
    return html`<ol class="tally">
        ${lines(sheet.bowl)}
      </ol>
      <div class="sumline"><b>${LIST.sum(sheet.bags.length > 0, sheet.weighed)}</b>${num(sheet.bowl_total)}</div>
      ${
        sheet.vessel.length
          ? html`<h3 class="gap">${LIST.apart}</h3>
              <p class="small noprint">${LIST.more}</p>
              <ol class="tally">
                ${lines(sheet.vessel)}
              </ol>`
          : nothing
      }
      ${sheet.remarks.map((remark) => html`<p class="near">${glue(remarkWords(remark))}</p>`)}
      ${
        sheet.todo.length
          ? html`<h3 class="gap">${LIST.then}</h3>
              <ol class="tally">
                ${sheet.todo.map((todo) => todoLine({ id, batch, ticker, todo, now: open && todo === job, open }))}
              </ol>`
          : nothing
      }`;
  }

  /** @param {WeighSheet} sheet */
  function notWeighed(sheet) {
    return html`${pinned(html`<a class="btn main" href="#/batch/${id}/pieces">${NOT_WEIGHED.go}</a>`)}
      <div class="gap">
        ${strip(
          'ask',
          NOT_WEIGHED.head,
          NOT_WEIGHED.says(
            sheet.green_range ? html`<b class="nowrap">${ends(sheet.green_range)}</b>` : sheet.green.text,
          ),
        )}
      </div>`;
  }

  /** @param {Batch} batch @param {import('../types').Coarse} coarse */
  function coarseStrip(batch, coarse) {
    const range = coarse.premix_range;
    const parts = coarse.premix_parts;
    const helps = parts !== null && !batch.premix;
    return html`${
        helps
          ? pinned(
              html`<button type="button" class="btn main" @click=${() => setPremix(true)}>
                ${range ? MIX.useTo(parts, range) : MIX.use(parts)}
              </button>`,
            )
          : nothing
      }
      <div class="gap">${strip('care', TOO_COARSE, glue(coarseWords(coarse)))}</div>`;
  }

  /** @param {import('../types').Premix} premix */
  function makePremix(premix) {
    return html`<section class="block">
      <h3>${MIX.first(premix.parts)}</h3>
      ${advice(premixSteps(premix))}
      <div class="acts gap noprint">
        <button type="button" class="btn quiet less" @click=${() => setPremix(false)}>${MIX.back}</button>
      </div>
    </section>`;
  }

  /** @param {boolean} premix */
  function setPremix(premix) {
    return app.act(() => app.shelf.changeBatch(id, (batch) => ({ ...batch, premix })), {
      says: premix ? MIX.on : MIX.off,
      here: true,
    });
  }

  /** @param {Batch} batch @param {WeighSheet} sheet @param {State | null} state */
  function held(batch, sheet, state) {
    const { verdict } = sheet;
    // Before any cure is on the meat there is nothing to throw out, and the list itself can change.
    const on = Boolean(batch.put_in) || batch.ticks.some(({ of }) => of.startsWith('cure:'));
    return html`<div class="leaf answer">
        ${verdictStrip(verdict)} ${putInNote(batch)} ${on && verdict.outcome === 'over' ? someoneAte(called) : nothing}
        ${settle(verdict.may_hold, (change, says) => settled(batch, change, says))}
        ${nextSteps(on && verdict.outcome === 'over' ? signsSaid(verdict) : verdict)}
      </div>
      <div class="plate rest">
        ${dosePicture(verdict)}
        <div class="noprint block">
          <h2>${HELD.head}</h2>
          <p class="small near">${HELD.says}</p>
          <div class="pair one gap">
            ${
              verdict.aim
                ? html`<button type="button" class="btn main" @click=${() => aimAt(batch, verdict.aim)}>
                    ${HELD.aim(verdict.aim)}
                  </button>`
                : nothing
            }
            <button type="button" class="btn" @click=${() => putIn.show()}>${on ? PUT_IN.change : PUT_IN.other}</button>
            <a class="btn" href="#/batch/${id}/pieces">${HELD.pieces}</a>
            ${on ? html`<button type="button" class="btn" @click=${throwOut}>${HELD.threw}</button>` : nothing}
          </div>
        </div>
        ${putIn.draw(batch, sheet)} ${basis(sheet, batchNote(batch, state))}
        <details class="block">
          <summary>${HELD.list}</summary>
          <p class="small">${HELD.noTicks}</p>
          ${list(batch, sheet)}
        </details>
        ${doors(ELSEWHERE, nothing)}
      </div>`;
  }

  /** @param {Batch} batch @param {string | null} aim */
  function aimAt({ recipe }, aim) {
    if (!aim) return;
    return app.act(() => app.shelf.changeBatch(id, (one) => ({ ...one, recipe: withAim(recipe, aim) })), {
      says: HELD.aimed(aim),
    });
  }

  /** @param {Batch} batch @param {(recipe: import('../types').Recipe) => import('../types').Recipe} change @param {string} says */
  function settled({ recipe }, change, says) {
    return app.act(() => app.shelf.changeBatch(id, (one) => ({ ...one, recipe: change(recipe) })), { says });
  }

  async function throwOut() {
    if (await thrownOut(app, id)) app.go('#/today');
  }

  return {
    draw,
    arrive() {
      sleep = stayAwake();
    },
    leave: () => sleep(),
  };
}
