/** The screen of the fire: what comes out next, what the readings are worth, and what this smoker does. */
import { html, nothing } from 'lit-html';
import { degrees } from '../degrees.js';
import { count } from './names.js';

/** @param {string} name of the batch */
export const title = (name) => `Fire, ${name}`;
export const HEADS = {
  screen: 'Fire',
  out: 'What comes out when',
  rules: 'By which rule',
  smoker: 'Your smoker',
};

export const ONE_PROBE = html`<b>One probe reads one piece:</b> log each size before it comes out.`;
/** @param {string} job */
export const beforeFire = (job) => `Before the fire: ${job}.`;

/** On a button, and once it is ticked. */
export const IS = {
  /** @param {string} name */
  out: (name) => `${name} is out`,
  /** @param {string} name */
  outOnly: (name) => `${name} is out.`,
  /** @param {string} name */
  outNow: (name) => `${name} is out. Now chill it.`,
  /** @param {string} name */
  wrapped: (name) => `${name} is wrapped`,
  /** @param {string} name */
  wrappedNow: (name) => `${name} is wrapped.`,
};

/** The answer: what it is, and the line below it. Times come as they are written, with their day where that matters. */
export const NEXT = {
  allOut: 'All are out',
  early: 'Out of the cure early: cook it through.',
  inCure: 'It is marked as still in the cure. Mark what was done since.',
  /** @param {string} target @param {string | null | undefined} hold so long, by a table */
  take: (target, hold) =>
    html`Take out at <b class="nowrap">${target}</b>${hold ? `, held ${hold} by the table` : nothing}.`,
  /** @param {string} name */
  now: (name) => `Take it out now: ${name}`,
  /** @param {string} since @param {unknown} read */
  since: (since, read) => html`at its target since ${since}. ${read}`,
  /** @param {string} name */
  wrapNow: (name) => `Wrap it now: ${name}`,
  /** @param {string} name */
  first: (name) => `First out: ${name}`,
  logFirst: 'Log the smoker',
  noFirst: 'Then this says which size comes out first.',
  /** @param {string} least @param {string} most */
  usually: (least, most) => `usually ${least} to ${most} in the heat. `,
  fireOut: 'The fire is out',
  /** @param {string} name @param {unknown} read @param {string | undefined} span when it is out if the fire is lit now */
  fallen: (name, read, span) =>
    html`The smoker is cooling. ${name} is not getting hotter. ${read} Light it now, or finish it in an
    oven.${span ? html` Lit now, it is out <span class="nowrap">${span}</span>.` : nothing}`,
  /** @param {string} name @param {string | undefined} span */
  out: (name, span) => html`Next out: ${name}${span ? html`, <span class="nowrap">${span}</span>` : nothing}`,
  /** @param {string} name @param {string} span */
  perhaps: (name, span) => html`${name}: out <span class="nowrap">${span}</span>`,
  /** @param {string} name */
  other: (name) => `${name} may be out sooner: no time is known. Read it too. `,
  /** @param {string} at */
  likely: (at) => `likely ${at}`,
  /** @param {string} at */
  likelyThen: (at) => `likely ${at}. `,
  /** @param {string | undefined} why no time can be told */
  noTime: (why) => `${why ?? 'Not within a day'}. `,
  /** @param {string} name @param {string} at */
  wrap: (name, at) => `Wrap ${name} about ${at}. `,
  /** @param {string} what @param {string} at @param {number} of so many readings @param {boolean} out of the heat */
  read: (what, at, of, out) =>
    html`<span class="nowrap">Read ${what}</span> at
      ${at}${of > 1 ? `, the ${out ? 'warmest' : 'coldest'} of ${of} within 2 minutes` : ''}.`,
  unread: 'Not read yet.',
};

/** The table of all sizes. */
export const TABLE = {
  caption: 'Sizes, the first to come out first',
  size: 'Size',
  between: 'Out between',
  takes: 'Usually takes',
  /** @param {string} at */
  wrappedAt: (at) => ` Wrapped at ${at}.`,
  isOut: 'Is out',
  notOut: 'Not out',
  isWrapped: 'Is wrapped',
  notWrapped: 'Not wrapped',
  /** @param {string} at */
  out: (at) => `out ${at}`,
  now: 'now',
  notToday: 'not within a day',
  /** @param {string} least @param {string} most */
  lasts: (least, most) => `${least} to ${most}`,
};

/** About so long. */
export const LONG = {
  /** @param {number} n */
  minutes: (n) => `${n} min`,
  /** @param {number} n */
  hours: (n) => `${n} h`,
};

/** The picture. */
export const CHART = {
  /** @param {string} at */
  now: (at) => `${at} now`,
  legend: 'Solid: read. Dashed: forecast. Band: earliest to latest. Dotted: the smoker.',
  /** @param {string} name @param {string} what @param {string} at */
  read: (name, what, at) => `${name} ${what} at ${at}`,
  /** @param {string} name */
  unread: (name) => `${name} not read`,
  /** @param {string} read @param {string} at */
  out: (read, at) => `${read}, taken out at ${at}`,
  /** @param {string} read @param {string} low @param {string} high */
  ahead: (read, low, high) => `${read}, to be taken out between ${low} and ${high}`,
};

/** What the readings count for. */
export const CREDIT = {
  /** @param {string} of */
  of: (of) => `of ${of}`,
  /** @param {string} num @param {string} of */
  says: (num, of) => `${num} of ${of} so far by the time table`,
};

/** What fires told of this smoker. */
export const SMOKER = {
  /** @param {number} fires @param {string} air */
  from: (fires, air) => `From ${count(fires, 'fire')}: ${air}`,
  fresh: 'Save how this fire warmed: the next times start from it.',
  save: 'Save how this fire warmed',
  saved: 'Saved. The next times start from it.',
  forget: 'Forget how the fires warmed',
  forgotten: 'How the fires warmed is forgotten.',
};

/** The published ways to chill, as a table. */
export const CHILL_WAYS = {
  /** @param {string} name */
  head: (name) => `${name}: chill`,
  caption: 'Published ways to chill',
  stage: 'Stage',
  left: 'Left',
  /** @param {string} at */
  until: (at) => `until ${at}`,
  /** @param {string} at */
  expected: (at) => `expected ${at}`,
  note: () =>
    `Meeting one of them is enough. Expected: worked out for a fridge at ${degrees(3, 37)}, alone on its shelf. The readings decide.`,
};
