/** The four places, always the same words: at the foot of a phone held upright, in the head of all else. */
import { html, nothing } from 'lit-html';

/** @typedef {'how-much' | 'today' | 'recipes' | 'more'} Here */

/** @type {[Here, string][]} */
const PLACES = [
  ['how-much', 'How much'],
  ['today', 'Batches'],
  ['recipes', 'Recipes'],
  ['more', 'More'],
];
/** The same by their screens. @type {Record<string, string>} */
export const PLACE_WORDS = Object.fromEntries(PLACES);
/** In which place a screen lies; what is not named lies under More. @type {Record<string, Here>} */
const LIES = {
  'how-much': 'how-much',
  today: 'today',
  start: 'today',
  past: 'today',
  away: 'today',
  stock: 'today',
  batch: 'today',
  recipes: 'recipes',
  recipe: 'recipes',
  edit: 'recipes',
  read: 'recipes',
  open: 'recipes',
};

/** @param {string} screen the one that is shown */
export function places(screen) {
  const here = LIES[screen] ?? 'more';
  return html`<nav class="places noprint" aria-label="Places">
    ${PLACES.map(
      ([place, word]) => html`<a href="#/${place}" aria-current=${place === here ? 'page' : nothing}>${word}</a>`,
    )}
  </nav>`;
}

/** The page keeps room for them, where they stand at the foot. */
export function clearPlaces() {
  const nav = /** @type {HTMLElement | null} */ (document.querySelector('.places'));
  const foot = nav && getComputedStyle(nav).position === 'fixed' ? nav.offsetHeight : 0;
  document.documentElement.style.setProperty('--places-h', `${foot}px`);
}
