/** Read a recipe: what somebody wrote or said is pasted, each line says what it is taken for, and questions settle the rest. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { READ, linkIn } from '../pasted.js';
import { newId } from '../shelf.js';
import { problemStrip } from '../widgets/answer.js';
import { field } from '../widgets/field.js';
import { Form } from '../widgets/form.js';
import { icon } from '../widgets/icon.js';
import { pick } from '../widgets/pick.js';
import { cautions, evidence, nextSteps, sayVerdict, strip, verdictStrip } from '../widgets/verdict.js';
import { DANGERS, TONGUES } from '../../words/en/dangers.js';
import { BESIDE, UNTITLED, flagsOf, noRecipe, offers, questionWords, takenFor } from '../../words/en/reading.js';
import { cardForm, copyOf, initials, withAim } from './recipes.js';
import { PLACES } from '../../words/en/places.js';
import { FOUND, KEEP, PASTE, grams, loweredNote, openHead } from '../../words/en/send.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Asked} Asked */
/** @typedef {import('../types').ReadLine} ReadLine */
/** @typedef {import('../types').Recipe} Recipe */

/** Answers stand in the form beside what is typed, each under its question's own key. */
const ANSWER = 'answer ';

/** The card weighed for less than the text asks for, and a word of it for whoever gets it. @param {Recipe} recipe @param {string} aim */
function lowered(recipe, aim) {
  const was = recipe.cures.map((cure) => cure.aim).join(', ');
  const says = loweredNote(was, aim);
  return { ...withAim(recipe, aim), notes: [recipe.notes, says].filter(Boolean).join('\n') };
}

