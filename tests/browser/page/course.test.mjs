// One batch from the board to the label, and what Today says on the way.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, goTo, kept, startDemo, texts, tick, weighOut, settled } from './steps.mjs';

const SATURDAY = [2026, 10, 14];
const DAYS = ['Sat', 'Sun', 'Mon', 'Tue'];
/** Day and clock time in a line, as minutes since that Saturday began. */
function minutes(line) {
  const [, day, hours, min] = /\b(Sat|Sun|Mon|Tue) (\d\d):(\d\d)\b/.exec(line);
  return (DAYS.indexOf(day) * 24 + Number(hours)) * 60 + Number(min);
}

test('the demo batch from the board to the label, and then put away', async (t) => {
  const page = await begin(t);
  await page.clock.setFixedTime(new Date(...SATURDAY, 18));
  const batch = await startDemo(page);
  const today = () => goTo(page, '#/today');
  await today();
  assert.match((await texts(page.locator('.day')))[0], /Weigh out the cure/);

  await weighOut(page, batch);
  for (let left = await page.locator('.line:not(.done) [data-tick]').count(); left > 0; left--) {
    await page.locator('.line:not(.done) [data-tick]').first().check();
    await page.waitForFunction((n) => document.querySelectorAll('.line:not(.done)').length === n, left - 1);
  }
  // All is on: into the cold with it, and the clock counts from the rub all the same.
  await page.getByRole('heading', { name: 'Put it in the fridge, 4 °C or colder' }).waitFor();
  await page.getByText('The clock counts from Sat 18:00').waitFor();
  await today();
  assert.match((await texts(page.locator('.day')))[0], /^Next Put it in the fridge, 4 °C or colder/);
  await goTo(page, `#/batch/${batch}/cure`);
  // In sight beside the hour it comes out, not only in the list.
  assert.match(
    (await texts(page.locator('.answer > p')))[0],
    /^Put it in the fridge, 4 °C or colder\. The clock counts from Sat 18:00/,
  );
  await weighOut(page, batch);
  await page.getByRole('button', { name: 'It is in the fridge' }).click();
  await page.getByRole('link', { name: 'All in. Go to the cure' }).click();
  await page.getByRole('heading', { name: 'Cure', exact: true }).waitFor();

  await today();
  // What comes next by the clock stands first, whatever it is.
  const listed = await texts(page.locator('.day'));
  const due = listed.map(minutes);
  assert.deepEqual(
    due,
    due.toSorted((a, b) => a - b),
  );
  assert.match(listed[0], /Turn the pieces/);
  // Turned every 12 h, so about 06:00, and at no hour of the night.
  assert.ok(due[0] >= 30 * 60 && due[0] <= 31 * 60, listed[0]);
  // Thin ones come out before thick ones, and those by the rinse.
  const out = ['Take out 4 Teal', 'Take out 4 Mallard, small', 'Rinse off the cure'];
  assert.deepEqual(
    listed.slice(1).map((line) => out.find((head) => line.includes(head))),
    out,
  );
  // Hours off: they are opened, not ticked.
  assert.equal(await page.locator('.day .box input').count(), 0);

  const boxes = page.locator('.line [data-tick]');
  const open = page.locator('.line [data-tick]:not(:checked)');
  await goTo(page, `#/batch/${batch}/cure`);
  // The same hours on the screen of the cure: none earlier there, and each job at its own.
  const there = await texts(page.locator('.line:not(.done):has([data-tick])'));
  assert.equal(due[0], Math.min(...there.map(minutes)));
  for (const head of ['Turn the pieces', ...out]) {
    const [here] = listed.filter((line) => line.includes(head));
    assert.equal(minutes(here), minutes(there.find((line) => line.startsWith(head))), head);
  }
  for (const [size, head] of [
    ['4 Teal', out[0]],
    ['4 Mallard, small', out[1]],
    ['8 Mallard, large', out[2]],
  ]) {
    const [row] = await texts(page.locator('.size', { hasText: size }));
    assert.equal(minutes(row), minutes(there.find((line) => line.startsWith(head))), size);
  }
  const before = await open.count();
  await page.locator('[data-tick="turn:0:0"]').click();
  await page.getByText(/It is due in 13 h\. Now all the same\?/).waitFor();
  await page.getByRole('button', { name: 'Not yet' }).click();
  assert.equal(await open.count(), before, 'what is early is asked about, and No is no');

  for (const stage of ['cure', 'fire', 'pack']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    for (let left = await open.count(); left > 0; left = await open.count()) {
      const of = await open.first().getAttribute('data-tick');
      await open.first().click();
      const asked = page.getByRole('button', { name: 'Yes, now' });
      if (await asked.count()) await asked.click();
      // What comes out first brings jobs of its own, so there may be as many as before.
      await page.waitForFunction((of) => document.querySelector(`.line [data-tick="${of}"]`)?.checked ?? true, of);
    }
    assert.ok(await boxes.count());
    if (stage === 'cure') await page.getByRole('link', { name: 'Go to Fire' }).waitFor();
    // What was over the fire and read by nobody is read next, before it is packed.
    if (stage === 'fire') await page.locator('.pin').getByRole('button', { name: 'Log the reading' }).waitFor();
  }
  await page.getByRole('button', { name: 'Close the batch' }).click();
  await page.getByText('is closed.').waitFor();
  assert.equal((await kept(page, 'batch/'))[0].data.closed, true);
  await page.getByRole('link', { name: /^Closed/ }).click();
  await page.getByRole('heading', { name: 'Closed', exact: true }).waitFor();
  assert.equal(await page.locator('a.batch').count(), 1);
});

