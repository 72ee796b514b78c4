/** Something went wrong: nine cards, each of which asks two or three things and says what to do. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { problemStrip } from '../widgets/answer.js';
import { icon, tagMark } from '../widgets/icon.js';
import { pick } from '../widgets/pick.js';
import { cautions, strip } from '../widgets/verdict.js';
import { glue } from '../words/glue.js';
import { dayTime } from '../words/time.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Trouble} Trouble */

/** @param {App} app @param {import('../router.js').Place} place @returns {import('../app.js').Screen} */
export function troubleCards(app, { id: card }) {
  /** @type {Map<string, string>} */
  const chosen = new Map();
  /** Batches in whose remarks it stands. @type {Set<string>} */
  const noted = new Set();

  function draw() {
    const { ok, problems } = ask('trouble', { card, chosen: [...chosen] });
    const open = ok?.cards.find(([key]) => key === card);
    const back = open ? { href: '#/cards', text: 'All cards' } : { href: '#/today', text: 'Today' };
    if (!ok || !open) return { title: 'Something went wrong', back, one: true, view: list(ok, problems) };
    const [, head, lead] = open;
    const leaf = html`<div class="leaf">
      <h1 tabindex="-1">${head}</h1>
      <p class="small near">${lead}</p>
      ${ok.asks.map(([key, legend, options]) =>
        pick({ name: key, legend, look: 'long', options, value: chosen.get(key) ?? '' }, (option) => {
          chosen.set(key, option);
          app.draw();
          const said = ask('trouble', { card, chosen: [...chosen] }).ok?.answer;
          if (said) app.say(`${said.word}. ${said.says} ${said.next}`, { urgent: said.mark === 'stop' });
        }),
      )}
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2 class="low">What to do</h2>
        ${ok.answer ? [answer(ok), noteOn(head, ok.answer)] : html`<p class="gap">Answer ${ok.asks.length === 2 ? 'both questions' : `all ${ok.asks.length} questions`}, and it stands here.</p>`}
      </div>
    </div>`;
    return { title: head, back, view: [leaf, plate] };
  }

  /** @param {Trouble | undefined} ok @param {import('../ask.js').Problem[] | undefined} problems */
  function list(ok, problems) {
    return html`<div class="leaf">
      <h1 tabindex="-1">Something went wrong</h1>
      <p class="lead near">What happened?</p>
      ${problems ? problemStrip(app, problems) : nothing}
      <nav class="doors" aria-label="What happened">
        ${ok?.cards.map(
          ([key, head, lead]) =>
            html`<a href="#/cards/${key}"
              ><span><b>${head}</b><span class="small">${lead}</span></span
              >${icon('s-go')}</a
            >`,
        )}
      </nav>
    </div>`;
  }

  /** @param {Trouble} sheet */
  function answer({ answer: said, cautions: list }) {
    if (!said) return nothing;
    return html`${strip(said.mark, said.word, glue(said.says))}
      <section class="block">
        <h3>Next</h3>
        <p>${glue(said.next)}</p>
        <p class="src gap">${said.source}</p>
      </section>
      ${
        /Check a dose/.test(said.next)
          ? html`<div class="gap noprint"><a class="btn wide" href="#/dose">Check a dose</a></div>`
          : nothing
      }
      ${cautions(list)}`;
  }

  /** What happened goes into the remarks of its batch, with the time. @param {string} head @param {{ word: string }} said */
  function noteOn(head, { word }) {
    const open = app.shelf.open();
    if (open.length === 0) return nothing;
    return html`<section class="block noprint">
      <h3>Write it down with its batch</h3>
      <div class="doors" role="list">
        ${open.map(
          ([id, batch]) =>
            html`<div role="listitem">
              ${
                noted.has(id)
                  ? html`<a class="tagged" href="#/batch/${id}/cure"
                      >${tagMark(batch.tag)}<span
                        ><b>${batch.name}</b><span class="small">Noted. Go to it and log the refrigerator.</span></span
                      >${icon('s-go')}</a
                    >`
                  : html`<button type="button" class="tagged" @click=${() => note(id, batch, `${head}: ${word}.`)}>
                      ${tagMark(batch.tag)}<span
                        ><b>${batch.name}</b><span class="small">Add it to the remarks.</span></span
                      >
                    </button>`
              }
            </div>`,
        )}
      </div>
    </section>`;
  }

  /** @param {string} id @param {import('../types').Batch} batch @param {string} says */
  async function note(id, { notes }, says) {
    const line = `${dayTime(app.now(), app.now())} ${says}`;
    const put = (/** @type {string | undefined} */ now) =>
      app.shelf.changeBatch(id, (one) => ({ ...one, notes: now ?? '' }));
    const kept = await app.act(() => put([notes, line].filter(Boolean).join('\n')), {
      says: 'It stands in the remarks of the batch.',
      back: () => put(notes).then(() => noted.delete(id)),
    });
    if (kept) noted.add(id);
    app.draw();
  }

  return { draw };
}
