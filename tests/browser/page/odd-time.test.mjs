// Times that cannot be right, as the clock of a device makes them: asked about under the head, on every screen of the
// batch, until one of them is corrected.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { violations } from '../harness.mjs';
import { begin, goTo, kept, put, settled } from './steps.mjs';
import { states } from './states.mjs';

const HOUR = 3_600_000;

/** The batch of a state, open at its cure. */
async function shown(t, name) {
  const page = await begin(t);
  const [data] = states(Date.now())[name];
  await put(page, [{ key: 'batch/odd', v: 1, at: new Date().toISOString(), data }]);
  await goTo(page, '#/batch/odd/cure');
  return page;
}

const asked = (page) => page.locator('.doubt', { hasText: 'Correct it' });
const stored = async (page) => (await kept(page, 'batch/odd'))[0].data;
/** As a field for a time takes it. */
const local = (ms) => new Date(ms - new Date(ms).getTimezoneOffset() * 60_000).toISOString().slice(0, 16);

/** Types into one of the fields, and puts it in place of what is there. */
async function correct(page, label, value) {
  await asked(page).getByText('Correct it', { exact: true }).click();
  const field = page.getByLabel(label);
  await field.fill(value);
  await asked(page).locator('form', { has: field }).getByRole('button', { name: 'Correct' }).click();
  await settled(page);
}

test('a rub before the kill is asked about on every screen, and its day can be corrected', async (t) => {
  const page = await shown(t, 'a rub before the kill');
  for (const stage of ['pieces', 'weigh', 'cure', 'fire', 'pack']) {
    await goTo(page, `#/batch/odd/${stage}`);
    await asked(page).getByText('before the day of the kill').waitFor();
  }
  await asked(page).getByText('Correct it', { exact: true }).click();
  assert.deepEqual(await violations(page), []);
  await asked(page).getByText('Correct it', { exact: true }).click();
  const day = new Date(Date.now() - 80 * HOUR).toISOString().slice(0, 10);
  await correct(page, 'Day of the kill', day);
  assert.equal((await stored(page)).killed, day);
  assert.equal(await asked(page).count(), 0);
});

test('a step before the rub: either time can be corrected, and Undo takes that back', async (t) => {
  const page = await shown(t, 'a rinse before the rub');
  const before = (await stored(page)).ticks;
  const time = Math.floor((Date.now() - HOUR) / 60_000) * 60_000;
  await correct(page, 'Time of “Rinse off the cure”', local(time));
  const ticks = (await stored(page)).ticks;
  assert.equal(ticks.find(({ of }) => of === 'step:1').at, time);
  assert.deepEqual(
    ticks.filter(({ of }) => of !== 'step:1'),
    before.filter(({ of }) => of !== 'step:1'),
    'no other time is touched',
  );
  assert.equal(await asked(page).count(), 0);
  await page.locator('.bars').getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  assert.deepEqual((await stored(page)).ticks, before);
  await asked(page).waitFor();
});

test('a time that is still to come is asked about until it is past', async (t) => {
  const page = await shown(t, 'a rub to come');
  await asked(page).getByText('still to come').waitFor();
  // The clock of the device was behind, and is put right.
  await page.clock.setSystemTime(Date.now() + 6 * HOUR);
  await goTo(page, '#/today');
  await goTo(page, '#/batch/odd/cure');
  await page.locator('main .leaf').first().waitFor();
  assert.equal(await asked(page).count(), 0);
});

test('a reading of the fridge that is still to come can be corrected', async (t) => {
  const page = await shown(t, 'a fridge to come');
  const time = Math.floor((Date.now() - HOUR) / 60_000) * 60_000;
  await correct(page, 'Time of the fridge reading', local(time));
  assert.equal((await stored(page)).fridge[0].at, time);
  assert.equal(await asked(page).count(), 0);
});

test('weeks after the kill it was frozen, or the clock jumped', async (t) => {
  const page = await shown(t, 'a kill long ago');
  await asked(page).getByText('Correct it', { exact: true }).click();
  await asked(page).getByRole('button', { name: 'It was frozen' }).click();
  await settled(page);
  assert.ok((await stored(page)).pieces.every(({ thawed }) => thawed));
  assert.equal(await asked(page).count(), 0);
});
