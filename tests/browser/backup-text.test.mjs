// Any text at all as an exported file: it is what JSON says it is, or damaged, and no record in it makes its reader fall
// over. `INPUTS=10000000 SEED=7 node --test tests/browser/backup-text.test.mjs` is the long run.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chance } from './chance.mjs';
import { scratch } from './harness.mjs';

const INPUTS = Number(process.env.INPUTS ?? 20_000);
const SEED = Number(process.env.SEED ?? 1);
const root = new URL('../../', import.meta.url);
const { build } = createRequire(new URL('web/package.json', root))('esbuild');

/** The reader of the page, without a page. */
async function reader(t) {
  const file = join(scratch(t), 'reader.mjs');
  const contents = `export * from './backup-text.js'; export { STEPS, read } from './records.js';`;
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: fileURLToPath(new URL('web/app/', root)) },
    bundle: true,
    write: false,
    format: 'esm',
    banner: { js: `globalThis.navigator ??= { language: 'en-ZA', languages: ['en-ZA'] };` },
  });
  writeFileSync(file, outputFiles[0].text);
  return import(pathToFileURL(file).href);
}

/** What files are made of, and what breaks them. */
const BITS = [
  ...'{}[]",:\\ \n0-1e.',
  'null',
  'true',
  '""',
  '[]',
  '{}',
  '\\u0000',
  '\\"',
  '"records":[',
  '"aside":[',
  '"v":9',
];
BITS.push(
  '"__proto__":',
  '"key":"batch/x"',
  '"data":{}',
  '"at":"2026-11-14T00:00:00Z"',
  ',{"key":"settings","v":1}',
  '🦆',
);

/** One, two or more places of a text cut, doubled, moved or written over. */
function spoiled(dice, text) {
  let now = text;
  for (let n = dice.below(4); n >= 0; n -= 1) {
    const [from, long] = [dice.below(now.length + 1), dice.below(dice.one([2, 12, 200]))];
    const put = dice.one([
      () => '',
      () => dice.one(BITS),
      () => now.slice(dice.below(now.length + 1)).slice(0, long),
    ])();
    now = now.slice(0, from) + put + now.slice(from + dice.one([0, 1, long]));
  }
  return now;
}

/** What JSON says: its value where that is an object. */
function plain(text) {
  try {
    const value = JSON.parse(text);
    return value !== null && typeof value === 'object' && !Array.isArray(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

test(`${INPUTS} spoiled files are read as they stand, or are damaged (seed ${SEED})`, async (t) => {
  const { Damaged, STEPS, parse, read, write } = await reader(t);
  const dice = chance(SEED);
  const kept = JSON.parse(readFileSync(new URL('tests/data/records/3.json', root), 'utf8'));
  const small = kept.map((one) => ({
    ...one,
    data: { name: one.data.name, ticks: [{ of: 'rub', at: 5 }], pieces: [] },
  }));
  const head = { format: 'cure-reckoner-backup', v: 1, made: '2026-11-14T00:00:00.000Z' };
  const files = [await write(head, [], []), await write(head, small.slice(0, 2), [{ raw: '\\"', reason: '}' }])];
  files.push('{}', JSON.stringify({ ...head, records: small.slice(0, 3), aside: [], sum: null }, null, 2));
  const seen = { read: 0, damaged: 0, records: 0 };
  for (let n = 0; n < INPUTS; n += 1) {
    const text = spoiled(dice, dice.one(files));
    const file = await parse(text).catch((error) => {
      if (!(error instanceof Damaged)) throw new Error(`${error}: ${JSON.stringify(text)}`);
    });
    const wanted = plain(text);
    if (!file) {
      const long = wanted && Object.keys(wanted).some((name) => JSON.stringify(name).length > 100);
      assert.ok(wanted === undefined || long, `called damaged: ${text}`);
      seen.damaged += 1;
      continue;
    }
    seen.read += 1;
    assert.equal(JSON.stringify(file), JSON.stringify(wanted), text);
    for (const one of Array.isArray(file.records) ? file.records : []) {
      const { record, reason } = read(one, { steps: STEPS, validate: () => null });
      assert.ok(Boolean(record) !== Boolean(reason), text);
      seen.records += 1;
    }
  }
  t.diagnostic(`${seen.read} read, ${seen.damaged} damaged, ${seen.records} records`);
  assert.ok(seen.read > INPUTS / 50 && seen.damaged > INPUTS / 50 && seen.records > INPUTS / 50);
});
