/** Spoon and scale: what one's own spoon holds, whether the scale fits, a cure thinned for it. */

export const TITLE = 'Spoon and scale';
export const ABOUT = 'A spoon is not a weight, and a scale can be wrong. Settle both once.';

export const SPOON = {
  head: 'Your own level spoon',
  how: 'Fill it, draw a knife across, tip it onto the scale. Ten times: the figure then stands in place of the general range, with its spread.',
  item: 'What is in the spoon',
  own: 'Something of my own',
  name: 'What it is called',
  nameHint: 'As recipes call it.',
  which: 'Which spoon',
  spoons: { tsp: 'teaspoon', tbsp: 'tablespoon' },
  weighed: 'How did you weigh them',
  ways: { one: 'One by one', all: 'All together' },
  count: 'How many spoons',
  one: 'Weights, in grams',
  oneHint: 'With a semicolon between: 5.1; 5.3; 5.0.',
  together: 'Weight of all together, in grams',
  togetherHint: 'Such as 52.3.',
  keep: 'Keep this spoon',
  isKept: 'Your spoon is kept.',
  removed: 'The spoon is removed.',
  kept: 'Spoons that are kept',
};

/** One of the weights, where it cannot be read. @param {number} n from 1 */
export const nthWeight = (n) => `Weight ${n}`;

/** A spoon that is kept. @param {boolean} tablespoon @param {string} item */
export const spoonOf = (tablespoon, item) => `${tablespoon ? 'Tablespoon' : 'Teaspoon'}, ${item}`;

/** What it holds. @param {string[]} grams the least, the usual, the most */
export const holds = ([low, usual, high]) => `${low} to ${high}, usually ${usual}`;

/** What a button takes away. @param {string} item */
export const spoonFor = (item) => `the spoon for ${item}`;

export const SCALE = {
  head: 'Hold the scale against what is known',
  how: 'A weight made for scales, or water: 50 ml from a syringe weigh 49.9 g.',
  known: 'What is on it',
  knownHint: '100 g, or 50 ml of water.',
  reads: 'What the scale shows',
};

export const THIN = {
  head: 'Thin a cure for a coarse scale',
  how: 'One part in ten is weighed ten times heavier, so a step of the scale matters ten times less.',
  with: 'With what',
  ways: { salt: 'Salt: a premix', water: 'Water: a stock' },
  take: 'Weigh of it',
  neat: 'Neat on this scale',
  thinned: 'Thinned',
  write: 'Write on it',
  made: 'Made so? Keep it, and recipes and “I already put cure on it” offer it as a cure.',
  keep: { salt: 'Keep this premix', water: 'Keep this stock' },
  removed: 'It is removed. Recipes that use it keep it.',
  kept: 'Premixes and stocks that are kept',
};

/** @param {string} name of a premix or a stock */
export const mixKept = (name) => `Kept: ${name}.`;

/** A premix or a stock that is kept. @param {import('../../app/types').Cure} mix */
export const mixHolds = ({ made }) => `1 part cure in ${made?.parts}, strength known to ${made?.off} either way`;
