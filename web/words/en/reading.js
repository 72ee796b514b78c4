/** What a pasted text was read as, and what is asked of it, in words for facts of the core. */
import { E } from './english.js';
import { say } from '../fact.js';
import { METHODS } from './names.js';
import { STEPS } from './steps.js';
import { worded } from './wrong.js';
import { INGREDIENTS } from './ingredients.js';

/** @typedef {import('../../app/types').ReadLine} ReadLine */
/** @typedef {import('../../app/types').ReadStep} ReadStep */
/** @typedef {import('../../app/types').Question} Question */

/** What a recipe is called whose text has no title; it is kept under this name. */
export const UNTITLED = 'Recipe as read';

const ANIMALS =
  'mallard|teal|wigeon|duck|goose|geese|pheasant|turkey|grouse|partridge|quail|dove|pigeon|deer|venison|elk|moose|caribou|reindeer|antelope|rabbit|hare|boar|hog|pork|bear';
const PARTS =
  'breasts?|legs?|thighs?|haunch(?:es)?|hams?|saddles?|loins?|backstraps?|shoulders?|bell(?:y|ies)|rounds?|roasts?|strips|ribs?';
/** The meat as it is named, the fullest name first. */
const MEATS = [
  `(?:wild |snow |canada )?(?:${ANIMALS})s? (?:${PARTS})`,
  `(?:wild |snow |canada )?(?:${ANIMALS})s?`,
  `(?:${PARTS})`,
].map((name) => new RegExp(`\\b${name}\\b`, 'i'));

/** What a text without a title is called: by its meat. @param {string} text */
export function calledBy(text) {
  const meat = MEATS.map((name) => name.exec(text)?.[0]).find(Boolean);
  return meat ? `${meat.charAt(0).toUpperCase()}${meat.slice(1).toLowerCase()}, from a message` : UNTITLED;
}

/** A row of the pantry; a cure with what is printed on its bag. @param {import('../../app/types').RowOf} row */
function row({ item, cure, no_cure: noCure }) {
  const name = INGREDIENTS[item];
  if (noCure) return `${name}: no cure`;
  const [nitrite, nitrate] = cure ?? ['', ''];
  const printed = [nitrite && `${nitrite} % nitrite`, nitrate && nitrate !== '0' && `${nitrate} % nitrate`];
  return [name, printed.filter(Boolean).join(' and ')].filter(Boolean).join(', ');
}

/** Measures that have one name in several places. @type {Record<import('../../app/types').MeasureKey, string>} */
const MEASURES = {
  australian_tablespoon: 'Australian tablespoon',
  clove: 'clove',
  cup_250_ml: '250 ml cup',
  dessertspoon: 'dessertspoon',
  fl_oz_1_5: '1½ fl oz',
  fl_oz_us_4: '4 US fl oz',
  gill: 'a gill',
  imperial_cup: 'imperial cup',
  imperial_fluid_ounce: 'Imperial fluid ounce',
  imperial_gallon: 'Imperial gallon',
  imperial_gill: 'Imperial gill',
  imperial_pint: 'Imperial pint',
  imperial_quart: 'Imperial quart',
  loose: 'Loose',
  metric_cup: 'metric cup',
  metric_tablespoon: 'metric tablespoon',
  metric_teaspoon: 'metric teaspoon',
  ml_190: '190 ml',
  ml_25: '25 ml',
  ml_30: '30 ml',
  packed: 'Packed',
  spoon_15_ml: '15 ml spoon',
  spoon_5_ml: '5 ml spoon',
  tablespoon: 'Tablespoon',
  teaspoon: 'Teaspoon',
  us_cup: 'US cup',
  us_fluid_ounce: 'US fluid ounce',
  us_gallon: 'US gallon',
  us_gill: 'US gill',
  us_pint: 'US pint',
  us_quart: 'US quart',
};

