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
import { why } from '../widgets/why.js';
import { cautions, evidence, isAmiss, nextSteps, sayVerdict, strip, verdictStrip } from '../widgets/verdict.js';
import { DANGERS, TONGUES, heatRaised } from '../../words/en/dangers.js';
import {
  BESIDE,
  UNTITLED,
  calledBy,
  flagsOf,
  noRecipe,
  offers,
  questionWords,
  takenFor,
} from '../../words/en/reading.js';
import { cardForm, copyOf, initials, withAim } from './recipes.js';
import { PLACES } from '../../words/en/places.js';
import { glue } from '../../words/glue.js';
import { ppm } from '../../words/en/verdict.js';
import { FOUND, KEEP, PASTE, grams, loweredNote, openHead, spoonNote } from '../../words/en/send.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Asked} Asked */
/** @typedef {import('../types').ReadLine} ReadLine */
/** @typedef {import('../types').Recipe} Recipe */

/** Answers stand in the form beside what is typed, each under its question's own key. */
const ANSWER = 'answer ';
const canPaste = 'clipboard' in navigator && 'readText' in navigator.clipboard;

/** The card weighed for less than the text asks for, and a word of it for whoever gets it. @param {Recipe} recipe @param {string} aim */
function lowered(recipe, aim) {
  const was = recipe.cures.map((cure) => cure.aim).join(', ');
  const says = loweredNote(was, aim);
  return { ...withAim(recipe, aim), notes: [recipe.notes, says].filter(Boolean).join('\n') };
}

