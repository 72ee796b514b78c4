/** Labels and tags of a batch: for the bag before it closes, for the packs, for what is given. */
import { html, nothing } from 'lit-html';
import { ask, readFields } from '../ask.js';
import { pieceName } from '../../words/en/cuts.js';
import { REGION } from '../../words/locale.js';
import { answered } from '../widgets/answer.js';
import { batchHead, stateOf } from '../widgets/batch-head.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { linkBase, onFile } from '../widgets/hand-on.js';
import { sheetOf } from '../widgets/label.js';
import { PackBook } from '../widgets/packs.js';
import { pick } from '../widgets/pick.js';
import { strip } from '../widgets/verdict.js';
import { cautionText } from '../../words/en/cautions.js';
import { glue } from '../../words/glue.js';
import { LABELS, TYPED } from '../../words/en/packing.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').PaperKind} PaperKind */

/** @type {[PaperKind, string][]} */
const PAPERS = [
  ['bag', LABELS.kinds.bag],
  ['pack', LABELS.kinds.pack],
  ['gift', LABELS.kinds.gift],
];
/** @type {['a4' | 'letter' | 'tape', string][]} */
const STOCKS = [
  ['a4', LABELS.stocks.a4],
  ['letter', LABELS.stocks.letter],
  ['tape', LABELS.stocks.tape],
];
/** As many as anyone cuts in one go. */
const MOST = 60;

/**
 * @param {App} app
 * @param {string} id
 * @param {string} part `tag` comes for a gift tag
 * @returns {import('../app.js').Screen}
 */
