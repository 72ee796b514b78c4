// The cards for when something went wrong, by touch.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, texts } from './steps.mjs';

test('a card asks, then answers with the figure, the next step and its source', async (t) => {
  const page = await begin(t);
  await page.getByRole('link', { name: /^Something went wrong/ }).tap();
  assert.deepEqual(await texts(page.locator('.doors b')), [
    'It froze',
    'It got warm',
    'The power failed',
    'It sat too long',
    'Did the cure go in',
    'The dose was wrong',
    'It stalled',
    'The fire went out',
    'The bag leaked',
  ]);
  await page.getByRole('link', { name: /^It got warm/ }).tap();
  const choose = (group, option) =>
    page.getByRole('group', { name: group }).getByRole('radio', { name: option, exact: true }).tap();
  await choose('How warm did it get', 'Warmer than that');
  assert.equal(await page.locator('.verdict').count(), 0, 'half an answer is none');
  await choose('For how long', 'Under 2 hours');
  await page.locator('.verdict.care').getByText('Cool it now').waitFor();
  await choose('For how long', '2 hours or more');
  await page.locator('.verdict.stop').getByText('Throw it out').waitFor();
  assert.equal((await texts(page.locator('.plate .src')))[0], 'FoodSafety.gov, power outages, quoted');
  await page
    .locator('#spoken-now')
    .getByText(/^Throw it out\./)
    .waitFor({ state: 'attached' });

  await page.getByRole('link', { name: 'All cards' }).tap();
  await page.getByRole('link', { name: /^The dose was wrong/ }).tap();
  await choose('What went wrong', 'Too much');
  await choose('More of this meat at hand', 'Yes');
  await page.locator('.verdict.stop').waitFor();
  await page.getByRole('link', { name: 'Check a dose' }).tap();
  await page.getByRole('heading', { name: 'Check a dose', exact: true }).waitFor();
});