/** Which of several things of one name. @type {Record<import('../../app/types').WhichKey, string>} */
const WHICH = {
  which_kosher_salt: 'Which kosher salt?',
  which_sea_salt: 'Which sea salt?',
  which_coarse_salt: 'Which coarse salt?',
  which_flake_salt: 'Which flake salt?',
  which_pink_salt: 'Which pink salt? One is a cure, one is only salt.',
  which_cure: 'Which cure? Read the packet.',
  which_nitrite_salt: 'Which nitrite salt? Read the packet.',
  which_e250: 'Which of those with E 250? Read the packet.',
  which_nitrate: 'Which nitrate? Read the packet.',
  which_pepper: 'Which pepper?',
  crushed_or_whole: 'Crushed or whole?',
  which_mustard: 'Which mustard?',
  whole_or_crushed: 'Whole or crushed?',
  fresh_or_powder: 'Fresh or powder?',
  ground_or_whole: 'Ground or whole?',
  ground_or_fresh: 'Ground or fresh?',
  dried_fresh_or_ground: 'Dried, fresh or ground?',
  dried_or_fresh: 'Dried or fresh?',
  seed_or_leaf: 'Seed or leaf?',
  weed_or_seed: 'Weed or seed?',
  leaves_or_ground: 'Leaves or ground?',
  which_vinegar: 'Which vinegar?',
  red_or_white: 'Red or white?',
  ground_mixed_or_flakes: 'Ground, mixed or flakes?',
  ground_or_flakes: 'Ground or flakes?',
  ground_or_stick: 'Ground or stick?',
  which_salt: 'Which salt?',
};

/** @type {import('../fact.js').Words<import('../../app/types').Thing>} */
const THINGS = {
  row: (fact) => row(fact.row),
  open: ({ items }) => `Not settled: ${items.map((item) => INGREDIENTS[item]).join('; ')}`,
  food: ({ name }) => name,
  own: ({ name }) => `${name}, not on the list`,
};

/** @param {ReadStep} step */
function deed({ do: act, lasts, heat, inside }) {
  const parts = [act && STEPS[act], lasts && say(LASTS, lasts), heat, inside && `until ${inside} inside`];
  return parts.filter(Boolean).join(', ');
}

/** @type {import('../fact.js').Words<import('../../app/types').Lasts>} */
const LASTS = {
  span: ({ time }) => time,
  hours: ({ from, to }) => `${from} to ${to} h`,
};

/** @type {Record<import('../../app/types').Taken, (line: ReadLine, thing: string) => string>} */
const TAKEN = {
  item: ({ each, by }, thing) => (each ? `${thing}, each ${each}` : by ? `${thing}, by the ${MEASURES[by]}` : thing),
  taste: (line, thing) => (thing ? `${thing}: no amount` : 'No amount'),
  meat: (line, thing) => thing || 'The meat',
  step: ({ steps }) => {
    const deeds = steps.filter((step) => step.do).map(deed);
    return deeds.length ? `In the recipe: ${deeds.join('; ')}` : 'A step: kept as a note';
  },
  heading: (line, thing) => thing || 'A heading',
  remark: () => 'A remark: kept as a note',
  unread: () => 'Not read: kept as a note',
};

/** What a line is taken for. @param {ReadLine} line */
export const takenFor = (line) => TAKEN[line.taken](line, line.thing ? say(THINGS, line.thing) : '');

/** @type {import('../fact.js').Words<import('../../app/types').LineFlag>} */
const FLAGS = {
  left: ({ words }) => `Not understood: “${words}”.`,
  amount_unsaid: () => 'How much of it is missing.',
  spoon_unknown: () => 'What a spoon of it weighs is not known. Write its weight instead.',
  piece_unknown: () => 'What one of it weighs is not known. Write its weight instead.',
  unweighable: () => 'How much that is cannot be said. Write its weight, or level spoons.',
  one_of_two: () => 'Two amounts stand here, and only one is read.',
  base_twofold: () => 'For how much it is can be read two ways. Write that number without a comma.',
};

/** What is to be known of a line. @param {ReadLine} line */
export const flagsOf = ({ flags }) => flags.map((flag) => say(FLAGS, flag)).join(' ');

const BAG = `The bag then says ${E.nitriteOn}`;

