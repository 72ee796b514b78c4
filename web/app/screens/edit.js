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
import { EATEN, METHODS, takesShare } from '../../words/en/names.js';
import { missing } from './batch.js';
import { initials } from './recipes.js';
import { NEW, ONE, TURNED, WRITE } from '../../words/en/recipes.js';

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

/** What is at fault in the recipe that is opened next: its place among the lines, or its cures. @type {number | 'cures' | null} */
let fault = null;

/** Opens the recipe where it is to be mended. @param {App} app @param {string} id @param {number | 'cures'} where */
export function toFault(app, id, where) {
  fault = where;
  app.go(`#/recipe/${id}/edit`);
}

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
      method === 'cover_brine' ? TURNED.cover : takesShare(method) ? TURNED.share : TURNED.other,
    );

  function draw() {
    const recipe = app.shelf.recipes.get(id);
    if (!recipe) return missing(ONE.missing);
    const on = (/** @type {Read} */ read, /** @type {(r: Recipe, value: string | null) => Recipe} */ change) => ({
      typed: app.draw,
      left: left(read, change),
    });
    const answer = ask('card', { recipe, settings: app.settings });
    if (answer.ok) sayVerdict(app, answer.ok.verdict);

    const leaf = html`<div class="leaf">
      ${errorSummary(form)} ${refused.map(({ message }) => html`<div role="alert">${wrong('refused', message)}</div>`)}
      <h1 tabindex="-1">${recipe.name === NEW ? NEW : ONE.change}</h1>
      <p class="small near">${WRITE.about}</p>
      ${field(
        form,
        { key: 'name', label: WRITE.name, stored: recipe.name, look: 'words' },
        on({ key: 'name', label: WRITE.theName, kind: 'name', stored: recipe.name }, (r, name) => ({
          ...r,
          name: name ?? r.name,
          // It follows the name until the writer gives another.
          tag: (r.tag === initials(r.name) && initials(name ?? '')) || r.tag,
        })),
      )}
      ${field(
        form,
        { key: 'tag', label: WRITE.tag, hint: WRITE.tagHint, stored: recipe.tag, look: 'words' },
        on({ key: 'tag', label: WRITE.theTag, kind: 'tag', stored: recipe.tag }, (r, tag) => ({
          ...r,
          tag: tag ?? r.tag,
        })),
      )}
      ${pick(
        {
          name: 'method',
          legend: WRITE.method,
          look: 'long',
          options: Object.entries(METHODS),
          value: recipe.method,
        },
        (method) => turnTo(/** @type {Recipe['method']} */ (method)),
      )}
      ${
        takesShare(recipe.method)
          ? field(
              form,
              {
                key: 'take',
                label: WRITE.take,
                hint: WRITE.takeHint,
                unit: '%',
                stored: recipe.take ?? '',
                look: 'small',
              },
              on(
                {
                  key: 'take',
                  label: WRITE.take,
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
        { name: 'eaten', legend: WRITE.eaten, look: 'long', options: Object.entries(EATEN), value: recipe.eaten },
        (eaten) => set((r) => ({ ...r, eaten: /** @type {Recipe['eaten']} */ (eaten) })),
      )}
      <section class="block cures">
        <h2>${WRITE.cure}</h2>
        ${cures(recipe)}
      </section>
      <section class="block">
        <h2>${WRITE.lines}</h2>
        ${lines(recipe)}
      </section>
      ${settle(answer.ok?.verdict.may_hold.filter(({ why }) => why.startsWith('not_read')) ?? [], set)}
      <section class="block">
        <h2>${WRITE.steps}</h2>
        ${steps(recipe)}
      </section>
      <div class="field">
        <label for="f-notes">${WRITE.notes}<span class="opt">${WRITE.mayBeEmpty}</span></label>
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
      <div class="block"><a class="btn main wide" href="#/recipe/${id}">${WRITE.done}</a></div>
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>${WRITE.stands}</h2>
        ${answered(
          app,
          answer,
          (card) =>
            html`<div class="gap">${verdictStrip(card.verdict)}</div>
              ${evidence(card.verdict)} ${nextSteps(card.verdict)} ${cardTable(card)} ${cardSteps(card)}
              ${cautions(card.cautions)}`,
        )}
      </div>
    </div>`;
    return {
      title: recipe.name === NEW ? NEW : WRITE.change(recipe.name),
      back: { href: `#/recipe/${id}`, text: WRITE.back },
      view: [leaf, plate],
    };
  }

  /** What was left in the middle is read as if its field were left now: stored, or marked. */
  const arrive = () => {
    for (const key of form.typed) document.getElementById(form.id(key))?.dispatchEvent(new Event('change'));
    const at = fault;
    fault = null;
    if (at === null) return;
    const groups = document.querySelectorAll(at === 'cures' ? '.cures' : '.line-group');
    const field = groups[at === 'cures' ? 0 : at]?.querySelector('input, button');
    field?.scrollIntoView({ block: 'center' });
    /** @type {HTMLElement | null | undefined} */ (field)?.focus();
  };

  return { draw, arrive };
}
