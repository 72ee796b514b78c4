/** What to do next about a dose, in words: the deed, then why and with which figures. */
import { E } from './english.js';
import { say } from '../fact.js';

/** @typedef {import('../../app/types').Method} Method */
/** @typedef {import('../../app/types').NextStep} NextStep */
/** @typedef {[head: string, text: string]} Deed */
/** @typedef {{ head: string, text: string }} Advice one thing to do: the act, then why */

/** @type {Deed} */
const BRINE_IT = [
  'Stir until nothing lies on the bottom.',
  'Chill the brine to 4 °C (40 °F) before the meat goes in, and keep every piece under.',
];
/** @type {Deed} */
const PUMP_IT = [
  'Stir until nothing lies on the bottom.',
  'Chill the brine to 4 °C (40 °F). Weigh each piece, pump it in many places until the scale shows its weight and the pump together, and throw away what is left of the brine.',
];

/** How to use what is weighed. @type {Record<Method, Deed>} */
const USE_IT = {
  rub: ['Weigh in this order into one bowl.', 'Mix it, rub all of it in, and keep what falls off with the meat.'],
  cover_brine: BRINE_IT,
  ground: [
    'Weigh in this order into one bowl.',
    `Stir the cure into a little ice water, pour it over the ${E.mince} with the rest, and mix until nothing shows.`,
  ],
  pick_up: BRINE_IT,
  pumped: PUMP_IT,
  pumped_and_covered: PUMP_IT,
};

/** What to do with a dose that is in range. @type {Record<Method, string>} */
const LEAVE_IT = {
  rub: 'Rub it well, keep it cold, and do not add more cure.',
  cover_brine: 'Stir it well, keep every piece under and cold, and do not add more cure.',
  ground: 'Mix it well, keep it cold, and do not add more cure.',
  pick_up: 'Keep every piece under and cold, take it out on time, and do not add more cure.',
  pumped: 'Keep it cold and do not pump it again.',
  pumped_and_covered: 'Keep every piece under and cold, do not pump it again, and do not add more cure.',
};

const INTO_BRINE = 'Weighed, stirred into a cup of the brine, and that into the rest.';

/** How more cure is put in. @type {Record<Method, string>} */
const MORE_CURE = {
  rub: 'Weighed, mixed with a spoonful of salt so that it spreads, rubbed over all of it.',
  cover_brine: INTO_BRINE,
  ground: 'Weighed, stirred into a little ice water, mixed through all of it.',
  pick_up: INTO_BRINE,
  pumped: 'Weighed, stirred into the brine before any of it is pumped.',
  pumped_and_covered: INTO_BRINE,
};

const UNDER_TOO = 'Put it into the same brine, stir, and keep all of it under';

/** How more meat is brought in. @type {Record<Method, string>} */
const MORE_MEAT = {
  rub: 'Take all the rub there is and work it over all of the meat again',
  cover_brine: UNDER_TOO,
  ground: `${E.grind} it and mix it through all there is`,
  pick_up: UNDER_TOO,
  pumped: 'Pump no more than was planned',
  pumped_and_covered: UNDER_TOO,
};

const WITHIN_THE_HOUR = 'Put in within the hour?';
const NOT_PUMPED = 'Nothing pumped yet?';

/** Until when more water still helps. @type {Record<Method, string>} */
const MORE_WATER = {
  rub: WITHIN_THE_HOUR,
  cover_brine: WITHIN_THE_HOUR,
  ground: WITHIN_THE_HOUR,
  pick_up: 'No meat in it yet?',
  pumped: NOT_PUMPED,
  pumped_and_covered: NOT_PUMPED,
};

/** @type {Record<import('../../app/types').SpoonKind, string>} */
const SPOONS = { teaspoon: 'teaspoon', tablespoon: 'tablespoon' };

/** @type {Record<import('../../app/types').CureAs, string>} */
const SAME = { cure: 'cure', premix: 'premix', stock: 'stock' };

