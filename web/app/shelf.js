/**
 * All records at hand, so that a screen can be drawn at once. The store keeps them; this holds what it last said.
 */
import { ask, failed } from './ask.js';
import { openDrafts } from './drafts.js';
import { GONE } from './held.js';
import { Overtaken, SHAPES, carry } from './merge.js';
import { AWAY, BEGUN, ODD, SENT, metaFault } from './meta.js';
import { placed, unplaced, withIds } from './places.js';
import { kindOf } from './records.js';
import { openStore } from './store.js';

/** @typedef {import('./types').Batch} Batch */
/** @typedef {import('./types').Recipe} Recipe */
/** @typedef {import('./types').Settings} Settings */
/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {import('./store.js').Store} Store */

/**
 * A record as it was and as it is made; undefined where there is none.
 * @typedef {{ key: string, from: any, to: any }} Move
 */

/** So many are read at a time while the page is idle. */
const AT_A_TIME = 25;
/** Of more records than so many all are read again at once. */
const MANY = 50;

export class Shelf {
  /** @type {Map<string, Recipe>} */
  recipes = new Map();
  /** @type {Map<string, Batch>} */
  batches = new Map();
  /** @type {Map<string, import('./types').Stock>} */
  stock = new Map();
  /** @type {[string, number][]} UIDs of jobs in the calendar, and when they were due */
  sent = [];
  /** @type {Settings} */
  settings;

  /** @type {Set<string>} ids of batches put away that are not read yet */
  #unread = new Set();
  #hint = '';
  #begun = false;
  #newest;
  /** @type {Promise<void>} settles when all that has changed is read again */
  read = Promise.resolve();

  /**
   * @param {Store} store
   * @param {Settings} settings of a page that has none yet
   */
  constructor(store, settings) {
    this.store = store;
    this.#newest = settings;
    this.settings = settings;
  }

