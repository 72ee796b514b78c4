/** The fire and what its log shows, in words for facts of the core. */
import { degrees } from '../degrees.js';
import { LOCAL_RULES } from './cautions.js';
import { E } from './english.js';
import { say } from '../fact.js';
import { count, statusWords } from './names.js';
import { pieceName } from './cuts.js';

/** @typedef {import('../../app/types').FireClass} FireClass */
/** @typedef {import('../../app/types').Degrees} Degrees */

/** In the person's scale, and in the other: for what stands under Why. @param {Degrees} degrees */
export const both = ({ own, other }) => `${own} (${other})`;

/** Who asks for what has to be read. @type {Record<import('../../app/types').Demand, string>} */
export const ASKED = {
  consumer: 'What this meat needs.',
  choice: 'Chosen for whole cuts, with nobody at risk: 3 minutes of rest at least before it is cut.',
  jerky: 'Strips are that hot before they are dried. USDA FSIS, Jerky and Food Safety (published).',
  recipe: 'The recipe asks for more than the rule.',
};

/** What can be said of a size. @type {Record<import('../../app/types').FireState, string>} */
export const FIRE_STATES = {
  made_it: 'Hot enough',
  by_table: 'Hot enough by the table',
  not_yet: 'Not hot enough yet',
  colder: 'Not hot enough: it was read colder',
  dried_first: 'Dried before it was hot',
  cannot_say: 'Cannot say yet',
  in_doubt: 'Read hot, but in doubt',
};

/** A size that goes by the probe of another. */
export const NOT_MEASURED = 'Not measured: put the probe in before it comes out.';

/** @type {Record<import('../../app/types').Demand, (one: FireClass) => string>} */
const BY = {
  consumer: ({ record }) => `what this meat needs${record.needed.before_drying ? ' before it is dried' : ''}`,
  choice: ({ consumer }) => `chosen, with nobody at risk; the usual rule is ${consumer.text}`,
  jerky: () => 'what strips need before they are dried',
  recipe: ({ consumer }) => `the recipe’s own; the usual rule is ${consumer.text}`,
};

/** @param {FireClass} one */
const needed = (one) => `${one.needed.text} is needed: ${BY[one.record.needed.by](one)}.`;
/** @param {FireClass} one */
const notHot = (one) => (one.probe === null ? needed(one) : `${needed(one)} ${NOT_MEASURED}`);

/** @type {import('../fact.js').Words<import('../../app/types').Heat, string, FireClass>} */
const HEAT = {
  unread: (_, one) => notHot(one),
  in_question: () => 'A reading of it is in question. Answer that first.',
  not_yet: (_, one) => notHot(one),
  colder: (_, one) =>
    `${one.colder?.text} was read after it was hot. ${needed(one)} The coldest piece counts. If it was out of the heat by then, mark it out, with the time it came out.`,
  dried_first: (_, one) =>
    `${one.needed.text} is needed before drying begins: ${BY[one.record.needed.by](one)}. What dries first lives through the heat after it. Do not eat it by this log.`,
  hot: (_, one) => {
    const { by, rest } = one.record.needed;
    return `${one.needed.text} was read: ${BY[by](one)}.${rest ? ` Let it rest ${rest} minutes at least before it is cut.` : ''}`;
  },
  by_table: (_, one) => `By the table, on its conditions. Without it ${needed(one)}`,
};

/** By which rule a size is hot enough or not, and what to do. @param {FireClass} one */
export const heatWords = (one) => say(HEAT, one.record.heat, one);

/** @type {Record<import('../../app/types').NoLower, (one: FireClass) => string>} */
const NO_LOWER = {
  not_asked: () => 'First say who will eat it. Nothing lower for anyone at risk.',
  at_risk: ({ consumer }) => `Someone at risk eats it: nothing lower than ${consumer.text}.`,
  minced: ({ consumer }) => `${E.mincedHead} or injected: nothing lower than ${consumer.text}.`,
  dried: ({ consumer }) => `Strips to be dried: ${consumer.text} first. Nothing lower.`,
  parasites: ({ consumer }) => `Bear, wild boar and their kin: ${consumer.text} everywhere, no table.`,
  no_table: ({ consumer }) => `No table is known for this meat: nothing lower than ${consumer.text}.`,
};

/** Why no lower one may be set; nothing where one may. @param {FireClass} one */
export function noLower(one) {
  const why = one.record.needed.no_lower;
  return why === null ? '' : NO_LOWER[why](one);
}

/** @type {Record<import('../../app/types').MeatKind, (rule: import('../../app/types').HeatRule) => string>} */
const RULES = {
  bird: ({ at }) => `Every bird, wild ones too, whole or ${E.minced}: ${both(at)}.`,
  red: ({ at, choice, rest }) =>
    `${E.redGame}, whole or ${E.minced}: ${both(at)}.${choice ? ` ${both(choice)} and ${rest} minutes of rest is the US chart for farmed whole cuts: a choice, never for anyone at risk.` : ''}`,
  boar: ({ at }) =>
    `${E.WildBoar}, bear, cougar and their kin: ${both(at)} all through, every piece. Freezing, curing, drying and smoking do not kill the parasites. Older pages say ${degrees(71, 160)}; they are superseded.`,
  hare: ({ at }) => `Hare, rabbit and other small game: ${both(at)}, as wild game animals in the Food Code.`,
  own: ({ at }) => `Not in the table of cuts: ${both(at)}, the most that any rule asks, until it is known what it is.`,
};

/** A rule, and where it is published. @param {import('../../app/types').HeatRule} rule */
export const ruleWords = (rule) => `${RULES[rule.of](rule)} ${rule.source} (${statusWords(rule.status)}).`;

