/** Pack: the chill, the packs on their way to the list, what is given, and what came out. */
import { html, nothing } from 'lit-html';
import { E } from './english.js';
import { count } from './names.js';

/** @param {string} batch */
export const title = (batch) => `Pack, ${batch}`;
export const HEAD = 'Pack';

/** @param {string} job */
export const beforeThat = (job) => `Before that: ${job}.`;

/** What is left once all is ticked. */
export const END = {
  ticked: 'Every step is done',
  away: 'Close the batch',
  /** @param {string} name */
  isAway: (name) => `${name} is closed.`,
  label: 'Label the packs and put them on the list',
};

export const DOORS = { labels: 'Labels and tags', send: 'Send this recipe' };

/** The chill as an answer. */
export const CHILL = {
  /** @param {string} name */
  late: (name) => `${name} cooled too slowly`,
  /** @param {string} name */
  unseen: (name) => `${name}: no reading of the chill in time`,
  /** @param {string} name @param {string | undefined} stage */
  say: (name, stage) => (stage ? `Chill ${name}: ${stage}` : `Chill ${name}`),
  /** @param {string} when */
  by: (when) => `by ${when}`,
  /** @param {string | undefined} stage the one after it */
  then: (stage) => `${stage ? `Then ${stage}. ` : ''}Weigh and label it once it reads cold.`,
};

/** How the chill of each size stands. */
export const ROWS = {
  list: 'How the chill stands',
  /** @param {string} what @param {string} when */
  read: (what, when) => `${what} at ${when}`,
  cold: 'read cold',
  late: 'late',
  unseen: 'not seen',
};

/** Packs from their labels to the list. */
export const PUT = {
  /** @param {number} n */
  onList: (n) => `${count(n, 'pack')} of this batch ${n === 1 ? 'is' : 'are'} on the list.`,
  give: 'Give one away',
  see: 'See the list in Freezer and stock',
  /** @param {number} n @param {boolean} frozen */
  went: (n, frozen) => `${n === 1 ? 'This pack' : `These ${n} packs`} went into the ${place(frozen)}`,
  /** @param {number} n @param {boolean} frozen */
  gone: (n, frozen) => `${count(n, 'pack')} went into the ${place(frozen)}.`,
  /** @param {boolean} weighed each of them */
  says: (weighed) =>
    `They are then in Freezer and stock, with weight and use-by.${weighed ? '' : ' Weigh them first if you can.'}`,
  /** @param {string} weight */
  inAll: (weight) => `In all ${weight}: noted as what came out.`,
};

/** @param {boolean} frozen */
const place = (frozen) => (frozen ? 'freezer' : 'fridge');

/** A pack that is given. */
export const GIVE = {
  which: 'Which pack is given',
  /** @param {number} at @param {number} of @param {string | undefined} weight */
  pack: (at, of, weight) => `Pack ${at} of ${of}, ${weight ?? 'not weighed'}`,
  other: 'Another, not on the list',
  who: 'Who gets it',
  whoHint: 'For the tag, and the list of who got what.',
  noWho: 'Type who gets it.',
  /** @param {string} to */
  given: (to) => `${to ? `It was given to ${to}` : 'It was given away'}: write it down`,
  /** @param {string} to */
  noted: (to) => `Written down: ${to} has it.`,
};

/** Who eats what is given, and what follows. */
export const EATS = {
  asks: 'Who eats it?',
  hint: 'Anyone pregnant, a small child, old or ill?',
  someone: 'Yes, or not known',
  nobody: 'Nobody',
  unsaid: 'Ask, and say who eats it.',
  /** What must not be eaten by somebody there. */
  notFor: 'Not for everyone',
  hot: 'Heat it again first',
  /** Of what was cooked through. */
  /** @param {boolean} barred whoever is pregnant must not eat of it at all */
  heat: (barred) =>
    `Anyone ${barred ? '' : 'pregnant, '}old or ill: heat it until it steams all through, and eat it hot. Common practice, no source.`,
};

