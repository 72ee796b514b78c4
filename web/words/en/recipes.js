/** Recipes: the list, one of them for any weight, and what is written into it. */
import { E } from './english.js';
import { count } from './names.js';

/** Name of a recipe that is just started; it is saved under this name. */
export const NEW = 'New recipe';

/** The list. */
export const LIST = {
  title: 'Recipes',
  find: 'Find a recipe',
  noneNamed: 'No recipe has that in its name.',
  none: 'There is no recipe here yet.',
  paste: 'Paste a recipe',
  write: 'Write a new recipe',
  open: 'Open a link from a friend',
  tidy: 'Duplicate or delete',
  done: 'Done',
  duplicate: 'Duplicate',
  delete: 'Delete',
  /** After a deed, of which recipe. @param {string} name */
  of: (name) => ` ${name}`,
  started: 'A new recipe is started.',
  /** @param {string} name */
  written: (name) => `${name} is written.`,
  /** @param {string | undefined} name */
  deleted: (name) => `${name ?? 'The recipe'} is deleted. Batches started with it keep their own copy.`,
};

/** @param {string} method @param {number} lines @param {number} steps */
export const underName = (method, lines, steps) => `${method}, ${count(lines, 'ingredient')}, ${count(steps, 'step')}`;

/** What stands after the name of a copy: of the first, and of more. @param {number} n */
export const copyMark = (n) => ['', ', copy'][n] ?? `, copy ${n}`;

/** One recipe. */
export const ONE = {
  missing: 'This recipe',
  weight: 'For how much meat',
  pieces: 'Pieces',
  grams: 'Trimmed, in grams. Empty: 1 kg.',
  pounds: 'Trimmed, for example 3 lb 4 oz. Empty: 2 lb 3.3 oz (1 kg).',
  inPieces: 'In how many pieces',
  otherWays: 'QR code, paper',
  start: 'Start a batch of it',
  change: 'Change the recipe',
  duplicate: 'Duplicate it',
  delete: 'Delete it',
  dose: 'Dose it aims at',
  noDose: 'No dose is shown until the recipe can be worked out.',
  noSteps: 'No steps in this recipe',
  planNothing:
    'Nothing is planned for it: no rinse, no cooking, no chill. Take those of another recipe, or write them under Change the recipe.',
  /** @param {string} name */
  stepsAs: (name) => `As for ${name}`,
  /** @param {string} name */
  stepsTaken: (name) => `The steps of ${name} are in this recipe. Look at the times.`,
  toCure: 'Go to its cure',
  /** @param {number} parts */
  startMix: (parts) => `Start a batch with a 1-in-${parts} mix`,
  /** @param {string} aim */
  setTo: (aim) => `Set the recipe to ${aim}`,
  /** @param {string} aim */
  isSet: (aim) => `The recipe is set to ${aim}.`,
};

/** @param {string} method @param {string} eaten */
export const underHead = (method, eaten) => `${method}. ${eaten}.`;

/** @type {[string, string]} */
export const FEWER_MORE = ['One fewer', 'One more'];

/** What is written into a recipe. */
export const WRITE = {
  about: 'Saved as you go. Batches already started do not change.',
  name: 'Name',
  theName: 'The name',
  tag: 'Tag',
  theTag: 'The tag',
  tagHint: 'Two capital letters, for the bag.',
  method: 'Method',
  take: 'How much of the brine goes in',
  takeHint: 'Injected or taken up, as % of the trimmed weight.',
  eaten: 'How is it eaten?',
  cure: 'Cure',
  lines: 'What else is weighed',
  steps: 'Steps after weighing',
  notes: 'Notes for next time',
  mayBeEmpty: ' (may be left empty)',
  done: 'Done',
  stands: 'The recipe as it stands',
  back: 'The recipe',
  /** @param {string} name */
  change: (name) => `Change ${name}`,
};

/** After the method is another. */
export const TURNED = {
  cover: 'The method is changed. Salt and sugar are now % of meat and water.',
  share: 'The method is changed. Salt and sugar are now % of the water.',
  other: 'The method is changed. Look at what each share is of.',
};

/** Its cures. */
export const CURES = {
  none: 'None. This recipe has no nitrite or nitrate in it.',
  add: 'Add a cure',
  agent: 'Cure',
  /** @param {number} n */
  nth: (n) => `Cure ${n}`,
  mixHint: 'A mix that you saved under “Spoons, scale, 1-in-10 mix” is in this list too.',
  nitriteIn: 'Nitrite in it',
  nitritePrinted: 'Nitrite printed',
  nitrateIn: 'Nitrate in it',
  nitratePrinted: 'Nitrate printed',
  aim: 'Aim, going in',
  aimHint: 'Parts per million of the meat, or of meat and water.',
  remove: 'Remove this cure',
  removed: 'The cure is removed.',
};

/** Everything beside the cure. */
export const LINES = {
  howMuch: 'How much',
  /** @param {string} name */
  howMuchOf: (name) => `How much ${name}`,
  ofWhat: 'Of what',
  /** @param {string} name */
  removed: (name) => `${name} is removed.`,
  bag: `Does its bag say ${E.nitriteOn}?`,
  toCures: 'Then put it under Cure, with its %. Remove it here.',
  /** @param {string} name @param {string} holds */
  holds: (name, holds) => `${name}: ${holds}.`,
  allergens: 'Allergens on its bag',
  allergensHint: 'As printed: celery, mustard. None: write none. Left empty, the label says that they are not known.',
  find: 'Add something',
  findHint: 'Type a part of its name: salt, sugar, pepper, water.',
  notFound: 'Nothing on the list has that in its name.',
  found: 'Found',
  own: 'Add it as your own, and say what its bag names',
};

/** What is found. @param {string} group @param {string} allergens */
export const foundAs = (group, allergens) => `${group}${allergens ? `. Allergen: ${allergens}` : ''}`;

/** Its steps. */
export const STEPS = {
  add: 'Add a step',
  what: 'What is done',
  leaveEmpty: 'Leave empty what does not count for this step.',
  lasts: 'How long',
  turn: 'Turn every',
  at: 'Kept at',
  until: 'Until the coldest piece has',
  own: 'In your own words',
  removed: 'The step is removed.',
  /** @param {number} n @param {string} deed */
  nth: (n, deed) => `Step ${n}, ${deed}`,
  /** A field of a step, where it cannot be read. @param {string} step @param {string} label */
  field: (step, label) => `${step}: ${label}`,
};

/** @param {number} n @param {string} deed @param {string | null | undefined} lasts @param {string | null | undefined} until */
export const stepLine = (n, deed, lasts, until) =>
  `${n}. ${deed}${lasts ? `, ${lasts}` : ''}${until ? `, to ${until}` : ''}`;
