/** The four places, always the same words: at the foot of a phone held upright, in the head of all else. */
import { html, nothing } from 'lit-html';
import { HEARD, PLACES } from '../../words/en/places.js';

/** @typedef {'how-much' | 'today' | 'recipes' | 'more'} Here */

/** @type {Here[]} */
const ORDER = ['how-much', 'today', 'recipes', 'more'];
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
  return html`<nav class="places noprint" aria-label=${HEARD.places}>
    ${ORDER.map((place) => html`<a href="#/${place}" aria-current=${place === here ? 'page' : nothing}>${PLACES[place]}</a>`)}
  </nav>`;
}

/** The page keeps room for them, where they stand at the foot. */
export function clearPlaces() {
  const nav = /** @type {HTMLElement | null} */ (document.querySelector('.places'));
  const foot = nav && getComputedStyle(nav).position === 'fixed' ? nav.offsetHeight : 0;
  document.documentElement.style.setProperty('--places-h', `${foot}px`);
}
