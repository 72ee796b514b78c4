// What the page says stands in web/words/: no file of web/app says anything of its own.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { said } from './said.mjs';

/** Every script below a folder of the page, with its text. @param {string} folder @returns {[string, string][]} */
const scripts = (folder) => {
  const root = fileURLToPath(new URL(`../${folder}/`, import.meta.url));
  return readdirSync(root, { recursive: true })
    .filter((file) => file.endsWith('.js'))
    .sort()
    .map((file) => [folder + file, readFileSync(root + file, 'utf8')]);
};

const app = scripts('web/app/');
const words = scripts('web/words/');

for (const [file, source] of app) {
  for (const { text } of said(source)) {
    console.error(`words: ${file} says of its own: ${text.replace(/\s+/g, ' ').trim()}`);
    process.exitCode = 1;
  }
}

// A character that no key types is drawn as an empty box.
for (const [file, source] of [...app, ...words]) {
  source.split('\n').forEach((line, i) => {
    if (![...line].some((letter) => letter < ' ' || letter === '\x7f')) return;
    console.error(`words: ${file}:${i + 1} holds a character that cannot be seen`);
    process.exitCode = 1;
  });
}
