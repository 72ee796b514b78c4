// Ten thousand batches, eighteen megabytes of junk, two thousand packs: the page goes on drawing, and can be stopped.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { scratch, usable } from '../harness.mjs';
import { begin, goTo, kept } from './steps.mjs';

const MANY = Number(process.env.BATCHES ?? 2000);
const reckon = fileURLToPath(new URL('../../../target/release/examples/reckon', import.meta.url));
const { demo } = JSON.parse(execFileSync(reckon, { input: '{"starters":{}}', encoding: 'utf8' })).ok;
const at = '2026-11-14T18:20:00.000Z';

function fileOf(t, records, more = {}) {
  const path = join(scratch(t), 'cure-reckoner-2026-11-14.json');
  writeFileSync(
    path,
    JSON.stringify({ format: 'cure-reckoner-backup', v: 1, made: at, records, aside: [], sum: null, ...more }),
  );
  return path;
}

const many = (n) =>
  Array.from({ length: n }, (_, k) => ({
    key: `batch/0mhzk3f1c-${String(k).padStart(14, '0')}`,
    v: 1,
    at,
    data: { ...demo, closed: true },
  }));

/** In the page: the longest time in which nothing could be drawn, and how often it was. */
function watch() {
  window.frames2 = { longest: 0, drawn: 0 };
  let last = performance.now();
  const tick = () => {
    const now = performance.now();
    frames2.longest = Math.max(frames2.longest, now - last);
    frames2.drawn++;
    last = now;
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
}

test(`a file of ${MANY} batches is read in slices, says how far it is, and is stored`, async (t) => {
  const page = await begin(t, { at: '#/keep' });
  await page.evaluate(watch);
  await page.getByLabel('Import a file').setInputFiles(fileOf(t, many(MANY)));
  await page.getByText(/^Reading the file: \d+ %/).waitFor();
  await page.getByRole('heading', { name: 'What is in the file' }).waitFor({ timeout: 120_000 });
  const reading = await page.evaluate(() => ({ ...frames2 }));
  assert.ok((await page.locator('.rows li').count()) < 200, 'what is out of sight is not drawn');
  await page.getByRole('button', { name: 'Save what is chosen' }).click();
  await page.getByText(`${MANY} records saved.`).first().waitFor({ timeout: 120_000 });
  const storing = await page.evaluate(() => ({ ...frames2 }));
  assert.equal((await kept(page, 'batch/')).length, MANY);
  t.diagnostic(
    `longest without a frame: reading ${Math.round(reading.longest)} ms, all ${Math.round(storing.longest)} ms`,
  );
  // In one piece it would be a single frame.
  assert.ok(reading.drawn > MANY / 200, `${reading.drawn} frames while it was read`);

  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 120_000 }),
    page.getByRole('button', { name: 'Export everything' }).click(),
  ]);
  const file = JSON.parse(readFileSync(await download.path(), 'utf8'));
  assert.equal(file.records.filter(({ key }) => key.startsWith('batch/')).length, MANY);
  await page.getByText(`The file holds ${MANY} batches of ${MANY}`).first().waitFor();
});

test('the reading of a file can be cancelled, and nothing is changed', async (t) => {
  const page = await begin(t, { at: '#/keep' });
  const before = JSON.stringify(await kept(page, ''));
  await page.getByLabel('Import a file').setInputFiles(fileOf(t, many(MANY)));
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByText('Nothing was changed.').first().waitFor();
  assert.equal(await page.getByRole('heading', { name: 'What is in the file' }).count(), 0);
  assert.equal(JSON.stringify(await kept(page, '')), before);
});

test('eighteen megabytes of junk are refused or left out, in slices', async (t) => {
  const page = await begin(t, { at: '#/keep' });
  const megabytes = 'x'.repeat(18_000_000);
  for (const [path, says] of [
    [fileOf(t, [], { junk: megabytes }), /0 records\s+new\s+here/],
    [fileOf(t, [{ key: 'batch/x', v: 1, at, data: { name: megabytes } }]), /1\s+that\s+cannot\s+be\s+read/],
    [fileOf(t, [[[megabytes]], '['.repeat(100_000)]), /2\s+that\s+cannot\s+be\s+read/],
  ]) {
    await page.evaluate(watch);
    await page.getByLabel('Import a file').setInputFiles(path);
    await page.getByText(says).first().waitFor({ timeout: 60_000 });
    const { longest, drawn } = await page.evaluate(() => frames2);
    t.diagnostic(`longest without a frame: ${Math.round(longest)} ms, ${drawn} frames`);
    await page.getByRole('button', { name: 'Leave all as it is' }).click();
  }
  const cut = join(scratch(t), 'cut.json');
  writeFileSync(cut, readFileSync(fileOf(t, many(500)), 'utf8').slice(0, -500));
  await page.getByLabel('Import a file').setInputFiles(cut);
  await page.getByText('cut short or damaged').first().waitFor();
});

test('with two thousand packs a key on Stock asks nothing again, and what is out of sight is not drawn', async (t) => {
  const page = await begin(t);
  const packs = Array.from({ length: 2000 }, (_, k) => ({
    key: `stock/0mhzk3f1f-${String(k).padStart(14, '0')}`,
    v: 1,
    at,
    data: {
      item: 'pack',
      name: `Duck ${k}`,
      weight: '203 g',
      at: Date.parse(at),
      ...(k % 2 ? { to: 'A friend', gone: Date.parse(at) } : {}),
    },
  }));
  await page.evaluate(
    (packs) =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target }) => {
          const tx = target.result.transaction('records', 'readwrite');
          for (const pack of packs) tx.objectStore('records').put(pack);
          tx.oncomplete = () => (target.result.close(), done());
        };
      }),
    packs,
  );
  await page.reload();
  await usable(page);
  await goTo(page, '#/stock');
  await page.getByText('Put another pack in').click();
  assert.ok((await page.locator('.days li').count()) <= 80);
  const times = await page.evaluate(async () => {
    const field = document.getElementById('packed-name');
    const found = [];
    for (const letter of 'a goose of the autumn') {
      const before = performance.now();
      field.value += letter;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      found.push(performance.now() - before);
      await new Promise((done) => requestAnimationFrame(done));
    }
    return found.sort((a, b) => a - b);
  });
  t.diagnostic(`a key takes ${times[10].toFixed(1)} ms, at most ${times.at(-1).toFixed(1)}`);
  await page
    .getByRole('button', { name: /^Show \d+ more$/ })
    .first()
    .click();
  assert.ok((await page.locator('.days li').count()) >= 1000);
});
