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
  const [address] = await bareReleases(t, ['"not released"']);
  return { 'from a host': address.host, 'from a file': address.file };
}

/** One page for each release, all on one host: what is stored is one store. */
export async function bareReleases(t, releases) {
  const folder = scratch(t);
  const { address } = await host(t, folder);
  const pages = [];
  for (const [n, release] of releases.entries()) {
    const { outputFiles } = await build({
      stdin: { contents: ENTRY, resolveDir: fileURLToPath(new URL('web/app/', root)) },
      bundle: true,
      write: false,
      format: 'esm',
      charset: 'utf8',
      loader: { '.wasm': 'binary' },
      define: { HOSTED: 'false', RELEASE: release },
    });
    const name = n === 0 ? 'index.html' : `${n}.html`;
    const file = join(folder, name);
    writeFileSync(file, `<!doctype html><meta charset="utf-8"><script type="module">${outputFiles[0].text}</script>`);
    pages.push({ host: n === 0 ? address : address + name, file: pathToFileURL(file).href });
  }
  return pages;
}
