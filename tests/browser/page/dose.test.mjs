// Check a dose: what is already on the meat.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, goTo, texts } from './steps.mjs';

test('says what is missing, then gives the verdict as it is typed, and more water changes it', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/dose');
  assert.match(await page.locator('.verdict').innerText(), /Cannot say yet/);
  await page.getByRole('button', { name: 'Check it' }).click();
  // Nothing is assumed: neither the meat, nor the packet, nor what went in.
  assert.equal((await texts(page.locator('.errsum li'))).length, 3);

  await page.getByLabel('Meat, green weight').fill('1480');
  await page.getByLabel('Nitrite printed on the packet').fill('6.25');
  await page.getByLabel('grams').check();
  await page.getByLabel('I already put in').fill('3.5');
  assert.match(await page.locator('.verdict').innerText(), /In range/);
  await page.getByLabel('tablespoon', { exact: true }).check();
  await page.getByLabel('I already put in').fill('1');
  assert.match(await page.locator('.verdict').innerText(), /Stop: over the limit/);
  assert.match((await texts(page.locator('.steps li')))[0], /Do not cook it or taste it/);

  await page.getByLabel('In a brine').check();
  assert.match(await page.locator('.verdict').innerText(), /Cannot say yet/);
  await page.getByLabel('Water in the brine').fill('8 kg');
  assert.doesNotMatch(await page.locator('.verdict').innerText(), /Cannot say yet|Stop: over/);
});

test('an unknown packet is never blessed', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await page.getByLabel('Meat, green weight').fill('1480');
  await page.getByLabel('I do not know').check();
  await page.getByLabel('grams').check();
  await page.getByLabel('I already put in').fill('3.5');
  assert.match(await page.locator('.verdict').innerText(), /Cannot say/);
  assert.equal(await page.locator('.verdict.ok').count(), 0);
});
