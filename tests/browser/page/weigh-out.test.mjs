// The weigh-out as a person works it: figures, ticks, the slip with the spoon, the coarse scale.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { usable } from '../harness.mjs';
import {
  addPieces,
  begin,
  kept,
  openWhy,
  putIn,
  setting,
  startBatch,
  startDemo,
  texts,
  tick,
  weighOut,
} from './steps.mjs';

const add = (page) => texts(page.locator('.line .add'));
const dose = (page) => page.locator('.dose-line');

/** What stands at the scale: the line in hand, what to add, what the scale shows then. */
const inHand = async (page) => {
  const [name] = await texts(page.locator('.answer .what'));
  const [add] = await texts(page.locator('.answer .add'));
  const [reads] = await texts(page.locator('.answer .window'));
  return [name, add, reads];
};

/** Presses the action at the thumb, and waits until it is another. */
async function press(page, grams) {
  const button = page.locator('.pin').getByRole('button', { name: `${grams} g is in the bowl`, exact: true });
  await button.click();
  await button.waitFor({ state: 'detached' });
}

test('16 pieces of 1480 g: 3.5 g of cure, the running totals in order, the dose in range', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '16', weight: '1480', thickness: '24' });
  assert.match(await page.locator('.total').innerText(), /1480\s*g/);

  await weighOut(page, batch);
  assert.deepEqual(await add(page), ['3.5g', '29.3g', '11.8g', '5.9g', '3.0g']);
  assert.match(await page.locator('.sumline').innerText(), /53\.5\s*g/);
  assert.match((await texts(dose(page)))[0], /^In range 145–150 ppm, limit 200\.$/);
  await openWhy(page);
  assert.match(await page.locator('.strip-ppm .ends').textContent(), /145 – 150/);
  // One line in hand after the other, with what the scale shows after each.
  for (const [name, grams, reads] of [
    ['Cure, 6.25 % nitrite', '3.5', '3.5'],
    ['Fine sea salt', '29.3', '32.8'],
    ['Brown sugar', '11.8', '44.6'],
    ['Black pepper, crushed', '5.9', '50.5'],
    ['Juniper berries, crushed', '3.0', '53.5'],
  ]) {
    assert.deepEqual(await inHand(page), [name, `${grams}g`, `${reads}g`]);
    await press(page, grams);
  }
  assert.match((await texts(page.locator('.answer .what')))[0], /^Rub all of it in, 16 pieces$/);
});

test('ticks are stamped, kept over a reload, undone at a touch, and later only after a question', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  await press(page, '3.5');
  await press(page, '29.3');
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
  const question = page.getByRole('group', { name: 'Undo it' });
  assert.match(await question.innerText(), /Cure.*was marked/);
  assert.equal(await ticked.count(), 2);
  await question.getByRole('button', { name: 'Leave it' }).click();
  assert.equal(await ticked.count(), 2);
  await page.locator('[data-tick="cure:0"]').click();
  await question.getByRole('button', { name: 'Undo it' }).click();
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
  assert.match(await stop.innerText(), /Stop: too much cure/);
  await page.locator('.masthead .doubt.stop', { hasText: 'Stop: too much cure' }).waitFor();
  assert.match(await stop.innerText(), /tablespoon used where a teaspoon was meant/);
  const ends = await page.locator('.strip-ppm .ends').textContent();
  const [low, high] = ends.match(/\d+/g).map(Number);
  assert.ok(low > 200 && high > low, ends);
  const steps = await texts(page.locator('.steps').first().locator('li'));
  assert.match(steps[0], /Do not cook or taste it/);
  assert.equal(await page.locator('.btn.main').count(), 0, 'no filled button in a stop');
  assert.equal(await page.locator('[data-tick]:enabled').count(), 0, 'nothing can be ticked');

  await page.reload();
  await usable(page);
  await stop.waitFor();
  await page.getByRole('link', { name: /^Batches, from batch/ }).click();
  await page.locator('.alarm').click();
  await stop.waitFor();

  await page.getByText('Change what was put in').last().click();
  await page.getByRole('button', { name: 'It was the weigh-out after all' }).click();
  await dose(page).getByText('In range').waitFor();
});

