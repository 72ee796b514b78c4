/** How much: the weight, the cut and the bag; what they come to, and where the figures come from. */
import { html } from 'lit-html';
import { E } from './english.js';

export const TITLE = 'How much cure?';

export const ASKS = {
  meat: 'Meat, trimmed',
  cut: 'Cut',
  bag: 'Cure bag says',
  scale: 'Scale shows steps of',
  hint: 'Type the weight. The figures appear as you type.',
  /** The weight is there, and what the bag says cannot be read. */
  noBag: 'Cannot say yet: type the % on the bag.',
};

/** What a weight and a percentage are called where they cannot be read. */
export const WRONG = { weight: 'Meat', nitrite: 'Cure bag' };

export const OTHER_WAYS = { head: 'Other ways in', paste: 'Paste a recipe', on: 'I already put cure on it' };

/** @param {boolean} offline the page works without the net */
export const staysHere = (offline) => `${offline ? 'Ready offline. ' : ''}Nothing leaves this device.`;

export const ANSWER = {
  label: 'Answer',
  /** What is weighed while nothing is typed. */
  cure: 'Cure',
  salt: 'Salt, fine',
  until: 'Leave it in until',
  notYet: 'not known yet',
};

/** Below the hour it comes out. @param {string} all how long that is @param {string} fridge @param {string | undefined} cook how hot, after it @param {string} why */
export const stays = (all, fridge, cook, why) =>
  `${all} at ${fridge}${cook ? `, then cook to ${cook}` : ''}${why ? `. ${why}` : ''}`;

/** The hour was moved out of the night. */
export const NIGHT_FREE = 'Your night is kept free.';

/** What that hour holds for while nobody has measured. @param {string} thick as is usual of the cut */
export const ifUsual = (thick) => `If the thickest is ${thick}: measure it.`;

/** The dose in one line. */
export const RANGE = {
  /** @param {string} word @param {string} [step] */
  word: (word, step) => `${word} if weighed${step ? ` to ${step}` : ''}.`,
  /** @param {number | undefined} ppm @param {number} limit */
  limit: (ppm, limit) => `${ppm} ppm, limit ${limit}.`,
};

/** A weight that is rather another unit. */
export const ODD_WEIGHT = {
  head: 'Check the weight.',
  little: 'That is less than one piece weighs.',
  much: 'That is a great deal of meat for one batch.',
  /** @param {string} weight */
  itIs: (weight) => `It is ${weight}`,
};

/** A bag that says a tenth of the usual. */
export const ODD_BAG = {
  head: 'Read the bag once more.',
  /** @param {string} usual */
  says: (usual) => `Most bags say ${usual}. Less calls for that much more cure.`,
  /** @param {string} usual */
  itIs: (usual) => `It says ${usual}`,
};

export const SAVE = {
  go: 'Save as a batch',
  /** @param {string} tag */
  done: (tag) => `Saved as batch ${tag}.`,
};

export const MIX = {
  /** @param {number} parts */
  use: (parts) => `Use a 1-in-${parts} mix`,
  off: 'Weigh the cure itself',
};

/** Where the figures come from. */
export const WHY = {
  /** @param {string} name @param {string} exact in grams @param {string} add as it is weighed */
  line: (name, exact, add) => html`<b>${name}:</b> ${exact} g, weighed as ${add}.`,
  /** @param {string} source */
  spoon: (source) => `A level spoon: ${source}`,
  /** @param {string} thickness @param {string} half @param {string} most when 9 in 10 are */
  time: (thickness, half, most) =>
    html`<b>Time:</b> ${thickness} thick. Half of such pieces are cured to the middle by ${half}, 9 in 10 by ${most}.`,
  /** What the thickness of a piece rests on that nobody has measured. */
  usual: `Thickness of a trimmed piece of this cut, before it is measured: our own ${E.judgement}, no source.`,
};
