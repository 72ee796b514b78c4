/** The cure clock in words, for facts of the core. */
import { degrees, inUnits } from '../degrees.js';
import { E } from './english.js';
import { say } from '../fact.js';
import { countedPieces } from './cuts.js';

/** @typedef {import('../../app/types').Noted} Noted */

const COLD = () => degrees(4, 40);
/** Two hours hold only where it is not hot. */
const HOT = () => `1 hour where it was hotter than ${degrees(32, 90)}`;

/** @type {Record<import('../../app/types').Fate, () => string>} */
const FATES = {
  kept: () => `It stayed at ${COLD()} or colder.`,
  use_now: () =>
    `Under 2 hours above ${COLD()} in all (${HOT()}): chill it now, cook it through. Not sure? ${E.throwAwayHead}.`,
  discard: () =>
    `Above ${COLD()} for 2 hours or more, ${HOT()}: ${E.throwAway}, cured or not (FoodSafety.gov, quoted).`,
};

/** Each with its word and what it means. @type {import('../fact.js').Words<Noted, [string, string]>} */
const NOTES = {
  too_warm: ({ warm, unread, out, discard }) => {
    const late = out
      ? `It went into the fridge ${out} after the cure was on. Was it at ${COLD()} or colder till then? Log what the meat or the room read, with its time. `
      : '';
    const known = warm ? `${late}${warm} above ${COLD()} by the log.` : out ? late : `Above ${COLD()} now.`;
    const before = unread
      ? ` It may have been warm up to ${unread} longer. Was it read cold in between? Log that, with its time.`
      : '';
    const then = discard
      ? `2 hours or more above ${COLD()}, ${HOT()}, or not known: ${E.throwAway}, unless the meat itself read colder (FoodSafety.gov, quoted).`
      : `Under 2 hours in all (${HOT()}): cool it now, and read it within the hour.`;
    return ['It was too warm', `${known}${before} ${then} More cure does not undo it.`];
  },
  stood: ({ time }) => [
    'The clock stopped',
    `${time} frozen or below ${degrees(1, 34)} do not count. The times below have moved by as much.`,
  ],
  power_off: ({ time, highest, warm, fate, guessed }) => [
    'The power was off',
    `${time} without power, up to ${highest}; ${warm} of it above ${COLD()}. ${FATES[fate]()} ${
      guessed
        ? `Not read when the power came back. Worked out for a shut door and a room at ${degrees(22, 72)}: cold for about 4 hours (FoodSafety.gov, quoted). Opened, or warmer, it was sooner. Type what the thermometer and the meat read.`
        : 'Taken as a straight line between what was read before and after it.'
    }`,
  ],
  no_reading: ({ at }) => ['No reading yet', `The times are for a fridge at ${at}. Put a thermometer in it.`],
  turns_missed: ({ missed, due }) => [
    'Turns not marked',
    `${missed} of ${due} turns are not marked. What is never turned cures unevenly (common practice, no source).`,
  ],
  stay_sets_dose: () => [
    'The stay sets the dose',
    'In a strong brine, more cure goes in every hour. Take it out on time, cured to the middle or not.',
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
  came_out_early: () => [
    'It came out early',
    `Its middle may not be cured: it may stay ${E.grey}. Cook it through, and keep it no longer than cooked meat.`,
  ],
  rinse_early: ({ of, perhaps, cut }) => [
    perhaps ? 'The planned rinse may be early' : 'The planned rinse is early',
    `${countedPieces(of)} may not be cured to the middle by then. Leave it in the cold longer: a weighed dose only evens out. ${
      cut ? `If the date stands: pieces no thicker than ${cut}, or inject a measured brine. ` : ''
    }Never more cure to go faster.`,
  ],
};

/** What is noted: its word, and what it means. @param {Noted} noted */
export const notedWords = (noted) => say(NOTES, noted);

/** How far a middle has come. @type {Record<import('../../app/types').Middle, string>} */
export const MIDDLES = { not_yet: 'Not yet', likely: 'Likely', coloured: E.colouredHead, even: 'Even' };

/** @type {Record<import('../../app/types').Thumb, () => string>} */
export const THUMBS = {
  seven_days_an_inch: () => inUnits('7 days per inch (25 mm)', '7 days per inch'),
  quarter_inch_a_day: () => inUnits('a quarter-inch (6 mm) a day', 'a quarter-inch a day'),
  two_days_a_pound: () => inUnits('2 days per lb (450 g)', '2 days per lb'),
};

/** What cuts have taught of a kind of meat. @param {import('../../app/types').Learnt} learnt */
export const learntWords = ({ speed, range }) =>
  `Salt goes into it at ${speed} of the usual speed; the range of the times is ${range} of what it was.`;
