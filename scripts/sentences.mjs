// Sentences in the core. Facts are the core's, words the page's: a room of the crate that is done holds no string of two
// words, and one still to do no more than when last counted. `node scripts/sentences.mjs plan` shows those of a room.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const src = fileURLToPath(new URL('../crate/src/', import.meta.url));

/** Rooms that still make sentences, and how many. Lower the number when there are fewer; a room at nought goes. */
const STILL = {};

/** What is no string: comments, letters, and attributes, whose words are for the compiler. Then strings, raw or not. */
const TOKENS = /\/\/.*|\/\*[^]*?\*\/|'(?:[^'\\\n]|\\.[^']*)'|#!?\[[^]*?\]\n|r(#*)"([^]*?)"\1|"((?:[^"\\]|\\[^])*)"/g;

/** Two words of small letters, one after the other. Where a figure goes is no word. */
const isSentence = (text) => /\p{Ll}{2,}[,;:.]? (\S+ )*?\p{Ll}{2,}/u.test(text.replace(/\{[^}]*\}/g, '0'));

const rooms = {};
for (const file of readdirSync(src, { recursive: true }).sort()) {
  if (!file.endsWith('.rs')) continue;
  const room = file.split('/')[0].replace('.rs', '');
  const [code] = readFileSync(src + file, 'utf8').split('#[cfg(test)]\nmod ');
  for (const [, , raw, plain] of code.matchAll(TOKENS)) {
    const text = (raw ?? plain ?? '').replace(/\\\n\s*/g, '');
    if (isSentence(text)) (rooms[room] ??= []).push(`${file}: ${text}`);
  }
}

const [, , asked] = process.argv;
if (asked) console.log((rooms[asked] ?? []).join('\n'));
for (const room of Object.keys({ ...STILL, ...rooms }).sort()) {
  const [count, most] = [rooms[room]?.length ?? 0, STILL[room] ?? 0];
  if (asked === 'all') console.log(`${room}: ${count}`);
  if (count < most) console.log(`sentences: ${room} has ${count}, lower its number from ${most}`);
  if (count > most) {
    console.error(`sentences: crate/src/${room} makes ${count}, ${most} allowed; the page words what it says`);
    process.exitCode = 1;
  }
}
