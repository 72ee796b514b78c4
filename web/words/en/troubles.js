/** Something went wrong: the list, one question at a time, and the batch it happened to. */
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

/** It is written down with its batch. */
export const NOTE = {
  which: 'Which batch was it?',
  write: 'Write it down with its batch',
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
