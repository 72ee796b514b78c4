/**
 * Which screen an address means. Everything stands behind the `#`, so one file on a memory stick has addresses too.
 */

/** `screen` is empty where the address names none: the page opens on what is wanted now. @typedef {{ screen: string, id: string, part: string }} Place */

export const SCREENS = [
  'away',
  'bag',
  'brine',
  'dose',
  'help',
  'how-much',
  'keep',
  'more',
  'open',
  'past',
  'plan',
  'read',
  'recipes',
  'sources',
  'spoons',
  'start',
  'stock',
  'today',
];
export const PARTS = ['pieces', 'weigh', 'cure', 'fire', 'pack', 'labels', 'tag'];

/**
 * @param {string} hash the address from `#` on
 * @returns {Place}
 */
export function placeOf(hash) {
  // A recipe that was handed on stands behind the # bare: `#r1.…`.
  if (/^#(?!\/)./.test(hash)) return { screen: 'open', id: '', part: hash.slice(1) };
  const [screen = '', id = '', part = ''] = hash.slice(2).split('/');
  if (screen === 'batch' && id) return { screen: 'batch', id, part: PARTS.includes(part) ? part : 'pieces' };
  // One door for one trouble: a wrong dose is judged on the screen of the dose, from wherever it is opened.
  if (screen === 'cards') return id === 'dose' ? { screen: id, id: '', part: '' } : { screen, id, part: '' };
  if (screen === 'dose') return { screen, id, part: '' };
  if (screen === 'recipe' && id) return { screen: part === 'edit' ? 'edit' : 'recipe', id, part: '' };
  if (SCREENS.includes(screen)) return { screen, id: '', part: '' };
  return { screen: '', id: '', part: '' };
}

/**
 * Calls back with the place now and after every change of the address.
 * @param {(place: Place) => void} arrive
 */
export function follow(arrive) {
  const look = () => arrive(placeOf(location.hash));
  addEventListener('hashchange', look);
  look();
}

/**
 * @param {string} hash
 * @param {{ replace?: boolean }} [how] replace: the way back skips the present place
 */
export function go(hash, { replace = false } = {}) {
  if (replace) location.replace(hash);
  else location.hash = hash;
}
