// What is typed in: wrong, readable two ways, in other units, and taken back.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  addPieces,
  begin,
  goTo,
  kept,
  openWhy,
  setting,
  settled,
  startBatch,
  startDemo,
  texts,
  weighOut,
} from './steps.mjs';

test('what does not read is said on top and at the field in the same words, and nothing is stored', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '0', weight: 'heavy', thickness: '26 kg' });
  const summary = page.locator('.errsum');
  await summary.waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.className), 'errsum');
  const said = await texts(summary.locator('li'));
  assert.equal(said.length, 3);
  assert.deepEqual(await texts(page.locator('.field .err')), said);
  assert.equal(await page.getByLabel('Weight of all of them').getAttribute('aria-invalid'), 'true');
  assert.equal(await page.getByLabel('Weight of all of them').inputValue(), 'heavy');
  await summary.getByRole('link').nth(1).click();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-weight');
  assert.deepEqual((await kept(page, 'batch/'))[0].data.pieces, []);
});

test('what it is must be chosen, since the cautions go by the species', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { weight: '1480' });
  assert.deepEqual(await texts(page.locator('.errsum li')), ['Choose what it is from the list.']);
});

test('a number that reads two ways is asked about, with both readings to choose from', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '16', weight: '1,480' });
  const choices = page.getByRole('group', { name: 'Which is meant' }).getByRole('button');
  assert.deepEqual(await texts(choices), ['1480 g', '1.48 g']);
  await choices.first().click();
  await page.getByRole('button', { name: 'Add to the batch' }).click();
  await page.locator('.total').waitFor();
  assert.match(await page.locator('.total').innerText(), /1480\s*g/);
});

test('pounds and ounces are kept as typed; other units change what is shown and nothing that is stored', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Wild boar belly/);
  await addPieces(page, { cut: 'Wild boar belly', weight: '7 lb 3 oz', thickness: '1 1/4 in' });
  await page.locator('.total').waitFor();
  assert.match(await page.locator('.total').innerText(), /3260\s*g/);
  const before = JSON.stringify((await kept(page, 'batch/'))[0].data);
  assert.match(before, /7 lb 3 oz/);

  await setting(page, 'US');
  await goTo(page, `#/batch/${batch}/pieces`);
  // The new units are stored before they are drawn.
  await page.locator('.total', { hasText: /7\s*lb\s*3/ }).waitFor();
  await weighOut(page, batch);
  assert.equal(JSON.stringify((await kept(page, 'batch/'))[0].data), before);
});

test('once a size is stored the form for another is shut, until it is asked for', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  const form = page.getByRole('button', { name: 'Add to the batch' });
  await addPieces(page, { cut: 'Mallard breast', count: '16', weight: '1480' });
  await page.locator('.total').waitFor();
  await form.waitFor({ state: 'hidden' });
  await addPieces(page, { cut: 'Teal breast', count: '4', weight: '240' });
  await page.locator('.tbl tbody tr').nth(1).waitFor();
  await form.waitFor({ state: 'hidden' });
  await page.getByRole('button', { name: /^Change .*Teal/ }).click();
  await page.getByLabel('How many pieces').fill('5');
  await page.getByRole('button', { name: 'Save the change' }).click();
  await form.waitFor({ state: 'hidden' });
  await page.getByRole('link', { name: /Weigh/ }).first().waitFor();
});

test('without a weight there is a range with its source, and nothing can be ticked', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '16' });
  const [row] = await texts(page.locator('.tbl tbody tr'));
  assert.match(row, /\d+ – \d+ g not weighed yet/);
  await openWhy(page);
  assert.match((await texts(page.locator('.why .src')))[0], /^Mallard breast: .*memory/);
  await weighOut(page, batch);
  await page.getByText('Not all is weighed').waitFor();
  assert.equal(await page.locator('[data-tick]:enabled').count(), 0);
});

