/** A recipe that was handed on: shows it and its verdict, reckoned here, and asks before it keeps anything. */
import { html, nothing } from 'lit-html';
import { ask, failed } from '../ask.js';
import { newId } from '../shelf.js';
import { answered, problemStrip } from '../widgets/answer.js';
import { cardAims, cardFoot, cardSteps, cardTable } from '../widgets/card.js';
import { Form } from '../widgets/form.js';
import { cutOf, howThick, untilOf } from '../widgets/how-long.js';
import { answerDoubt, answerRows, answerVerdict } from '../widgets/how-much-answer.js';
import { tagMark } from '../widgets/icon.js';
import { oddWeight } from '../widgets/odd-weight.js';
import { weighIn, weightField, weightText } from '../widgets/weight-field.js';
import { cautions, evidence, isAmiss, nextSteps, strip, verdictStrip } from '../widgets/verdict.js';
import { why } from '../widgets/why.js';
import { inAll } from '../../words/en/until.js';
import { EATEN, METHODS } from '../../words/en/names.js';
import { canonical } from '../records.js';
import { isWritten, linkIn, toReader } from '../pasted.js';
import { cardForm, copyOf } from './recipes.js';
import { PLACES } from '../../words/en/places.js';
import { KEEP, OPEN, sentTo } from '../../words/en/send.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Recipe} Recipe */

