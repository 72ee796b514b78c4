import { E } from './english.js';

/** How long a pack keeps, by the row that decides. @type {Record<import('../../app/types').KeepingKey, string>} */
export const KEEPS = {
  'smoked-cured-bird-cold': 'cured and smoked birds: 2 weeks at most',
  'smoked-cured-any-cold': 'no figure for this meat, cured and smoked: as cooked meat 3 to 4 days',
  'smoked-any-cold': 'smoked, not surely cured to the middle: as cooked meat 3 to 4 days',
  'cooked-any-cold': 'cooked meat: 3 to 4 days',
  'raw-red-cold': 'raw venison: 3 to 5 days',
  'raw-bird-cold': 'raw birds: 1 to 2 days',
  'raw-any-cold': 'no figure for this raw meat: as raw birds 1 to 2 days',
  'raw-minced-any-cold': `raw ${E.mince}: 1 to 2 days`,
  'any-any-vacuum': 'vacuum packs on chill alone: 10 days at most, against Clostridium botulinum',
  'smoked-cured-any-frozen': 'smoked and cured: 1 to 2 months for quality; charts differ',
  'smoked-any-frozen': 'no figure without cure: as smoked and cured 1 to 2 months',
  'cooked-any-frozen': 'no figure here: as smoked and cured 1 to 2 months',
  'raw-red-frozen': 'raw venison: 8 to 12 months for quality; charts differ',
  'raw-bird-frozen': 'raw wild duck: 6 to 12 months for quality; charts differ',
  'raw-any-frozen': 'no figure for this raw meat: as raw wild duck 6 to 12 months',
  'raw-minced-any-frozen': `raw ${E.mince}: 3 to 4 months for quality`,
};