  /**
   * Reads everything. On the very first start it puts the starter recipes in; deleting them is final.
   * @param {Recipe[]} starters
   */
  async fill(starters) {
    await this.refresh(null);
    await openDrafts(this.store);
    if (this.#begun) return;
    // Whether it is the first start is known once it is written: a store that cannot be read is not a new one.
    let first = false;
    await this.store.changeTogether([
      { key: BEGUN, fn: (now) => ((first = now === undefined), first ? { at: Date.now() } : undefined), blind: true },
      ...starters.map((recipe) => ({ key: `recipe/${newId()}`, fn: () => (first ? recipe : undefined), blind: true })),
    ]);
    await this.refresh(null);
  }

  /**
   * Reads again what has changed, one change after the other.
   * @param {string[] | null} keys
   */
  follow(keys) {
    this.read = this.read.then(() => this.refresh(keys)).catch((error) => console.error(error));
    if (keys?.some((key) => key.startsWith('batch/'))) this.read.then(() => this.#keepHint());
    return this.read;
  }

  /**
   * @param {string[] | null} keys the records to read again, null for all
   */
  async refresh(keys) {
    if (keys === null || keys.length > MANY) {
      // All that is not a batch lies side by side, and comes in one reading.
      const [records, batches] = await Promise.all([this.store.all('meta/', 'stock/'), this.store.keys('batch/')]);
      const found = new Map(records.map(({ key, data }) => [key, data]));
      const away = found.get(AWAY)?.ids ?? [];
      this.#begun = found.has(BEGUN);
      this.settings = found.get('settings') ?? this.#newest;
      this.recipes = byId(records.filter(({ key }) => key.startsWith('recipe/')));
      this.stock = byId(records.filter(({ key }) => key.startsWith('stock/')));
      this.sent = found.get(SENT)?.jobs ?? [];
      this.#hint = away.join();
      const ids = batches.map(idOf);
      const hinted = new Set(away);
      this.#unread = new Set(ids.filter((id) => hinted.has(id)));
      this.batches = new Map();
      if (this.#unread.size === 0) this.batches = byId(await this.store.all('batch/'));
      else await this.#readAll(ids.filter((id) => !hinted.has(id)));
      return;
    }
    // First all is read, then all is put in its place, so that no screen is drawn in between.
    const read = await Promise.all(keys.map((key) => this.store.get(key)));
    for (const [at, key] of keys.entries()) {
      const data = read[at];
      if (key.startsWith('batch/')) this.#unread.delete(idOf(key));
      if (key === 'settings') this.settings = data ?? this.#newest;
      if (key === SENT) this.sent = data?.jobs ?? [];
      if (key.startsWith('stock/')) put(this.stock, idOf(key), data);
      if (key.startsWith('recipe/')) put(this.recipes, idOf(key), data);
      if (key.startsWith('batch/')) put(this.batches, idOf(key), data);
    }
  }

  /** @param {string[]} ids */
  async #readAll(ids) {
    const read = await Promise.all(ids.map((id) => this.store.get(`batch/${id}`)));
    for (const [at, id] of ids.entries()) {
      put(this.batches, id, read[at]);
      this.#unread.delete(id);
    }
  }

  /**
   * Reads what was left out at the start, a little at a time while nothing else is to do.
   * @returns {Promise<void>}
   */
  async readRest() {
    while (this.#unread.size > 0) {
      await idle();
      // The newest first: they are looked for soonest.
      await this.#readAll([...this.#unread].slice(-AT_A_TIME));
    }
    await this.#keepHint();
  }

  /**
   * Reads one batch now that was left out at the start.
   * @param {string} id
   * @returns {Promise<void> | null} null where nothing is left out
   */
  fetch(id) {
    return this.#unread.has(id) ? this.#readAll([id]) : null;
  }

  async #keepHint() {
    const ids = [...this.batches].filter(([, batch]) => batch.closed).map(([id]) => id);
    const all = [...this.#unread, ...ids].sort();
    if (all.join() === this.#hint) return;
    this.#hint = all.join();
    await this.store.put(AWAY, { ids: all });
  }

  /** How many batches are here in all, read or not. */
  get size() {
    return this.batches.size + this.#unread.size;
  }

  /** How many are put away, read or not. */
  get awayCount() {
    return this.size - this.open().length;
  }

  /** @returns {[string, Batch][]} batches not put away, the newest first */
  open() {
    return newest([...this.batches].filter(([, batch]) => !batch.closed));
  }

  /** @returns {[string, Batch][]} batches put away that are read, the newest first */
  away() {
    return newest([...this.batches].filter(([, batch]) => batch.closed));
  }

  /** @returns {[string, Recipe][]} in the order of their names */
  cards() {
    return [...this.recipes].sort(([, a], [, b]) => a.name.localeCompare(b.name, 'en'));
  }

  /** How much is shown of each kind, batches that are not read yet too. The exported file must hold no less. */
  get shown() {
    return { batches: this.size, recipes: this.recipes.size, stock: this.stock.size };
  }

  /**
   * Changes a batch as the screen shows it; what another tab did to it meanwhile stays.
   * @param {string} id
   * @param {(batch: Batch) => Batch} change
   * @param {Batch} [seen] the batch that was looked at, where that is not the present one
   * @returns {Promise<Move[]>} for `takeBack`
   */
  changeBatch(id, change, seen = this.batches.get(id)) {
    return this.#change(`batch/${id}`, change, seen);
  }

  /**
   * @param {string} id
   * @param {(recipe: Recipe) => Recipe} change
   */
  changeRecipe(id, change) {
    return this.#change(`recipe/${id}`, change, this.recipes.get(id));
  }

  /**
   * @param {string} id
   * @param {(stock: import('./types').Stock) => import('./types').Stock} change
   */
  changeStock(id, change) {
    return this.#change(`stock/${id}`, change, this.stock.get(id));
  }

  /** @param {[string, number][]} jobs what is in the calendar now */
  keepSent(jobs) {
    return this.store.put(SENT, { jobs });
  }

  /** @param {Partial<Settings>} part */
  changeSettings(part) {
    return this.#change('settings', (settings) => ({ ...settings, ...part }), this.settings);
  }

  /**
   * Puts in something new.
   * @param {string} key
   * @param {any} data
   */
  add(key, data) {
    return this.move([{ key, from: undefined, to: data }]);
  }

  /**
   * Takes out something as the screen shows it.
   * @param {string} key
   */
  remove(key) {
    return this.move([{ key, from: this.#shown(key), to: undefined }]);
  }

  /** @param {string} key */
  #shown(key) {
    if (key === 'settings') return this.settings;
    /** @type {Record<string, Map<string, unknown>>} */
    const kinds = { batch: this.batches, recipe: this.recipes, stock: this.stock };
    return kinds[kindOf(key)]?.get(idOf(key));
  }

  /**
   * @template T
   * @param {string} key
   * @param {(data: T) => T} change
   * @param {T | undefined} seen
   */
  async #change(key, change, seen) {
    if (seen === undefined) throw new Overtaken(false);
    const from = known(key, seen);
    return this.move([{ key, from, to: change(from) }]);
  }

  /**
   * Carries changes onto what is stored, all of them or none.
   * @param {Move[]} moves
   * @param {{ back?: boolean }} [how] back: they are taken back
   * @returns {Promise<Move[]>} what was stored before and after
   */
  async move(moves, { back = false } = {}) {
    const done = [...moves];
    const ready = moves.map(({ key, from, to }) => ({ key, from, to: known(key, to, () => newId()) }));
    await this.store.changeTogether(
      ready.map(({ key, from, to }, at) => ({
        key,
        blind: from === undefined,
        fn: (stored) => {
          const now = known(key, stored ?? (key === 'settings' ? this.#newest : undefined));
          const next = carried(key, from, to, now, back);
          done[at] = { key, from: now, to: next };
          return next ?? (stored === undefined ? undefined : GONE);
        },
      })),
    );
    return done;
  }

  /** Takes back what `move` did, and nothing that another tab did since. @param {Move[]} moves */
  takeBack(moves) {
    return this.move(
      moves.map(({ key, from, to }) => ({ key, from: to, to: from })),
      { back: true },
    );
  }

  /**
   * A tag that no other batch under way has: `SD`, `SD2`, `SD3`.
   * @param {string} tag
   */
  freeTag(tag) {
    const taken = new Set(this.open().map(([, batch]) => batch.tag));
    for (let n = 1; ; n++) {
      const free = n === 1 ? tag : tag + n;
      if (!taken.has(free)) return free;
    }
  }
}

/**
 * @param {() => Promise<unknown>} ready settles when the core can judge any record
 * @returns {Promise<Store>} the store, with the core as judge of what can be read
 */
export function openRecords(ready) {
  return openStore({
    ready,
    validate(key, data) {
      const kind = /** @type {'recipe' | 'batch' | 'settings' | 'stock' | 'meta'} */ (key.split('/', 1)[0]);
      if (kind === 'meta') return metaFault(key, data);
      const { problems } = ask('check', /** @type {import('./types').Record} */ ({ [kind]: data }));
      if (failed(problems)) throw new Error('The core could not check the record.');
      // What is wrong with the form as a whole is said in the words of a machine.
      const odd = problems?.some(({ code, field }) => code === 'bad_form' && (field === '' || field === kind));
      return odd ? ODD : (problems?.map(({ message }) => message).join(' ') ?? null);
    },
  });
}

/**
 * Ids sort by the time they were made. `crypto.randomUUID` is missing on a plain http address.
 * @returns {string}
 */
export function newId() {
  const [a = 0, b = 0] = crypto.getRandomValues(new Uint32Array(2));
  const part = (/** @type {number} */ n, /** @type {number} */ length) => n.toString(36).padStart(length, '0');
  return `${part(Date.now(), 9)}-${part(a, 7)}${part(b, 7)}`;
}

/**
 * A record in which all that can be addressed has an id.
 * @param {string} key
 * @param {any} data
 * @param {Parameters<typeof withIds>[1]} [give]
 */
function known(key, data, give) {
  return data !== undefined && key.startsWith('batch/') ? withIds(data, give) : data;
}

/**
 * @param {string} key
 * @param {any} from
 * @param {any} to
 * @param {any} onto
 * @param {boolean} back
 */
function carried(key, from, to, onto, back) {
  const kind = kindOf(key);
  const shape = SHAPES[kind] ?? {};
  if (kind !== 'batch') return carry(shape, from, to, onto, back);
  return placed(carry(shape, unplaced(from), unplaced(to), unplaced(onto), back), back);
}

/** @param {string} key */
function idOf(key) {
  return key.slice(key.indexOf('/') + 1);
}

/** @param {[string, Batch][]} batches */
function newest(batches) {
  return batches.sort(([a], [b]) => (a < b ? 1 : -1));
}

/** When the page has nothing else to do. Some browsers cannot say. @returns {Promise<unknown>} */
function idle() {
  return new Promise((done) => {
    if ('requestIdleCallback' in window) requestIdleCallback(done, { timeout: 500 });
    else setTimeout(done, 20);
  });
}

/** @param {Rec[]} records */
function byId(records) {
  return new Map(records.map(({ key, data }) => [idOf(key), data]));
}

/**
 * @template T
 * @param {Map<string, T>} map
 * @param {string} id
 * @param {T | undefined} data
 */
function put(map, id, data) {
  if (data === undefined) map.delete(id);
  else map.set(id, data);
}
