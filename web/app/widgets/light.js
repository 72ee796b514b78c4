/** Day, dark or red light. It belongs to the device, so it is kept beside the records and not among them. */

/** @typedef {'day' | 'dark' | 'red'} Light */

const KEY = 'cure-reckoner.theme';
/** @type {[Light, string][]} */
export const LIGHTS = [
  ['day', 'Day'],
  ['dark', 'Dark'],
  ['red', 'Red light'],
];
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
