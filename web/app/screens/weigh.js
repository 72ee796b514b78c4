/** Weigh-out: the list in the order of weighing, the dose it makes, and the stop when that must not go on. */
import { html, nothing } from 'lit-html';
import { ask, failed } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { stayAwake } from '../widgets/awake.js';
import { batchHead, stateOf } from '../widgets/batch-head.js';
import { ends, num } from '../widgets/figure.js';
import { pick } from '../widgets/pick.js';
import { PutInForm, putInNote } from '../widgets/put-in.js';
import { Ticker, boxId } from '../widgets/tick.js';
import { advice, cautions, evidence, nextSteps, sayVerdict, strip, verdictStrip } from '../widgets/verdict.js';
import { weighLine } from '../widgets/weigh-line.js';
import { glue } from '../words/glue.js';
import { withAim } from './recipes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Coarse} Coarse */
/** @typedef {import('../types').Premix} Premix */
/** @typedef {import('../types').WeighLine} WeighLine */
/** @typedef {import('../types').WeighSheet} WeighSheet */

/** @param {App} app @param {string} id @returns {import('../app.js').Screen} */
export function weigh(app, id) {
  const ticker = new Ticker(app);
  const putIn = new PutInForm(app, id);
  /** @type {() => void} */
  let sleep = () => {};

  function draw() {
    const batch = /** @type {Batch} */ (app.shelf.batches.get(id));
    const head = batchHead(id, batch, stateOf(app, id, batch), 'weigh');
    return { title: `Weigh-out, ${batch.name}`, back: { href: '#/today', text: 'Today' }, view: sheet(batch, head) };
  }

  /** @param {Batch} batch @param {unknown} head */
  function sheet(batch, head) {
    if (batch.pieces.length === 0) return nothingYet(head);
    const { ok, problems } = ask('weigh_out', { batch, settings: app.settings });
    if (!ok) {
      return html`<div class="leaf">
        ${head}
        <section class="sec">
          <h2>Weigh-out</h2>
          <div class="gap">${problemStrip(app, problems)}</div>
          ${failed(problems) ? nothing : html`<div class="block"><a class="btn wide" href="#/batch/${id}/pieces">Go to the pieces</a></div>`}
        </section>
      </div>`;
    }
    sayVerdict(app, ok.verdict);
    return ok.verdict.held ? held(batch, ok, head) : free(batch, ok, head);
  }

  /** @param {unknown} head */
  function nothingYet(head) {
    return html`<div class="leaf">
      ${head}
      <section class="sec">
        <h2>Weigh-out</h2>
        <p class="lead">Nothing is on the board yet, so there is nothing to work the list from.</p>
        <div class="block"><a class="btn main wide" href="#/batch/${id}/pieces">Say what is on the board</a></div>
      </section>
    </div>`;
  }

  /** @param {Batch} batch @param {WeighSheet} sheet @param {unknown} head */
  function free(batch, sheet, head) {
    // The ways out come before the list, unless those of the scale do.
    const judged = html`<div class="gap">${verdictStrip(sheet.verdict)} ${putInNote(batch)}</div>`;
    const above = sheet.verdict.mark === 'care' && !sheet.coarse;
    const leaf = html`<div class="leaf">
      ${head}
      <section class="sec">
        <h2>Weigh-out</h2>
        ${sheet.coarse ? coarse(batch, sheet.coarse) : above ? [judged, nextSteps(sheet.verdict)] : nothing}
        ${sheet.weighed ? nothing : notWeighed(sheet)} ${sheet.premix ? makePremix(sheet.premix) : nothing}
        <p class="lead">Zero the scale <b>once</b>, with the empty bowl on it. Then only watch what it shows.</p>
        ${list(batch, sheet)}
      </section>
      ${allIn(batch, sheet)} ${putIn.draw(batch)}
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>Dose</h2>
        ${above ? nothing : judged} ${evidence(sheet.verdict)} ${facts(sheet)}
        ${above ? nothing : nextSteps(sheet.verdict)}
        <div class="block noprint acts">
          <button type="button" class="btn quiet" @click=${() => print()}>Print this sheet</button>
        </div>
        ${scale()} ${cautions(sheet.verdict.cautions)}
      </div>
    </div>`;
    return [leaf, plate];
  }

  /** Once everything is ticked, the way on. @param {Batch} batch @param {WeighSheet} sheet */
  function allIn(batch, sheet) {
    const all = [...sheet.bowl, ...sheet.vessel, ...sheet.todo].every(({ id: of }) =>
      batch.ticks.some((tick) => tick.of === of),
    );
    if (!all) return nothing;
    return html`<div class="block noprint">
      <a class="btn main wide" href="#/batch/${id}/cure">All in. Go to the cure</a>
    </div>`;
  }

  /** @param {Batch} batch @param {WeighSheet} sheet @param {unknown} head */
  function held(batch, sheet, head) {
    // Before any cure is on the meat there is nothing to throw out, and the list itself can change.
    const on = Boolean(batch.put_in) || batch.ticks.some(({ of }) => of.startsWith('cure:'));
    const leaf = html`<div class="leaf">
      ${head}
      <section class="sec">
        <h2 class="vh">Weigh-out</h2>
        ${verdictStrip(sheet.verdict)} ${putInNote(batch)} ${evidence(sheet.verdict)}
      </section>
      ${nextSteps(sheet.verdict)}
      <div class="block noprint">
        <h2>Ways out</h2>
        <p class="small near">The batch stays held until its numbers change.</p>
        <div class="pair one gap">
          ${
            sheet.verdict.aim
              ? html`<button type="button" class="btn main" @click=${() => aimAt(batch, sheet.verdict.aim)}>
                  Weigh for ${sheet.verdict.aim} in this batch
                </button>`
              : nothing
          }
          <button type="button" class="btn" @click=${() => putIn.show()}>
            ${on ? 'Change what was put in' : 'I put in something else'}
          </button>
          <a class="btn" href="#/batch/${id}/pieces">Change the pieces</a>
          ${on ? html`<button type="button" class="btn" @click=${throwOut}>I threw it out</button>` : nothing}
        </div>
      </div>
      ${putIn.draw(batch)}
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>What it stands on</h2>
        ${facts(sheet)} ${cautions(sheet.verdict.cautions)}
        <details class="block">
          <summary>The list, while the batch is held</summary>
          <p class="small">Nothing can be ticked while the batch is held.</p>
          ${list(batch, sheet)}
        </details>
        <div class="block noprint acts">
          <button type="button" class="btn quiet" @click=${() => print()}>Print this card</button>
        </div>
      </div>
    </div>`;
    return [leaf, plate];
  }

  /** @param {Batch} batch @param {string | null} aim */
  function aimAt({ recipe }, aim) {
    if (!aim) return;
    const put = (/** @type {import('../types').Recipe} */ now) =>
      app.shelf.changeBatch(id, (one) => ({ ...one, recipe: now }));
    return app.act(() => put(withAim(recipe, aim)), {
      says: `This batch is weighed for ${aim}. The card is as it was.`,
      back: () => put(recipe),
    });
  }

  /** @param {Batch} batch @param {WeighSheet} sheet */
  function list(batch, sheet) {
    const lines = [...sheet.bowl, ...sheet.vessel];
    const hand = sheet.can_tick ? lines.find(({ ticked }) => ticked === null)?.id : undefined;
    const draw = (/** @type {WeighLine[]} */ some, /** @type {string} */ place) =>
      some.map((line) =>
        weighLine({
          id,
          batch,
          ticker,
          line,
          now: line.id === hand,
          open: sheet.can_tick,
          place,
          care: sheet.verdict.mark === 'care',
        }),
      );
    return html`<ol class="tally">
        ${draw(sheet.bowl, 'in the bowl')}
      </ol>
      <div class="sumline">
        <b>All in, the bowl holds${sheet.weighed ? nothing : ', usually'}</b>${num(sheet.bowl_total)}
      </div>
      ${
        sheet.vessel.length
          ? html`<h3 class="block">In a vessel of its own</h3>
              <p class="small near noprint">
                Water goes on the kitchen scale, to the gram. If it does not cover the meat, take a narrower vessel or a
                bag, or more of the same brine from the <a href="#/brine">brine bench</a>; never plain water.
              </p>
              <ol class="tally">
                ${draw(sheet.vessel, 'measured')}
              </ol>`
          : nothing
      }
      ${
        sheet.bowl.some(({ spoon }) => spoon)
          ? html`<p class="small spoonkey near">
                Spoon lines run from the least to the most a level spoon may hold; the bold one is usual. They are there
                to catch a slip, not to weigh by.
              </p>
              <details class="noprint">
                <summary>Where the spoon figures come from</summary>
                <ul class="small">
                  ${sheet.bowl.map(({ name, spoon }) => (spoon ? html`<li><b>${name}:</b> ${spoon.source}</li>` : nothing))}
                </ul>
              </details>`
          : nothing
      }
      ${sheet.remarks.map((remark) => html`<p class="near">${glue(remark)}</p>`)}
      ${
        sheet.todo.length
          ? html`<ol class="tally block">
              ${sheet.todo.map(
                ({ id: of, text }) =>
                  html`<li class="line ${batch.ticks.some((tick) => tick.of === of) ? 'done' : ''}">
                    ${ticker.box({ id, batch, mark: { of }, label: text, disabled: !sheet.can_tick })}
                    <div class="nm"><label for=${boxId(id, of)}>${text}</label>${ticker.stamp(batch, of)}</div>
                    ${ticker.wayBack(id, batch, of, text)}
                  </li>`,
              )}
            </ol>`
          : nothing
      }`;
  }

  /** @param {WeighSheet} sheet */
  function notWeighed(sheet) {
    return html`<div class="gap">
      ${strip(
        'ask',
        'Not all is weighed',
        html`Green weight lies anywhere from
        ${sheet.green_range ? html`<b class="nowrap">${ends(sheet.green_range)}</b>` : sheet.green.text}. The list is
        for planning; nothing can be ticked until every piece has been on the scale.`,
        html`<div class="acts"><a class="btn less" href="#/batch/${id}/pieces">Weigh the pieces</a></div>`,
      )}
    </div>`;
  }

  /** @param {Batch} batch @param {Coarse} coarse */
  function coarse(batch, coarse) {
    const range = coarse.premix_range;
    return html`<div class="gap">
        ${strip(
          'care',
          coarse.word,
          glue(coarse.says),
          coarse.premix_helps && !batch.premix
            ? html`<div class="acts noprint">
                <button type="button" class="btn less" @click=${() => setPremix(true)}>
                  Work with a premix${range ? html`: ${range[0]} – ${range[1]} ppm` : nothing}
                </button>
              </div>`
            : nothing,
        )}
      </div>
      <div class="noprint">${advice(coarse.ways)}</div>`;
  }

  /** @param {Premix} premix */
  function makePremix(premix) {
    return html`<section class="block">
      <h3>First make the premix, 1 part cure in ${premix.parts}</h3>
      ${advice(premix.steps)}
      <div class="acts gap noprint">
        <button type="button" class="btn quiet less" @click=${() => setPremix(false)}>Back to the neat cure</button>
      </div>
    </section>`;
  }

  /** @param {WeighSheet} sheet */
  function facts(sheet) {
    return html`<dl class="dl">
      ${sheet.facts.map(
        ({ label, value }) =>
          html`<dt>${label}</dt>
            <dd class=${value.length > 18 ? 'words' : ''}>${value}</dd>`,
      )}
    </dl>`;
  }

  function scale() {
    return html`<details class="block noprint">
      <summary>Another scale here?</summary>
      ${pick(
        {
          name: 'scale',
          legend: 'The smallest step your scale shows',
          look: 'tight',
          options: app.tables.scale_steps.map((step) => [step, step]),
          value: app.settings.scale_step,
        },
        (step) => app.act(() => app.shelf.changeSettings({ scale_step: step })),
      )}
    </details>`;
  }

  /** @param {boolean} premix */
  function setPremix(premix) {
    const set = (/** @type {boolean} */ now) => app.shelf.changeBatch(id, (batch) => ({ ...batch, premix: now }));
    return app.act(() => set(premix), {
      says: premix ? 'The list works with a premix now.' : 'The list works with the neat cure now.',
      back: () => set(!premix),
      here: true,
    });
  }

  async function throwOut() {
    const batch = app.shelf.batches.get(id);
    const set = (/** @type {boolean} */ closed) => app.shelf.changeBatch(id, (one) => ({ ...one, closed }));
    const kept = await app.act(() => set(true), {
      says: `${batch?.name ?? 'The batch'} is put away as thrown out.`,
      back: () => set(false),
    });
    if (kept) app.go('#/today');
  }

  return {
    draw,
    arrive() {
      sleep = stayAwake();
      const batch = app.shelf.batches.get(id);
      if (batch?.ticks.length) document.querySelector('.line.now')?.scrollIntoView({ block: 'center' });
    },
    leave: () => sleep(),
  };
}
