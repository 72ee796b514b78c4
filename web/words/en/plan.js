/** Planning back from a day, and from a bag, in words for facts of the core. */
import { inUnits } from '../degrees.js';
import { E } from './english.js';
import { say } from '../fact.js';
import { count, statusWords } from './names.js';
import { STARTS, STEPS, TURNS } from './steps.js';
import { FINISHES } from './game.js';
import { itemName } from './ingredients.js';

/** @typedef {import('../../app/types').Spread} Spread */
/** @typedef {import('../../app/types').Area} Area */

/** The places by their number. */
export const PLACES = ['Fridge', 'Smoker or oven', 'Rack'];
/** @param {number} place */
const the = (place) => `the ${(PLACES[place] ?? '').toLowerCase()}`;

/** @type {import('../fact.js').Words<import('../../app/types').Task>} */
const TASKS = {
  start: ({ method }) => STARTS[method][0],
  step: (fact) => STEPS[fact.do],
  turn: ({ method }) => TURNS[method][0],
  ready: () => 'Ready',
};

/** What a task is called. @param {import('../../app/types').Task} task */
export const taskWords = (task) => say(TASKS, task);

/** @type {Record<import('../../app/types').Fixed, string>} */
export const FIXED = {
  runs: 'Under way.',
  hot: 'Fixed: hot meat goes straight on.',
  rested: 'Fixed: it is chilled as soon as it has rested.',
  wet: 'Fixed: wet meat goes straight on.',
  in_water: 'Fixed: longer in the water takes out more salt.',
  packed: 'Fixed.',
};

/** @param {number} cm2 */
const squares = (cm2) => inUnits(`${cm2} cm²`, `${Math.round(cm2 / 6.4516)} sq in`);

/** @type {import('../fact.js').Words<import('../../app/types').Snag>} */
const SNAGS = {
  held: () => 'Open the batch and clear what is in doubt. Then it is planned.',
  done: () => 'Every step is done.',
  no_steps: () => 'This recipe has no steps to plan by.',
  no_room: ({ place }) => `No batch may be in ${the(place)}.`,
  too_large: ({ place, load, holds }) =>
    `It takes ${squares(load)} and ${the(place)} has ${squares(holds)}. Make two batches, or stack it.`,
  held_steps: () => 'It does not fit with the steps you have put to a time.',
  too_late: () => 'It cannot be ready by then. The times below are the earliest.',
  no_time: () => 'No time was found for it in the hours that are left free.',
};

/** Why a batch is not planned, or does not fit. @param {import('../../app/types').Snag} snag */
export const snagWords = (snag) => say(SNAGS, snag);

/** @type {Record<import('../../app/types').WouldFit, string>} */
const REMEDIES = {
  thinner: 'Thinner: 3/4 as thick takes a bit over half the time (computed).',
  half_as_thick: 'Thinner: half as thick takes a quarter of the time (computed).',
  pump: 'Injection: a recipe of its own, with its own dose, takes about a third of the time (common practice, no source).',
  smaller:
    'A smaller batch: fewer and thinner pieces over the fire come up in about half the time (common practice, no source). Take them out by the thermometer all the same.',
  more_cold: 'Room for one more batch in the fridge, or one batch fewer: then it fits.',
  more_fire: 'A second fire, or one batch fewer: then it fits.',
  more_rack: 'A second rack, or one batch fewer: then it fits.',
};

/** What would make it fit, and what never does. @param {import('../../app/types').WouldFit[]} ways */
export const ways = (ways) =>
  ways.length
    ? [
        ...ways.map((way) => REMEDIES[way]),
        'More cure does not make it faster: the dose stays what it is for this meat.',
      ]
    : [];

/** @type {import('../fact.js').Words<import('../../app/types').Gap>} */
const BETTER = {
  later: ({ by }) => `begins up to ${by} later`,
  more: ({ batches }) => `has ${batches} more of them ready in time`,
};

/** @param {import('../../app/types').Gap} gap */
export const gapWords = (gap) =>
  `Planned one batch after the other, in the best of a few orders. There may be a plan that ${say(BETTER, gap)}: try it by hand.`;

/** `61 g to 168 g, likely 109 g` @param {Spread} spread */
export const spread = ({ likely, ends }) => (ends ? `${ends[0]} to ${ends[1]}, likely ${likely}` : likely);

/** @type {import('../fact.js').Words<import('../../app/types').BagBasis>} */
const BASES = {
  own: ({ pieces }) =>
    `By ${pieces} pieces you have weighed, with 15 % either way at the least (our own ${E.judgement}).`,
  table: ({ source, status }) => `${source} (${statusWords(status)}).`,
};

/** Where the figures of a row come from. @param {import('../../app/types').BagBasis} basis */
export const bagBasis = (basis) => say(BASES, basis);

/** @param {import('../../app/types').BagBasis} basis */
export const isMemory = (basis) => basis.is === 'table' && basis.status === 'memory';

/** What is left at the end. @param {import('../../app/types').LeftOf} left */
export const leftWords = ({ finish, weight, source, status }) =>
  `${FINISHES[finish]}: ${spread(weight)}. ${source} (${statusWords(status)}).`;

/** @param {Area} area */
const area = ({ number, units }) => `${number} ${units === 'us' ? 'sq in' : 'cm²'}`;

/** What it lies on. @param {import('../../app/types').RackRoom} room */
export const rackRoom = ({ low, likely, high, racks }) =>
  `${area(low)} to ${area(high)}, likely ${area(likely)}, side by side. ${count(racks, 'rack')} of ${E.aRack} hold the most it may be. From the weight and the usual thickness (from memory), with a quarter more for gaps (our own ${E.judgement}).`;

/** @type {Record<import('../../app/types').HousePlace, string>} */
const HOUSE = { fridge: 'Fridge', smoker: 'Smoker' };

/** @type {import('../fact.js').Words<import('../../app/types').HoldsBag>} */
const HOLDS = {
  most: () => 'holds the most it may be',
  likely: () => 'holds what is likely, not the most it may be',
  part: ({ goes }) => `holds only ${goes} of it at once, or stack it`,
};

/** Whether a place of the house has room. @param {import('../../app/types').HouseRoom} room */
export const houseRoom = ({ place, has, holds }) => `${HOUSE[place]}: ${area(has)} ${say(HOLDS, holds)}.`;

/** @type {import('../fact.js').Words<import('../../app/types').Wanted>} */
const WANTED = {
  weight: ({ weight }) => spread(weight),
  bags: ({ cure, packs, per }) => `${cure} to cure in, ${packs} for packs of ${per}`,
};

/** How much of a thing is wanted, and what it is. @param {import('../../app/types').Buy} buy */
export const wanted = (buy) => ({
  name: buy.of ? itemName(buy.of) : 'Bags',
  range: say(WANTED, buy.wanted),
  short: Boolean(buy.has?.missing),
  has: buy.has && `${buy.has.left} in the house: ${buy.has.missing === null ? 'enough' : `${buy.has.missing} to buy`}.`,
});
