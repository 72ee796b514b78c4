/**
 * Everything the user keeps, in IndexedDB.
 *
 * Every change is one transaction that has reached the disk when its promise settles. When storage does not work, what
 * was read and written last is still known here, and the changes are held and laid over it: the page goes on, and the
 * exported file has everything. They are written, in order, as soon as storage works again. A store that cannot be read
 * is never taken for an empty one, nor an empty one for that which was read before.
 */
import { Connection } from './connection.js';
import { LAYOUT, STRICT, rollBack, setAside } from './database.js';
import { freshLog } from './fresh-log.js';
import { GONE, Held } from './held.js';
import { Refused, STEPS, Unreadable, isKey, kindOf, read, seal } from './records.js';
import { Slices } from './slices.js';
import { announce, listen } from './tabs.js';
import { Trouble, troubleBehind } from './trouble.js';

/** @typedef {import('./database.js').Aside} Aside */
/** @typedef {import('./database.js').Database} Database */
/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {import('./records.js').Rules} Rules */
/**
 * Takes what is stored (undefined when nothing is) and gives what shall be stored; undefined leaves all as it is.
 * It may run more than once, so it does nothing else.
 * @typedef {(data: any) => any} Fn
 */
/** @typedef {{ key: string, fn: Fn, blind?: boolean }} Change */
/** @typedef {(keys: string[] | null, from: 'here' | 'elsewhere') => void} Watcher */

export const NAME = 'cure-reckoner';
/** What storage would not take is tried again after so long. */
const AGAIN_MS = 5000;
/** Longer than this, in ms, no write waits for a new log: a browser that does not answer is told of by the write itself. */
const LATE = 2000;
/** Troubles that may pass by themselves. */
const PASSING = ['full', 'blocked', 'failed'];

/**
 * Opens the records. Never rejects: if storage does not work, `trouble` says so and the store works from memory.
 * @param {Partial<Rules> & { name?: string, ready?: () => Promise<unknown> }} [options] `ready`: when the validator can judge
 * @returns {Promise<Store>}
 */
export async function openStore({ validate = () => null, steps = STEPS, name = NAME, ready } = {}) {
  const store = new Store(name, { validate, steps });
  await store.bringBack(ready);
  store.freshen();
  return store;
}

export class Store {
  /** @type {Trouble | null} */
  trouble = null;

