// The cards for when something went wrong, by touch.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, goTo, kept, putIn, startDemo, texts, tick, weighOut } from './steps.mjs';

test('a card says what to do now, asks one thing at a time, and ends in an act with its source', async (t) => {
  const page = await begin(t);
  await page.getByRole('link', { name: /^Something went wrong/ }).tap();
  await page.getByRole('link', { name: /^Someone ate cure/ }).waitFor();
  const keys = await page.locator('.doors a').evaluateAll((all) => all.map((one) => one.hash.split('/').pop()));
  assert.equal(keys.length, 17);
  await page.getByRole('link', { name: /^It got warm/ }).tap();
  await page.locator('.verdict.ask').getByText('Do not taste it.').waitFor();
  // The next question lies where the last one lay: a tap within half a second of another is taken for a slip.
  const choose = async (choice) => {
    await page.waitForTimeout(600);
    await page.getByRole('button', { name: choice, exact: true }).tap();
  };
  assert.deepEqual(await texts(page.locator('.choices button')), ['4 °C or colder', 'Warmer', 'Not sure']);
  await choose('Warmer');
  assert.equal(await page.locator('.verdict.stop').count(), 0, 'half an answer is none');
  await choose('No');
  await choose('Less than 2 hours');
  await page.locator('.verdict.care').getByText('Chill it now').waitFor();
  // Another answer to the last question; the others stay.
  await page.getByRole('button', { name: /^Less than 2 hours/ }).tap();
  await choose('Not sure');
  await page.locator('.verdict.stop').getByText('Throw it away').waitFor();
  assert.equal(await page.locator('.given').count(), 3);
  await page.getByText('Why / Source').tap();
  assert.match((await texts(page.locator('details .src')))[0], /^USDA FSIS, Danger Zone.*\(quoted\)\.$/);
  await page
    .locator('#spoken-now')
    .getByText(/^Throw it away\./)
    .waitFor({ state: 'attached' });

  // Every card has its two lines and its first question in sight, and at most three answers, the last one "Not sure".
  for (const key of keys.filter((one) => one !== 'dose')) {
    await goTo(page, `#/cards/${key}`);
    await page.locator('.verdict.ask').waitFor();
    const answers = await texts(page.locator('.choices button'));
    assert.ok(answers.length <= 3 && answers.at(-1) === 'Not sure', `${key}: ${answers}`);
    assert.equal(await page.locator('.verdict.ask p').count(), 2, key);
    const words = (await page.locator('main').innerText()).split(/\s+/).length;
    assert.ok(words <= 120, `${key}: ${words} words`);
    assert.doesNotMatch(await page.locator('main').innerText(), /[[\]|]|undefined/, key);
  }
});

test('a wrong dose has one door: the screen that judges it', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/cards');
  await page.getByRole('link', { name: /^The dose was wrong/ }).tap();
  await page.getByRole('heading', { name: 'I already put cure on it' }).waitFor();
  await page.getByLabel('Meat, trimmed').fill('3175');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('heaped tablespoon', { exact: true }).tap();
  await page.getByLabel('Cure I put in').fill('1');
  const stop = page.locator('.verdict.stop').first();
  await stop.getByText('Do not cook or taste it.').waitFor();
  assert.deepEqual(await texts(stop.locator('p')), [
    'Do not cook or taste it.',
    'Mark it DO NOT EAT. Keep it cold. Add nothing yet.',
  ]);
  // Whom to call stands there at once, before anything is asked.
  assert.match((await texts(page.locator('.answered .caution').first()))[0], /call your poison centre now/);
  const choose = async (choice) => {
    await page.waitForTimeout(600);
    await page.getByRole('button', { name: choice, exact: true }).tap();
  };
  assert.equal((await texts(page.locator('.choices button'))).at(-1), 'Not sure');
  await choose('Rubbed on the outside');
  await choose('1 hour or more');
  await page.getByText('Throw it away', { exact: true }).waitFor();
  assert.equal(await page.locator('.answered .btn.main').count(), 0, 'no filled button in a stop');
});

test('what a card has thrown out leaves the jobs, is never blessed again, and can be taken up if that was a slip', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) await tick(page, of);
  // Warm for nobody knows how long: thrown out, USDA FSIS, Danger Zone, quoted.
  await goTo(page, '#/cards/warm');
  for (const choice of ['Warmer', 'No', 'Not sure']) {
    await page.waitForTimeout(600);
    await page.getByRole('button', { name: choice, exact: true }).tap();
  }
  await page.locator('.verdict.stop').getByText('Throw it away').waitFor();
  await page.getByRole('button', { name: /I threw it away. Close this batch/ }).click();
  await page.getByText(/closed as thrown away/).waitFor();
  const [{ data }] = await kept(page, 'batch/');
  assert.ok(data.closed && data.thrown_out > 0);
  assert.match(data.notes, /It got warm: Throw it (out|away)/);
  await goTo(page, '#/today');
  assert.equal(await page.locator('.day').count(), 0);
  await goTo(page, '#/away');
  await page.locator('.flag.stop', { hasText: 'Thrown away' }).waitFor();
  for (const stage of ['pieces', 'weigh', 'cure', 'fire', 'pack', 'labels']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    await page.getByText('Do not eat: it was thrown away.').first().waitFor();
    assert.equal(await page.getByText(/Use by|Leave it in until|Hot enough/).count(), 0, stage);
  }
  await goTo(page, `#/batch/${batch}/pieces`);
  await page.getByText(/^About this batch/).click();
  await page.getByRole('button', { name: 'Open it again' }).click();
  await page.getByText('Do not eat: it was thrown away.').first().waitFor({ state: 'detached' });
  assert.equal((await kept(page, 'batch/'))[0].data.thrown_out, undefined);
});

