// Builds, serves and watches. `node scripts/dev.mjs [port]`; scripts/dev sets up before.
import { execFile } from 'node:child_process';
import { watch } from 'node:fs';
import { cp, mkdir, readFile, rename, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
const web = join(root, 'web');
const glue = join(root, 'target/glue');
const folder = join(root, 'target/dev');
const port = Number(process.argv[2] ?? 0);
const esbuild = createRequire(join(web, 'package.json'))('esbuild');

/** The page as written, and that it loads anew when esbuild says that something has changed. */
const page = {
  name: 'page',
  setup(build) {
    const again = `<script>new EventSource('/esbuild').addEventListener('change', () => location.reload())</script>`;
    build.onLoad({ filter: /[/\\]web[/\\]index\.html$/ }, async ({ path }) => ({
      contents: (await readFile(path, 'utf8')).replace('</head>', `${again}</head>`),
      loader: 'copy',
      watchFiles: [path],
    }));
  },
};

/** The core in one piece. */
const undivided = {
  name: 'undivided',
  setup(build) {
    build.onResolve({ filter: /rest\.wasm$/ }, ({ path }) => ({ path, namespace: 'undivided' }));
    build.onLoad({ filter: /./, namespace: 'undivided' }, () => ({ contents: 'export default null' }));
  },
};

/** The core anew. */
async function core() {
  const from = performance.now();
  await promisify(execFile)(join(root, 'scripts/core'), ['dev'], { cwd: root });
  // In one step, so that none is read half written.
  await rename(join(glue, 'cure_reckoner_bg.wasm'), join(glue, 'first.wasm'));
  // What was split off another core does not belong to this one.
  await rm(join(glue, 'rest.wasm'), { force: true });
  console.log(`Core      ${((performance.now() - from) / 1000).toFixed(1)} s`);
}

/** Makes the core anew after each change under `crate/`, one at a time. */
function follow() {
  let [busy, changed] = [false, false];
  const start = async () => {
    changed = true;
    if (busy) return;
    busy = true;
    while (changed) {
      // An editor writes a file in several steps.
      await new Promise((done) => setTimeout(done, 50));
      changed = false;
      await core().catch((error) => console.error(error.stderr || error));
    }
    busy = false;
  };
  watch(join(root, 'crate'), { recursive: true }, start);
}

follow();
await core();
await mkdir(folder, { recursive: true });
await cp(join(web, 'icons'), join(folder, 'icons'), { recursive: true });
const context = await esbuild.context({
  entryPoints: ['index.html', 'manifest.webmanifest', 'app/main.js', 'app/theme-first.js', 'style/main.css'].map(
    (name) => join(web, name),
  ),
  outbase: web,
  bundle: true,
  format: 'esm',
  sourcemap: true,
  charset: 'utf8',
  target: 'es2022',
  outdir: folder,
  loader: { '.wasm': 'file', '.svg': 'dataurl', '.html': 'copy', '.webmanifest': 'copy' },
  define: { HOSTED: 'true', RELEASE: '"not released"' },
  plugins: [page, undivided],
  logLevel: 'warning',
});
await context.watch();
const served = await context.serve({ servedir: folder, port, host: 'localhost' });
console.log(`Served    http://localhost:${served.port}/`);
console.log('Save a file and look. Ctrl-C stops.');
