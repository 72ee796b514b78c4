/** A number to call, whole on its line, dials at a touch. */
import { html } from 'lit-html';
import { glue } from '../../words/glue.js';

const NUMBER = /(?<=\bcall )((?:NHS )?\d[\d-]+)/i;

/** A text with its units whole and its numbers to call as links. @param {string} text */
export const dialled = (text) =>
  glue(text)
    .split(NUMBER)
    .map((part, at) => (at % 2 ? html`<a class="nowrap" href="tel:${part.replace(/\D/g, '')}">${part}</a>` : part));