/** @type {Record<import('../../app/types').Why, Deed>} */
const SETTLE = {
  not_asked: [
    'Read its packet.',
    'If it names nitrite, nitrate or E 249 to E 252, it is a cure and goes under cure with its per cent. If not, say so on the card.',
  ],
  holds: [
    'Put it under cure.',
    'With the per cent of nitrite and nitrate on its packet. If the packet does not say how much, nobody can say what is in the meat: leave it out.',
  ],
  name_says_so: [
    'Read its packet again.',
    'If it holds any, it goes under cure with its per cent. If not, give it the name on the packet.',
  ],
  not_read: ['Settle what was not read.', 'If it calls for cure, put that on the card. If not, say so on the card.'],
};

const LABORATORY = "The rule counts what is left in the finished meat; that is a laboratory's figure.";
const SHUT_IN = 'Wrapped and shut in, away from children and dogs';

/** @param {import('../../app/types').PpmEnds} within */
const until = ({ low, high }) => `until all of the range lies between ${low} and ${high} ppm`;

/** @type {import('../fact.js').Words<NextStep, Deed>} */
const NEXT = {
  weigh_pieces: () => ['Weigh the pieces.', 'The list is an estimate until every size has a weight.'],
  cover_brine_instead: () => [
    'Do not weigh this out.',
    'Choose the cover brine in the recipe: then the cure is counted over meat and brine together, and a longer stay only evens it out.',
  ],
  say_thickness: () => [
    'Or say how thick and how long.',
    'With the thickest part of every size and the hours in the brine, thick pieces taken out in time are judged by pick-up.',
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
    'Use a finer scale, or a premix.',
    `On this scale's step the dose may fall under the least of ${least} ppm.`,
  ],
  raise_aim: ({ aim, within }) => [
    'Raise the aim or use a finer scale.',
    aim === null
      ? `On this scale no aim is sure to do. Try, ${until(within)}.`
      : `Aim at ${aim} ppm, ${until(within)}.`,
  ],
  keep_fresh: () => [
    'Or keep it as fresh meat.',
    'Under the least the cure gives no protection worth counting on: keep it cold, cook it through, eat it within days. Do not smoke it cold or hang it.',
  ],
  use_it: ({ method }) => USE_IT[method],
  treat_as_fresh: ({ put_in }) => [
    'Treat it as fresh meat.',
    `${
      put_in
        ? 'What went in holds neither nitrite nor nitrate: pink salt for the table is no cure.'
        : 'Nothing in this recipe holds nitrite or nitrate.'
    } Keep it cold, cook it through and eat it within days; do not smoke it cold or hang it.`,
  ],
  cure_now: ({ least, most, stays }) => [
    `Or cure it now: ${least} to ${most} g of a 6.25 % cure.`,
    `Weighed, and only where all else that went in is known: ${stays} stays in it. Salt that is in counts on. Have it judged here once it is weighed.`,
  ],
  find_packet: () => [
    'Find the packet.',
    'The nitrite is printed on it in per cent. Without that figure nobody can say what is in the meat.',
  ],
  no_packet: () => [
    'No packet, no blessing.',
    `${E.colourHead} proves nothing: pink salt may be a cure of any strength or none. If the strength stays unknown, start again with fresh meat and a cure you know.`,
  ],
  keep_cold_meanwhile: () => [
    'Keep it cold meanwhile.',
    `Covered, ${E.labelled} as not to be eaten, at 2 to 4 °C (36 to 40 °F).`,
  ],
  read_print_again: () => [
    'Nobody tastes it. Read the packet again.',
    'Cooking and soaking take nothing out. If the packet says a few per cent, type that, and it is judged anew.',
  ],
  throw_out_pure: () => [
    'If the packet says so: throw all of it out.',
    `${SHUT_IN}, with the brine down a drain and plenty of water. The packet is no cure for food: lock it away.`,
  ],
  ate_pure: () => [
    'Has someone eaten some?',
    `Ring the poison ${E.centre} or the emergency number at once, with signs or without, and say nitrite.`,
  ],
  add_ascorbate: ({ ppm }) => [
    `Put ${ppm} ppm of sodium ascorbate or erythorbate into the brine.`,
    'As a line of the recipe, by its name. It goes in last, when the cure is dissolved and the brine cold.',
  ],
  tell_ascorbate: ({ ppm }) => [
    `Is ascorbate in it, ${ppm} ppm?`,
    'Say how much went in, and it is judged with it. Once the brine is in the meat it cannot be added.',
  ],
  fry_gently: () => [
    'Fry it gently, not until it chars.',
    'Nitrosamines come of nitrite in bacon that is fried very hot; ascorbate holds them down. Poured-off fat holds most of them: do not cook with it.',
  ],
  aim_at_limit: ({ nitrite, nitrate }) => [
    'Aim at the limit or under.',
    `At ${nitrite} ppm of nitrite or less, with ${nitrate} of nitrate or less, the rule is met however long it hangs.`,
  ],
  or_measure: () => ['Or have it measured.', LABORATORY],
  measure_first: () => ['Have it measured before anyone eats it.', LABORATORY],
  label_unmeasured: () => [
    'Label it so.',
    '“Not to be eaten before it is measured”, with the date, in the refrigerator.',
  ],
  leave_cure: ({ method }) => ['Leave the cure as it is.', LEAVE_IT[method]],
  write_on_bag: ({ said }) => ['Write it on the bag.', `“${said}, not weighed”, with today's date.`],
  weigh_spoon: ({ spoon, least, most }) => [
    `Weigh one level ${SPOONS[spoon]} of the same cure.`,
    `${least === most ? least : `Between ${least} and ${most}`} g in all is in range. Type the weight here in place of the spoon.`,
  ],
  do_not_taste: () => [
    'Do not cook it or taste it.',
    'Heat does not take the cure out, and neither does soaking: nobody can see how much has gone in.',
  ],
  more_meat: ({ method, weight, then }) => [
    `${WITHIN_THE_HOUR} Bring in ${weight} more raw meat.`,
    `${MORE_MEAT[method]}: counted over all of it that is ${then.low} to ${then.high} ppm. Type the new weight here. Common practice, no source: what has gone into the first pieces stays there, so when in doubt throw it out.`,
  ],
  more_water: ({ method, weight, then }) => [
    `${MORE_WATER[method]} Stir in ${weight} more water.`,
    `Weighed, cold, stirred through all of it: that is ${then.low} to ${then.high} ppm. Count it with the water and have it judged again. The salt is thinner by it too: keep it as cold as before, and count what you add. When in doubt throw it out.`,
  ],
  narrow_spoon: ({ spoon }) => [
    `${WITHIN_THE_HOUR} Weigh one level ${SPOONS[spoon]} of the same cure.`,
    'A spoon leaves the range too wide for any figure. Type its weight here in place of the spoon: then it is seen whether more meat can help.',
  ],
  more_cure: ({ of, grams, method }) => [
    `Add ${grams} g of the same ${SAME[of]}.`,
    `${MORE_CURE[method]} Then the whole range lies between the least and the limit.`,
  ],
  finer_scale: () => [
    'Use a finer scale.',
    "On this scale's step no addition lands surely between the least and the limit.",
  ],
  throw_out: ({ brine }) => [
    'Cannot be done, or longer than an hour? Throw it out.',
    brine
      ? `${SHUT_IN}; the brine down a drain with plenty of water, never on the ground. Start again with fresh meat and a new brine, and weigh the cure.`
      : `${SHUT_IN}. Start again with fresh meat and weigh the cure.`,
  ],
  someone_ate: () => [
    'Has someone eaten some?',
    'Blue lips, headache, faintness or short breath: ring the emergency number at once and say nitrite.',
  ],
  may_be_more: () => [
    'Do not weigh this out, and do not eat of it.',
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
