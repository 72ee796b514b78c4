/** A recipe that was handed on: shows it and its verdict, reckoned here, and asks before it keeps anything. */
import { html, nothing } from 'lit-html';
import { ask, failed } from '../ask.js';
import { newId } from '../shelf.js';
import { answered, problemStrip } from '../widgets/answer.js';
import { cardFoot, cardSteps, cardTable } from '../widgets/card.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { tagMark } from '../widgets/icon.js';
import { cautions, evidence, nextSteps, strip, verdictStrip } from '../widgets/verdict.js';
import { EATEN, METHODS } from '../words/names.js';
import { canonical } from '../records.js';
import { copyOf, pasted } from './recipes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */

/** @param {App} app @param {import('../router.js').Place} place @returns {import('../app.js').Screen} */
export function open(app, { part }) {
  const form = new Form();
  let text = part || pasted.text;
  pasted.text = '';
  const back = { href: '#/recipes', text: 'Recipes' };

  function draw() {
    const title = 'A recipe that was handed on';
    if (!text)
      return {
        title,
        back,
        one: true,
        view: html`<div class="leaf">
          <h1 tabindex="-1">${title}</h1>
          ${again()}
        </div>`,
      };
    const { ok, problems } = ask('open_link', { text });
    if (!ok) return { title, back, one: true, view: unreadable(problems) };
    return { title: ok.recipe.name, back, view: shown(ok.recipe) };
  }

  /** @param {import('../core.js').Problem[]} problems */
  function unreadable(problems) {
    return html`<div class="leaf">
      <h1 tabindex="-1">This link cannot be opened</h1>
      <div class="gap">
        ${
          failed(problems)
            ? problemStrip(app, problems)
            : strip(
                'care',
                'Not a whole recipe',
                html`${problems.map(({ message }) => html`<span>${message} </span>`)}`,
              )
        }
      </div>
      <p class="gap">
        Nothing was kept or changed. Ask for the link once more, whole, or scan the square from the other screen.
      </p>
      ${again()}
      <div class="block"><a class="btn quiet wide" href="#/today">Go to Today</a></div>
    </div>`;
  }

  function again() {
    return html`<form
      novalidate
      @submit=${(/** @type {Event} */ event) => {
        event.preventDefault();
        text = form.text('link').trim();
        app.draw();
      }}
    >
      ${field(form, { key: 'link', label: 'Paste the link or the code', look: 'words' }, { typed: app.draw })}
      <div class="gap"><button type="submit" class="btn wide">Look at it</button></div>
    </form>`;
  }

  /** @param {Recipe} recipe */
  function shown(recipe) {
    const answer = ask('card', { recipe, settings: app.settings });
    const leaf = html`<div class="leaf">
      <div class="head">
        ${tagMark(recipe.tag)}
        <h1 tabindex="-1">${recipe.name}</h1>
        <p>Handed on to you. ${METHODS[recipe.method]}. ${EATEN[recipe.eaten]}.</p>
      </div>
      ${question(recipe)}
      ${answered(app, answer, (card) => html`${cardTable(card)} ${cardSteps(card.steps)} ${cardFoot(card, recipe)}`)}
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>Dose it aims at</h2>
        <p class="small">Reckoned here and now from the figures on the card, by your rule and on your scale.</p>
        ${
          answer.ok
            ? html`<div class="gap">${verdictStrip(answer.ok.verdict)}</div>
                ${evidence(answer.ok.verdict)} ${nextSteps(answer.ok.verdict)} ${cautions(answer.ok.cautions)}`
            : nothing
        }
      </div>
    </div>`;
    return [leaf, plate];
  }

  /** @param {Recipe} recipe */
  function question(recipe) {
    const same = app.shelf.cards().filter(([, one]) => one.name === recipe.name);
    const equal = same.find(([, one]) => canonical(one) === canonical(recipe));
    if (equal) {
      return html`<p class="gap">You have this very card already.</p>
        <div class="pair gap">
          <a class="btn main" href="#/recipe/${equal[0]}">Open mine</a>
          <a class="btn quiet" href="#/today">Not now</a>
        </div>`;
    }
    if (same[0]) {
      const [mine, was] = same[0];
      return html`<p class="gap">You have another card called <b>${recipe.name}</b>. What shall become of it?</p>
        <div class="pair gap">
          <button type="button" class="btn" @click=${() => keep(newId(), copyOf(app, recipe))}>Keep both</button>
          <button type="button" class="btn" @click=${() => keep(mine, recipe, was)}>Replace mine</button>
          <a class="btn quiet" href="#/today">Not now</a>
        </div>`;
    }
    return html`<p class="gap">Nothing is kept until you say so.</p>
      <div class="pair gap">
        <button type="button" class="btn main" @click=${() => keep(newId(), recipe)}>Keep this recipe</button>
        <a class="btn quiet" href="#/today">Not now</a>
      </div>`;
  }

  /** @param {string} id @param {Recipe} recipe @param {Recipe} [was] */
  async function keep(id, recipe, was) {
    const { store } = app.shelf;
    const kept = await app.act(() => store.put(`recipe/${id}`, recipe), {
      says: was ? `${recipe.name} is replaced.` : `${recipe.name} is kept.`,
      back: () => (was ? store.put(`recipe/${id}`, was) : store.remove(`recipe/${id}`)),
    });
    // The way back must not lead to the question again.
    if (kept) app.go(`#/recipe/${id}`, { replace: true });
  }

  return { draw };
}
