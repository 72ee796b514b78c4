// One batch from the board to the label, and what Today says on the way.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, goTo, kept, startDemo, texts, weighOut } from './steps.mjs';

test('the demo batch from the board to the label, and then put away', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  const today = () => goTo(page, '#/today');
  await today();
  assert.match((await texts(page.locator('.day')))[0], /Weigh out the cure/);

  await weighOut(page, batch);
  for (let left = await page.locator('.line:not(.done) [data-tick]').count(); left > 0; left--) {
    await page.locator('.line:not(.done) [data-tick]').first().check();
    await page.waitForFunction((n) => document.querySelectorAll('.line:not(.done)').length === n, left - 1);
  }
  await page.getByRole('link', { name: 'All in. Go to the cure' }).click();
  await page.getByRole('heading', { name: 'Cure', exact: true }).waitFor();

  await today();
  const [turn] = await texts(page.locator('.day'));
  assert.match(turn, /\d\d:\d\d Turn the pieces/);
  await page.locator('.day .box input').first().click();
  await page.waitForFunction(
    (was) => document.querySelector('.day')?.innerText.replace(/\s+/g, ' ').trim() !== was,
    turn,
  );

  for (const stage of ['cure', 'fire', 'pack']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    for (let left = await page.locator('.line:not(.done) [data-tick]').count(); left > 0; left--) {
      await page.locator('.line:not(.done) [data-tick]').first().check();
      await page.waitForFunction((n) => document.querySelectorAll('.line:not(.done)').length <= n, left - 1);
    }
  }
  await page.getByRole('button', { name: 'Put the batch away' }).click();
  await page.getByText('is put away.').waitFor();
  assert.equal((await kept(page, 'batch/'))[0].data.closed, true);
  await page.getByRole('link', { name: /^Put away/ }).click();
  assert.equal(await page.locator('a.batch').count(), 1);
});
