/** What several forms ask, said once. */
import { E } from './english.js';

export const MEAT = {
  label: 'Meat, trimmed',
  pounds: 'For example 3 lb 4 oz, or 1480 g.',
};

/** What the bag of a cure says. */
export const BAG = {
  nitrite: 'Nitrite printed on the bag',
  nitrate: 'Nitrate printed on the bag',
  someNitrate: `Some in ${E.cure2}. Empty: none.`,
};

export const AIM = 'Aim, going in';

export const WATER = {
  grams: `In grams; a ${E.litre} is 1000 g.`,
  pounds: 'A US quart weighs 2 lb 1.4 oz.',
};

/** The name of the place where more of it stands, on the way back. */
export const BACK = { more: 'More', batch: 'Batch' };

export const CANNOT_SAY = 'Cannot say yet';
