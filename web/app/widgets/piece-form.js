/** The form that adds a size class to a batch, or changes or removes one. */
import { html, nothing } from 'lit-html';
import { ask, readFields } from '../ask.js';
import { newId } from '../shelf.js';
import { CUTS } from '../../words/en/cuts.js';
import { KINDS, UNITS, statusWords } from '../../words/en/names.js';
import { mixedWords, oddRow } from '../../words/en/pieces.js';
import { field } from './field.js';
import { Form, errorSummary, focusErrors } from './form.js';
import { choose, option, pick } from './pick.js';
import { strip } from './verdict.js';
import { ANSWER, ASK, CHOICES, HEADS, LATE, SAYS, STEPPERS, heard, usualOf } from '../../words/en/sizes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Batch} Batch */
/** @typedef {import('../types').Piece} Piece */

const OWN = 'own';

/** Each answer with its key. @param {Record<string, string>} words */
const choices = (words) => /** @type {[string, string][]} */ (Object.entries(words));

export class PieceForm {
  #form;
  /** What the next class will be called: sent twice it is one and the same. */
  #fresh = newId();

  /** @param {App} app @param {string} id @param {() => void} left once a size is stored or left as it was */
  constructor(app, id, left) {
    this.app = app;
    this.id = id;
    this.left = left;
    this.#form = new Form('f', `pieces.${id}`);
  }

  /** True once something was typed or chosen, or a class is being changed. */
  get begun() {
    return this.#form.typed.length > 0;
  }

  /** Whether a class is being changed, rather than a new one added. @param {Batch} batch */
  changes(batch) {
    return this.#editing(batch) >= 0;
  }

