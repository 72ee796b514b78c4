/** What is to be done, and where a batch is, in words. */
import { degrees } from '../degrees.js';
import { say } from '../fact.js';
import { DOING, STARTS, STEPS, TURNS, stepText } from './steps.js';
import { dayTime } from '../time.js';
import { worded } from './wrong.js';
import { pieceName } from './cuts.js';

/** @typedef {import('../../app/types').Batch} Batch */
/** @typedef {import('../../app/types').Job} Job */
/** @typedef {import('../../app/types').Deed} Deed */
/**
 * @typedef {object} Seen what is known of a job's batch
 * @property {Batch} batch
 * @property {import('../../app/app.js').App} app
 */

/** @type {import('../fact.js').Words<Deed, string, Seen>} */
const HEADS = {
  say_pieces: () => 'Add the pieces',
  weigh_pieces: () => 'Weigh the pieces',
  weigh_cure: () => 'Weigh out the cure',
  weigh_rest: () => 'Weigh out the rest',
  weigh_salt: () => 'Weigh out the salt and spice',
  start: ({ method }) => STARTS[method][0],
  ask_cure: () => 'Say whether the cure is in',
  into_fridge: () => `Put it in the fridge, ${degrees(4, 40)} or colder`,
  step: ({ step }) => STEPS[step.do],
  read_fire: () => 'Read the coldest piece',
  step_of: (fact, { batch }) => {
    const piece = batch.pieces[fact.class];
    return `${STEPS[fact.step.do]}${piece ? `: ${pieceName(piece)}` : ''}`;
  },
  turn: ({ method }) => TURNS[method][0],
  take_out: (fact, { app, batch }) => {
    const piece = batch.pieces[fact.class];
    return piece ? `Take out ${piece.about ? 'about ' : ''}${piece.count} ${pieceName(piece)}` : 'Take it out';
  },
  finish: () => 'Finish the batch',
};

/** @type {import('../fact.js').Words<Deed, string, Seen>} */
const TEXTS = {
  say_pieces: () => 'How many, what they weigh, how thick.',
  weigh_pieces: () => 'Put every size on the scale.',
  weigh_cure: () => 'Cure first, then the rest into the same bowl.',
  weigh_rest: () => 'The cure is in already: add no more of it.',
  weigh_salt: () => 'This recipe has no cure.',
  start: ({ method }) => STARTS[method][1],
  ask_cure: () => 'It is in the bag, and no cure is marked in. Add none before you know.',
  into_fridge: (_, { app, batch }) => {
    const begun = batch.ticks.find(({ of }) => of === 'rub')?.at;
    return begun === undefined ? '' : COLD.counts(begun, app.now());
  },
  step: ({ step }) => stepText(step),
  read_fire: () => 'Probe its thickest part, and log what it reads.',
  step_of: ({ step }) => stepText(step),
  turn: ({ method }) => TURNS[method][1],
  take_out: () => '',
  finish: () => 'The last step is over. Close the batch.',
};

/** The way into the cold once all of it is on: what is true once it is pressed, and what the clock makes of it. */
export const COLD = {
  done: 'It is in the fridge',
  /** @param {number} begun @param {number} now */
  counts: (begun, now) => `The clock counts from ${dayTime(begun, now)}, when all of it was on.`,
  /** @param {string} on so long */
  asks: (on) => `All of it has been on for ${on}. When did it go into the fridge?`,
  then: 'Right after',
  now: 'Only now',
  notSure: 'Not sure',
};

/** What a job is called. That it was kept cold nobody says by putting it in. @param {Job} job @param {Seen} seen */
export const jobHead = ({ does, ticked }, seen) =>
  ticked !== null && does.is === 'step' && does.step.do === 'cure' ? DOING.cure : say(HEADS, does, seen);

/** How it is done. @param {Job} job @param {Seen} seen */
export const jobText = ({ does }, seen) => say(TEXTS, does, seen);

/** Said before it is ticked ahead of its time. @param {string} early how far off it is @param {Deed} does */
export const tooEarly = (early, does) =>
  does.is === 'step' && ENDS_CURE.includes(does.step.do)
    ? `It is due in ${early}. Before that its middle may not be cured.`
    : `It is due in ${early}.`;

/** What takes meat out of its cure. @type {import('../../app/types').Do[]} */
const ENDS_CURE = ['rinse', 'soak'];

/** @type {import('../fact.js').Words<import('../../app/types').Whereabouts>} */
const WHERE = {
  pieces_to_weigh: () => 'Pieces to weigh',
  not_in_cure: () => 'Not in the cure yet',
  cure_on: () => 'Cure is on',
  in_cure: ({ day }) => `In the cure, day ${day}`,
  begun: (fact) => DOING[fact.do],
  finished: () => 'Finished',
};

/** Where a batch is, and what it weighs; nothing where it is held. @param {import('../../app/types').State} state */
export function whereWords({ whereabouts, green, problem }) {
  if (problem) return worded(problem).message;
  return whereabouts ? [say(WHERE, whereabouts), green].filter(Boolean).join('. ') : '';
}

/** Words for the calendar file: of the jobs, and of what is no job and stands in it all the same. */
export const CALENDAR = {
  get two_hours() {
    return `Is it at ${degrees(21, 70)} or colder?`;
  },
  get cold() {
    return `Is it at ${degrees(5, 41)} or colder?`;
  },
  ready: 'Ready',
  done: 'Done',
  gone: 'No longer to do',
};
