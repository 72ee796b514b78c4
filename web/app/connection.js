/**
 * Work with the database over a connection that may die, be cut or be overtaken, and never with another database than
 * the one that was read first.
 */
import { LAYOUT, STRICT, connect, markOf, markRecord } from './database.js';
import { freshLog } from './fresh-log.js';
import { Trouble, troubleBehind } from './trouble.js';

/** @typedef {import('./database.js').Database} Database */

export class Connection {
  #name;
  #lost;
  /** @type {Promise<Database> | null} */
  #db = null;
  /** A newer page has laid the database out anew: this one reads what it can, and writes nothing. */
  old = false;
  /** @type {string | null} the mark of the database that was read first */
  #mark = null;

  /**
   * @param {string} name
   * @param {(trouble: Trouble | null) => void} lost called when the connection is closed from outside
   */
  constructor(name, lost) {
    this.#name = name;
    this.#lost = lost;
  }

  /**
   * Works with the database. A connection that has died is replaced once, without a word.
   * @template T
   * @param {(db: Database) => Promise<T>} work whole or not at all
   * @returns {Promise<T>}
   */
  async reach(work) {
    const opened = this.#open();
    try {
      return await work(await opened);
    } catch (error) {
      if (troubleBehind(error)?.kind !== 'failed') throw error;
      (await opened.catch(() => null))?.close();
      if (this.#db === opened) this.#db = null;
      await freshLog();
      return await work(await this.#open());
    }
  }

  /**
   * Reads records of the database that was read before, and of no other.
   * @template T
   * @param {(records: { getAll: (query: any) => Promise<any[]>, getAllKeys: (query: any) => Promise<string[]> }) => Promise<T>} work
   * @returns {Promise<T>}
   */
  look(work) {
    return this.reach(async (db) => {
      const tx = db.transaction('records');
      const [, found] = await Promise.all([this.same(tx), work(tx.objectStore('records'))]);
      return found;
    });
  }

  /**
   * Makes sure, within a transaction, that this is the database that was read before.
   * @param {Parameters<typeof markOf>[0]} tx
   */
  async same(tx) {
    const mark = await markOf(tx);
    if (this.#mark !== null && mark !== this.#mark) throw new Trouble('cleared');
  }

  /**
   * Puts records into a database from which they were cleared. What is there by now stays.
   * @param {Iterable<import('./records.js').Rec>} records
   * @returns {Promise<void>}
   */
  putBack(records) {
    return this.reach(async (db) => {
      if (db.version > LAYOUT) throw new Trouble('newer');
      const tx = db.transaction('records', 'readwrite', STRICT);
      const store = tx.objectStore('records');
      const mark = await markOf(tx);
      if (mark === undefined && this.#mark !== null) await store.put(markRecord(this.#mark));
      for (const record of records) if ((await store.getKey(record.key)) === undefined) await store.put(record);
      await tx.done;
      if (mark !== undefined) this.#mark = mark;
    });
  }

  /** @returns {Promise<Database>} */
  #open() {
    const lost = (/** @type {Trouble | null} */ trouble) => {
      this.#db = null;
      this.#lost(trouble);
    };
    this.#db ??= connect(this.#name, lost)
      .then((db) => {
        this.old = db.version > LAYOUT;
        if (this.old) this.#lost(new Trouble('newer'));
        return this.#marked(db);
      })
      .catch((error) => {
        this.#db = null;
        throw error;
      });
    return this.#db;
  }

  /** Takes the mark of the database that is opened first, and gives it one where it has none. @param {Database} db */
  async #marked(db) {
    if (this.#mark !== null) return db;
    this.#mark = (await markOf(db.transaction('records'))) ?? null;
    if (this.#mark !== null || db.version > LAYOUT) return db;
    const fresh = crypto.getRandomValues(new Uint32Array(4)).join('-');
    try {
      const tx = db.transaction('records', 'readwrite', STRICT);
      // Another tab may have been quicker.
      const other = await markOf(tx);
      if (other === undefined) await tx.objectStore('records').put(markRecord(fresh));
      await tx.done;
      this.#mark = other ?? fresh;
    } catch (error) {
      // A full disk: it goes without, and that is told with the first change.
      if (!troubleBehind(error)) throw error;
    }
    return db;
  }
}
