/** Pieces in words, for facts of the core. */
import { say } from '../fact.js';
import { pieceName } from './cuts.js';
import { statusWords } from './names.js';

/** A weight that is far from the usual. @param {import('../../app/types').OddWeight} odd */
export const oddWords = ({ of, each, usual: [low, high] }) =>
  `${pieceName(of)}: ${each} each. Usual: ${low} to ${high}. Check the weight and the cut.`;

/** @type {Record<import('../../app/types').OddThickness, (now: string) => string>} */
const ODD_THICK = {
  thin: (now) => `${now} is as thin as a strip. If you mean cm, type cm behind it.`,
  thick: (now) => `${now} is thicker than a haunch. Check the unit.`,
};

/** A thickness that is rather another unit. @param {import('../../app/types').OddThickness} odd @param {string} now */
export const oddThick = (odd, now) => ODD_THICK[odd](now);

/** What of a size is rather another unit. @param {import('../../app/types').PieceRow} row */
export const oddRow = ({ odd, odd_thickness: thick, thickness }) =>
  [odd && oddWords(odd), thick && oddThick(thick, thickness?.text ?? '')].filter(Boolean).join(' ');

/** Sizes that one time will not do for. @param {import('../../app/types').Mixed} mixed */
export const mixedWords = ({ thick, thickness, thin, thinness }) =>
  `${pieceName(thick)} is ${thickness} thick and ${pieceName(thin)} ${thinness}. The thin ones are ready first: give each size a bag of its own, or take them out early.`;

/** @type {import('../fact.js').Words<import('../../app/types').CutSource>} */
const SOURCES = {
  table: ({ source, status }) => `${source} (${statusWords(status)}).`,
  unknown: () => 'No figure is known for this cut. Weigh it.',
};

/** Where the usual weight of a cut comes from. @param {import('../../app/types').CutSource} source */
export const cutSource = (source) => say(SOURCES, source);