/** @type {Record<import('../../app/types').Table, string>} */
export const TABLES = {
  bird: 'Birds, 12 % fat, the longer of chicken and turkey, 7 log: FSIS Cooking Guideline 2021 (quoted).',
  meat65: 'Meat, 6.5 log: FSIS Appendix A 1999 (published).',
  meat70: 'Meat, 7 log: FSIS Appendix A 1999 (published).',
};

/** On what conditions such a table gives credit. @param {import('../../app/types').Conditions} conditions */
export const conditionWords = ({ less, gap, short_below: below }) =>
  `This table is for moist heat: 90 % humidity for an hour or a quarter of the cook, or a sealed or steamed oven. A dry smoker may do less. Only the coldest piece counts, read at least every ${gap} minutes. ${both(less)} is taken off for the thermometer, and nothing counts below the table’s floor. Below ${both(below)} one study found it short (McMinn 2018, published).`;

/** @type {import('../fact.js').Words<import('../../app/types').WayStands, [string, string]>} before and after the limit */
const WAY_UP = {
  slow: ({ took }) => [`Too slow: ${took} on its way.`, ' More heat does not make it good. Do not eat it.'],
  running: ({ took }) => [`On its way for ${took}.`, ' If it will not: into the hotter oven now.'],
  fine: ({ took }) => [`It came up in ${took}.`, ''],
  unseen: ({ first }) => [`Its first reading was ${first}: how long it had been on its way is not known.`, ''],
};

/** How long it is between cold and hot. @param {import('../../app/types').WayUp} up */
export function wayUp({ stands, from, to, most }) {
  const [first, last] = say(WAY_UP, stands);
  return `${first} At home it comes through ${from.num} to ${to.text} within ${most} (UNL extension, published).${last}`;
}

/** Why no time can be told. @type {Record<import('../../app/types').NoOutlook, string>} */
export const NO_OUTLOOK = {
  in_question: 'A reading of it is in question',
  no_thickness: 'Its thickness is not known: type it under Pieces',
  no_cabinet: 'How warm the smoker is was not said: log the smoker',
};

/** @type {import('../fact.js').Words<import('../../app/types').OutlookBasis>} */
const BASES = {
  shared: ({ readings, of }) =>
    `${NOT_MEASURED} Worked out by its own thickness and this smoker as fitted to ${count(readings, 'reading')} of ${pieceName(of)}.`,
  hung_with: ({ of }) =>
    `${NOT_MEASURED} Worked out by its own thickness and what is usual for this smoker, hung when ${pieceName(of)} was.`,
  fitted: ({ readings }) => `Fitted to ${count(readings, 'reading')} of it.`,
  usual: () => 'By what is usual for its thickness and this smoker: from three readings on it is fitted to them.',
};

/** What a time is worked from. @param {import('../../app/types').OutlookBasis} from */
export const outlookBasis = (from) => say(BASES, from);

/** @type {import('../fact.js').Words<import('../../app/types').OutlookNote>} */
const NOTES = {
  too_cold: () =>
    'With the smoker as warm as this it will not reach its target within a day. Turn the smoker up, or finish it in the oven.',
  stall: () =>
    'It stands still, the stall: water from its surface takes the heat. It goes on once the surface dries; how soon is uncertain.',
  warmer: ({ by, takes }) => `With the smoker ${by.text} warmer: about ${takes}.`,
  oven: ({ at, takes }) => `In an oven at ${both(at)}, from now: about ${takes}.`,
  no_rise: () => 'It hardly rises once it is out: take it out at its target.',
  rise: ({ by }) => `Out of the heat its middle may still rise about ${by.text}; nothing counts before it is read.`,
  loss: ({ percent }) => `By then it will have lost about ${percent} % of its weight as water, by this model.`,
};

/** What to know of a time, and what to do. @param {import('../../app/types').OutlookNote} note */
export const outlookNote = (note) => say(NOTES, note);

/** What is odd about a reading, and what to do. @type {Record<import('../../app/types').Odd, string>} */
export const ODD = {
  to_come: 'This time is still to come. Correct the time, or look at the clock of this device.',
  earlier:
    'This is earlier than the reading logged before it. Keep it if its time is right; if the clock was changed, correct the time.',
  boiling: 'Hotter than boiling water. Correct it, or check that the probe is in the meat.',
  above_cabinet: 'Warmer than the smoker. Correct it, or check that the probe is in the meat. °C and °F mixed up?',
  fell: 'Colder than the last one. Another piece, or did the probe slip? A colder piece counts: leave it in. °C and °F mixed up? Correct it.',
  too_fast: 'Too fast. Correct it, or check that the probe is in the meat and off the bone.',
  cooled_fast: 'No middle cools so fast. Correct it, or push the probe to the middle of the warmest piece.',
};

/** What stands beside every figure. @type {Record<import('../../app/types').FireCaution, string>} */
export const FIRE_CAUTIONS = {
  local_code: LOCAL_RULES,
  probe_thickest:
    'Probe the thickest part of the coldest piece, away from bone. A shot breast is not an intact muscle: pellets carry feather and gut inwards.',
  chill_missed: `Too slow, or not read: ${E.throwAway}. Heating it again does not undo it. To be faster: one layer, an ice bath for bags, a fan, no stacking.`,
};

/** What fires told of a smoker. @param {import('../../app/types').AirHabit} air */
export const airWords = ({ heat, range }) =>
  `Its air brings heat at ${heat} % of what is usual for its kind; the range of that is ${range} % of what it was.`;

/** What yield and salt are worked from, and what they are not. @param {import('../../app/types').After} after */
export const afterBasis = ({ water }) =>
  `Worked from the recipe’s salt, ${water} of water in lean meat (usual, from memory), and all that was lost taken as water. An estimate: it does not say how long it keeps. Keep it cold.`;