test('on a 1 g scale the list says that it is too coarse, and a premix brings the dose back in range', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await setting(page, '1 g');
  await weighOut(page, batch);
  assert.match(await page.locator('.verdict.care').first().innerText(), /Scale too coarse/);
  await page
    .locator('.pin')
    .getByRole('button', { name: /^Use a 1-in-10 mix: \d+–\d+ ppm$/ })
    .click();
  await page.getByRole('heading', { name: 'First make the 1-in-10 mix' }).waitFor();
  assert.match((await texts(page.locator('.line .nm').first()))[0], /^1-in-10 mix: 1 part cure, 9 parts salt/);
  assert.match((await texts(dose(page)))[0], /^In range/);
  // So many grams of the mix are not so many of the cure: which of the two is asked, and judged by its own strength.
  await putIn(page, '72', 'grams');
  await page.getByText('Say what went in: the 1-in-10 mix or the cure itself.').first().waitFor();
  await page.getByText('10 g of the mix hold 1 g of cure.').waitFor();
  await page.getByLabel('The 1-in-10 mix', { exact: true }).check();
  await page.getByRole('button', { name: 'Judge what went in' }).click();
  await page.getByText('Judged on what was put in').first().waitFor();
  assert.equal((await kept(page, 'batch/'))[0].data.put_in.nitrite, '0.625 %');
  await page.getByText('What was put in', { exact: true }).click();
  await page.getByRole('button', { name: 'It was the weigh-out after all' }).click();
  await page.getByRole('heading', { name: 'First make the 1-in-10 mix' }).waitFor();
  // Once it is in nothing is left to mix, and there is no way back to the cure itself.
  await tick(page, 'cure:0');
  await page.getByRole('heading', { name: 'First make the 1-in-10 mix' }).waitFor({ state: 'detached' });
  assert.equal(await page.getByRole('button', { name: 'Back to the cure itself' }).count(), 0);
});

test('a brine has its water in a tub of its own, and the dose counts meat and brine', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Fallow haunch in brine/);
  await addPieces(page, { cut: 'Fallow haunch', count: '1', weight: '2220 g', thickness: '60' });
  await weighOut(page, batch);
  await page.getByRole('heading', { name: 'In a tub of its own' }).waitFor();
  assert.match((await texts(page.locator('.tally').nth(1)))[0], /Water.*1332/);
  await openWhy(page);
  assert.match((await texts(page.locator('.why .src')))[0], /brine/);
});

test('the action keeps the keyboard and the place on the page, and names the next line', async (t) => {
  const page = await begin(t);
  await weighOut(page, await startDemo(page));
  const next = ['29.3', '11.8', '5.9', '3.0'];
  for (const [at, grams] of ['3.5', '29.3', '11.8', '5.9'].entries()) {
    const from = await page.evaluate(() => scrollY);
    await press(page, grams);
    const held = await page.evaluate(() => ({ at: scrollY, focus: document.activeElement.textContent.trim() }));
    assert.equal(held.focus, `${next[at]} g is in the bowl`, `after ${grams} g the focus is on the action of the next`);
    assert.ok(Math.abs(held.at - from) < 400, `after ${grams} g the page moved from ${from} to ${held.at}`);
  }
});

test('ticked out of turn: what is done stands first with its time, and Undo in the row of the last', async (t) => {
  const page = await begin(t);
  await weighOut(page, await startDemo(page));
  const rows = () => texts(page.locator('.tally').first().locator('.line'));
  await tick(page, 'line:1');
  await page.getByRole('button', { name: 'Undo: Brown sugar' }).waitFor();
  assert.match((await rows())[0], /^Brown sugar \w+ \d\d:\d\d 11\.8g Undo$/);
  assert.equal((await inHand(page))[0], 'Cure, 6.25 % nitrite');
  await press(page, '3.5');
  const [first, second] = await rows();
  assert.match(first, /^Cure, 6\.25 % nitrite \w+ \d\d:\d\d 3\.5g Undo$/);
  assert.match(second, /^Brown sugar \w+ \d\d:\d\d 11\.8g$/);
});

test('a nought too many is doubted on the board', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '12', weight: '14800' });
  await page.getByText(/Check the weight and the cut\./).waitFor();
  assert.ok(await page.locator('#class-0').isVisible());
});

test('a tick of the cure that is taken back once all is rubbed in asks whether it is in, and adds none', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub']) await tick(page, of);
  await page.locator('[data-tick="cure:0"]').click();
  await page.locator('.asks').getByRole('button').last().click();
  await page.locator('.answer .say', { hasText: 'Say whether the cure is in' }).waitFor();
  assert.equal(await page.locator('.answer .add').count(), 0, 'nothing to add before that is known');
});
