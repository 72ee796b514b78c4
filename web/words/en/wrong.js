/** What is wrong with what was typed, in words: what is wrong, then what to type. */
import { ATE, called } from './calls.js';
import { E } from './english.js';
import { grouped } from '../numbers.js';
import { say } from '../fact.js';
import { weighedWords } from './game.js';

/** @type {Record<import('../../app/types').RecipeList, string>} */
const LISTS = { cures: 'cures', lines: 'lines', steps: 'steps', unread: 'texts that were not read' };

const PRINTED = 'the % that is printed on the bag, such as 6.25 %';

/** @type {Record<import('../../app/types').PutInBy, string>} */
const PUT_IN = {
  packet: 'the weight that is printed on the bag, such as 25 g',
  scale: 'what the scale showed, such as 3.5 g',
  spoons: 'how many spoons, such as 1 or 2½, or a weight such as 3.5 g',
};

/** A kind of quantity, and what to type. @type {Record<import('../../app/types').KindOf, [string, string]>} */
const KINDS = {
  weight: ['weight', E.aWeight],
  length: ['length', E.aLength],
  temperature: ['temperature', E.aHeat],
  time: ['time', '36 h, 1.5 d or 1 d 12 h'],
  share: ['share', '2.2 % or 150 ppm'],
  spoon_or_cup: ['spoon or cup', '2½ tsp, 1 1/2 tbsp or 250 ml'],
};

/** The rule, and what to type. @param {import('../../app/types').KindOf} of @param {(kind: string) => string} rule */
const typeIt = (of, rule) => `${rule(KINDS[of][0])} Type ${KINDS[of][1]}.`;

