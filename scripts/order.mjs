// Lays like functions of the core beside like: what packs it looks for what it has seen just before. Gives each function
// a name by its place in that order, and leaves it to wasm-opt to sort them by name, calls and all.
// `node scripts/order.mjs from.wasm to.wasm`
import { readFileSync, writeFileSync } from 'node:fs';
import { bodiesOf, importedBy, number, section, sectionsOf, text } from './wasm.mjs';

// Two functions are as alike as they have runs of bytes in common. Longer runs, rarer ones or a look further back come
// out larger or within 0.3 % and take many times as long.
const RUN = 6;
const COMMON = 400;
const BACK = 3;

const [from, to] = process.argv.slice(2);
const wasm = readFileSync(from);
const sections = sectionsOf(wasm);
const places = ordered(
  bodiesOf(
    wasm,
    sections.find(({ id }) => id === 10),
  ).map(runs),
);
// Without sections of names and the like.
const code = sections.filter(({ id }) => id !== 0).map(({ id, from, to }) => section(id, wasm.subarray(from, to)));
writeFileSync(to, Buffer.concat([wasm.subarray(0, 8), ...code, names(places)]));

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
  const first = importedBy(wasm);
  const named = order
    .map((which, place) => [which, String(place).padStart(6, '0')])
    .sort(([a], [b]) => a - b)
    .map(([which, name]) => [...number(first + which), ...text(name)]);
  const map = [...number(named.length), ...named.flat()];
  return section(0, [...text('name'), 1, ...number(map.length), ...map]);
}
