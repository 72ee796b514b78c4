/**
 * All records at hand, so that a screen can be drawn at once. The store keeps them; this holds what it last said.
 */
import { ask, failed } from './ask.js';
import { openStore } from './store.js';

/** @typedef {import('./types').Batch} Batch */
/** @typedef {import('./types').Recipe} Recipe */
/** @typedef {import('./types').Settings} Settings */
/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {import('./store.js').Store} Store */

const BEGUN = 'meta/begun';
/** Ids of the batches put away, so that a start need not read them. Only a hint: each is read soon after. */
const AWAY = 'meta/away';
/** What the last calendar file left in the calendar, so that the next can take it off. */
const SENT = 'meta/calendar';
/** So many are read at a time while the page is idle. */
const AT_A_TIME = 25;

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
    if (this.#begun) return;
    await this.store.changeTogether([
      ...starters.map((recipe) => ({ key: `recipe/${newId()}`, fn: () => recipe, blind: true })),
      { key: BEGUN, fn: () => ({ at: Date.now() }), blind: true },
    ]);
    await this.refresh(null);
  }

  /**
   * Reads again what has changed, one change after the other.
   * @param {string[] | null} keys
   */
  follow(keys) {
    this.read = this.read.then(() => this.refresh(keys));
    if (keys?.some((key) => key.startsWith('batch/'))) this.read.then(() => this.#keepHint());
    return this.read;
  }

  /**
   * @param {string[] | null} keys the records to read again, null for all
   */
  async refresh(keys) {
    if (keys === null) {
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
    for (const key of keys) {
      const data = await this.store.get(key);
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

  /**
   * @param {string} id
   * @param {(batch: Batch) => Batch} change
   */
  changeBatch(id, change) {
    return this.store.change(`batch/${id}`, (batch) => batch && change(batch));
  }

  /**
   * @param {string} id
   * @param {(recipe: Recipe) => Recipe} change
   */
  changeRecipe(id, change) {
    return this.store.change(`recipe/${id}`, (recipe) => recipe && change(recipe));
  }

  /** @param {[string, number][]} jobs what is in the calendar now */
  keepSent(jobs) {
    return this.store.put(SENT, { jobs });
  }

  /** @param {Partial<Settings>} part */
  changeSettings(part) {
    return this.store.change('settings', (settings) => ({ ...(settings ?? this.#newest), ...part }));
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
 * @param {Promise<unknown>} ready settles when the core can be asked
 * @returns {Promise<Store>} the store, with the core as judge of what can be read
 */
export function openRecords(ready) {
  return openStore({
    ready,
    validate(key, data) {
      const kind = /** @type {'recipe' | 'batch' | 'settings' | 'stock' | 'meta'} */ (key.split('/', 1)[0]);
      if (kind === 'meta') return null;
      const { problems } = ask('check', /** @type {import('./types').Record} */ ({ [kind]: data }));
      if (failed(problems)) throw new Error('The core could not check the record.');
      return problems?.map(({ field, message }) => (field ? `${field}: ${message}` : message)).join(' ') ?? null;
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
