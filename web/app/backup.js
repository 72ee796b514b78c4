/**
 * All records as one file, and back again.
 *
 * `meta/` records are about this browser, not about the user's work, and do not travel.
 */
import { Damaged, checksum, each, parse, write } from './backup-text.js';
import { connect } from './database.js';
import { GONE } from './held.js';
import { EXPORTED } from './meta.js';
import { isUntouched, settled } from './namesakes.js';
import { canonical, read } from './records.js';
import { NAME } from './store.js';
import { NOT_MADE, NOT_TAKEN, record, recordOf } from '../words/en/backup.js';
import { REASONS } from '../words/en/storage.js';

/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {import('./store.js').Store} Store */
/** @typedef {'new' | 'same' | 'different' | 'unreadable'} RowKind */
/** @typedef {{ key: string, kind: RowKind, mine?: Rec, theirs?: Rec, reason?: string, called?: string, replaces?: Rec }} Row */
/** @typedef {{ made: string, sum: 'matches' | 'differs' | 'unchecked', rows: Row[], untouched: boolean, apply: Apply }} Plan */
/** @typedef {(choices?: Record<string, 'mine' | 'theirs'>) => Promise<{ written: string[], skipped: string[] }>} Apply */
/** @typedef {import('./backup-text.js').Watch} Watch */
/** @typedef {Record<'batches' | 'recipes' | 'stock', number>} Counts */
/** @typedef {{ code: 'not-json' | 'not-a-backup' | 'newer-backup' | 'cancelled', message: string }} Refusal */

const FORMAT = 'cure-reckoner-backup';
const VERSION = 1;
const TRAVELS = ['batch/', 'recipe/', 'settings', 'stock/'];

/** What is stored was never read, so a file would hold nothing of it. */
export class Unread extends Error {
  constructor() {
    super(NOT_MADE.unread);
    this.name = 'Unread';
  }
}

/** The file would leave something out. */
export class Incomplete extends Error {
  /** @param {Counts} shown @param {Counts} holds */
  constructor(shown, holds) {
    super(NOT_MADE.incomplete(shown, holds));
    this.name = 'Incomplete';
  }
}

/**
 * Everything, what was set aside too, as a file. Notes the time, for `lastExport`.
 * @param {Store} store
 * @param {Watch & { shown?: Counts }} [how] shown: how much the page shows; a file that would hold less is not made
 * @returns {Promise<{ name: string, text: string, holds: Counts }>}
 */
export async function exportAll(store, { shown, ...watch } = {}) {
  if (store.blind) throw new Unread();
  const records = (await Promise.all(TRAVELS.map((prefix) => store.all(prefix)))).flat();
  const holds = counted(records);
  if (
    shown &&
    Object.keys(holds).some(
      (kind) => holds[/** @type {keyof Counts} */ (kind)] < shown[/** @type {keyof Counts} */ (kind)],
    )
  ) {
    throw new Incomplete(shown, holds);
  }
  const aside = await store.aside();
  const made = new Date().toISOString();
  // What a newer page wrote goes along as it is.
  const all = [...records, ...(await store.newerRecords())];
  const text = await write({ format: FORMAT, v: VERSION, made }, all, aside, watch);
  await store.put(EXPORTED, { made });
  return { name: fileName(made), text, holds };
}

/**
 * Everything as it lies in the database, read by no rule: for a page that cannot start.
 * @returns {Promise<{ name: string, text: string }>}
 */
export async function exportStored() {
  const db = await connect(NAME, () => {});
  const [records, aside] = await Promise.all([db.getAll('records'), db.getAll('aside')]);
  db.close();
  const made = new Date().toISOString();
  const mine = records.filter(({ key }) => !String(key).startsWith('meta/') && writable({ key }));
  const text = await write({ format: FORMAT, v: VERSION, made }, mine.filter(writable), aside.filter(writable));
  return { name: fileName(made), text };
}

