// The records: nothing typed is lost, no tab overwrites another, what cannot be read is set aside.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { barePage } from './bare.mjs';
import { open, visit } from './harness.mjs';

const hosted = async (t) => (await barePage(t))['from a host'];

for (const place of ['from a host', 'from a file']) {
  describe(`the records, ${place}`, () => {
    const start = async (t) => {
      const address = (await barePage(t))[place];
      const context = await open(t);
      return { address, context, page: await visit(context, address) };
    };

    test('a record is stored, listed by its kind, removed and put back', async (t) => {
      const { page } = await start(t);
      const seen = await page.evaluate(async () => {
        const store = await openStore();
        await store.put('recipe/b', { name: 'belly' });
        await store.put('recipe/a', { name: 'haunch' });
        await store.put('settings', { step: '0.1' });
        const listed = (await store.all('recipe/')).map(({ key, data }) => [key, data.name]);
        const old = await store.remove('recipe/a');
        const gone = await store.get('recipe/a');
        await store.put(old.key, old.data);
        return { listed, old, gone: gone === undefined, back: await store.get('recipe/a'), trouble: store.trouble };
      });
      assert.deepEqual(seen.listed, [
        ['recipe/a', 'haunch'],
        ['recipe/b', 'belly'],
      ]);
      assert.equal(seen.old.v, 1);
      assert.ok(seen.gone);
      assert.deepEqual(seen.back, { name: 'haunch' });
      assert.equal(seen.trouble, null);
    });

    test('two tabs that change one record at once both have their changes in it', async (t) => {
      const { context, address, page } = await start(t);
      const other = await visit(context, address);
      const add = () =>
        openStore().then((store) =>
          Promise.all(
            Array.from({ length: 50 }, () => store.change('batch/one', (data) => ({ count: (data?.count ?? 0) + 1 }))),
          ),
        );
      await Promise.all([page.evaluate(add), other.evaluate(add)]);
      assert.deepEqual(await page.evaluate(async () => (await openStore()).get('batch/one')), { count: 100 });
    });

    test('another tab sees a change', async (t) => {
      const { context, address, page } = await start(t);
      await page.evaluate(async () => {
        window.heard = [];
        window.store = await openStore();
        store.onChange(async (keys, from) => heard.push([from, (await store.get('settings')).units]));
      });
      const other = await visit(context, address);
      await other.evaluate(async () => (await openStore()).put('settings', { units: 'metric' }));
      // From a file no message comes, so the tab looks when it is looked at.
      if (place === 'from a file') await page.evaluate(() => window.dispatchEvent(new Event('focus')));
      await page.waitForFunction(() => heard.length > 0);
      assert.deepEqual((await page.evaluate(() => heard))[0], ['elsewhere', 'metric']);
    });

    test('a set of changes is stored whole or not at all', async (t) => {
      const { page } = await start(t);
      const [error, left] = await page.evaluate(async () => {
        const store = await openStore();
        const changes = [
          { key: 'recipe/a', fn: () => ({ name: 'haunch' }) },
          {
            key: 'recipe/b',
            fn: () => {
              throw new Error('no belly');
            },
          },
        ];
        const error = await store.changeTogether(changes).catch((error) => error.message);
        return [error, await store.all('recipe/')];
      });
      assert.equal(error, 'no belly');
      assert.deepEqual(left, []);
    });
  });
}

