/** Cautions: the fact, then the deed. Each is said where it can still change one. */
import { degrees } from '../degrees.js';
import { POISON_ADVICE } from './calls.js';
import { E } from './english.js';

/** @typedef {import('../../app/types').CautionKey} CautionKey */

const SHOT = 'May contain shot or bullet lead';
const NOT_FOR = 'children of 6 and under, or anyone pregnant or who may become so';
const COLD = () => degrees(4, 40);
const BIRDS = () => degrees(73.9, 165);
const RED = () => degrees(71.1, 160);

/** Each is asked for when it is shown: its temperatures stand in the person's scale. @type {Record<CautionKey, () => string>} */
const WORDS = {
  'nitrite-locked': () =>
    `Cure looks like salt and is poisonous by the spoonful. Keep it dyed, ${E.labelled} and locked away from children. If anyone ate it, call the poison ${E.centre} at once, symptoms or not.${POISON_ADVICE}`,
  'weigh-it': () => 'A level teaspoon of cure may hold 4.2 to 8.3 g. Weigh it, do not guess.',
  'keep-cold': () =>
    `Keep it at ${degrees('2 to 4', '36 to 40')} the whole time. Above ${COLD()} the times no longer hold.`,
  'birds-165': () => `Cook every bird, wild ones too, to ${BIRDS()} in the middle of the thickest piece.`,
  'red-160': () =>
    `Red game: ${RED()} in the middle. ${degrees(62.8, 145)} and 3 minutes of rest only for whole cuts, where it is chosen and nobody at risk eats it.`,
  'mince-heat': () =>
    `${E.minceHead}, all through: red game ${RED()}; bird, boar, bear and hare ${BIRDS()}. What was on the outside is inside now.`,
  'boar-165': () =>
    `Wild boar, bear and their kin: ${BIRDS()} all through, every piece; older pages say 160 °F. Freezing, curing and smoking do not kill the parasites, and what touched the raw meat can carry them.`,
  'hare-165': () => `Hare: ${BIRDS()} in the middle. Wear gloves while dressing (${E.tularaemia}).`,
  'jerky-heat': () =>
    `Jerky: heat the strips to ${RED()}, birds, boar and hare to ${BIRDS()}. Then dry them at ${degrees('54 to 60', '130 to 140')}.`,
  'cool-fast': () =>
    `From ${degrees(57, 135)} to ${degrees(21, 70)} within 2 hours, and to ${degrees(5, 41)} within 4 hours more.`,
  'bacon-fry': () =>
    'Very hot, the nitrite in bacon can turn to nitrosamines. Fry it gently and never until it chars. Ascorbate or erythorbate in a pumped belly holds them down.',
  'local-rules': () =>
    'Your local code, the food-safety authority and licensed practice decide. This page does the sums; it does not license.',
  'raw-hung': () =>
    'Eaten raw, game can carry parasites and bacteria that no cure kills. Never bear, boar or their kin, and nothing raw for guests at risk. Months of hanging want a cure with nitrate too, and a method from an authority.',
  'pack-words': () =>
    'Write on it: what it is, its weight, the day, cured, keep cold, wild game, not for sale, may contain shot.',
  'brine-once': () =>
    `Use a brine once, then ${E.pourAway}. Tub: glass, food plastic or stainless steel, never ${E.aluminium}, copper, zinc or chipped enamel.`,
  'dress-birds': () =>
    'Birds can carry avian influenza. Wear gloves while dressing, take no sick or found-dead bird, and wash knife and board.',
  'dress-deer': () =>
    'Deer, elk, moose: wear gloves, leave brain and spine alone. Where chronic wasting disease is known, have it tested and do not eat or share it before the result.',
  'dress-boar': () =>
    'Wild boar can carry brucellosis and hepatitis E, and freezing, smoking and pickling do not kill them. Wear gloves and eye protection while dressing.',
  'trichinella-test': () =>
    'Have wild boar and bear tested for Trichinella where the law asks for it; cook it through all the same.',
  'dress-hare': () =>
    `Hare and rabbit can carry ${E.tularaemia}. Wear gloves while dressing. Leave a sick or found-dead one where it is.`,
  'vacuum-botulism': () =>
    `A vacuum bag keeps air out and lets Clostridium botulinum grow, with no smell and no swelling: ${degrees(3, 37)} or colder and 10 days at most, or frozen. Open it before it thaws.`,
  'cold-smoke': () =>
    'Cold smoke is not cooking: Listeria lives through it. Cook it before it is eaten; none for anyone pregnant, old or ill.',
  'share-deer': () =>
    'Deer, elk, moose from where chronic wasting disease is known: give none away before the test is back.',
  lead: () =>
    `${SHOT}: none for ${NOT_FOR}. Cut the bullet channel and ${E.aroundBullet} around it away; eat no organs.`,
  infants: () => 'No food cured with nitrite for infants.',
  thaw: () =>
    `Thaw it in the fridge. What thawed there may be frozen again raw; what lay warm 2 hours: ${E.throwAway}.`,
  'label-shot': () => `${SHOT}. None for ${NOT_FOR}.`,
  'label-raw': () => 'Raw inside. Not to be eaten before it is cooked through.',
  'label-vacuum': () => 'Clostridium botulinum can grow in a vacuum pack. Open it before it thaws.',
  'label-shelf': () => 'Not shelf-stable. Keep cold.',
  'label-sale': () => 'Wild game. Not for sale.',
  'label-sale-other': () => 'Wild game. Not for sale before you have checked your law.',
  'tag-birds': () =>
    'Migratory birds left with or given to another anywhere but at either home carry this tag. The head or one feathered wing stays on until home (not doves, band-tailed pigeons). Check your state.',
  'tag-us': () => 'Rules for a gift of game differ. Check your state.',
  'tag-other': () => 'Rules for a gift of game differ. Check your law.',
};

/** @param {CautionKey} key */
export const cautionText = (key) => WORDS[key]();

/** Several, one behind the other. @param {CautionKey[]} keys */
export const cautionTexts = (keys) => keys.map(cautionText).join(' ');
