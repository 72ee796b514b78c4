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
  // The thin ones come out first, by the cure clock; then the turns.
  const [thin, turn] = await texts(page.locator('.day'));
  assert.match(thin, /\d\d:\d\d Take out 4 Teal/);
  assert.match(turn, /\d\d:\d\d Turn the pieces/);
  // Hours off: they are opened, not ticked.
  assert.equal(await page.locator('.day .box input').count(), 0);

  const boxes = page.locator('.line [data-tick]');
  const open = page.locator('.line [data-tick]:not(:checked)');
  await goTo(page, `#/batch/${batch}/cure`);
  const before = await open.count();
  await page.locator('[data-tick="turn:0:0"]').click();
  await page.getByText(/It is due in 1[12](\.\d)? h\. Now all the same\?/).waitFor();
  await page.getByRole('button', { name: 'Not yet' }).click();
  assert.equal(await open.count(), before, 'what is early is asked about, and No is no');

  for (const stage of ['cure', 'fire', 'pack']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    for (let left = await open.count(); left > 0; left = await open.count()) {
      await open.first().click();
      const asked = page.getByRole('button', { name: 'Yes, now' });
      if (await asked.count()) await asked.click();
      await page.waitForFunction((n) => document.querySelectorAll('.line [data-tick]:not(:checked)').length < n, left);
    }
    assert.ok(await boxes.count());
    if (stage !== 'pack') await page.getByRole('link', { name: /^Go to (the fire|pack)$/ }).waitFor();
  }
  await page.getByRole('button', { name: 'Put the batch away' }).click();
  await page.getByText('is put away.').waitFor();
  assert.equal((await kept(page, 'batch/'))[0].data.closed, true);
  await page.getByRole('link', { name: /^Put away/ }).click();
  assert.equal(await page.locator('a.batch').count(), 1);
});
