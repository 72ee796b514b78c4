/**
 * Whom to call, by where the device is: a number of another country helps nobody.
 *
 * Sources: 911 and 1-800-222-1222, America's Poison Centers, alert on nitrites and nitrates (published). NHS 111 for
 * poison advice in England, Wales and Scotland, National Poisons Information Service (published; in Northern Ireland a
 * doctor is asked). 112 in all of the European Union, European Commission (quoted). 000 in Australia, Government of
 * Victoria (published). 999 in the United Kingdom, 911 in Canada, 111 in New Zealand: memory.
 */
import { E } from './english.js';
import { PLACE } from '../locale.js';

/** The emergency number, and where to ask about poison. @type {Record<string, [string, string?]>} */
const CALLS = {
  US: ['911', '1-800-222-1222'],
  CA: ['911'],
  // A doctor in Northern Ireland, which NHS 111 does not serve: the clock cannot tell the two apart.
  GB: ['999', 'NHS 111 or a doctor'],
  EU: ['112'],
  AU: ['000'],
  NZ: ['111'],
};
const [EMERGENCY = 'your emergency number', POISON = `your poison ${E.centre}`] = CALLS[PLACE] ?? [];

/**
 * Signs of nitrite and whom to call, in two lines: the same wherever somebody may have eaten too much of it.
 * @type {[string, string]}
 */
export const SIGNS = [
  `Blue, faint, short of breath, ${E.fit}: call {emergency}, say nitrite.`,
  'No signs yet: call {poison} now too.',
];

/** The same in a sentence, where there is no room for more. */
export const ATE =
  'Anyone ate some? Call {poison} at once, signs or not; blue, faint or short of breath: {emergency}, say nitrite.';

/** `{emergency}` and `{poison}` become those of this place. @param {string} text */
export const called = (text) => text.replaceAll('{emergency}', EMERGENCY).replaceAll('{poison}', POISON);