/** The card with a word of it where its cure is the usual figure of a spoon: it goes along with the link. @param {Recipe} recipe @param {ReadLine[]} lines */
function fromSpoon(recipe, lines) {
  const spooned = lines.filter(({ item, grams: [low, , high] }) => item.startsWith('cure') && low !== high);
  const says = spooned.map(({ text }) => spoonNote(text));
  return says.length ? { ...recipe, notes: [recipe.notes, ...says].filter(Boolean).join('\n') } : recipe;
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
    // What comes out is judged as it would be weighed; where that is out of range it is the one dose that is told.
    const found = ok?.recipe ? asFound(fromSpoon(ok.recipe, ok.lines), ok.meat?.text) : null;
    const verdict = found?.card?.verdict;
    const out = verdict && isAmiss(verdict) ? verdict : null;
    // By the spoon it may be amiss, and by the grams of the recipe it is not: both are told as one, or they contradict.
    const weighed = verdict?.mark === 'ok' && isAmiss(ok?.verdict) ? verdict : null;
    if (ok?.verdict) sayVerdict(app, weighed ?? ok.verdict);

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
      ${text || !canPaste ? nothing : html`<div class="gap"><button type="button" class="btn wide" @click=${paste}>${PASTE.fromClipboard}</button></div>`}
      ${
        linkIn(text)
          ? html`<div class="gap"><a class="btn main wide" href="#${linkIn(text)}">${PASTE.isLink}</a></div>`
          : nothing
      }
      ${problems ? problemStrip(app, problems) : nothing}
      ${
        ok
          ? html`${warned(ok)} ${settle(ok.questions, ok.lines)} ${keepIt(ok, open, found, out)}
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
            ? html`${out ? nothing : html`<div class="gap">${weighed ? bySpoon(ok.verdict, weighed) : verdictStrip(ok.verdict)}</div>`}
              ${ok.verdict.nitrite ? why('read', evidence(ok.verdict)) : nothing}
              ${out?.aim || weighed ? nothing : nextSteps(ok.verdict)} ${cautions(ok.verdict.cautions)}`
            : html`<div class="gap">${strip('ask', PASTE.unsaid, PASTE.needs)}</div>`
        }
      </div>
    </div>`;
    return { title: PASTE.title, back: { href: '#/recipes', text: PLACES.recipes }, view: [leaf, plate] };
  }

  /** @param {import('../types').Verdict} spooned @param {import('../types').Verdict} weighed */
  const bySpoon = (spooned, weighed) =>
    strip(
      'care',
      PASTE.weighIt,
      glue(
        PASTE.bySpoon(
          weighed.nitrite ? ppm(weighed.nitrite) : '',
          spooned.nitrite ? ppm(spooned.nitrite) : '',
          spooned.limit,
        ),
      ),
    );

  /** What was copied, at one touch; where that is not allowed the field waits for it. */
  async function paste() {
    try {
      form.type('text', await navigator.clipboard.readText());
      app.draw();
    } catch {
      document.getElementById('f-text')?.focus();
    }
  }

  /** @param {Asked[]} questions @param {ReadLine[]} lines */
  function settle(questions, lines) {
    if (questions.length === 0) return nothing;
    return html`<section class="block">
      <h2>${PASTE.settle}</h2>
      ${questions.map((question) => one(question, settles(question, lines)))}
    </section>`;
  }

  /** The lines that an answer settles, as they are written. @param {Asked} question @param {ReadLine[]} lines */
  function settles({ key, of }, lines) {
    const all = of.length ? of : lines.flatMap(({ text }) => (key.endsWith(`:${text}`) ? [text] : []));
    return [...new Set(all)].map(PASTE.of).join(', ');
  }

  /** @param {Asked} asked @param {string} of the lines it is about */
  function one(asked, of) {
    const { key, answer, typed } = asked;
    const [legend, choices] = [questionWords(asked.ask), offers(asked)];
    const name = ANSWER + key;
    const put = (/** @type {string} */ value) => {
      form.type(name, value);
      app.draw();
    };
    if (!typed) {
      const hint = of || undefined;
      return pick({ name: form.id(name), legend, hint, look: 'long', options: choices, value: answer ?? '' }, put);
    }
    return html`${field(
      form,
      {
        key: name,
        label: legend,
        look: 'words',
        // What it is about; where it is about none of the lines, how it is typed.
        hint: of || (choices.length ? undefined : PASTE.weight),
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
  function warned({ dangers: all, tongue, verdict }) {
    // How much the dose is out of range, its verdict says.
    const dangers = all.filter(({ key }) => !verdict || !['cure_over', 'cure_under'].includes(key));
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

  /**
   * Without a title it is called by its meat; and what it would weigh by the scale: the spoons of the text may say more or less.
   * @param {Recipe} read @param {string} [weight]
   */
  function asFound(read, weight) {
    const recipe = read.name === UNTITLED ? { ...read, name: calledBy(form.text('text')) } : read;
    return { recipe, card: ask('card', { recipe, settings: app.settings, ...(weight && { weight }) }).ok };
  }

  /** Marks in the text what bars it. @param {string} text as it is written there */
  function toText(text) {
    const box = /** @type {HTMLTextAreaElement | null} */ (document.getElementById('f-text'));
    box?.focus();
    const at = box?.value.indexOf(text) ?? -1;
    if (at >= 0) box?.setSelectionRange(at, at + text.length);
  }

  /**
   * @param {import('../types').Reading} reading @param {number} open
   * @param {ReturnType<typeof asFound> | null} found @param {import('../types').Verdict | null} out its verdict, out of range
   */
  function keepIt({ bar, beside, meat, dangers }, open, found, out) {
    if (!found) {
      const fault = bar && 'text' in bar ? bar.text : '';
      const act = html`<div class="acts">
        <button type="button" class="btn main less" @click=${() => toText(fault)}>${PASTE.toLine}</button>
      </div>`;
      return html`<div class="block">
        ${strip('ask', openHead(open), bar ? noRecipe(bar) : '', fault ? act : nothing)}
      </div>`;
    }
    const { recipe, card } = found;
    const weight = meat?.text;
    const aim = out?.aim ?? null;
    const low = dangers.filter(({ key }) => key === 'cook_low');
    const asItIs = out?.held ? FOUND.asItIsHeld(card?.weight.text ?? '') : FOUND.asItIs;
    return html`<section class="block">
      <h2>${FOUND.keep}</h2>
      ${beside.length ? html`<p class="small near">${beside.map((what) => BESIDE[what]).join(' ')}</p>` : nothing}
      ${out ? html`<div class="gap">${verdictStrip(out)}</div>` : nothing}
      <form
        novalidate
        @submit=${(/** @type {Event} */ event) => keep(event, aim ? lowered(recipe, aim) : recipe, low, weight)}
      >
        ${field(form, { key: 'name', label: FOUND.name, look: 'words', stored: recipe.name }, { typed: app.draw })}
        ${aim ? html`<p class="small near">${FOUND.asksMore}</p>` : nothing}
        <div class="gap">
          <button type="submit" class="btn ${out && !aim ? '' : 'main'} wide">
            ${aim ? FOUND.withAim(aim) : out ? asItIs : FOUND.asRecipe}
          </button>
        </div>
        ${
          aim
            ? html`<div class="gap">
                <button
                  type="button"
                  class="btn quiet wide"
                  @click=${(/** @type {Event} */ event) => keep(event, recipe, low, weight)}
                >
                  ${asItIs}
                </button>
              </div>`
            : nothing
        }
      </form>
    </section>`;
  }

  /** @param {Event} event @param {Recipe} recipe @param {import('../types').Danger[]} low what is too low in it @param {string} [weight] of the text, for which the card is shown */
  async function keep(event, recipe, low, weight) {
    event.preventDefault();
    const id = newId();
    const name = form.text('name', recipe.name).trim() || recipe.name;
    // Where it said too little heat for its meat its step has what is needed, and a note of it goes to whoever gets it.
    const notes = [recipe.notes, ...low.map(heatRaised)].filter(Boolean).join('\n');
    const card = copyOf(app, { ...recipe, name, notes, tag: initials(name) ?? recipe.tag });
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
