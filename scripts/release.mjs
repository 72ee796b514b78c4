// Which release this is: the version of the page, and a hash of all that it is built of.
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** @returns {string} `0.1.0-1a2b3c4d` */
export function release() {
  const hash = createHash('sha256');
  const add = (path) => hash.update(path).update(readFileSync(join(root, path)));
  for (const folder of ['web/app', 'web/words', 'web/style', 'web/icons']) {
    const files = readdirSync(join(root, folder), { recursive: true, withFileTypes: true }).filter((f) => f.isFile());
    for (const path of files.map((f) => join(f.parentPath, f.name).slice(root.length)).sort()) add(path);
  }
  for (const path of ['web/index.html', 'web/sw.js', 'web/manifest.webmanifest', 'target/glue/core.wasm']) add(path);
  const { version } = JSON.parse(readFileSync(join(root, 'web/package.json'), 'utf8'));
  return `${version}-${hash.digest('hex').slice(0, 8)}`;
}
