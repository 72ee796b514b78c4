/** Day, dark or red light, a press a step. It belongs to the device, so it is kept beside the records and not among them. */
import { html } from 'lit-html';
import { icon } from './icon.js';
import { HEARD, LIGHTS as WORDS } from '../../words/en/places.js';

/** @typedef {'day' | 'dark' | 'red'} Light */

const KEY = 'cure-reckoner.theme';
/** In the order of the presses. */
export const LIGHTS = /** @type {[Light, string][]} */ (Object.entries(WORDS));
/** @type {Record<Light, string>} */
const GROUND = { day: '#dde4dd', dark: '#0b100e', red: '#000000' };

/** @returns {Light} */
export function lightNow() {
  const set = document.documentElement.dataset.theme;
  if (set === 'day' || set === 'dark' || set === 'red') return set;
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'day';
}

/** @param {Light} light */
export function setLight(light) {
  document.documentElement.dataset.theme = light;
  paintEdge();
  try {
    localStorage.setItem(KEY, light);
  } catch {
    // A browser that keeps nothing shows the light until the page is closed.
  }
}

/** The browser's own frame takes the colour of the page, so that it does not shine at night. */
export function paintEdge() {
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', GROUND[lightNow()]);
}

/** @param {() => void} draw */
export function lightButton(draw) {
  const at = LIGHTS.findIndex(([light]) => light === lightNow());
  const word = LIGHTS[at]?.[1];
  const press = () => {
    setLight(LIGHTS[(at + 1) % LIGHTS.length]?.[0] ?? 'day');
    draw();
  };
  return html`<button type="button" class="light" aria-label=${HEARD.light(word)} @click=${press}>
    ${icon('s-light', '')}<span>${word}</span>
  </button>`;
}
