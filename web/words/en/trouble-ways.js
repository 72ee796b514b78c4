/** Where the cards for when something went wrong end: two lines and a reason, by the core's keys. `[here|there]` as in `trouble.js`. */
import { E } from './english.js';
import { SIGNS } from './calls.js';

const THROW = `Wrap it and ${E.bin} it, away from children and dogs.`;
const WASH = 'Wash hands and all it touched.';

/**
 * What to do in two lines, and the reason.
 * @type {Record<import('../../app/types').Way, { lines: [string, string], why: string }>}
 */
export const WAYS = {
  poison_call: {
    lines: SIGNS,
    why: 'Nitrite acts within an hour, and the first signs may come late. Tell them what the bag says and about how much.',
  },
  poison_baby: {
    lines: SIGNS,
    why: 'No food cured with nitrite for a baby: its blood is soon short of oxygen.',
  },
  poison_over: {
    lines: SIGNS,
    why: 'Meat that was not weighed may hold many times the limit.',
  },
  ate_in_range: {
    lines: ['Watch for a day.', SIGNS[0]],
    why: 'In range means at the limit or under it.',
  },
  dose_hold: {
    lines: ['Check the dose now, with what went on.', `Cannot find out what or how much? ${E.throwAwayHead}.`],
    why: `The name of a cure says little: the bag has to say its %. A ${E.heaped} spoon is not level spoons: weigh it, or it is not known.`,
  },
  dose_thin: {
    lines: ['Rub all of it over the meat, old and new.', 'Check the dose again before it goes cold.'],
    why: 'That weight is half-way between too little and too much. After an hour too much has gone in.',
  },
  dose_out: {
    lines: [THROW, 'Start again with fresh meat.'],
    why: 'What has gone in stays in. Rinsing, soaking and cooking take out no known amount.',
  },
  dose_top_up: {
    lines: [
      'Open “I already put cure on it”: it says what is missing.',
      'Mix it with a spoon of salt. Rub it in once.',
    ],
    why: 'With less than it needs, a cure does not do its work. Over the limit it harms.',
  },
  dose_raw: {
    lines: ['Add no cure. Treat it as raw meat.', 'Cook it through today.'],
    why: 'How much is in is not known, so more could be too much, and what is there is not counted.',
  },
  dose_old: {
    lines: [THROW, WASH],
    why: 'Too little cure, and past the days that raw meat keeps.',
  },
  power_unknown: { lines: [THROW, WASH], why: 'If it is not known how cold it was, it is not eaten.' },
  power_long: {
    lines: [THROW, WASH],
    why: `After 4 hours without power ${E.throwReady.toLowerCase()} meat from a fridge, whatever it reads later. Cure does not change that.`,
  },
  power_cold: {
    lines: ['Keep the door shut until the power is back.', 'Log the gap with the batch.'],
    why: 'A shut fridge stays cold for about 4 hours.',
  },
  power_ice: {
    lines: ['Freeze it again now, or cook it.', 'Write the day on it.'],
    why: 'With ice crystals or at [4 °C|40 °F] it may be frozen again. It loses juice.',
  },
  power_thawed: {
    lines: [THROW, WASH],
    why: 'A shut freezer holds 24 hours half full, 48 hours full. Without ice crystals or a reading no one can tell.',
  },
  power_chill: {
    lines: ['Put it on ice now. Read it within the hour.', 'Cook it through today.'],
    why: 'Under 2 hours above [4 °C|40 °F], under 1 hour where it is hotter than [32 °C|90 °F].',
  },
  power_warm: {
    lines: [THROW, WASH],
    why: '2 hours or more above [4 °C|40 °F], or 1 hour where it is hotter than [32 °C|90 °F]. Neither cure nor heat mends it.',
  },
  warm_never: {
    lines: ['Keep it at [2 to 4 °C|36 to 40 °F].', 'Leave a thermometer beside it.'],
    why: 'Up to [4 °C|40 °F] its times hold.',
  },
  warm_chill: {
    lines: ['Put it on ice now. Read it within the hour.', 'Log the gap with the batch.'],
    why: 'Under 2 hours above [4 °C|40 °F], under 1 hour where it is hotter than [32 °C|90 °F].',
  },
  warm_out: {
    lines: [THROW, WASH],
    why: '2 hours or more above [4 °C|40 °F], or 1 hour where it is hotter than [32 °C|90 °F]. Neither cure nor heat mends it.',
  },
  thaw_old: {
    lines: [THROW, WASH],
    why: 'Thawed meat keeps no longer than raw meat.',
  },
  thaw_cold: {
    lines: ['Cook it or freeze it again in time.', 'Write the day on it.'],
    why: 'Thawed in the fridge it may be frozen again. It loses juice.',
  },
  thaw_at_once: {
    lines: ['Cook it through now.', 'Do not freeze it raw again.'],
    why: 'In water or a microwave parts of it get warm before the middle thaws.',
  },
  thaw_room: {
    lines: ['Cook it through now.', 'Next time thaw it in the fridge.'],
    why: 'Out for under 2 hours, or under 1 hour where it is hotter than [32 °C|90 °F].',
  },
  thaw_out: {
    lines: [THROW, WASH],
    why: 'The outside is warm for hours while the middle thaws. 2 hours or more is too long, 1 hour above [32 °C|90 °F].',
  },
  froze_cure: {
    lines: ['Thaw it in the fridge. Turn it once more.', 'Add the frozen hours to its time.'],
    why: 'Below [1 °C|34 °F] the cure stands still. The dose is in the bag.',
  },
  froze_after: {
    lines: ['Thaw it on a rack in the fridge.', 'Then go on where it was.'],
    why: 'Frost harms the look. It kills no worms in boar and bear.',
  },
  forgot_in: {
    lines: ['Add no more cure.', 'Go by its time in the cure.'],
    why: 'It is marked with a time, and the bag is that much lighter.',
  },
  forgot_likely: {
    lines: ['Add no more cure.', 'Check the dose with the grams that are gone.'],
    why: 'A second dose makes it twice as strong: over the limit.',
  },
  forgot_not_in: {
    lines: ['Weigh the cure for this meat now.', 'Rub it in. Mark it in.'],
    why: 'The bag is as heavy as before, so none is in.',
  },
  forgot_both: {
    lines: ['Add no cure.', 'Cook it through today.'],
    why: `It may hold a dose: a second one takes it over the limit. It may hold none: then it is raw meat. ${E.colourHead} does not tell.`,
  },
  forgot_old: {
    lines: [THROW, WASH],
    why: 'It may be raw meat past its days. More cure could take it over the limit.',
  },
  sat_warm: {
    lines: [THROW, WASH],
    why: '2 hours or more above [4 °C|40 °F], or not known. Cure does not make up for it.',
  },
  sat_old: { lines: [THROW, WASH], why: 'Cured raw meat keeps 5 to 7 days past its cure. The shorter counts.' },
  sat_strong: {
    lines: ['Take it out of the brine.', 'Check the dose with water, salt, cure and hours.'],
    why: 'A strong brine goes on giving: small pieces can reach 600 to 1680 ppm, far over the limit. Soaking takes out no known amount.',
  },
  sat_even: {
    lines: ['Rinse it. Fry a slice, taste.', `Slimy or sour: ${E.throwAway}.`],
    why: 'Weighed for this meat, the dose cannot grow. It evens out.',
  },
  leak_little: {
    lines: ['New bag, all the liquid, on a tray.', 'Turn it. Wash the shelf.'],
    why: 'A spoonful takes only its own share of cure with it.',
  },
  leak_late: {
    lines: ['Cook it through today.', 'Do not count it as cured.'],
    why: 'Most has gone in, but it may be less than it needs.',
  },
  leak_raw: {
    lines: ['Add no cure, no new brine.', 'Cook it through today.'],
    why: 'How much ran out is not known: what is left may be less than it needs.',
  },
  leak_old: { lines: [THROW, WASH], why: 'Too little cure may be in it, and it is past the days raw meat keeps.' },
  brine_pour: {
    lines: ['Pour it down the drain. Rinse.', 'Mix new brine for the next meat.'],
    why: 'What is left of salt and cure in it is not known, and it is full of raw juice.',
  },
  brine_used: {
    lines: [THROW, 'Pour the brine down the drain.'],
    why: 'Its cure is not known, and it holds the germs of the first meat.',
  },
  brine_move: {
    lines: ['Move meat and brine to a clean tub.', `${E.greyHead}, green or metallic: ${E.throwAway}.`],
    why: `Salt and cure eat ${E.aluminium}, copper, iron and zinc, and the metal goes into the meat.`,
  },
  brine_metal: { lines: [THROW, 'Pour the brine down the drain.'], why: 'How much metal went in is not known.' },
  stall_more_heat: {
    lines: ['Oven at [150 °C|300 °F], or more fire, now.', 'Read it before the 4 hours are over.'],
    why: 'Through [4 to 60 °C|40 to 140 °F] within 4 hours, all pieces.',
  },
  stall_finish: {
    lines: ['Leave it in the heat, or use an oven.', 'Take it out by the reading, not the clock.'],
    why: 'Past [60 °C|140 °F] bacteria do not grow. Water leaving the meat holds it back.',
  },
  stall_out: {
    lines: [THROW, WASH],
    why: 'Over 4 hours between [4 and 60 °C|40 and 140 °F]. More heat does not take out the poison.',
  },
  fire_slow: {
    lines: [THROW, WASH],
    why: 'Over 4 hours between [4 and 60 °C|40 and 140 °F]. More heat does not take out the poison.',
  },
  fire_relight: {
    lines: ['Relight it, or use an oven, now.', 'Go on to the same reading as planned.'],
    why: 'At [60 °C|140 °F] or hotter bacteria do not grow.',
  },
  fire_oven: {
    lines: ['Oven at [150 °C|300 °F], now.', 'Read it every 15 minutes.'],
    why: 'Under 1 hour only: a smoker is hotter than [32 °C|90 °F] without its fire.',
  },
  fire_out: { lines: [THROW, WASH], why: 'Lukewarm for 1 hour or more in a box hotter than [32 °C|90 °F].' },
  early_cooled: {
    lines: [THROW, WASH],
    why: 'Partly cooked and cooled, bacteria live and grow. A second heat does not undo it.',
  },
  early_finish: {
    lines: ['Back into the heat now.', 'Take it out by the reading.'],
    why: 'Partly cooked meat is finished at once, never chilled and finished later.',
  },
  early_out: { lines: [THROW, WASH], why: 'Partly cooked and out for 2 hours or more, or 1 hour above [32 °C|90 °F].' },
  cool_now: {
    lines: ['Cut it thinner. Ice water, or ice around it.', 'Read the middle of the thickest piece.'],
    why: 'From [57 °C|135 °F] to [21 °C|70 °F] in 2 hours, to [5 °C|41 °F] in 6 hours in all.',
  },
  cool_met: { lines: ['Keep it cold.', 'Log both readings with the batch.'], why: 'Both marks were met.' },
  cool_stood: { lines: [THROW, WASH], why: 'Out for 1 hour where it is hotter than [32 °C|90 °F].' },
  cool_slow: {
    lines: [THROW, WASH],
    why: 'Not at [21 °C|70 °F] in 2 hours, or not at [5 °C|41 °F] in 6 hours in all. Heating it again does not undo it.',
  },
  pack_doctor: {
    lines: ['Call a doctor or {poison} now.', 'Keep the pack, shut, for them.'],
    why: 'Hard to see, speak, swallow or breathe: call {emergency}. Signs come after 6 hours to 10 days.',
  },
  pack_out: {
    lines: [THROW, WASH],
    why: `A ${E.blown} pack may hold botulism. Slime and ${E.mould} on cooked or cured meat: all of it goes.`,
  },
  vacuum_old: {
    lines: [THROW, WASH],
    why: 'Vacuum bags keep 10 days in a fridge at most. Botulism grows without air.',
  },
  vacuum_cold: {
    lines: ['Keep it at [3 °C|37 °F] or colder, or freeze it.', 'Eat it within the 10 days.'],
    why: 'Botulism without air grows from [3.3 °C|38 °F] on.',
  },
  vacuum_open: {
    lines: ['Cut the bag open. Put the meat on ice.', 'Heat it through and eat it today.'],
    why: 'Under 2 hours warm, under 1 hour above [32 °C|90 °F].',
  },
  vacuum_out: {
    lines: [THROW, WASH],
    why: 'Warm without air, botulism can grow. Nothing shows it, and the limit of 2 hours (1 hour above [32 °C|90 °F]) is past.',
  },
  oil_old: {
    lines: [THROW, WASH],
    why: 'Garlic and herbs under oil keep 2 to 3 days in the fridge. The shorter counts.',
  },
  oil_cold: {
    lines: ['Back in the fridge now.', 'Write the day on it.'],
    why: 'Botulism grows under oil, without air.',
  },
  oil_out: { lines: [THROW, WASH], why: 'Out of the fridge for 2 hours or more, or 1 hour above [32 °C|90 °F].' },
};

/**
 * How much more meat, and what that comes to.
 * @param {import('../../app/types').MoreMeat} more @param {import('../../app/types').Verdict} verdict
 */
export const spread = ({ weight, then: { low, high } }, { least, limit }) =>
  `Weigh in ${weight.text} more raw meat: then ${low} to ${high} ppm, needs ${least}, limit ${limit}.`;

/** Where the cure was measured by the spoon. */
export const NO_WEIGHT = 'More meat? By the spoon nobody can say how much. Do not guess.';

/** The acts after which the one dose screen has the figures. @type {Set<import('../../app/types').Way>} */
export const DOSE_WAYS = new Set([
  'dose_hold',
  'dose_thin',
  'dose_top_up',
  'forgot_likely',
  'sat_strong',
  'poison_over',
]);
