/**
 * The connection to IndexedDB and the layout of its two stores.
 */
import { openDB } from 'idb';
import { Trouble, troubleBehind } from './trouble.js';

/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {{ id?: number, key: string, reason: string, at: string, raw: any }} Aside */
/** @typedef {{ records: { key: string, value: any }, aside: { key: number, value: Aside } }} Schema */
/** @typedef {import('idb').IDBPDatabase<Schema>} Database */

export const LAYOUT = 1;

/** A write is done when it is on the disk, not when the browser has promised to put it there. */
export const STRICT = /** @type {const} */ ({ durability: 'strict' });

/**
 * Says which database this is. Where another or none is found, the records were cleared: an empty database is not one
 * in which nothing was ever written.
 */
const MARK = 'meta/mark';

/**
 * Opens the database, or rejects with the trouble. One that a newer page has laid out anew is opened to be read.
 * @param {string} name
 * @param {(trouble: Trouble | null) => void} lost called when the connection is closed from outside
 * @returns {Promise<Database>}
 */
export async function connect(name, lost) {
  if (typeof indexedDB === 'undefined') throw new Trouble('unavailable');
  try {
    return await opened(name, LAYOUT, lost);
  } catch (error) {
    if (error instanceof DOMException && error.name === 'VersionError') {
      const db = await opened(name, undefined, lost);
      if (db.objectStoreNames.contains('records') && db.objectStoreNames.contains('aside')) return db;
      db.close();
    }
    throw troubleBehind(error) ?? new Trouble('unavailable', error);
  }
}

/**
 * @param {string} name
 * @param {number | undefined} version
 * @param {(trouble: Trouble | null) => void} lost
 * @returns {Promise<Database>}
 */
function opened(name, version, lost) {
  return new Promise((/** @type {(db: any) => void} */ resolve, reject) => {
    let late = false;
    const opening = openDB(name, version, {
      upgrade(db) {
        db.createObjectStore('records', { keyPath: 'key' });
        db.createObjectStore('aside', { keyPath: 'id', autoIncrement: true });
      },
      blocked() {
        late = true;
        reject(new Trouble('blocked'));
      },
      blocking(_old, next, event) {
        // Another tab wants a newer layout, or to delete it all, and waits for this one to let go.
        /** @type {IDBDatabase} */ (event.target).close();
        lost(next === null ? null : new Trouble('newer'));
      },
      terminated: () => lost(null),
    });
    opening.then((db) => {
      // Nobody waits for it any more, and an open connection would hold up the others.
      if (late) db.close();
      else resolve(db);
    }, reject);
  });
}

/**
 * The mark of the database within a transaction over `records`; undefined where it has none yet.
 * @param {{ objectStore: (name: 'records') => { get: (key: string) => Promise<any> } }} tx
 * @returns {Promise<string | undefined>}
 */
export async function markOf(tx) {
  const mark = (await tx.objectStore('records').get(MARK))?.data?.mark;
  return typeof mark === 'string' ? mark : undefined;
}

/** @param {string} mark @returns {Rec} */
export function markRecord(mark) {
  return { key: MARK, v: 1, at: new Date().toISOString(), data: { mark } };
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
