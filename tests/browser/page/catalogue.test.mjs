// The page in a language that nobody speaks: what stands on a screen in plain letters has not come out of the catalogue.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import { catalogue, seenIn, unmarked } from '../../../scripts/pseudo.mjs';
import { host, open, phone, visit } from '../harness.mjs';
import { built, root, speaking } from './dialect.mjs';
import { tour } from './tour.mjs';

/** Figures come with their unit out of the core, days and hours out of the browser. */
const UNITS =
  'g|kg|mg|lb|oz|mm|cm|in|ft|ml|l|tsp|tbsp|cup|cups|ppm|h|min|d|s|pH|aw|kPa|bar|kcal|F|C|AM|PM|' +
  'Mon|Tue|Wed|Thu|Fri|Sat|Sun|Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday|' +
  'Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec';
const PLAIN = new RegExp(`(?<![\\p{L}])(?!(?:${UNITS})(?![\\p{L}]))[A-Za-z]{2,}(?![\\p{L}])`, 'u');

/** What the tour types, and the mark of a release. */
const TYPED = ['“much”', '“thick”', '“love”', '2 tsp love', 'love, ', 'Rub for 5 lb meat'];
const RELEASE = /\d+\.\d+\.\d+-[0-9a-f]{8}/;

/** The cells of a table. @param {string} csv */
const cells = (csv) =>
  [...csv.matchAll(/"((?:[^"]|"")*)"|[^,\n]+/g)].map(([plain, quoted]) => quoted?.replaceAll('""', '"') ?? plain);

/** All texts of the tables and the starters: names, cautions, sources, notes of recipes. Those are data, in English. */
function data() {
  const ask = (request) =>
    JSON.parse(
      execFileSync(`${root}target/release/examples/reckon`, { input: JSON.stringify(request), encoding: 'utf8' }),
    );
  const all = new Set();
  const take = (value) => {
    if (typeof value === 'string') all.add(value);
    else if (value && typeof value === 'object') Object.values(value).forEach(take);
  };
  take([ask({ tables: {} }), ask({ starters: {} }), ask({ sources: {} })]);
  take(JSON.parse(readFileSync(`${root}crate/tables/starters.json`, 'utf8')));
  for (const table of readdirSync(`${root}crate/tables`).filter((name) => name.endsWith('.csv'))) {
    take(cells(readFileSync(`${root}crate/tables/${table}`, 'utf8')).flatMap((cell) => [cell, ...cell.split('|')]));
  }
  return [...all, ...TYPED].filter((text) => /[A-Za-z]{2}/.test(text)).sort((a, b) => b.length - a.length);
}

/** What a person can read or hear, each text once. */
const texts = (page) =>
  page.evaluate(() => {
    const found = new Set();
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      if (!node.parentElement?.closest('script, style, template, noscript, #link-text')) found.add(node.data);
    }
    for (const name of ['aria-label', 'placeholder', 'title', 'alt']) {
      for (const one of document.querySelectorAll(`[${name}]`)) found.add(one.getAttribute(name) ?? '');
    }
    return [...found].map((text) => text.replace(/\s+/g, ' ').trim());
  });

test('every text of every screen comes out of the catalogue', async (t) => {
  const known = data();
  const { address } = await host(t, built(t, 'pseudo'));
  const page = speaking(await visit(await open(t, phone), address), 'pseudo');
  const plain = new Map();
  const seen = new Set();
  await tour(page, async (screen) => {
    for (const marked of await texts(page)) {
      for (const number of seenIn(marked)) seen.add(number);
      const text = unmarked(marked);
      if (!PLAIN.test(text)) continue;
      const left = known.reduce((rest, one) => rest.replaceAll(one, ' '), text.replace(RELEASE, ''));
      if (PLAIN.test(left)) plain.set(text, plain.get(text) ?? screen);
    }
  });
  assert.deepEqual(
    [...plain].map(([text, screen]) => `${screen}: ${text}`),
    [],
  );
  t.diagnostic(`${seen.size} of ${catalogue.length} texts of the catalogue were seen`);
  if (process.env.UNSEEN) {
    const unseen = catalogue.flatMap(({ file, text }, number) => (seen.has(number) ? [] : [`${file}: ${text}`]));
    writeFileSync(process.env.UNSEEN, `${unseen.join('\n')}\n`);
  }
});
