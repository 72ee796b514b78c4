/** Brine: what it asks of the tub, the strength and the cure, and the heads of its answer. */
import { degrees } from '../degrees.js';
import { E } from './english.js';

export const TITLE = 'Brine';
export const ABOUT = 'Water for a tub or for the meat, how strong it is, and the salt and cure for it.';

export const VESSEL = {
  asks: 'What holds the brine?',
  kinds: { bag: 'A bag', box: 'A tub', round: 'A round pot', water: 'I know the water' },
};

/** Inside measures. */
export const SIDES = {
  length: 'Inside length',
  width: 'Inside width',
  depth: 'Depth of the brine',
  across: 'Inside, across',
};

export const STRENGTH = {
  measure: 'Strength in',
  /** @type {Record<import('../../app/types').Scale, string>} */
  measures: {
    percent: '% of salt in water and salt',
    salometer: 'Degrees on a salometer',
    gravity: 'Specific gravity on a hydrometer',
    per_litre: `Grams to a ${E.litre} of water`,
    per_us_gallon: 'Pounds to a US gallon of water',
    per_imperial_gallon: 'Pounds to an Imperial gallon of water',
  },
  how: 'How strong',
  warm: 'How warm the brine was',
  warmHint: () => `Empty: ${degrees(16, 60)}.`,
};

export const MEAT_COUNTS = 'It takes up room, and the cure counts over meat and brine together.';

export const CURE = {
  asks: 'Cure in it',
  ways: { none: 'None', aim: 'Work out how much', weight: 'I know how much' },
  bagHint: `Read it off the bag. ${E.Saltpetre} has none: type 0.`,
  aimHint: 'In ppm of nitrite; of nitrate where the bag has no nitrite.',
};

/** What is weighed. */
export const PARTS = { water: 'Water', cure: 'Cure', salt: 'Salt', sugar: 'Sugar' };
export const SUGAR_HINT = '% of the water.';

export const ANSWER = {
  go: 'Work it out',
  weigh: 'What to weigh',
  strong: 'How strong it is',
  much: 'How much it is',
};
