/** The card of a recipe, for any weight, and everything to hand it on. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { answered, problemStrip } from '../widgets/answer.js';
import { printed } from '../widgets/batch-head.js';
import { cardAims, cardFoot, cardSteps, cardTable } from '../widgets/card.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { cutOf, howThick, untilOf } from '../widgets/how-long.js';
import { HandOn, toSend } from '../widgets/hand-on.js';
import { tagMark } from '../widgets/icon.js';
import { oddWeight } from '../widgets/odd-weight.js';
import { settle } from '../widgets/settle.js';
import { unread } from '../widgets/thick-step.js';
import { why } from '../widgets/why.js';
import { cautions, evidence, isAmiss, nextSteps, strip, verdictStrip } from '../widgets/verdict.js';
import { EATEN, METHODS, UNITS } from '../../words/en/names.js';
import { glue } from '../../words/glue.js';
import { TOO_COARSE, coarseWords } from '../../words/en/weigh.js';
import { missing } from './batch.js';
import { toFault } from './edit.js';
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
    // What the scale cannot weigh has a way of its own.
    const coarse =
      draft && values?.weight
        ? (ask('weigh_out', { batch: draft.batch, settings: app.settings }).ok?.coarse ?? null)
        : null;
    // A dose that must not be weighed out stands before its figures, with the way out.
    const bad = isAmiss(verdict);
    const leaf = html`<div class="leaf">
      <div class="head">
        ${tagMark(recipe.tag)}
        <h1 tabindex="-1">${recipe.name}</h1>
        <p>${underHead(METHODS[recipe.method], EATEN[recipe.eaten])} ${printed()}</p>
      </div>
      <div class="acts gap noprint">
        ${handOn.button(recipe)}
        <button type="button" class="btn quiet less" @click=${toSend}>${ONE.otherWays}</button>
      </div>
      ${
        verdict && bad && !(coarse && !verdict.held)
          ? html`<div class="gap">${verdictStrip(verdict)}</div>
              ${
                verdict.aim
                  ? html`<div class="gap noprint">
                      <button type="button" class="btn main wide" @click=${() => aimAt(verdict.aim ?? '')}>
                        ${ONE.setTo(verdict.aim)}
                      </button>
                    </div>`
                  : verdict.may_hold.length || coarse || !recipe.cures.length
                    ? nothing
                    : html`<div class="gap noprint">
                        <button type="button" class="btn main wide" @click=${() => toFault(app, id, 'cures')}>
                          ${ONE.toCure}
                        </button>
                      </div>`
              }`
          : nothing
      }
      ${coarse ? tooCoarse(coarse, recipe, values, draft) : nothing}
      ${verdict ? settle(verdict.may_hold, settled, { toFault: mend }) : nothing}
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
      ${draft && values?.weight ? oddWeight(form, draft, units, app.draw, 'weight') : nothing}
      ${draft ? html`<div class="noprint">${howThick(app, form, draft, untilOf(form, draft, app.settings, app.now()))}</div>` : nothing}
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
          ? answered(app, answer, (card) => html`${cardTable(card)} ${cardSteps(card)} ${cardFoot(card, recipe)}`)
          : html`<div class="gap">${problemStrip(app, form.problems)}</div>`
      }
      ${recipe.steps.length ? nothing : noSteps(recipe)}
      <div class="block noprint">
        <button type="button" class="btn ${bad ? '' : 'main'} wide" @click=${() => start(recipe, values, draft)}>
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
              ${why('recipe', html`${cardAims(answer.ok)} ${evidence(answer.ok.verdict)}`)}
              ${nextSteps(answer.ok.verdict)}`
            : html`<p class="gap">${ONE.noDose}</p>`
        }
        ${handOn.draw(recipe)} ${answer?.ok ? cautions(answer.ok.cautions) : nothing}
      </div>
    </div>`;
    return { title: recipe.name, back: { href: '#/recipes', text: LIST.title }, view: [leaf, plate] };
  }

  /** To where the recipe says what keeps it from being used. @param {import('../types').MayHold} one */
  const mend = ({ why, at }) => toFault(app, id, why === 'not_read_says_so' ? 'cures' : at);

  /**
   * @param {import('../types').Coarse} coarse @param {Recipe} recipe
   * @param {Record<string, string | null> | null} values @param {import('../types').Draft | undefined} draft
   */
  const tooCoarse = (coarse, recipe, values, draft) =>
    html`<div class="gap noprint">
      ${strip(
        'care',
        TOO_COARSE,
        glue(coarseWords(coarse)),
        coarse.premix_parts
          ? html`<div class="acts">
              <button type="button" class="btn main less" @click=${() => start(recipe, values, draft, true)}>
                ${ONE.startMix(coarse.premix_parts)}
              </button>
            </div>`
          : nothing,
      )}
    </div>`;

  /**
   * With the weight, the cut and the thickness that are typed here; what cannot be read is put right first.
   * @param {Recipe} recipe @param {Record<string, string | null> | null} values @param {import('../types').Draft | undefined} draft @param {boolean} [premix]
   */
  function start(recipe, values, draft, premix = false) {
    if (!values || unread(form)) {
      document.getElementById(values ? 'f-thick' : form.id(form.problems[0]?.field ?? 'weight'))?.focus();
      return;
    }
    if (!values['weight']) return begin(app, recipe);
    const counted = (/** @type {import('../types').Piece} */ { about: _, ...piece }) => ({
      ...piece,
      count: Number(values['pieces']),
    });
    const pieces = draft?.batch.pieces ?? [];
    return begin(app, recipe, values['pieces'] ? pieces.map(counted) : pieces, premix);
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
