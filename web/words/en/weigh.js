/** The weigh-out in words, for facts of the core. */
import { degrees } from '../degrees.js';
import { E } from './english.js';
import { say } from '../fact.js';
import { count, statusWords } from './names.js';
import { oddWords } from './pieces.js';
import { measured } from './verdict.js';
import { itemName } from './ingredients.js';

/** @typedef {import('../../app/types').CureOf} CureOf */
/** @typedef {import('../../app/types').Method} Method */
/** @typedef {import('../../app/types').Strength} Strength */
/** @typedef {import('./next-steps.js').Advice} Advice */
/** @typedef {{ label: string, value: string }} Fact */

/** `6.25 % nitrite and 4 % nitrate` @param {Strength} strength */
export const strengthWords = ({ nitrite, nitrate }) =>
  [nitrite && `${nitrite} nitrite`, nitrate && `${nitrate} nitrate`].filter(Boolean).join(' and ');

/** @type {import('../fact.js').Words<CureOf>} */
const CURES = {
  neat: ({ strength }) => `Cure, ${strengthWords(strength)}`,
  one_in: ({ parts }) => `1-in-${parts} mix: 1 part cure, ${parts - 1} parts salt`,
  premix: ({ strength }) => `Mix, ${strengthWords(strength)}`,
  stock: ({ strength }) => `Cure water, ${strengthWords(strength)}`,
};

/** What a line is called. @param {{ item: import('../../app/types').ItemName | null, cure: CureOf | null }} line */
export const lineName = ({ item, cure }) => (cure ? say(CURES, cure) : item ? itemName(item) : '');

/** @type {import('../fact.js').Words<import('../../app/types').LineWhy>} */
const WHYS = {
  rounded_down: ({ exact }) => `${exact}, rounded down to the scale’s step.`,
  less_in_cure: ({ whole, in_cure }) => `${whole} in all, less ${in_cure} that is already in the cure.`,
};

/** How a weight came about. @param {import('../../app/types').LineWhy} why */
export const lineWhy = (why) => say(WHYS, why);

/** It was ticked, and the list asks for something else. @param {import('../../app/types').Changed} changed */
export const changedWords = ({ is, wanted }) => `${is.text} is in the bowl. The list now asks for ${wanted.text}.`;

/** @type {Record<import('../../app/types').SpoonUnit, string>} */
export const SPOONS = { teaspoons: 'level tsp', tablespoons: 'level tbsp', cups: 'cups' };

/** @type {import('../fact.js').Words<import('../../app/types').SpoonSource>} */
const SPOON_SOURCES = {
  own: () => 'Your own spoon, weighed.',
  table: ({ source, ndb, status }) =>
    `${source}${ndb.length ? `, NDB ${ndb.join(', ')}` : ''} (${statusWords(status)}).`,
};

/** Where the weight of a spoon comes from. @param {import('../../app/types').SpoonSource} source */
export const spoonSource = (source) => say(SPOON_SOURCES, source);

const stir = () => `Stir until clear. Chill to ${degrees(4, 40)}.`;
/** @returns {[string, string]} */
const under = () => [`${stir()} Put the meat under`, ': '];
/** @returns {[string, string]} */
const inject = () => [`${stir()} Inject by weight, each on the scale`, ': '];

/** @type {Record<Method, () => [string, string]>} */
const PUT_ON = {
  rub: () => ['Rub all of it in', ', '],
  cover_brine: under,
  ground: () => [`Mix all of it through the cold ${E.mince}, in two parts`, ', '],
  pick_up: under,
  pumped: inject,
  pumped_and_covered: inject,
};

/** @type {Record<Method, string>} */
const CLOSE = {
  rub: 'Label the bag, then close it',
  cover_brine: 'Label the tub, then cover it',
  ground: 'Label it, then cover it',
  pick_up: 'Label the tub, then cover it',
  pumped: 'Label the bag, then close it',
  pumped_and_covered: 'Label the tub, then cover it',
};

/** @type {import('../fact.js').Words<import('../../app/types').TodoOf>} */
const DEEDS_LEFT = {
  put_on: ({ method, pieces, about }) => {
    const [how, then] = PUT_ON[method]();
    return `${how}${then}${about && pieces > 1 ? 'about ' : ''}${count(pieces, 'piece')}`;
  },
  close: ({ method }) => CLOSE[method],
};

/** What there is to do once all is weighed. @param {import('../../app/types').Todo} todo */
export const todoWords = ({ what }) => say(DEEDS_LEFT, what);

/** @type {Record<import('../../app/types').SaltOf, string>} */
const SALT_OF = {
  green: 'Salt, cure included, on trimmed weight',
  taken_up: 'Salt taken up, cure included, on trimmed weight',
  meat_and_water: 'Salt, cure included, on meat and water',
};

