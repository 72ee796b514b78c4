// The page in a language that nobody speaks: what stands on a screen in plain letters has not come out of the catalogue.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
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
const TYPED = ['“much”', '“thick”', '“love”', '2 tsp love', 'love, ', 'Rub for 5 lb meat'];
const RELEASE = /\d+\.\d+\.\d+-[0-9a-f]{8}/;
/** A tag with the code behind it, as on a label; and the tags that the tour makes. */
const CODE = /(?<![-\w])[A-Z]{2}\d?-[A-Z0-9]{1,4}(?![-\w])/g;
const TAGS = ['SS', 'NR', 'RR'];
/** Words of a text that it does not understand, and of a wrong quantity. */
const ODD = ['Do not cook', 'drei legen', 'trois', 'och', 'nitritsalt i tre dagar', 'Prague powder', 'parsec'];

/** A text that was typed, and its parts: lines, sentences and clauses, as the reader takes them apart. */
const parts = (typed) =>
  [typed, ...typed.split(/\n|\. |(?<=\D)[,:] /), ...typed.split('\n')].map((part) => part.replace(/^\d\. |\.$/g, ''));
/** What stands in quotes and was typed so, if need be cut short. @param {string} text */
const unquoted = (text) =>
  text.replace(/“([^”]+?)…?”/g, (all, said) => (TEXTS.some((typed) => typed.includes(said)) ? '' : all));

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
  return [
    ...all,
    ...[...all].map((text) => text.toLowerCase()),
    ...TYPED,
    ...TAGS,
    ...NAMES,
    ...ODD,
    ...TEXTS.flatMap(parts),
  ]
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
