/** How the job goes, and where the figures come from. */
import { degrees } from '../degrees.js';
import { LOCAL_RULES } from './cautions.js';
import { count } from './names.js';

export const TITLES = { job: 'How the job goes', sources: 'Sources and words' };

export const HELP = {
  lead: 'The whole job, by the sample batch: mallard and teal from a weekend on the saltmarsh. Try it and walk through; it can be deleted at its Pieces.',
  decide: LOCAL_RULES,
  head: 'The job',
};

/** The job from the bag to the gift, as the sample batch goes through it. @type {() => [string, string][]} */
export const job = () => [
  [
    'Cool it',
    'Dress and cool the birds, hang or drain them cold, then bone out and trim. Sort the pieces by size: a thin one is ready first.',
  ],
  ['Pieces', 'Weigh what is trimmed. Every % of the recipe is of this trimmed weight. Measure the thickest part.'],
  [
    'Weigh',
    'Cure first, into an empty bowl, with the scale set to zero. Add each thing until the scale shows what the page shows. Mark it when it is in.',
  ],
  [
    'Read the verdict',
    'A range with its limit. Held: nothing goes on until the numbers change. Never add cure to go faster, and do not count on soaking it out.',
  ],
  ['Label the bag', 'Print or write the bag label before the bag closes. A bag without a name is a guess later.'],
  [
    'Cure',
    `Keep it at ${degrees('2 to 4', '36 to 40')}. Turn it when Batches says so. The clock stops when it freezes, and does not hold above ${degrees(4, 40)}.`,
  ],
  ['Rinse and dry', 'Rinse, pat dry, and leave it uncovered and cold until it is dry and tacky.'],
  [
    'Fire',
    `Smoke, then cook until the coldest piece reads what the recipe says: every bird ${degrees(74, 165)} in the middle.`,
  ],
  [
    'Log the fire',
    'On the Fire stage, type what the probe shows. It says when each size is likely done and which to take out; the labels go by it.',
  ],
  ['Chill', `From ${degrees('57 to 21', '135 to 70')} within 2 hours, and to ${degrees(5, 41)} within 6 hours in all.`],
  ['Pack', 'Labels for the packs, a gift tag for birds. Cured and smoked birds keep cold 2 weeks at most.'],
  [
    'Freezer and gifts',
    'From the labels the packs go into Freezer and stock with one touch. It shows which to eat first, who got what, and how far cure, salt and bags reach.',
  ],
  [
    'For next time',
    'On the Pack stage, note what came out and what to change. The next batch of that recipe shows it.',
  ],
  [
    'Make a copy',
    'Every change is saved at once, and Undo takes it back. Settings and backup saves all of it as one file. A recipe goes to a friend as a link or a QR code.',
  ],
];

export const SOURCES = {
  head: 'Where the figures come from',
  lead: 'Published: read in the source. Quoted: read in a text that quotes it. From memory: check it yourself.',
  spoons: 'Weights of a level spoon',
  words: 'Words of the trade',
};

/** What the tables are of. @type {Record<import('../../app/types').TableKey, string>} */
export const TABLES = {
  limits: 'Limits for cure',
  cuts: 'Weights of cuts',
  game: 'What a bird or an animal gives',
  diffusion: 'How fast salt goes',
  equalise: 'How soon a piece is equal with a brine',
  measures: 'What a measure holds',
  spoons: 'Spoons and cups by country',
  accelerators: 'Cure accelerators',
  targets: 'What it is cooked to',
  heat: 'Time at a temperature',
  'parasite-heat': 'Parasites and heat',
  'parasite-cold': 'Parasites and cold',
  cooling: 'Chilling',
  'cure-cap': 'How long meat may stay in the cure',
  'usual-hours': 'How long a step usually takes',
  keeping: 'How long a pack keeps',
  'trouble-sources': 'When something went wrong',
};

/** @param {string} head @param {number} sources */
export const sourcesOf = (head, sources) => `${head}: ${count(sources, 'source')}`;
