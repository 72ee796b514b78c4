/**
 * Recipes that a file brings and that are here already under another key: every browser puts in starter recipes of its
 * own, so two browsers of one cook have each of them twice.
 */
import { canonical } from './records.js';

/** @typedef {import('./backup.js').Row} Row */
/** @typedef {import('./records.js').Rec} Rec */

const isRecipe = (/** @type {{ key: string }} */ { key }) => key.startsWith('recipe/');
const nameOf = (/** @type {Rec | undefined} */ record) => record?.data?.name;

/**
 * The rows as they are to be shown. A starter here that nobody changed makes way for the file's recipe of its name. What
 * says the same as one here is the same, and the file's starter does not come in beside one's own of its name.
 * @param {Row[]} rows
 * @param {Map<string, Rec>} mine
 * @param {any[]} starters
 * @returns {Row[]}
 */
export function settled(rows, mine, starters) {
  const raw = new Set(starters.map(canonical));
  const isStarter = (/** @type {Rec | undefined} */ record) => raw.has(canonical(record?.data ?? null));
  const here = [...mine.values()].filter(isRecipe);
  const taken = new Set(rows.map(({ key }) => key));
  return rows.map((row) => {
    if (row.kind !== 'new' || !isRecipe(row)) return row;
    const others = here.filter(({ key }) => !taken.has(key));
    const named = others.filter((record) => nameOf(record) === nameOf(row.theirs));
    const starter = named.find(isStarter);
    if (starter) {
      taken.add(starter.key);
      return { ...row, replaces: starter };
    }
    const twin = others.some(({ data }) => canonical(data) === canonical(row.theirs?.data));
    return twin || (isStarter(row.theirs) && named.length > 0) ? { ...row, kind: 'same' } : row;
  });
}

/**
 * Whether nothing is here but what the first start puts in.
 * @param {Map<string, Rec>} mine
 * @param {any[]} starters
 */
export function isUntouched(mine, starters) {
  const raw = new Set(starters.map(canonical));
  return [...mine.values()].every((record) => isRecipe(record) && raw.has(canonical(record.data)));
}
