/** Words for what is in doubt on a batch. The core gives keys and figures; here they become what is said and done. */
import { degrees } from '../degrees.js';
import { E } from './english.js';

/** @typedef {import('../../app/types').Batch} Batch */
/** @typedef {import('../../app/types').Doubt} Doubt */
/** @typedef {import('../../app/types').Kind} Kind */
/** @typedef {import('../../app/types').Clears} Clears */
/** @typedef {import('../../app/types').Mark} Mark */

/**
 * What a doubt says: a fact in a few words. `who` is the size class, or nothing.
 * @typedef {{ who: string, time: string, days: number, read: string, needed: string, line: string, on: boolean }} Told
 */

/** @type {Record<Kind, (told: Told) => string>} */
const SAYS = {
  thrown_out: () => `it was ${E.thrownAway}`,
  eaten_raw: () => 'birds, hare, rabbit, boar and bear are never eaten raw: no cure kills what lives in them',
  hanging_unproven: () => 'hung for months and eaten raw, which this page cannot judge',
  recipe_too_warm: () => `the recipe cures it above ${degrees(4, 40)}`,
  not_weighed: () => 'not all pieces are weighed',
  not_reckoned: () => 'the dose cannot be worked out',
  cure_not_in: () => 'it is in the bag, and no cure is marked in',
  may_be_cure: ({ line }) => `${line || 'a line of the recipe'} may be a cure that nobody counted`,
  dose_over: ({ on }) => `too much cure${on ? '. Do not eat it' : ''}`,
  dose_may_be_over: ({ who }) => `${who} may have too much cure`,
  dose_low: () => 'too little cure to count as cured',
  dose_may_be_low: ({ who }) => `${who} may have too little cure`,
  dose_unknown: () => 'the dose cannot be judged',
  too_warm: ({ time }) => `${time} above ${degrees(4, 40)}`,
  may_be_too_warm: ({ time }) => `perhaps ${time} above ${degrees(4, 40)}, not read`,
  cold_unseen: ({ days }) => `no fridge reading in ${days} days`,
  cold_in_question: ({ read }) => `the fridge log says ${read}, and that is hardly right`,
  warm: ({ time }) => `${time} above ${degrees(4, 40)} in all`,
  power_off: ({ time }) => `${time} without power`,
  frozen: () => 'it is frozen',
  not_rinsed: () => 'it is not marked as rinsed',
  in_cure: () => 'it is still in the cure',
  time_in_question: () => 'a time in it cannot be right',
  over_stayed: () => 'it has been in the cure longer than raw meat keeps',
  out_early: ({ who }) => `${who} came out early and may have too little cure: it keeps only as cooked meat does`,
  to_read: ({ who }) => `${who} is over the fire and not read yet`,
  not_read: ({ who, needed }) => `${who} was not read at ${needed}`,
  reading_in_question: ({ who }) => `a reading of ${who} is in question`,
  in_fire: ({ who }) => `${who} is not marked as out of the fire`,
  not_hot: ({ who, read, needed }) => `${who} read ${read}, needs ${needed}`,
  dried_first: ({ who, needed }) => `${who} was dried before it read ${needed}`,
  colder_since: ({ who, read, needed }) => `${who} read ${read} later, needs ${needed}`,
  partly_cooked: ({ who, read, needed }) => `${who} came out at ${read}, needs ${needed}`,
  partly_abandoned: ({ who, needed }) => `${who} cooled or stood before it read ${needed}: do not finish it later`,
  slow_up: ({ who, time }) => `${who}: ${time} between ${degrees('4 and 60', '40 and 140')}, limit 4 h`,
  up_unseen: ({ who, read }) => `${who} was first read at ${read}: how long it was warm is not known`,
  chilling: ({ who }) => `${who} was not read cold yet`,
  chill_late: ({ who, time }) => `${who} cooled too slowly, ${time}`,
  chill_unread: ({ who }) => `${who} was not read cold in time`,
  past_keeping: () => 'its keeping time is over',
  dryness_untold: () => 'dried, but how far is not noted: no date can be given',
};