/** @param {App} app @returns {import('../app.js').Screen} */
export function read(app) {
  const form = new Form('f', READ);

  function draw() {
    const text = form.text('text');
    const answers = form.typed
      .filter((key) => key.startsWith(ANSWER))
      .map((key) => /** @type {[string, string]} */ ([key.slice(ANSWER.length), form.text(key)]));
    const { ok, problems } = text.trim()
      ? ask('read_recipe', { text, answers, untitled: UNTITLED, settings: app.settings })
      : { ok: undefined, problems: undefined };
    const open = ok?.questions.filter(({ answer }) => answer === null).length ?? 0;
    if (ok?.verdict) sayVerdict(app, ok.verdict);

    const leaf = html`<div class="leaf">
      <h1 tabindex="-1">${PASTE.title}</h1>
      <p class="small near">${PASTE.about}</p>
      <div class="field">
        <label for="f-text">${PASTE.text}</label>
        <span class="hint" id="f-text-hint">${PASTE.example}</span>
        <textarea
          id="f-text"
          rows="6"
          aria-describedby="f-text-hint"
          .value=${text}
          @input=${(/** @type {{ target: HTMLTextAreaElement }} */ { target }) => {
            form.type('text', target.value);
            app.draw();
          }}
        ></textarea>
      </div>
      ${
        linkIn(text)
          ? html`<div class="gap"><a class="btn main wide" href="#${linkIn(text)}">${PASTE.isLink}</a></div>`
          : nothing
      }
      ${problems ? problemStrip(app, problems) : nothing}
      ${
        ok
          ? html`${warned(ok)} ${settle(ok.questions, ok.lines)} ${keepIt(ok, open)}
              <section class="block">
                <h2>${PASTE.read}</h2>
                <p class="small near">${ok.meat ? PASTE.grams(ok.meat.text) : PASTE.noMeat}</p>
                <ol class="lines-read">
                  ${ok.lines.map(row)}
                </ol>
              </section>`
          : nothing
      }
    </div>`;

    const plate = html`<div class="plate">
      <div class="stick">
        <h2>${PASTE.dose}</h2>
        ${
          ok?.verdict
            ? html`<div class="gap">${verdictStrip(ok.verdict)}</div>
                ${ok.verdict.nitrite ? evidence(ok.verdict) : nothing} ${nextSteps(ok.verdict)}
                ${cautions(ok.verdict.cautions)}`
            : html`<div class="gap">${strip('ask', PASTE.unsaid, PASTE.needs)}</div>`
        }
      </div>
    </div>`;
    return { title: PASTE.title, back: { href: '#/recipes', text: PLACES.recipes }, view: [leaf, plate] };
  }

  /** @param {Asked[]} questions @param {ReadLine[]} lines */
  function settle(questions, lines) {
    if (questions.length === 0) return nothing;
    return html`<section class="block">
      <h2>${PASTE.settle}</h2>
      ${questions.map((question) => one(question, lines.find(({ text }) => question.key.endsWith(`:${text}`))?.text))}
    </section>`;
  }

  /** @param {Asked} asked @param {string} [of] the line it is about */
  function one(asked, of) {
    const { key, answer, typed } = asked;
    const [legend, choices] = [questionWords(asked.ask), offers(asked)];
    const name = ANSWER + key;
    const put = (/** @type {string} */ value) => {
      form.type(name, value);
      app.draw();
    };
    if (!typed) {
      const hint = of && PASTE.of(of);
      return pick({ name: form.id(name), legend, hint, look: 'long', options: choices, value: answer ?? '' }, put);
    }
    return html`${field(
      form,
      {
        key: name,
        label: legend,
        look: 'words',
        hint: choices.length ? undefined : PASTE.weight,
      },
      { typed: app.draw },
    )}
    ${
      choices.length
        ? html`<div class="acts" role="group" aria-label=${PASTE.weights}>
            ${choices.map(
              ([value, word]) =>
                html`<button type="button" class="btn less" @click=${() => put(value)}>${word}</button>`,
            )}
          </div>`
        : nothing
    }`;
  }

  /** Dangers in the text, and a language that it is not read in with confidence. @param {import('../types').Reading} reading */
  function warned({ dangers, tongue }) {
    const foreign = TONGUES[tongue];
    if (dangers.length === 0 && !foreign) return nothing;
    return html`<section class="block">
      <h2>${PASTE.care}</h2>
      ${foreign ? html`<p class="gap">${foreign}</p>` : nothing}
      <ul class="gap">
        ${dangers.map(
          (danger) =>
            html`<li class="caution">
              <p>${DANGERS[danger.key](danger)}</p>
              ${danger.text ? html`<small>${PASTE.of(danger.text)}</small>` : nothing}
            </li>`,
        )}
      </ul>
    </section>`;
  }

  /** @param {ReadLine} line */
  function row(line) {
    const {
      text,
      taken,
      grams: [low, usual, high],
    } = line;
    const flag = flagsOf(line);
    const amount = low === undefined ? '' : grams(low, usual, high);
    return html`<li class=${taken === 'unread' || flag ? 'care' : ''}>
      <q>${text}</q>
      <span class="as"
        ><b>${takenFor(line)}</b>${amount ? html`<span class="num nowrap">${amount}</span>` : nothing}</span
      >
      ${low !== high ? html`<span class="small">${PASTE.usually(usual ?? '')}</span>` : nothing}
      ${flag ? html`<span class="flag care">${icon('s-care', '')}<span>${flag}</span></span>` : nothing}
    </li>`;
  }

  /** @param {import('../types').Reading} reading @param {number} open */
  function keepIt({ recipe, bar, beside, meat }, open) {
    if (!recipe) {
      const head = openHead(open);
      return html`<div class="block">${strip('ask', head, bar ? noRecipe(bar) : '')}</div>`;
    }
    // What the card itself would weigh, by the scale; the spoons of the text may say more or less.
    const weight = meat?.text;
    const verdict = ask('card', { recipe, settings: app.settings, ...(weight && { weight }) }).ok?.verdict;
    const bad = verdict?.held || verdict?.mark === 'stop' || verdict?.mark === 'care';
    const aim = bad ? verdict.aim : null;
    const asItIs = verdict?.held ? FOUND.asItIsHeld : FOUND.asItIs;
    return html`<section class="block">
      <h2>${FOUND.keep}</h2>
      ${beside.length ? html`<p class="small near">${beside.map((what) => BESIDE[what]).join(' ')}</p>` : nothing}
      ${verdict && bad ? html`<div class="gap">${verdictStrip(verdict)}</div>` : nothing}
      <form
        novalidate
        @submit=${(/** @type {Event} */ event) => keep(event, aim ? lowered(recipe, aim) : recipe, weight)}
      >
        ${field(form, { key: 'name', label: FOUND.name, look: 'words', stored: recipe.name }, { typed: app.draw })}
        ${aim ? html`<p class="small near">${FOUND.asksMore(aim)}</p>` : nothing}
        <div class="gap">
          <button type="submit" class="btn ${bad && !aim ? '' : 'main'} wide">
            ${aim ? FOUND.withAim(aim) : bad ? asItIs : FOUND.asRecipe}
          </button>
        </div>
        ${
          aim
            ? html`<div class="gap">
                <button
                  type="button"
                  class="btn quiet wide"
                  @click=${(/** @type {Event} */ event) => keep(event, recipe, weight)}
                >
                  ${asItIs}
                </button>
              </div>`
            : nothing
        }
      </form>
    </section>`;
  }

  /** @param {Event} event @param {Recipe} recipe @param {string} [weight] of the text, for which the card is shown */
  async function keep(event, recipe, weight) {
    event.preventDefault();
    const id = newId();
    const name = form.text('name', recipe.name).trim() || recipe.name;
    const card = copyOf(app, { ...recipe, name, tag: initials(name) ?? recipe.tag });
    const kept = await app.act(() => app.shelf.add(`recipe/${id}`, card), {
      says: KEEP.kept(card.name),
    });
    if (!kept) return;
    form.typed.forEach((key) => form.drop(key));
    if (weight) new Form('f', cardForm(id)).type('weight', weight);
    app.go(`#/recipe/${id}`);
  }

  return { draw };
}
