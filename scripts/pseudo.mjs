// A language that nobody speaks: longer, accented. What stands on a screen without an accent has not come out of the
// catalogue. Letter by letter, so that a test finds in it what it looks for.
import { said } from './said.mjs';

const LETTERS = Object.fromEntries(
  [
    ...'aáá,bƀ,cç,dđ,eéé,fƒ,gğ,hħ,iíí,jĵ,kķ,lł,mɱ,nñ,oóó,pþ,qʠ,rř,sš,tŧ,uúú,vṽ,wŵ,xẋ,yý,zž'.matchAll(/(\w)([^,]+)/g),
  ].flatMap(([, plain, other]) => [
    [plain, other],
    [plain.toUpperCase(), other.toUpperCase()],
  ]),
);

/** @param {string} text @returns {string} */
export const accented = (text) => text.replace(/[a-z]/gi, (letter) => LETTERS[letter] ?? letter);

/**
 * A module of words in it. What is written after a backslash or an ampersand is no letter.
 * @param {string} source
 * @returns {string}
 */
export function pseudo(source) {
  let at = 0;
  let out = '';
  for (const { from, to, text } of said(source, { all: true })) {
    out += source.slice(at, from);
    out += text.replace(
      /(\\(?:u\{?[0-9a-fA-F]{2,6}\}?|x[0-9a-fA-F]{2}|.)|&#?\w+;)|[^\\&]+/g,
      (part, kept) => kept ?? accented(part),
    );
    at = to;
  }
  return out + source.slice(at);
}
