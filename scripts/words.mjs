// What the page says stands in web/words/: no file of web/app says anything of its own.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { said } from './said.mjs';

const app = fileURLToPath(new URL('../web/app/', import.meta.url));

for (const file of readdirSync(app, { recursive: true }).sort()) {
  if (!file.endsWith('.js')) continue;
  for (const { text } of said(readFileSync(app + file, 'utf8'))) {
    console.error(`words: web/app/${file} says of its own: ${text.replace(/\s+/g, ' ').trim()}`);
    process.exitCode = 1;
  }
}
