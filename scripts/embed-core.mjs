// An esbuild plugin: puts the core into the script, compressed. core.js inflates it.
import { readFile } from 'node:fs/promises';
import { deflateRawSync } from 'node:zlib';

export const embedCore = {
  name: 'embed-core',
  setup(build) {
    build.onLoad({ filter: /\.wasm$/ }, async ({ path }) => ({
      contents: deflateRawSync(await readFile(path), { level: 9 }),
      loader: 'binary',
    }));
  },
};
