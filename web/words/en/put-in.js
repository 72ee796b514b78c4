/** Cure that is on the meat already: how much went in, of what, on what. */
import { html, nothing } from 'lit-html';
import { E } from './english.js';
import { METHODS, EATEN as HOW_EATEN } from './names.js';

/**
 * Measures of what went in, as the core reads them: in whole words, so that no spoon is taken for another. The number
 * typed stands for the sign.
 */
export const MEASURES = {
  g: 'grams',
  tsp: 'teaspoon',
  tbsp: 'tablespoon',
  'heaped tsp': `${E.heaped} teaspoon`,
  'heaped tbsp': `${E.heaped} tablespoon`,
  '1 bag of # g': 'whole bag',
};

export const SPOON = { heaped: E.heaped, level: 'level', less: 'Less', more: 'More' };
export const MEASURE = 'Measure';

/** Something else than the weigh-out went in. */
export const PUT_IN = {
  change: 'Change what was put in',
  was: 'What was put in',
  other: 'I put in something else',
  about: 'A spoon in place of the scale, or another weight of cure? Say what went in.',
  amount: 'Cure that went in',
  bagHint: 'Read it off the bag. Empty: I do not know.',
  instead: 'This went in instead',
  beside: 'This went in as well',
  /** @param {string} weight of the cure that is marked as in */
  ticked: (weight) => `${weight} is marked as in`,
  /** @param {string} weight */
  say: (weight) => `${weight} is marked as in. Say whether this went in instead, or as well.`,
  after: 'It was the weigh-out after all',
  judge: 'Judge what went in',
  asListed: 'Judged now: the weigh-out as listed.',
  /** @param {string} amount @param {boolean} ofMix */
  judged: (amount, ofMix) => `Judged now: ${amount} of ${ofMix ? 'the mix' : 'cure'} went in.`,
  which: 'What went in?',
  /** @param {number} parts */
  mix: (parts) => `The 1-in-${parts} mix`,
  neat: 'The cure itself',
  /** @param {number} parts */
  holds: (parts) => `${parts} g of the mix hold 1 g of cure.`,
  /** @param {number} parts */
  sayWhich: (parts) => `Say what went in: the 1-in-${parts} mix or the cure itself.`,
};

/** Beside the verdict. @param {import('../../app/types').PutIn} one @param {import('../../app/types').PutIn} [second] */
export const judgedOn = ({ amount, nitrite }, second) =>
  html`Judged on what was put in: <b class="nowrap">${amount}</b> of
    cure${
      nitrite ? html` with <b class="nowrap">${nitrite}</b> nitrite` : ', its nitrite not known'
    }${second ? html`, and <b class="nowrap">${second.amount}</b> of a second cure` : nothing}.`;

/** The screen where cure is on and no batch asks for it. */
export const TITLE = 'I already put cure on it';

/** What is judged, in one row. */
export const ROW = {
  /** @param {string} nitrite per cent */
  cure: (nitrite) => `cure ${nitrite} %`,
  unknown: 'cure not known',
  /** @param {string} weight @param {string | undefined} cut */
  meat: (weight, cut) => (cut ? `${weight} ${cut.charAt(0).toLowerCase()}${cut.slice(1)}` : weight),
  change: 'Change',
};

export const VERDICT = {
  head: 'Verdict',
  notYet: 'Cannot say yet.',
  type: 'Type how much cure went on.',
  sure: 'To be sure',
  mix: 'For so little on this scale: a 1-in-10 mix',
};

export const ASKS = {
  amount: 'Cure I put in',
  meat: 'The meat and the cure',
  rest: 'How it went on and is eaten',
  method: 'How was it put on?',
  methods: METHODS,
  take: 'How much of the brine goes in',
  takeHint: 'Injected or taken up, in % of the trimmed weight; 10 % is usual.',
  thickness: 'Thickest part of the thinnest piece',
  thicknessHint: 'Thin pieces soon get as strong as the brine. Then the whole brine counts.',
  stays: 'How long in the brine',
  water: 'Water in the brine',
  dissolved: 'Salt and sugar in the brine',
  dissolvedHint: 'All that is dissolved, without the cure.',
  printed: 'Is the nitrite printed on the bag?',
  isPrinted: { known: 'Yes, I can read it', unknown: 'I do not know' },
  bagHint: 'Read it off the bag. Pink Himalayan salt has none.',
  check: 'Check it',
};

export const SECOND = {
  asks: 'Did a second cure go in?',
  ways: { no: 'No, only that', yes: 'Yes, another' },
  amount: 'How much of the second',
  weighed: 'Weighed.',
  nitrite: 'Nitrite printed on the second',
  nitriteHint: `${E.Saltpetre} has none: type 0.`,
  nitrate: 'Nitrate printed on the second',
  nitrateHint: 'As sodium nitrate. Empty: none.',
};

export const EATEN = {
  asks: 'How is it eaten?',
  ways: HOW_EATEN,
};

/** Into a batch with it. */
export const TO_BATCH = {
  head: 'Save it with a batch',
  about: 'The batch is judged by this amount from then on, over its own pieces.',
  which: 'Which batch?',
  choose: 'Choose one',
  go: 'Save it there',
  done: 'What was put in is saved with the batch.',
};

export const ATE = 'Someone ate some?';
/** Too much of what was in a brine or mixed in: before the last word. */
export const FIGURES = 'The figures are right. What now?';
