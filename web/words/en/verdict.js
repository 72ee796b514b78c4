/** A verdict on a dose in words: its word, what is said beside it, what it is counted on and where its limit comes from. */
import { E } from './english.js';
import { say } from '../fact.js';
import { SLIPS } from './slips.js';

/** @typedef {import('../../app/types').Verdict} Verdict */
/** @typedef {import('../../app/types').PpmEnds} PpmEnds */
/** @typedef {import('../../app/types').Measured} Measured */

/** @type {Record<import('../../app/types').VerdictWord, string>} */
const WORDS = {
  in_range: 'In range',
  over: 'Stop: over the limit',
  may_be_over: 'May be over',
  too_low: 'Too low',
  may_be_too_low: 'May be too low',
  needs_ascorbate: 'Needs ascorbate',
  no_cure: 'No cure in it',
  cannot_tell: 'Cannot tell',
  cannot_say_yet: 'Cannot say yet',
};

/** @param {Verdict} verdict */
export const verdictWord = ({ word }) => WORDS[word];

/** `145 to 150 ppm`, or one figure where both ends are the same. @param {PpmEnds} ends */
export const ppm = ({ low, high }) => (low === high ? `${low} ppm` : `${low} to ${high} ppm`);

/** @type {Record<import('../../app/types').CureAs, (neat: string) => string>} */
const OF = {
  cure: () => ' of cure',
  premix: (neat) => ` of premix (${neat} g of cure)`,
  stock: (neat) => ` of stock: ${neat} g of cure`,
};

/** `3.5 g of cure`, `35.5 g of premix (3.55 g of cure)`, `1 tbsp of cure (12.6 to 24.9 g, usually 17.0 g)` @param {Measured} portion */
export function measured({ said, of, neat, grams }) {
  const [low, usual, high] = grams ?? [];
  const spoon = grams ? ` (${low} to ${high} g, usually ${usual} g)` : '';
  return `${said || 'An amount that is not said'}${OF[of](neat ?? '')}${spoon}`;
}

/** @type {import('../fact.js').Words<import('../../app/types').CountedOn>} */
const ON = {
  meat: ({ green }) => `on ${green}`,
  brine: ({ brine, percent }) => `in ${brine} of brine, of which ${percent} % of green weight goes in`,
  pumped: ({ green, brine, percent }) =>
    `on ${green} of meat and ${brine} of brine, ${percent} % of green weight pumped`,
  both: ({ green, all }) => `on ${green} of meat, ${all} with its brine`,
};

/** @type {Record<import('../../app/types').Why, (name: string) => string>} */
const MAY_HOLD = {
  not_asked: (name) => `Whether “${name}” holds nitrite or nitrate is not known.`,
  holds: (name) => `“${name}” holds nitrite or nitrate, and how much is not known.`,
  name_says_so: (name) => `“${name}” is said to hold no nitrite or nitrate, and its name says that it does.`,
  not_read: (name) => `“${name}” was not read: it may call for cure.`,
};

/** @type {import('../fact.js').Words<import('../../app/types').DoseRemark>} */
const REMARKS = {
  nothing_holds: () => 'Nothing here holds nitrite or nitrate.',
  estimate: () => 'Some pieces have no weight yet, so the dose is an estimate.',
  goes_in: ({ portions, on, only_asked }) => {
    const text = `${portions.map(measured).join(' and ')} ${say(ON, on)}.`;
    return only_asked ? `The list asks for ${text} Nothing of it is on the meat yet.` : text;
  },
  nitrate_raw_only: () => 'By this rule nitrate goes only into what is not heat-treated.',
  nitrate_forbidden: () => 'By this rule no nitrate goes into it.',
  pure_salt: ({ nitrite }) =>
    `${nitrite} % nitrite is the strength of the pure salt and not of a cure for the kitchen: is it a slip of the comma? Read the packet again. If it is true, this meat can kill: nobody tastes it, and whoever ate of it rings the poison ${E.centre} at once, with signs or without.`,
  strength_unknown: () => 'The strength of the cure is not known.',
  nitrate_alone: () => 'Nitrate alone works only as it slowly turns to nitrite; the rule gives no least for it.',
  ascorbate_lacks: ({ ppm }) =>
    `The dose lies between least and limit, and this rule wants ${ppm} ppm of sodium ascorbate or erythorbate with it, which is not in what was told.`,
  nitrate_no_figure: () => 'This rule gives no figure for nitrate.',
  finished_decides: ({ limit }) =>
    `Above ${limit} ppm this rule counts the finished meat, and what goes in cannot decide it.`,
  scale_step: ({ step, range }) => `The scale steps by ${step} g, so the dose is ${range.low} to ${range.high} ppm.`,
  pick_up: ({ percent, taken, equal }) =>
    `By pick-up at ${percent} % it is ${ppm(taken)}; left until meat and brine are equal, ${ppm(equal)}.`,
  equal_after: ({ time }) => `Pick-up is no basis here: the thinnest piece can be equal with the brine after ${time}.`,
  diffuses: ({ range }) =>
    `By the time it comes out it may be ${ppm(range)}, by the speeds of the cure clock; the larger counts.`,
  surface: ({ most }) => `At the surface it is ${most} ppm until it has evened out.`,
  equal_not_before: ({ time }) =>
    `No piece is equal with the brine before ${time}: take all of it out on time, and not later.`,
  equal_unknown: () =>
    'Whether pick-up is a basis cannot be said without the thickest part of every size and the time in the brine.',
  slip: ({ key }) => SLIPS[key],
  may_hold: ({ why, name }) => MAY_HOLD[why](name),
  counted_without: ({ range }) => `What is counted comes to ${range.low} to ${range.high} ppm without it.`,
};

/** What stands beside the word. @param {Verdict} verdict */
export const verdictSays = ({ says }) => says.map((remark) => say(REMARKS, remark)).join(' ');

/** @type {Record<import('../../app/types').Method, string>} */
const BASIS = {
  rub: 'Ingoing sodium nitrite, counted on green weight.',
  cover_brine: 'Ingoing sodium nitrite, counted on green weight and brine together.',
  ground: `Ingoing sodium nitrite, counted on the green weight of the ${E.mince}.`,
  pick_up: 'Ingoing sodium nitrite, counted on what the meat takes up of the brine, and on green weight.',
  pumped: 'Ingoing sodium nitrite, counted on what is pumped in, and on green weight.',
  pumped_and_covered:
    'Ingoing sodium nitrite: what is pumped in on green weight, and what comes from the cover on green weight and brine together. The two are summed; the low end is all of it evened out.',
};

/** What is counted on what. @param {Verdict} verdict */
export const verdictBasis = ({ basis }) => basis.map((method) => BASIS[method]).join(' ');

/** Where limit and least are published, and how well that is known. @param {Verdict} verdict */
export const verdictSource = ({ source, status }) =>
  status === 'memory'
    ? `${source} Its status is memory: it has not been seen, and “in range” rests on the published US limit for home curing as well.`
    : source;
