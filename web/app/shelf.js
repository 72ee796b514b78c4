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

export class Shelf {
  /** @type {Map<string, Recipe>} */
  recipes = new Map();
  /** @type {Map<string, Batch>} */
  batches = new Map();
  /** @type {Settings} */
  settings;

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
    if (await this.store.get(BEGUN)) return;
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
    return this.read;
  }

  /**
   * @param {string[] | null} keys the records to read again, null for all
   */
  async refresh(keys) {
    if (keys === null) {
      const [settings, recipes, batches] = await Promise.all(
        ['settings', 'recipe/', 'batch/'].map((prefix) => this.store.all(prefix)),
      );
      this.settings = settings?.[0]?.data ?? this.#newest;
      this.recipes = byId(recipes ?? []);
      this.batches = byId(batches ?? []);
      return;
    }
    for (const key of keys) {
      const data = await this.store.get(key);
      if (key === 'settings') this.settings = data ?? this.#newest;
      if (key.startsWith('recipe/')) put(this.recipes, idOf(key), data);
      if (key.startsWith('batch/')) put(this.batches, idOf(key), data);
    }
  }

  /** @returns {[string, Batch][]} batches not put away, the newest first */
  open() {
    return [...this.batches].filter(([, batch]) => !batch.closed).reverse();
  }

  /** @returns {[string, Batch][]} batches put away, the newest first */
  away() {
    return [...this.batches].filter(([, batch]) => batch.closed).reverse();
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

/** @returns {Promise<Store>} the store, with the core as judge of what can be read */
export function openRecords() {
  return openStore({
    validate(key, data) {
      const kind = /** @type {'recipe' | 'batch' | 'settings' | 'meta'} */ (key.split('/', 1)[0]);
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
