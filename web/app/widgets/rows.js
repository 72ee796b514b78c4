/** Rows of a form that move and go: each keeps a name of its own, so that what is typed in it moves along. */
import { html } from 'lit-html';
import { MOVE, REMOVE, remove as removeWord } from '../../words/en/controls.js';

export class Rows {
  #names = /** @type {number[]} */ ([]);
  #next = 0;

  /** @param {import('./form.js').Form} form keeps the names with what is typed @param {string} key */
  constructor(form, key) {
    this.keep = () => form.type(key, [this.#next, ...this.#names].join());
    [this.#next = 0, ...this.#names] = form.text(key).split(',').map(Number);
  }

  /** The names of `length` rows. After a change from elsewhere the rows begin afresh. @param {number} length */
  names(length) {
    while (this.#names.length < length) this.#names.push(this.#next++);
    this.#names.length = length;
    return this.#names;
  }

  /** @param {number} at */
  drop(at) {
    this.#names.splice(at, 1);
    this.keep();
  }

  /** @param {number} at @param {number} to */
  move(at, to) {
    this.#names = moved(this.#names, at, to);
    this.keep();
  }
}

/**
 * @template T
 * @param {T[]} list
 * @param {number} at
 * @param {number} to
 * @returns {T[]}
 */
export function moved(list, at, to) {
  const rest = list.toSpliced(at, 1);
  return rest.toSpliced(to, 0, ...list.slice(at, at + 1));
}

/**
 * Up, down and remove.
 * @param {object} spec
 * @param {string} spec.name
 * @param {number} spec.at
 * @param {number} spec.length
 * @param {(to: number) => unknown} spec.move
 * @param {() => unknown} spec.remove
 */
export function rowActs({ name, at, length, move, remove }) {
  return html`<div class="acts gap">
    <button
      type="button"
      class="btn quiet less"
      ?disabled=${at === 0}
      aria-label=${MOVE.upWhat(name)}
      @click=${() => move(at - 1)}
    >
      ${MOVE.up}
    </button>
    <button
      type="button"
      class="btn quiet less"
      ?disabled=${at === length - 1}
      aria-label=${MOVE.downWhat(name)}
      @click=${() => move(at + 1)}
    >
      ${MOVE.down}
    </button>
    <button type="button" class="btn quiet less" aria-label=${removeWord(name)} @click=${remove}>${REMOVE}</button>
  </div>`;
}
