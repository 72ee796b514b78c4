/**
 * Words of the cards for when something went wrong, by the core's keys. A key without words fails the type check.
 *
 * `[here|there]` is said as the first part in metric units, as the second in US units;
 * `{emergency}` and `{poison}` as the number of the place.
 */
import { E } from './english.js';
import { SIGNS, called } from './calls.js';

/** @param {string} text @param {boolean} us */
export function inUnits(text, us) {
  return called(text.replace(/\[([^|\]]*)\|([^\]]*)\]/g, (_, here, there) => (us ? there : here)));
}

const RED_DAYS = `${E.redGame}: 3 to 5 days.`;
const OTHER_DAYS = `All other game, and ${E.mince}: 1 to 2 days.`;

/**
 * What each card is called, when to open it, and the two lines to do now, before anything is asked.
 * @type {Record<import('../../app/types').Card, { head: string, lead: string, now: [string, string] }>}
 */
export const CARDS = {
  eaten: {
    head: 'Someone ate cure',
    lead: 'From the bag, or meat with too much of it. Or a baby ate cured meat.',
    now: SIGNS,
  },
  dose: {
    head: 'The dose was wrong',
    lead: 'Too much, too little, another product, or by the spoon.',
    now: ['Do not cook or taste it.', 'Mark it DO NOT EAT. Keep it cold. Add nothing yet.'],
  },
  power: {
    head: 'The power failed',
    lead: 'A fridge or freezer without power.',
    now: ['Keep the door shut.', 'Write down when the power went.'],
  },
  warm: {
    head: 'It got warm',
    lead: 'The door stood open, the ice was gone, the bag lay in the car.',
    now: ['Put it on ice now.', 'Do not taste it.'],
  },
  thaw: {
    head: 'It thawed',
    lead: 'How long is it good? Can it be frozen again?',
    now: ['Put it in the fridge now.', 'Open a vacuum bag before it thaws.'],
  },
  froze: {
    head: 'It froze in the fridge',
    lead: 'In the cure, on the rack, in the shed.',
    now: ['Leave it in its bag, with all the liquid.', 'Add no cure.'],
  },
  forgot: {
    head: 'Did the cure go in?',
    lead: 'No one remembers.',
    now: ['Add no cure yet.', 'Keep it at [4 °C|40 °F] or colder.'],
  },
  sat: {
    head: 'It sat too long',
    lead: 'Past the day it was to come out.',
    now: ['Take it out of the cure.', 'Keep it at [4 °C|40 °F] or colder.'],
  },
  leak: {
    head: 'The bag leaked',
    lead: 'Liquid on the shelf.',
    now: ['Put meat and liquid in a new bag.', `${E.throwReady} ready-to-eat food the raw juice touched.`],
  },
  brine: {
    head: 'Old brine, or a metal tub',
    lead: `Brine used before, or in ${E.aluminium}, copper, iron or zinc.`,
    now: ['Take the meat out of it.', 'Do not taste meat or brine.'],
  },
  stall: {
    head: 'It stands still over the heat',
    lead: 'The middle does not get hotter.',
    now: ['Turn the heat up now.', 'Read the thickest piece in the middle.'],
  },
  fire: {
    head: 'The fire went out',
    lead: 'Part of the way through.',
    now: ['Read the middle of the thickest piece.', 'Heat an oven to [150 °C|300 °F] now.'],
  },
  early: {
    head: 'It came off too early',
    lead: 'Partly cooked, or taken out by the wrong reading.',
    now: ['Do not eat it yet.', 'Do not chill it to finish later.'],
  },
  slow_cool: {
    head: 'It cooled too slowly',
    lead: 'Still warm for hours, or it stood overnight.',
    now: ['Put it on ice or in ice water, bagged.', 'Do not taste it.'],
  },
  pack: {
    head: `A pack is ${E.blown}, slimy or ${E.mouldy}`,
    lead: 'Or it leaks, spurts or smells wrong.',
    now: ['Do not open or taste it.', 'Keep people and dogs away from it.'],
  },
  vacuum: {
    head: 'A vacuum bag got warm or old',
    lead: 'Botulism grows without air and gives no smell.',
    now: ['Do not taste it.', 'Put it on ice now.'],
  },
  oil: {
    head: 'Garlic or herbs under oil',
    lead: 'Botulism grows there and gives no smell.',
    now: ['Do not taste it.', 'Put it in the fridge now.'],
  },
};

