// The page in a language that nobody speaks: what stands on a screen in plain letters has not come out of the catalogue.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import { catalogue, seenIn, unmarked } from '../../../scripts/pseudo.mjs';
import { host, open, phone, visit } from '../harness.mjs';
import { built, root, speaking } from './dialect.mjs';
import { NAMES } from './states.mjs';
import { TEXTS } from './tour-doses.mjs';
import { TOURS } from './tours.mjs';

/** Figures come with their unit out of the core, days and hours out of the browser. */
const UNITS =
  'g|kg|mg|lb|oz|mm|cm|in|ft|ml|l|tsp|tbsp|cup|cups|ppm|h|min|d|s|pH|aw|kPa|bar|kcal|F|C|AM|PM|' +
  'Mon|Tue|Wed|Thu|Fri|Sat|Sun|Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday|' +
  'Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec';
const PLAIN = new RegExp(`(?<![\\p{L}])(?!(?:${UNITS})(?![\\p{L}]))[A-Za-z]{2,}(?![\\p{L}])`, 'u');

/** What the tour types, and the mark of a release. */
const TYPED = [
  ...['“much”', '“thick”', 'pepper', '“love”', '2 tsp love', 'love, ', '3 tbsp salt', '1 tsp pink salt', 'no garlic'],
  ...['Rub for 5 lb meat', '30 g salt', '60 g salt', '3/4 cup salt', '5 g cure no. 1', '20 g cure no. 1', 'egg'],
  ...['ascorbate', 'even.', 'x'.repeat(24), `1 ${'x'.repeat(22)}`],
  // What went in as it was told: in the words in which it is typed and stored.
  ...['1 bag of', '1 packet of', '1 packet', '1 heaping tsp'],
];
const RELEASE = /\d+\.\d+\.\d+-[0-9a-f]{8}/;
/** A tag with the code behind it, as on a label; and the tags that the tour makes. */
const CODE = /(?<![-\w])[A-Z]{2}\d?-[A-Z0-9]{1,4}(?![-\w])/g;
const TAGS = ['SS', 'NR', 'RR', 'RU'];
/** Words of a text that it does not understand, and of a wrong quantity. */
const ODD = ['Do not cook', 'drei legen', 'trois', 'och', 'nitritsalt i tre dagar', 'Prague powder', 'parsec'];

/** A text that was typed, and its parts: lines, sentences and clauses, as the reader takes them apart. */
const parts = (typed) =>
  [typed, ...typed.split(/\n|\. |(?<=\D)[,:] /), ...typed.split('\n')].map((part) => part.replace(/^\d\. |\.$/g, ''));
/** What stands in quotes and was typed so, if need be cut short. @param {string} text */
const unquoted = (text) =>
  text.replace(/“([^”]+?)…?”/g, (all, said) => (TEXTS.some((typed) => typed.includes(said)) ? '' : all));

/** The columns of a table that say where its figures come from. */
const SOURCE = ['source', 'rule', 'title', 'status'];

/** The rows of a table, each an object. @param {string} csv */
function rows(csv) {
  const [head, ...all] = csv
    .split('\n')
    .filter((line) => line && !line.startsWith('#'))
    .map((line) => [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)])
    .map((cells) => cells.map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain));
  return all.map((cells) => Object.fromEntries(cells.map((cell, at) => [head[at], cell])));
}

/** What is data and stays as it is written: sources with their status, and the recipes that come with the page. */
function data() {
  const all = new Set();
  const folder = `${root}crate/tables/`;
  for (const table of readdirSync(folder).filter((name) => name.endsWith('.csv'))) {
    for (const row of rows(readFileSync(folder + table, 'utf8'))) {
      for (const column of SOURCE) if (row[column]) all.add(row[column]);
    }
  }
  const { recipes, demo, plain } = JSON.parse(readFileSync(`${folder}starters.json`, 'utf8'));
  for (const recipe of [...recipes, ...plain.recipes.map((one) => one.recipe)]) {
    for (const text of [recipe.name, recipe.tag, recipe.notes, ...recipe.steps.map(({ note }) => note)])
      if (text) all.add(text);
  }
  for (const { name, tag } of [demo, ...demo.pieces]) for (const text of [name, tag]) if (text) all.add(text);
  const typed = [...TYPED, ...TAGS, ...NAMES, ...ODD, ...TEXTS.flatMap(parts)];
  return [...all, ...[...all].map((text) => text.toLowerCase()), ...typed]
    .filter((text) => /[A-Za-z]{2}/.test(text))
    .sort((a, b) => b.length - a.length);
}

/** What a person can read or hear, each text once. */
const texts = (page) =>
  page.evaluate(() => {
    const found = new Set();
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      if (!node.parentElement?.closest('script, style, template, noscript, #link-text')) found.add(node.data);
    }
    for (const name of ['aria-label', 'placeholder', 'title', 'alt', 'data-time']) {
      for (const one of document.querySelectorAll(`[${name}]`)) found.add(one.getAttribute(name) ?? '');
    }
    return [...found].map((text) => text.replace(/\s+/g, ' ').trim());
  });

/** At least so many in a hundred of the catalogue's texts are seen on the tours. It only rises. */
const FLOOR = 75;

const known = data();
/** The numbers of the texts that were seen. */
const seen = new Set();

/** Words and units are those of Britain, and once those of the States. */
const GB = { locale: 'en-GB', timezoneId: 'Europe/London' };
const US = { locale: 'en-US', timezoneId: 'America/New_York' };

for (const [name, tour, there] of [
  ...Object.entries(TOURS).map((one) => [...one, GB]),
  ['screens in the States', TOURS.screens, US],
]) {
  test(`every text comes out of the catalogue: ${name}`, async (t) => {
    const { address } = await host(t, built(t, 'pseudo'));
    const plain = new Map();
    const read = new Set();
    const fresh = async (before = () => {}) => {
      const context = await open(t, { ...phone, ...there });
      await before(context);
      return speaking(await visit(context, address), 'pseudo');
    };
    const page = await fresh();
    await tour(
      page,
      async (screen, more = '', shown = page) => {
        for (const marked of [...(await texts(shown)), more]) {
          if (read.has(marked)) continue;
          read.add(marked);
          for (const number of seenIn(marked)) seen.add(number);
          const text = unmarked(marked);
          if (!PLAIN.test(text)) continue;
          const own = unquoted(text).replace(RELEASE, '').replace(CODE, '');
          if (PLAIN.test(known.reduce((rest, one) => rest.replaceAll(one, ' '), own))) plain.set(text, screen);
        }
      },
      { fresh },
    );
    assert.deepEqual(
      [...plain].map(([text, screen]) => `${screen}: ${text}`),
      [],
    );
  });
}

test('most of the catalogue is seen on the tours', (t) => {
  const share = (100 * seen.size) / catalogue.length;
  t.diagnostic(`${seen.size} of ${catalogue.length} texts were seen, ${share.toFixed(1)} %`);
  if (process.env.UNSEEN) {
    const unseen = catalogue.flatMap(({ file, text }, number) => (seen.has(number) ? [] : [`${file}: ${text}`]));
    writeFileSync(process.env.UNSEEN, `${unseen.join('\n')}\n`);
  }
  assert.ok(share >= FLOOR, `${share.toFixed(1)} % of the texts were seen, ${FLOOR} % at least`);
});
