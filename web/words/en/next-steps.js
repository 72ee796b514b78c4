/** What to do next about a dose, in words: the deed, then why and with which figures. */
import { E } from './english.js';
import { called } from './calls.js';
import { SIGNS } from './calls.js';
import { say } from '../fact.js';
import { degrees } from '../degrees.js';

/** @typedef {import('../../app/types').Method} Method */
/** @typedef {import('../../app/types').NextStep} NextStep */
/** @typedef {[head: string, text: string]} Deed */
/** @typedef {{ head: string, text: string }} Advice one thing to do: the act, then why */

/** @returns {Deed} */
const brineIt = () => [
  'Stir until nothing lies on the bottom.',
  `Chill the brine to ${degrees(4, 40)} before the meat goes in. Keep every piece under it.`,
];
/** @returns {Deed} */
const injectIt = () => [
  'Stir until nothing lies on the bottom.',
  `Chill the brine to ${degrees(4, 40)}. Weigh each piece. Inject it in many places, until the scale shows its weight and its brine together. ${E.pourAwayHead} what is left of the brine.`,
];

/** How to use what is weighed. @type {Record<Method, () => Deed>} */
const USE_IT = {
  rub: () => ['Weigh in this order into one bowl.', 'Mix it, rub all of it in, and keep what falls off with the meat.'],
  cover_brine: brineIt,
  ground: () => [
    'Weigh in this order into one bowl.',
    `Stir the cure into a little ice water, pour it over the ${E.mince} with the rest, and mix until nothing shows.`,
  ],
  pick_up: brineIt,
  pumped: injectIt,
  pumped_and_covered: injectIt,
};

/** What to do with a dose that is in range. @type {Record<Method, string>} */
const LEAVE_IT = {
  rub: 'Rub it well, keep it cold, and do not add more cure.',
  cover_brine: 'Stir it well, keep every piece under and cold, and do not add more cure.',
  ground: 'Mix it well, keep it cold, and do not add more cure.',
  pick_up: 'Keep every piece under and cold, take it out on time, and do not add more cure.',
  pumped: 'Keep it cold and do not inject it again.',
  pumped_and_covered: 'Keep every piece under and cold, do not inject it again, and do not add more cure.',
};

const INTO_BRINE = 'Weighed, stirred into a cup of the brine, and that into the rest.';

/** How more cure is put in. @type {Record<Method, string>} */
const MORE_CURE = {
  // Spread evenly it would be too much for what is cured already.
  rub: 'Meat that came later: take it out, and weigh its own cure, in a bag of its own. Else weigh it, mix it with a spoonful of salt so that it spreads, and rub it over all of it.',
  cover_brine: INTO_BRINE,
  ground: 'Weighed, stirred into a little ice water, mixed through all of it.',
  pick_up: INTO_BRINE,
  pumped: 'Weighed, stirred into the brine before any of it is injected.',
  pumped_and_covered: INTO_BRINE,
};

const UNDER_TOO = 'Put it into the same brine, stir, and keep all of it under';

/** How more meat is brought in. @type {Record<Method, string>} */
const MORE_MEAT = {
  rub: 'Take all the rub there is and work it over all of the meat again',
  cover_brine: UNDER_TOO,
  ground: `${E.grind} it and mix it through all there is`,
  pick_up: UNDER_TOO,
  pumped: 'Inject no more than planned',
  pumped_and_covered: UNDER_TOO,
};

const WITHIN_THE_HOUR = 'In for less than 1 hour?';
const NOT_INJECTED = 'Nothing injected yet?';

/** Until when more water still helps. @type {Record<Method, string>} */
const MORE_WATER = {
  rub: WITHIN_THE_HOUR,
  cover_brine: WITHIN_THE_HOUR,
  ground: WITHIN_THE_HOUR,
  pick_up: 'No meat in it yet?',
  pumped: NOT_INJECTED,
  pumped_and_covered: NOT_INJECTED,
};

/** @type {Record<import('../../app/types').SpoonKind, string>} */
const SPOONS = { teaspoon: 'teaspoon', tablespoon: 'tablespoon' };

/** @type {Record<import('../../app/types').CureAs, string>} */
const SAME = { cure: 'cure', premix: 'mix', stock: 'cure water' };