describe('records that cannot be read', () => {
  test('are set aside with the reason, kept, and come back when they can be read', async (t) => {
    const page = await visit(await open(t), await hosted(t));
    const seen = await page.evaluate(async () => {
      const validate = (key, data) => (data.name === 'bad' ? 'it has a bad name' : null);
      const lax = await openStore();
      await lax.put('recipe/bad', { name: 'bad' });
      await lax.put('recipe/good', { name: 'good' });
      const strict = await openStore({ validate });
      const left = (await strict.all('recipe/')).map(({ key }) => key);
      const aside = await strict.aside();
      const back = (await (await openStore()).all('recipe/')).map(({ key }) => key);
      return { left, aside, back, asideAfter: await lax.aside() };
    });
    assert.deepEqual(seen.left, ['recipe/good']);
    assert.equal(seen.aside.length, 1);
    assert.equal(seen.aside[0].reason, 'it has a bad name');
    assert.deepEqual(seen.aside[0].raw.data, { name: 'bad' });
    assert.deepEqual(seen.back, ['recipe/bad', 'recipe/good']);
    assert.deepEqual(seen.asideAfter, []);
  });

  test('stay where they are while the validator is made ready', async (t) => {
    const page = await visit(await open(t), await hosted(t));
    const [before, after] = await page.evaluate(async () => {
      await (await openStore()).put('recipe/bad', { name: 'bad' });
      const strict = await openStore({ validate: () => 'it has a bad name' });
      await strict.get('recipe/bad');
      const before = await strict.aside();
      let up = false;
      const ready = () => new Promise((done) => setTimeout(done, 50)).then(() => (up = true));
      const validate = () => {
        if (!up) throw new Error('not yet');
        return 'it has a bad name';
      };
      return [before, await (await openStore({ ready, validate })).aside()];
    });
    assert.equal(before.length, 1);
    assert.deepEqual(after, before);
  });

  test('a change to one is refused and leaves it as it was', async (t) => {
    const page = await visit(await open(t), await hosted(t));
    const [name, kept] = await page.evaluate(async () => {
      await (await openStore()).put('recipe/a', { name: 'bad' });
      const strict = await openStore({ validate: () => 'it is refused' });
      const error = await strict.change('recipe/a', (data) => ({ ...data, name: 'good' })).catch((error) => error);
      return [error.name, await (await openStore()).get('recipe/a')];
    });
    assert.equal(name, 'Unreadable');
    assert.deepEqual(kept, { name: 'bad' });
  });

  test('a validator that cannot tell sets nothing aside', async (t) => {
    const page = await visit(await open(t), await hosted(t));
    const [data, aside] = await page.evaluate(async () => {
      await (await openStore()).put('recipe/a', { name: 'haunch' });
      const lost = await openStore({
        validate: () => {
          throw new Error('the core has failed');
        },
      });
      return [await lost.get('recipe/a'), await lost.aside()];
    });
    assert.deepEqual(data, { name: 'haunch' });
    assert.deepEqual(aside, []);
  });

  test('an old version is brought forward; a newer one is left alone, and said to be newer', async (t) => {
    const page = await visit(await open(t), await hosted(t));
    const seen = await page.evaluate(async () => {
      const none = { settings: [], recipe: [], batch: [], meta: [] };
      const steps = { ...none, recipe: [({ title }) => ({ name: title }), (data) => ({ ...data, steps: [] })] };
      const old = await openStore();
      await old.put('recipe/a', { title: 'haunch' });
      const young = await openStore({ steps });
      const forward = await young.all('recipe/');
      await young.put('recipe/a', forward[0].data);
      const before = await young.get('recipe/a');
      const seen = { forward, old: await old.get('recipe/a'), newer: old.newer, aside: await old.aside() };
      const tries = [
        () => old.change('recipe/a', () => ({ name: 'belly' })),
        () => old.put('recipe/a', { name: 'belly' }),
        () => old.remove('recipe/a'),
      ];
      seen.refused = [];
      for (const attempt of tries)
        seen.refused.push(
          await attempt().then(
            () => 'done',
            ({ name }) => name,
          ),
        );
      const after = await (await openStore({ steps })).get('recipe/a');
      return { ...seen, same: JSON.stringify(before) === JSON.stringify(after) };
    });
    assert.equal(seen.forward[0].v, 3);
    assert.deepEqual(seen.forward[0].data, { name: 'haunch', steps: [] });
    assert.equal(seen.old, undefined);
    // It is sound, so it is neither set aside nor overwritten by a page that is merely old.
    assert.deepEqual(seen.aside, []);
    assert.equal(seen.newer, 1);
    assert.deepEqual(seen.refused, ['Unreadable', 'Unreadable', 'Unreadable']);
    assert.ok(seen.same);
  });
});

describe('storage that does not work', () => {
  test('switched off: the page goes on from memory, says so, and the file has everything', async (t) => {
    const context = await open(t);
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      };
    });
    const page = await visit(context, await hosted(t));
    const seen = await page.evaluate(async () => {
      const store = await openStore();
      await store.put('batch/one', { ticks: 1 });
      const now = await store.change('batch/one', ({ ticks }) => ({ ticks: ticks + 1 }));
      const { text } = await backup.exportAll(store);
      return { kind: store.trouble.kind, message: store.trouble.message, now, file: JSON.parse(text) };
    });
    // Cookies and site data are blocked: that has words of its own.
    assert.equal(seen.kind, 'off');
    assert.match(seen.message, /cookies and site data are blocked/);
    assert.match(seen.message, /export the file/);
    assert.deepEqual(seen.now, { ticks: 2 });
    assert.deepEqual(
      seen.file.records.map(({ key, data }) => [key, data]),
      [['batch/one', { ticks: 2 }]],
    );
  });

  test('full: the change is held, shown, exported, and written when there is room', async (t) => {
    const address = await hosted(t);
    const context = await open(t);
    const page = await visit(context, address);
    const devtools = await context.newCDPSession(page);
    const quota = (quotaSize) =>
      devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(address).origin, quotaSize });

    // Set before the first write: the browser remembers for a while how much room there is.
    await quota(100_000);
    await page.evaluate(async () => {
      window.store = await openStore();
      window.said = [];
      store.onTrouble((trouble) => said.push(trouble?.kind ?? 'over'));
      await store.put('batch/one', { ticks: 1 });
    });
    const held = await page.evaluate(async () => {
      const now = await store.change('batch/one', ({ ticks }) => ({ ticks: ticks + 1, note: 'x'.repeat(9_000_000) }));
      const { text } = await backup.exportAll(store);
      return { ticks: now.ticks, read: (await store.get('batch/one')).ticks, text, said };
    });
    assert.deepEqual([held.ticks, held.read], [2, 2]);
    assert.deepEqual(held.said, ['full']);
    assert.equal(JSON.parse(held.text).records[0].data.ticks, 2);

    await quota(undefined);
    const after = await page.evaluate(async () => {
      const left = await store.retry();
      return { left, said, stored: (await (await openStore()).get('batch/one')).ticks };
    });
    assert.deepEqual(after, { left: null, said: ['full', 'over'], stored: 2 });
  });

  test('an object that cannot be stored is an error, and does not hold up the next change', async (t) => {
    const page = await visit(await open(t), await hosted(t));
    const [name, next] = await page.evaluate(async () => {
      const store = await openStore();
      const error = await store.put('batch/one', { fn: () => {} }).catch((error) => error);
      return [error.name, await store.put('batch/one', { ticks: 1 })];
    });
    // Refused by the rules before the browser refuses it: nothing but texts, numbers and their like is a record.
    assert.equal(name, 'Refused');
    assert.deepEqual(next, { ticks: 1 });
  });
});
