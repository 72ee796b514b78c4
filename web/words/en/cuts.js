/** Cuts, birds and animals by their keys in the core. */
import { E } from './english.js';

/** @type {Record<import('../../app/types').CutKey, string>} */
export const CUTS = {
  'mallard-breast': 'Mallard breast',
  'teal-breast': 'Teal breast',
  'mallard-leg': 'Mallard leg',
  'goose-breast': 'Goose breast',
  'hare-saddle': 'Hare saddle (both loins)',
  'hare-legs': 'Hare hind leg',
  'fallow-haunch': `Fallow ${E.haunch}`,
  'venison-strips': 'Venison strips',
  'boar-belly': 'Wild boar belly',
  'boar-belly-rind': 'Wild boar belly, rind on',
  'boar-loin': 'Wild boar loin',
  'duck-breast': 'Duck breast, other',
  'goose-leg': 'Goose leg',
  'pheasant-breast': 'Pheasant breast',
  'pheasant-leg': 'Pheasant leg',
  'wild-turkey-breast': 'Wild turkey breast',
  'wild-turkey-leg': 'Wild turkey leg',
  'grouse-breast': 'Grouse breast',
  'partridge-breast': 'Partridge breast',
  'quail-breast': 'Quail breast',
  'dove-breast': 'Dove breast',
  'deer-haunch': `Deer ${E.haunch}`,
  'deer-shoulder': 'Deer shoulder',
  'deer-backstrap': 'Deer backstrap',
  'deer-top-round': 'Deer top round',
  'deer-bottom-round': 'Deer bottom round',
  'deer-eye-of-round': 'Deer eye of round',
  'deer-sirloin-tip': 'Deer sirloin tip',
  'roe-backstrap': 'Roe deer backstrap',
  'elk-backstrap': 'Elk backstrap',
  'elk-round': 'Elk round',
  'moose-backstrap': 'Moose backstrap',
  'moose-round': 'Moose round',
  'antelope-backstrap': 'Antelope backstrap',
  'antelope-haunch': `Antelope ${E.haunch}`,
  'rabbit-saddle': 'Rabbit saddle (both loins)',
  'rabbit-legs': 'Rabbit hind leg',
  'boar-haunch': `Wild boar ${E.haunch}`,
  'boar-shoulder': 'Wild boar shoulder',
  'bear-roast': 'Bear roast',
  'hare-legs-boned': 'Hare hind leg, boned',
};

/** What a cut is called; nothing for what is in no row. @param {string | undefined} key */
export const cutName = (key = '') => /** @type {Record<string, string | undefined>} */ (CUTS)[key];

/** @typedef {{ cut?: string, name?: string }} Piece */

/** What a size class is called: the cook's own word, or that of its cut. @param {Piece} piece */
export const pieceName = ({ cut, name }) => name || (cutName(cut) ?? 'it');

/** `8 Mallard breast`, `about 29 Mallard breast` where nobody counted them. @param {import('../../app/types').Counted} counted */
export const countedPieces = ({ count, about, of }) => `${about ? 'about ' : ''}${count} ${pieceName(of)}`;
