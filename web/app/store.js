/**
 * Everything the user keeps, in IndexedDB.
 *
 * Every change is one transaction that has reached the disk when its promise settles. When storage does not work, the
 * changes are held here and laid over what is read, so the page goes on and the exported file has them; they are
 * written, in order, as soon as storage works again.
 */
import { STRICT, connect, rollBack, setAside } from './database.js';
import { STEPS, Unreadable, kindOf, read, seal } from './records.js';
import { announce, listen } from './tabs.js';
import { troubleBehind } from './trouble.js';

/** @typedef {import('./database.js').Aside} Aside */
/** @typedef {import('./database.js').Database} Database */
/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {import('./records.js').Rules} Rules */
/** @typedef {import('./trouble.js').Trouble} Trouble */
/**
 * Takes what is stored (undefined when nothing is) and gives what shall be stored; undefined leaves all as it is.
 * It may run more than once, so it does nothing else.
 * @typedef {(data: any) => any} Fn
 */
/** @typedef {{ key: string, fn: Fn, blind?: boolean }} Change */
/** @typedef {(keys: string[] | null, from: 'here' | 'elsewhere') => void} Watcher */

const NAME = 'cure-reckoner';
const GONE = Symbol('gone');

/**
 * Opens the records. Never rejects: if storage does not work, `trouble` says so and the store works from memory.
 * @param {Partial<Rules> & { name?: string, ready?: Promise<unknown> }} [options] `ready`: when the validator can judge
 * @returns {Promise<Store>}
 */
export async function openStore({ validate = () => null, steps = STEPS, name = NAME, ready } = {}) {
  const store = new Store(name, { validate, steps });
  await store.bringBack(ready);
  return store;
}

export class Store {
  /** @type {Trouble | null} */
  trouble = null;

  #name;
  #rules;
  /** @type {Promise<Database> | null} */
  #db = null;
  /** @type {Change[][]} changes made together, oldest first, that storage has not taken yet */
  #unsaved = [];
  /** @type {Promise<unknown>} settles when all changes so far are dealt with */
  #turn = Promise.resolve();
  #asked = false;
  /** @type {Set<Watcher>} */
  #watchers = new Set();
  /** @type {Set<(trouble: Trouble | null) => void>} */
  #troubled = new Set();

