// A page with nothing on it but the records, to test them without the screens.
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { host, scratch } from './harness.mjs';

const root = new URL('../../', import.meta.url);
const { build } = createRequire(new URL('web/package.json', root))('esbuild');

const ENTRY = `
  import { openStore } from './store.js';
  import * as backup from './backup.js';
  import * as core from './core.js';
  import { Shelf, newId } from './shelf.js';
  Object.assign(window, { openStore, backup, core, Shelf, newId });
  document.documentElement.dataset.ready = '';
`;

/** Writes the page into a new folder and gives both its addresses. */
export async function barePage(t) {
  const { outputFiles } = await build({
    stdin: { contents: ENTRY, resolveDir: fileURLToPath(new URL('web/app/', root)) },
    bundle: true,
    write: false,
    format: 'esm',
    charset: 'utf8',
    loader: { '.wasm': 'binary' },
    define: { HOSTED: 'false', RELEASE: '"not released"' },
  });
  const folder = scratch(t);
  const file = join(folder, 'index.html');
  writeFileSync(file, `<!doctype html><meta charset="utf-8"><script type="module">${outputFiles[0].text}</script>`);
  const { address } = await host(t, folder);
  return { 'from a host': address, 'from a file': pathToFileURL(file).href };
}
