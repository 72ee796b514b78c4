/**
 * What every screen is handed: the records, the lists of the core, and how to act, draw and speak.
 */
import { go } from './router.js';

/** @typedef {import('./shelf.js').Shelf} Shelf */
/** @typedef {import('./types').Tables} Tables */
/** @typedef {import('./types').Starters} Starters */
/** @typedef {import('./types').Settings} Settings */
/** @typedef {import('./trouble.js').Trouble} Trouble */
/**
 * `here`: it can be taken back on its screen just as well, so the offer ends when the person goes elsewhere.
 * @typedef {{ says: string, back: () => Promise<unknown>, here?: boolean }} Undo
 */
/**
 * What a screen draws. `one`: a single column on a wide screen too.
 * @typedef {{ title: string, back?: { href: string, text: string }, one?: boolean, view: unknown }} Drawn
 */
/**
 * A screen keeps what is typed and not stored yet. `arrive` runs once after it was first drawn.
 * @typedef {{ draw: () => Drawn, arrive?: () => void, leave?: () => void }} Screen
 */

/**
 * What was pressed is gone with what it was about: the line in hand takes the focus, or the way on where all is done,
 * and the page does not jump.
 */
function focusNext() {
  const next = ['.line.now input', '.leaf .btn.main', 'h1'].map((at) => document.querySelector(at)).find(Boolean);
  /** @type {HTMLElement | null} */ (next)?.focus({ preventScroll: true });
  if (next?.tagName !== 'H1') (next?.closest('.line') ?? next)?.scrollIntoView({ block: 'nearest' });
}

/** A verdict that changes with every key is spoken only once the keys rest. */
const REST_MS = 600;
/** So many changes can be taken back, the last first. */
const MOST_UNDOS = 20;

export class App {
  /** @type {string | null} why the last change was not kept */
  fault = null;
  /** @type {Trouble | null} */
  trouble = null;
  /** @type {(() => void) | null} reloads into the new version */
  update = null;

  /** @type {Undo[]} the last changes that can be taken back, until one comes that cannot */
  #undos = [];
  #said = '';
  #timer = 0;

  /**
   * @param {Shelf} shelf
   * @param {Tables} tables
   * @param {Starters} starters
   * @param {() => void} draw
   */
  constructor(shelf, tables, starters, draw) {
    this.shelf = shelf;
    this.tables = tables;
    this.starters = starters;
    this.draw = draw;
  }

  /** @returns {Settings} */
  get settings() {
    return this.shelf.settings;
  }

  now() {
    return Date.now();
  }

  /** What Undo takes back now. @returns {Undo | null} */
  get undo() {
    return this.#undos.at(-1) ?? null;
  }

  /** Nothing that was done before can be taken back any more. */
  forgetUndo() {
    this.#undos = [];
  }

  /**
   * Makes a change to the records. It is stored when the promise settles; if it cannot be kept, the page says so.
   * @param {() => Promise<unknown>} work
   * @param {Undo} [undo]
   * @returns {Promise<boolean>} true when it was kept
   */
  async act(work, undo) {
    const undos = undo ? this.#undos : [];
    this.#undos = [];
    this.fault = null;
    const held = document.activeElement;
    try {
      await work();
      await this.shelf.read;
      this.#undos = undo ? [...undos, undo].slice(-MOST_UNDOS) : [];
      return true;
    } catch (error) {
      console.error(error);
      this.fault = error instanceof Error ? error.message : String(error);
      return false;
    } finally {
      this.draw();
      if (held && !held.isConnected) focusNext();
    }
  }

  /** The person goes to another screen. */
  goOn() {
    if (this.undo?.here) this.#undos = [];
    // What was said of one screen is not true of the next.
    clearTimeout(this.#timer);
    this.#said = '';
    for (const id of ['spoken', 'spoken-now']) document.getElementById(id)?.replaceChildren();
  }

  async takeBack() {
    const undos = this.#undos;
    const undo = undos.at(-1);
    if (!undo || !(await this.act(undo.back))) return;
    this.#undos = undos.slice(0, -1);
    this.draw();
    this.say('Undone.');
  }

  /**
   * @param {string} hash
   * @param {{ replace?: boolean }} [how]
   */
  go(hash, how) {
    go(hash, how);
  }

  /**
   * Speaks to a screen reader what has changed on the screen, once it rests. Said once, not at every key.
   * @param {string} text
   * @param {{ urgent?: boolean }} [how]
   */
  say(text, { urgent = false } = {}) {
    if (text === this.#said) return;
    this.#said = text;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      const spoken = document.getElementById(urgent ? 'spoken-now' : 'spoken');
      if (spoken) spoken.textContent = text;
    }, REST_MS);
  }
}