/** @type {import('../fact.js').Words<import('../../app/types').SheetFact, Fact>} */
const FACTS = {
  green: ({ weight }) => ({ label: 'Trimmed weight', value: weight }),
  aim: ({ ppm, by_rule }) => ({ label: 'Aim', value: `${ppm}${by_rule ? ', by the rule that is chosen' : ''}` }),
  salt: ({ percent, of }) => ({ label: SALT_OF[of], value: percent }),
  accelerator: ({ ppm }) => ({ label: 'Ascorbate or erythorbate put in', value: `${ppm} ppm` }),
  scale: ({ step }) => ({ label: 'Scale shows steps of', value: step }),
};

/** What the list stands on. @param {import('../../app/types').SheetFact[]} facts @returns {Fact[]} */
export const sheetFacts = (facts) => facts.map((fact) => say(FACTS, fact));

/** @type {Record<import('../../app/types').Accelerated, string>} */
const ACCELERATED = {
  less: 'This is less than the rule for bacon wants: take more',
  more: 'This is more than the rule for bacon wants: take less',
  as_wanted: 'As the rule for bacon wants it',
  over: 'This is over the limit: take less',
  within: 'Within the limit',
};

const BACON =
  '550 ppm of sodium ascorbate or erythorbate with an injected belly: 9 CFR 424.22(b), quoted by FSIS, “Bacon and Food Safety”';

/** @type {import('../fact.js').Words<import('../../app/types').Remark>} */
const REMARKS = {
  below_step: ({ of, weight }) =>
    `${itemName(of)}: ${weight} is less than this scale can show. Take it by the spoon, or weigh it on a finer scale.`,
  salt_in_cure: ({ premix, brings, aimed }) =>
    `The ${premix ? 'mix' : 'cure'} alone brings ${brings} of salt, more than the ${aimed} aimed at. No more salt is needed.`,
  no_salt_line: ({ brings }) => `The recipe has no salt of its own; the cure brings ${brings}.`,
  sweet_cure: () =>
    'All of the cure but nitrite and nitrate is counted as salt. A sugar cure mix holds sugar too: fry a slice, taste.',
  stock_of_the_day: () => `Make cure water fresh each day. Stir it each time. ${E.pourAwayHead} what is left.`,
  cure_below_step: () => 'This scale cannot show the cure at all. Take one of the ways out before anything is weighed.',
  accelerator: ({ ppm, lies, rule }) =>
    `Ascorbate or erythorbate: ${ppm} ppm goes in. ${ACCELERATED[lies]}. ${rule ?? BACON}.`,
  odd_weight: ({ odd }) => oddWords(odd),
  in_already: ({ portion }) => `It is in already: ${measured(portion)}. It is not on this list.`,
  no_premix: () => 'A 1-in-10 mix does not suit this recipe: it needs one cure, and enough salt in it.',
};

/** @param {import('../../app/types').Remark} remark */
export const remarkWords = (remark) => say(REMARKS, remark);

export const TOO_COARSE = 'Scale too coarse';

/** What a scale that is too coarse does to the dose. @param {import('../../app/types').Coarse} coarse */
export const coarseWords = ({ cure, step, low, high }) =>
  `The dose is ${cure} of cure and the scale shows steps of ${step}. What it shows may mean ${low} to ${high} ppm.`;

/** @type {import('../fact.js').Words<import('../../app/types').CoarseWay, Advice>} */
const COARSE_WAYS = {
  premix: ({ low, high }) => ({
    head: 'Use a 1-in-10 mix.',
    text: `You weigh more of it. On this scale the dose is then ${low} to ${high} ppm.`,
  }),
  finer_scale: () => ({
    head: 'Borrow a finer scale.',
    text: 'A pocket scale with 0.1 g steps, or 0.01 g for less than 300 g of meat.',
  }),
  pool: ({ from }) => ({
    head: 'Or pool the pieces.',
    text: `More meat in one batch takes more cure; from ${from.text} of cure on, this scale is fine enough.`,
  }),
};

/** The ways out of it. @param {import('../../app/types').Coarse} coarse @returns {Advice[]} */
export const coarseWays = ({ ways }) => ways.map((way) => say(COARSE_WAYS, way));

/** How to make and label a mix. @param {import('../../app/types').Premix} premix @returns {Advice[]} */
export const premixSteps = ({ parts, cure, salt }) => [
  {
    head: `Weigh ${cure.text} of cure and ${salt.text} of salt of the same grain.`,
    text: 'Each on its own, on this scale. Same grain, or the cure sinks to the bottom.',
  },
  {
    head: 'Shake it in a closed jar for two minutes.',
    text: 'Shake it again each time before you weigh from it.',
  },
  {
    head: `Label it: 1-in-${parts} cure mix, with the date.`,
    text: 'It is still poisonous by the spoonful. Lock it away with the cure.',
  },
];
