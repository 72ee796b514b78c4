/** What is pasted where a link or a recipe is wanted goes to the screen that reads it, and none of it is lost. */
import { draftOf, keepDraft } from './drafts.js';

/** The form under which the reader keeps its text. */
export const READ = 'read';

/** The code in what was pasted, whatever is written around it; nothing where there is none. @param {string} text */
export function linkIn(text) {
  return /(?<![\w-])r\d+\.[\w-]+/.exec(text)?.[0] ?? '';
}

/** A link has no gaps in it; what has some was written for a person. @param {string} text */
export const isWritten = (text) => !linkIn(text) && /\S\s+\S/.test(text);

/**
 * To the reader, with the text in its field. Answers to an earlier text go by their lines, so they harm nothing.
 * @param {import('./app.js').App} app
 * @param {string} text
 */
export function toReader(app, text) {
  keepDraft(READ, [...draftOf(READ).filter(([key]) => key !== 'text'), ['text', text]]);
  app.go('#/read');
}

/**
 * Listens for what is pasted while no field is in hand.
 * @param {import('./app.js').App} app
 * @returns {() => void} ends it
 */
export function hearPaste(app) {
  const hear = (/** @type {ClipboardEvent} */ event) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    const inField = event.target instanceof Element && event.target.matches('input, textarea');
    if (inField && !isWritten(text)) return;
    if (linkIn(text)) app.go(`#${linkIn(text)}`);
    else if (isWritten(text)) toReader(app, text);
    else return;
    event.preventDefault();
  };
  document.addEventListener('paste', hear);
  return () => document.removeEventListener('paste', hear);
}