/** @type {Record<import('../../app/types').Why, Deed>} */
const SETTLE = {
  not_asked: [
    'Read its bag.',
    `If it says ${E.nitriteOn}, put it under Cure, with its %. If not, say so in the recipe.`,
  ],
  holds: ['Put it under Cure.', 'Type the % of nitrite and nitrate on its bag. No % on the bag? Leave it out.'],
  name_says_so: [
    'Read its bag again.',
    'If it holds any, put it under Cure, with its %. If not, give it the name on the bag.',
  ],
  not_read: [
    'Settle what was not read.',
    'If it calls for cure, add that to the recipe. If not, say so in the recipe.',
  ],
  not_read_says_so: ['Settle what was not read.', 'Put that cure under Cure, with its %, or leave it out.'],
};

const LABORATORY = "The rule counts what is left in the finished meat; that is a laboratory's figure.";
const SHUT_IN = 'Wrap it and shut it in, away from children and dogs';
const BRINE_DOWN = 'The brine goes down a drain with plenty of water, never on the ground.';

/** @param {import('../../app/types').PpmEnds} within */
const until = ({ low, high }) => `until all of the range lies between ${low} and ${high} ppm`;

/** @type {import('../fact.js').Words<NextStep, Deed>} */
const NEXT = {
  weigh_pieces: () => ['Weigh the pieces.', 'The list is an estimate until every size has a weight.'],
  cover_brine_instead: () => [
    'Do not weigh this out.',
    'Choose “Brine, until even” in the recipe. Then a longer stay cannot make it too much.',
  ],
  say_thickness: () => [
    'Or say how thick and how long.',
    'With the thickest part of every size and the hours in the brine, only what the meat takes up is counted.',
  ],
  lower_aim: ({ aim, within }) => [
    'Do not weigh this out.',
    aim === null
      ? `Lower the aim in the recipe, or weigh on a finer scale, ${until(within)}.`
      : `Lower the aim in the recipe: ${aim} ppm leaves room on both sides.`,
  ],
  check_pieces: () => [
    'Check the pieces.',
    'A weight typed too small raises the dose. Weigh the lot together and type that.',
  ],
  finer_scale_or_premix: ({ least }) => [
    'Use a finer scale, or a 1-in-10 mix.',
    `On this scale the dose may be under ${least} ppm, what it needs.`,
  ],
  raise_aim: ({ aim, within }) => [
    'Raise the aim or use a finer scale.',
    aim === null
      ? `On this scale no aim is sure to do. Try, ${until(within)}.`
      : `Aim at ${aim} ppm, ${until(within)}.`,
  ],
  keep_fresh: () => [
    'Or keep it as fresh meat.',
    'Too little cure does not protect: keep it cold, cook it through, eat it within days. Do not smoke it cold or hang it.',
  ],
  use_it: ({ method }) => USE_IT[method](),
  treat_as_fresh: ({ put_in }) => [
    'Treat it as fresh meat.',
    `${
      put_in
        ? 'What went in holds neither nitrite nor nitrate: pink Himalayan salt is no cure.'
        : 'Nothing in this recipe holds nitrite or nitrate.'
    } Keep it cold, cook it through and eat it within days; do not smoke it cold or hang it.`,
  ],
  cure_now: ({ least, most, stays }) => [
    `Or cure it now: ${least} to ${most} g of a 6.25 % cure.`,
    `Only if you know all that went in. Leave in what is in: ${stays}. The salt in it still counts. Weigh the cure, then type it here.`,
  ],
  find_packet: () => ['Find the bag.', 'The % of nitrite is printed on it. Without it the dose cannot be worked out.'],
  no_packet: () => [
    `No bag? ${E.throwAwayHead}.`,
    `${E.colourHead} proves nothing: pink salt may be cure of any strength, or none. Start again with fresh meat and a cure you know.`,
  ],
  keep_cold_meanwhile: () => [
    'Keep it cold meanwhile.',
    `Covered, ${E.labelled} DO NOT EAT, at ${degrees('2 to 4', '36 to 40')}.`,
  ],
  read_print_again: () => [
    'Do not taste it. Read the bag again.',
    'Cooking and soaking take nothing out. If the bag says a few %, type that.',
  ],
  throw_out_pure: () => [
    `If the bag says so: ${E.throwAll}.`,
    `${SHUT_IN}. ${BRINE_DOWN} That bag is not a cure for food: lock it away.`,
  ],
  ate_pure: () => ['Someone ate some?', called(SIGNS.join(' '))],
  add_ascorbate: ({ ppm }) => [
    `Put ${ppm} ppm of sodium ascorbate or erythorbate into the brine.`,
    'As a line of the recipe, by its name. It goes in last, when the cure is dissolved and the brine cold.',
  ],
  tell_ascorbate: ({ ppm }) => [
    `Is ascorbate in it, ${ppm} ppm?`,
    'Say how much went in. Once the brine is in the meat it cannot be added.',
  ],
  fry_gently: () => [
    'Fry it gently, not until it chars.',
    'Very hot, the nitrite in bacon can turn to nitrosamines; ascorbate holds them down. Most are in the fat: do not cook with it.',
  ],
  aim_at_limit: ({ nitrite, nitrate }) => [
    'Aim at the limit or under.',
    `At ${nitrite} ppm of nitrite or less, with ${nitrate} of nitrate or less, the rule is met however long it hangs.`,
  ],
  or_measure: () => ['Or have it measured.', LABORATORY],
  measure_first: () => ['Have it measured before anyone eats it.', LABORATORY],
  label_unmeasured: () => ['Label it so.', '“Not to be eaten before it is measured”, with the date, in the fridge.'],
  leave_cure: ({ method }) => ['Leave the cure as it is.', LEAVE_IT[method]],
  write_on_bag: ({ said }) => ['Write it on the bag.', `“${said}, not weighed”, with today's date.`],
  weigh_spoon: ({ spoon, least, most }) => [
    `Weigh one level ${SPOONS[spoon]} of the same cure.`,
    `${least === most ? least : `Between ${least} and ${most}`} g in all is in range. Type the weight here in place of the spoon.`,
  ],
  do_not_taste: () => ['Do not cook or taste it.', 'Heat and soaking take out no known amount of cure.'],
  more_meat: ({ method, weight, then }) => [
    `${WITHIN_THE_HOUR} Add ${weight} more raw meat.`,
    `${MORE_MEAT[method]}: ${then.low} to ${then.high} ppm. Type the new weight here. Not sure? ${E.throwAwayHead}. Common practice, no source.`,
  ],
  more_water: ({ method, weight, then }) => [
    `${MORE_WATER[method]} Stir in ${weight} more water.`,
    `Weigh it, cold, and stir it through: ${then.low} to ${then.high} ppm. Type the new water here. The salt is thinner too. Not sure? ${E.throwAwayHead}.`,
  ],
  narrow_spoon: ({ spoon }) => [
    `${WITHIN_THE_HOUR} Weigh one level ${SPOONS[spoon]} of the same cure.`,
    'Type here what one level spoon weighs. Then it shows if more meat helps.',
  ],
  more_cure: ({ of, grams, method }) => [
    `Add ${grams} g of the same ${SAME[of]}${method === 'rub' ? ', if all the meat had its share' : ''}.`,
    `${MORE_CURE[method]} Then it is in range.`,
  ],
  finer_scale: () => ['Use a finer scale.', 'On this scale no extra cure is sure to be in range.'],
  throw_out: ({ brine }) => [
    `1 hour or more, or not sure? ${E.throwAwayHead}.`,
    `${SHUT_IN}. ${brine ? `${BRINE_DOWN} ` : ''}Start again with fresh meat, and weigh the cure.`,
  ],
  someone_ate: () => ['Someone ate some?', called(SIGNS.join(' '))],
  may_be_more: () => [
    'Do not weigh this out. Do not eat any.',
    'What is counted is too much already, and there may be more.',
  ],
  settle: ({ why }) => SETTLE[why],
};

/** What to do next, the first first. @param {NextStep[]} next @returns {Advice[]} */
export const nextWords = (next) =>
  next.map((step) => {
    const [head, text] = say(NEXT, step);
    return { head, text };
  });
