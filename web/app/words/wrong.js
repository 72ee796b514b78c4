/** What is wrong with what was typed, in words: what is wrong, then what to type. */
import { grouped } from './numbers.js';
import { say } from './fact.js';

/** @type {import('./fact.js').Words<import('../types').Wrong>} */
const WRONG = {
  bags_not_counted: ({ most }) => `Type how many bags came in: 1 to ${grouped(most)}.`,
  too_large_to_reckon: () => 'These figures are too large to work with. Check each of them.',
  bag_wants_meat: () => 'A bag takes its brine by the meat. Type its trimmed weight, such as 1480 g or 3 lb 4 oz.',
  no_room_for_brine: () => 'The meat leaves no room for a brine. Take a larger pot, or fill it higher.',
  no_brine_strength: () =>
    'No salt brine is that strong. Type 10 %, 40 degrees or 1.074. 26.4 % (100 degrees) is all that dissolves.',
  cure_too_weak: () => 'This cure is too weak for that aim in this brine. Read the % on the bag, and the aim, again.',
  date_past: () => 'That is past. Choose a day and an hour to come.',
  date_too_far: ({ days }) => `A plan reaches ${days} days ahead. Choose a nearer day.`,
  plan_too_long: ({ batches, rests }) => `A plan has at most ${batches} batches and ${rests} stretches of rest.`,
  bag_rows: ({ most }) => `Add what is in the bag: 1 to ${most} rows.`,
  bag_recipes: ({ most }) => `Choose a recipe of the plan for each row: it has up to ${most}.`,
  bag_too_heavy: () => 'All together weigh more than a tonne (2200 lb). Check the numbers.',
  no_such_game: () => 'This is not in the table. Choose it from the list.',
  bag_count: ({ most }) => `Type hunters and birds: 1 to ${grouped(most)} in all.`,
  animal_unweighed: ({ weighed }) => `Type what the animal weighs ${weighed}: there is no figure without.`,
  no_such_card: () => 'There is no such card. Choose one from the list.',
  no_such_answer: () => 'The card has no such answer. Choose one of those it shows.',
};

/**
 * A problem of the core with its words.
 * @template {import('../core.js').Problem} P
 * @param {P} problem
 * @returns {P}
 */
export const worded = (problem) => (problem.wrong ? { ...problem, message: say(WRONG, problem.wrong) } : problem);
