/** A recipe goes to somebody, and comes from somebody: by link, by QR code, pasted. */
import { html } from 'lit-html';
import { E } from './english.js';

export const SEND = {
  head: 'Send it',
  file: 'This page is a file: send the file and the text below, and your friend pastes it there under Recipes.',
  hosted:
    'The whole recipe is in the QR code and in the link. Where the page has been opened once, they open with no signal.',
  tooLong: 'This recipe is too long for a QR code. Send the link.',
  show: 'Show the QR code: it is bright',
  /** @param {string} name */
  scan: (name) => `QR code: ${name}`,
  hide: 'Hide it',
  red: 'Show it red',
  white: 'Show it white',
  asText: 'The recipe as text',
  asLink: 'Send this link',
  link: 'The link',
  print: 'Print the recipe',
  share: 'Send the link',
  copy: 'Copy the link',
  copyText: 'Copy it to send',
  again: 'Copied. Copy again',
  marked: 'The link is marked. Copy it with the keys of your device.',
  copied: 'The link is copied.',
};

/** A link that was sent. */
export const OPEN = {
  title: 'A recipe from a friend',
  unreadable: 'This link cannot be opened',
  notWhole: 'Not a whole recipe',
  once: 'Nothing was saved or changed. Ask for the link once more, whole, or scan the QR code from the other screen.',
  batches: 'Go to Batches',
  paste: 'Paste the link or the code',
  look: 'Look at it',
  meat: 'Meat',
  howMuch: 'How much do you have?',
  dose: 'Dose it aims at',
  doseFrom: 'Worked out here and now from the figures of the recipe, by your rule and on your scale.',
};

/** Under its name. @param {string} method @param {string} eaten */
export const sentTo = (method, eaten) => `Sent to you. ${method}. ${eaten}.`;

/** Before it is saved. */
export const KEEP = {
  have: 'You already have this recipe.',
  mine: 'Open mine',
  notNow: 'Not now',
  /** @param {string} name */
  another: (name) => html`You have another recipe called <b>${name}</b>. Save both, or replace yours?`,
  both: 'Save both',
  replace: 'Replace mine',
  nothing: 'Nothing is saved until you say so.',
  keep: 'Save this recipe',
  /** @param {string} name */
  replaced: (name) => `${name} is replaced.`,
  /** @param {string} name */
  kept: (name) => `${name} is saved.`,
};

/** A text that somebody wrote or said. */
export const PASTE = {
  title: 'Paste a recipe',
  about: 'Paste what somebody wrote or said. Each line says what it is taken for: check them all.',
  text: 'The recipe, in lines or in prose',
  fromClipboard: 'Paste',
  example: `For example: ${E.aRecipe}.`,
  isLink: 'This is a link: look at it',
  read: 'As it was read',
  /** @param {string} meat */
  grams: (meat) => html`Grams for <span class="nowrap">${meat}</span> of meat.`,
  noMeat: 'The meat is not known yet.',
  dose: 'The dose in it',
  toLine: 'Go to this line',
  weighIt: 'Weigh the cure',
  /** @param {string} weighed @param {string} spooned @param {number} limit */
  bySpoon: (weighed, spooned, limit) =>
    `In range as the recipe has it in grams: ${weighed}. By the spoon it may be ${spooned}, limit ${limit}.`,
  unsaid: 'Cannot say yet',
  needs: 'The dose needs the cure, the meat and how it goes on.',
  settle: 'To settle',
  /** @param {string} line */
  of: (line) => `“${line}”`,
  weight: `For example ${E.aMeat}.`,
  weights: 'Weights in the text',
  care: 'Take care',
  /** @param {string | number} grams */
  usually: (grams) => `Usually ${grams} g.`,
};

/** @param {string} low @param {string | undefined} usual @param {string | undefined} high */
export const grams = (low, usual, high) => (low === high ? `${usual} g` : `${low} to ${high} g`);

/** What came out of the text. */
export const FOUND = {
  keep: 'Save it',
  name: 'What it is called',
  asItIs: 'Save it as it is',
  /** @param {string} weight of meat: of another it may be weighed */
  asItIsHeld: (weight) => `Save it as it is: as a batch of ${weight} it is held`,
  asRecipe: 'Save as a recipe',
  asksMore:
    'The text asks for another amount of cure. Salt and sugar in all, and the spice, stay as they were read; the recipe says what was changed.',
  /** @param {string} aim */
  withAim: (aim) => `Save it with the cure at ${aim}`,
};

/** @param {number} open questions without an answer */
export const openHead = (open) =>
  open === 1 ? 'One thing to settle first' : open ? `${open} things to settle first` : 'No recipe yet';

/** In the notes of a recipe whose cure is the usual figure of a spoon, so that whoever gets it knows. @param {string} line as it was written */
export const spoonNote = (line) => `Cure in grams guessed from a spoon, “${line}”. Weigh it; never use the spoon.`;

/** Stands in the notes of a recipe whose cure was lowered. @param {string} was @param {string} aim */
export const loweredNote = (was, aim) => `The text asked for cure at ${was}; it is weighed for ${aim}.`;
