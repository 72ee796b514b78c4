// What the page's words make of facts that are kept, in both Englishes. UPDATE=1 writes it anew: read what changed.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const worded = fileURLToPath(new URL('./worded.mjs', import.meta.url));
const env = { ...process.env, TZ: 'UTC' };

for (const language of ['en-GB', 'en-US'])
  test(`facts are said as they were, ${language}`, () => {
    const now = execFileSync(process.execPath, [worded, language], { encoding: 'utf8', env });
    const file = new URL(`../data/words/${language}.json`, import.meta.url);
    if (process.env.UPDATE === '1') writeFileSync(file, now);
    assert.deepEqual(JSON.parse(now), JSON.parse(readFileSync(file, 'utf8')));
    assert.doesNotMatch(now, /undefined|\[object|NaN/);
  });

test('the two Englishes are two', () => {
  const [british, american] = ['en-GB', 'en-US'].map((language) =>
    readFileSync(new URL(`../data/words/${language}.json`, import.meta.url), 'utf8'),
  );
  assert.notEqual(british, american);
  assert.doesNotMatch(american, /colour|litre|centre|grey/);
});
