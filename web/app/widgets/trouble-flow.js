/**
 * One question at a time of a card, with what was answered, to the act it ends in: the core knows the way, this asks.
 */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { glue } from '../../words/glue.js';
import { statusWords } from '../../words/en/names.js';
import { DOSE_WAYS, WAYS } from '../../words/en/trouble-ways.js';
import { ACTS, CHOICES, CONDITIONS, HAZARDS, QUESTIONS, inUnits } from '../../words/en/trouble.js';
import { dialled } from './dial.js';
import { cautions, strip } from './verdict.js';
import { why } from './why.js';
import { ASK } from '../../words/en/troubles.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Ask} Ask */
/** @typedef {import('../types').Choice} Choice */
/** @typedef {import('../types').Trouble} Trouble */
/** @typedef {import('../types').Remedy} Remedy */

/** @typedef {import('../types').Mark} Mark */

/** The mark of each act. None is a tick: a card knows no batch, so it assures nothing. @type {Record<import('../types').Act, Mark>} */
const MARKS = {
  call_poison_centre: 'stop',
  get_medical_help: 'stop',
  throw_out: 'stop',
  throw_out_brine: 'stop',
  weigh_again: 'stop',
  thin_now: 'care',
  cook_now: 'care',
  finish_now: 'care',
  chill_now: 'care',
  go_on_if: 'care',
};

export class TroubleFlow {
  /** What was answered; an answer that the card no longer asks for is kept, in case it does again. @type {Map<Ask, Choice>} */
  #chosen = new Map();

  /**
   * @param {App} app
   * @param {string} card
   */
  constructor(app, card) {
    this.app = app;
    this.card = card;
  }

  /** @param {string} text */
  say = (text) => glue(inUnits(text, this.app.settings.units === 'us'));

  /** What the screen knows itself, and does not ask. @type {[Ask, Choice][]} */
  known = [];

  /** Whether the screen asks more before what was answered ends in an act. */
  asksOn = () => false;

  /** @param {Ask} key */
  answer(key) {
    return this.#chosen.get(key);
  }

  /** @param {Ask} key */
  forget(key) {
    this.#chosen.delete(key);
  }

  /** The batch whose log says more. @type {import('../types').Batch | undefined} */
  batch;

  sheet() {
    const known = new Map(this.known);
    const { app, batch } = this;
    const log = batch && { batch, now: app.now(), units: app.settings.units };
    return ask('trouble', { card: this.card, chosen: [...new Map([...this.#chosen, ...known])], ...(log && { log }) });
  }

  /** The box with the two lines. @param {import('../types').Mark} mark @param {string} word @param {[string, string]} lines */
  box(mark, word, [first, second]) {
    return html`<div class="gap">
      ${strip(mark, this.say(word), dialled(this.say(first)), html`<p>${dialled(this.say(second))}</p>`)}
    </div>`;
  }

  /** @param {Trouble} ok */
  question({ question: open }) {
    if (!open) return nothing;
    const [key, choices] = open;
    return html`<section class="block">
      <h2 id="question" tabindex="-1">${this.say(QUESTIONS[key])}</h2>
      <div class="choices" role="group" aria-labelledby="question">
        ${choices.map(
          (choice) =>
            html`<button type="button" class="btn wide" @click=${() => this.give(key, choice)}>
              ${this.say(CHOICES[choice])}
            </button>`,
        )}
      </div>
    </section>`;
  }

  /** @param {Ask} key @param {Choice} choice */
  give(key, choice) {
    this.#chosen.set(key, choice);
    this.app.draw();
    const { remedy } = this.sheet().ok ?? {};
    if (remedy && !this.asksOn()) {
      const { word, lines } = this.words(remedy);
      this.app.say(ASK.aloud(word, lines.map(this.say)), { urgent: MARKS[remedy.act] === 'stop' });
    }
    // The button that was pressed is gone; whoever goes by keys goes on from the next question or the answer.
    (document.getElementById('question') ?? document.getElementById('end'))?.focus();
  }

  /** @param {Remedy} remedy */
  words({ act, way }) {
    return { word: this.say(ACTS[act]), lines: WAYS[way].lines };
  }

  /** @param {Remedy} remedy @param {{ judged?: boolean }} [how] judged: the dose is judged on this very screen */
  end(remedy, { judged = false } = {}) {
    const { word, lines } = this.words(remedy);
    return html`<div id="end" tabindex="-1">
      ${this.box(MARKS[remedy.act], word, lines)}
      ${
        remedy.only_if.length > 0
          ? html`<section class="block">
              <h2>${ASK.onlyIf}</h2>
              <ul class="dots">
                ${remedy.only_if.map((key) => html`<li>${this.say(CONDITIONS[key])}</li>`)}
              </ul>
              <p class="small">${ASK.otherwise}</p>
            </section>`
          : nothing
      }
      ${remedy.hazard ? html`<p class="caution gap">${dialled(this.say(HAZARDS[remedy.hazard]))}</p>` : nothing}
      ${
        DOSE_WAYS.has(remedy.way) && !judged
          ? html`<div class="gap noprint"><a class="btn wide" href="#/dose">${ASK.dose}</a></div>`
          : nothing
      }
    </div>`;
  }

  /** @param {Trouble} ok */
  given({ answered, known: logged }) {
    const known = new Set([...this.known.map(([key]) => key), ...logged]);
    const asked = answered.filter(([key]) => !known.has(key));
    if (asked.length === 0) return nothing;
    return html`<section class="block">
      <h2 class="vh">${ASK.answers}</h2>
      <div class="doors" role="list">
        ${asked.map(
          ([key, choice]) =>
            html`<div role="listitem">
              <button type="button" class="tagged given" @click=${() => this.#change(key)}>
                <span><b>${this.say(CHOICES[choice])}</b><span class="small">${this.say(QUESTIONS[key])}</span></span
                ><span class="small noprint">${ASK.change}<span class="vh">${ASK.thisAnswer}</span></span>
              </button>
            </div>`,
        )}
      </div>
    </section>`;
  }

  /** The question is asked again; the other answers stay where they still hold. @param {Ask} key */
  #change(key) {
    this.forget(key);
    this.app.draw();
    document.getElementById('question')?.focus();
  }

  /** @param {Trouble} ok @param {Remedy} remedy */
  why({ source, status, cautions: list }, { way }) {
    return why(
      'trouble',
      html`<p>${this.say(WAYS[way].why)}</p>
        <p class="src">${ASK.source(source, status ? statusWords(status) : '')}</p>
        ${cautions(list)}`,
    );
  }
}
