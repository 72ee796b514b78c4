/** Spoons, scale and thinned cure of the cook's own in words, for facts of the core. */
import { E } from './english.js';
import { strengthWords } from './weigh.js';
import { itemWithin } from './ingredients.js';

/** @typedef {import('../../app/types').StockSheet} StockSheet */

/** `4.70 to 5.70 g, usually 5.20 g` @param {import('../../app/types').SpoonSheet} sheet */
export const spoonHolds = ({ holds: [low, usual, high] }) => `${low} to ${high} g, usually ${usual} g`;

/** What that rests on, and what such a spoon holds in general. @param {import('../../app/types').SpoonSheet} sheet */
export function spoonWhy({ together, of, general, spoon }) {
  const from = together
    ? `One weighing of all together shows no spread: 15 % either way is our own ${E.judgement}.`
    : 'The least and the most that were weighed, with a quarter of the distance beyond each.';
  if (!general) return from;
  const [low, high] = general;
  const level = spoon.tablespoon ? 'tablespoon' : 'teaspoon';
  return `${from} In general a level ${level} of ${itemWithin(of)} is ${low} to ${high} g.`;
}

/** Whether a scale fits: its word, and what to do. @param {boolean} fits @returns {[string, string]} */
export const scaleWords = (fits) =>
  fits
    ? [
        'Fits',
        'Within its step and what the known weight may be off. Check it again after a drop, a new battery or a cold night.',
      ]
    : [
        'Does not fit',
        'Set it level on something hard, change the battery, set it to zero and try again. If it stays so, weigh no cure on it: borrow another.',
      ];

/** @param {import('../../app/types').ScaleRow} row */
export const scaleRow = ({ known, reads, off, percent }) => ({
  label: `${known} shows ${reads}`,
  value: `${off}, ${percent}`,
});

/** @param {StockSheet['ranges'][number]} range */
export const doseRange = ([low, high]) => `${low} to ${high} ppm`;

/** @param {StockSheet} sheet */
const isStock = ({ mix }) => Boolean(mix.made?.in_water);
/** What it is thinned with. @param {StockSheet} sheet */
const filler = (sheet) => (isStock(sheet) ? 'cold boiled water' : 'salt of the same grain');

/** Making, using, keeping. @param {StockSheet} sheet @returns {import('./next-steps.js').Advice[]} */
export function stockSteps(sheet) {
  const [mix, use, keep] = isStock(sheet)
    ? [
        'Stir until nothing lies on the bottom, and again each time before you weigh from it.',
        `Into the ${E.mince} or the brine, its water counted as water.`,
        `Closed, in the fridge, for this day’s work. ${E.pourAwayHead} what is left (common practice, no source).`,
      ]
    : [
        'Shake it in a closed jar for two minutes, and again each time before you weigh from it.',
        'Its salt counts as salt: take as much off the recipe’s.',
        'Closed and dry, for a year at most, and never beyond the date on the cure (common practice, no source).',
      ];
  return [
    { head: `Weigh ${sheet.cure.text} of cure and ${sheet.filler.text} of ${filler(sheet)}.`, text: mix },
    { head: `For this meat, weigh ${sheet.take.text} of it.`, text: use },
    {
      head: 'Lock it away with the cure.',
      text: isStock(sheet)
        ? 'It looks like water and is poisonous.'
        : 'It looks like salt and is poisonous by the spoonful.',
    },
    { head: 'Use it before it is too old.', text: keep },
  ];
}

/** Lines of its label. @param {StockSheet} sheet */
export const stockLabel = (sheet) => [
  `${isStock(sheet) ? 'Cure water' : 'Cure mix'}: 1 in ${sheet.mix.made?.parts}`,
  `${strengthWords(sheet.strength)}, from a cure of ${strengthWords(sheet.neat)}`,
  `${sheet.cure.text} cure, ${sheet.filler.text} ${filler(sheet)}`,
  'Poison by the spoonful. Not table salt, not drinking water.',
  'Made on:',
];