/** What came out, for next time. */
export const CAME_OUT = {
  head: 'What came out, for next time',
  weight: 'Weight of all packs',
  cut: 'How the cut looked',
  taste: 'Taste, in three words',
  change: 'What to change',
  changeHint: 'The next batch of this recipe shows it.',
};

/** What was noted last time. */
export const LAST = {
  label: 'Last time',
  /** @param {string | undefined} day */
  head: (day) => (day ? `Last time, ${day}` : 'Last time'),
  /** @param {string} what */
  change: (what) => `To change: ${what}`,
  /** @param {string} weight */
  out: (weight) => `${weight} came out.`,
  /** @param {string} what */
  taste: (what) => `Taste: ${what}.`,
  /** @param {string} what */
  cut: (what) => `Cut: ${what}.`,
};

/** The labels' own screen. */
export const LABELS = {
  /** @param {string} batch */
  title: (batch) => `Labels, ${batch}`,
  back: 'Pack',
  head: 'Labels',
  kind: 'What for',
  kinds: { bag: 'Bag, before it closes', pack: 'Finished packs', gift: 'Gift tag' },
  stock: 'Printed on',
  stocks: { a4: 'A4 sheet', letter: 'Letter sheet', tape: E.tape },
  packs: 'How many packs',
  many: 'How many',
  less: 'One fewer',
  more: 'One more',
  sheet: 'The sheet',
  print: 'Print',
  noTag: 'No gift tag',
  notForAll: 'Not for everyone',
  noTagSays: 'What is in doubt is not given away.',
  /** @param {string} packs @param {string} meat */
  heavy: (packs, meat) => `Packs of ${packs} from ${meat} of meat?`,
  heavySays: 'They cannot weigh more than the meat. Look at the unit of what was typed.',
  heavySure: 'They do weigh that',
  leaves: 'Before it leaves the house',
};

/** What is typed of the packs. */
export const TYPED = {
  inGift: 'Species and number in the gift',
  inPack: 'What is in each pack',
  giftHint: {
    birds: 'Birds, not breasts: 5 mallard. Empty: a line to fill in.',
    other: 'Such as 2 pieces of loin. Empty: a line to fill in.',
  },
  packHint: 'Such as 4 mallard breasts. Empty: a line to fill in.',
  /** @param {number} at */
  pack: (at) => `Pack ${at}`,
  weights: 'Weight of each pack',
  /** @param {'oz' | 'g'} unit */
  weightsHint: (unit) =>
    `In ${unit}, in order, such as ${unit === 'oz' ? '7.2, 7, 6.5' : '203, 199, 186'}. What is left out gets a line to write on.`,
  kept: 'Kept',
  cold: 'Cold',
  frozen: 'Frozen',
  packed: 'Packed',
  plain: 'Bag or paper',
  vacuum: 'Vacuum bag',
};

/** What is printed on a label, beside what the batch says. */
export const LABEL = {
  kinds: { bag: 'Bag', pack: 'Pack', gift: 'Gift' },
  /** @param {string} kind @param {number} at @param {number} of */
  name: (kind, at, of) => `${kind} label ${at} of ${of}`,
  /** @param {string} kind @param {number} at @param {number} of @param {string} code */
  place: (kind, at, of, code) => html`${kind} ${at} of ${of}, <b class="nowrap">${code}</b>`,
  pieces: 'Pieces',
  weight: 'Weight',
  /** @param {string} weight @param {boolean} trimmed */
  weighs: (weight, trimmed) => html`<b>${weight}</b>${trimmed ? ', trimmed weight' : nothing}`,
  inCure: 'In the cure',
  packed: 'Packed',
  /** @param {string} to @param {string} day */
  given: (to, day) => html`Given to <b>${to}</b>, ${day}`,
  /** @param {number} n */
  more: (n) => `And ${n} more in doubt.`,
  code: 'QR code of the recipe',
};
