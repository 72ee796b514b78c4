// The store is deleted, cleared, raised, cut off or full under an open page: what it shows stays, goes out whole as a
// file, and is written back.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { harm } from './faults.mjs';
import { host, open, usable, visit } from './harness.mjs';
import { goTo, kept, startDemo } from './page/steps.mjs';

const TIMES = Number(process.env.TIMES ?? 2);

/** The page with the demo batch, and another of the same origin that does the harm. */
async function start(t, before = () => {}) {
  const { address } = await host(t);
  const context = await open(t);
  await before(context);
  const page = await visit(context, address);
  const batch = await startDemo(page);
  const other = await context.newPage();
  await other.goto(`${address}manifest.webmanifest`);
  return { address, context, page, other, batch };
}

/** The file that the page hands out. */
async function exported(page) {
  await goTo(page, '#/keep');
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 10_000 }),
    page.getByRole('button', { name: 'Export everything' }).click(),
  ]);
  return JSON.parse(readFileSync(await download.path(), 'utf8'));
}

const batches = (file) => file.records.filter(({ key }) => key.startsWith('batch/'));

for (const what of ['delete', 'clear', 'site data']) {
  test(`${TIMES} times the records are gone (${what}): told, shown, exported, put back`, async (t) => {
    for (let n = 0; n < TIMES; n++) {
      const { address, context, page, other, batch } = await start(t);
      const before = (await kept(page, '')).filter(({ key }) => !key.startsWith('meta/'));
      if (what === 'site data') {
        const devtools = await context.newCDPSession(other);
        await devtools.send('Storage.clearDataForOrigin', {
          origin: new URL(address).origin,
          storageTypes: 'indexeddb',
        });
      } else await other.evaluate(harm, what);

      // A change afterwards is shown and held.
      await goTo(page, `#/batch/${batch}/pieces`);
      await page.getByText('About this batch').click();
      await page.getByLabel('Name', { exact: true }).fill('Sunday ducks');
      await page.getByLabel('Tag', { exact: true }).focus();
      await page.getByRole('heading', { name: 'Sunday ducks' }).waitFor();
      await page.getByText('site data was cleared').first().waitFor();
      const file = await exported(page);
      assert.deepEqual(file.records.map(({ key }) => key).sort(), before.map(({ key }) => key).sort());
      assert.equal(batches(file)[0].data.name, 'Sunday ducks');

      await page.getByRole('button', { name: 'Put it back' }).first().click();
      await page.getByText('site data was cleared').first().waitFor({ state: 'detached' });
      await page.goto(address + `#/batch/${batch}/pieces`);
      await page.reload();
      await usable(page);
      await page.getByRole('heading', { name: 'Sunday ducks' }).waitFor();
      const after = (await kept(page, '')).filter(({ key }) => !key.startsWith('meta/'));
      assert.deepEqual(
        after.map(({ key }) => key),
        before.map(({ key }) => key),
      );
      await context.close();
    }
  });
}

test('a newer page has laid the database out anew: this one is old, says so, shows and exports what there is', async (t) => {
  const { page, other, batch } = await start(t);
  await other.evaluate(harm, 'raise');
  const stored = JSON.stringify(await kept(other, ''));
  await page.getByText('This tab is old').first().waitFor();
  await goTo(page, `#/batch/${batch}/weigh`);
  await page.locator('.tally').first().waitFor();
  await page.locator('[data-tick="line:0"]').check();
  await page.locator('[data-tick="line:0"]:checked').waitFor();
  const file = await exported(page);
  assert.equal(batches(file).length, 1);
  assert.deepEqual(
    batches(file)[0]
      .data.ticks.map(({ of }) => of)
      .includes('line:0'),
    true,
  );
  // It touches nothing that is the newer page's now.
  assert.equal(JSON.stringify(await kept(other, '')), stored);
  // Opened anew it is still old, and reads what it can.
  await page.reload();
  await usable(page);
  await page.getByText('This tab is old').first().waitFor();
  await goTo(page, `#/batch/${batch}/pieces`);
  await page.locator('.total').waitFor();
});

test(`${TIMES * 5} dead connections are replaced without a word, and nothing is lost`, async (t) => {
  const { page, batch } = await start(t, (context) =>
    context.addInitScript(() => {
      window.connections = [];
      const open = IDBFactory.prototype.open;
      IDBFactory.prototype.open = function (...args) {
        const request = open.apply(this, args);
        request.addEventListener('success', () => window.connections.push(request.result));
        return request;
      };
    }),
  );
  await goTo(page, `#/batch/${batch}/pieces`);
  await page.getByText('About this batch').click();
  for (let n = 0; n < TIMES * 5; n++) {
    await page.evaluate(() => window.connections.splice(0).forEach((db) => db.close()));
    await page.getByLabel('Name', { exact: true }).fill(`Ducks ${n}`);
    await page.getByLabel('Tag', { exact: true }).focus();
    await page.getByRole('heading', { name: `Ducks ${n}`, exact: true }).waitFor();
    assert.equal((await kept(page, 'batch/'))[0].data.name, `Ducks ${n}`);
    assert.equal(await page.locator('.notice.stop').count(), 0);
  }
});

