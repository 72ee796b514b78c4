/**
 * All records as one file, and back again.
 *
 * `meta/` records are about this browser, not about the user's work, and do not travel.
 */
import { canonical, read } from './records.js';

/** @typedef {import('./records.js').Rec} Rec */
/** @typedef {import('./store.js').Store} Store */
/** @typedef {'new' | 'same' | 'different' | 'unreadable'} RowKind */
/** @typedef {{ key: string, kind: RowKind, mine?: Rec, theirs?: Rec, reason?: string }} Row */
/** @typedef {{ made: string, sum: 'matches' | 'differs' | 'unchecked', rows: Row[], apply: Apply }} Plan */
/** @typedef {(choices?: Record<string, 'mine' | 'theirs'>) => Promise<{ written: string[], skipped: string[] }>} Apply */
/** @typedef {{ code: 'too-large' | 'not-json' | 'not-a-backup' | 'newer-backup', message: string }} Refusal */

const FORMAT = 'cure-reckoner-backup';
const VERSION = 1;
const LONGEST = 32_000_000;
const LAST = 'meta/last-export';
const TRAVELS = ['batch/', 'recipe/', 'settings', 'stock/'];

/**
 * Everything, what was set aside too, as a file. Notes the time, for `lastExport`.
 * @param {Store} store
 * @returns {Promise<{ name: string, text: string }>}
 */
export async function exportAll(store) {
  const records = (await Promise.all(TRAVELS.map((prefix) => store.all(prefix)))).flat();
  const aside = await store.aside();
  const made = new Date().toISOString();
  const sum = await checksum({ records, aside });
  const text = JSON.stringify({ format: FORMAT, v: VERSION, made, records, aside, sum }, null, 1);
  await store.put(LAST, { made });
  return { name: `cure-reckoner-${made.slice(0, 10)}.json`, text };
}

/**
 * @param {Store} store
 * @returns {Promise<string | null>} when the last file was made, ISO, or null
 */
export async function lastExport(store) {
  return (await store.get(LAST))?.made ?? null;
}

/**
 * Reads a file and says, record by record, what taking it would do. Nothing is stored until `apply` is called.
 *
 * `apply` stores the new records, and the different ones for which the choice is `theirs`, in one transaction. The
 * choice `mine` leaves a new record out. A record that has changed since the plan was made is skipped and named.
 * @param {Store} store
 * @param {string} text
 * @returns {Promise<{ plan: Plan, problem?: undefined } | { plan?: undefined, problem: Refusal }>}
 */
export async function importAll(store, text) {
  const { file, problem } = parse(text);
  if (problem) return { problem };

  const aside = Array.isArray(file.aside) ? file.aside : [];
  // What was unreadable where the file was made may be readable here.
  const raws = [...file.records, ...aside.map((/** @type {any} */ item) => item?.raw)];
  const mine = new Map();
  for (const prefix of TRAVELS) for (const record of await store.all(prefix)) mine.set(record.key, record);
  /** @type {Map<string, Row>} */
  const rows = new Map();
  for (const [at, raw] of raws.entries()) {
    const row = compare(store, mine, raw, `record ${at + 1}`);
    // Of two records with one name the first counts; the second is named so that nobody misses it.
    rows.set(rows.has(row.key) ? `${row.key} (record ${at + 1})` : row.key, row);
  }
  const list = [...rows].map(([name, row]) => (name === row.key ? row : twice(name)));
  return {
    plan: {
      made: typeof file.made === 'string' ? file.made : '',
      sum: await judge(file),
      rows: list,
      apply: (choices = {}) => apply(store, list, choices),
    },
  };
}

/**
 * @param {string} text
 * @returns {{ file: any, problem?: undefined } | { file?: undefined, problem: Refusal }}
 */
function parse(text) {
  if (text.length > LONGEST) {
    return refuse('too-large', `The file has ${text.length} characters. The most that is read is ${LONGEST}.`);
  }
  let file;
  try {
    file = JSON.parse(text);
  } catch {
    return refuse(
      'not-json',
      'The file is cut short or damaged and cannot be read. Nothing was changed. Use another copy of the file.',
    );
  }
  if (file?.format !== FORMAT || !Array.isArray(file.records) || !Number.isInteger(file.v)) {
    return refuse(
      'not-a-backup',
      'This is not a file that Cure Reckoner exported. Nothing was changed. Its name begins with cure-reckoner.',
    );
  }
  if (file.v > VERSION) {
    return refuse(
      'newer-backup',
      `The file is version ${file.v}, and this page reads up to version ${VERSION}. Reload the page to get the ` +
        'newest version, then try again.',
    );
  }
  return { file };
}

/**
 * @param {Refusal['code']} code
 * @param {string} message
 */
function refuse(code, message) {
  return { problem: { code, message } };
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
    result = { reason: 'it could not be checked' };
  }
  const { record: theirs, reason } = result;
  if (!theirs) return { key: name, kind: 'unreadable', reason };
  if (theirs.key.startsWith('meta/')) {
    return { key: name, kind: 'unreadable', reason: 'it belongs to the browser that made the file' };
  }
  const here = mine.get(theirs.key);
  if (!here) return { key: theirs.key, kind: 'new', theirs };
  const same = canonical(here.data) === canonical(theirs.data);
  return { key: theirs.key, kind: same ? 'same' : 'different', mine: here, theirs };
}

/**
 * @param {string} name
 * @returns {Row}
 */
function twice(name) {
  return { key: name, kind: 'unreadable', reason: 'the file has two records of this name; the first one counts' };
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
  await store.changeTogether(
    wanted.map(({ key, mine, theirs }) => ({
      key,
      fn: (now) => {
        const untouched = canonical(now ?? null) === canonical(mine?.data ?? null);
        if (!untouched) return undefined;
        written.add(key);
        return theirs?.data;
      },
    })),
  );
  const keys = wanted.map(({ key }) => key);
  return { written: keys.filter((key) => written.has(key)), skipped: keys.filter((key) => !written.has(key)) };
}

/**
 * @param {any} file
 * @returns {Promise<'matches' | 'differs' | 'unchecked'>}
 */
async function judge({ records, aside = [], sum }) {
  try {
    const reckoned = await checksum({ records, aside });
    if (reckoned === null || sum === null) return 'unchecked';
    return reckoned === sum ? 'matches' : 'differs';
  } catch {
    // Nested so deep that no page can have written it.
    return 'differs';
  }
}

/**
 * @param {{ records: any[], aside: any[] }} content
 * @returns {Promise<string | null>} null where the browser has no digests: over plain http from another machine
 */
async function checksum(content) {
  if (!globalThis.crypto?.subtle) return null;
  // By way of JSON, so that what the file cannot hold does not count.
  const bytes = new TextEncoder().encode(canonical(JSON.parse(JSON.stringify(content))));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return 'sha256:' + Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
