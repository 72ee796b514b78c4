/** A brine in words, for facts of the core. */
import { degrees } from '../degrees.js';
import { E } from './english.js';

/** @typedef {import('../../app/types').BrineSheet} BrineSheet */
/** @typedef {{ label: string, value: string }} Fact */

/** What a strength is called, and its unit. @type {() => Record<import('../../app/types').Scale, [string, string]>} */
const measures = () => ({
  percent: ['Salt in water and salt, by weight', ' %'],
  salometer: [`Salometer at ${degrees(16, 60)}`, '°'],
  gravity: [`Specific gravity at ${degrees(15, 59)}`, ''],
  per_litre: [`To a ${E.litre} of water`, ' g'],
  per_us_gallon: ['To a US gallon of water', ' lb'],
  per_imperial_gallon: ['To an Imperial gallon of water', ' lb'],
});

/** @param {BrineSheet} sheet @returns {Fact[]} how strong it is, in every measure */
export const strengths = ({ strength }) =>
  strength.map(({ scale, number }) => {
    const [label, unit] = measures()[scale];
    return { label, value: `${number}${unit}` };
  });

/** @param {BrineSheet} sheet @returns {Fact[]} how much it is, and what becomes of the salt */
export const amounts = ({ amounts: { litres, us_gallons, imperial_gallons, brine }, even }) => [
  { label: `${E.Litres} of water`, value: litres },
  { label: 'US gallons of water', value: us_gallons },
  { label: 'Imperial gallons of water', value: imperial_gallons },
  { label: 'Brine in all', value: brine },
  ...(even
    ? [
        { label: 'Salt once even, meat and brine together', value: even.over_all },
        { label: `Salt in the meat then, at ${even.water} water`, value: even.in_meat },
      ]
    : []),
];

/** @type {Record<import('../../app/types').BrineRemark, string>} */
export const REMARKS = {
  reads_sugar:
    'Read the hydrometer before the sugar goes in: it counts sugar and cure as salt. With sugar in it, the salt is this at most.',
  which_gallon: 'Say which gallon: an Imperial one is a fifth larger than a US one.',
  bag_is_half: `In a bag the brine is half the trimmed weight (our own ${E.judgement}): enough to wet every side with the air pressed out.`,
  wants_meat: 'Type the weight of the meat to get the cure: it counts over meat and brine together.',
  scale_too_coarse: 'Take a finer scale: this one cannot show the cure at all.',
};
