/** Recipes: find one, write a new one, copy, delete, or open one that was handed on. */
import { html, nothing } from 'lit-html';
import { newId } from '../shelf.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { icon, tagMark } from '../widgets/icon.js';
import { METHODS, count } from '../words/names.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */

/** From so many cards on a search is worth its place. */
const MANY = 6;

/** Name of a card that is just begun. */
export const NEW = 'New card';

/** A plain rub to begin from: salt by weight, cold, rinse, cook through, chill. No cure until the writer adds it. */
/** @type {Recipe} */
const BLANK = {
  name: NEW,
  tag: 'NC',
  method: 'rub',
  eaten: 'cooked',
  cures: [],
  lines: [{ item: 'salt-sea-fine', share: { of: 'green_weight', amount: '2.2 %' } }],
  steps: [
    { do: 'cure', lasts: '36 h', turn_every: '12 h', at: '3 °C' },
    { do: 'rinse' },
    { do: 'cook', until: '74 °C' },
    { do: 'chill', at: '4 °C' },
    { do: 'pack' },
  ],
};

/** @param {App} app @returns {import('../app.js').Screen} */
export function recipes(app) {
  const form = new Form();
  let tidying = false;

  const write = async () => {
    const id = newId();
    const kept = await app.act(() => app.shelf.store.put(`recipe/${id}`, BLANK), {
      says: 'A new card is begun.',
      back: () => app.shelf.store.remove(`recipe/${id}`),
    });
    if (kept) app.go(`#/recipe/${id}/edit`);
  };

  const open = (/** @type {Event} */ event) => {
    event.preventDefault();
    const text = form.text('link').trim();
    if (text) app.go(`#/open`, {});
    if (text) pasted.text = text;
  };

  function draw() {
    const wanted = form.text('search').trim().toLocaleLowerCase('en');
    const all = app.shelf.cards();
    const found = all.filter(([, recipe]) => `${recipe.name} ${recipe.tag}`.toLocaleLowerCase('en').includes(wanted));
    const view = html`<div class="leaf">
      <h1 tabindex="-1">Recipes</h1>
      ${
        all.length >= MANY || wanted
          ? field(form, { key: 'search', label: 'Find a card', look: 'words' }, { typed: app.draw })
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
                    >${METHODS[recipe.method]}, ${count(recipe.cures.length + recipe.lines.length, 'line')},
                    ${count(recipe.steps.length, 'step')}</span
                  ></span
                >${icon('s-go')}</a
              >
              ${
                tidying
                  ? html`<div class="acts">
                      <button type="button" class="btn quiet less" @click=${() => copyRecipe(app, recipe)}>
                        Copy<span class="vh"> ${recipe.name}</span>
                      </button>
                      <button type="button" class="btn quiet less" @click=${() => deleteRecipe(app, id)}>
                        Delete<span class="vh"> ${recipe.name}</span>
                      </button>
                    </div>`
                  : nothing
              }
            </div>`,
        )}
      </div>
      ${
        found.length === 0
          ? html`<p class="gap">${wanted ? 'No card has that in its name.' : 'There is no card here yet.'}</p>`
          : nothing
      }
      <div class="block pair">
        <button
          type="button"
          class="btn quiet"
          aria-pressed=${tidying ? 'true' : 'false'}
          @click=${() => {
            tidying = !tidying;
            app.draw();
          }}
        >
          ${tidying ? 'Done' : 'Copy or delete'}
        </button>
        <button type="button" class="btn main" @click=${write}>Write a new one</button>
      </div>
      <form class="block" novalidate @submit=${open}>
        <h2>Somebody gave you one?</h2>
        ${field(
          form,
          {
            key: 'link',
            label: 'Paste the link or the code',
            hint: 'It is shown first, and kept only if you say so.',
            look: 'words',
          },
          { typed: app.draw },
        )}
        <div class="gap"><button type="submit" class="btn wide">Look at it</button></div>
      </form>
    </div>`;
    return { title: 'Recipes', back: { href: '#/today', text: 'Today' }, one: true, view };
  }

  return { draw };
}

/** A link that was pasted, for the screen that opens it. */
export const pasted = { text: '' };

/** @param {App} app @param {Recipe} recipe @returns {Promise<string | null>} id of the copy */
export async function copyRecipe(app, recipe) {
  const id = newId();
  const copy = copyOf(app, recipe);
  const kept = await app.act(() => app.shelf.store.put(`recipe/${id}`, copy), {
    says: `${copy.name} is written.`,
    back: () => app.shelf.store.remove(`recipe/${id}`),
  });
  return kept ? id : null;
}

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
export const withAim = (recipe, aim) => ({ ...recipe, cures: recipe.cures.map((cure) => ({ ...cure, aim })) });

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
  return app.act(() => app.shelf.store.remove(`recipe/${id}`), {
    says: `${recipe?.name ?? 'The card'} is deleted. Batches begun with it keep their own copy.`,
    back: () => app.shelf.store.put(`recipe/${id}`, recipe),
  });
}

/**
 * A name no other card has: `Hare, copy`, `Hare, copy 2`. Names end at 60 characters.
 * @param {App} app
 * @param {string} name
 */
function freeName(app, name) {
  const taken = new Set(app.shelf.cards().map(([, recipe]) => recipe.name));
  for (let n = 1; ; n++) {
    const end = n === 1 ? ', copy' : `, copy ${n}`;
    const free = [...name].slice(0, 60 - end.length).join('') + end;
    if (!taken.has(free)) return free;
  }
}
