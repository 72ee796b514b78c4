/** Draws an answer of the core, or what stands in its way. No figure of an earlier answer stays. */
import { html } from 'lit-html';
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
      'No figures',
      problems[0]?.message,
      html`<div class="acts"><button type="button" class="btn less" @click=${app.draw}>Reckon again</button></div>`,
    );
  }
  return strip('ask', 'Cannot say yet', html`${problems.map(({ message }) => html`<span>${message} </span>`)}`);
}
