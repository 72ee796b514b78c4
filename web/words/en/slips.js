/** What likely went wrong with a dose. */
import { E, either } from './english.js';

const SWEET = either('a ready-mixed sweet cure', 'a sugar cure mix');

/** @type {Record<import('../../app/types').SlipKey, string>} */
export const SLIPS = {
  tablespoon: 'Was a tablespoon used where a teaspoon was meant?',
  teaspoon: 'Was a teaspoon used where a tablespoon was meant?',
  ounce: 'Were ounces weighed where grams were meant?',
  gram: 'Were grams weighed where ounces were meant?',
  'us-gallon': 'Was a US gallon taken where an Imperial one was meant?',
  'imperial-gallon': 'Was an Imperial gallon taken where a US one was meant?',
  'per-pound': 'Was a dose for each kilogram taken for each pound?',
  'per-kilogram': 'Was a dose for each pound taken for each kilogram?',
  'no-1-for-sweet': `Was ${E.cure1} used where ${SWEET} was meant?`,
  'sweet-for-no-1': `Was ${SWEET} used where ${E.cure1} was meant?`,
};
