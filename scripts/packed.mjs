// Files packed beside themselves: core.wasm.br and core.wasm.gz beside core.wasm. A host that sends them loads the page
// with less than one that packs as it goes, and needs no time for it.
import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

/** The ways, best first: what the browser calls it, how such a file's name ends, how it is made. */
export const WAYS = [
  {
    coding: 'br',
    ending: '.br',
    pack: (bytes) => promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length } }),
  },
  { coding: 'gzip', ending: '.gz', pack: (bytes) => promisify(gzip)(bytes, { level: 9 }) },
];

export const isPacked = (name) => WAYS.some(({ ending }) => name.endsWith(ending));

/** Packs every file under a folder. */
export async function packAll(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map(({ parentPath, name }) => join(parentPath, name));
  await Promise.all(
    files.map(async (file) => {
      const bytes = await readFile(file);
      await Promise.all(WAYS.map(async ({ ending, pack }) => writeFile(file + ending, await pack(bytes))));
    }),
  );
}
