/** A reading at the fire or of the chill: the keys, what is asked of it, and the list of all. */
import { html, nothing } from 'lit-html';
import { degrees } from '../degrees.js';
import { E } from './english.js';
import { count } from './names.js';

/** What the air beside the meat is called. */
export const SMOKER = 'Smoker';

/** Display and keys. */
export const PAD = {
  where: 'Probe is in',
  add: 'Add a reading',
  correct: 'Correct a reading',
  stays: 'The old one stays in the log, crossed out.',
  leave: 'Leave it as it was',
  /** @param {string} what @param {string} at */
  last: (what, at) => html`Last ${what}<br />at ${at}`,
  /** @param {string} name */
  unread: (name) => html`${name}:<br />not read`,
  keys: 'Temperature keys',
  point: 'Decimal point',
  rub: 'Delete',
  reading: 'Reading',
  type: 'Type what the probe shows.',
  /** @param {string} what @param {string} name */
  log: (what, name) => `Log ${what}, ${name}`,
  logEmpty: 'Log the reading',
  fromLast: 'Reading, from the last one',
  degrees: ' degrees',
  notLogged: 'Not logged',
  /** @param {string} what */
  outOfReach: (what) => `${what} is out of reach of a smoker and an oven.`,
  /** @param {string} what */
  itWas: (what) => `It was ${what}`,
};

/** When it was read. */
export const WHEN = {
  head: 'When it was read',
  now: 'now',
  /** @param {string} at @param {boolean} now */
  change: (at, now) => `${at}${now ? ' now' : ''}, when it was read. Press to change.`,
  minutes: ' minutes',
  minute: ' minute',
};

/** A reading that is in question. */
export const DOUBT = {
  /** @param {string | undefined} name @param {string} what @param {string} at */
  asked: (name, what, at) => `${name}: ${what} at ${at}?`,
  /** @param {number} n */
  others: (n) => `Then ${count(n, 'other reading')} to ask about.`,
  right: 'It is right',
  correct: 'Correct it',
  crossOut: 'Cross it out',
  crossedOut: 'Crossed out.',
};

/** All of them. */
export const LIST = {
  /** @param {number} n */
  all: (n) => `All ${n} readings`,
  /** @param {number} n */
  showAll: (n) => `Show all ${n} readings`,
  caption: 'Every reading, the newest first',
  time: 'Time',
  piece: 'Piece',
  read: 'Read',
  change: 'Change',
  gone: 'gone',
  /** @param {string} name @param {string} what @param {string} at */
  which: (name, what, at) => `${name}, ${what} at ${at}`,
  crossedOut: ', crossed out',
  /** @param {string} which */
  count: (which) => html`Count it<span class="vh"> again: ${which}</span>`,
  /** @param {string} which */
  correct: (which) => html`Correct<span class="vh"> ${which}</span>`,
};

/**
 * Said once a reading is logged.
 * @param {string} name @param {boolean} doubted @param {string | undefined} span when it is out
 */
export const logged = (name, doubted, span) =>
  doubted ? `${name}: logged. A reading is in question.` : `${name}: logged.${span ? ` Out between ${span}.` : ''}`;

/** Before the fire. */
export const BEFORE = {
  head: 'Before the fire',
  /** @param {boolean} asked */
  says: (asked) => (asked ? 'fan, water pan, who eats it' : 'not said yet: who eats it'),
  how: 'Rinsed, dry and tacky, the probe in the thickest part of the largest piece and another in the smallest.',
  fan: 'Does a fan move the air?',
  still: 'Still',
  fanned: 'Fan',
  cover: 'How do the pieces stand?',
  dry: 'Dry',
  pan: 'Water pan',
  wrapped: 'Wrapped',
  fromNow: 'A pan or a wrap put on now counts from now.',
  eats: 'Who will eat it?',
  risk: 'At risk: a child, or anyone pregnant, old or ill.',
  someone: 'Someone at risk',
  nobody: 'Nobody at risk',
};

/** When to wrap, and when it comes out. */
export const AIM = {
  wrap: 'Wrap it at',
  wrapHint: 'Empty: it stays bare. The times go by it.',
  setWrap: 'Set when to wrap',
  out: 'Take out at',
  outHint: () =>
    `Empty: the rule for this meat. Lower only by the time table (see Why). Whole ${E.wholeRed}: from ${degrees(62.8, 145)}, with 3 minutes of rest.`,
  setOut: 'Set the target',
};

/** One probe, several sizes. */
export const PROBES = {
  head: 'One probe for several sizes',
  says: 'A size without a probe goes by another: its time is worked out by its own thickness. It counts as not measured until a probe is in it.',
  /** @param {string} name */
  of: (name) => `Probe of ${name}`,
  own: 'Its own',
  /** @param {string} name */
  other: (name) => `That of ${name}`,
};

/** The weight after the fire. */
export const AFTER = {
  head: 'Weight after the fire',
  all: 'All pieces together',
  hint: 'Weighed once they are cold.',
  save: 'Save this weight',
  cannotSay: 'Cannot say yet',
  /** @param {{ share: string, salt?: string | null, brine?: string | null, activity?: string | null }} after */
  came: ({ share, salt, brine, activity }) =>
    html`<b class="nowrap">${share}</b> of the trimmed
      weight${
        salt
          ? html`, <b class="nowrap">${salt}</b> salt, <b class="nowrap">${brine}</b> salt in its water, water activity
              about <b class="nowrap">${activity}</b> (an estimate)`
          : nothing
      }.`,
};
