/**
 * The connection to IndexedDB and the layout of its two stores.
 */
import { openDB } from 'idb';
import { Trouble, troubleBehind } from './trouble.js';

/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {{ id?: number, key: string, reason: string, at: string, raw: any }} Aside */
/** @typedef {{ records: { key: string, value: any }, aside: { key: number, value: Aside } }} Schema */
/** @typedef {import('idb').IDBPDatabase<Schema>} Database */

const LAYOUT = 1;

/** A write is done when it is on the disk, not when the browser has promised to put it there. */
export const STRICT = /** @type {const} */ ({ durability: 'strict' });

/**
 * Opens the database, or rejects with the trouble.
 * @param {string} name
 * @param {(trouble: Trouble | null) => void} lost called when the connection is closed from outside
 * @returns {Promise<Database>}
 */
export async function connect(name, lost) {
  if (typeof indexedDB === 'undefined') throw new Trouble('unavailable');
  try {
    return await new Promise((/** @type {(db: any) => void} */ resolve, reject) => {
      openDB(name, LAYOUT, {
        upgrade(db) {
          db.createObjectStore('records', { keyPath: 'key' });
          db.createObjectStore('aside', { keyPath: 'id', autoIncrement: true });
        },
        blocked: () => reject(new Trouble('blocked')),
        blocking(_old, _new, event) {
          // A newer version of the page, in another tab, waits for this one to let go.
          /** @type {IDBDatabase} */ (event.target).close();
          lost(new Trouble('newer'));
        },
        terminated: () => lost(null),
      }).then(resolve, reject);
    });
  } catch (error) {
    throw troubleBehind(error) ?? new Trouble('unavailable', error);
  }
}

/**
 * Moves a record that cannot be read into `aside`, within a transaction over both stores.
 * @param {import('idb').IDBPTransaction<Schema, any, 'readwrite'>} tx
 * @param {string} key
 * @param {any} raw
 * @param {string} reason
 */
export async function setAside(tx, key, raw, reason) {
  await tx.objectStore('aside').add({ key, reason, at: new Date().toISOString(), raw });
  await tx.objectStore('records').delete(key);
}

/** @param {{ abort: () => void }} tx */
export function rollBack(tx) {
  try {
    tx.abort();
  } catch {
    // The browser has done it already.
  }
}
