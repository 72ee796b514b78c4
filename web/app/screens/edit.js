/** Writes a recipe. What reads is stored at once; what does not read stays in its field, marked. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { answered } from '../widgets/answer.js';
import { cardSteps, cardTable } from '../widgets/card.js';
import { cureFields } from '../widgets/edit-cures.js';
import { lineFields } from '../widgets/edit-lines.js';
import { stepFields } from '../widgets/edit-steps.js';
import { field, wrong } from '../widgets/field.js';
import { Form, errorSummary } from '../widgets/form.js';
import { pick } from '../widgets/pick.js';
import { settle } from '../widgets/settle.js';
import { cautions, evidence, nextSteps, sayVerdict, verdictStrip } from '../widgets/verdict.js';
import { EATEN, METHODS, takesShare } from '../words/names.js';
import { missing } from './batch.js';
import { NEW, initials } from './recipes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */
/** @typedef {import('../widgets/form.js').Read} Read */

/**
 * What the parts of the form work with.
 * @typedef {object} Editor
 * @property {App} app
 * @property {Form} form
 * @property {(change: (recipe: Recipe) => Recipe, undo?: string) => Promise<boolean>} set stores a change of the recipe
 * @property {(field: Read, change: (recipe: Recipe, value: string | null) => Recipe) => () => void} left stores a field
 */

