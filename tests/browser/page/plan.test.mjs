// Planning back from a day, by touch: two batches, one moved by hand, one that cannot be ready.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, goTo, startBatch, texts } from './steps.mjs';

const DAY_MS = 86_400_000;
const dateIn = (page, days) =>
  page.evaluate((ms) => {
    const day = new Date(Date.now() + ms);
    day.setMinutes(day.getMinutes() - day.getTimezoneOffset());
    return day.toISOString().slice(0, 10);
  }, days * DAY_MS);

test('all that is begun has a latest start, no task falls into the night, and one step is moved by hand', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  await startBatch(page, /Marsh hare/);
  await goTo(page, '#/more');
  await page.getByRole('link', { name: /^Ready by a day/ }).tap();
  await page.getByLabel('Ready by').fill(await dateIn(page, 8));
  await page.getByText('It can be ready', { exact: true }).waitFor();
  assert.match((await texts(page.locator('.verdict.ok p')))[0], /^Start by .* at the latest\.$/);
  assert.equal(await page.locator('svg.timeline .fire').count(), 3, 'two of the breasts, one of the hare');

  const list = page.getByRole('list', { name: 'Tasks of Saltmarsh duck breasts' });
  const clocks = await texts(list.locator('.when .num'));
  for (const at of clocks) assert.ok(at >= '06:30' && at <= '22:30', at);
  assert.match((await texts(list))[0], /Fixed: hot meat goes straight on\./);

  const smoke = list.locator('li').filter({ hasText: 'Somebody stays with it' }).first();
  const before = (await texts(smoke.locator('.when')))[0];
  const start = (await texts(list.locator('.when').first()))[0];
  await smoke.getByRole('button', { name: /^1 h earlier/ }).tap();
  await list.getByText('Put to this time by you.').waitFor();
  assert.notEqual((await texts(smoke.locator('.when')))[0], before);
  assert.notEqual((await texts(list.locator('.when').first()))[0], start, 'what comes before follows');
  await page.getByRole('button', { name: /find their own time$/ }).tap();
  await page.getByText('Put to this time by you.').waitFor({ state: 'detached' });
  assert.equal((await texts(smoke.locator('.when')))[0], before);
});

test('what cannot be ready says by when it can and what would help, never more cure', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Wild boar belly/);
  await goTo(page, '#/plan');
  await page.getByLabel('Ready by').fill(await dateIn(page, 5));
  await page.getByText('Not ready by then', { exact: true }).waitFor();
  assert.match((await texts(page.locator('.verdict.care p')))[0], /^The earliest for all of it is /);
  const ways = await texts(page.locator('.dots li'));
  assert.ok(
    ways.some((way) => way.startsWith('Thinner')) && ways.some((way) => way.startsWith('Injection')),
    ways.join(),
  );
  assert.equal(ways.at(-1), 'More cure does not make it faster: the dose stays what it is for this meat.');
  await page.getByLabel('Ready by').fill(await dateIn(page, -1));
  await page.getByText('That is past. Choose a day').waitFor();
});