/** @type {import('../fact.js').Words<import('../../app/types').Wrong>} */
const WRONG = {
  bags_not_counted: ({ most }) => `Type how many bags came in: 1 to ${grouped(most)}.`,
  too_large_to_reckon: () => 'These figures are too large to work with. Check each of them.',
  bag_wants_meat: () => `A bag takes its brine by the meat. Type its trimmed weight, such as ${E.aMeat}.`,
  no_room_for_brine: () => 'The meat leaves no room for a brine. Take a larger pot, or fill it higher.',
  no_brine_strength: () =>
    'No salt brine is that strong. Type 10 %, 40 degrees or 1.074. 26.4 % (100 degrees) is all that dissolves.',
  cure_too_weak: () => 'This cure is too weak for that aim in this brine. Read the % on the bag, and the aim, again.',
  date_past: () => 'That is past. Choose a day and an hour to come.',
  date_too_far: ({ days }) => `A plan reaches ${days} days ahead. Choose a nearer day.`,
  plan_too_long: ({ batches, rests }) => `A plan has at most ${batches} batches and ${rests} stretches of rest.`,
  bag_rows: ({ most }) => `Add what is in the bag: 1 to ${most} rows.`,
  bag_recipes: ({ most }) => `Choose a recipe of the plan for each row: it has up to ${most}.`,
  bag_too_heavy: () => `All together weigh more than ${E.tonne}. Check the numbers.`,
  no_such_game: () => 'This is not in the table. Choose it from the list.',
  bag_count: ({ most }) => `Type people and birds: 1 to ${grouped(most)} in all.`,
  animal_unweighed: ({ weighed }) =>
    `Type what the animal weighs ${weighedWords(weighed)}: there is no figure without.`,
  too_far_apart: () => 'These weights are too far apart to work with. Check each of them.',
  cure_not_read: ({ typed }) =>
    `“${typed}” is not read. Type spoons, a bag or a weight, such as 1 tbsp, 1 ${E.heaped} tsp, 1 bag of 25 g or 3.5 g.`,
  cure_too_much: () => 'That is more cure than this page works with. Type what went in, such as 3.5 g.',
  cure_nothing: ({ typed }) => `“${typed}” is nothing. Type what went in, such as 1 tsp or 3.5 g.`,
  mix_parts: () =>
    'A mix or a cure water is 1 part of a cure in 2 to 100, and that much weaker. Choose it from the list again, or type what its label says.',
  cure_over_whole: () => 'Nitrite and nitrate together are more than 100 %. Read the bag again.',
  cure_too_strong: ({ nitrite }) =>
    called(
      `${nitrite} % is too strong for a cure. Most say 6.25 % or less: read the bag again. If it does say that, the meat can kill: do not taste it. ${ATE}`,
    ),
  no_such_cut: () => 'This cut is not in the table. Choose one from the list.',
  no_such_card: () => 'That problem is not in the list. Choose one from the list.',
  no_such_answer: () => 'That is not one of the answers. Choose one shown.',
  recipe_too_many: ({ list, most }) => `A recipe has at most ${most} ${LISTS[list]}. Take some out.`,
  unread_empty: () => 'What was not read is empty. Take it out.',
  cooked_hangs: () => 'What is cooked or dried out does not hang for months. Choose cooked, or take that step out.',
  hangs_without_rub: () => 'Hanging for months goes with a rub on a whole muscle. Choose cooked, or the rub.',
  brine_wants_water: () => 'A brine needs water. Add a line of water, such as 60 % of trimmed weight.',
  no_such_cure: ({ item }) => `“${item}” is not among the cures. Choose one from the list.`,
  mix_not_known: () => 'How this mix was made must be known. Choose it from the list again.',
  cure_holds_none: () =>
    'A cure holds nitrite or nitrate. Type the % printed on the bag. Pink Himalayan salt has none and is no cure.',
  aim_nought: () => 'The aim is zero. Type the nitrite to aim at, such as 150 ppm.',
  aim_too_high: ({ most }) => `The aim is above ${most} ppm. Type the nitrite to aim at, such as 150 ppm.`,
  aim_as_strong: () => 'The aim is as strong as the cure itself. Read the bag again, and type an aim such as 150 ppm.',
  pure_has_one_strength: () => 'A pure salt has one strength. Choose the cure by its bag, and type what that says.',
  allergens_known: () => 'The allergens of this are known. Leave them out, or add it as your own.',
  agent_known: () => 'What is in this is known. Leave that out, or add it as your own.',
  not_in_pantry: ({ item }) => `“${item}” is not on the list. Choose from the list, or take “own” and give it a name.`,
  cure_among_lines: () => 'Put a cure under Cure, with its printed % and an aim.',
  sounds_like_cure: () =>
    'This sounds like a cure. Put it under Cure, with its printed % and an aim. Here it is not counted.',
  nothing_evens_out: () => 'In this method type it as % of the brine’s water.',
  no_brine_here: () => 'There is no brine here. Type it as % of trimmed weight, or by the piece.',
  water_without_brine: () => 'Only a brine takes water. Take the line out, or choose a brine.',
  water_by_green_weight: () => 'Type water as % of trimmed weight, such as 60 %.',
  line_too_much: () => 'Only water may be more than 100 %. Type a share such as 2.2 %.',
  take_missing: () => 'How much of the brine goes in is missing. Type it as % of trimmed weight, such as 10 %.',
  take_out_of_bounds: () => 'What is injected or taken up is 1 to 60 % of trimmed weight. Type 10 %, for example.',
  take_unasked: () =>
    'Only what is injected, or a short strong brine, has a share that goes in. Leave it empty, or choose that method.',
  turned_too_often: () =>
    'Turning goes with a step that lasts, every 30 minutes or more and at most 200 times. Type both, such as 36 h, turned every 12 h.',
  name_missing: ({ most }) => `Nothing is typed here. Type a name of up to ${most} characters.`,
  name_one_line: () => 'A name is one line. Take the line break out.',
  text_too_long: ({ long, most }) => `This is ${long} characters long; at most ${most} are saved. Shorten it.`,
  hidden_character: () => 'There is a character in it that cannot be shown. Type it again.',
  tag_form: () => 'A tag is two capital letters, such as SD.',
  recipe_too_long: () => 'This recipe is too long for a link. Shorten its notes, or send the backup file.',
  link_too_long: () => 'This is longer than any link of this page. Ask for the link again.',
  link_missing: () => 'Nothing is here. Paste the whole link, or what stands behind its #.',
  link_version: () =>
    'This link was written by another version of the page. Take the newest version and open the link again.',
  no_link: () => 'This is no recipe link. Paste the whole link, or what stands behind its #.',
  link_cut: () =>
    'This link was cut off: its end is missing. Ask for it again, or copy all of it, to the last character.',
  link_altered: () => 'This link was changed on its way. Ask for it again.',
  link_holds_no_recipe: () => 'What is in this link is not a recipe. Ask for the link again.',
  link_ingredient: () =>
    'This link names an ingredient that this page does not know. Take the newest version of the page and open the link again.',
  link_digits: () => 'A figure in this recipe has too many digits for a link. Round it.',
  not_of_form: ({ why }) => why,
  two_requests: () => 'There is more than one request on this line. Write one to a line.',
  table_empty: () => 'A table of the page is empty. Reload the page.',
  fields_too_many: ({ most }) => `A form has at most ${most} fields.`,
  weight_nought: () => `A weight here is above zero. Type ${E.aWeight}.`,
  length_nought: () => `A length here is above zero. Type ${E.aLength}.`,
  time_nought: () => 'A time here is above zero. Type 36 h, 1.5 d or 1 d 12 h.',
  printed_missing: () => `Nothing is typed here. Type ${PRINTED}.`,
  printed_wrong_unit: () => `A bag gives its strength in %. Type ${PRINTED}.`,
  printed_not_read: ({ typed }) => `“${typed}” is not read. Type ${PRINTED}.`,
  printed_out_of_bounds: () => `A printed strength is between 0 and 100 %. Type ${PRINTED}.`,
  count_not_read: ({ typed, most }) => `“${typed}” is no number of pieces. Type a whole number from 1 to ${most}.`,
  put_in_missing: ({ by }) => `Amount is missing. Type ${PUT_IN[by]}.`,
  put_in_not_read: ({ by, typed }) => `“${typed}” is not read. Type ${PUT_IN[by]}.`,
  put_in_out_of_bounds: ({ by }) => `What went in is above zero, and at most 1000 kg. Type ${PUT_IN[by]}.`,
  meat_nought: () => `The meat weighs more than nothing. Type its trimmed weight, such as ${E.aMeat}.`,
  water_missing: () =>
    `A brine needs its water: the dose counts over meat and brine. Type its weight; a ${E.litre} is 1000 g.`,
  text_missing: () => `Nothing is here. Paste or type a recipe, such as ${E.aLine}.`,
  recipe_text_too_long: ({ most }) =>
    `This is longer than a recipe: ${most} characters are read at most. Paste the part with the amounts.`,
  recipe_lines_too_many: ({ most }) => `There are more than ${most} lines here. Paste the part with the amounts.`,
  weight_after_fire: () => 'That does not fit the trimmed weight. Weigh all pieces together, and check Pieces.',
  no_class_cut: () => 'Choose which size was cut.',
  cut_wants_clock: () => 'A cut tells something once the thickness is typed and the cure is on.',
  no_hour_counts: () => 'No hour of this cure counts yet, so the cut tells nothing of its speed.',
  ring_too_wide: () =>
    `The part that has not ${E.coloured} is thinner than the piece. Measure it across, in mm or inches.`,
  no_colour: () => `Without cure there is no ${E.colour} to go by.`,
  too_little_brine: () =>
    'This is less brine than is to go into the meat. Raise the share of water, or lower the % injected or taken up.',
  no_pieces: () => 'No meat yet. Add the pieces: how many, and what they weigh.',
  pieces_unweighed: () => 'Some of these pieces have no usual weight. Weigh them: the list goes by their weight.',
  scale_step: ({ steps }) => `A scale shows steps of ${steps.join(', ')}. Choose one.`,
  no_such_rule: () => 'This set of rules is not in the table. Choose one from the list.',
  kept_mixes: ({ most }) => `A saved mix is damaged, or there are more than ${most}. Remove it and save it again.`,
  learned_cuts: () => 'What was learned from cuts is damaged. Forget it and cut again.',
  learned_smoker: () => 'What fires told of the smoker is damaged. Forget it.',
  house_hours: () => `Type a time such as ${E.aTime}. A place has 0 to 99 batches or racks.`,
  spoon_of_what: () => 'This is not in the list. Choose from it, or type its name.',
  spoon_weights: () =>
    'Weigh ten level spoons, one by one or all together. Type each weight, three at least, or one weight and how many it was.',
  no_known_weight: () => 'Type at least one known weight and what the scale shows.',
  known_weight_nought: () => 'A known weight is above zero. Type it, such as 100 g, or 50 ml of water.',
  stock_figures: () =>
    'Meat, printed % and aim are each above zero, and the aim below the %. Type 500 g, 6.25 % and 150 ppm, for example.',
  tick_form: () => 'Something marked done in this batch is damaged. Mark it again.',
  thrown_out_form: () => `The time at which this batch was thrown ${E.thrown} is damaged.`,
  too_many_sizes: ({ most }) => `A batch has at most ${most} sizes. Put like pieces together.`,
  size_form: () => 'A size in this batch is damaged. Remove it and add it again.',
  cut_not_listed: ({ cut }) =>
    `“${cut}” is not in the list of cuts. Choose from the list, or take “own” and give it a name.`,
  piece_count: ({ most }) => `A size has 1 to ${grouped(most)} pieces. Type how many there are.`,
  piece_weight_nought: () => 'A weight here is above zero. Type it, or leave it empty until it is weighed.',
  mix_too_far_off: () => 'This mix is too far off to work with.',
  day_form: () => 'Choose the day from the calendar, or leave it empty.',
  too_many_readings: ({ most }) => `A batch has at most ${grouped(most)} readings. Start another batch.`,
  probe_shared: ({ most }) => `At most ${grouped(most)} sizes share a probe. Set fewer.`,
  reading_time: () => 'A reading in this batch has no time. Give it its day and hour.',
  fridge_readings: ({ most }) =>
    `A fridge reading has a time and a temperature. Type both. At most ${grouped(most)} are saved.`,
  pieces_too_heavy: () => `All pieces together weigh more than ${E.tonne}. Check the weights.`,
  quantity_too_long: ({ of, typed }) => typeIt(of, (kind) => `“${typed}” is too long for a ${kind}.`),
  quantity_missing: ({ of }) => typeIt(of, () => 'Nothing is typed here.'),
  no_unit: ({ of, typed }) => typeIt(of, () => `“${typed}” has no unit.`),
  wrong_unit: ({ of, unit }) => typeIt(of, (kind) => `“${unit}” is no unit of ${kind} here.`),
  units_out_of_order: ({ of, typed }) =>
    typeIt(of, (kind) => `“${typed}” is not read as a ${kind}: the larger unit comes first, both of one kind.`),
  too_many_digits: ({ of, typed }) => typeIt(of, () => `“${typed}” has too many digits or marks.`),
  two_readings: ({ typed, readings }) =>
    `“${typed}” can be read two ways. Which do you mean: ${readings.join(' or ')}?`,
  quantity_too_small: ({ of, least }) => typeIt(of, (kind) => `A ${kind} here is at least ${least}.`),
  quantity_too_large: ({ of, most }) => typeIt(of, (kind) => `A ${kind} here is at most ${most}.`),
  quantity_not_read: ({ of, typed }) => typeIt(of, (kind) => `“${typed}” is not read as a ${kind}.`),
  too_many_rests: ({ most }) => `A plan has at most ${most} stretches of rest.`,
};

/**
 * A problem of the core with its words.
 * @template {import('../../app/core.js').Problem} P
 * @param {P} problem
 * @returns {P}
 */
export const worded = (problem) => (problem.wrong ? { ...problem, message: say(WRONG, problem.wrong) } : problem);

/**
 * The same with what stands above the field in front of it. Behind a colon a sentence goes on in small letters.
 * @template {import('../../app/core.js').Problem} P
 * @param {P} problem
 * @param {string} label
 * @returns {P}
 */
export function labelled(problem, label) {
  const { message } = worded(problem);
  return { ...problem, message: `${label}: ${message.charAt(0).toLowerCase()}${message.slice(1)}` };
}
