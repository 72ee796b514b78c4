/** The weigh-out in words, for facts of the core. */
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
  one_in: ({ parts }) => `Premix, 1 part cure and ${parts - 1} parts salt`,
  premix: ({ strength }) => `Premix, ${strengthWords(strength)}`,
  stock: ({ strength }) => `Stock, ${strengthWords(strength)}`,
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

/** @type {Record<Method, [string, string]>} */
const PUT_ON = {
  rub: ['Rub all of it in', ', '],
  cover_brine: ['Stir until clear, chill to 4 °C (40 °F), then put under the brine', ': '],
  ground: [`Mix all of it through the cold ${E.mince}, in two lots`, ', '],
  pick_up: ['Stir until clear, chill to 4 °C (40 °F), then put under the brine', ': '],
  pumped: ['Stir until clear, chill to 4 °C (40 °F), then inject by weight, each on the scale', ': '],
  pumped_and_covered: ['Stir until clear, chill to 4 °C (40 °F), then inject by weight, each on the scale', ': '],
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
    const [how, then] = PUT_ON[method];
    return `${how}${then}${about && pieces > 1 ? 'about ' : ''}${count(pieces, 'piece')}`;
  },
  close: ({ method }) => CLOSE[method],
};

/** What there is to do once all is weighed. @param {import('../../app/types').Todo} todo */
export const todoWords = ({ what }) => say(DEEDS_LEFT, what);

/** @type {Record<import('../../app/types').SaltOf, string>} */
const SALT_OF = {
  green: 'Salt, cure included, on green weight',
  taken_up: 'Salt taken up, cure included, on green weight',
  meat_and_water: 'Salt, cure included, on meat and water',
};

/** @type {import('../fact.js').Words<import('../../app/types').SheetFact, Fact>} */
const FACTS = {
  green: ({ weight }) => ({ label: 'Green weight', value: weight }),
  aim: ({ ppm, by_rule }) => ({ label: 'Aim', value: `${ppm}${by_rule ? ', by the rule that is chosen' : ''}` }),
  salt: ({ percent, of }) => ({ label: SALT_OF[of], value: percent }),
  accelerator: ({ ppm }) => ({ label: 'Accelerator going in', value: `${ppm} ppm` }),
  scale: ({ step }) => ({ label: 'Scale', value: `${step} steps` }),
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
    `The ${premix ? 'premix' : 'cure'} alone brings ${brings} of salt, more than the ${aimed} aimed at. No more salt is needed.`,
  no_salt_line: ({ brings }) => `The recipe has no salt of its own; the cure brings ${brings}.`,
  sweet_cure: () =>
    'All of the cure but nitrite and nitrate is counted as salt. A sugar cure mix holds sugar too: fry a slice, taste.',
  stock_of_the_day: () =>
    'A stock in water is made for the day and stirred each time: pour away what is left, and make the next one as its label says.',
  cure_below_step: () => 'This scale cannot show the cure at all. Take one of the ways out before anything is weighed.',
  accelerator: ({ ppm, lies, rule }) => `Accelerator: ${ppm} ppm goes in. ${ACCELERATED[lies]}. ${rule ?? BACON}.`,
  odd_weight: ({ odd }) => oddWords(odd),
  in_already: ({ portion }) => `It is in already: ${measured(portion)}. It is not on this list.`,
  no_premix: () =>
    'A premix does not suit this recipe: it wants one cure, and enough salt to stand the salt in the premix.',
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
    head: 'Work with a premix.',
    text: `Cure thinned with salt is weighed in a larger amount. On this scale the dose then lies between ${low} and ${high} ppm.`,
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

/** How to make and label a premix. @param {import('../../app/types').Premix} premix @returns {Advice[]} */
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
    head: `Label it: premix, 1 part cure in ${parts}, with the date.`,
    text: 'It is still poisonous by the spoonful. Lock it away with the cure.',
  },
];
