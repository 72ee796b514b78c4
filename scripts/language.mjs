// The language of a page: the folder of web/words that the build puts into it, or one that is made of the English one.
import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DIALECTS, pseudo } from './pseudo.mjs';

const words = fileURLToPath(new URL('../web/words/', import.meta.url));

/** Styles by their sides: shorter, and older browsers know them too. @param {string} css */
const leftToRight = (css) =>
  css
    .replace(/\binset-inline-(start|end)\b/g, (_, end) => SIDES[end])
    .replace(/\binline-(start|end)\b/g, (_, end) => SIDES[end]);
const SIDES = { start: 'left', end: 'right' };

/**
 * What the build needs of a language: its texts outside of the scripts, its modules, and where they come from.
 * @param {string} name a folder of web/words, or a dialect
 */
export async function languageOf(name) {
  const isDialect = name in DIALECTS;
  const folder = join(words, isDialect ? 'en' : name);
  if (!existsSync(folder)) throw new Error(`There is no language ${name}: it would be in ${folder}.`);
  const source = (path, text) => (isDialect && dirname(path) === folder ? pseudo(text, basename(path), name) : text);
  const load = (file) => {
    const path = join(folder, file);
    return import(`data:text/javascript,${encodeURIComponent(source(path, readFileSync(path, 'utf8')))}`);
  };
  const { DIRECTION, locale } = await load('language.js');
  const { DESCRIPTION, NO_SCRIPTS } = await load('shell.js');

  /** Who asks for English words gets those of the language. Right to left figures are set apart and shapes turned. */
  const plugin = {
    name: 'language',
    setup(build) {
      if (folder !== join(words, 'en')) {
        build.onResolve({ filter: /(^|\/)en\/[\w-]+\.js$/ }, ({ path, resolveDir }) => {
          const found = resolve(resolveDir, path);
          return dirname(found) === join(words, 'en') ? { path: join(folder, basename(found)) } : undefined;
        });
      }
      if (DIRECTION === 'rtl') {
        const drawn = join(words, 'right-to-left.js');
        build.onResolve({ filter: /^lit-html$/ }, ({ importer }) => (importer === drawn ? undefined : { path: drawn }));
      } else {
        build.onLoad({ filter: /[/\\]style[/\\].*\.css$/ }, ({ path }) => ({
          contents: basename(path) === 'rtl.css' ? '' : leftToRight(readFileSync(path, 'utf8')),
          loader: 'css',
        }));
      }
    },
  };
  return {
    isDialect,
    lang: locale(''),
    dir: DIRECTION,
    description: DESCRIPTION,
    noScripts: NO_SCRIPTS,
    source,
    plugin,
  };
}
