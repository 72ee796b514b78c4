/** The clock of the cure: until when, each size, how salt lies in it, and what the fridge read. */
import { html, nothing } from 'lit-html';
import { degrees } from '../degrees.js';
import { E } from './english.js';

/** Until when it stays in. */
export const UNTIL = {
  /** @param {string} when */
  cameOut: (when) => `It came out ${when}.`,
  head: 'Leave it in until',
  thick: 'How thick is it?',
  /** @param {string[]} names */
  thickSays: (names) => `${names.join(', ')}: type the thickest part, and the clock says how long.`,
  typeThick: 'Type the thickness',
  cut: 'Cut',
};

/** Recipe and clock say two times. */
export const WHICH = {
  goes: 'You go by the recipe.',
  /** @param {'clock' | 'recipe'} by @param {string} until */
  goBy: (by, until) => (by === 'clock' ? `Go by the clock: ${until}` : `Go by the recipe: ${until}`),
  /** @param {string} recipe @param {boolean} shorter than the clock */
  recipe: (recipe, shorter) =>
    shorter
      ? `Your recipe says ${recipe}. That may be too short for pieces this thick.`
      : `Your recipe says ${recipe}: longer than they need.`,
};

/** Each size. */
export const SIZES = {
  sooner: 'Smaller pieces can come out sooner',
  each: 'Each size',
  now: 'can come out now',
  slope: 'Rising: may be cured. Full: 9 in 10 are cured.',
  /** @param {string} name @param {string} from @param {string} until */
  bar: (name, from, until) => `${name}: may be cured from ${from}, out by ${until}`,
};

/** Under Why. */
export const REASONS = {
  how: 'Worked out for your thickest piece: by then 9 in 10 are cured to the middle. Over 3 days it is rounded up to whole days. Thickness sets the time, weight the dose. More cure never makes it faster. Cut one to be sure.',
  /** @param {string} until */
  recipe: (until) => `By your recipe: ${until}.`,
  /** @param {string} last @param {string} source @param {string} status */
  capped: (last, source, status) => `Raw meat stays in its cure until ${last} at most. ${source} (${status}).`,
  middle: `Kept cold and cooked through, a ${E.grey} middle only looks odd. Do not eat it raw or cold-smoked.`,
};

/** The forecast of one size. */
export const TIMES = {
  /** @param {string} name @param {string} thickness */
  head: (name, thickness) => `${name}, ${thickness}`,
  /** @param {string} name */
  caption: (name) => `${name}: forecast times`,
  what: 'What',
  tenth: '1 in 10 by',
  half: 'Half by',
  most: '9 in 10 by',
  colour: E.colourHead,
  salt: 'Even salt',
};

/** @param {string} name @param {string[]} changed @param {string[] | null | undefined} still */
export const soaking = (name, changed, still) =>
  html`<b>Soaking ${name}</b>, in water changed each half hour: ${changed.join(' to ')}.
    ${
      still
        ? `In three times its weight of still water: ${still.join(' to ')}.`
        : 'Still water does not bring it so far.'
    }`;

/** Rules of thumb. */
export const THUMB = {
  head: 'Rules of thumb, beside it',
  says: 'They go by thickness or weight; salt goes by the square of the thickness.',
  /** @param {string} name */
  caption: (name) => `${name}: rules of thumb`,
  rule: 'Rule',
  gives: 'It gives',
  middle: 'Middle then',
  /** @param {string | number} percent */
  ofFinal: (percent) => `${percent} % of final`,
};

/** Salt across a piece. */
export const ACROSS = {
  now: 'Now',
  out: 'When it came out',
  /** @param {string} when */
  rinse: (when) => `Planned rinse, ${when}`,
  rinseHead: 'Planned rinse',
  /** @param {string} name @param {string} thickness */
  says: (name, thickness) => `${name}: salt across ${thickness}; the figures are in the table below`,
  /** @param {string} thickness */
  cut: (thickness) => `${thickness}, cut across`,
  outside: 'Outside',
  skin: 'Skin',
  middle: 'Middle',
  /** @param {string} shown */
  shaded: (shown) => `${shown}; shaded: from slow meat to fast`,
  /** @param {string | null} goal */
  even: (goal) => `Even: ${goal ?? 'the final'}`,
  /** @param {string} name */
  caption: (name) => `${name}: salt by depth`,
  depth: 'Depth',
  /** @param {string} share @param {boolean} final in shares of what it will be in the end */
  share: (share, final) => (final ? `${share} of final` : share),
};

/** What was seen at the fridge. @type {Record<import('../../app/types').Seen, string>} */
export const SEEN = {
  read: 'The thermometer reads',
  frozen: 'The meat is frozen',
  thawed: 'It is thawed again',
  power_off: 'The power went',
  power_on: 'The power is back',
};

/** Where the thermometer was; and the same in the middle of a line. @type {Record<import('../../app/types').Thermometer, string>} */
export const WHERE = { fridge: 'In the fridge', meat: 'In the meat', room: 'In the room' };
/** @type {Record<import('../../app/types').Thermometer, string>} */
const IN = { fridge: ', in the fridge', meat: ', in the meat', room: ', in the room' };

/** The fridge's log. */
export const FRIDGE = {
  head: 'Fridge',
  saw: 'What you saw',

  hint: () => `Below ${degrees(1, 34)} the cure stops, and so does the clock. Above ${degrees(4, 40)} it warns.`,
  temperature: 'Temperature',
  where: 'Where the thermometer was',
  when: 'When',
  empty: ' (empty: just now)',
  put: 'Put it in the log',
  takeOut: 'Delete',
  /** @param {string} when */
  takeOutOf: (when) => `Delete the entry of ${when}`,
  isOut: 'The entry is out of the log.',
  /** @param {string} reads @param {string[]} others */
  asks: (reads, others) => `${[reads, ...others].join(' or ')}?`,
  odd: 'That is hardly right for a fridge, meat or a room. Until you say, it does not count.',
  /** @param {string} reads */
  was: (reads) => `It was ${reads}`,
  /** @param {string} reads */
  isRight: (reads) => `${reads} is right`,
  corrected: 'The entry is corrected.',
  /** @param {string} says what it clears */
  clears: (says) => `Without this entry nobody sees any more: “${says}” Was the entry wrong?`,
  keep: 'Keep it',
  wrong: 'It was wrong: delete it',
  past: 'What was seen lies in the past. Choose another time, or leave it empty.',
  /** @param {import('../../app/types').Seen} what @param {string | null | undefined} reads */
  logged: (what, reads) => `In the log: ${SEEN[what]}${reads ? ` ${reads}` : ''}.`,
  /** @param {import('../../app/types').FridgeReading} reading */
  line: ({ what, reads, of }) =>
    html`${what === 'read' ? 'Read' : SEEN[what]}${reads ? html` <b class="nowrap">${reads}</b>` : nothing}${of ? IN[of] : nothing}`,
};
