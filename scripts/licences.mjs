// What is shipped with the page and is not ours, with the text of each. A licence that is not among those that may be
// shipped is an error.
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const MAY = new Set(['MIT', 'Apache-2.0', 'ISC', 'BSD-3-Clause', 'Unicode-3.0', 'Unlicense', 'Zlib']);

/** The crates that are compiled in: name, version, licence. */
function crates() {
  const tree = ['tree', '-p', 'cure-reckoner', '-e', 'normal', '--target', 'wasm32-unknown-unknown', '--no-dedupe'];
  const lines = execFileSync('cargo', [...tree, '--prefix', 'none', '--format', '{p}|{l}'], {
    cwd: root,
    encoding: 'utf8',
  });
  const registry = join(process.env.CARGO_HOME ?? join(homedir(), '.cargo'), 'registry/src');
  return [...new Set(lines.trim().split('\n'))].sort().flatMap((line) => {
    const [, name, version, licence] = /^(\S+) v(\S+)[^|]*\|(.*)$/.exec(line);
    if (name === 'cure-reckoner') return [];
    const folder = readdirSync(registry)
      .map((index) => join(registry, index, `${name}-${version}`))
      .find(existsSync);
    return [{ name, version, licence, folder }];
  });
}

/** The packages that the script holds: those the page depends on. */
function packages() {
  const read = (folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return Object.keys(read(join(root, 'web')).dependencies).map((name) => {
    const folder = join(root, 'web/node_modules', name);
    const { version, license } = read(folder);
    return { name, version, licence: license, folder };
  });
}

/** Every part of `A AND B`, one at least of each `A OR B`. */
const may = (licence) =>
  licence
    .replace(/[()]/g, '')
    .split(' AND ')
    .every((part) => part.split(/ OR |\//).some((one) => MAY.has(one.trim())));

/** The text that comes with it: that of MIT where there is a choice. */
function text(folder) {
  const files = readdirSync(folder, { withFileTypes: true })
    .filter((file) => file.isFile() && /^(licen[cs]e|unlicense|copying)/i.test(file.name))
    .map(({ name }) => name);
  const best = files.sort((a, b) => Number(/mit/i.test(b)) - Number(/mit/i.test(a)) || a.localeCompare(b))[0];
  return best ? readFileSync(join(folder, best), 'utf8').trim() : '';
}

/** @returns {string} the text of all, ours first */
export function licences() {
  const parts = [...crates(), ...packages()].map(({ name, version, licence, folder }) => {
    if (!may(licence)) throw new Error(`${name} ${version} is under ${licence}, which may not be shipped`);
    return `${name} ${version}: ${licence}\n\n${text(folder)}`;
  });
  const own = readFileSync(join(root, 'LICENSE'), 'utf8').trim();
  const head = `Cure Reckoner\n\n${own}\n\nIt is built of these too.`;
  return [head, ...parts].join(`\n\n${'-'.repeat(72)}\n\n`) + '\n';
}