  #connection;
  #rules;
  #held;
  /** @type {Set<string>} keys of records that a newer page wrote: they are left alone */
  #newer = new Set();
  #again = 0;
  #hasRead = false;
  /** @type {Set<(error: unknown) => void>} */
  #dropped = new Set();
  /** @type {Promise<unknown>} settles when all changes so far are dealt with */
  #turn = Promise.resolve();
  /** @type {Promise<unknown>} settles when a new log is begun */
  #fresh = Promise.resolve();
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
    this.#connection = new Connection(name, (trouble) => {
      if (trouble) this.#setTrouble(trouble);
      // Looked at now rather than with the next change: what was cleared is told while it can be put back.
      else this.#tell(null, 'elsewhere');
    });
    this.#rules = rules;
    this.#held = new Held(rules.steps);
    // What a later page calls its records is none of this one's business.
    listen((keys) => this.#tell(keys?.filter(isKey) ?? null, 'elsewhere'));
  }

  /** @returns {Rules} */
  get rules() {
    return this.#rules;
  }

  /** How many records a newer page wrote; this one leaves them alone. */
  get newer() {
    return this.#newer.size;
  }

  /** Whether there is something stored, for all this page knows, that could not be read yet. */
  get blind() {
    return !this.#hasRead && this.trouble !== null && !['off', 'unavailable'].includes(this.trouble.kind);
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
   * Calls back when a change that was held can be made no more.
   * @param {(error: unknown) => void} watcher
   */
  onDropped(watcher) {
    this.#dropped.add(watcher);
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
    const seen = await this.#try(() => this.#connection.look((records) => records.getAllKeys(range)));
    const stored = (seen ?? [...this.#held.known.keys()].filter((key) => key.startsWith(prefix))).filter(isKey);
    const unsaved = this.#held.changing;
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
   * @param {{ quiet?: boolean }} [how] quiet: nobody needs to hear of it
   * @returns {Promise<(Rec | undefined)[]>} the records as they are now
   */
  changeTogether(changes, { quiet = false } = {}) {
    for (const { key } of changes) kindOf(key);
    const turn = this.#turn.then(() => {
      this.#held.unsaved.push(changes);
      return this.#settle(changes, quiet);
    });
    this.#turn = turn.catch(() => {});
    return turn;
  }

  /**
   * Tries again to write what storage would not take. Where site data was cleared, what is known here is put back.
   * @returns {Promise<Trouble | null>} the trouble that is left
   */
  async retry() {
    const cleared = this.trouble?.kind === 'cleared';
    const turn = this.#turn.then(async () => {
      if (cleared) await this.#try(() => this.#connection.putBack(this.#held.known.values()));
      return this.#settle([], true);
    });
    this.#turn = turn.catch(() => {});
    await turn;
    return this.trouble;
  }

  /**
   * The records that could not be read, with the reasons. They are never deleted.
   * @returns {Promise<Aside[]>}
   */
  async aside() {
    return (await this.#try(() => this.#connection.reach((db) => db.getAll('aside')))) ?? [];
  }

  /**
   * The records that a newer page wrote, as they are stored.
   * @returns {Promise<any[]>}
   */
  async newerRecords() {
    const keys = [...this.#newer];
    const raws = await this.#try(() =>
      this.#connection.reach((db) => Promise.all(keys.map((key) => db.get('records', key)))),
    );
    return (raws ?? []).filter((raw) => raw !== undefined);
  }

  /**
   * Puts back what was set aside and can be read by now, say after a new version of the page has come.
   * @param {() => Promise<unknown>} [ready] when the validator can judge; waited for only where something was set aside
   * @returns {Promise<void>}
   */
  async bringBack(ready) {
    await this.#try(() =>
      this.#connection.reach(async (db) => {
        if (db.version > LAYOUT || (await db.count('aside')) === 0) return;
        await ready?.();
        const tx = db.transaction(['records', 'aside'], 'readwrite', STRICT);
        for (const item of await tx.objectStore('aside').getAll()) {
          const key = item.raw?.key;
          const free = typeof key === 'string' && (await tx.objectStore('records').getKey(key)) === undefined;
          const { record, newer } = this.#read(item.raw);
          if (!free || !(record || newer)) continue;
          await tx.objectStore('records').put(item.raw);
          await tx.objectStore('aside').delete(/** @type {number} */ (item.id));
        }
        await tx.done;
      }),
    );
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
    const wanted = (/** @type {string} */ key) => (typeof query === 'string' ? key === query : query.includes(key));
    const known = () => [...this.#held.known].filter(([key]) => wanted(key));
    const raws = await this.#try(() => this.#connection.look((records) => records.getAll(query)));
    /** @type {Map<string, Rec>} */
    const found = new Map(raws ? [] : known());
    const slices = new Slices();
    for (const raw of raws ?? []) {
      const { record, newer } = this.#read(raw);
      if (record) found.set(record.key, record);
      else if (newer) this.#newer.add(raw.key);
      else await this.#try(() => this.#setAside(raw.key));
      if (slices.full) await slices.next();
    }
    if (raws) {
      this.#hasRead = true;
      this.#held.saw(found, wanted);
    }
    this.#held.overlay(found, wanted);
    return [...found.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
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

  /** Nothing is written behind what an earlier start may have left half written. */
  freshen() {
    const late = new Promise((done) => setTimeout(done, LATE));
    this.#fresh = Promise.race([freshLog().catch(() => {}), late]);
  }

  /**
   * Writes all that is not stored yet, oldest first.
   * @param {Change[]} asked the changes whose outcome the caller waits for
   * @param {boolean} quiet
   * @returns {Promise<(Rec | undefined)[]>}
   */
  async #settle(asked, quiet) {
    /** @type {(Rec | undefined)[]} */
    let now = [];
    while (this.#held.unsaved[0]) {
      const changes = this.#held.unsaved[0];
      try {
        await this.#fresh;
        if (this.trouble && PASSING.includes(this.trouble.kind)) await freshLog();
        now = await this.#connection.reach((db) => this.#write(db, changes));
        this.#held.unsaved.shift();
      } catch (error) {
        const trouble = troubleBehind(error);
        if (trouble) {
          this.#setTrouble(trouble);
          now = await Promise.all(asked.map(async ({ key }) => (await this.#look(key))[0]));
          break;
        }
        this.#held.unsaved.shift();
        if (changes === asked) throw error;
        // An older change that can be made no more does not hold up what came after it, and is told.
        for (const watcher of this.#dropped) watcher(error);
      }
    }
    // That something could be written does not say that it can be read.
    if (!this.#held.unsaved[0] && this.trouble && (await this.#works())) this.#setTrouble(null);
    if (asked.length > 0 && !quiet) this.#tell([...new Set(asked.map(({ key }) => key))], 'here');
    return now;
  }

  async #works() {
    return this.#try(() => this.#connection.look((records) => records.getAll('settings').then(() => true)));
  }

  /**
   * @param {Database} db
   * @param {Change[]} changes
   * @returns {Promise<(Rec | undefined)[]>}
   */
  async #write(db, changes) {
    if (db.version > LAYOUT) throw new Trouble('newer');
    const tx = db.transaction(['records', 'aside'], 'readwrite', STRICT);
    const records = tx.objectStore('records');
    try {
      await this.#connection.same(tx);
      const now = [];
      for (const { key, fn, blind } of changes) {
        const raw = await records.get(key);
        const { record, reason, newer } = raw === undefined ? {} : this.#read(raw);
        if (reason !== undefined) {
          if (!blind || newer) throw new Unreadable(reason);
          await setAside(tx, key, raw, reason);
        }
        const data = fn(record?.data);
        const sealed = data === GONE ? undefined : data === undefined ? record : this.#checked(key, data);
        if (data === GONE) await records.delete(key);
        else if (data !== undefined) await records.put(sealed);
        now.push(sealed);
      }
      await tx.done;
      this.#held.wrote(changes, now);
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
    if (reason !== undefined) throw new Refused(reason);
    return record;
  }

  /** @param {string} key */
  #setAside(key) {
    return this.#connection.reach(async (db) => {
      if (db.version > LAYOUT) return;
      const tx = db.transaction(['records', 'aside'], 'readwrite', STRICT);
      const raw = await tx.objectStore('records').get(key);
      const { reason, newer } = raw === undefined ? {} : this.#read(raw);
      if (reason !== undefined && !newer) await setAside(tx, key, raw, reason);
      await tx.done;
    });
  }

  /**
   * @template T
   * @param {() => Promise<T>} work
   * @returns {Promise<T | undefined>} undefined when storage does not work
   */
  async #try(work) {
    try {
      return await work();
    } catch (error) {
      const trouble = troubleBehind(error);
      if (!trouble) throw error;
      this.#setTrouble(trouble);
    }
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
    if (!trouble && this.#connection.old) return;
    const same = this.trouble?.kind === trouble?.kind;
    this.trouble = trouble;
    clearTimeout(this.#again);
    if (trouble && PASSING.includes(trouble.kind)) this.#again = setTimeout(() => this.retry(), AGAIN_MS);
    if (!same) for (const watcher of this.#troubled) watcher(trouble);
  }
}