/** @type {Record<Clears, (told: Told) => string>} */
const DEEDS = {
  nothing: () => `${E.throwAwayHead}. Do not taste it.`,
  next_time: () => 'Next time read it before it warms.',
  eat_soon: () => 'Eat it yourself soon, or freeze it. Give none away.',
  change_recipe: () => 'Choose cooked, or another recipe.',
  weigh_pieces: () => 'Weigh every size.',
  say_cure: () => 'Say whether cure went in, and how much. Add none before you know.',
  read_packet: () => `Read the bag: does it say ${E.nitriteOn}?`,
  mend_dose: () => 'Read what to do under Weigh.',
  read_cold: () => 'Put a thermometer in the fridge, and log what it reads.',
  answer_cold: () => 'Answer the question at the fridge log.',
  say_cold: () => `Type when it last read cold. Not known? ${E.throwAwayHead}.`,
  cool_now: () => 'Cool it now, and read it within the hour.',
  thaw: () => 'Thaw it in the fridge, then log it.',
  rinse: () => 'Rinse it, or mark it rinsed.',
  take_out: () => 'Take it out. Mark it out.',
  cook_through: ({ needed }) => (needed ? `Cook it to ${needed}.` : 'Cook it through.'),
  correct_time: () => 'Correct the time, or the clock of this device.',
  answer_reading: () => 'Answer the question at the reading.',
  read_hot: ({ needed }) => `Read the coldest piece at ${needed}, or heat it through before anyone eats it.`,
  finish_now: ({ needed }) => `Cook it to ${needed} now, without a pause. Do not chill it first.`,
  chill: () => 'Chill it, and read the warmest piece cold.',
};

/** Nothing is in doubt about these: what holds the batch is known. @type {Partial<Record<Kind, true>>} */
const SURE = { dose_over: true, recipe_too_warm: true };

/** What is still to be done and is no doubt to be told at the head of a batch. @type {Partial<Record<Kind, true>>} */
const UNDER_WAY = {
  not_weighed: true,
  in_cure: true,
  in_fire: true,
  to_read: true,
  not_hot: true,
  chilling: true,
  // It is asked about by itself, under the head.
  time_in_question: true,
  // It only shortens the date on the label, and stands there.
  out_early: true,
};

/** @param {Doubt} doubt @returns {boolean} true where it is no doubt at all but known, though it can be mended */
export const surely = (doubt) => SURE[doubt.kind] ?? false;

/** @param {Doubt} doubt @returns {boolean} true where it is only what comes next */
export const underWay = (doubt) => UNDER_WAY[doubt.kind] ?? false;

/** @param {number | null} minutes @returns {string} `45 min`, `10 h` */
function lasted(minutes) {
  if (minutes === null) return '';
  if (minutes < 120) return `${minutes} min`;
  return minutes < 72 * 60 ? `${Math.floor(minutes / 60)} h` : `${Math.floor(minutes / 1440)} d`;
}

/**
 * What is said of a doubt, and the deed that clears it.
 * @param {Doubt} doubt
 * @param {Batch} batch
 * @param {(piece: import('../../app/types').Piece) => string} nameOf
 * @returns {{ says: string, deed: string }}
 */
export function doubtWords(doubt, batch, nameOf) {
  const piece = doubt.class === null ? undefined : batch.pieces[doubt.class];
  const line = doubt.line === null ? undefined : batch.recipe.lines[doubt.line];
  const told = {
    who: piece ? nameOf(piece) : 'it',
    time: lasted(doubt.minutes),
    days: Math.floor((doubt.minutes ?? 0) / 1440),
    read: doubt.read?.text ?? '',
    needed: doubt.needed?.text ?? '',
    line: line?.name ?? '',
    on: Boolean(batch.put_in ?? batch.also ?? batch.ticks?.find(({ of }) => of.startsWith('cure:'))),
  };
  const fact = SAYS[doubt.kind](told);
  const says =
    doubt.weight === 'forbids'
      ? `Do not eat: ${fact}.`
      : doubt.weight === 'holds'
        ? `${surely(doubt) ? 'Stop' : 'In doubt'}: ${fact}.`
        : `${fact.charAt(0).toUpperCase()}${fact.slice(1)}.`;
  // What is thrown out already asks for no deed.
  return { says, deed: doubt.kind === 'thrown_out' ? '' : DEEDS[doubt.clears](told) };
}

/**
 * What a list says of a batch that is held: the gravest of its doubts.
 * @param {Doubt[]} doubts
 * @param {Batch} batch
 * @param {(piece: import('../../app/types').Piece) => string} nameOf
 */
export function heldWords(doubts, batch, nameOf) {
  const first = doubts.find((doubt) => !underWay(doubt));
  return first ? doubtWords(first, batch, nameOf).says : '';
}
