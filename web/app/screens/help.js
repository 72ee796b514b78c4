/** How the job goes, by the demo batch; and the words of the trade, with where the figures come from. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { count, statusWords } from '../words/names.js';
import { demo } from './today.js';
import { GLOSSARY } from '../words/glossary.js';

/** @typedef {import('../app.js').App} App */

const BACK = { href: '#/more', text: 'More' };

/** @type {[string, string][]} The job from the bag to the gift, as the demo batch goes through it. */
const JOB = [
  [
    'Cool it',
    'Dress and cool the birds, hang or drain them cold, then bone out and trim. Sort the pieces by size: a thin one is ready first.',
  ],
  [
    'Pieces',
    'Weigh what is trimmed. That is green weight, and every per cent on the card is of it. Measure the thickest part.',
  ],
  [
    'Weigh',
    'Cure first, into an empty bowl on a scale at nought. Add each thing until the scale shows what the card shows. Tick it when it is in.',
  ],
  [
    'Read the verdict',
    'A range with its limit. In range: go on. Held: nothing goes on until the numbers change. Never add cure to be quicker, and do not count on soaking it out.',
  ],
  [
    'Label the bag',
    'Print or write the bag label before the bag closes. A bag without a name is a bag nobody can vouch for.',
  ],
  [
    'Cure',
    'Keep it at 2 to 4 °C (36 to 40 °F). Turn it when Batches says so. The clock stops when it freezes, and does not hold above 4 °C.',
  ],
  ['Rinse and dry', 'Rinse, pat dry, and leave it uncovered and cold until it feels tacky: the pellicle.'],
  [
    'Fire',
    'Smoke, then cook until the coldest piece reads what the card says: every bird 74 °C (165 °F) in the middle.',
  ],
  [
    'Log the fire',
    'On the Fire stage, type what the probe shows. It says when each class is likely done and which to pull; the labels go by it.',
  ],
  ['Chill', 'From 57 to 21 °C (135 to 70 °F) within 2 hours, and to 5 °C (41 °F) within 4 hours more.'],
  ['Pack', 'Labels for the packs, a tag for a gift of birds. Cured and smoked birds keep cold 2 weeks at most.'],
  [
    'Freezer and gifts',
    'From the labels the packs go into Stock with one touch. Stock shows which to eat first, who got what, and how far cure, salt and bags reach.',
  ],
  [
    'For next time',
    'On the Pack stage, note what came out and what to change. It stands on the next batch of that recipe.',
  ],
  [
    'Keep it safe',
    'Every change is stored at once, and Undo takes it back. Settings and backup gives everything as one file: that is the copy. A recipe goes to a friend as a link or a square.',
  ],
];

/** @param {string} head @param {[string, string][]} all sources, each with its status */
function list(head, all) {
  return html`<details class="gap">
    <summary>${head}: ${count(all.filter(([source]) => source).length, 'source')}</summary>
    <ul class="bullets">
      ${all.map(([source, status]) =>
        source ? html`<li>${source}${status ? html`, <b>${statusWords(status)}</b>` : nothing}</li>` : nothing,
      )}
    </ul>
  </details>`;
}

/** @param {App} app @returns {import('../app.js').Screen} */
export function help(app) {
  function draw() {
    const view = html`<div class="leaf help">
      <h1 tabindex="-1">How the job goes</h1>
      <p class="lead near">
        The whole job, by the demo batch: mallard and teal from a weekend on the saltmarsh. Try it and walk through; it
        can be deleted at its Pieces.
      </p>
      <div class="gap">
        <button type="button" class="btn wide" @click=${() => demo(app)}>Try it with sample meat</button>
      </div>
      <p class="caution">
        Your local code, the food-safety authority and licensed practice decide. This page reckons; it does not license.
      </p>
      <section class="sec">
        <h2>The job</h2>
        <ol class="steps">
          ${JOB.map(
            ([head, says]) =>
              html`<li>
                <span><b>${head}</b>${says}</span>
              </li>`,
          )}
        </ol>
      </section>
    </div>`;
    return { title: 'How the job goes', back: BACK, one: true, view };
  }

  return { draw };
}

/** @param {App} app @returns {import('../app.js').Screen} */
export function sources(app) {
  function draw() {
    const { ingredients } = app.tables;
    const tables = ask('sources', {}).ok?.tables ?? [];
    // Each source once, whatever it is of.
    const spoons = /** @type {[string, string][]} */ ([
      ...new Map(ingredients.map(({ source, status }) => [source + status, [source, status]])).values(),
    ]);
    const view = html`<div class="leaf help">
      <h1 tabindex="-1">Sources and words</h1>
      <section class="sec">
        <h2>Where the figures come from</h2>
        <p class="lead">
          Published: read in the source. Quoted: read in a text that quotes it. The rest says what it is: treat it so.
        </p>
        ${tables.map(([head, all]) => list(head, all))} ${list('Weights of a level spoon', spoons)}
      </section>
      <section class="sec">
        <h2>Words of the trade</h2>
        <dl class="words">
          ${GLOSSARY.map(
            ([word, says]) =>
              html`<dt>${word}</dt>
                <dd>${says}</dd>`,
          )}
        </dl>
      </section>
    </div>`;
    return { title: 'Sources and words', back: BACK, one: true, view };
  }

  return { draw };
}
