/** What is typed in a form and not stored yet, and what could not be read. */
import { html, nothing } from 'lit-html';
import { failed, readFields } from '../ask.js';
import { draftOf, keepDraft } from '../drafts.js';
import { toPutRight } from '../../words/en/controls.js';
import { icon } from './icon.js';

/** @typedef {import('../ask.js').Problem} Problem */
/** @typedef {Omit<import('../ask.js').Labelled, 'text'> & { stored?: string }} Read */

export class Form {
  /** @type {Map<string, string>} */
  #texts = new Map();
  /** @type {Map<string, Problem>} */
  #problems = new Map();
  #name;
  #draft;

  /**
   * @param {string} [name] begins the ids of its fields, so that two forms on one screen keep apart
   * @param {string} [screen] where given, what is typed outlives the screen, a reload and a kill, until it is stored
   */
  constructor(name = 'f', screen = '') {
    this.#name = name;
    this.#draft = screen.replaceAll('.', '-');
    if (screen) this.#texts = new Map(draftOf(this.#draft));
  }

  /** What is typed and not stored, by key. */
  get typed() {
    return [...this.#texts.keys()];
  }

  #keep() {
    if (this.#draft) keepDraft(this.#draft, [...this.#texts]);
  }

  /** @param {string} key @returns {string} id of its element */
  id(key) {
    return `${this.#name}-${key.replace(/[^\w-]/g, '-')}`;
  }

  /**
   * @param {string} key
   * @param {string} [stored] what to show until something is typed
   */
  text(key, stored = '') {
    return this.#texts.get(key) ?? stored;
  }

  /**
   * @param {string} key
   * @param {string} text
   */
  type(key, text) {
    this.#texts.set(key, text);
    this.#problems.delete(key);
    this.#keep();
  }

  /** @param {string} key */
  problem(key) {
    return this.#problems.get(key);
  }

  get problems() {
    return [...this.#problems.values()];
  }

  /** Forgets what was typed in a field, because it is stored now or no longer wanted. @param {string} key */
  drop(key) {
    this.#texts.delete(key);
    this.#problems.delete(key);
    this.#keep();
  }

  clear() {
    this.#texts.clear();
    this.#problems.clear();
    this.#keep();
  }

  /** @type {Problem[]} what the last reading found wrong, marked or not */
  wrong = [];

  /** @param {Problem[]} problems that came from elsewhere, `field` being the key of a field */
  mark(problems) {
    for (const problem of problems) this.#problems.set(problem.field, problem);
  }

  /**
   * Reads fields; what is wrong is marked.
   * @param {Read[]} fields
   * @param {import('../types').System} units
   * @param {{ quiet?: boolean }} [how] quiet: mark nothing, the person is still typing
   * @returns {Record<string, string | null> | null} the texts to store, or null when something is wrong
   */
  read(fields, units, { quiet = false } = {}) {
    const asked = fields.map(({ stored, ...field }) => ({ ...field, text: this.text(field.key, stored) }));
    const { ok, problems } = readFields(asked, units);
    const wrong = problems ?? ok?.problems ?? [];
    this.wrong = wrong;
    if (!quiet) {
      for (const { key } of fields) this.#problems.delete(key);
      this.mark(failed(wrong) ? [] : wrong);
    }
    if (!ok || wrong.length > 0) return null;
    return Object.fromEntries(ok.values.map(({ key, value }) => [key, value]));
  }
}

/**
 * All that is wrong, on top of the form. It takes the focus when the form is sent.
 * @param {Form} form
 */
export function errorSummary(form) {
  const problems = form.problems;
  if (problems.length === 0) return nothing;
  return html`<div class="errsum" tabindex="-1" role="alert" aria-labelledby="errsum-h">
    <h2 id="errsum-h">${icon('s-stop')}${toPutRight(problems.length)}</h2>
    <ul>
      ${problems.map(
        ({ field, message }) =>
          html`<li>
            <a href="#${form.id(field)}" @click=${(/** @type {Event} */ e) => toField(e, form.id(field))}>${message}</a>
          </li>`,
      )}
    </ul>
  </div>`;
}

export function focusErrors() {
  /** @type {HTMLElement | null} */ (document.querySelector('.errsum'))?.focus();
}

/**
 * @param {Event} event
 * @param {string} id
 */
function toField(event, id) {
  // The address behind # names a screen here, so the field is reached without it; where there are readings to choose
  // from, the first of them.
  event.preventDefault();
  const input = document.getElementById(id);
  /** @type {HTMLElement | null} */ (input?.closest('.field')?.querySelector('.acts button') ?? input)?.focus();
}
