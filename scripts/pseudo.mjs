// Languages that nobody speaks, made of the English one letter by letter, for the tests. `pseudo` is longer and accented:
// what stands on a screen without an accent has not come out of the catalogue. `rtl` is as long and runs right to left.
// Letter by letter, so that a test finds in them what it looks for. Each text of `pseudo` has a mark that nobody sees, so
// that a test knows which have been shown.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { around } from '../web/words/figures.js';
import { said } from './said.mjs';

const english = fileURLToPath(new URL('../web/words/en/', import.meta.url));

/** @param {string} pairs each letter and what stands for it: two for a vowel, so that a text is longer by a third */
function alphabet(pairs) {
  const letters = Object.fromEntries(
    [...pairs.matchAll(/(\w)([^,]+)/g)].flatMap(([, plain, other]) => [
      [plain, other],
      [plain.toUpperCase(), other.toUpperCase()],
    ]),
  );
  return (/** @type {string} */ text) => text.replace(/[a-z]/gi, (letter) => letters[letter] ?? letter);
}

/** How each of them writes, where it runs, and what it puts about a figure. */
export const DIALECTS = {
  pseudo: {
    letters: alphabet('aáá,bƀ,cç,dđ,eéé,fƒ,gğ,hħ,iíí,jĵ,kķ,lł,mɱ,nñ,oóó,pþ,qʠ,rř,sš,tŧ,uúú,vṽ,wŵ,xẋ,yý,zž'),
    direction: 'ltr',
    apart: ['', ''],
    marked: true,
  },
  rtl: {
    letters: alphabet('aאא,bב,cכ,dד,eעע,fפ,gג,hה,iיי,jץ,kק,lל,mמ,nנ,oוו,pף,qך,rר,sס,tת,uםם,vן,wש,xח,yט,zז'),
    direction: 'rtl',
    apart: ['\u2066', '\u2069'],
    marked: false,
  },
};

/** Characters that no font draws: two of them are the number of a text. */
const FIRST = 0xe0020;
const MANY = 95;
const mark = (/** @type {number} */ number) =>
  String.fromCodePoint(FIRST + Math.floor(number / MANY), FIRST + (number % MANY));
/** What may stand between two letters of a text and is not seen. */
export const UNSEEN = '(?:\\udb40[\\udc20-\\udc7e]|[\\u2066\\u2069])*';

/** All texts of the catalogue, each in the place of its number. */
export const catalogue = readdirSync(english)
  .sort()
  .flatMap((file) => said(readFileSync(english + file, 'utf8'), { all: true }).map(({ text }) => ({ file, text })));

/** The numbers of the texts that are in what is shown. @param {string} shown */
export const seenIn = (shown) =>
  [...shown.matchAll(/([\u{e0020}-\u{e007e}])([\u{e0020}-\u{e007e}])/gu)].map(
    ([, one, two]) => (Number(one.codePointAt(0)) - FIRST) * MANY + Number(two.codePointAt(0)) - FIRST,
  );

/** Without its marks. @param {string} text */
export const unmarked = (text) => text.replace(/[\u{e0020}-\u{e007e}]/gu, '');

/**
 * A module of words in such a language. What is written after a backslash or an ampersand is no letter.
 * @param {string} source
 * @param {string} file its name
 * @param {keyof typeof DIALECTS} name
 */
export function pseudo(source, file, name) {
  const { letters, direction, apart, marked } = DIALECTS[name];
  if (file === 'language.js') return source.replace(/(DIRECTION = )'\w+'/, `$1'${direction}'`);
  let number = catalogue.findIndex((one) => one.file === file);
  let at = 0;
  let out = '';
  for (const { from, to, text } of said(source, { all: true })) {
    const spoken = text.replace(
      /(\\(?:u\{?[0-9a-fA-F]{2,6}\}?|x[0-9a-fA-F]{2}|.)|&#?\w+;)|[^\\&]+/g,
      (part, kept) => kept ?? around(part, letters, (figure) => apart.join(figure)),
    );
    out += source.slice(at, from) + (marked ? spoken.replace(/\p{L}(?=\P{L}*$)/u, `$&${mark(number)}`) : spoken);
    number += 1;
    at = to;
  }
  return out + source.slice(at);
}