  /** @param {Batch} batch @returns {number} place of the class that is being changed; -1: a new one */
  #editing({ pieces }) {
    const id = this.#form.text('id');
    return id ? pieces.findIndex((one) => one.id === id) : -1;
  }

  /** @param {number} at */
  edit(at) {
    this.#form.clear();
    const piece = this.app.shelf.batches.get(this.id)?.pieces[at];
    if (!piece) return;
    this.#form.type('id', piece.id ?? '');
    this.#form.type('cut', piece.cut);
    this.#form.type('of', piece.each ? 'each' : 'all');
    this.app.draw();
    document.getElementById('piece-h')?.focus();
  }

  /** @param {Batch} batch @param {boolean} any a class is there already */
  draw(batch, any) {
    // The class may have been removed in another tab meanwhile.
    if (this.#form.text('id') && this.#editing(batch) < 0) this.#form.drop('id');
    const old = batch.pieces[this.#editing(batch)];
    const units = UNITS[this.app.settings.units];
    // Cautions and temperatures go by the species, so the first one is never guessed.
    const cut = this.#form.text('cut', batch.pieces.at(-1)?.cut);
    const of = this.#form.text('of', 'all');
    const own = cut === OWN;
    const count = this.#countOf(old, cut);
    const grams = this.app.tables.cuts.find(({ key }) => key === cut);
    const form = this.#form;
    const on = { typed: this.app.draw };
    const put = (/** @type {string} */ key) => (/** @type {string} */ now) => {
      form.type(key, now);
      this.app.draw();
    };

    return html`<form @submit=${(/** @type {Event} */ e) => this.#send(e, batch, cut)} novalidate>
      ${errorSummary(form)}
      <h2 id="piece-h" tabindex="-1">${old ? HEADS.change : any ? HEADS.add : HEADS.first}</h2>
      ${!old && isWeighed(batch) ? strip('care', LATE.head, LATE.says, html`<a class="btn wide noprint" href="#/how-much">${LATE.own}</a>`) : nothing}
      ${choose(
        {
          id: 'f-cut',
          label: ASK.cut,
          value: cut,
          problem: form.problem('cut')?.message,
          options: [
            cut ? nothing : option('', ASK.choose, true),
            Object.entries(KINDS).map(([kind, word]) => {
              const cuts = this.app.tables.cuts.filter((one) => one.kind === kind);
              return cuts.length
                ? html`<optgroup label=${word}>${cuts.map(({ key }) => option(key, CUTS[key], key === cut))}</optgroup>`
                : nothing;
            }),
            this.app.tables.cuts
              .filter(({ kind }) => !(kind in KINDS))
              .map(({ key }) => option(key, CUTS[key], key === cut)),
            option(OWN, ASK.other, own),
          ],
        },
        put('cut'),
      )}
      ${field(
        form,
        {
          key: 'name',
          label: own ? ASK.call : ASK.word,
          hint: own ? ASK.callHint : ASK.wordHint,
          stored: old?.name ?? '',
          look: 'words',
          optional: !own,
        },
        on,
      )}
      ${field(
        form,
        {
          key: 'count',
          label: ASK.howMany,
          hint: old?.about || (count !== '1' && this.#isReckoned(old)) ? ASK.aboutHint : undefined,
          unit: ASK.unit(form.text('count', count).trim()),
          keys: 'numeric',
          stored: count,
          stepper: STEPPERS.count,
          least: 1,
        },
        on,
      )}
      ${field(
        form,
        {
          key: 'weight',
          label: of === 'all' ? ASK.allWeight : ASK.eachWeight,
          hint: units.mass ? ASK.grams : ASK.pounds,
          unit: units.mass,
          stored: old?.weight ?? '',
        },
        on,
      )}
      ${pick(
        {
          name: 'of',
          legend: ASK.weightIs,
          hidden: true,
          options: choices(CHOICES.of),
          value: of,
        },
        put('of'),
      )}
      ${this.#ofTable(grams)}
      ${field(
        form,
        {
          key: 'thickness',
          label: ASK.thickest,
          hint: ASK.thickestHint,
          unit: units.length,
          stored: this.#thickOf(old, units.length),
          optional: true,
          ...(this.app.settings.units === 'metric' && { stepper: STEPPERS.thick }),
        },
        on,
      )}
      ${pick(
        {
          name: 'skin',
          legend: ASK.skin,
          options: choices(CHOICES.skin),
          value: form.text('skin', old?.skin ? 'on' : 'off'),
        },
        put('skin'),
      )}
      ${pick(
        {
          name: 'bone',
          legend: ASK.bone,
          options: choices(CHOICES.bone),
          value: form.text('bone', old?.bone_in ? 'in' : 'out'),
        },
        put('bone'),
      )}
      ${pick(
        {
          name: 'thawed',
          legend: ASK.before,
          options: choices(CHOICES.thawed),
          value: form.text('thawed', old?.thawed ? 'thawed' : 'fresh'),
        },
        put('thawed'),
      )}
      ${
        batch.pieces.length > (old ? 1 : 0)
          ? field(
              form,
              {
                key: 'bag',
                label: ASK.bagIn,
                hint: ASK.bagHint,
                keys: 'numeric',
                stored: String(bagOf(old) + 1),
                stepper: STEPPERS.bag,
                least: 1,
              },
              on,
            )
          : nothing
      }
      <div class="block">
        <button type="submit" class="btn wide ${this.begun || !any ? 'main' : ''}">${old ? ASK.save : ASK.add}</button>
      </div>
      ${
        old
          ? html`<div class="gap pair">
              <button type="button" class="btn quiet" @click=${() => this.#leave()}>${ASK.leave}</button>
              <button type="button" class="btn quiet" @click=${() => this.#remove(batch)}>${ASK.remove}</button>
            </div>`
          : nothing
      }
    </form>`;
  }

  /** Nobody has counted: the number is reckoned from the weight of all of them. @param {Piece | undefined} old */
  #isReckoned(old) {
    const form = this.#form;
    const [weighed, counted] = ['weight', 'count'].map((key) => form.typed.includes(key));
    return (!old || old.about) && weighed && !counted && form.text('of', 'all') === 'all';
  }

  /** A number that was reckoned goes by the weight that is typed now. @param {Piece | undefined} old @param {string} cut */
  #countOf(old, cut) {
    const form = this.#form;
    if (cut !== OWN && this.#isReckoned(old)) {
      const { settings } = this.app;
      const unit = UNITS[settings.units].mass;
      const typed = {
        key: 'weight',
        label: ASK.weight,
        kind: /** @type {const} */ ('mass'),
        unit,
        text: form.text('weight'),
      };
      const weight = readFields([typed], settings.units).ok?.values[0]?.value;
      const [likely] = (weight && ask('draft', { cut, weight, settings }).ok?.batch.pieces) || [];
      if (likely) return String(likely.count);
    }
    return String(old?.count ?? 1);
  }

  /** As it is stored; by this person's rule where it was put down by the other. @param {Piece | undefined} piece @param {string} unit */
  #thickOf(piece, unit) {
    const stored = piece?.thickness ?? '';
    if (!piece || !stored || stored.endsWith(unit)) return stored;
    return ask('pieces', { pieces: [piece], settings: this.app.settings }).ok?.rows[0]?.thickness?.text ?? stored;
  }

  /** The range of a piece that is not weighed, with where it comes from. @param {import('../types').Cut | undefined} cut */
  #ofTable(cut) {
    if (!cut?.grams || !cut.status) return nothing;
    return html`<p class="small near">${usualOf(CUTS[cut.key], cut.grams, cut.source, statusWords(cut.status))}</p>`;
  }

  /** @param {Event} event @param {Batch} batch @param {string} cut */
  async #send(event, batch, cut) {
    event.preventDefault();
    const place = this.#editing(batch);
    const old = batch.pieces[place];
    const units = UNITS[this.app.settings.units];
    const values = this.#form.read(
      [
        { key: 'name', label: ASK.name, kind: 'name', optional: cut !== OWN, stored: old?.name },
        { key: 'count', label: ASK.howMany, kind: 'count', stored: this.#countOf(old, cut) },
        { key: 'bag', label: ASK.bag, kind: 'count', stored: String(bagOf(old) + 1) },
        { key: 'weight', label: ASK.weight, kind: 'mass', unit: units.mass, optional: true, stored: old?.weight ?? '' },
        {
          key: 'thickness',
          label: ASK.thickest,
          kind: 'length',
          unit: units.length,
          optional: true,
          stored: old?.thickness ?? '',
        },
      ],
      this.app.settings.units,
    );
    if (!cut) this.#form.mark([{ code: 'missing', field: 'cut', message: ASK.chooseIt }]);
    if (!values || !cut) {
      this.app.draw();
      return focusErrors();
    }
    /** @type {Piece} */
    const piece = {
      id: old?.id ?? this.#fresh,
      cut,
      count: Number(values.count),
      each: this.#form.text('of') === 'each',
    };
    // A number that was reckoned from the weight stays so until somebody counts.
    const reckoned = old?.about || (piece.count > 1 && this.#isReckoned(old));
    if (reckoned && !this.#form.typed.includes('count')) piece.about = true;
    if (values.name) piece.name = values.name;
    if (values.weight) piece.weight = values.weight;
    // What nobody typed anew stays as it was put down.
    const thickness = this.#form.typed.includes('thickness') ? values.thickness : old?.thickness;
    if (thickness) piece.thickness = thickness;
    if (this.#form.text('skin', old?.skin ? 'on' : 'off') === 'on') piece.skin = true;
    if (this.#form.text('bone', old?.bone_in ? 'in' : 'out') === 'in') piece.bone_in = true;
    if (Number(values.bag) > 1) piece.bag = Number(values.bag) - 1;
    if (this.#form.text('thawed', old?.thawed ? 'thawed' : 'fresh') === 'thawed') piece.thawed = true;
    const at = old ? place : batch.pieces.length;
    const pieces = batch.pieces.toSpliced(at, 1, piece);
    const { ok, problems } = ask('pieces', { pieces, settings: this.app.settings });
    if (problems) {
      // `pieces[0].weight` is the field `weight` here.
      this.#form.mark(
        problems.map((one) => ({ ...one, field: one.field.replace(/^pieces\[\d+\]\.?/, '') || 'count' })),
      );
      this.app.draw();
      return focusErrors();
    }
    const wasMixed = ask('pieces', { pieces: batch.pieces, settings: this.app.settings }).ok?.mixed;
    const kept = await this.#store(pieces, old ? SAYS.changed : piece.weight ? SAYS.added : SAYS.addedUnweighed);
    if (!kept) return;
    this.#leave();
    const added = ok?.rows[at];
    this.app.say(heard(Boolean(old), added ? oddRow(added) : ''));
    // That the sizes do not go together is told where it stands: the thin ones are done long before the thick.
    if (ok?.mixed && !wasMixed) {
      this.app.say(`${ANSWER.mixed}. ${mixedWords(ok.mixed)}`);
      return document.getElementById('mixed')?.focus();
    }
    // What was added is shown, or it would be added twice.
    const row = document.getElementById(`class-${at}`);
    row?.scrollIntoView({ block: 'center' });
    row?.querySelector('button')?.focus({ preventScroll: true });
  }

  /** @param {Batch} batch */
  async #remove(batch) {
    const at = this.#editing(batch);
    if (at < 0) return;
    const gone = without(batch, at);
    const says = gone.fire ? SAYS.removedAll : SAYS.removed;
    const work = () => this.app.shelf.changeBatch(this.id, (one) => ({ ...one, ...gone }));
    if (await this.app.act(work, { says, here: true })) this.#leave();
  }

  #leave() {
    this.#form.clear();
    this.#fresh = newId();
    this.left();
    this.app.draw();
  }

  /** @param {Piece[]} pieces @param {string} says */
  #store(pieces, says) {
    return this.app.act(() => this.app.shelf.changeBatch(this.id, (one) => ({ ...one, pieces })), { says, here: true });
  }
}

