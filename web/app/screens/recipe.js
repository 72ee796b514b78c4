/** The card of a recipe, for any weight, and everything to hand it on. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { answered, problemStrip } from '../widgets/answer.js';
import { printed } from '../widgets/batch-head.js';
import { cardFoot, cardSteps, cardTable } from '../widgets/card.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { cutOf, howThick, untilOf } from '../widgets/how-long.js';
import { HandOn, toSend } from '../widgets/hand-on.js';
import { tagMark } from '../widgets/icon.js';
import { settle } from '../widgets/settle.js';
import { cautions, evidence, nextSteps, strip, verdictStrip } from '../widgets/verdict.js';
import { EATEN, METHODS, UNITS } from '../../words/en/names.js';
import { missing } from './batch.js';
import { cardForm, copyRecipe, deleteRecipe, withAim } from './recipes.js';
import { begin } from './start.js';
import { FEWER_MORE, LIST, ONE, underHead } from '../../words/en/recipes.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */

/** @param {App} app @param {import('../router.js').Place} place @returns {import('../app.js').Screen} */
export function recipe(app, { id }) {
  const form = new Form('f', cardForm(id));
  const handOn = new HandOn(app);

  function draw() {
    const recipe = app.shelf.recipes.get(id);
    if (!recipe) return missing(ONE.missing);
    const { units } = app.settings;
    const unit = UNITS[units].mass;
    const byPiece = recipe.lines.some(({ share }) => share.of === 'piece');
    const values = form.read(
      [
        { key: 'weight', label: ONE.weight, kind: 'mass', unit, optional: true },
        ...(byPiece ? [{ key: 'pieces', label: ONE.pieces, kind: /** @type {const} */ ('count'), stored: '1' }] : []),
      ],
      units,
    );
    const answer = values
      ? ask('card', {
          recipe,
          settings: app.settings,
          ...(values.weight && { weight: values.weight }),
          ...(values.pieces && { pieces: Number(values.pieces) }),
          ...(form.text('cut') && { cut: form.text('cut') }),
        })
      : null;
    const verdict = answer?.ok?.verdict;
    const weight = values?.weight ?? '1 kg';
    const draft = ask('draft', { recipe, settings: app.settings, weight, ...cutOf(form) }).ok;
    // A dose that must not be weighed out stands before its figures, with the way out.
    const bad = verdict?.mark === 'stop' || verdict?.mark === 'care';
    const leaf = html`<div class="leaf">
      <div class="head">
        ${tagMark(recipe.tag)}
        <h1 tabindex="-1">${recipe.name}</h1>
        <p>${underHead(METHODS[recipe.method], EATEN[recipe.eaten])} ${printed()}</p>
      </div>
      <div class="acts gap noprint">
        <button type="button" class="btn quiet less" @click=${toSend}>${ONE.send}</button>
      </div>
      ${
        verdict && bad
          ? html`<div class="gap">${verdictStrip(verdict)}</div>
              ${
                verdict.aim
                  ? html`<div class="gap noprint">
                      <button type="button" class="btn main wide" @click=${() => aimAt(verdict.aim ?? '')}>
                        ${ONE.setTo(verdict.aim)}
                      </button>
                    </div>`
                  : nothing
              }`
          : nothing
      }
      ${verdict ? settle(verdict.may_hold, settled) : nothing}
      ${field(
        form,
        {
          key: 'weight',
          label: ONE.weight,
          hint: unit ? ONE.grams : ONE.pounds,
          unit,
        },
        { typed: app.draw },
      )}
      ${draft ? html`<div class="noprint">${howThick(app, form, draft, untilOf(draft, app.settings, app.now()))}</div>` : nothing}
      ${
        byPiece
          ? field(
              form,
              { key: 'pieces', label: ONE.inPieces, stored: '1', stepper: FEWER_MORE, least: 1 },
              { typed: app.draw },
            )
          : nothing
      }
      ${
        answer
          ? answered(app, answer, (card) => html`${cardTable(card)} ${cardSteps(card.steps)} ${cardFoot(card, recipe)}`)
          : html`<div class="gap">${problemStrip(app, form.problems)}</div>`
      }
      ${recipe.steps.length ? nothing : noSteps(recipe)}
      <div class="block noprint">
        <button type="button" class="btn ${bad ? '' : 'main'} wide" @click=${() => begin(app, recipe)}>
          ${ONE.start}
        </button>
        <div class="acts gap">
          <a class="btn quiet less" href="#/recipe/${id}/edit">${ONE.change}</a>
          <button type="button" class="btn quiet less" @click=${copy}>${ONE.duplicate}</button>
          <button type="button" class="btn quiet less" @click=${remove}>${ONE.delete}</button>
        </div>
      </div>
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>${ONE.dose}</h2>
        ${
          answer?.ok
            ? html`${bad ? nothing : html`<div class="gap">${verdictStrip(answer.ok.verdict)}</div>`}
              ${evidence(answer.ok.verdict)} ${nextSteps(answer.ok.verdict)}`
            : html`<p class="gap">${ONE.noDose}</p>`
        }
        ${handOn.draw(recipe)} ${answer?.ok ? cautions(answer.ok.cautions) : nothing}
      </div>
    </div>`;
    return { title: recipe.name, back: { href: '#/recipes', text: LIST.title }, view: [leaf, plate] };
  }

  /** A card without steps plans nothing. @param {Recipe} card */
  function noSteps(card) {
    const like = app.shelf
      .cards()
      .filter(([, { method, steps }]) => method === card.method && steps.length > 0)
      .slice(0, 3);
    return html`<div class="block noprint">
      ${strip(
        'care',
        ONE.noSteps,
        ONE.planNothing,
        html`<div class="acts">
          ${like.map(
            ([, { name, steps }]) =>
              html`<button type="button" class="btn less" @click=${() => takeSteps(card, name, steps)}>
                ${ONE.stepsAs(name)}
              </button>`,
          )}
        </div>`,
      )}
    </div>`;
  }

  /** @param {Recipe} card @param {string} name @param {Recipe['steps']} steps */
  function takeSteps(card, name, steps) {
    return app.act(() => app.shelf.changeRecipe(id, () => ({ ...card, steps })), {
      says: ONE.stepsTaken(name),
      here: true,
    });
  }

  /** @param {string} aim */
  const aimAt = (aim) => {
    const recipe = app.shelf.recipes.get(id);
    if (!recipe) return;
    return app.act(() => app.shelf.changeRecipe(id, () => withAim(recipe, aim)), {
      says: ONE.isSet(aim),
      here: true,
    });
  };

  /** @param {(recipe: Recipe) => Recipe} change @param {string} says */
  const settled = (change, says) => {
    const recipe = app.shelf.recipes.get(id);
    if (!recipe) return;
    return app.act(() => app.shelf.changeRecipe(id, () => change(recipe)), { says, here: true });
  };

  const copy = async () => {
    const recipe = app.shelf.recipes.get(id);
    const made = recipe && (await copyRecipe(app, recipe));
    if (made) app.go(`#/recipe/${made}/edit`);
  };

  const remove = async () => {
    app.go('#/recipes');
    await deleteRecipe(app, id);
  };

  return { draw };
}