  /**
   * Use `openStore`.
   * @param {string} name
   * @param {Rules} rules
   */
  constructor(name, rules) {
    this.#name = name;
    this.#rules = rules;
    listen((keys) => this.#tell(keys, 'elsewhere'));
  }

  /** @returns {Rules} */
  get rules() {
    return this.#rules;
  }

  /**
   * Calls back after every change, in this tab or another. `keys` is null when any record may have changed.
   * @param {Watcher} watcher
   * @returns {() => void} stops watching
   */
  onChange(watcher) {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  }

  /**
   * Calls back when storage stops working or works again (null).
   * @param {(trouble: Trouble | null) => void} watcher
   * @returns {() => void} stops watching
   */
  onTrouble(watcher) {
    this.#troubled.add(watcher);
    return () => this.#troubled.delete(watcher);
  }

  /**
   * @param {string} key
   * @returns {Promise<any>} the data, or undefined
   */
  async get(key) {
    kindOf(key);
    return (await this.#select(key))[0]?.data;
  }

  /**
   * The records whose keys begin with `prefix`, or lie between that and `last`, in the order of their keys.
   * @param {string} prefix
   * @param {string} [last]
   * @returns {Promise<Rec[]>}
   */
  async all(prefix, last = prefix) {
    return this.#select(IDBKeyRange.bound(prefix, last + '\uffff'));
  }

  /**
   * The keys that begin with `prefix`, in their order, without reading what they hold.
   * @param {string} prefix
   * @returns {Promise<string[]>}
   */
  async keys(prefix) {
    await this.#turn;
    const range = IDBKeyRange.bound(prefix, prefix + '\uffff');
    const stored = (await this.#try((db) => db.getAllKeys('records', range))) ?? [];
    const unsaved = this.#unsaved.flat().map(({ key }) => key);
    return [...new Set([...stored, ...unsaved.filter((key) => key.startsWith(prefix))])].sort();
  }

  /**
   * Reads, changes and writes one record in one transaction, so that no other tab comes between.
   * @param {string} key
   * @param {Fn} fn
   * @returns {Promise<any>} the data as it is now
   */
  async change(key, fn) {
    return (await this.changeTogether([{ key, fn }]))[0]?.data;
  }

  /**
   * @param {string} key
   * @param {any} data
   * @returns {Promise<any>} the data
   */
  async put(key, data) {
    return (await this.changeTogether([{ key, fn: () => data, blind: true }]))[0]?.data;
  }

  /**
   * @param {string} key
   * @returns {Promise<Rec | undefined>} the record that was there; to undo, `put(record.key, record.data)`
   */
  async remove(key) {
    /** @type {Rec | undefined} */
    let old;
    const fn = (/** @type {any} */ data) => {
      old = data === undefined ? undefined : seal(key, data, this.#rules.steps);
      return GONE;
    };
    await this.changeTogether([{ key, fn, blind: true }]);
    return old;
  }

  /**
   * Makes several changes in one transaction: all of them or none.
   * @param {Change[]} changes
   * @returns {Promise<(Rec | undefined)[]>} the records as they are now
   */
  changeTogether(changes) {
    for (const { key } of changes) kindOf(key);
    const turn = this.#turn.then(() => {
      this.#unsaved.push(changes);
      return this.#settle(changes);
    });
    this.#turn = turn.catch(() => {});
    return turn;
  }

  /**
   * Tries again to write what storage would not take.
   * @returns {Promise<Trouble | null>} the trouble that is left
   */
  async retry() {
    const turn = this.#turn.then(() => this.#settle([]));
    this.#turn = turn.catch(() => {});
    await turn;
    return this.trouble;
  }

  /**
   * The records that could not be read, with the reasons. They are never deleted.
   * @returns {Promise<Aside[]>}
   */
  async aside() {
    return (await this.#try(async (db) => db.getAll('aside'))) ?? [];
  }

  /**
   * Puts back what was set aside and can be read by now, say after a new version of the page has come.
   * @param {Promise<unknown>} [ready] when the validator can judge; waited for only where something was set aside
   * @returns {Promise<void>}
   */
  async bringBack(ready) {
    await this.#try(async (db) => {
      if ((await db.count('aside')) === 0) return;
      await ready;
      const tx = db.transaction(['records', 'aside'], 'readwrite', STRICT);
      for (const item of await tx.objectStore('aside').getAll()) {
        const key = item.raw?.key;
        const free = typeof key === 'string' && (await tx.objectStore('records').getKey(key)) === undefined;
        if (!free || !this.#read(item.raw).record) continue;
        await tx.objectStore('records').put(item.raw);
        await tx.objectStore('aside').delete(/** @type {number} */ (item.id));
      }
      await tx.done;
    });
  }

  /**
   * @param {string | IDBKeyRange} query
   * @returns {Promise<Rec[]>}
   */
  async #select(query) {
    await this.#turn;
    return this.#look(query);
  }

  /**
   * @param {string | IDBKeyRange} query
   * @returns {Promise<Rec[]>}
   */
  async #look(query) {
    const raws = (await this.#try((db) => db.getAll('records', query))) ?? [];
    /** @type {Map<string, Rec>} */
    const found = new Map();
    for (const raw of raws) {
      const { record } = this.#read(raw);
      if (record) found.set(record.key, record);
      else await this.#try((db) => this.#setAside(db, raw.key));
    }
    this.#overlay(found, (key) => (typeof query === 'string' ? key === query : query.includes(key)));
    return [...found.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
  }

  /**
   * Lays the changes that are not stored yet over what is.
   * @param {Map<string, Rec>} found
   * @param {(key: string) => boolean} wanted
   */
  #overlay(found, wanted) {
    for (const { key, fn } of this.#unsaved.flat()) {
      if (!wanted(key)) continue;
      const now = fn(structuredClone(found.get(key)?.data));
      if (now === GONE) found.delete(key);
      else if (now !== undefined) found.set(key, seal(key, now, this.#rules.steps));
    }
  }

  /**
   * @param {any} raw
   * @returns {ReturnType<typeof read>}
   */
  #read(raw) {
    try {
      return read(raw, this.#rules);
    } catch (error) {
      // The validator could not tell. The record stays where it is, and is shown.
      console.error(error);
      return { record: raw };
    }
  }

  /**
   * Writes all that is not stored yet, oldest first.
   * @param {Change[]} asked the changes whose outcome the caller waits for
   * @returns {Promise<(Rec | undefined)[]>}
   */
  async #settle(asked) {
    /** @type {(Rec | undefined)[]} */
    let now = [];
    try {
      for (; this.#unsaved[0]; this.#unsaved.shift()) now = await this.#write(this.#unsaved[0]);
      this.#setTrouble(null);
    } catch (error) {
      const trouble = troubleBehind(error);
      if (!trouble) {
        this.#unsaved.shift();
        throw error;
      }
      this.#setTrouble(trouble);
      now = await Promise.all(asked.map(async ({ key }) => (await this.#look(key))[0]));
    }
    if (asked.length > 0) this.#tell([...new Set(asked.map(({ key }) => key))], 'here');
    return now;
  }

  /**
   * @param {Change[]} changes
   * @returns {Promise<(Rec | undefined)[]>}
   */
  async #write(changes) {
    const db = await this.#open();
    const tx = db.transaction(['records', 'aside'], 'readwrite', STRICT);
    const records = tx.objectStore('records');
    try {
      const now = [];
      for (const { key, fn, blind } of changes) {
        const raw = await records.get(key);
        const { record, reason } = raw === undefined ? {} : this.#read(raw);
        if (reason !== undefined) {
          if (!blind) throw new Unreadable(key, reason);
          await setAside(tx, key, raw, reason);
        }
        const data = fn(record?.data);
        if (data === GONE) await records.delete(key);
        else if (data !== undefined) await records.put(this.#checked(key, data));
        now.push(data === GONE ? undefined : data === undefined ? record : seal(key, data, this.#rules.steps));
      }
      await tx.done;
      this.#askToPersist();
      return now;
    } catch (error) {
      rollBack(tx);
      await tx.done.catch(() => {});
      throw error;
    }
  }

  /**
   * @param {string} key
   * @param {any} data
   * @returns {Rec}
   */
  #checked(key, data) {
    const record = seal(key, data, this.#rules.steps);
    const { reason } = this.#read(record);
    if (reason !== undefined) throw new TypeError(`${key} was not stored: ${reason}`);
    return record;
  }

  /**
   * @param {Database} db
   * @param {string} key
   */
  async #setAside(db, key) {
    const tx = db.transaction(['records', 'aside'], 'readwrite', STRICT);
    const raw = await tx.objectStore('records').get(key);
    const { reason } = raw === undefined ? {} : this.#read(raw);
    if (reason !== undefined) await setAside(tx, key, raw, reason);
    await tx.done;
  }

  /**
   * @template T
   * @param {(db: Database) => Promise<T>} work
   * @returns {Promise<T | undefined>} undefined when storage does not work
   */
  async #try(work) {
    try {
      return await work(await this.#open());
    } catch (error) {
      const trouble = troubleBehind(error);
      if (!trouble) throw error;
      this.#setTrouble(trouble);
    }
  }

  /** @returns {Promise<Database>} */
  #open() {
    const lost = (/** @type {Trouble | null} */ trouble) => {
      this.#db = null;
      if (trouble) this.#setTrouble(trouble);
    };
    this.#db ??= connect(this.#name, lost).catch((error) => {
      this.#db = null;
      throw error;
    });
    return this.#db;
  }

  /** Asks the browser not to clear the records to make room. Some browsers ask the user, so this waits for a change. */
  #askToPersist() {
    if (this.#asked) return;
    this.#asked = true;
    navigator.storage?.persist?.().catch(() => {});
  }

  /**
   * @param {string[] | null} keys
   * @param {'here' | 'elsewhere'} from
   */
  #tell(keys, from) {
    if (from === 'here' && keys) announce(keys);
    for (const watcher of this.#watchers) watcher(keys, from);
  }

  /** @param {Trouble | null} trouble */
  #setTrouble(trouble) {
    const same = this.trouble?.kind === trouble?.kind;
    this.trouble = trouble;
    if (!same) for (const watcher of this.#troubled) watcher(trouble);
  }
}
