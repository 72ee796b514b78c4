/** Draws an answer of the core, or what stands in its way. No figure of an earlier answer stays. */
import { html } from 'lit-html';
import { NO_FIGURES } from '../../words/en/controls.js';
import { CANNOT_SAY } from '../../words/en/fields.js';
import { failed } from '../ask.js';
import { strip } from './verdict.js';

/**
 * @template T
 * @param {import('../app.js').App} app
 * @param {import('../core.js').Answer<T>} answer
 * @param {(ok: T) => unknown} draw
 */
export function answered(app, answer, draw) {
  if (answer.problems) return problemStrip(app, answer.problems);
  return draw(answer.ok);
}

/**
 * @param {import('../app.js').App} app
 * @param {import('../ask.js').Problem[]} problems
 */
export function problemStrip(app, problems) {
  if (failed(problems)) {
    return strip(
      'stop',
      NO_FIGURES.head,
      problems[0]?.message,
      html`<div class="acts">
        <button type="button" class="btn less" @click=${app.draw}>${NO_FIGURES.again}</button>
      </div>`,
    );
  }
  return strip('ask', CANNOT_SAY, html`${problems.map(({ message }) => html`<span>${message} </span>`)}`);
}
