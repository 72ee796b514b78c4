/**
 * What is being typed and not stored yet, so that a reload, an update and a kill leave it where it was.
 *
 * Each tab has drafts of its own: what one has sent the other must not send again. Those of a tab that is gone are
 * taken over by the next that is opened.
 */
import { DRAFT } from './meta.js';
import { GONE } from './held.js';
import { isKey } from './records.js';

/** @typedef {import('./store.js').Store} Store */
/** @typedef {[string, string][]} Texts */

const TAB = 'cure-reckoner.tab';
/** So long the page that was here before may take to let go of its name: after a reload it surely does. */
const HANDOVER_MS = { reload: 5000, else: 300 };
/** What the last keys before a reload have typed: written at once, where the records may not be. */
const LAST = 'cure-reckoner.drafts';

/** @type {Map<string, Texts>} by the name of the form */
const drafts = new Map();
/** @type {Set<string>} names whose draft is to be stored */
const waiting = new Set();
/** @type {Store | null} */
let store = null;
let tab = '';
let writing = false;

/**
 * Reads the drafts of this tab and takes over those that nobody types any more.
 * @param {Store} records
 */
export async function openDrafts(records) {
  store = records;
  const [found] = await Promise.all([records.all(DRAFT), takeName()]);
  // The reload may have come before they were with the records.
  for (const [name, texts] of lastTyped()) keepDraft(name, texts);
  if (found.length === 0) return;
  const alive = await openTabs();
  for (const { key, data } of found) {
    const [, owner = '', name = ''] = /^meta\/draft-([a-z0-9]+)-(.+)$/.exec(key) ?? [];
    if (owner === tab && !drafts.has(name)) drafts.set(name, data.texts);
    else if (owner !== tab && !alive.has(owner)) {
      if (!drafts.has(name)) drafts.set(name, data.texts);
      waiting.add(name);
      records.changeTogether([{ key, fn: () => GONE, blind: true }], { quiet: true }).catch(console.error);
    }
  }
  write();
}

/** @param {string} name @returns {Texts} */
export function draftOf(name) {
  return drafts.get(name) ?? [];
}

/**
 * @param {string} name
 * @param {Texts} texts none: it is stored now, or no longer wanted
 */
export function keepDraft(name, texts) {
  if (texts.length === 0 && !drafts.has(name)) return;
  if (texts.length === 0) drafts.delete(name);
  else drafts.set(name, texts);
  remember();
  // A name too long for a record lives as long as the page.
  if (isKey(`${DRAFT}${tab}-${name}`)) waiting.add(name);
  write();
}

/** One writing at a time; what is typed meanwhile goes with the next. */
async function write() {
  if (writing || !store) return;
  writing = true;
  while (waiting.size > 0 && !store.trouble) {
    const changes = [...waiting].map((name) => {
      const texts = drafts.get(name);
      return { key: `${DRAFT}${tab}-${name}`, fn: () => (texts ? { texts } : GONE), blind: true };
    });
    waiting.clear();
    await store.changeTogether(changes, { quiet: true }).catch((error) => console.error(error));
  }
  writing = false;
}

/** A name for this tab that outlives a reload. Of two that have it, as after a copy of the tab, the second takes another. */
async function takeName() {
  let name = '';
  try {
    name = sessionStorage.getItem(TAB) ?? '';
  } catch {
    // A browser that keeps nothing: the name lives as long as the page.
  }
  if (!/^[a-z0-9]{1,12}$/.test(name) || !(await held(name))) {
    tab = (crypto.getRandomValues(new Uint32Array(1))[0] ?? 0).toString(36);
    await held(tab);
  } else tab = name;
  try {
    sessionStorage.setItem(TAB, tab);
  } catch {
    // As above.
  }
}

/** @param {string} name @returns {Promise<boolean>} true when it is this tab's until it is closed */
function held(name) {
  return new Promise((done) => {
    if (!navigator.locks) return done(true);
    navigator.locks
      .request(
        `${TAB}.${name}`,
        { signal: AbortSignal.timeout(reloaded() ? HANDOVER_MS.reload : HANDOVER_MS.else) },
        () => {
          done(true);
          return new Promise(() => {});
        },
      )
      .catch(() => done(false));
  });
}

/** @returns {Promise<Set<string>>} names of the tabs that are open */
async function openTabs() {
  const { held: locks = [] } = (await navigator.locks?.query().catch(() => null)) ?? {};
  return new Set(locks.map(({ name = '' }) => name.slice(TAB.length + 1)));
}

function reloaded() {
  const [entry] = performance.getEntriesByType('navigation');
  return /** @type {PerformanceNavigationTiming | undefined} */ (entry)?.type === 'reload';
}

/** Notes all drafts of this tab at once. */
function remember() {
  try {
    sessionStorage.setItem(LAST, JSON.stringify({ tab, drafts: [...drafts] }));
  } catch {
    // They are with the records a moment later.
  }
}

/** What was noted, if it was noted by this tab and not by one that it is a copy of. @returns {[string, Texts][]} */
function lastTyped() {
  try {
    const noted = JSON.parse(sessionStorage.getItem(LAST) ?? 'null');
    return noted?.tab === tab && Array.isArray(noted.drafts) ? noted.drafts : [];
  } catch {
    return [];
  }
}
