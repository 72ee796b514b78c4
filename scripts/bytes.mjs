// Where every byte is. `node scripts/bytes.mjs` after a build prints what the code of the core, its data, the script and
// the style weigh by room, before they are packed; `node scripts/bytes.mjs 40` also the 40 largest functions.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { table } from './sizes.mjs';
import { bodiesOf, importedBy, leb, sectionsOf } from './wasm.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const esbuild = createRequire(`${root}web/package.json`)('esbuild');
const core = readFileSync(`${root}target/wasm32-unknown-unknown/release/cure_reckoner.wasm`);
const many = Number(process.argv[2] ?? 0);
const LIBRARIES =
  'rust_decimal winnow qrcodegen postcard base64ct js_sys wasm_bindgen hashbrown arrayvec num_traits alloc std core'.split(
    ' ',
  );

const sections = sectionsOf(core);
const data = sections.find(({ id }) => id === 11);
const functions = sized();
const rooms = { 'core: data (tables, texts)': data.to - data.from };
const put = (room, bytes) => (rooms[room] = (rooms[room] ?? 0) + bytes);
for (const { name, bytes } of functions) put(`core: ${room(name)}`, bytes);
for (const [path, bytes] of await sources('app/main.js')) put(`script: ${path}`, bytes);
for (const [path, bytes] of await sources('style/main.css')) put(`style: ${path}`, bytes);
table([['room', 'bytes'], ...Object.entries(rooms).sort(([, a], [, b]) => b - a)]);
if (many) {
  console.log();
  const largest = functions.toSorted((a, b) => b.bytes - a.bytes).slice(0, many);
  table([['function', 'bytes'], ...largest.map(({ name, bytes }) => [name.slice(0, 110), bytes])]);
}

/** The room of the crate that a function's mangled name speaks of, or else the library. */
function room(name) {
  const derived = /serde|Deserialize|Serialize|Visitor|__Field/.test(name);
  const [, ours] = name.match(/cure_reckoner(?:\d+|\.\.)([a-z_]+?)(?=\d|\.|\$|[A-Z])/) ?? [];
  if (ours) return derived ? `${ours}, reading and writing` : ours;
  if (derived) return 'reading and writing, of no room';
  return LIBRARIES.find((library) => name.includes(library)) ?? 'other';
}

/** Every function of the core that is not imported, with its bytes. */
function sized() {
  const names = named();
  const imported = importedBy(core);
  const bodies = bodiesOf(
    core,
    sections.find(({ id }) => id === 10),
  );
  return bodies.map(({ length }, place) => ({ name: names.get(imported + place) ?? 'unnamed', bytes: length }));
}

/** The functions' names by number: the first part of the section that is called so. */
function named() {
  const names = new Map();
  const word = (at) => {
    const [length, from] = leb(core, at);
    return [core.toString('utf8', from, from + length), from + length];
  };
  const part = sections.find(({ id, from }) => id === 0 && word(from)[0] === 'name');
  for (let at = word(part.from)[1]; at < part.to;) {
    const [size, from] = leb(core, at + 1);
    if (core[at] === 1) {
      let [count, next] = leb(core, from);
      for (; count > 0; count -= 1) {
        const [index, behind] = leb(core, next);
        const [name, end] = word(behind);
        names.set(index, name);
        next = end;
      }
    }
    at = from + size;
  }
  return names;
}

/** What each folder of a bundle's sources puts into it. */
async function sources(entry) {
  const { metafile } = await esbuild.build({
    entryPoints: [`${root}web/${entry}`],
    bundle: true,
    minify: true,
    format: entry.endsWith('.js') ? 'esm' : undefined,
    target: 'es2022',
    write: false,
    metafile: true,
    outdir: 'out',
    loader: { '.wasm': 'file', '.svg': 'dataurl' },
    define: { HOSTED: 'true', RELEASE: '"not released"' },
    absWorkingDir: root,
  });
  const output = Object.values(metafile.outputs).find(({ inputs }) => Object.keys(inputs).length > 1);
  return Object.entries(output.inputs).map(([path, { bytesInOutput }]) => [
    path.replace(/^web\//, '').replace(/\/[^/]+$/, '') || path,
    bytesInOutput,
  ]);
}
