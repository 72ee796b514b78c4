// A recipe is written, changed, copied and deleted; the starters come once.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { usable } from '../harness.mjs';
import { begin, goTo, kept, settled, texts } from './steps.mjs';

const recipes = async (page) => (await kept(page, 'recipe/')).map(({ data }) => data);

test('a new recipe is written: a cure, a line from the pantry, a step moved; each change stored as it is made', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/recipes');
  await page.getByRole('button', { name: 'Write a new recipe' }).click();
  await page.getByLabel('Name').fill('Snipe, cold board');
  // The tag follows the name once that is stored; until the writer gives another.
  await page.getByLabel('Tag').focus();
  await page.waitForFunction(() => document.activeElement.value === 'SC');
  await page.getByLabel('Tag').fill('sn');
  await page.getByRole('button', { name: 'Add a cure' }).click();
  await page.getByLabel('Aim, going in').fill('140');
  await page.getByLabel('Add something').fill('juni');
  await page.getByRole('button', { name: /^Juniper berries, crushed/ }).click();
  const juniper = page.getByRole('group', { name: /Juniper/ });
  await juniper.getByLabel('How much').fill('0,3');
  await page.getByRole('button', { name: /^Move Juniper.* up/ }).click();
  await page
    .locator('.line-group')
    .first()
    .getByText(/Juniper/)
    .waitFor();

  await page.reload();
  await usable(page);
  const made = (await recipes(page)).find(({ name }) => name === 'Snipe, cold board');
  assert.equal(made.tag, 'SN');
  assert.equal(made.cures[0].aim, '140 ppm');
  assert.deepEqual(made.lines[0].share, { of: 'green_weight', amount: '0.3 %' });
  assert.match(await page.locator('.verdict').innerText(), /In range/);
});

test('something of my own says what its packet names, and until then the card says that it is not known', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await page.getByLabel('Add something').fill('Marsh rub');
  await page.getByRole('button', { name: /^Marsh rub/ }).click();
  const packet = page.getByLabel('Allergens on its bag');
  await packet.waitFor();
  await page.getByRole('link', { name: 'Done' }).click();
  await page.getByText('Allergens not known, read the bag: Marsh rub.').waitFor();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await packet.fill('celery');
  await packet.blur();
  await page.getByRole('link', { name: 'Done' }).click();
  await page.getByText(/Contains, by the allergen list:.*celery/).waitFor();
  assert.equal(await page.getByText('Allergens not known').count(), 0);
  assert.equal((await recipes(page)).find(({ tag }) => tag === 'SD').lines.at(-1).allergens, 'celery');
});

test('a field that does not read is marked and keeps what was typed; the card keeps its last good value', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  const aim = page.getByLabel('Aim, going in');
  await aim.fill('plenty');
  await page.getByLabel('Name').focus();
  await page.locator('.errsum').waitFor();
  assert.equal(await aim.inputValue(), 'plenty');
  assert.equal((await recipes(page)).find(({ tag }) => tag === 'SD').cures[0].aim, '150 ppm');
  await aim.fill('900');
  await page.getByLabel('Name').focus();
  await page.locator('.verdict.stop').waitFor();
  assert.equal(await page.locator('.errsum').count(), 0);
});

test('a rub turned into a brine gets water and back again, with Undo', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await page.getByLabel('Brine, until even').check();
  await page.getByRole('group', { name: 'Water', exact: true }).waitFor();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByRole('group', { name: 'Water', exact: true }).waitFor({ state: 'detached' });
  assert.equal((await recipes(page)).find(({ tag }) => tag === 'SD').method, 'rub');
});

test('copies, and deletes for good: the starters come once', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/recipes');
  await page.getByRole('button', { name: 'Duplicate or delete' }).click();
  await page.getByRole('button', { name: /^Duplicate Cabin/ }).click();
  await page.getByText('Cabin jerky strips, copy is written.').waitFor();
  assert.equal((await recipes(page)).length, 6);
  for (let left = 6; left > 0; left--) {
    await page
      .getByRole('button', { name: /^Delete / })
      .first()
      .click();
    await page.waitForFunction((n) => document.querySelectorAll('.tagged').length === n, left - 1);
  }
  await page.reload();
  await usable(page);
  assert.equal((await recipes(page)).length, 0);
  assert.equal(await page.locator('.tagged').count(), 0);
});

test('a middle that no scale of the field can have is asked about, and stays as it is meant', async (t) => {
  const page = await begin(t, { locale: 'en-US' });
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await page.locator('details.group > summary').filter({ hasText: /Smoke/ }).click();
  const until = page.locator('details.group[open]').getByLabel('Until the coldest piece has');
  await until.fill('71');
  await until.blur();
  await page.locator('.err', { hasText: '“71” can be read two ways.' }).first().waitFor();
  await page.getByRole('button', { name: '71 °C', exact: true }).click();
  await settled(page);
  const smoke = async () =>
    (await recipes(page)).find(({ tag }) => tag === 'SD').steps.find(({ do: act }) => act === 'smoke').until;
  // 71 °C are 159.8 °F.
  assert.equal(await smoke(), '159.8 °F');
  // What can be is not asked about.
  await until.fill('150');
  await until.blur();
  await settled(page);
  assert.equal(await smoke(), '150 °F');
});
