/** Spoon and scale: what one's own spoon holds, whether the scale fits, a cure thinned for it. */

export const TITLE = 'Spoons, scale, 1-in-10 mix';
export const ABOUT = 'A spoon is not a weight, and a scale can be wrong. Settle both once.';

export const SPOON = {
  head: 'Your own level spoon',
  how: 'Fill it, draw a knife across, tip it onto the scale. Do it ten times. Your own figure is then used.',
  item: 'What is in the spoon?',
  own: 'Something of my own',
  name: 'What it is called',
  nameHint: 'As recipes call it.',
  which: 'Which spoon?',
  spoons: { tsp: 'teaspoon', tbsp: 'tablespoon' },
  weighed: 'How did you weigh them?',
  ways: { one: 'One by one', all: 'All together' },
  count: 'How many spoons',
  one: 'Weights, in grams',
  oneHint: 'With a semicolon between: 5.1; 5.3; 5.0.',
  together: 'Weight of all together, in grams',
  togetherHint: 'Such as 52.3.',
  keep: 'Save this spoon',
  isKept: 'Your spoon is saved.',
  removed: 'The spoon is removed.',
  kept: 'Saved spoons',
};

/** One of the weights, where it cannot be read. @param {number} n from 1 */
export const nthWeight = (n) => `Weight ${n}`;

/** A spoon that is saved. @param {boolean} tablespoon @param {string} item */
export const spoonOf = (tablespoon, item) => `${tablespoon ? 'Tablespoon' : 'Teaspoon'}, ${item}`;

/** What it holds. @param {string[]} grams the least, the usual, the most */
export const holds = ([low, usual, high]) => `${low} to ${high}, usually ${usual}`;

/** What a button takes away. @param {string} item */
export const spoonFor = (item) => `the spoon for ${item}`;

export const SCALE = {
  head: 'Check your scale',
  how: 'With a weight made for scales, or water: 50 ml from a syringe weighs 49.9 g.',
  known: 'What is on it',
  knownHint: '100 g, or 50 ml of water.',
  reads: 'What the scale shows',
};

export const THIN = {
  head: 'Make a 1-in-10 mix',
  how: 'You weigh ten times as much, so a coarse scale will do.',
  with: 'With what?',
  ways: { salt: 'Salt', water: 'Water: cure water' },
  take: 'Weigh of the mix',
  neat: 'Cure itself',
  thinned: '1-in-10 mix',
  write: 'Write on it',
  made: 'Made it? Save it, then choose it as a cure in any recipe.',
  keep: { salt: 'Save this mix', water: 'Save this cure water' },
  removed: 'It is removed. Recipes that use it keep it.',
  kept: 'Saved mixes',
};

/** @param {string} name of a mix */
export const mixKept = (name) => `Saved: ${name}.`;

/** A mix that is saved. @param {import('../../app/types').Cure} mix */
export const mixHolds = ({ made }) => `1 part cure in ${made?.parts}, strength known to ${made?.off} either way`;