/** @param {App} app @param {import('../router.js').Place} place @returns {import('../app.js').Screen} */
export function open(app, { part }) {
  const form = new Form();
  const units = () => /** @type {'us' | 'metric'} */ (form.text('units', app.settings.units));
  let text = part;
  const back = { href: '#/recipes', text: PLACES.recipes };

  function draw() {
    const { title } = OPEN;
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
      <h1 tabindex="-1">${OPEN.unreadable}</h1>
      <div class="gap">
        ${
          failed(problems)
            ? problemStrip(app, problems)
            : strip('care', OPEN.notWhole, html`${problems.map(({ message }) => html`<span>${message} </span>`)}`)
        }
      </div>
      <p class="gap">${OPEN.once}</p>
      ${again()}
      <div class="block"><a class="btn quiet wide" href="#/today">${OPEN.batches}</a></div>
    </div>`;
  }

  function again() {
    return html`<form
      novalidate
      @submit=${(/** @type {Event} */ event) => {
        event.preventDefault();
        look(form.text('link'));
      }}
    >
      <div class="field">
        <label for="f-link">${OPEN.paste}</label>
        <textarea
          id="f-link"
          rows="2"
          .value=${form.text('link')}
          @input=${(/** @type {{ target: HTMLTextAreaElement }} */ { target }) => {
            form.type('link', target.value);
            // What was written for a person needs no button: the reader has it.
            if (isWritten(target.value)) toReader(app, target.value);
          }}
        ></textarea>
      </div>
      <div class="gap"><button type="submit" class="btn wide">${OPEN.look}</button></div>
    </form>`;
  }

  /** @param {string} typed */
  function look(typed) {
    text = linkIn(typed) || typed.trim();
    app.draw();
  }

  const typedWeight = () =>
    form.read(
      [{ key: 'weight', label: OPEN.meat, kind: 'mass', unit: 'g', stored: weightText(form, units()), optional: true }],
      units(),
      { quiet: true },
    )?.weight;

  /** @param {Recipe} recipe */
  function shown(recipe) {
    const weight = typedWeight();
    const settings = { ...app.settings, units: units() };
    const answer = ask('card', {
      recipe,
      settings,
      ...(weight && { weight }),
      ...(form.text('cut') && { cut: form.text('cut') }),
    });
    const verdict = answer.ok?.verdict;
    // What must not be weighed out stands before anything that could be.
    const bad = isAmiss(verdict);
    const leaf = html`<div class="leaf">
      <div class="head">
        ${tagMark(recipe.tag)}
        <h1 tabindex="-1">${recipe.name}</h1>
        <p>${sentTo(METHODS[recipe.method], EATEN[recipe.eaten])}</p>
      </div>
      ${verdict && bad ? html`<div class="gap">${verdictStrip(verdict)}</div>` : nothing}
      ${yours(recipe, weight ?? '', settings, bad)} ${question(recipe)}
      ${answered(app, answer, (card) => html`${cardTable(card)} ${cardSteps(card)} ${cardFoot(card, recipe)}`)}
    </div>`;
    const plate = html`<div class="plate">
      <div class="stick">
        <h2>${OPEN.dose}</h2>
        <p class="small">${OPEN.doseFrom}</p>
        ${
          answer.ok
            ? html`${bad ? nothing : html`<div class="gap">${verdictStrip(answer.ok.verdict)}</div>`}
              ${why('open', html`${cardAims(answer.ok)} ${evidence(answer.ok.verdict)}`)}
              ${nextSteps(answer.ok.verdict)} ${cautions(answer.ok.cautions)}`
            : nothing
        }
      </div>
    </div>`;
    return [leaf, plate];
  }

  /**
   * The same answer as on the first screen, by this recipe and before it is kept.
   * @param {Recipe} recipe
   * @param {string} weight
   * @param {import('../types').Settings} settings
   * @param {boolean} said that it is not in range stands above already
   */
  function yours(recipe, weight, settings, said) {
    const draft = ask('draft', { recipe, settings, ...(weight && { weight }), ...cutOf(form) }).ok;
    const now = app.now();
    const until = draft ? untilOf(form, draft, settings, now) : null;
    const time = until && { until: until.at, now, under: inAll(now, until, now) };
    const sheet = weight && draft ? ask('weigh_out', { batch: draft.batch, settings }).ok : undefined;
    const turn = () => {
      weighIn(form, units() === 'us' ? 'metric' : 'us', draft);
      app.draw();
    };
    const left = () => {
      form.read(
        [
          {
            key: 'weight',
            label: OPEN.meat,
            kind: 'mass',
            unit: 'g',
            stored: weightText(form, units()),
            optional: true,
          },
        ],
        units(),
      );
      app.draw();
    };
    return html`<div class="asked gap">
        ${weightField(form, { label: OPEN.howMuch, units: units(), turn, weight: draft?.weight }, { typed: app.draw, left })}
      </div>
      ${
        sheet
          ? html`<div class="gap">
              ${draft ? oddWeight(form, draft, units(), app.draw) : nothing}
              ${said && !sheet.coarse ? nothing : answerDoubt(sheet)} ${answerRows({ sheet, ...(time && { time }) })}
              ${draft?.odd ? nothing : answerVerdict(sheet)} ${draft ? howThick(app, form, draft, until) : nothing}
            </div>`
          : nothing
      }`;
  }

  /** @param {Recipe} recipe */
  function question(recipe) {
    const same = app.shelf.cards().filter(([, one]) => one.name === recipe.name);
    const equal = same.find(([, one]) => canonical(told(one)) === canonical(told(recipe)));
    if (equal) {
      return html`<p class="gap">${KEEP.have}</p>
        <div class="pair gap">
          <button type="button" class="btn main" @click=${() => toMine(equal[0], recipe)}>${KEEP.mine}</button>
          <a class="btn quiet" href="#/recipes">${KEEP.notNow}</a>
        </div>`;
    }
    if (same[0]) {
      const [mine, was] = same[0];
      return html`<p class="gap">${KEEP.another(recipe.name)}</p>
        <div class="pair gap">
          <button type="button" class="btn" @click=${() => keep(newId(), copyOf(app, recipe))}>${KEEP.both}</button>
          <button type="button" class="btn" @click=${() => keep(mine, recipe, was)}>${KEEP.replace}</button>
          <a class="btn quiet" href="#/recipes">${KEEP.notNow}</a>
        </div>`;
    }
    return html`<p class="gap">${KEEP.nothing}</p>
      <div class="pair gap">
        <button type="button" class="btn main" @click=${() => keep(newId(), recipe)}>${KEEP.keep}</button>
        <a class="btn quiet" href="#/recipes">${KEEP.notNow}</a>
      </div>`;
  }

  /** @param {string} id @param {Recipe} recipe @param {Recipe} [was] */
  async function keep(id, recipe, was) {
    const work = () => app.shelf.move([{ key: `recipe/${id}`, from: was, to: recipe }]);
    const kept = await app.act(work, { says: was ? KEEP.replaced(recipe.name) : KEEP.kept(recipe.name) });
    if (kept) toMine(id, recipe);
  }

  /** His own meat stands on the card too. @param {string} id @param {Recipe} recipe */
  function toMine(id, recipe) {
    const card = new Form('f', cardForm(id));
    const weight = typedWeight();
    const worked = weight && ask('card', { recipe, weight, settings: { ...app.settings, units: units() } }).ok;
    if (worked) card.type('weight', worked.weight.text);
    for (const key of ['cut', 'thick']) if (form.text(key)) card.type(key, form.text(key));
    // The way back must not lead to the question again.
    app.go(`#/recipe/${id}`, { replace: true });
  }

  return { draw };
}

/** A recipe as a link tells it: whether its aim follows the rule of the place is not told. @param {Recipe} recipe */
function told({ cures = [], ...recipe }) {
  return { ...recipe, cures: cures.map(({ follows, ...cure }) => cure) };
}
