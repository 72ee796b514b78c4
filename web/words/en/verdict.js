/** A verdict on a dose in words: its word, what is said beside it, what it is counted on and where its limit comes from. */
import { ATE, called } from './calls.js';
import { E } from './english.js';
import { say } from '../fact.js';
import { SLIPS } from './slips.js';

/** @typedef {import('../../app/types').Verdict} Verdict */
/** @typedef {import('../../app/types').PpmEnds} PpmEnds */
/** @typedef {import('../../app/types').Measured} Measured */

/** @type {Record<import('../../app/types').VerdictWord, string>} */
const WORDS = {
  in_range: 'In range',
  over: 'Stop: too much cure',
  may_be_over: 'May be too much',
  too_low: 'Too little',
  may_be_too_low: 'May be too little',
  needs_ascorbate: 'Needs ascorbate',
  no_cure: 'No cure in it',
  cannot_tell: 'Cannot say yet',
  cannot_say_yet: 'Cannot say yet',
};

/** @param {Verdict} verdict */
export const verdictWord = ({ word }) => WORDS[word];

/** `145 to 150 ppm`, or one figure where both ends are the same. @param {PpmEnds} ends */
export const ppm = ({ low, high }) => (low === high ? `${low} ppm` : `${low} to ${high} ppm`);

/** @type {Record<import('../../app/types').CureAs, (neat: string) => string>} */
const OF = {
  cure: () => ' of cure',
  premix: (neat) => ` of mix (${neat} g of cure)`,
  stock: (neat) => ` of cure water: ${neat} g of cure`,
};

/** `3.5 g of cure`, `35.5 g of mix (3.55 g of cure)`, `1 tbsp of cure (12.6 to 24.9 g, usually 17.0 g)` @param {Measured} portion */
export function measured({ said, of, neat, grams }) {
  const [low, usual, high] = grams ?? [];
  const spoon = grams ? ` (${low} to ${high} g, usually ${usual} g)` : '';
  return `${said || 'An amount that is not said'}${OF[of](neat ?? '')}${spoon}`;
}

/** @type {import('../fact.js').Words<import('../../app/types').CountedOn>} */
const ON = {
  meat: ({ green }) => `on ${green}`,
  brine: ({ brine, percent }) => `in ${brine} of brine, of which ${percent} % of trimmed weight goes in`,
  pumped: ({ green, brine, percent }) =>
    `on ${green} of meat and ${brine} of brine, ${percent} % of trimmed weight injected`,
  both: ({ green, all }) => `on ${green} of meat, ${all} with its brine`,
};

/** @type {Record<import('../../app/types').Why, (name: string) => string>} */
const MAY_HOLD = {
  not_asked: (name) => `Whether “${name}” holds nitrite or nitrate is not known.`,
  holds: (name) => `“${name}” holds nitrite or nitrate, and how much is not known.`,
  name_says_so: (name) => `“${name}” is said to hold no nitrite or nitrate, and its name says that it does.`,
  not_read: (name) => `“${name}” was not read: it may call for cure.`,
  not_read_says_so: (name) => `“${name}” was not read, and it names a cure.`,
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
    called(
      `${nitrite} % is pure nitrite, not a cure. Read the bag again. If it does say that, this meat can kill: do not taste it. ${ATE}`,
    ),
  strength_unknown: () => 'The strength of the cure is not known.',
  nitrate_alone: () => 'Nitrate alone works slowly. The rule does not say how much it needs.',
  ascorbate_lacks: ({ ppm }) =>
    `The cure is in range. This rule also needs ${ppm} ppm of sodium ascorbate or erythorbate.`,
  nitrate_no_figure: () => 'This rule gives no figure for nitrate.',
  finished_decides: ({ limit }) =>
    `Above ${limit} ppm this rule counts the finished meat, and what goes in cannot decide it.`,
  scale_step: ({ step, range }) =>
    `The scale shows steps of ${step} g, so the dose is ${range.low} to ${range.high} ppm.`,
  pick_up: ({ percent, taken, equal }) =>
    `With ${percent} % of brine taken up: ${ppm(taken)}. Left until even: ${ppm(equal)}.`,
  equal_after: ({ time }) =>
    `The thinnest piece can be as strong as the brine after ${time}, so the whole brine counts.`,
  diffuses: ({ range }) => `By the cure clock it may be ${ppm(range)} when it comes out. The larger figure counts.`,
  surface: ({ most }) => `At the surface it is ${most} ppm until it has evened out.`,
  equal_not_before: ({ time }) =>
    `No piece is as strong as the brine before ${time}. Take all of it out on time, not later.`,
  equal_unknown: () =>
    'Type the thickest part of every size and the hours in the brine. Without them the whole brine counts.',
  slip: ({ key }) => SLIPS[key],
  may_hold: ({ why, name }) => MAY_HOLD[why](name),
  counted_without: ({ range }) => `What is counted comes to ${range.low} to ${range.high} ppm without it.`,
};

/** Out of range the figure comes first. @type {Set<import('../../app/types').VerdictWord>} */
const OUT = new Set(['over', 'may_be_over', 'too_low', 'may_be_too_low']);
/** What gives the figure already. @type {Set<import('../../app/types').DoseRemark['is']>} */
const HAS_FIGURE = new Set(['scale_step', 'counted_without', 'pick_up', 'diffuses']);

/** @param {Verdict} verdict */
function figure({ word, says, nitrite, limit, least }) {
  if (!nitrite || !OUT.has(word) || says.some(({ is }) => HAS_FIGURE.has(is))) return [];
  const bound = word.endsWith('over') ? `limit ${limit}` : `needs ${least}`;
  return [`${ppm(nitrite)}, ${bound}.`];
}

/** What stands beside the word. @param {Verdict} verdict */
export const verdictSays = (verdict) =>
  [...figure(verdict), ...verdict.says.map((remark) => say(REMARKS, remark))].join(' ');

/** @type {Record<import('../../app/types').Method, string>} */
const BASIS = {
  rub: 'Sodium nitrite put in, counted on trimmed weight.',
  cover_brine: 'Sodium nitrite put in, counted on trimmed weight and brine together.',
  ground: `Sodium nitrite put in, counted on the trimmed weight of the ${E.mince}.`,
  pick_up: 'Sodium nitrite put in, counted on the brine that the meat takes up, and on trimmed weight.',
  pumped: 'Sodium nitrite put in, counted on what is injected, and on trimmed weight.',
  pumped_and_covered:
    'Sodium nitrite put in: what is injected on trimmed weight, and what comes from the cover on trimmed weight and brine together. The two are summed; the low end is all of it evened out.',
};

/** What is counted on what. @param {Verdict} verdict */
export const verdictBasis = ({ basis }) => basis.map((method) => BASIS[method]).join(' ');

/** Where limit and least are published, and how well that is known. @param {Verdict} verdict */
export const verdictSource = ({ source, status }) =>
  status === 'memory' ? `${source} This limit is from memory, so the US limit for home curing counts too.` : source;
