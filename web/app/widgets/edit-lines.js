/** Everything beside the cure: what, how much, of what. */
import { html, nothing } from 'lit-html';
import { allergenNames, INGREDIENTS, itemName } from '../../words/en/ingredients.js';
import { HOLDS } from '../../words/en/may-hold.js';
import { BASES, GROUPS, UNITS } from '../../words/en/names.js';
import { field } from './field.js';
import { choose, option, pick } from './pick.js';
import { Rows, moved, rowActs } from './rows.js';
import { withHolds } from './settle.js';
import { LINES, foundAs } from '../../words/en/recipes.js';

/** @typedef {import('../screens/edit.js').Editor} Editor */
/** @typedef {import('../types').Line} Line */
/** @typedef {import('../types').Share} Share */
/** @typedef {import('../types').Recipe} Recipe */
/** @typedef {import('../types').Ingredient} Ingredient */

/** So many finds are enough to choose from; a longer word narrows them. */
const MOST_FOUND = 8;

/** @param {Editor} editor */
export function lineFields({ app, form, set, left }) {
  const rows = new Rows(form, 'lines');
  const pantry = app.tables.ingredients;

  /** @param {number} at @param {Share} share @returns {(recipe: Recipe) => Recipe} */
  const put = (at, share) => (recipe) => ({
    ...recipe,
    lines: recipe.lines.map((line, n) => (n === at ? { ...line, share } : line)),
  });

  const move = async (/** @type {number} */ at, /** @type {number} */ to) => {
    if (await set((recipe) => ({ ...recipe, lines: moved(recipe.lines, at, to) }))) rows.move(at, to);
    app.draw();
  };

  const remove = async (/** @type {number} */ at, /** @type {string} */ name) => {
    const gone = await set((recipe) => ({ ...recipe, lines: recipe.lines.toSpliced(at, 1) }), LINES.removed(name));
    if (gone) rows.drop(at);
    app.draw();
  };

  /** @param {Pick<Line, 'item' | 'name'>} what @param {boolean} liquid */
  const add = async (what, liquid) => {
    /** @type {Share} */
    const share = { of: 'green_weight', amount: liquid ? '100 %' : '0.5 %' };
    if (await set((recipe) => ({ ...recipe, lines: [...recipe.lines, { ...what, share }] }))) form.drop('find');
    app.draw();
    /** @type {HTMLElement | null} */ (document.querySelector('.line-group:last-of-type input'))?.focus();
  };

  /** @param {Recipe} recipe */
  return (recipe) => {
    const names = rows.names(recipe.lines.length);
    return html`${recipe.lines.map((line, at) => one(line, at, `line-${names[at]}`, recipe.lines.length))} ${finder()}`;
  };

  /** @param {Line} line @param {number} at @param {string} key @param {number} length */
  function one(line, at, key, length) {
    const { share } = line;
    const byPiece = share.of === 'piece';
    const unit = byPiece ? UNITS[app.settings.units].mass : '%';
    const name = itemName(line);
    return html`<div class="group line-group" role="group" aria-label=${name}>
      <h3>${name}</h3>
      <div class="twofold">
        ${field(
          form,
          { key, label: LINES.howMuch, unit, stored: share.amount, look: 'small' },
          {
            typed: app.draw,
            left: left(
              { key, label: LINES.howMuchOf(name), kind: byPiece ? 'mass' : 'share', unit, stored: share.amount },
              (recipe, amount) => put(at, { ...share, amount: amount ?? share.amount })(recipe),
            ),
          },
        )}
        ${choose(
          {
            id: `f-${key}-of`,
            label: LINES.ofWhat,
            value: share.of,
            options: Object.entries(BASES).map(([of, word]) => option(of, word, of === share.of)),
          },
          (of) => {
            form.drop(key);
            // A share and a weight are not the same kind of amount, so the amount begins anew.
            const amount = (of === 'piece') === byPiece ? share.amount : of === 'piece' ? '1 g' : '1 %';
            set(put(at, /** @type {Share} */ ({ of, amount })));
          },
        )}
      </div>
      ${line.name ? packet(line, line.name, at, key) : nothing}
      ${line.item === 'own' ? allergens(line, at, key) : nothing}
      ${rowActs({ name, at, length, move: (to) => move(at, to), remove: () => remove(at, name) })}
    </div>`;
  }

  /** @param {Line} line @param {string} name @param {number} at @param {string} key */
  function packet(line, name, at, key) {
    return pick(
      {
        name: form.id(`${key}-agent`),
        legend: LINES.bag,
        hint: line.agent === 'yes' ? LINES.toCures : undefined,
        look: 'snug',
        options: /** @type {[keyof typeof HOLDS, string][]} */ (Object.entries(HOLDS)),
        value: line.agent ?? 'unknown',
      },
      (agent) => set(withHolds(at, name, agent), LINES.holds(name, HOLDS[agent])),
    );
  }

  /** @param {Line} line @param {number} at @param {string} key */
  function allergens(line, at, key) {
    const typed = `${key}-allergens`;
    const stored = line.allergens ?? '';
    const put = (/** @type {string} */ text) => (/** @type {Recipe} */ recipe) => ({
      ...recipe,
      lines: recipe.lines.map((one, n) => (n === at ? { ...one, allergens: text } : one)),
    });
    return field(
      form,
      {
        key: typed,
        label: LINES.allergens,
        hint: LINES.allergensHint,
        stored,
        look: 'words',
      },
      {
        typed: app.draw,
        left: async () => {
          if (await set(put(form.text(typed, stored).trim()))) form.drop(typed);
        },
      },
    );
  }

  function finder() {
    const text = form.text('find').trim();
    const wanted = text.toLocaleLowerCase('en');
    const found = wanted
      ? pantry
          .filter(({ group }) => group !== 'cure')
          .filter(({ key, names }) =>
            [INGREDIENTS[key], ...names].some((word) => word.toLocaleLowerCase('en').includes(wanted)),
          )
          .slice(0, MOST_FOUND)
      : [];
    return html`<div class="group">
      ${field(
        form,
        {
          key: 'find',
          label: LINES.find,
          hint: LINES.findHint,
          look: 'words',
        },
        { typed: app.draw },
      )}
      ${
        wanted
          ? html`${found.length ? nothing : html`<p class="gap">${LINES.notFound}</p>`}
              <div class="doors" role="group" aria-label=${LINES.found}>
                ${found.map(
                  ({ key, group, allergens: holds }) =>
                    html`<button type="button" @click=${() => add({ item: key }, group === 'liquid')}>
                      <span
                        ><b>${INGREDIENTS[key]}</b
                        ><span class="small">${foundAs(GROUPS[group], allergenNames(holds))}</span></span
                      >
                    </button>`,
                )}
                <button type="button" @click=${() => add({ item: 'own', name: text }, false)}>
                  <span><b>${text}</b><span class="small">${LINES.own}</span></span>
                </button>
              </div>`
          : nothing
      }
    </div>`;
  }
}
