// A first visit: what the first screen asks comes before the rest of the core, and answers alone.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { host, open, pause, usable, visit } from '../harness.mjs';
import { goTo, kept, settled, texts } from './steps.mjs';

const REST = '**/rest.*.wasm';

/** A page that has not the rest yet; `send` lets it come. */
async function withoutRest(t, how = 'hold') {
  const { address } = await host(t);
  const context = await open(t, { locale: 'en-GB', timezoneId: 'Europe/London' });
  let send;
  const sent = new Promise((done) => (send = done));
  await context.route(REST, async (route) => {
    if (how === 'fail') return route.abort();
    await sent;
    return route.continue();
  });
  const page = await visit(context, address);
  return { page, context, send };
}

test('a weight has its grams, its range and its hour before the rest is there, and is the same after it', async (t) => {
  const { page, send } = await withoutRest(t);
  await page.getByLabel('Meat, trimmed').first().fill('3200');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Wild boar belly' });
  const before = await texts(page.locator('.ans, .inrange'));
  assert.match(before.join(' '), /\d ?g .*In range if weighed/);
  assert.match(before.join(' '), /Leave it in until \w{3}/);
  for (const wrong of ['abc', '-3', '0', '1,480', '99999999', '3 lb 3']) {
    await page.getByLabel('Meat, trimmed').first().fill(wrong);
    await page.keyboard.press('Tab');
    assert.doesNotMatch((await texts(page.locator('main'))).join(' '), /cannot reckon|could not/i, wrong);
  }
  await page.getByLabel('Meat, trimmed').first().fill('3200');
  send();
  await page.waitForFunction(() => navigator.serviceWorker.controller);
  assert.deepEqual(await texts(page.locator('.ans, .inrange')), before);
});

test('another place, and keeping a batch, wait for the rest and are lost by no touch', async (t) => {
  const { page, send } = await withoutRest(t);
  await page.getByLabel('Meat, trimmed').first().fill('3200');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Wild boar belly' });
  await page.getByRole('button', { name: 'Save as a batch' }).tap();
  await pause(300);
  assert.equal(await page.locator('.ans').count(), 3, 'the answer stays in sight');
  send();
  await page.waitForURL(/#\/batch\/.*\/weigh$/);
  await settled(page);
  assert.equal((await kept(page, 'batch/')).length, 1);
  await goTo(page, '#/cards');
  await page.getByRole('heading', { level: 1 }).waitFor();
});

test('a place that was asked for first is drawn once the rest is there', async (t) => {
  const { page, send } = await withoutRest(t);
  await page.locator('.places').getByText('Recipes').tap();
  await pause(300);
  assert.equal(await page.locator('h1').innerText(), 'How much cure?');
  send();
  await page.getByRole('heading', { level: 1, name: 'Recipes' }).waitFor();
});

test('where the rest never comes the first screen still answers, and the next visit has all', async (t) => {
  const { page, context } = await withoutRest(t, 'fail');
  await page.getByLabel('Meat, trimmed').first().fill('3200');
  assert.match((await texts(page.locator('.inrange')))[0], /In range if weighed/);
  await page.getByRole('button', { name: 'Save as a batch' }).tap();
  await page.getByText('was not saved').first().waitFor();
  await context.unroute(REST);
  await page.reload();
  await usable(page);
  await goTo(page, '#/recipes');
  await page.getByRole('heading', { level: 1, name: 'Recipes' }).waitFor();
  assert.ok((await texts(page.locator('main')))[0].length > 100);
});