test('a store that cannot be read is no empty one: shown, not exported short, and read again by itself', async (t) => {
  const { address, context, page } = await start(t);
  await page.close();
  await context.addInitScript(() => {
    const getAll = IDBObjectStore.prototype.getAll;
    IDBObjectStore.prototype.getAll = function (...args) {
      if (window.mended) return getAll.apply(this, args);
      throw new DOMException('Internal error.', 'UnknownError');
    };
  });
  const blind = await visit(context, `${address}#/keep`);
  await blind.getByText('could not read or save').first().waitFor();
  const stored = JSON.stringify((await kept2(blind)).sort());
  let downloads = 0;
  blind.on('download', () => downloads++);
  await blind.getByRole('button', { name: 'Export everything' }).click();
  await blind.getByText('No file made: the browser gave nothing').first().waitFor();
  assert.equal(downloads, 0);
  assert.equal(
    JSON.stringify((await kept2(blind)).sort()),
    stored,
    'no starter recipes are put into a store that was not read',
  );
  await blind.evaluate(() => (window.mended = true));
  await blind.getByText('and 1 batch').waitFor({ timeout: 10_000 });
  await blind.locator('.notice.stop').waitFor({ state: 'detached' });
  assert.equal(JSON.stringify((await kept2(blind)).sort()), stored);
});

/** Keys of the records, by a way that the fault above does not touch. */
function kept2(page) {
  return page.evaluate(
    () =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target }) => {
          target.result.transaction('records').objectStore('records').getAllKeys().onsuccess = (found) => {
            target.result.close();
            done(found.target.result.filter((key) => !/^meta.(away|draft|last)/.test(key)));
          };
        };
      }),
  );
}

test('nothing in the store keeps the page from starting', async (t) => {
  const { address, page, other } = await start(t);
  await page.close();
  await other.evaluate(
    () =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target }) => {
          const tx = target.result.transaction('records', 'readwrite');
          const at = new Date().toISOString();
          const round = {};
          round.round = round;
          const bad = {
            'meta/away': { ids: 7 },
            'meta/begun': 'yes',
            'meta/calendar': { jobs: [[1]] },
            'meta/last-export': { made: 3n },
            'meta/draft-a-f': { texts: 'no' },
            'meta/draft-b-f': round,
            'meta/mark': { mark: [] },
            'meta/of-a-later-page': { anything: 1 },
            'batch/round': round,
            'batch/big': { name: 1n },
            'recipe/map': new Map([[1, 2]]),
            'stock/no': null,
            settings: { units: 'furlongs' },
            'plans/later': { v: 9 },
            'batch/later': { tag: 'XX' },
          };
          for (const [key, data] of Object.entries(bad)) {
            tx.objectStore('records').put({ key, v: key === 'batch/later' ? 99 : 1, at, data });
          }
          tx.objectStore('records').put({ key: 7 });
          tx.oncomplete = () => (target.result.close(), done());
        };
      }),
  );
  const after = await visit(await other.context(), address);
  await after.getByText('This tab is old').first().waitFor();
  await goTo(after, '#/keep');
  await after.getByText('and 1 batch').waitFor();
  // No key and no code on the screen.
  assert.doesNotMatch(await after.locator('main').innerText(), /batch\/|recipe\/|meta\/|\[object|undefined|NaN/);
  const left = await kept2(after);
  for (const key of ['plans/later', 'batch/later', 'meta/of-a-later-page', 7])
    assert.ok(left.includes(key), `${key} is left alone`);
});

test('a page that cannot start hands out what is stored', async (t) => {
  const { address, context, page, batch } = await start(t);
  await page.close();
  await context.addInitScript(() => {
    WebAssembly.instantiateStreaming = () => Promise.reject(new Error('no core'));
    WebAssembly.instantiate = () => Promise.reject(new Error('no core'));
  });
  const dead = await context.newPage();
  await dead.goto(address);
  await dead.getByRole('heading', { name: 'did not start' }).waitFor();
  assert.doesNotMatch(await dead.locator('body').innerText(), /no core|Error/);
  const [download] = await Promise.all([
    dead.waitForEvent('download'),
    dead.getByRole('button', { name: 'Export the file' }).click(),
  ]);
  const file = JSON.parse(readFileSync(await download.path(), 'utf8'));
  assert.deepEqual(
    batches(file).map(({ key }) => key),
    [`batch/${batch}`],
  );
});
