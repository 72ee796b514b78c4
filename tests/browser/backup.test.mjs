// All records as one file, and back: asked before anything is overwritten, broken files refused in words.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { barePage } from './bare.mjs';
import { open, visit } from './harness.mjs';

describe('the file', () => {
  /** A page whose `store` holds two recipes and the settings. */
  const start = async (t) => {
    const page = await visit(await open(t), (await barePage(t))['from a host']);
    await page.evaluate(async () => {
      window.store = await openStore({ validate: (key, data) => (data.name === 'bad' ? 'it has a bad name' : null) });
      await store.put('recipe/a', { name: 'haunch', salt: '2.2' });
      await store.put('recipe/b', { name: 'belly', salt: '2.5' });
      await store.put('settings', { step: '0.1' });
    });
    return page;
  };

  const plan = (page, text) =>
    page.evaluate(async (text) => {
      const { plan, problem } = await backup.importAll(store, text);
      return problem ? { problem } : { sum: plan.sum, rows: plan.rows.map(({ key, kind }) => [key, kind]) };
    }, text);

  test('taken back unchanged, it says that all is the same', async (t) => {
    const page = await start(t);
    const { text } = await page.evaluate(() => backup.exportAll(store));
    assert.deepEqual(await plan(page, text), {
      sum: 'matches',
      rows: [
        ['recipe/a', 'same'],
        ['recipe/b', 'same'],
        ['settings', 'same'],
      ],
    });
  });

  test('notes when it was made', async (t) => {
    const page = await start(t);
    assert.equal(await page.evaluate(() => backup.lastExport(store)), null);
    const { text, name } = await page.evaluate(() => backup.exportAll(store));
    const { made, format, v } = JSON.parse(text);
    assert.deepEqual([format, v], ['cure-reckoner-backup', 1]);
    assert.equal(name, `cure-reckoner-${made.slice(0, 10)}.json`);
    assert.equal(await page.evaluate(() => backup.lastExport(store)), made);
  });

  test('stores nothing until told, then the new ones and those chosen', async (t) => {
    const page = await start(t);
    const result = await page.evaluate(async () => {
      const { text } = await backup.exportAll(store);
      await store.put('recipe/a', { name: 'haunch', salt: '3' });
      await store.put('settings', { step: '5' });
      await store.remove('recipe/b');
      const { plan } = await backup.importAll(store, text);
      const kinds = plan.rows.map(({ key, kind }) => [key, kind]);
      const before = await store.get('recipe/b');
      const done = await plan.apply({ 'recipe/a': 'theirs' });
      const now = [await store.get('recipe/a'), await store.get('recipe/b'), await store.get('settings')];
      return { kinds, before: before === undefined, done, now };
    });
    assert.deepEqual(result.kinds, [
      ['recipe/a', 'different'],
      ['recipe/b', 'new'],
      ['settings', 'different'],
    ]);
    assert.ok(result.before);
    assert.deepEqual(result.done, { written: ['recipe/a', 'recipe/b'], skipped: [] });
    assert.deepEqual(result.now, [{ name: 'haunch', salt: '2.2' }, { name: 'belly', salt: '2.5' }, { step: '5' }]);
  });

  test('never overwrites what changed after the plan was shown', async (t) => {
    const page = await start(t);
    const result = await page.evaluate(async () => {
      const { text } = await backup.exportAll(store);
      await store.put('recipe/a', { name: 'haunch', salt: '3' });
      const { plan } = await backup.importAll(store, text);
      await store.put('recipe/a', { name: 'haunch', salt: '4' });
      return [await plan.apply({ 'recipe/a': 'theirs' }), await store.get('recipe/a')];
    });
    assert.deepEqual(result, [
      { written: [], skipped: ['recipe/a'] },
      { name: 'haunch', salt: '4' },
    ]);
  });

  test('takes with it what was set aside', async (t) => {
    const page = await start(t);
    const file = await page.evaluate(async () => {
      await (await openStore()).put('recipe/c', { name: 'bad' });
      await store.all('recipe/');
      return JSON.parse((await backup.exportAll(store)).text);
    });
    assert.equal(file.aside[0].reason, 'it has a bad name');
    assert.deepEqual(file.aside[0].raw.data, { name: 'bad' });
  });

  test('altered, it says so, and names each record that cannot be read', async (t) => {
    const page = await start(t);
    const { text } = await page.evaluate(() => backup.exportAll(store));
    const file = JSON.parse(text);
    file.records[0].data.salt = '22';
    file.records[1].data.name = 'bad';
    file.records.push(null, { key: '__proto__' }, file.records[2], { ...file.records[2], key: 'meta/last-export' });
    assert.deepEqual(await plan(page, JSON.stringify(file)), {
      sum: 'differs',
      rows: [
        ['recipe/a', 'different'],
        ['recipe/b', 'unreadable'],
        ['settings', 'same'],
        ['record 4', 'unreadable'],
        ['__proto__', 'unreadable'],
        ['settings (record 6)', 'unreadable'],
        ['meta/last-export', 'unreadable'],
      ],
    });
  });

  const cut = async (page) => {
    const { text } = await page.evaluate(() => backup.exportAll(store));
    return text.slice(0, -40);
  };
  for (const [what, make, code] of [
    ['cut short', cut, 'not-json'],
    ['empty', () => '', 'not-json'],
    ['another kind of file', () => '{"records":[]}', 'not-a-backup'],
    ['without records', () => '{"format":"cure-reckoner-backup","v":1}', 'not-a-backup'],
    ['from a newer page', () => '{"format":"cure-reckoner-backup","v":2,"records":[]}', 'newer-backup'],
    ['a single word', () => 'null', 'not-a-backup'],
    ['nested without end', () => '['.repeat(200_000), 'not-json'],
  ]) {
    test(`${what}, it is refused in words and changes nothing`, async (t) => {
      const page = await start(t);
      const { problem } = await plan(page, await make(page));
      assert.equal(problem.code, code);
      assert.match(problem.message, /\.$/);
      assert.equal(await page.evaluate(async () => (await store.all('recipe/')).length), 2);
    });
  }

  test('a record nested without end is named, not followed', async (t) => {
    const page = await start(t);
    const deep = '['.repeat(5000) + ']'.repeat(5000);
    const record = `{"key":"recipe/x","v":1,"at":"2026-11-14T10:00:00Z","data":{"a":${deep}}}`;
    const { rows } = await plan(page, `{"format":"cure-reckoner-backup","v":1,"records":[${record}]}`);
    assert.deepEqual(rows, [['recipe/x', 'unreadable']]);
  });
});