test('a job of tomorrow is not offered as done: the action is the fridge, and its own row asks', async (t) => {
  const page = await begin(t);
  await page.clock.setFixedTime(new Date(...SATURDAY, 18));
  const batch = await startDemo(page);
  await weighOut(page, batch);
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) await tick(page, of);
  // The bag that is labelled has a label to print.
  await page.locator('[data-tick="label"]').click();
  await page.getByRole('link', { name: 'Print or copy its label' }).waitFor();
  await tick(page, 'label');
  // What is next takes the focus once the last of the list is ticked.
  await page.locator('.pin').getByRole('button', { name: 'It is in the fridge' }).waitFor();
  await goTo(page, `#/batch/${batch}/cure`);
  await page.getByRole('button', { name: 'It is in the fridge' }).tap();
  await page.locator('.pin').getByRole('button', { name: 'Log the fridge' }).waitFor();
  assert.equal(await page.getByRole('button', { name: /done just now/ }).count(), 0);
  await page.waitForTimeout(600);
  await page.getByRole('button', { name: 'Log the fridge' }).tap();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'fridge-reads');
  // With what it reads in the field the same button logs it.
  await page.keyboard.type('3');
  await page.waitForTimeout(600);
  await page.getByRole('button', { name: 'Log the fridge' }).tap();
  await settled(page);
  assert.equal(await page.locator('.readings li').count(), 1);
  // Half an hour before its time it is offered.
  await page.clock.setFixedTime(new Date(2026, 10, 15, 6, 45));
  await goTo(page, '#/today');
  await goTo(page, `#/batch/${batch}/cure`);
  await page.locator('.pin').getByRole('button', { name: 'Turn the pieces: done just now' }).waitFor();
});

test('what is in doubt and forbids nothing yet stands on the list of batches too', async (t) => {
  const page = await begin(t);
  await page.clock.setFixedTime(new Date(...SATURDAY, 18));
  const batch = await startDemo(page);
  await weighOut(page, batch);
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) await tick(page, of);
  await page.clock.setFixedTime(new Date(2026, 10, 24, 18));
  await goTo(page, '#/today');
  await page.reload();
  await page.locator('a.batch', { hasText: 'longer than raw meat keeps' }).waitFor();
  if (process.env.SHOTS) await page.screenshot({ path: `${process.env.SHOTS}/list-doubt.png` });
  await goTo(page, `#/batch/${batch}/cure`);
  assert.match(await page.locator('body').innerText(), /longer than raw meat keeps/);
});
