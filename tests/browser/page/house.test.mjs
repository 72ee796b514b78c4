// Stock, memory and help, as a person uses them with a thumb at 390 px.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import { host, open, phone, usable, violations } from '../harness.mjs';
import { begin, goTo, kept, light, place, startBatch, startDemo, texts, tick } from './steps.mjs';

test('what comes in is written down, what is weighed out is taken off, a pack goes to a friend', async (t) => {
  const page = await begin(t, phone);
  await place(page, 'Batches');
  await page.getByRole('link', { name: /^Freezer and stock/ }).tap();
  await page.getByText('Write down what came in').tap();
  await page.getByLabel('How much').fill('much');
  await page.getByRole('button', { name: 'Write it down' }).tap();
  await page.locator('.errsum').waitFor();
  await page.getByLabel('How much').fill('50');
  await page.getByRole('button', { name: 'Write it down' }).tap();
  await page.getByText('Cure no. 1: 50 g left').waitFor();
  const demo = await startDemoFrom(page);
  await goTo(page, `#/batch/${demo}/weigh`);
  await tick(page, 'cure:0');
  await goTo(page, '#/stock');
  // The demo batch is 1480 g: 3.5 g of cure on a 0.1 g scale, as the weigh-out tests hold.
  await page.getByText('Cure no. 1: 46.5 g left').waitFor();
  await page.getByText('Put another pack in').tap();
  await page.getByLabel('What is in it').fill('Duck breast');
  await page.getByLabel('Weight', { exact: true }).fill('203');
  await page.getByLabel(/^Use by/).fill('2020-01-02');
  await page.getByRole('button', { name: 'Put it in the list' }).tap();
  await page.getByText('That day is past').waitFor();
  await page.getByRole('button', { name: /^Given away/ }).tap();
  await page.getByLabel('Who gets it').fill('The neighbour');
  // Nothing goes out of the house before somebody has said who eats it.
  await page.getByRole('button', { name: 'Write it down' }).last().tap();
  await page.getByText('Ask, and say who eats it.').waitFor();
  assert.ok((await kept(page, 'stock/')).every(({ data }) => !data.gone));
  await page.getByLabel('Yes, or not known').check();
  await page.getByText('heat it until it steams all through').waitFor();
  await page.getByRole('button', { name: 'Write it down' }).last().tap();
  await page.getByRole('heading', { name: 'Who got what' }).waitFor();
  const stored = await kept(page, 'stock/');
  assert.equal(stored.length, 2);
  assert.ok(stored.some(({ data }) => data.to === 'The neighbour' && data.gone > 0));
});

async function startDemoFrom(page) {
  await goTo(page, '#/today');
  return startDemo(page);
}

test('what came out stands on the next batch of the recipe, is found by a search, and lies beside another', async (t) => {
  const page = await begin(t, phone);
  const first = await startDemo(page);
  await goTo(page, `#/batch/${first}/pack`);
  await page.getByText('What came out, for next time').tap();
  await page.getByLabel('Weight of all packs').fill('1190');
  await page.getByLabel('Taste, in three words').fill('salt, smoke, marsh');
  await page.getByLabel('What to change').fill('Less juniper');
  await page.getByLabel('What to change').blur();
  await goTo(page, '#/today');
  const second = await startBatch(page, /Saltmarsh/);
  assert.match(await page.locator('.last-time').innerText(), /To change: Less juniper/);
  await goTo(page, '#/past');
  await page.getByLabel('Search').fill('less juniper');
  await page.getByText('1 batch', { exact: true }).waitFor();
  // What is in them is looked through too.
  await page.getByLabel('Search').fill('pepper');
  await page.getByText('2 batches', { exact: true }).waitFor();
  await page.getByLabel('Search').fill('teal nothing');
  await page.getByText('0 batches', { exact: true }).waitFor();
  await page.getByLabel('Search').fill('');
  for (const tag of ['SD2', 'SD']) {
    const choose = page.getByRole('button', { name: new RegExp(`^Side by side.* ${tag}$`) });
    await choose.tap();
    await choose.waitFor({ state: 'detached' });
    // What is chosen pushes the list down; a hand is not so fast.
    await page.waitForTimeout(600);
  }
  const cells = await texts(page.locator('.beside td'));
  assert.ok(cells.includes('salt, smoke, marsh') && cells.includes('1190 g'), cells.join('|'));
  const [record] = (await kept(page, 'batch/')).filter(({ key }) => key === `batch/${first}`);
  assert.deepEqual(record.data.after, { out: '1190 g', taste: 'salt, smoke, marsh', change: 'Less juniper' });
  assert.notEqual(first, second);
});

test('after a start what is put away is counted at once and opens at once', async (t) => {
  const page = await begin(t, phone);
  const id = await startDemo(page);
  await page.evaluate(
    (id) =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target: { result: db } }) => {
          const tx = db.transaction('records', 'readwrite');
          const store = tx.objectStore('records');
          store.get(`batch/${id}`).onsuccess = ({ target: { result } }) => {
            for (let n = 0; n < 120; n++) {
              store.put({ ...result, key: `batch/old-${n}`, data: { ...result.data, name: `Old ${n}`, closed: true } });
            }
          };
          tx.oncomplete = () => (db.close(), done());
        };
      }),
    id,
  );
  // The first start reads all and notes which are put away; the second leaves those for later.
  await page.reload();
  await usable(page);
  await page.waitForFunction(
    () =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target: { result: db } }) => {
          db.transaction('records').objectStore('records').get('meta/away').onsuccess = ({ target: { result } }) => (
            db.close(),
            done(result?.data.ids.length === 120)
          );
        };
      }),
  );
  await page.evaluate(() => (window.requestIdleCallback = () => 0));
  await page.addInitScript(() => (window.requestIdleCallback = () => 0));
  await page.reload();
  await usable(page);
  await goTo(page, '#/today');
  await page.getByText('120 batches finished or thrown away').waitFor();
  await goTo(page, '#/past');
  await page.getByText('120 still being read').waitFor();
  await goTo(page, '#/batch/old-7/pieces');
  await page.getByRole('heading', { name: 'Old 7' }).waitFor();
});

