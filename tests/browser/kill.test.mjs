// The browser is killed 50 ms after a change, again and again. Every change is there on reopening.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { barePage } from './bare.mjs';
import { cutPower, open, pause, scratch, visit } from './harness.mjs';

const TIMES = 20;

for (const place of ['from a host', 'from a file']) {
  test(`${TIMES} kills lose no change, ${place}`, async (t) => {
    const address = (await barePage(t))[place];
    const profile = scratch(t);
    for (let done = 0; done <= TIMES; done++) {
      const context = await open(t, { profile });
      const page = await visit(context, address);
      const kept = await page.evaluate(async () => {
        window.store = await openStore();
        return (await store.get('batch/one'))?.ticks ?? [];
      });
      assert.deepEqual(kept, [...Array(done).keys()], `after ${done} kills`);
      await page.evaluate((tick) => {
        store.change('batch/one', (data) => ({ ticks: [...(data?.ticks ?? []), tick] }));
      }, done);
      await pause(50);
      await cutPower(context, profile);
    }
  });
}