/** Hands a file to the person. @param {{ name: string, text: string }} file */
export function download({ name, text }) {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  Object.assign(document.createElement('a'), { href: url, download: name }).click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** @param {string} made */
function fileName(made) {
  return `cure-reckoner-${made.slice(0, 10)}.json`;
}

/** @param {Rec[]} records @returns {Counts} */
function counted(records) {
  const of = (/** @type {string} */ prefix) => records.filter(({ key }) => key.startsWith(prefix)).length;
  return { batches: of('batch/'), recipes: of('recipe/'), stock: of('stock/') };
}

/** Whether a file can hold it: a thing that holds itself has no end. @param {any} raw */
function writable(raw) {
  try {
    return JSON.stringify(raw) !== undefined;
  } catch {
    return false;
  }
}

/**
 * @param {Store} store
 * @returns {Promise<string | null>} when the last file was made, ISO, or null
 */
export async function lastExport(store) {
  return (await store.get(EXPORTED))?.made ?? null;
}

/**
 * Reads a file and says, record by record, what taking it would do. Nothing is stored until `apply` is called.
 *
 * `apply` stores the new records, and the different ones for which the choice is `theirs`, in one transaction. The
 * choice `mine` leaves a new record out. A record that has changed since the plan was made is skipped and named.
 * @param {Store} store
 * @param {string} text
 * @param {Watch & { starters?: any[] }} [watch] starters: the recipes that the first start puts in
 * @returns {Promise<{ plan: Plan, problem?: undefined } | { plan?: undefined, problem: Refusal }>}
 */
export async function importAll(store, text, watch = {}) {
  try {
    return await planned(store, text, watch);
  } catch (error) {
    if (watch.signal?.aborted) return refuse('cancelled');
    throw error;
  }
}

/**
 * @param {Store} store
 * @param {string} text
 * @param {Watch & { starters?: any[] }} watch
 * @returns {Promise<{ plan: Plan, problem?: undefined } | { plan?: undefined, problem: Refusal }>}
 */
async function planned(store, text, { progress = () => {}, signal, starters = [] }) {
  const half = (/** @type {number} */ from) => (/** @type {number} */ share) => progress(from + share / 2);
  const { file, problem } = await opened(text, { progress: half(0), signal });
  if (problem) return { problem };

  const aside = Array.isArray(file.aside) ? file.aside : [];
  // What was unreadable where the file was made may be readable here.
  const raws = [...file.records, ...aside.map((/** @type {any} */ item) => item?.raw)];
  const mine = new Map();
  for (const prefix of TRAVELS) for (const record of await store.all(prefix)) mine.set(record.key, record);
  /** @type {Map<string, Row>} */
  const rows = new Map();
  const work = (/** @type {any} */ raw, /** @type {number} */ at) => {
    const row = compare(store, mine, raw, record(at + 1));
    // Of two records with one name the first counts; the second is named so that nobody misses it.
    rows.set(rows.has(row.key) ? recordOf(row.key, at + 1) : row.key, row);
  };
  await each(raws, work, { progress: half(0.5), signal });
  const found = [...rows].map(([name, row]) => (name === row.key ? row : twice(name, row)));
  const list = settled(found, mine, starters);
  return {
    plan: {
      made: typeof file.made === 'string' ? file.made : '',
      sum: await judge(file, { signal }),
      rows: list,
      untouched: isUntouched(mine, starters),
      apply: (choices = {}) => apply(store, list, choices),
    },
  };
}

/**
 * @param {string} text
 * @param {Watch} watch
 * @returns {Promise<{ file: any, problem?: undefined } | { file?: undefined, problem: Refusal }>}
 */
async function opened(text, watch) {
  let file;
  try {
    file = await parse(text, watch);
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    // A word or a number is whole, and no file of ours.
    if (/^\s*(null|true|false|-?\d+|"[^"]*")\s*$/.test(text.slice(0, 1000))) return opened('{}', watch);
    return refuse('not-json');
  }
  if (file.format !== FORMAT || !Array.isArray(file.records) || !Number.isInteger(file.v)) {
    return refuse('not-a-backup');
  }
  if (file.v > VERSION) {
    return refuse('newer-backup');
  }
  return { file };
}

/** @param {Refusal['code']} code */
function refuse(code) {
  return { problem: { code, message: NOT_TAKEN[code] } };
}

/**
 * @param {Store} store
 * @param {Map<string, Rec>} mine
 * @param {any} raw
 * @param {string} place what to call a record that has no usable name
 * @returns {Row}
 */
function compare(store, mine, raw, place) {
  const name = typeof raw?.key === 'string' ? raw.key.slice(0, 80) : place;
  let result;
  try {
    result = read(raw, store.rules);
  } catch {
    result = { reason: REASONS.unchecked };
  }
  const { record: theirs, reason } = result;
  const called = typeof raw?.data?.name === 'string' ? raw.data.name.slice(0, 60) : undefined;
  if (!theirs) return { key: name, kind: 'unreadable', reason, called };
  if (theirs.key.startsWith('meta/')) {
    return { key: name, kind: 'unreadable', reason: REASONS.elsewhere };
  }
  const here = mine.get(theirs.key);
  if (!here) return { key: theirs.key, kind: 'new', theirs };
  const same = canonical(here.data) === canonical(theirs.data);
  return { key: theirs.key, kind: same ? 'same' : 'different', mine: here, theirs };
}

/**
 * @param {string} name
 * @param {Row} row
 * @returns {Row}
 */
function twice(name, { called, theirs }) {
  return {
    key: name,
    kind: 'unreadable',
    called: called ?? theirs?.data?.name,
    reason: REASONS.twice,
  };
}

/**
 * @param {Store} store
 * @param {Row[]} rows
 * @param {Record<string, 'mine' | 'theirs'>} choices
 */
async function apply(store, rows, choices) {
  const wanted = rows.filter(
    ({ key, kind }) =>
      (kind === 'new' && choices[key] !== 'mine') || (kind === 'different' && choices[key] === 'theirs'),
  );
  const written = new Set();
  const is = (/** @type {any} */ now, /** @type {Rec | undefined} */ was) =>
    canonical(now ?? null) === canonical(was?.data ?? null);
  const takes = wanted.map(({ key, mine, theirs }) => ({
    key,
    fn: (/** @type {any} */ now) => {
      if (!is(now, mine)) return undefined;
      written.add(key);
      return theirs?.data;
    },
  }));
  // A starter that was changed while the plan was shown stays beside the one from the file.
  const makesWay = wanted.flatMap(({ replaces: old }) =>
    old ? [{ key: old.key, fn: (/** @type {any} */ now) => (is(now, old) ? GONE : undefined) }] : [],
  );
  await store.changeTogether([...takes, ...makesWay]);
  const keys = wanted.map(({ key }) => key);
  return { written: keys.filter((key) => written.has(key)), skipped: keys.filter((key) => !written.has(key)) };
}

/**
 * @param {any} file
 * @param {Watch} watch
 * @returns {Promise<'matches' | 'differs' | 'unchecked'>}
 */
async function judge({ records, aside = [], sum }, { signal }) {
  try {
    const worked = await checksum(records, aside, { signal });
    if (worked === null || sum === null) return 'unchecked';
    return worked === sum ? 'matches' : 'differs';
  } catch {
    signal?.throwIfAborted();
    // Nested so deep that no page can have written it, or not a list at all.
    return 'differs';
  }
}
