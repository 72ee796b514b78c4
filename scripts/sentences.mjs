// Sentences in the core: none. Facts are the core's, words the page's, so a string there has no two words.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const src = fileURLToPath(new URL('../crate/src/', import.meta.url));

/** What is no string: comments, letters, and attributes, whose words are for the compiler. Then strings, raw or not. */
const TOKENS = /\/\/.*|\/\*[^]*?\*\/|'(?:[^'\\\n]|\\.[^']*)'|#!?\[[^]*?\]\n|r(#*)"([^]*?)"\1|"((?:[^"\\]|\\[^])*)"/g;

/** Two words of small letters, one after the other. Where a figure goes is no word. */
const isSentence = (text) => /\p{Ll}{2,}[,;:.]? (\S+ )*?\p{Ll}{2,}/u.test(text.replace(/\{[^}]*\}/g, '0'));

for (const file of readdirSync(src, { recursive: true }).sort()) {
  if (!file.endsWith('.rs')) continue;
  const [code] = readFileSync(src + file, 'utf8').split('#[cfg(test)]\nmod ');
  for (const [, , raw, plain] of code.matchAll(TOKENS)) {
    const text = (raw ?? plain ?? '').replace(/\\\n\s*/g, '');
    if (!isSentence(text)) continue;
    console.error(`sentences: crate/src/${file}: ${text}`);
    process.exitCode = 1;
  }
}
