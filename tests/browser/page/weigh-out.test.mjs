// The weigh-out as a person works it: figures, ticks, the slip with the spoon, the coarse scale.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { usable } from '../harness.mjs';
import { addPieces, begin, kept, putIn, setting, startBatch, startDemo, texts, weighOut } from './steps.mjs';

const add = (page) => texts(page.locator('.line .add'));
const reads = (page) => texts(page.locator('.line .window'));
const verdict = (page) => page.locator('.verdict').last();

test('16 pieces of 1480 g: 3.5 g of cure, the running totals in order, the dose in range', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '16', weight: '1480', thickness: '24' });
  assert.match(await page.locator('.total').innerText(), /1480\s*g/);

  await weighOut(page, batch);
  assert.deepEqual(await add(page), ['3.5g', '29.3g', '11.8g', '5.9g', '3.0g']);
  assert.deepEqual(await reads(page), ['3.5g', '32.8g', '44.6g', '50.5g', '53.5g']);
  assert.match(await page.locator('.sumline').innerText(), /53\.5\s*g/);
  assert.match(await verdict(page).innerText(), /In range/);
  assert.match(await page.locator('.strip-ppm .ends').textContent(), /145 – 150/);
});

test('ticks are stamped, kept over a reload, undone at a touch, and later only after a question', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  await page.getByRole('button', { name: 'Tick: 3.5 g is in the bowl' }).click();
  await page.getByRole('button', { name: 'Tick: 29.3 g is in the bowl' }).click();
  await page.locator('[data-tick="line:1"]').check();
  await page.locator('.stamp').nth(2).waitFor();

  await page.reload();
  await usable(page);
  const ticked = page.locator('[data-tick]:checked');
  assert.equal(await ticked.count(), 3);
  const [record] = await kept(page, 'batch/');
  assert.deepEqual(
    record.data.ticks.map(({ of, weight }) => [of, weight]),
    [
      ['cure:0', '3.5 g'],
      ['line:0', '29.3 g'],
      ['line:1', '11.8 g'],
    ],
  );
  for (const { at } of record.data.ticks) assert.ok(Math.abs(Date.now() - at) < 60_000);

  await page.getByRole('button', { name: /^Undo: Brown sugar/ }).click();
  await page.locator('[data-tick="line:1"]:not(:checked)').waitFor();
  await page.locator('[data-tick="cure:0"]').click();
  const question = page.getByRole('group', { name: 'Take the tick away' });
  assert.match(await question.innerText(), /Cure.*was ticked/);
  assert.equal(await ticked.count(), 2);
  await question.getByRole('button', { name: 'Keep it' }).click();
  assert.equal(await ticked.count(), 2);
  await page.locator('[data-tick="cure:0"]').click();
  await question.getByRole('button', { name: 'Take it away' }).click();
  await page.locator('[data-tick="cure:0"]:not(:checked)').waitFor();
  assert.equal(await ticked.count(), 1);
});

test('one tablespoon put in: over, with the range, the next step, and held until the numbers change', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '16', weight: '1480 g' });
  await weighOut(page, batch);
  await putIn(page, '1', 'tablespoon');

  const stop = page.locator('.verdict.stop');
  await stop.waitFor();
  assert.match(await stop.innerText(), /Stop: over the limit/);
  assert.match(await stop.innerText(), /tablespoon used where a teaspoon was meant/);
  const ends = await page.locator('.strip-ppm .ends').textContent();
  const [low, high] = ends.match(/\d+/g).map(Number);
  assert.ok(low > 200 && high > low, ends);
  const steps = await texts(page.locator('.steps').first().locator('li'));
  assert.match(steps[0], /Do not cook it or taste it/);
  assert.equal(await page.locator('.btn.main').count(), 0, 'no filled button in a stop');
  assert.equal(await page.locator('[data-tick]:enabled').count(), 0, 'nothing can be ticked');

  await page.reload();
  await usable(page);
  await stop.waitFor();
  await page.getByRole('link', { name: 'Today' }).click();
  await page.locator('.alarm').click();
  await stop.waitFor();

  await page.getByText('Change what was put in').last().click();
  await page.getByRole('button', { name: 'It was the weigh-out after all' }).click();
  await page.locator('.verdict.ok').waitFor();
});

test('on a 1 g scale the list says that it is too coarse, and a premix brings the dose back in range', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await setting(page, '1 g');
  await weighOut(page, batch);
  assert.match(await page.locator('.verdict.care').first().innerText(), /Scale too coarse/);
  await page.getByRole('button', { name: /^Work with a premix/ }).click();
  await page.getByRole('heading', { name: /First make the premix/ }).waitFor();
  assert.match((await texts(page.locator('.line .nm').first()))[0], /^Premix, 1 part cure in 10/);
  assert.match(await verdict(page).innerText(), /In range/);
});

test('a brine has its water in a vessel of its own, and the dose counts meat and brine', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Fallow haunch in brine/);
  await addPieces(page, { cut: 'Fallow haunch', count: '1', weight: '2220 g', thickness: '60' });
  await weighOut(page, batch);
  await page.getByRole('heading', { name: 'In a vessel of its own' }).waitFor();
  assert.match((await texts(page.locator('.tally').nth(1)))[0], /Water.*1332/);
  assert.match(await page.locator('figcaption').innerText(), /brine/);
});

test('the tick button keeps the place on the page and hands the keyboard to the next line', async (t) => {
  const page = await begin(t);
  await weighOut(page, await startDemo(page));
  for (const grams of ['3.5', '29.3', '11.8', '5.9']) {
    const button = page.getByRole('button', { name: `Tick: ${grams} g is in the bowl` });
    await button.scrollIntoViewIfNeeded();
    const from = await page.evaluate(() => scrollY);
    await button.click();
    await button.waitFor({ state: 'detached' });
    const held = await page.evaluate(() => ({
      at: scrollY,
      next: document.activeElement.closest('.line.now') !== null,
    }));
    assert.ok(held.next, `after ${grams} g the focus is on the line in hand`);
    assert.ok(Math.abs(held.at - from) < 400, `after ${grams} g the page moved from ${from} to ${held.at}`);
  }
});

test('a nought too many is doubted on the board', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '12', weight: '14800' });
  await page.getByText(/One nought too many or too few\?/).waitFor();
  assert.ok(await page.locator('#class-0').isVisible());
});
