/**
 * What the store holds in memory: every record as it was last read or written, and the changes that storage has not
 * taken yet. With it the page goes on while storage does not.
 */
import { seal } from './records.js';

/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {import('./store.js').Change} Change */

/** What a change gives for a record that shall be there no more. */
export const GONE = Symbol('gone');

export class Held {
  /** @type {Change[][]} changes made together, oldest first, that storage has not taken yet */
  unsaved = [];
  /** @type {Map<string, Rec>} every record as it was last read or written here */
  known = new Map();

  #steps;

  /** @param {import('./records.js').Steps} steps */
  constructor(steps) {
    this.#steps = steps;
  }

  /** Keys of records that unsaved changes are about. */
  get changing() {
    return this.unsaved.flat().map(({ key }) => key);
  }

  /**
   * Notes what a reading has found, and that nothing else is there.
   * @param {Map<string, Rec>} found
   * @param {(key: string) => boolean} wanted what was asked for
   */
  saw(found, wanted) {
    for (const key of [...this.known.keys()]) if (wanted(key) && !found.has(key)) this.known.delete(key);
    for (const [key, record] of found) this.known.set(key, record);
  }

  /**
   * Notes what was written.
   * @param {Change[]} changes
   * @param {(Rec | undefined)[]} now
   */
  wrote(changes, now) {
    for (const [at, { key }] of changes.entries()) {
      const record = now[at];
      if (record) this.known.set(key, record);
      else this.known.delete(key);
    }
  }

  /**
   * Lays the changes that are not stored yet over what is.
   * @param {Map<string, Rec>} found
   * @param {(key: string) => boolean} wanted
   */
  overlay(found, wanted) {
    for (const { key, fn } of this.unsaved.flat()) {
      if (!wanted(key)) continue;
      try {
        const now = fn(structuredClone(found.get(key)?.data));
        if (now === GONE) found.delete(key);
        else if (now !== undefined) found.set(key, seal(key, now, this.#steps));
      } catch (error) {
        // It can be made no more; that is told when its turn comes to be stored.
        console.error(error);
      }
    }
  }
}
