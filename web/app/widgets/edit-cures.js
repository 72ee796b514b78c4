/** The curing agents of a recipe: which, what the packet says, and what to aim at. */
import { html, nothing } from 'lit-html';
import { INGREDIENTS } from '../../words/en/ingredients.js';
import { mixName, sameMix } from '../../words/en/mixes.js';
import { field } from './field.js';
import { choose, option } from './pick.js';
import { Rows } from './rows.js';
import { CURES } from '../../words/en/recipes.js';

/** @typedef {import('../screens/edit.js').Editor} Editor */
/** @typedef {import('../types').Cure} Cure */
/** @typedef {import('../types').Recipe} Recipe */
/** @typedef {import('../types').Ingredient} Ingredient */

const MOST = 2;
const KINDS = /** @type {const} */ ({ nitrite: 'printed', nitrate: 'printed_nitrate', aim: 'share' });
/** The crate judges any aim; this is the usual one to begin from. */
const AIM = '150 ppm';

/** @param {Editor} editor */
export function cureFields({ app, form, set, left }) {
  const rows = new Rows(form, 'cures');
  // A mix is chosen as it was made; the pantry's word for it says nothing of that.
  // The pure salts are no home cure: they stand here only where a recipe that was read has one.
  const all = app.tables.ingredients.filter(({ group, key }) => group === 'cure' && key !== 'cure-made');
  const agents = all.filter(({ key, nitrite }) => nitrite && !key.startsWith('pure-'));
  const byPacket = all.filter(({ key }) => key === 'cure-packet');

  /** @param {number} at @param {Partial<Cure>} part @returns {(recipe: Recipe) => Recipe} */
  const put = (at, part) => (recipe) => ({
    ...recipe,
    // What is typed is judged as it stands: from then on the aim no longer follows the rule.
    cures: recipe.cures.map((cure, n) => (n === at ? { ...cure, follows: false, ...part } : cure)),
  });

  const add = () => {
    const agent = agents[0];
    if (agent) set((recipe) => ({ ...recipe, cures: [...recipe.cures, freshCure(agent)] }));
  };

  const remove = async (/** @type {number} */ at) => {
    const gone = await set((recipe) => ({ ...recipe, cures: recipe.cures.toSpliced(at, 1) }), CURES.removed);
    if (gone) rows.drop(at);
  };

  /** @param {Recipe} recipe */
  return (recipe) => {
    const names = rows.names(recipe.cures.length);
    return html`${recipe.cures.map((cure, at) => one(cure, at, `cure-${names[at]}`))}
    ${recipe.cures.length === 0 ? html`<p class="near">${CURES.none}</p>` : nothing}
    ${
      recipe.cures.length < MOST
        ? html`<div class="gap"><button type="button" class="btn quiet" @click=${add}>${CURES.add}</button></div>`
        : nothing
    }`;
  };

  /** @param {Cure} cure @param {number} at @param {string} key */
  function one(cure, at, key) {
    /**
     * @param {'nitrite' | 'nitrate' | 'aim'} part
     * @param {string} label
     * @param {string} unit
     * @param {string} [hint]
     */
    const entry = (part, label, unit, hint) =>
      field(
        form,
        { key: `${key}-${part}`, label, hint, unit, stored: cure[part], look: 'small' },
        {
          typed: app.draw,
          left: left({ key: `${key}-${part}`, label, kind: KINDS[part], unit, stored: cure[part] }, (recipe, value) =>
            put(at, { [part]: value ?? cure[part] })(recipe),
          ),
        },
      );
    // The card's own mix first: it may have come with a link, and is not kept here then.
    const kept = app.settings.mixes ?? [];
    const mixes = cure.made ? [cure, ...kept.filter((mix) => !sameMix(mix, cure))] : kept;
    const value = cure.made ? mixName(cure) : cure.item;
    return html`<div class="group" role="group" aria-label=${CURES.nth(at + 1)}>
      ${choose(
        {
          id: `f-${key}-item`,
          label: CURES.agent,
          hint: mixes.length ? undefined : CURES.mixHint,
          value,
          options: [
            ...[...agents, ...byPacket, ...all.filter(({ key }) => key === value && key.startsWith('pure-'))].map(
              ({ key: item }) => option(item, INGREDIENTS[item], item === value),
            ),
            ...mixes.map(mixName).map((name) => option(name, name, name === value)),
          ],
        },
        (item) => {
          const agent = [...agents, ...byPacket].find((a) => a.key === item);
          const fresh = agent ? freshCure(agent) : mixes.find((mix) => mixName(mix) === item);
          if (!fresh) return;
          for (const part of ['nitrite', 'nitrate']) form.drop(`${key}-${part}`);
          // What a packet says is typed: until then the figures stay.
          const figures = agent?.nitrite === '' ? { nitrite: cure.nitrite, nitrate: cure.nitrate } : {};
          set((recipe) => ({ ...recipe, cures: recipe.cures.with(at, { ...fresh, ...figures, aim: cure.aim }) }));
        },
      )}
      <div class="twofold">
        ${entry('nitrite', cure.made ? CURES.nitriteIn : CURES.nitritePrinted, '%')}
        ${entry('nitrate', cure.made ? CURES.nitrateIn : CURES.nitratePrinted, '%')}
      </div>
      ${entry('aim', CURES.aim, 'ppm', CURES.aimHint)}
      <div class="acts gap">
        <button type="button" class="btn quiet less" @click=${() => remove(at)}>${CURES.remove}</button>
      </div>
    </div>`;
  }
}

/** @param {Ingredient} agent @returns {Cure} */
function freshCure({ key, nitrite, nitrate }) {
  const percent = (/** @type {string} */ text) => (text ? (text.includes('%') ? text : `${text} %`) : '0 %');
  return { item: key, nitrite: percent(nitrite), nitrate: percent(nitrate), aim: AIM };
}