export function labels(app, id, part) {
  const form = new Form('labels', `labels.${id}`);
  /** @type {{ kind: PaperKind | '', stock: 'a4' | 'letter' | 'tape', frozen: boolean | undefined, vacuum: boolean }} */
  const how = {
    kind: part === 'tag' ? 'gift' : '',
    stock: ['US', 'CA'].includes(REGION) ? 'letter' : 'a4',
    frozen: undefined,
    vacuum: false,
  };
  const book = new PackBook(app, id);
  /** Weights that are heavier than their meat, and are right all the same. */
  let sure = '';
  /** @param {Partial<typeof how>} change */
  const set = (change) => {
    Object.assign(how, change);
    app.draw();
  };

  const unit = () => (app.settings.units === 'us' ? 'oz' : 'g');

  /** The weight of each pack as it is printed; nothing where it is to be written by hand. @param {number} count */
  function weights(count) {
    const typed = form
      .text('weights')
      .split(/[;,]\s+|[;\n]/)
      .map((text) => text.trim())
      .filter(Boolean);
    const fields = typed.slice(0, count).map((text, at) => ({
      key: `w${at}`,
      label: TYPED.pack(at + 1),
      kind: /** @type {const} */ ('mass'),
      text,
      unit: unit(),
    }));
    if (fields.length === 0) return { texts: [], values: [], wrong: undefined };
    const { ok, problems } = readFields(fields, app.settings.units);
    const wrong = (problems ?? ok?.problems)?.[0]?.message;
    const read = wrong ? [] : (ok?.values ?? []);
    return { texts: read.map(({ shown }) => shown), values: read.flatMap(({ value }) => value ?? []), wrong };
  }

  /** Of birds the whole ones are counted, whatever of them is given. @param {import('../types').Batch} batch */
  const birds = ({ pieces }) =>
    pieces.some(({ cut }) => app.tables.cuts.some(({ key, kind }) => key === cut && kind === 'bird'));

  /** Asked once: typed anew, or right. */
  function tooHeavy() {
    const isRight = () => {
      sure = form.text('weights');
      app.draw();
    };
    return html`<div class="acts">
      <button type="button" class="btn" @click=${isRight}>${LABELS.heavySure}</button>
    </div>`;
  }

  function draw() {
    const batch = /** @type {import('../types').Batch} */ (app.shelf.batches.get(id));
    // Until it is out of the cure, what it lies in is a bag.
    const out = batch.ticks.some(({ of }) => {
      const [what, at] = of.split(':');
      return what === 'pull' || (what === 'step' && batch.recipe.steps[Number(at)]?.do !== 'cure');
    });
    const kind = how.kind || (out ? 'pack' : 'bag');
    // What is on the list already is printed again without typing it anew.
    const here = book.here();
    const kept = kind === 'gift' ? (book.pack() ? [book.pack()] : []) : here;
    const counted = `count-${kind}`;
    const typed = Number(form.text(counted, String(kind === 'pack' ? here.length || 1 : 1)).replace(',', '.'));
    const count = Math.min(MOST, Math.max(1, Math.round(typed) || 1));
    const read = weights(count);
    if (read.wrong) form.mark([{ code: 'not_read', field: 'weights', message: read.wrong }]);
    const { vacuum } = how;
    // A pack that is given is kept as it lies on the list, and so are all until somebody says otherwise.
    const gift = kind === 'gift' ? book.pack() : undefined;
    const frozen = gift?.frozen ?? how.frozen ?? (here.length > 0 && here.every((pack) => pack.frozen));
    const packs = read.values.length === count ? read.values : [];
    const answer = ask('labels', { batch, now: app.now(), frozen, vacuum, packs, settings: app.settings });
    const printed = read.texts.length ? read.texts : kept.map((pack) => pack?.weight?.text ?? '');
    const state = stateOf(app, id, batch);
    const link = onFile ? null : ask('link', { recipe: batch.recipe, base: linkBase() }).ok;
    return {
      title: LABELS.title(batch.name),
      ...batchHead(app, id, batch, state && { ...state, doubts: answer.ok?.doubts ?? state.doubts }, 'labels'),
      back: { href: `#/batch/${id}/pack`, text: LABELS.back, tag: batch.tag },
      one: true,
      view: html`<div class="leaf labels">
        <div class="noprint">
          <h2>${LABELS.head}</h2>
          ${pick({ name: 'paper', legend: LABELS.kind, look: 'long', options: PAPERS, value: kind }, (kind) => set({ kind }))}
          ${pick({ name: 'stock', legend: LABELS.stock, options: STOCKS, value: how.stock }, (stock) => set({ stock }))}
          ${field(form, { key: counted, label: kind === 'pack' ? LABELS.packs : LABELS.many, stored: String(count), stepper: [LABELS.less, LABELS.more], least: 1, keys: 'numeric' }, { typed: app.draw })}
          ${kind === 'gift' ? book.choosePack() : nothing}
          ${
            kind === 'bag'
              ? nothing
              : html`${field(
                  form,
                  {
                    key: 'what',
                    label: kind === 'gift' ? TYPED.inGift : TYPED.inPack,
                    hint: kind === 'gift' ? TYPED.giftHint[birds(batch) ? 'birds' : 'other'] : TYPED.packHint,
                    look: 'words',
                    optional: true,
                  },
                  { typed: app.draw },
                )}
                ${
                  gift
                    ? nothing
                    : field(
                        form,
                        {
                          key: 'weights',
                          label: TYPED.weights,
                          hint: TYPED.weightsHint(unit()),
                          look: 'words',
                          optional: true,
                        },
                        { typed: app.draw },
                      )
                }
                ${
                  gift
                    ? nothing
                    : pick(
                        {
                          name: 'place',
                          legend: TYPED.kept,
                          options: /** @type {['cold' | 'frozen', string][]} */ ([
                            ['cold', TYPED.cold],
                            ['frozen', TYPED.frozen],
                          ]),
                          value: frozen ? 'frozen' : 'cold',
                        },
                        (place) => set({ frozen: place === 'frozen' }),
                      )
                }
                ${pick(
                  {
                    name: 'vacuum',
                    legend: TYPED.packed,
                    options: /** @type {['bag' | 'vacuum', string][]} */ ([
                      ['bag', TYPED.plain],
                      ['vacuum', TYPED.vacuum],
                    ]),
                    value: vacuum ? 'vacuum' : 'bag',
                  },
                  (packed) => set({ vacuum: packed === 'vacuum' }),
                )}`
          }
        </div>
        ${answered(app, answer, (ok) => {
          const paper = ok.papers.find((one) => one.kind === kind);
          const heavy = sure === form.text('weights') ? null : ok.too_heavy;
          const what = kind === 'bag' ? '' : form.text('what').trim();
          return html`${
              paper ? nothing : html`<div class="gap noprint">${strip('ask', LABELS.noTag, LABELS.noTagSays)}</div>`
            }
            ${heavy ? html`<div class="gap noprint">${strip('ask', LABELS.heavy(heavy.packs.text, heavy.meat.text), LABELS.heavySays, tooHeavy())}</div>` : nothing}
            ${
              kind === 'gift' && paper?.foot.includes('gift-raw')
                ? html`<div class="gap noprint">${strip('care', LABELS.notForAll, cautionText('gift-raw'))}</div>`
                : nothing
            }
            ${
              paper
                ? html`<h2 class="noprint block">${LABELS.sheet}</h2>
                    ${sheetOf({ paper, batch, id, what, count, weights: printed, to: kind === 'gift' ? book.to() : '', stock: how.stock, link, now: app.now(), nameOf: pieceName })}
                    <div class="block noprint">
                      <button type="button" class="btn main wide" @click=${() => print()}>${LABELS.print}</button>
                    </div>
                    ${kind === 'pack' && paper.doubts.length === 0 && !heavy ? book.putIn({ count, weights: read.values, until: paper.until, out: ok.out, frozen, done: () => form.clear(), give: () => (set({ kind: 'gift' }), scrollTo(0, 0)) }) : nothing}
                    ${kind === 'gift' && !heavy ? book.give(read.values[0], paper) : nothing}`
                : nothing
            }
            <section class="block noprint cautions">
              <h2>${LABELS.leaves}</h2>
              <ul>
                ${ok.rules.map(({ key, source }) => html`<li class="caution">${glue(cautionText(key))} <small>${source}.</small></li>`)}
              </ul>
            </section>`;
        })}
      </div>`,
    };
  }

  return { draw };
}
