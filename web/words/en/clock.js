/** The cure clock in words, for facts of the core. */
import { E } from './english.js';
import { say } from '../fact.js';
import { countedPieces } from './cuts.js';

/** @typedef {import('../../app/types').Noted} Noted */

/** @type {Record<import('../../app/types').Fate, string>} */
const FATES = {
  kept: 'It stayed at 4 °C (40 °F) or colder: go on.',
  use_now:
    'Up to 2 hours above 4 °C (40 °F) in all it can still be used: cool it at once, cook it through. If in doubt, throw it out.',
  discard: 'Meat above 4 °C (40 °F) for more than 2 hours is thrown out (FoodSafety.gov, quoted), cured or not.',
};

/** Each with its word and what it means. @type {import('../fact.js').Words<Noted, [string, string]>} */
const NOTES = {
  too_warm: ({ warm, unread, discard }) => {
    const known = warm ? `${warm} above 4 °C (40 °F) by the log` : 'Above 4 °C (40 °F) now';
    const before = unread
      ? `, and up to ${unread} more before it that was not read: if it was read cold in between, put that in the log with its time`
      : '';
    const then = discard
      ? 'Meat above 4 °C (40 °F) for 2 hours or more, or for a time that is not known, is thrown out (FoodSafety.gov, quoted), unless the meat itself was measured and was colder.'
      : 'Under 2 hours in all it can still be used: cool it now, and look at the thermometer within the hour.';
    return [
      'It was too warm',
      `${known}${before}. ${then} Salt runs faster in the warmth, and so does what spoils meat: more cure does not undo it.`,
    ];
  },
  stood: ({ time }) => [
    'The clock stood',
    `${time} frozen or below 1 °C (34 °F) do not count. The times below have moved by as much.`,
  ],
  power_off: ({ time, highest, warm, fate, guessed }) => [
    'The power was off',
    `${time} without power, up to ${highest}; ${warm} of it above 4 °C (40 °F). ${FATES[fate]} ${
      guessed
        ? 'It was not read when it came back, so this is worked out for a shut door in a room at 22 °C (72 °F), which keeps cold for about 4 hours (FoodSafety.gov, quoted). Opened, or in a warmer room, it was sooner. Type what the thermometer and the meat read.'
        : 'Taken as a straight line between what was read before and after it.'
    }`,
  ],
  no_reading: ({ at }) => ['No reading yet', `The times are for a fridge at ${at}. Put a thermometer in it.`],
  stay_sets_dose: () => [
    'The stay sets the dose',
    `By pick-up, more cure goes in with every hour. Take it out when the recipe says, ${E.coloured} through or not, and never leave it in longer for the ${E.colour}.`,
  ],
  in_the_middle: () => [
    'In the middle from the start',
    'Mixed or injected, the cure need not find its way from outside. Give it the time of the recipe.',
  ],
  thickness_missing: () => [
    'Thickness missing',
    'A size without its thickest part has no clock. Measure it under Pieces.',
  ],
  longer_than_planned: () => [
    'Longer than planned',
    'A weighed dose only evens out, it gets no saltier. How long it keeps is another question: cold all the time, and smell it.',
  ],
  rinse_early: ({ of, perhaps, cut }) => [
    perhaps ? 'The planned rinse may be early' : 'The planned rinse is early',
    `${countedPieces(of)} may not be through by then. Leave it in the cold longer: a weighed dose only evens out. ${
      cut ? `If the date stands: pieces no thicker than ${cut}, or inject a measured brine. ` : ''
    }Never more cure to go faster.`,
  ],
};

/** What is noted: its word, and what it means. @param {Noted} noted */
export const notedWords = (noted) => say(NOTES, noted);

/** How far a middle has come. @type {Record<import('../../app/types').Middle, string>} */
export const MIDDLES = { not_yet: 'Not yet', likely: 'Likely', coloured: E.colouredHead, even: 'Even' };

/** @type {Record<import('../../app/types').Thumb, string>} */
export const THUMBS = {
  seven_days_an_inch: '7 days per inch',
  quarter_inch_a_day: 'a quarter-inch a day',
  two_days_a_pound: '2 days per lb',
};

/** What cuts have taught of a kind of meat. @param {import('../../app/types').Learnt} learnt */
export const learntWords = ({ speed, range }) =>
  `Salt goes into it at ${speed} of the usual speed; the range of the times is ${range} of what it was.`;
