// Lays like functions of the core beside like: what packs it looks for what it has seen just before. Gives each function
// a name by its place in that order, and leaves it to wasm-opt to sort them by name, calls and all.
// `node scripts/order.mjs from.wasm to.wasm`
import { readFileSync, writeFileSync } from 'node:fs';

// Two functions are as alike as they have runs of bytes in common. Longer runs, rarer ones or a look further back come
// out larger or within 0.3 % and take many times as long.
const RUN = 6;
const COMMON = 400;
const BACK = 3;

const [from, to] = process.argv.slice(2);
const wasm = readFileSync(from);
const { sections, code } = outline();
const places = ordered(bodies().map(runs));
writeFileSync(to, Buffer.concat([wasm.subarray(0, 8), ...sections, names(places)]));

/** Every section but those of names and the like, and where the code begins. */
function outline() {
  const sections = [];
  let code;
  for (let at = 8; at < wasm.length;) {
    const [size, inside] = leb(at + 1);
    if (wasm[at] !== 0) sections.push(wasm.subarray(at, inside + size));
    if (wasm[at] === 10) code = inside;
    at = inside + size;
  }
  return { sections, code };
}

function bodies() {
  let [count, at] = leb(code);
  return Array.from({ length: count }, () => {
    const [size, inside] = leb(at);
    at = inside + size;
    return wasm.subarray(inside, at);
  });
}

/** The runs of bytes in a function, as numbers. */
function runs(body) {
  const found = new Set();
  for (let at = 0; at + RUN <= body.length; at += 1) {
    let run = 0;
    for (let next = at; next < at + RUN; next += 1) run = (Math.imul(run, 31) + body[next] + 1) | 0;
    found.add(run);
  }
  return found;
}

/** Which function comes next: of those left, the one most like the last few. */
function ordered(all) {
  const holders = new Map();
  all.forEach((found, which) => {
    for (const run of found) {
      if (!holders.has(run)) holders.set(run, []);
      holders.get(run).push(which);
    }
  });
  // A run that one function has alone is like none, and one that all have says nothing.
  for (const [run, { length }] of holders) if (length < 2 || length > COMMON) holders.delete(run);

  const left = new Set(all.keys());
  const order = [];
  while (left.size > 0) {
    const alike = new Float64Array(all.length);
    for (const [back, which] of order.slice(-BACK).reverse().entries()) {
      for (const run of all[which]) {
        const others = holders.get(run) ?? [];
        for (const other of others) alike[other] += 1 / (back + 1) / Math.log2(others.length + 1);
      }
    }
    let [best, most] = [left.values().next().value, 0];
    for (const which of left) {
      const share = alike[which] / (all[which].size + 20);
      if (share > most) [best, most] = [which, share];
    }
    left.delete(best);
    order.push(best);
  }
  return order;
}

/** A section of names by which the functions sort into this order. */
function names(order) {
  const imported = WebAssembly.Module.imports(new WebAssembly.Module(wasm));
  const first = imported.filter(({ kind }) => kind === 'function').length;
  const named = order
    .map((which, place) => [which, String(place).padStart(6, '0')])
    .sort(([a], [b]) => a - b)
    .map(([which, name]) => [...number(first + which), ...text(name)]);
  const map = [...number(named.length), ...named.flat()];
  const inside = [...text('name'), 1, ...number(map.length), ...map];
  return Buffer.from([0, ...number(inside.length), ...inside]);
}

function text(letters) {
  return [...number(letters.length), ...Buffer.from(letters)];
}

function number(value) {
  const bytes = [];
  for (; value > 127; value >>>= 7) bytes.push((value & 127) | 128);
  return [...bytes, value];
}

/** A number of variable length, and where the next thing begins. */
function leb(at) {
  let value = 0;
  for (let shift = 0; ; shift += 7) {
    const byte = wasm[at++];
    value += (byte & 127) * 2 ** shift;
    if (byte < 128) return [value, at];
  }
}
