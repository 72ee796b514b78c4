// Circles in the core: files that import each other, directly or round about. Read from the `use` lines and the paths of
// crate/src; a name that a file only hands on counts as the file that holds it. The tables, which hold rows only, import
// nothing. `node scripts/circles.mjs dose/case.rs` shows what a file imports.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const src = fileURLToPath(new URL('../crate/src/', import.meta.url));

/** What is no code: comments, strings, letters, attributes. */
const NO_CODE = /\/\/.*|\/\*[^]*?\*\/|'(?:[^'\\\n]|\\.[^']*)'|r(#*)"[^]*?"\1|"(?:[^"\\]|\\[^])*"|#!?\[[^]*?\]\n/g;

/** The paths of a use tree, as [[segments], name it goes by here]. */
const spread = (tree, before = []) => {
  const group = tree.match(/^(.*?)\{([^]*)\}$/s);
  const segments = (path) =>
    path
      .split('::')
      .map((s) => s.trim())
      .filter(Boolean);
  if (!group) {
    const [path, as] = tree.split(/\sas\s/).map((s) => s.trim());
    const all = [...before, ...segments(path)];
    if (all.at(-1) === 'self') all.pop();
    return all.length ? [[all, as ?? all.at(-1)]] : [];
  }
  const parts = [''];
  let depth = 0;
  for (const c of group[2]) {
    depth += { '{': 1, '}': -1 }[c] ?? 0;
    if (c === ',' && !depth) parts.push('');
    else parts[parts.length - 1] += c;
  }
  return parts.flatMap((part) => spread(part.trim(), [...before, ...segments(group[1])]));
};

/** Every file by the path of its module: its folder's own files, what it brings in, what it hands on, its code. */
const modules = new Map();
for (const file of readdirSync(src, { recursive: true })) {
  if (!file.endsWith('.rs')) continue;
  const path = file.replace(/(^lib|\/mod)?\.rs$/, '').replaceAll('/', '::');
  const code = readFileSync(src + file, 'utf8')
    .split('#[cfg(test)]\nmod ')[0]
    .replace(NO_CODE, ' ');
  const names = new Map();
  const uses = [];
  const handed = [];
  const body = code.replace(/(\bpub(?:\([^)]*\))?\s+)?\buse\s+([^;]+);/g, (_, hands, tree) => {
    for (const [segments, name] of spread(tree.trim())) {
      names.set(name, segments);
      (hands && /mod\.rs$|^lib\.rs$/.test(file) ? handed : uses).push([name, segments]);
    }
    return ' ';
  });
  const children = new Set([...body.matchAll(/\bmod\s+(\w+)\s*;/g)].map(([, name]) => name));
  for (const [path] of body.matchAll(/(?<![\w:])[a-z_]\w*(?:::\w+)+/g)) uses.push([path, path.split('::')]);
  const said = new Set(body.replace(/\bmod \w+;/g, '').match(/\w+/g));
  uses.push(...handed.filter(([name]) => said.has(name)));
  modules.set(path, { file, path, names, children, uses });
}

/** The module and, where the path goes beyond modules, whether it names something that this module holds. */
const follow = (from, segments, seen = new Set()) => {
  let at = from;
  let [first, ...rest] = segments;
  if (first === 'crate') at = modules.get('');
  else if (first === 'super') at = modules.get(from.path.split('::').slice(0, -1).join('::'));
  else if (first !== 'self') {
    if (!from.children.has(first) && !from.names.has(first)) return null;
    rest = segments;
  }
  for (const [i, name] of rest.entries()) {
    if (name === 'super') at = modules.get(at.path.split('::').slice(0, -1).join('::'));
    else if (at.children.has(name)) at = modules.get(at.path ? `${at.path}::${name}` : name);
    else if (at.names.has(name)) {
      const key = `${at.path} ${name}`;
      if (seen.has(key)) return null;
      return follow(at, [...at.names.get(name), ...rest.slice(i + 1)], seen.add(key));
    } else return { at, holds: true };
  }
  return { at, holds: false };
};

/** What each file imports: the files that hold what it names. A module that is brought in counts where it is used. */
const imports = new Map();
for (const module of modules.values()) {
  const found = module.uses
    .map(([, segments]) => follow(module, segments))
    .filter((to) => to?.holds && to.at !== module);
  imports.set(module.file, new Set(found.map((to) => to.at.file)));
}

/** The files that a file reaches, by the shortest way to each. */
const reached = (file) => {
  const ways = new Map([...imports.get(file)].map((to) => [to, [file, to]]));
  for (const [to, way] of ways) for (const next of imports.get(to)) if (!ways.has(next)) ways.set(next, [...way, next]);
  return ways;
};

const [, , asked] = process.argv;
if (asked) console.log([...(imports.get(asked) ?? [])].sort().join('\n'));
const reaches = new Map([...imports.keys()].sort().map((file) => [file, reached(file)]));
const shown = new Set();
let circles = 0;
for (const [file, ways] of reaches) {
  if (!ways.has(file) || shown.has(file)) continue;
  const ring = [...ways.keys()].filter((to) => reaches.get(to).has(file));
  for (const one of ring) shown.add(one);
  circles += 1;
  console.error(`circles: ${ring.sort().join(', ')}`);
  for (const one of ring) {
    console.error(
      `  ${one} imports ${[...imports.get(one)]
        .filter((to) => ring.includes(to))
        .sort()
        .join(', ')}`,
    );
  }
  console.error(`  one way round: ${ways.get(file).join(' > ')}`);
}
if (circles) process.exitCode = 1;