test('a size class that was removed and a batch that was deleted come back with Undo', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await page.getByRole('button', { name: /^Change .*Teal/ }).click();
  await page.getByRole('button', { name: 'Remove it' }).click();
  await page.getByText('The size is removed.').waitFor();
  assert.equal((await kept(page, 'batch/'))[0].data.pieces.length, 2);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.locator('.tbl tbody tr').nth(2).waitFor();

  // Two removed, two taken back, the last first.
  const rows = () => texts(page.locator('.tbl tbody tr'));
  const all = await rows();
  for (const left of [2, 1]) {
    await page
      .getByRole('button', { name: /^Change/ })
      .last()
      .click();
    await page.getByRole('button', { name: 'Remove it' }).click();
    await page.waitForFunction((n) => document.querySelectorAll('.tbl tbody tr').length === n, left);
  }
  for (const back of [2, 3]) {
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.waitForFunction((n) => document.querySelectorAll('.tbl tbody tr').length === n, back);
  }
  assert.deepEqual(await rows(), all);

  await page.getByText('About this batch').click();
  await page.getByRole('button', { name: 'Delete this batch' }).click();
  await page.getByText('is deleted.').waitFor();
  assert.deepEqual(await kept(page, 'batch/'), []);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.locator('a.batch').waitFor();
  assert.equal((await kept(page, 'batch/'))[0].key, `batch/${batch}`);
});

test('sizes that do not go together are told at once where it stands, after the one that makes them so', async (t) => {
  for (const viewport of [
    { width: 390, height: 664 },
    { width: 844, height: 390 },
  ]) {
    const page = await begin(t, { viewport, locale: 'en-US', timezoneId: 'America/New_York' });
    await startBatch(page, /Saltmarsh/);
    await addPieces(page, { cut: 'Mallard breast', count: '8', weight: '2 lb', thickness: '1 in' });
    await page.locator('#class-0').waitFor();
    await addPieces(page, { cut: 'Teal breast', count: '4', weight: '5 oz', thickness: '0.5 in' });
    const warning = page.locator('#mixed');
    await warning.waitFor();
    await page.waitForFunction(() => document.getElementById('spoken').textContent.includes('Mixed sizes'));
    const { top, bottom, foot, head } = await warning.evaluate((one) => ({
      ...one.getBoundingClientRect().toJSON(),
      head: document.querySelector('.masthead').getBoundingClientRect().bottom,
      foot: innerWidth > innerHeight ? innerHeight : document.querySelector('.pin').getBoundingClientRect().top,
    }));
    assert.ok(top >= head - 1 && bottom <= foot + 1, JSON.stringify({ top, bottom, head, foot }));
  }
});

test('a thickness that was stepped to in inches stands in inches in the form, and stays as it was', async (t) => {
  const page = await begin(t, { locale: 'en-US', timezoneId: 'America/New_York' });
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  for (let n = 0; n < 4; n += 1) await page.getByRole('button', { name: 'Thicker' }).tap();
  await page.getByRole('button', { name: 'Save as a batch' }).tap();
  await page.waitForURL(/#\/batch\/.*\/weigh$/);
  const id = /batch\/([^/]+)/.exec(page.url())[1];
  await goTo(page, `#/batch/${id}/pieces`);
  await page.getByRole('button', { name: /^Change / }).tap();
  assert.equal(await page.getByLabel('Thickest part').inputValue(), '1.5');
  await page.getByRole('button', { name: 'Save the change' }).tap();
  await settled(page);
  const [{ data }] = await kept(page, 'batch/');
  assert.equal(data.pieces[0].thickness, '38.1 mm');
});

test('a number of pieces that was reckoned goes by the weight that is typed now, until somebody counts', async (t) => {
  const page = await begin(t, { locale: 'en-GB', timezoneId: 'Europe/London' });
  await page.locator('#f-weight').fill('3200');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  await page.getByRole('button', { name: 'Save as a batch' }).click();
  await page.waitForURL(/#\/batch\/.*\/weigh$/);
  await settled(page);
  const saved = async () => (await kept(page, 'batch/'))[0].data.pieces[0];
  const first = (await saved()).count;
  const change = async (weight, count) => {
    await goTo(page, page.url().replace(/^.*#/, '#').replace(/\w+$/, 'pieces'));
    await page.getByRole('button', { name: /^Change / }).click();
    await page.getByLabel('Weight of all of them').fill(weight);
    if (count) await page.getByLabel('How many pieces').fill(count);
    await page.getByRole('button', { name: 'Save the change' }).click();
    await settled(page);
  };
  // The same weight apiece: five eighths of the meat are five eighths of the pieces.
  await change('2000 g');
  assert.equal((await saved()).count, Math.round((first * 2000) / 3200));
  assert.equal((await saved()).about, true);
  await change('2000 g', '20');
  await change('1000 g');
  assert.equal((await saved()).count, 20, 'what was counted stays');
});
