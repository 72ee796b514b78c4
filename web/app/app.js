/**
 * What every screen is handed: the records, the lists of the core, and how to act, draw and speak.
 */
import { Aloud } from './aloud.js';
import { isWhole, whole } from './core.js';
import { Overtaken } from './merge.js';
import { Refused, Unreadable } from './records.js';
import { go } from './router.js';
import { Trouble } from './trouble.js';
import { UNDONE, UNFORESEEN } from '../words/en/storage.js';

/** @typedef {import('./shelf.js').Shelf} Shelf */
/** @typedef {import('./types').Tables} Tables */
/** @typedef {import('./types').Starters} Starters */
/** @typedef {import('./types').Settings} Settings */
/**
 * `here`: it can be taken back on its screen just as well, so the offer ends when the person goes elsewhere.
 * `after`: what the screen does once it is taken back.
 * @typedef {{ says: string, here?: boolean, after?: () => unknown }} Said
 * @typedef {Said & { moves: import('./shelf.js').Move[] }} Undo
 */
/**
 * What a screen draws. `one`: a single column on a wide screen too. Inside a batch the way back is its tag, the head has
 * its `name`, and under that stands what never scrolls off (`head`): the rail, and what is in doubt. `peek` rides under
 * the head while a field is in hand on a short screen.
 * @typedef {{
 *   title: string,
 *   back?: { href: string, text: string, tag?: string },
 *   name?: string,
 *   head?: unknown,
 *   peek?: unknown,
 *   one?: boolean,
 *   view: unknown,
 * }} Drawn
 */
/**
 * A screen keeps what is typed and not stored yet. `arrive` runs once after it was first drawn.
 * @typedef {{ draw: () => Drawn, arrive?: () => void, leave?: () => void }} Screen
 */

/** What is done one after the other. */
const FLOW = '.pin, .line, .day, .answer';

/**
 * What was pressed is gone with what it was about: the next action takes the focus, or the line in hand where it is not
 * pinned, and the page does not jump.
 */
function focusNext() {
  const next = ['.pin .btn', '.line.now input', '.leaf .btn.main', 'h1']
    .map((at) => document.querySelector(at))
    .find(Boolean);
  /** @type {HTMLElement | null} */ (next)?.focus({ preventScroll: true });
  if (next?.tagName !== 'H1') (next?.closest('.line') ?? next)?.scrollIntoView({ block: 'nearest' });
}

/** So many changes can be taken back, the last first. */
const MOST_UNDOS = 20;

/** What went wrong, in words for a person: a message that was written for one, or that it was not foreseen. @param {unknown} error */
export function wordsOf(error) {
  const told = [Overtaken, Refused, Unreadable, Trouble].some((kind) => error instanceof kind);
  return told ? /** @type {Error} */ (error).message : UNFORESEEN;
}

export class App {
  /** The screen that is shown, by its address. */
  here = '';
  /** The last place, batch or recipe one was at: the way back from what can be opened anywhere. @type {{ href: string, text: string, id: string } | null} */
  came = null;
  /** @type {string | null} why the last change was not kept */
  fault = null;
  /** @type {Trouble | null} */
  trouble = null;
  /** @type {(() => void) | null} reloads into the new version */
  update = null;
  /** Whether the page starts without a signal: said once it is true. */
  offline = location.protocol === 'file:';

  /** @type {Undo[]} the last changes that can be taken back, until one comes that cannot */
  #undos = [];
  /** A deed leads to the next screen. */
  #goes = false;
  /** How many changes are on their way to the store. */
  #saving = 0;
  #aloud = new Aloud();

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
   * Until it is stored and drawn, the root element has `data-saving`.
   * @param {() => Promise<unknown>} work
   * @param {Said} [undo] what to say beside Undo, where the work gives moves of the shelf
   * @returns {Promise<boolean>} true when it was kept
   */
  async act(work, undo) {
    const undos = undo ? this.#undos : [];
    this.#undos = [];
    this.fault = null;
    const held = document.activeElement;
    const inFlow = held?.closest(FLOW);
    this.#saving += 1;
    document.documentElement.dataset.saving = '';
    try {
      // What is stored is judged by all of the core.
      if (!isWhole()) await whole();
      const done = await work();
      await this.shelf.read;
      const moves = /** @type {import('./shelf.js').Move[]} */ (done);
      this.#undos = undo ? [...undos, { ...undo, moves }].slice(-MOST_UNDOS) : [];
      return true;
    } catch (error) {
      console.error(error);
      this.fault = wordsOf(error);
      return false;
    } finally {
      this.draw();
      if (inFlow && !held?.isConnected) focusNext();
      this.#saving -= 1;
      if (this.#saving === 0) delete document.documentElement.dataset.saving;
    }
  }

  /** Another screen is shown: by the deed itself, or because the person goes on, which takes the way back along. */
  goOn() {
    if (!this.#goes || this.undo?.here) this.#undos = [];
    this.#goes = false;
    this.#aloud.rest();
  }

  async takeBack() {
    const undos = this.#undos;
    const undo = undos.at(-1);
    if (!undo || !(await this.act(() => this.shelf.takeBack(undo.moves)))) return;
    this.#undos = undos.slice(0, -1);
    undo.after?.();
    this.draw();
    this.say(UNDONE);
  }

  /**
   * @param {string} hash
   * @param {{ replace?: boolean }} [how]
   */
  go(hash, how) {
    this.#goes = true;
    go(hash, how);
  }

  /**
   * Speaks to a screen reader what has changed on the screen, once it rests.
   * @param {string} text
   * @param {{ urgent?: boolean, of?: string }} [how] of: what it is about, where it is told at every drawing
   */
  say(text, how) {
    this.#aloud.say(text, how);
  }

  /** After each drawing. */
  tellNews() {
    this.#aloud.look();
  }
}
