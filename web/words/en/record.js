/** What a record is called on a screen: never by its key. */

/** By what a key begins with. @type {Record<string, string>} */
const KINDS = { 'batch/': 'Batch', 'recipe/': 'Recipe', 'stock/': 'Stock', settings: 'Settings' };

/**
 * @param {string} key
 * @param {{ tag?: unknown, name?: unknown } | null | undefined} [data] what is in it, as far as that can be read
 */
export function recordName(key, data) {
  const [, kind = 'Something else'] = Object.entries(KINDS).find(([start]) => key.startsWith(start)) ?? [];
  const words = [data?.tag, data?.name].filter((word) => typeof word === 'string');
  return [kind, ...words.map((word) => String(word).slice(0, 60))].join(' ');
}
