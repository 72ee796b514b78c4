/** Facts of the core in words: each has its name under `is`, and what it carries beside it. */

/**
 * Words for all facts of a kind, where it needs them with what else is known of them: a fact without words fails the
 * type check.
 * @template {{ is: string }} F
 * @template [R=string]
 * @template [S=void]
 * @typedef {{ [K in F['is']]: (fact: Extract<F, { is: K }>, seen: S) => R }} Words
 */

/**
 * @template {{ is: string }} F
 * @template R
 * @template [S=void]
 * @param {Words<F, R, S>} words
 * @param {F} fact
 * @param {S} [seen]
 * @returns {R}
 */
export function say(words, fact, seen) {
  /** @type {(fact: F, seen?: S) => R} */
  const word = /** @type {any} */ (words)[fact.is];
  return word(fact, seen);
}
