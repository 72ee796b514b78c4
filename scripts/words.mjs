// What the page says stands in web/words/. A file of web/app that is done says nothing of its own; those still to do are
// listed. `node scripts/words.mjs screens/stock.js` shows what a file says.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { said } from './said.mjs';

const app = fileURLToPath(new URL('../web/app/', import.meta.url));

/** Files that still say something of their own. One that no longer does goes. */
const STILL = new Set(
  `
    locale.js
  `
    .split(/\s+/)
    .filter(Boolean),
);

const [, , asked] = process.argv;
let count = 0;
for (const file of readdirSync(app, { recursive: true }).sort()) {
  if (!file.endsWith('.js') || file.startsWith('words/')) continue;
  const texts = said(readFileSync(app + file, 'utf8')).map(({ text }) => text.replace(/\s+/g, ' ').trim());
  count += texts.length;
  if (asked === file) console.log(texts.join('\n'));
  if (texts.length && !STILL.has(file)) {
    console.error(`words: web/app/${file} says of its own: ${texts[0]}`);
    process.exitCode = 1;
  }
  if (!texts.length && STILL.has(file)) console.log(`words: web/app/${file} is done, take it from the list`);
}
if (asked) console.log(`${count} texts in web/app`);
