/** Cautions: the fact, then the deed. Each is said where it can still change one. */
import { degrees } from '../degrees.js';
import { ATE, called } from './calls.js';
import { E } from './english.js';

/** @typedef {import('../../app/types').CautionKey} CautionKey */

const SHOT = 'May contain shot or bullet lead';
const NOT_FOR = 'children of 6 and under, or anyone who is or may become pregnant';
const COLD = () => degrees(4, 40);
const BIRDS = () => degrees(73.9, 165);
const RED = () => degrees(71.1, 160);

/** Whose word counts. */
export const LOCAL_RULES = `Your local food rules decide. This page only does the ${E.sums}.`;

/** Each is asked for when it is shown: its temperatures stand in the person's scale. @type {Record<CautionKey, () => string>} */
const WORDS = {
  'nitrite-locked': () =>
    called(
      `Cure looks like salt and is poisonous by the spoonful. Keep it dyed, ${E.labelled} and locked away from children. ${ATE}`,
    ),
  'weigh-it': () => 'One level teaspoon of cure may weigh twice as much as another. Weigh it, do not guess.',
  'keep-cold': () =>
    `Keep it at ${degrees('2 to 4', '36 to 40')} the whole time. Above ${COLD()} the times no longer hold.`,
  'birds-165': () => `Cook every bird, wild ones too, to ${BIRDS()} in the middle of the thickest piece.`,
  'red-160': () =>
    `${E.redGame}: ${RED()} in the middle. ${degrees(62.8, 145)} and 3 minutes of rest (a US rule) only for whole cuts, and never for anyone at risk.`,
  'mince-heat': () =>
    `${E.minceHead}, all through: ${E.redGameIn} ${RED()}; birds, hare, rabbit, boar and bear ${BIRDS()}. What was on the outside is inside now.`,
  'boar-165': () =>
    `${E.WildBoar}, bear and their kin: ${BIRDS()} all through, every piece; older pages say ${RED()}. Freezing, curing and smoking do not kill the parasites, and what touched the raw meat can carry them.`,
  'hare-165': () => `Hare and rabbit: ${BIRDS()} in the middle. Wear gloves while dressing (${E.tularaemia}).`,
  'jerky-heat': () =>
    `Jerky: heat the strips to ${RED()}, birds, hare, rabbit, boar and bear to ${BIRDS()}. Then dry them at ${degrees('54 to 60', '130 to 140')}.`,
  'cool-fast': () =>
    `From ${degrees(57, 135)} to ${degrees(21, 70)} within 2 hours, and to ${degrees(5, 41)} within 6 hours in all.`,
  'bacon-fry': () =>
    'Very hot, the nitrite in bacon can turn to nitrosamines. Fry it gently and never until it chars. Ascorbate or erythorbate in an injected belly holds them down.',
  'local-rules': () => LOCAL_RULES,
  'raw-hung': () =>
    'Eaten raw, game can carry parasites and bacteria that no cure kills. Never bear, boar or their kin, and nothing raw for anyone at risk. Months of hanging want a cure with nitrate too, and a method from an authority.',
  'pack-words': () =>
    'Write on it: what it is, its weight, the day, cured, keep cold, wild game, not for sale, may contain shot.',
  'brine-once': () =>
    `Use a brine once, then ${E.pourAway}. Tub: glass, food plastic or stainless steel, never ${E.aluminium}, copper, zinc or chipped enamel.`,
  'dress-birds': () =>
    `Birds can carry avian influenza. Wear gloves while dressing, take no sick or found-dead bird, and wash the knife and ${E.board}.`,
  'dress-deer': () =>
    `${E.deerHead}: wear gloves, leave brain and spine alone. Where chronic wasting disease is known, have it tested and do not eat or share it before the result.`,
  'dress-boar': () =>
    `${E.WildBoar} can carry brucellosis and hepatitis E, and freezing, smoking and pickling do not kill them. Wear gloves and eye protection while dressing.`,
  'trichinella-test': () =>
    'Have wild boar and bear tested for Trichinella where the law asks for it; cook it through all the same.',
  'dress-hare': () =>
    `Hare and rabbit can carry ${E.tularaemia}. Wear gloves while dressing. Leave a sick or found-dead one where it is.`,
  'vacuum-botulism': () =>
    `Botulism can grow in a vacuum bag, with no smell and no swelling. Keep it at ${degrees(3, 37)} or colder, 10 days at most, or freeze it. Open it before it thaws.`,
  'cold-smoke-time': () => `Keep the smoker under ${degrees(32, 90)}, and above ${degrees(4, 40)} for 4 hours at most.`,
  'cold-smoke': () =>
    'Cold smoke does not cook: Listeria lives through it. Cook it before anyone eats it. None for a child, or anyone pregnant, old or ill.',
  'share-deer': () =>
    `${E.deerHead} from where chronic wasting disease is known: give none away before the test is back.`,
  lead: () =>
    `${SHOT}: none for ${NOT_FOR}. Cut the bullet channel and ${E.aroundBullet} around it away; eat no organs.`,
  infants: () => 'No food cured with nitrite for infants.',
  thaw: () =>
    `Thaw it in the fridge. What thawed there may be frozen again raw; what lay warm 2 hours: ${E.throwAway}.`,
  'label-shot': () => `${SHOT}. None for ${NOT_FOR}.`,
  'label-raw': () => 'Raw inside. Not to be eaten before it is cooked through.',
  'gift-raw': () => 'Not cooked: none for a child, or anyone pregnant, old or ill.',
  'label-vacuum': () => 'Clostridium botulinum can grow in a vacuum pack. Open it before it thaws.',
  'label-shelf': () => 'Does not keep on a shelf. Keep cold.',
  'label-sale': () => 'Wild game. Not for sale.',
  'label-sale-other': () => 'Wild game. Check the law where you live before you sell it.',
  'tag-birds': () =>
    'Migratory birds you leave or give anywhere but at your home or theirs must carry this tag. The head or one fully feathered wing stays on until home (not doves or band-tailed pigeons). Check your state.',
  'tag-us': () => 'Rules for a gift of game differ. Check your state.',
  'tag-other': () => 'Rules for a gift of game differ. Check the law where you live.',
};

/** @param {CautionKey} key */
export const cautionText = (key) => WORDS[key]();

/** Several, one behind the other. @param {CautionKey[]} keys */
export const cautionTexts = (keys) => keys.map(cautionText).join(' ');
