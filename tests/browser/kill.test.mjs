// The browser is killed as soon as a tick is shown as stored, again and again. The batch and every tick are there on
// reopening.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { cutPower, host, open, scratch, single, visit } from './harness.mjs';
import { tick } from './page/steps.mjs';

const TIMES = Number(process.env.TIMES ?? 20);
const reckon = fileURLToPath(new URL('../../target/release/examples/reckon', import.meta.url));

const places = { 'from a host': async (t) => (await host(t)).address, 'from a file': async () => single };

for (const [place, address] of Object.entries(places)) {
  test(`${TIMES} kills in the middle of a weigh-out lose no tick, ${place}`, async (t) => {
    const page = await address(t);
    const profile = scratch(t);
    const before = await open(t, { profile });
    const lines = await putDemoBatches(await visit(before, page));
    await before.close();

    for (let done = 0; done <= TIMES; done++) {
      const context = await open(t, { profile });
      const weighing = await visit(context, `${page}#/batch/demo-${batchOf(done, lines)}/weigh`);
      const ticks = [];
      for (let batch = 0; batch <= batchOf(done, lines); batch++) ticks.push(...(await ticksOf(weighing, batch)));
      assert.equal(ticks.length, done, `after ${done} kills: ${ticks}`);
      assert.equal(new Set(ticks).size, done);

      await tick(weighing, await weighing.locator('[data-tick]:not(:checked)').first().getAttribute('data-tick'));
      await cutPower(context, profile);
    }
  });
}

/** Each batch has a few lines to tick, so the next one is taken when all are. */
function batchOf(done, lines) {
  return Math.floor(done / lines);
}

/** Puts as many demo batches into the page's records as there are kills to come; gives the lines of each. */
async function putDemoBatches(page) {
  const { demo } = JSON.parse(execFileSync(reckon, { input: '{"starters":{}}', encoding: 'utf8' })).ok;
  const lines = demo.recipe.cures.length + demo.recipe.lines.length;
  const copies = Math.ceil((TIMES + 1) / lines);
  await page.evaluate(
    async ([data, copies]) => {
      const db = await new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = (event) => done(event.target.result);
      });
      const tx = db.transaction('records', 'readwrite', { durability: 'strict' });
      const at = new Date().toISOString();
      for (let n = 0; n < copies; n++) tx.objectStore('records').put({ key: `batch/demo-${n}`, v: 1, at, data });
      await new Promise((done) => (tx.oncomplete = done));
      db.close();
    },
    [{ ...demo, ticks: [] }, copies],
  );
  return lines;
}

/** The ticks that the weigh-out of a batch shows. */
async function ticksOf(page, batch) {
  await page.evaluate((batch) => (location.hash = `#/batch/demo-${batch}/weigh`), batch);
  const boxes = page.locator(`[data-tick][id^="t-demo-${batch}-"]`);
  await boxes.first().waitFor();
  return boxes
    .and(page.locator(':checked'))
    .evaluateAll((ticked, batch) => ticked.map((box) => `${batch} ${box.dataset.tick}`), batch);
}
