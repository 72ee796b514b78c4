/** What is in the house and what a batch came to, in words for facts of the core. */
import { say } from '../fact.js';
import { itemName } from './ingredients.js';

/** @typedef {import('../../app/types').Held} Held */

/** What is left. @type {import('../fact.js').Words<Held>} */
const LEFT = {
  bags: ({ left }) => `${left} bags left`,
  weighed: ({ left }) => `${left} left`,
};

/** Where it went. @type {import('../fact.js').Words<Held>} */
const WENT = {
  bags: ({ came, went }) => `${came} came in, batches and packs took ${went}.`,
  weighed: ({ came, went, cures }) =>
    `${came} came in, batches took ${went}.${
      cures ? ` What is left cures ${cures.meat} of meat in a rub at ${cures.ppm} ppm.` : ''
    }`,
};

/** @param {import('../../app/types').LarderRow} row @returns {{ name: string, left: string, went: string }} */
export const inHouse = ({ of, held, short }) => ({
  name: of ? itemName(of) : 'Bags',
  left: say(LEFT, held),
  went: `${say(WENT, held)}${short ? ' More was used than came in. Write down what you bought.' : ''}`,
});

/** `1190 g of 1480 g, 80.4 %` @param {import('../../app/types').OutOf} out */
export const totalOut = ({ weight, of, share }) => `${weight} of ${of}, ${share}`;

/** `1190 g, 80.4 %` @param {import('../../app/types').OutOf} out */
export const cameOut = ({ weight, share }) => (share ? `${weight}, ${share}` : weight);

/**
 * Why a bag may be of a batch.
 * @param {import('../../app/types').MayBe} why
 * @param {import('../../app/types').Piece[]} pieces
 * @param {(piece: import('../../app/types').Piece) => string} nameOf
 */
export function mayBe(why, pieces, nameOf) {
  const of = 'class' in why ? pieces[why.class] : undefined;
  const name = of ? nameOf(of) : 'it';
  /** @type {import('../fact.js').Words<import('../../app/types').MayBe>} */
  const words = {
    one: ({ weight }) => `${name}, one: ${weight}`,
    all: ({ weight }) => `${name}, ${of?.about ? 'all of it' : `all ${of?.count}`}: ${weight}`,
    every: ({ weight }) => `All pieces: ${weight}`,
    pack: ({ weight }) => `A pack of it: ${weight}`,
    thick: ({ thickness }) => `${name}: ${thickness} thick`,
  };
  return say(words, why);
}
