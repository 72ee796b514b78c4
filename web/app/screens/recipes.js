/** Recipes: find one, write a new one, copy, delete, or open one that was handed on. */
import { html, nothing } from 'lit-html';
import { hearPaste } from '../pasted.js';
import { newId } from '../shelf.js';
import { door } from '../widgets/doors.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { icon, tagMark } from '../widgets/icon.js';
import { pinned } from '../widgets/pinned.js';
import { METHODS } from '../../words/en/names.js';
import { LIST, NEW, copyMark, underName } from '../../words/en/recipes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */

/** From so many cards on a search is worth its place. */
const MANY = 6;

/** A plain rub to begin from: salt by weight, cold, rinse, cook through, chill. No cure until the writer adds it. */
/** @type {Recipe} */
const BLANK = {
  name: NEW,
  tag: 'NR',
  method: 'rub',
  eaten: 'cooked',
  cures: [],
  lines: [{ item: 'salt-sea-fine', share: { of: 'green_weight', amount: '2.2 %' } }],
  steps: [
    { do: 'cure', lasts: '36 h', turn_every: '12 h', at: '3 °C' },
    { do: 'rinse' },
    { do: 'cook', until: '74 °C' },
    { do: 'chill', at: '3 °C' },
    { do: 'pack' },
  ],
};

/** @param {App} app @returns {import('../app.js').Screen} */
export function recipes(app) {
  const form = new Form();
  let tidying = false;

  const write = async () => {
    const id = newId();
    const kept = await app.act(() => app.shelf.add(`recipe/${id}`, BLANK), {
      says: LIST.started,
    });
    if (kept) app.go(`#/recipe/${id}/edit`);
  };

  function draw() {
    const wanted = form.text('search').trim().toLocaleLowerCase('en');
    const all = app.shelf.cards();
    const found = all.filter(([, recipe]) => `${recipe.name} ${recipe.tag}`.toLocaleLowerCase('en').includes(wanted));
    const view = html`<div class="leaf">
      ${
        all.length >= MANY || wanted
          ? field(form, { key: 'search', label: LIST.find, look: 'words' }, { typed: app.draw })
          : nothing
      }
      <div class="doors" role="list">
        ${found.map(
          ([id, recipe]) =>
            html`<div role="listitem">
              <a class="tagged" href="#/recipe/${id}"
                >${tagMark(recipe.tag)}<span
                  ><b>${recipe.name}</b
                  ><span class="small"
                    >${underName(METHODS[recipe.method], recipe.cures.length + recipe.lines.length, recipe.steps.length)}</span
                  ></span
                >${icon('s-go')}</a
              >
              ${
                tidying
                  ? html`<div class="acts">
                      <button type="button" class="btn quiet less" @click=${() => copyRecipe(app, recipe)}>
                        ${LIST.duplicate}<span class="vh">${LIST.of(recipe.name)}</span>
                      </button>
                      <button type="button" class="btn quiet less" @click=${() => deleteRecipe(app, id)}>
                        ${LIST.delete}<span class="vh">${LIST.of(recipe.name)}</span>
                      </button>
                    </div>`
                  : nothing
              }
            </div>`,
        )}
      </div>
      ${found.length === 0 ? html`<p class="gap">${wanted ? LIST.noneNamed : LIST.none}</p>` : nothing}
      ${pinned(html`<a class="btn main wide" href="#/read">${LIST.paste}</a>`)}
      <div class="doors slim block">
        <button type="button" @click=${write}>
          <span><b>${LIST.write}</b></span
          >${icon('s-go')}
        </button>
        ${door('#/open', LIST.open)}
        <button
          type="button"
          aria-pressed=${tidying ? 'true' : 'false'}
          @click=${() => {
            tidying = !tidying;
            app.draw();
          }}
        >
          <span><b>${tidying ? LIST.done : LIST.tidy}</b></span>
        </button>
      </div>
    </div>`;
    return { title: LIST.title, name: LIST.title, one: true, view };
  }

  let deaf = () => {};
  return {
    draw,
    arrive() {
      deaf = hearPaste(app);
    },
    leave: () => deaf(),
  };
}

/** @param {App} app @param {Recipe} recipe @returns {Promise<string | null>} id of the copy */
export async function copyRecipe(app, recipe) {
  const id = newId();
  const copy = copyOf(app, recipe);
  const kept = await app.act(() => app.shelf.add(`recipe/${id}`, copy), {
    says: LIST.written(copy.name),
  });
  return kept ? id : null;
}

/** What is typed on the card of a recipe: for how much meat. @param {string} id */
export const cardForm = (id) => `card.${id}`;

/**
 * Under a name of its own, and a tag of its own where the letters of the name have one.
 * @param {App} app
 * @param {Recipe} recipe
 * @returns {Recipe}
 */
export function copyOf(app, recipe) {
  const taken = new Set(app.shelf.cards().map(([, { tag }]) => tag));
  const tags = [...recipe.name.toUpperCase().replace(/[^A-Z]/g, '')].map((letter) => recipe.tag.charAt(0) + letter);
  return { ...recipe, name: freeName(app, recipe.name), tag: tags.find((tag) => !taken.has(tag)) ?? recipe.tag };
}

/**
 * The same card with its one cure weighed for another aim.
 * @param {Recipe} recipe
 * @param {string} aim
 * @returns {Recipe}
 */
export const withAim = (recipe, aim) => ({
  ...recipe,
  cures: recipe.cures.map((cure) => ({ ...cure, aim, follows: false })),
});

/**
 * The first letters of the first two words, where they make a tag: `SC` for `Snipe, cold board`.
 * @param {string} name
 */
export function initials(name) {
  return /^[^a-z]*([a-z])[a-z]*[^a-z]+([a-z])/i.exec(name)?.slice(1).join('').toUpperCase();
}

/** @param {App} app @param {string} id */
export function deleteRecipe(app, id) {
  const recipe = app.shelf.recipes.get(id);
  return app.act(() => app.shelf.remove(`recipe/${id}`), {
    says: LIST.deleted(recipe?.name),
  });
}

/**
 * A name no other card has: `Hare`, `Hare, copy`, `Hare, copy 2`. Names end at 60 characters.
 * @param {App} app
 * @param {string} name
 */
function freeName(app, name) {
  const taken = new Set(app.shelf.cards().map(([, recipe]) => recipe.name));
  for (let n = 0; ; n++) {
    const end = copyMark(n);
    const free = [...name].slice(0, 60 - end.length).join('') + end;
    if (!taken.has(free)) return free;
  }
}