test('whom to call goes by where the device is, and no number of another country stands anywhere', async (t) => {
  for (const [locale, timezoneId, emergency, poison] of [
    ['en-US', 'America/New_York', '911', '1-800-222-1222'],
    ['en-GB', 'Europe/London', '999', 'NHS 111 or a doctor'],
    // A browser that speaks the English of the States, in London.
    ['en-US', 'Europe/London', '999', 'NHS 111 or a doctor'],
    ['en-GB', 'Europe/Jersey', '999', 'NHS 111 or a doctor'],
    ['de-DE', 'Europe/Berlin', '112', 'your poison centre'],
    ['en-AU', 'Australia/Sydney', '000', 'your poison centre'],
    ['en-ZA', 'Africa/Johannesburg', 'your emergency number', 'your poison centre'],
  ]) {
    const page = await begin(t, { locale, timezoneId });
    await goTo(page, '#/cards/eaten');
    const [now] = await texts(page.locator('.verdict.ask'));
    assert.ok(now.includes(`call ${emergency}, say nitrite`), `${locale} ${timezoneId}: ${now}`);
    assert.ok(now.includes(`call ${poison} now too`), `${locale} ${timezoneId}: ${now}`);
    // At the cure, and on meat that holds too much of it.
    const batch = await startDemo(page);
    await weighOut(page, batch);
    const [caution] = await texts(page.locator('.caution'));
    assert.ok(caution.includes(`Call ${poison} at once, signs or not;`), caution);
    assert.ok(caution.includes(`${emergency}, say nitrite.`), caution);
    await putIn(page, '2', 'tablespoon');
    await page.locator('.verdict.stop').first().waitFor();
    const held = await page.locator('main').innerText();
    assert.ok(held.includes(`call ${emergency}, say nitrite`), held);
    if (emergency !== '911') assert.doesNotMatch(held, /1-800|911/);
    await page.context().close();
  }
});

test('the card for a power cut knows the batch one came from, and leads to its fridge log', async (t) => {
  const page = await begin(t);
  const first = await startDemo(page);
  const second = await startDemo(page);
  for (const [batch, other] of [
    [first, second],
    [second, first],
  ]) {
    await goTo(page, `#/batch/${batch}/cure`);
    await page.getByRole('link', { name: /^Something went wrong/ }).tap();
    await page.getByRole('link', { name: /^The power failed/ }).tap();
    for (const choice of ['Fridge', 'Less than 4 hours', '4 °C or colder']) {
      await page.waitForTimeout(600);
      await page.getByRole('button', { name: choice, exact: true }).tap();
    }
    const rows = page.locator('a.tagged', { hasText: 'Log the gap in its fridge log.' });
    await rows.first().waitFor();
    const ways = await rows.evaluateAll((all) => all.map((one) => one.hash));
    assert.deepEqual(ways, [`#/batch/${batch}/cure`, `#/batch/${other}/cure`]);
  }
});

test('a card that knows its batch asks for none, and keeps the others folded', async (t) => {
  const page = await begin(t);
  await startDemo(page);
  const batch = await startDemo(page);
  const answer = async () => {
    await page.getByRole('link', { name: /^It got warm/ }).tap();
    for (const choice of ['Warmer', 'No', 'Not sure']) {
      await page.waitForTimeout(600);
      await page.getByRole('button', { name: choice, exact: true }).tap();
    }
    await page.locator('.verdict.stop').getByText('Throw it away').waitFor();
  };
  const rows = page.getByRole('button', { name: /Close this batch/, includeHidden: true });
  const which = page.getByRole('heading', { name: 'Which batch was it?' });
  // From the list of batches either may be meant.
  await goTo(page, '#/today');
  await goTo(page, '#/cards');
  await answer();
  assert.equal(await which.count(), 1);
  assert.equal(await rows.filter({ visible: true }).count(), 2);
  await goTo(page, `#/batch/${batch}/cure`);
  await page.getByRole('link', { name: /^Something went wrong/ }).tap();
  await answer();
  assert.equal(await which.count(), 0);
  assert.equal(await rows.filter({ visible: true }).count(), 1);
  await page.getByText('Other batches').tap();
  assert.equal(await rows.filter({ visible: true }).count(), 2);
  await page.waitForTimeout(600);
  await rows.first().tap();
  await page.getByText(/closed as thrown away/).waitFor();
  const closed = (await kept(page, 'batch/')).filter(({ data }) => data.closed);
  assert.deepEqual(
    closed.map(({ key }) => key),
    [`batch/${batch}`],
  );
});
