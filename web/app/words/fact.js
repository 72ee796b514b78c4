/** Facts of the core in words: each has its name under `is`, and what it carries beside it. */

/**
 * Words for all facts of a kind: one that has none fails the type check.
 * @template {{ is: string }} F
 * @template [R=string]
 * @typedef {{ [K in F['is']]: (fact: Extract<F, { is: K }>) => R }} Words
 */

/**
 * @template {{ is: string }} F
 * @template R
 * @param {Words<F, R>} words
 * @param {F} fact
 * @returns {R}
 */
export function say(words, fact) {
  /** @type {(fact: F) => R} */
  const word = /** @type {any} */ (words)[fact.is];
  return word(fact);
}
