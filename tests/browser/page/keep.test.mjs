// What is kept: in two tabs, in the exported file, without storage, and after the core has failed.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { trapped } from '../faults.mjs';
import { host, open, single, usable, visit } from '../harness.mjs';
import { begin, goTo, kept, startDemo, texts, weighOut } from './steps.mjs';

test('a tick in one tab shows in the other, and what is being typed there stays', async (t) => {
  const { address } = await host(t);
  const context = await open(t);
  const one = await visit(context, address);
  const batch = await startDemo(one);
  const two = await visit(context, `${address}#/batch/${batch}/pieces`);
  await two.locator('summary', { hasText: 'Add a size' }).click();
  await two.getByLabel('Weight of all of them').fill('12');
  await one.getByText('About this batch').click();
  await one.getByLabel('Name', { exact: true }).fill('Sunday ducks');
  await one.getByLabel('Tag', { exact: true }).focus();
  await two.getByRole('heading', { name: 'Sunday ducks' }).waitFor();
  assert.equal(await two.getByLabel('Weight of all of them').inputValue(), '12');

  await weighOut(one, batch);
  const three = await visit(context, `${address}#/batch/${batch}/weigh`);
  await one.locator('[data-tick="line:0"]').check();
  await three.locator('[data-tick="line:0"]:checked').waitFor();
});

test('a batch that is deleted in one tab says so in the other, and comes back there too', async (t) => {
  const { address } = await host(t);
  const context = await open(t);
  const one = await visit(context, address);
  const batch = await startDemo(one);
  const two = await visit(context, `${address}#/batch/${batch}/weigh`);
  await one.getByText('About this batch').click();
  await one.getByRole('button', { name: 'Delete this batch' }).click();
  await two.getByRole('heading', { name: 'Not here' }).waitFor();
  await one.getByRole('button', { name: 'Undo', exact: true }).click();
  await two.locator('.tally').first().waitFor();
});

test('everything goes out as one file and comes back into an empty browser', async (t) => {
  const page = await begin(t);
  await startDemo(page);
  await goTo(page, '#/keep');
  await page.getByText('Nothing has been exported from this browser yet.').waitFor();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export everything' }).click(),
  ]);
  const file = readFileSync(await download.path());
  await page.getByText('Last export:').waitFor();

  const other = await begin(t, { at: '#/keep' });
  await other
    .getByLabel('Import a file')
    .setInputFiles({ name: download.suggestedFilename(), mimeType: 'application/json', buffer: file });
  await other.getByRole('heading', { name: 'What is in the file' }).waitFor();
  assert.match((await texts(other.locator('.rows'))).join(' '), /Batch SD Saltmarsh duck breasts, .*?: new here/);
  assert.deepEqual(await kept(other, 'batch/'), [], 'nothing is stored before the person says so');
  await other.getByRole('button', { name: 'Save what is chosen' }).click();
  await other.getByText('and 1 batch').waitFor();
  assert.deepEqual((await kept(other, 'batch/'))[0].data, (await kept(page, 'batch/'))[0].data);
});

test('a broken file is refused in words, and nothing changes', async (t) => {
  const page = await begin(t, { at: '#/keep' });
  const before = JSON.stringify(await kept(page, ''));
  const input = page.getByLabel('Import a file');
  for (const [text, says] of [
    ['{"format":"cure-reckoner-backup","v":1,"rec', /cut short or damaged/],
    ['{"shopping":["salt"]}', /not a file that Cure Reckoner exported/],
  ]) {
    await input.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.getByText(says).first().waitFor();
  }
  const bad = { key: 'batch/b1', v: 1, at: new Date().toISOString(), data: { tag: 7 } };
  const file = JSON.stringify({ format: 'cure-reckoner-backup', v: 1, made: '', records: [bad], aside: [], sum: null });
  await input.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await page.getByText('cannot be read, since').waitFor();
  assert.equal(JSON.stringify(await kept(page, '')), before);
});

test('a record that cannot be read is set aside and named', async (t) => {
  const page = await begin(t);
  await startDemo(page);
  await page.evaluate(
    () =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target }) => {
          const records = target.result.transaction('records', 'readwrite').objectStore('records');
          const at = new Date().toISOString();
          records.put({ key: 'batch/torn', v: 1, at, data: { tag: 'XX' } }).onsuccess = () => done();
          target.result.close();
        };
      }),
  );
  await page.reload();
  await usable(page);
  await goTo(page, '#/keep');
  // By its kind and tag: a key says nothing to a person.
  const [row] = await texts(page.locator('.rows'));
  assert.match(row, /^Batch XX/);
  assert.doesNotMatch(row, /batch\/|Error|`/);
  assert.equal((await kept(page, 'batch/')).length, 1);
});

test('with storage switched off the page says so and reckons as usual', async (t) => {
  const { address } = await host(t);
  const context = await open(t);
  await context.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
  const page = await visit(context, address);
  await page.getByText('This browser keeps nothing for this page').waitFor();
  const batch = await startDemo(page);
  await weighOut(page, batch);
  await page.locator('[data-tick="cure:0"]').check();
  await page.getByRole('button', { name: '29.3 g is in the bowl' }).waitFor();
});

test('after the core has failed no figure stays; Work it out again brings them back', async (t) => {
  const { address } = await host(t);
  const context = await open(t);
  await context.addInitScript(trapped);
  const page = await visit(context, address);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  await page.evaluate(() => (globalThis.trap = true));
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await page.getByText('No figures').waitFor();
  assert.equal(await page.locator('.num, .strip-ppm').count(), 0);
  await page.evaluate(() => (globalThis.trap = false));
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await page.locator('.line .add').first().waitFor();
});

test('the one file from a memory stick: weighs, keeps, and its link says what a friend needs', async (t) => {
  const context = await open(t);
  const page = await visit(context, single);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  await page.locator('[data-tick="cure:0"]').check();
  await page.locator('.stamp').waitFor();
  await page.reload();
  await usable(page);
  await page.locator('[data-tick="cure:0"]:checked').waitFor();
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Fallow/ }).click();
  const link = await page.locator('#link-text').innerText();
  assert.match(link, /^cure-reckoner\.html#r1\./);
  await page.getByText('send the file and the text below').waitFor();
});
