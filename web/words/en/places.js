/** The four places, and what stands around every screen. */
import { html } from 'lit-html';
import { E } from './english.js';
import { count } from './names.js';

export const NAME = 'Cure Reckoner';

/** The four places. */
export const PLACES = { 'how-much': 'How much', today: 'Batches', recipes: 'Recipes', more: 'More' };

/** The way back, by the screen one comes from. @type {Record<string, string>} */
export const HOMES = { ...PLACES, batch: 'Batch', recipe: 'Recipe' };

/** For whoever hears the page. */
export const HEARD = {
  skip: 'Skip to the answer',
  places: 'Places',
  notices: 'Notices',
  tag: 'Tag ',
  /** @param {string} text where the way back leads */
  fromBatch: (text) => `${text}, from batch `,
  /** @param {string | undefined} light */
  light: (light) => `Screen light: ${light}. Press to change.`,
};

/** @type {Record<'day' | 'dark' | 'red', string>} */
export const LIGHTS = { day: 'Day', dark: 'Dark', red: 'Red' };

/** Bars at the head of every screen. */
export const BARS = {
  newVersion: 'A new version of this page is ready.',
  old: 'This tab is old. Reload to see what a newer version of this page saved.',
  /** @param {string} fault */
  notKept: (fault) => `The last change was not saved. ${fault}`,
};

/** What is pressed there. */
export const PRESS = {
  reload: 'Reload',
  later: 'Later',
  putBack: 'Put it back',
  again: 'Try again',
  export: 'Export the file',
  close: 'Close',
  undo: 'Undo',
};

/** Rows of the place More, under their heads: each a word, and what it is for. */
export const MORE = {
  trouble: 'Trouble',
  plan: 'Plan',
  tools: 'Tools',
  page: 'This page',
  cards: 'Something went wrong',
  cardsFor: 'warm, frozen, power out, leak, stall, fire out',
  dose: 'I already put cure on it',
  ready: 'Ready by a day',
  readyFor: 'works back from a date',
  list: 'Shopping list',
  listFor: 'for this weekend’s meat',
  brine: 'Brine',
  spoons: 'Spoons, scale, 1-in-10 mix',
  spoonsFor: 'test them, or make a mix for a coarse scale',
  keep: 'Settings and backup',
  help: 'How the job goes',
  sources: 'Sources and words',
  sample: 'Try it with sample meat',
};

/** Batches that are finished or thrown out. */
export const AWAY = {
  title: 'Closed',
  /** @param {number} n */
  lead: (n) => `${count(n, 'batch', 'batches')} finished or thrown ${E.thrown}. Open one to take it up again.`,
  thrownOut: E.thrownOut,
};

/** @param {number} n */
export const showMore = (n) => `Show ${n} more`;

/** Where no screen can be drawn. */
export const FAILED = { screen: 'This screen cannot be drawn', start: `${NAME} did not start` };

/** @param {string} title of the screen */
export const windowTitle = (title) => `${title} · ${NAME}`;

/** Within a page of somebody else nothing is shown. @param {string} href */
export const framed = (href) =>
  html`<h1>${NAME} opens by itself only</h1>
    <p>Inside another page a touch could go to something else.</p>
    <p><a class="btn" href=${href} target="_blank" rel="noopener">Open it by itself</a></p>`;
