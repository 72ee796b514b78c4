/** Something went wrong: the list, one question at a time, and the batch it happened to. */
import { degrees } from '../degrees.js';
import { E } from './english.js';

export const LIST = { more: 'More', head: 'Something went wrong', what: 'What happened?', label: 'What happened' };

/** One card. */
export const ASK = {
  now: 'Do this now',
  onlyIf: 'Only if',
  otherwise: `If one of them does not hold: ${E.throwAway}.`,
  dose: 'I already put cure on it',
  answers: 'Your answers',
  change: 'Change',
  thisAnswer: ' this answer',
  /** @param {string} word @param {string[]} lines */
  aloud: (word, lines) => `${word}. ${lines.join(' ')}`,
  /** @param {string | null} source @param {string} status */
  source: (source, status) => (source ? `${source} (${status}).` : `(${status}).`),
};

const ABOVE = () => `above ${degrees(4, 40)}`;
/** @param {string} when */
const since = (when) => `since ${when}`;
/** @param {string} what */
const warmest = (what) => `${what} at the warmest`;
/** @param {string} name @param {string} what */
const byLog = (name, what) => `${name}, by its fridge log: ${what}.`;
/** @param {string} time */
const longer = (time) => `Perhaps ${time} longer, not read.`;
const NOW = 'It is warm now.';

/** What the fridge log of its batch says already. */
export const LOG = {
  /** @param {string} name @param {import('../../app/types').LogSaid} said @param {string | null} from */
  says: (name, { warm, unread, highest, now }, from) => {
    const long = [warm, ABOVE()].filter(Boolean).join(' ');
    const known = [long, from && since(from), highest && warmest(highest)].filter(Boolean).join(', ');
    return [byLog(name, known), unread && longer(unread), now && NOW].filter(Boolean).join(' ');
  },
  see: 'See the fridge log',
};

/** It is written down with its batch. */
export const NOTE = {
  which: 'Which batch was it?',
  write: 'Write it down with its batch',
  others: 'Other batches',
  gap: 'Log the gap in its fridge log.',
  stands: 'It stands in its notes.',
  threw: E.closeThrown,
  add: 'Add it to the notes.',
  done: 'It stands in the notes of the batch.',
  /** @param {string} head @param {string} word */
  says: (head, word) => `${head}: ${word}.`,
  /** @param {string} when @param {string} what */
  line: (when, what) => `${when} ${what}`,
};