/** @type {Record<import('../../app/types').Ask, string>} */
export const QUESTIONS = {
  ate_what: 'What was eaten?',
  by_baby: 'Did a baby eat it?',
  ate_in_range: 'Was its dose in range, by weight?',
  dose_judged: 'What does “I already put cure on it” say?',
  how_on: 'How did the cure go on?',
  on_1h: 'How long has it been on?',
  more_meat: 'Is more raw meat of this kind at hand?',
  first_weighed: 'Was the first amount weighed in grams?',
  since_1d: 'How long ago was it bagged?',
  raw_days: `Raw for how long? ${RED_DAYS} ${OTHER_DAYS} Frozen days do not count.`,
  power_where: 'Where was it?',
  out_4h: 'How long was the power off?',
  reads_40: 'What does the meat read now?',
  ice: 'Are there ice crystals, or does it read [4 °C|40 °F] or colder?',
  got_40: 'How warm did it get?',
  air_90: 'Was it hotter than [32 °C|90 °F] around it?',
  warm_1h: 'How long, all warm times added up?',
  warm_2h: 'How long, all warm times added up?',
  thaw_fridge: 'Where did it thaw?',
  thaw_quick: 'How did it thaw?',
  froze_where: 'Where was it?',
  ticked: 'Is the cure marked as in, with a time?',
  jar: 'And the cure bag, on the scale?',
  cold_all: 'Was it at [4 °C|40 °F] or colder all the time? (Under 2 hours warmer in all is a yes.)',
  past_5d: 'How far past its day?',
  method: 'How was it cured?',
  lost: 'How much ran out?',
  cure_time_over: 'Was it past its “Leave it in until”?',
  brine_what: 'Which is it?',
  brine_meat: 'Is other meat in it already?',
  metal_1h: 'How long was it in the metal tub?',
  heat_4h: 'How long since it left the fridge?',
  past_140_4h: 'Was the middle past [60 °C|140 °F] within 4 hours, by a reading?',
  middle_140: 'Does the middle read [60 °C|140 °F] or hotter now?',
  fire_1h: 'How long was the fire out?',
  cooled_since: 'Has it cooled, or been in the fridge since?',
  since_2h: 'How long since it was at [57 °C|135 °F]?',
  at_70_2h: 'Was it at [21 °C|70 °F] or colder within 2 hours?',
  at_41_6h: 'Was it at [5 °C|41 °F] or colder within 6 hours in all?',
  pack_eaten: 'Has anyone eaten any?',
  vac_days: 'How long in its vacuum bag, days in the freezer not counted?',
  oil_2d: 'When was it made?',
};

/** @type {Record<import('../../app/types').Choice, string>} */
export const CHOICES = {
  unsure: 'Not sure',
  yes: 'Yes',
  no: 'No',
  cure: 'Cure, or meat with too much',
  cured_meat: 'Finished cured meat',
  too_much: 'Too much',
  too_little: 'Too little',
  rubbed: 'Rubbed on the outside',
  inside: 'In a brine, injected or mixed in',
  under_1h: 'Less than 1 hour',
  over_1h: '1 hour or more',
  under_1d: 'Less than a day',
  over_1d: 'A day or more',
  within: 'Not longer than that',
  longer: 'Longer',
  fridge: 'Fridge',
  freezer: 'Freezer',
  under_4h: 'Less than 4 hours',
  over_4h: '4 hours or more',
  cold: '[4 °C|40 °F] or colder',
  warm: 'Warmer',
  under_2h: 'Less than 2 hours',
  over_2h: '2 hours or more',
  in_fridge: 'In the fridge',
  other: 'Somewhere else',
  water_or_microwave: 'Cold water or microwave',
  in_the_room: 'Out in the room',
  in_cure: 'In the cure',
  out_of_cure: 'Rinsed, drying or smoked',
  lighter: 'Lighter by the amount for this meat',
  same: 'As heavy as before',
  up_to_5d: 'Up to 5 days',
  over_5d: 'Longer',
  weighed: 'Weighed for this meat',
  strong_brine: 'Strong brine, by time',
  spoonful: 'A spoonful',
  more: 'More',
  used_brine: 'Brine used before',
  metal_tub: 'A metal tub, not stainless',
  up_to_10d: 'Up to 10 days',
  over_10d: 'Longer',
  up_to_2d: '2 days ago or less',
  over_2d: 'Earlier',
};

