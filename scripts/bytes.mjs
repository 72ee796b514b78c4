// Where every byte is. `node scripts/bytes.mjs` after a build prints what the code of the core, its data, the script and
// the style weigh by room, before they are packed; `node scripts/bytes.mjs 40` also the 40 largest functions.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { table } from './sizes.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const esbuild = createRequire(`${root}web/package.json`)('esbuild');
const core = readFileSync(`${root}target/wasm32-unknown-unknown/release/cure_reckoner.wasm`);
const many = Number(process.argv[2] ?? 0);
const LIBRARIES =
  'rust_decimal winnow qrcodegen postcard base64ct js_sys wasm_bindgen hashbrown arrayvec num_traits alloc std core'.split(
    ' ',
  );

const functions = sized();
const rooms = { 'core: data (tables, texts)': sections().find(({ id }) => id === 11).size };
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
  const code = sections().find(({ id }) => id === 10);
  const names = named();
  let at = code.from;
  const count = number();
  // What is imported is numbered first.
  const imports = WebAssembly.Module.imports(new WebAssembly.Module(core));
  const imported = imports.filter(({ kind }) => kind === 'function').length;
  return Array.from({ length: count }, (_, place) => {
    const bytes = number();
    at += bytes;
    return { name: names.get(imported + place) ?? 'unnamed', bytes };
  });

  function number() {
    const [value, next] = leb(at);
    at = next;
    return value;
  }
}

/** The functions' names by number. */
function named() {
  const names = new Map();
  const part = sections().find(({ id, name }) => id === 0 && name === 'name');
  let at = part.from;
  while (at < part.to) {
    const id = core[at];
    const [size, from] = leb(at + 1);
    if (id === 1) {
      let [count, next] = leb(from);
      for (; count > 0; count -= 1) {
        const [index, a] = leb(next);
        const [length, b] = leb(a);
        names.set(index, core.toString('utf8', b, b + length));
        next = b + length;
      }
    }
    at = from + size;
  }
  return names;
}

function sections() {
  const found = [];
  for (let at = 8; at < core.length;) {
    const id = core[at];
    const [size, from] = leb(at + 1);
    const to = from + size;
    if (id === 0) {
      const [length, text] = leb(from);
      found.push({ id, name: core.toString('utf8', text, text + length), from: text + length, to, size });
    } else found.push({ id, from, to, size });
    at = to;
  }
  return found;
}

/** A number of variable length, and where the next thing begins. */
function leb(at) {
  let value = 0;
  for (let shift = 0; ; shift += 7) {
    const byte = core[at++];
    value += (byte & 127) * 2 ** shift;
    if (byte < 128) return [value, at];
  }
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
