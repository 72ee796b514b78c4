/** Something went wrong: the list, and of each card the two lines to do now, then one question at a time. */
import { html, nothing } from 'lit-html';
import { problemStrip } from '../widgets/answer.js';
import { door } from '../widgets/doors.js';
import { icon, tagMark } from '../widgets/icon.js';
import { thrownOut } from '../widgets/thrown-out.js';
import { TroubleFlow } from '../widgets/trouble-flow.js';
import { dayTime } from '../../words/time.js';
import { CARDS } from '../../words/en/trouble.js';
import { ASK, LIST, LOG, NOTE } from '../../words/en/troubles.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Trouble} Trouble */

/** @param {App} app @param {import('../router.js').Place} place @returns {import('../app.js').Screen} */
export function troubleCards(app, { id: card }) {
  const flow = new TroubleFlow(app, card);
  // The batch that one came from, or the only one there is.
  const open = app.shelf.open();
  const its = open.find(([id]) => id === app.came?.id) ?? (open.length === 1 ? open[0] : undefined);
  flow.batch = its?.[1];
  const { say } = flow;
  /** Batches in whose remarks it stands. @type {Set<string>} */
  const noted = new Set();

  function draw() {
    const { ok, problems } = flow.sheet();
    const open = ok?.cards.find((key) => key === card);
    if (!ok || !open) {
      const back = { href: '#/more', text: LIST.more };
      return { title: LIST.head, back, one: true, view: list(card ? undefined : ok, problems) };
    }
    const { head, lead } = CARDS[open];
    return {
      title: say(head),
      back: { href: '#/cards', text: LIST.head },
      one: true,
      view: html`<div class="leaf">
        <h1 tabindex="-1">${say(head)}</h1>
        <p class="small near">${say(lead)}</p>
        ${logSays(ok)}
        ${ok.remedy ? flow.end(ok.remedy) : [flow.box('ask', ASK.now, CARDS[open].now), flow.question(ok)]}
        ${flow.given(ok)} ${ok.remedy ? [flow.why(ok, ok.remedy), noteOn(head, ok.remedy)] : nothing}
      </div>`,
    };
  }

  /** What its log knows is not asked. @param {Trouble} ok */
  function logSays({ log }) {
    if (!log || !its) return nothing;
    const since = log.since === null ? null : dayTime(log.since, app.now());
    return html`<p class="near"><b>${LOG.says(its[1].name, log, since)}</b></p>
      <p class="small noprint"><a href="#/batch/${its[0]}/cure">${LOG.see}</a></p>`;
  }

  /** @param {Trouble | undefined} ok @param {import('../ask.js').Problem[] | undefined} problems */
  function list(ok, problems) {
    return html`<div class="leaf">
      <h1 tabindex="-1">${LIST.head}</h1>
      <p class="lead near">${LIST.what}</p>
      ${problems ? problemStrip(app, problems) : nothing}
      <nav class="doors" aria-label=${LIST.label}>
        ${ok?.cards.map((key) => door(`#/cards/${key}`, say(CARDS[key].head), say(CARDS[key].lead)))}
      </nav>
    </div>`;
  }

  /** What happened goes into the remarks of its batch, with the time. @param {string} head @param {import('../types').Remedy} remedy */
  function noteOn(head, remedy) {
    const open = app.shelf.open();
    if (open.length === 0) return nothing;
    // The batch that is known is not asked about; another may lie in the same fridge.
    const [own, others] = [true, false].map((yes) => open.filter(([id]) => (!its || id === its[0]) === yes));
    const gap = remedy.only_if.includes('gap_logged');
    const says = NOTE.says(flow.say(head), flow.words(remedy).word);
    const out = remedy.act === 'throw_out';
    const list = (/** @type {typeof open} */ some = []) =>
      html`<div class="doors" role="list">
        ${some.map(
          ([id, batch]) =>
            html`<div role="listitem">
              ${
                noted.has(id) || gap
                  ? html`<a class="tagged" href="#/batch/${id}/cure"
                      >${tagMark(batch.tag)}<span
                        ><b>${batch.name}</b><span class="small">${gap ? NOTE.gap : NOTE.stands}</span></span
                      >${icon('s-go')}</a
                    >`
                  : html`<button
                      type="button"
                      class="tagged"
                      @click=${() => (out ? putAway(id, says) : note(id, batch, says))}
                    >
                      ${tagMark(batch.tag)}<span
                        ><b>${batch.name}</b><span class="small">${out ? NOTE.threw : NOTE.add}</span></span
                      >
                    </button>`
              }
            </div>`,
        )}
      </div>`;
    return html`<section class="block noprint">
      ${its ? nothing : html`<h2>${out ? NOTE.which : NOTE.write}</h2>`} ${list(own)}
      ${
        others?.length
          ? html`<details class="fold">
              <summary>${NOTE.others}</summary>
              ${list(others)}
            </details>`
          : nothing
      }
    </section>`;
  }

  /** @param {string} id @param {string} says */
  async function putAway(id, says) {
    if (await thrownOut(app, id, NOTE.line(dayTime(app.now(), app.now()), says))) app.go('#/today');
  }

  /** @param {string} id @param {import('../types').Batch} batch @param {string} says */
  async function note(id, { notes }, says) {
    const line = NOTE.line(dayTime(app.now(), app.now()), says);
    const now = [notes, line].filter(Boolean).join('\n');
    const kept = await app.act(() => app.shelf.changeBatch(id, (one) => ({ ...one, notes: now })), {
      says: NOTE.done,
      after: () => noted.delete(id),
    });
    if (kept) noted.add(id);
    app.draw();
  }

  return { draw };
}