/** The act in words. @type {Record<import('../../app/types').Act, string>} */
export const ACTS = {
  call_poison_centre: 'Call now',
  get_medical_help: 'Get medical help now',
  throw_out: E.throwAwayHead,
  throw_out_brine: E.pourBrineAway,
  weigh_again: 'Do not eat it yet',
  thin_now: 'Spread it over more meat now',
  cook_now: 'Cook it now',
  finish_now: 'Finish it in the heat now',
  chill_now: 'Chill it now',
  go_on_if: 'Go on with care',
};

/** @type {Record<import('../../app/types').OnlyIf, string>} */
export const CONDITIONS = {
  no_signs: 'No one is blue, faint, sick or short of breath.',
  in_range: '“I already put cure on it” says “In range”, from grams.',
  on_the_outside: 'The rub still lies on the outside.',
  all_over_all: 'All of the rub goes over all of the meat.',
  to_the_aim: 'Weigh to the aim, not to the limit.',
  once: 'Weigh what is missing, in grams, and add it once.',
  cold: 'It is kept at [4 °C|40 °F] or colder.',
  no_more_cure: 'No more cure goes in.',
  no_slow_smoke: 'No slow smoke: straight to full heat.',
  as_fresh: 'Keep it as fresh cooked meat: 3 days.',
  gap_logged: 'The gap is written down with its batch.',
  frozen_again: 'It goes back in the freezer, or is cooked, now.',
  cold_within_hour: 'It reads [4 °C|40 °F] or colder within the hour.',
  later_cure: 'Those hours are added to its time in the cure.',
  cook_through: `Heat the middle through: ${E.redGame.toLowerCase()} [71 °C|160 °F], all other game [74 °C|165 °F].`,
  within_days: `Cook or freeze it within its days. ${RED_DAYS} ${OTHER_DAYS}`,
  frozen_once_cooked: 'It is frozen again only once it is cooked.',
  thawed_cold: 'It thaws in the fridge, in its bag.',
  weighed_now: 'The cure is weighed for this meat now. Its time starts now.',
  rinsed: 'Rinse it. Soaking takes out salt, not a known amount of cure.',
  liquid_back: 'All the liquid you can catch is in the new bag.',
  inert_tub: 'It moves to glass, food plastic or stainless steel.',
  not_pitted: `The metal is not pitted, and the brine has no new ${E.colour}.`,
  past_140_in_4h: `The middle is past [60 °C|140 °F] within 4 hours of leaving the fridge, the time without fire counted. If not, ${E.throwAway}.`,
  no_wait: 'It goes from one heat straight to the other.',
  to_70_in_2h: `It is at [21 °C|70 °F] within 2 hours of [57 °C|135 °F]. If not, ${E.throwAway}.`,
  to_41_in_6h: `It is at [5 °C|41 °F] within 6 hours in all. If not, ${E.throwAway}.`,
  at_38_or_frozen: 'It was and is at [3 °C|37 °F] or colder, or frozen.',
  opened_to_thaw: 'A frozen bag is opened before it thaws.',
  bag_opened: 'The bag is cut open now.',
  eaten_today: 'It is heated through and eaten today.',
  oil_by_day_2: 'It is used up by the second day, or frozen.',
};

/** @type {Record<import('../../app/types').Hazard, string>} */
export const HAZARDS = {
  nitrite: 'Nitrite: blue lips, headache, faint, short of breath.',
  parasites: 'Worms in wild boar and bear live through frost, cure and smoke.',
  perfringens: 'Clostridium perfringens grows in meat that cools slowly.',
  botulism: 'Botulism: double vision, drooping eyelids, slurred speech. Call {emergency}. It gives no smell or taste.',
};