/** @type {import('../fact.js').Words<Question>} */
const QUESTIONS = {
  meat: ({ several }) =>
    several ? 'More than one weight of meat stands here. For how much is this?' : 'For how much meat is this?',
  method: () => 'How does it go on?',
  take: () => 'How much of the brine goes in, as a % of the meat?',
  water: () => `How much water? A ${E.litre} is 1000 g.`,
  percent_of: () => '% of what?',
  holds: ({ names: [one, ...more] }) =>
    more.length
      ? `Does any of these hold nitrite or nitrate? ${BAG}: ${[one, ...more].map((name) => `“${name}”`).join(', ')}.`
      : `Does “${one}” hold nitrite or nitrate? ${BAG}.`,
  strength: ({ of }) => `What % nitrite does the bag of “${of}” say? Type 0 if none.`,
  either: () => 'One or the other: which?',
  letter: () => 'Which c is meant?',
  measure: () => 'Which measure is meant?',
  amounts: () => 'Two amounts stand here. Which?',
  grams: () => 'How much of it is missing. How much?',
  unused: ({ words }) => `Nothing was made of “${words}”. Does it change this line?`,
  bare: () => 'This number has no unit. Which is meant?',
  number: () => 'Which number?',
  shared: ({ base }) => `Is this ${base} as well?`,
  packed: () => 'Packed into the spoon, or loose?',
  which: ({ ask }) => WHICH[ask],
};

/** A question. @param {Question} asked */
export const questionWords = (asked) => say(QUESTIONS, asked);

/** @type {Record<import('../../app/types').PercentOf, string>} */
const PERCENT_OF = {
  meat: 'Of the meat',
  water: 'Of the water',
  both: 'Of meat and water together',
  salt: 'Of the salt',
};

/** @type {import('../fact.js').Words<import('../../app/types').Offer, string, Question>} */
const OFFERS = {
  said: ({ text }) => text,
  measure: ({ of }) => MEASURES[of],
  row: (offer) => row(offer.row),
  method: ({ method }) => METHODS[method],
  percent_of: ({ of }) => PERCENT_OF[of],
  holds_none: (offer, asked) => (isOfSeveral(asked) ? 'No, none of them' : 'No'),
  holds: ({ name }, asked) => (isOfSeveral(asked) ? `Yes: “${name}”` : 'Yes'),
  shared: ({ base }) => `Yes, ${base}`,
  all: () => 'No, for all of the meat',
  as_read: () => 'No, it is right as read',
  not_as_read: () => 'Yes: do not weigh it, keep it as a note',
  unsure: () => 'Not sure',
};

/** @param {Question} asked */
const isOfSeveral = (asked) => asked.is === 'holds' && asked.names.length > 1;

/** What can be answered, each with its value. @param {import('../../app/types').Asked} asked @returns {[string, string][]} */
export const offers = ({ ask, choices }) => choices.map(([value, offer]) => [value, say(OFFERS, offer, ask)]);

/** @type {import('../fact.js').Words<import('../../app/types').NoRecipe>} */
const NO_RECIPE = {
  open: () => 'Answer the questions above. Then the grams are exact.',
  too_far_apart: () => 'These amounts are too far apart to work with. Check each of them.',
  strength_unknown: ({ text, source }) =>
    `How much nitrite or nitrate is in “${text}” is not known, so nobody can say what it does: ` +
    `${source.charAt(0).toLowerCase()}${source.slice(1)}. Leave it out, and use a cure with its % printed on the bag.`,
  amount_unsaid: ({ text }) => `How much of “${text}” is missing. Write it into the text above.`,
  nothing: () => 'Nothing here can be weighed.',
  wrong: ({ problem }) => worded(problem).message,
};

/** Why no recipe came out. @param {import('../../app/types').NoRecipe} why */
export const noRecipe = (why) => say(NO_RECIPE, why);

/** What is to be known of the recipe that came out. @type {Record<import('../../app/types').Beside, string>} */
export const BESIDE = {
  cure_by_weight: 'The recipe has the cure in grams, from a usual spoon. Weigh it.',
  notes: 'What is not weighed stands in the recipe’s notes, as it was written.',
  no_heat: 'No cooking in the text: add to the recipe how it is cooked and chilled.',
};