test('a full device loses nothing: it is said, held, and kept once there is room', async (t) => {
  const { address } = await host(t);
  const context = await open(t, phone);
  const page = await context.newPage();
  const devtools = await context.newCDPSession(page);
  const quota = (quotaSize) =>
    devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(address).origin, quotaSize });
  await quota(1);
  await page.goto(address);
  await usable(page);
  await page.getByText('The device has no room left').waitFor();
  await startDemo(page);
  await goTo(page, '#/stock');
  await page.getByText('Write down what came in').tap();
  await page.getByLabel('How much').fill('50');
  await page.getByRole('button', { name: 'Write it down' }).tap();
  await page.getByText('Cure no. 1: 50 g left').waitFor();
  assert.match(await page.locator('.notice.stop').innerText(), /Export the file, make room on the device/);
  assert.equal((await kept(page, 'stock/')).length, 0);
  await quota(undefined);
  await page.getByRole('button', { name: 'Try again' }).tap();
  await page.locator('.notice.stop').waitFor({ state: 'detached' });
  await page.reload();
  await usable(page);
  await page.getByText('Cure no. 1: 50 g left').waitFor();
  assert.equal((await kept(page, 'batch/')).length, 1);
  assert.equal((await kept(page, 'stock/')).length, 1);
});

test('help names the sources of every table, each with its status', async (t) => {
  const page = await begin(t, { ...phone, at: '#/sources' });
  for (const [head, source] of [
    ['How long a pack keeps', 'Texas A&M L-1664, published'],
    ['What a bird or an animal gives', 'Janiszewski 2018, 30 wild birds; live weight from bird guides, published'],
    ['When something went wrong', 'Clemson HGIC 3603, published'],
    ['What it is cooked to', 'CDC, MMWR 73(20), 2024'],
    ['Weights of a level spoon', 'from memory'],
  ]) {
    const list = page.locator('details').filter({ hasText: head });
    await list.locator('summary').tap();
    await list.getByText(source).first().waitFor();
  }
});

test('a job handed to the calendar is taken off it when its batch is put away', async (t) => {
  const page = await begin(t, phone);
  const id = await startDemo(page);
  await goTo(page, `#/batch/${id}/weigh`);
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) {
    await tick(page, of);
  }
  await goTo(page, '#/today');
  const file = async (name) => {
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name }).tap();
    return readFile(await (await waiting).path(), 'utf8');
  };
  const first = await file(/^Put \d+ jobs of all batches in the calendar$/);
  assert.ok(first.includes('BEGIN:VALARM') && !first.includes('CANCELLED'));
  await page.reload();
  await usable(page);
  await goTo(page, `#/batch/${id}/pieces`);
  await page.getByText('About this batch').tap();
  await page.getByRole('button', { name: 'Delete this batch' }).tap();
  await goTo(page, '#/today');
  const second = await file(/^Take \d+ jobs off the calendar$/);
  const uids = (text) => text.match(/^UID:.*$/gm).sort();
  assert.deepEqual(uids(second), uids(first));
  assert.ok(!second.includes('BEGIN:VALARM') && !second.includes('CONFIRMED'));
  const sequence = (text) => Number(/SEQUENCE:(\d+)/.exec(text)[1]);
  assert.ok(sequence(second) >= sequence(first));
  await page.getByRole('button', { name: /off the calendar$/ }).waitFor({ state: 'detached' });
});

test('a bag without a label is found by what it weighs and measures', async (t) => {
  const page = await begin(t, phone);
  await startDemo(page);
  await goTo(page, '#/past');
  await page.getByText('A bag without a label').tap();
  await page.getByLabel('What it weighs').fill('155');
  await page.getByText('1 batch it may be of').waitFor();
  // The demo batch has 4 teal breasts of 152 g, 15 mm thick.
  await page.getByText('Teal, all 4: 152 g').waitFor();
  await page.getByLabel('Thickest part').fill('16');
  await page.getByText('Teal: 15 mm thick').waitFor();
  await page.getByLabel('Thickest part').fill('60');
  await page.getByText('0 batches it may be of').waitFor();
});

for (const lit of ['Day', 'Dark', 'Red']) {
  test(`labels, stock, all batches and help: axe finds nothing in ${lit.toLowerCase()}`, async (t) => {
    const page = await begin(t, phone);
    const id = await startDemo(page);
    await light(page, lit);
    const wide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    for (const at of [`#/batch/${id}/labels`, `#/batch/${id}/pack`, '#/stock', '#/past', '#/help', '#/sources']) {
      await goTo(page, at);
      if (at === '#/past')
        await page
          .getByRole('button', { name: /^Side by side/ })
          .first()
          .tap();
      for (const summary of await page.locator('.leaf summary').all()) await summary.tap();
      assert.deepEqual(await violations(page), [], at);
      assert.ok((await wide()) <= 0, `${at} is ${await wide()} px too wide`);
    }
  });
}