/** @param {App} app @param {import('../router.js').Place} place @returns {import('../app.js').Screen} */
export function edit(app, { id }) {
  const form = new Form('f', `edit.${id}`);
  /** @type {Editor} */
  const editor = { app, form, set, left };
  const cures = cureFields(editor);
  const lines = lineFields(editor);
  const steps = stepFields(editor);
  /** @type {import('../core.js').Problem[]} what keeps the last change from being stored */
  let refused = [];

  /** A tap on a button also leaves the field before it: the second change is made of what the first has left. */
  let turn = Promise.resolve(true);
  /** @type {Editor['set']} */
  function set(change, undo) {
    turn = turn.then(() => put(change, undo));
    return turn;
  }

  /** @type {Editor['set']} */
  async function put(change, undo) {
    const was = app.shelf.recipes.get(id);
    if (!was) return false;
    refused = ask('check', { recipe: change(was) }).problems ?? [];
    if (refused.length > 0) {
      app.draw();
      return false;
    }
    return app.act(() => app.shelf.changeRecipe(id, change), undo ? { says: undo, here: true } : undefined);
  }

  /** @type {Editor['left']} */
  function left(read, change) {
    return async () => {
      const values = form.read([read], app.settings.units);
      if (values && (await set((recipe) => change(recipe, values[read.key] ?? null)))) {
        form.drop(read.key);
      } else if (refused.length > 0) {
        // It reads, but it does not go with the rest: said at the field, which keeps what was typed.
        form.mark(refused.map((problem) => ({ ...problem, field: read.key })));
        refused = [];
      }
      app.draw();
    };
  }

  /** @param {Recipe['method']} method */
  const turnTo = (method) =>
    set(
      (recipe) => ask('turned', { recipe, method }).ok?.recipe ?? recipe,
      method === 'cover_brine'
        ? 'The method is changed. Salt and sugar now count on meat and water.'
        : takesShare(method)
          ? 'The method is changed. Salt and sugar now count on the water, so that as much of them comes into the meat.'
          : 'The method is changed. Look at what each share is of.',
    );

  function draw() {
    const recipe = app.shelf.recipes.get(id);
    if (!recipe) return missing('This recipe');
    const on = (/** @type {Read} */ read, /** @type {(r: Recipe, value: string | null) => Recipe} */ change) => ({
      typed: app.draw,
      left: left(read, change),
    });
    const answer = ask('card', { recipe, settings: app.settings });
    if (answer.ok) sayVerdict(app, answer.ok.verdict);

    const leaf = html`<div class="leaf">
      ${errorSummary(form)} ${refused.map(({ message }) => html`<div role="alert">${wrong('refused', message)}</div>`)}
      <h1 tabindex="-1">${recipe.name === NEW ? NEW : 'Change the card'}</h1>
      <p class="small near">
        Every entry is stored when you leave its field. Batches under way keep the card they began with.
      </p>
      ${field(
        form,
        { key: 'name', label: 'Name', stored: recipe.name, look: 'words' },
        on({ key: 'name', label: 'The name', kind: 'name', stored: recipe.name }, (r, name) => ({
          ...r,
          name: name ?? r.name,
          // It follows the name until the writer gives another.
          tag: (r.tag === initials(r.name) && initials(name ?? '')) || r.tag,
        })),
      )}
      ${field(
        form,
        { key: 'tag', label: 'Tag', hint: 'Two capital letters, for the bag.', stored: recipe.tag, look: 'words' },
        on({ key: 'tag', label: 'The tag', kind: 'tag', stored: recipe.tag }, (r, tag) => ({
          ...r,
          tag: tag ?? r.tag,
        })),
      )}
      ${pick({ name: 'method', legend: 'Method', options: Object.entries(METHODS), value: recipe.method }, (method) =>
        turnTo(/** @type {Recipe['method']} */ (method)),
      )}
      ${
        takesShare(recipe.method)
          ? field(
              form,
              {
                key: 'take',
                label: 'How much of the brine goes in',
                hint: 'By pump or by pick-up, per cent of green weight.',
                unit: '%',
                stored: recipe.take ?? '',
                look: 'small',
              },
              on(
                {
                  key: 'take',
                  label: 'How much of the brine goes in',
                  kind: 'share',
                  unit: '%',
                  stored: recipe.take ?? '',
                },
                (r, take) => ({ ...r, take: take ?? r.take }),
              ),
            )
          : nothing
      }
      ${pick(
        { name: 'eaten', legend: 'How is it eaten', look: 'long', options: Object.entries(EATEN), value: recipe.eaten },
        (eaten) => set((r) => ({ ...r, eaten: /** @type {Recipe['eaten']} */ (eaten) })),
      )}
      <section class="block">
        <h2>Cure</h2>
        ${cures(recipe)}
      </section>
      <section class="block">
        <h2>What else is weighed</h2>
        ${lines(recipe)}
      </section>
      ${settle(answer.ok?.verdict.may_hold.filter(({ why }) => why === 'not_read') ?? [], set)}
      <section class="block">
        <h2>Steps after weighing</h2>
        ${steps(recipe)}
      </section>
      <div class="field">
        <label for="f-notes">Remarks for next time<span class="opt"> (may be left empty)</span></label>
        <textarea
          id="f-notes"
          rows="3"
          .value=${form.text('notes', recipe.notes)}
          @input=${(/** @type {{ target: HTMLTextAreaElement }} */ { target }) => form.type('notes', target.value)}
          @change=${async () => {
            if (await set((r) => ({ ...r, notes: form.text('notes', r.notes) }))) form.drop('notes');
          }}
        ></textarea>
      </div>
      <div class="block"><a class="btn main wide" href="#/recipe/${id}">Done</a></div>
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>The card as it stands</h2>
        ${answered(
          app,
          answer,
          (card) =>
            html`<div class="gap">${verdictStrip(card.verdict)}</div>
              ${evidence(card.verdict)} ${nextSteps(card.verdict)} ${cardTable(card)} ${cardSteps(card.steps)}
              ${cautions(card.cautions)}`,
        )}
      </div>
    </div>`;
    return {
      title: recipe.name === NEW ? NEW : `Change ${recipe.name}`,
      back: { href: `#/recipe/${id}`, text: 'The card' },
      view: [leaf, plate],
    };
  }

  /** What was left in the middle is read as if its field were left now: stored, or marked. */
  const arrive = () => {
    for (const key of form.typed) document.getElementById(form.id(key))?.dispatchEvent(new Event('change'));
  };

  return { draw, arrive };
}
