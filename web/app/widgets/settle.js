/** What in a recipe may be a cure, each with its question, until somebody settles it. */
import { html, nothing } from 'lit-html';
import { SETTLE } from '../../words/en/controls.js';
import { HOLDS, MAY_HOLD } from '../../words/en/may-hold.js';
import { glue } from '../../words/glue.js';

/** @typedef {import('../types').MayHold} MayHold */
/** @typedef {import('../types').Recipe} Recipe */

/**
 * @typedef {object} Ways
 * @property {(one: MayHold) => unknown} [toFault] to the line that is at fault, where the recipe can be written
 * @property {boolean} [fixed] lines are ticked by their places: none may go
 */

/**
 * @param {MayHold[]} list
 * @param {(change: (recipe: Recipe) => Recipe, says: string) => unknown} put stores a change of the recipe
 * @param {Ways} [ways]
 */
export function settle(list, put, ways = {}) {
  if (list.length === 0) return nothing;
  return html`<section class="block noprint">
    <h2>${SETTLE.head}</h2>
    ${list.map((one) => {
      const words = glue(MAY_HOLD[one.why](one.name));
      return html`<div class="group" role="group" aria-label=${one.name}>
        <p class="near">${words}</p>
        <div class="acts gap">${acts(one, put, ways)}</div>
      </div>`;
    })}
  </section>`;
}

/**
 * @param {MayHold} one
 * @param {(change: (recipe: Recipe) => Recipe, says: string) => unknown} put
 * @param {Ways} ways
 */
function acts(one, put, { toFault, fixed = false }) {
  const { why, at, name } = one;
  const button = (/** @type {string} */ word, /** @type {() => unknown} */ act, look = 'quiet') =>
    html`<button type="button" class="btn ${look} less" @click=${act}>${word}</button>`;
  if (why === 'not_read') return button(SETTLE.none, () => put(withoutUnread(name), SETTLE.noCure(name)));
  const say = (/** @type {'none' | 'yes'} */ agent) => () =>
    put(withHolds(at, name, agent), SETTLE.holds(name, HOLDS[agent]));
  if (why === 'not_asked') return html`${button(SETTLE.no, say('none'))} ${button(SETTLE.yes, say('yes'))}`;
  // What a name says is cleared by the right name, and not by a touch: the line is mended, or it goes.
  const out = why === 'not_read_says_so' ? withoutUnread(name) : withoutLine(at, name);
  return html`${toFault ? button(why === 'not_read_says_so' ? SETTLE.toCures : SETTLE.toLine, () => toFault(one), 'main') : nothing}
  ${fixed ? nothing : button(SETTLE.leaveOut, () => put(out, SETTLE.leftOut(name)))}`;
}

/** @param {number} at @param {string} name @returns {(recipe: Recipe) => Recipe} */
function withoutLine(at, name) {
  return (recipe) => ({ ...recipe, lines: recipe.lines.filter((line, n) => n !== at || line.name !== name) });
}

/**
 * @param {number} at
 * @param {string} name
 * @param {import('../types').Holds} agent
 * @returns {(recipe: Recipe) => Recipe}
 */
export function withHolds(at, name, agent) {
  return (recipe) => ({
    ...recipe,
    lines: recipe.lines.map((line, n) => (n === at && line.name === name ? { ...line, agent } : line)),
  });
}

/** What is settled stays on the card as a remark. @param {string} text @returns {(recipe: Recipe) => Recipe} */
function withoutUnread(text) {
  return ({ unread = [], notes = '', ...recipe }) => ({
    ...recipe,
    notes: [notes, text].filter(Boolean).join('\n').slice(0, 2000),
    unread: unread.filter((one) => one !== text),
  });
}
