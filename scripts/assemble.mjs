// Puts the page together from web/ and target/glue/: dist/ for a host, and dist/cure-reckoner.html, one file. Beside each
// of their files lies the same packed, for hosts that send that. `node scripts/assemble.mjs dist/de de` makes it in the
// language of web/words/de, and `target/pseudo pseudo` in one that nobody speaks, for the tests.
import { createHash } from 'node:crypto';
import { cp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { languageOf } from './language.mjs';
import { licences } from './licences.mjs';
import { packed } from './one-file.mjs';
import { packAll } from './packed.mjs';
import { release } from './release.mjs';
import { shorten } from './shorten.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const web = join(root, 'web');
const [folder = 'dist', name = 'en'] = process.argv.slice(2);
const dist = join(root, folder);
const wholeCore = join(root, 'target/glue/core.wasm');
const esbuild = createRequire(join(web, 'package.json'))('esbuild');

// No request leaves the page, and no script or style runs but those that were built.
const RULES = {
  'default-src': "'none'",
  'script-src': "'self' 'wasm-unsafe-eval'",
  'style-src': "'self'",
  'img-src': "'self' data:",
  'connect-src': "'self'",
  'manifest-src': "'self'",
  'worker-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  // Text becomes markup or the address of code by these two alone: templates, and the address of the worker.
  'require-trusted-types-for': "'script'",
  'trusted-types': 'lit-html cure-reckoner',
};

// The tags of web/index.html that the build replaces.
const TAGS = {
  language: '<html lang="en">',
  description: '<meta name="description" content="">',
  noScripts: '<noscript></noscript>',
  charset: '<meta charset="utf-8">',
  theme: '<script src="app/theme-first.js"></script>',
  style: '<link rel="stylesheet" href="style/main.css">',
  manifest: '<link rel="manifest" href="manifest.webmanifest">',
  icon: '<link rel="icon" href="icons/icon.svg">',
  main: '<script type="module" src="app/main.js"></script>',
};

// Templates are indented for whoever reads the source; HTML folds white space anyway.
const outdent = {
  name: 'outdent',
  setup(build) {
    build.onLoad({ filter: /[/\\]web[/\\](app|words)[/\\].*\.js$/ }, async ({ path }) => {
      return { contents: language.source(path, await readFile(path, 'utf8')).replace(/\n\s+/g, '\n') };
    });
  },
};

// In the single file the core lies beside the script, in one piece; web/app/unpack.js hands it over.
const unpackedCore = {
  name: 'unpacked-core',
  setup(build) {
    build.onLoad({ filter: /first\.wasm$/ }, () => ({ contents: 'export default globalThis.core' }));
    build.onLoad({ filter: /rest\.wasm$/ }, () => ({ contents: 'export default null' }));
  },
};

const language = await languageOf(name);
const page = await readPage();
const released = release();
await rm(dist, { recursive: true, force: true });
await mkdir(dist, { recursive: true });
await writeHosted();
// What nobody speaks nobody downloads.
if (!language.isDialect) {
  await writeSingle();
  await writeFile(join(dist, 'licences.txt'), licences());
  await packAll(dist);
}

async function writeHosted() {
  const [bundled, ...core] = await bundle('app/main.js', { as: 'app', format: 'esm', hosted: true });
  const app = named('app', language.isDialect ? bundled.text : await shorten(bundled.text));
  const [theme] = await bundle('app/theme-first.js', { as: 'theme-first' });
  const [style] = await bundle('style/main.css', { as: 'style' });
  const files = [app, ...core, theme, style];

  const index = fill({
    charset: TAGS.charset + policy({}),
    theme: `<script src="${theme.name}"></script>`,
    style: `<link rel="stylesheet" href="${style.name}">`,
    manifest: TAGS.manifest,
    icon: TAGS.icon,
    // What the first screen asks is fetched beside the script, not after it.
    main:
      `<link rel="preload" as="fetch" crossorigin href="${core.find(({ name }) => name.startsWith('first.')).name}">` +
      `<script type="module" src="${app.name}"></script>`,
  });
  await cp(join(web, 'icons'), join(dist, 'icons'), { recursive: true });
  await writeFile(join(dist, 'manifest.webmanifest'), await manifest());
  await writeFile(join(dist, 'index.html'), index);
  for (const { name, bytes } of files) await writeFile(join(dist, name), bytes);

  const kept = [...files.map(({ name }) => name), 'manifest.webmanifest', 'icons/icon.svg'];
  const digest = createHash('sha256').update(await readFile(join(web, 'sw.js')));
  const digests = {};
  for (const name of ['index.html', ...kept]) {
    const bytes = await readFile(join(dist, name));
    digest.update(name).update(bytes);
    digests[name === 'index.html' ? './' : name] = createHash('sha256').update(bytes).digest('hex');
  }
  const [worker] = await bundle('sw.js', {
    define: {
      VERSION: JSON.stringify(digest.digest('hex').slice(0, 16)),
      FILES: JSON.stringify(digests),
    },
  });
  await writeFile(join(dist, 'sw.js'), worker.bytes);
}

async function writeSingle() {
  // Letters of ASCII alone: the file is of windows-1252, and some browsers take a digest by what the file is of.
  const ascii = { charset: 'ascii' };
  const [app] = await bundle('app/main.js', { ...ascii, format: 'esm', hosted: false });
  const [theme, unpack, first, style] = await Promise.all(
    ['app/theme-first.js', 'app/unpack.js', 'style/first.css', 'style/main.css'].map(async (entry) => {
      const [{ text }] = await bundle(entry, ascii);
      return sealed(text, entry.endsWith('.css') ? 'style' : 'script');
    }),
  );
  const main = (await shorten(app.text, { ascii_only: true })).trim();
  const icon = await readFile(join(web, 'icons/icon.svg'), 'base64');
  const { ends, bytes } = packed([main, style].map((text) => Buffer.from(text)).concat(await readFile(wholeCore)));

  const html = fill({
    charset:
      '<meta charset="windows-1252">' +
      policy({
        'script-src': `${[theme, unpack, main].map(digestOf).join(' ')} 'wasm-unsafe-eval'`,
        'style-src': [first, style].map(digestOf).join(' '),
        'img-src': 'data:',
        'connect-src': "'none'",
        'manifest-src': "'none'",
        'worker-src': "'none'",
      }),
    theme: `<script>${theme}</script>`,
    style: `<style>${first}</style>`,
    manifest: '',
    icon: `<link rel="icon" href="data:image/svg+xml;base64,${icon}">`,
    main: '',
  });
  // Last, when the page that it starts in stands.
  const [before, after] = html.split('</body>');
  if (/[^\0-\x7f]/.test(html)) throw new Error('The single file must be ASCII but for what is packed in it.');
  await writeFile(
    join(dist, 'cure-reckoner.html'),
    Buffer.concat([
      Buffer.from(`${before}<script type="application/octet-stream" id="packed" data-ends="${ends.join(' ')}">`),
      bytes,
      Buffer.from(`</script><script>${unpack}</script>\n</body>${after}`),
    ]),
  );
}

async function readPage() {
  const html = (await readFile(join(web, 'index.html'), 'utf8')).replace(/ ?\/>/g, '>');
  for (const tag of Object.values(TAGS)) {
    if (html.split(tag).length !== 2) throw new Error(`web/index.html must hold this once: ${tag}`);
  }
  return html;
}

function fill(parts) {
  const { lang, dir, description, noScripts } = language;
  const all = {
    language: `<html lang="${lang}" dir="${dir}">`,
    description: `<meta name="description" content="${ascii(description)}">`,
    noScripts: `<noscript><p class="waiting">${ascii(noScripts)}</p></noscript>`,
    ...parts,
  };
  return Object.entries(all).reduce((html, [name, part]) => html.replace(TAGS[name], () => part), page);
}

/** Text that a page of any coding takes. */
function ascii(text) {
  return text.replace(/[^\0-\x7f]/gu, (letter) => `&#${letter.codePointAt(0)};`);
}

async function manifest() {
  const { name, short_name, ...more } = JSON.parse(await readFile(join(web, 'manifest.webmanifest'), 'utf8'));
  const { lang, dir, description } = language;
  return JSON.stringify({ name, short_name, description, lang, dir, ...more }, null, 2);
}

function policy(own) {
  const rules = Object.entries({ ...RULES, ...own }).map(([name, value]) => `${name} ${value}`);
  return `<meta http-equiv="Content-Security-Policy" content="${rules.join('; ')}">`;
}

// Code inside HTML must not hold what would end its element, or open a comment.
function sealed(code, element) {
  const text = code.trim().replaceAll('<!--', '\\x3c!--');
  if (text.toLowerCase().includes(`</${element}`)) throw new Error(`A bundle holds </${element} and would end early.`);
  return text;
}

// Another content is another name, as esbuild has it: a browser keeps what it has under a name for ever.
function named(as, text) {
  const hash = createHash('sha256').update(text).digest('hex').slice(0, 8).toUpperCase();
  return { name: `${as}.${hash}.js`, bytes: Buffer.from(text) };
}

function digestOf(text) {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

async function bundle(entry, { as = 'unnamed', hosted, define, ...options } = {}) {
  const { outputFiles } = await esbuild.build({
    entryPoints: [{ in: join(web, entry), out: as }],
    entryNames: '[name].[hash]',
    assetNames: '[name].[hash]',
    bundle: true,
    minify: true,
    charset: 'utf8',
    legalComments: 'none',
    target: 'es2022',
    outdir: dist,
    write: false,
    loader: { '.wasm': 'file', '.svg': 'dataurl' },
    plugins: [language.plugin, ...(hosted ? [] : [unpackedCore]), outdent],
    define: define ?? { HOSTED: String(hosted), RELEASE: JSON.stringify(released) },
    ...options,
  });
  // The entry first, then what it pulled in.
  return outputFiles
    .map(({ path, contents, text }) => ({ name: basename(path), bytes: contents, text }))
    .sort((a, b) => Number(a.name.endsWith('.wasm')) - Number(b.name.endsWith('.wasm')));
}