/** Its cure is in the bowl, for the meat that was listed then. @param {Batch} batch */
const isWeighed = ({ put_in, ticks }) => Boolean(put_in) || ticks.some(({ of }) => of.startsWith('cure:'));

/** The bag a size lies in; nought while all lie in one. @param {Piece | undefined} piece */
const bagOf = (piece) => piece?.bag ?? 0;

/**
 * A batch without one of its size classes: what the log of the fire says of the others stays with them.
 * @param {Batch} batch
 * @param {number} at
 * @returns {Partial<Batch>}
 */
function without({ pieces, fire, ticks }, at) {
  const moved = (/** @type {number} */ place) => (place > at ? place - 1 : place);
  // Drawn from the cure, wrapped, pulled from the fire: ticks that name their class by its place.
  const rest = {
    pieces: pieces.toSpliced(at, 1),
    ticks: ticks.flatMap((tick) => {
      const [of, place] = /^(?:draw|rinse|dry|pull|wrap):/.test(tick.of) ? tick.of.split(':') : [];
      if (!of) return tick;
      return Number(place) === at ? [] : { ...tick, of: `${of}:${moved(Number(place))}` };
    }),
  };
  if (!fire) return rest;
  const shares = fire.shares?.filter((pair) => !pair.includes(at)).map(([own, by]) => [moved(own), moved(by)]);
  return {
    ...rest,
    fire: {
      ...fire,
      ...(shares && { shares: /** @type {[number, number][]} */ (shares) }),
      readings: fire.readings
        .filter((one) => one.class !== at)
        .map((one) => (one.class === undefined ? one : { ...one, class: moved(one.class) })),
    },
  };
}
