/** Cuts, birds and animals by their keys in the core. */
import { E, either } from './english.js';

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
  'deer-backstrap': either('Deer loin', 'Deer backstrap'),
  'deer-top-round': either('Deer topside', 'Deer top round'),
  'deer-bottom-round': either('Deer silverside', 'Deer bottom round'),
  'deer-eye-of-round': either('Deer salmon cut', 'Deer eye of round'),
  'deer-sirloin-tip': either('Deer thick flank', 'Deer sirloin tip'),
  'roe-backstrap': either('Roe deer loin', 'Roe deer backstrap'),
  // In Britain an elk is a moose.
  'elk-backstrap': either('Wapiti (American elk) loin', 'Elk backstrap'),
  'elk-round': either('Wapiti (American elk) round', 'Elk round'),
  'moose-backstrap': either('Elk (moose) loin', 'Moose backstrap'),
  'moose-round': either('Elk (moose) round', 'Moose round'),
  'antelope-backstrap': either('Antelope loin', 'Antelope backstrap'),
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
