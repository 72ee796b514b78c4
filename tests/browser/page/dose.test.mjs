// Check a dose: what is already on the meat.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { violations } from '../harness.mjs';
import { begin, goTo, kept, startDemo, texts } from './steps.mjs';

test('says what is missing, then gives the verdict as it is typed, and more water changes it', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/dose');
  assert.match(await page.locator('.verdict').innerText(), /Cannot say yet/);
  await page.getByRole('button', { name: 'Check it' }).click();
  // Nothing is assumed: neither the meat, nor the packet, nor what went in.
  assert.equal((await texts(page.locator('.errsum li'))).length, 3);

  await page.getByLabel('Meat, trimmed').fill('1480');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('grams').check();
  await page.getByLabel('Cure I put in').fill('3.5');
  assert.match(await page.locator('.verdict').innerText(), /In range/);
  await page.getByLabel('tablespoon', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('1');
  assert.match(await page.locator('.verdict').innerText(), /Stop: too much cure/);
  assert.match(await page.locator('.verdict').innerText(), /Do not cook or taste it/);
  await page.getByText('Why / Source').click();
  assert.match((await texts(page.locator('.steps li')))[0], /Do not cook or taste it/);

  // Judged as a rub so far; that it was a brine is asked before anything is thrown away.
  await page.getByRole('button', { name: 'In a brine, injected or mixed in' }).click();
  assert.equal(await page.locator('.verdict').getByText('Throw it away', { exact: true }).count(), 0);
  await page.getByLabel('Brine, until even').check();
  assert.match(await page.locator('.verdict').innerText(), /Cannot say yet/);
  await page.getByLabel('Water in the brine').fill('8 kg');
  assert.doesNotMatch(await page.locator('.verdict').innerText(), /Cannot say yet|Stop: too much/);
});

test('an amount that is empty or cannot be is told in the words of its field', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await page.getByLabel('Meat, trimmed').fill('1480');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  const told = async (measure, amount) => {
    await page.getByLabel(measure, { exact: true }).tap();
    await page.getByLabel('Cure I put in').fill(amount);
    await page.getByRole('button', { name: 'Check it' }).tap();
    const list = await texts(page.locator('.errsum li'));
    assert.equal(list.length, 1, list.join(' '));
    return list[0];
  };
  assert.equal(
    await told('teaspoon', ''),
    'Cure I put in: amount is missing. Type how many spoons, such as 1 or 2½, or a weight such as 3.5 g.',
  );
  assert.match(await told('grams', ''), /amount is missing\. Type what the scale showed, such as 3\.5 g\.$/);
  // Nothing typed is not a packet of nothing.
  assert.match(await told('whole bag', ''), /Type the weight that is printed on the bag, such as 25 g\.$/);
  assert.match(await told('teaspoon', 'a bit'), /: “a bit” is not read\. Type how many spoons, such as/);
  for (const amount of ['-3', '0', '99999999']) {
    assert.match(await told('heaped teaspoon', amount), /above zero, and at most 1000 kg\. Type how many spoons/);
  }
  assert.deepEqual(await violations(page), []);
});

test('an unknown packet is never blessed', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await page.getByLabel('Meat, trimmed').fill('1480');
  await page.getByLabel('I do not know').check();
  await page.getByLabel('grams').check();
  await page.getByLabel('Cure I put in').fill('3.5');
  assert.match(await page.locator('.verdict').innerText(), /Cannot say/);
  assert.equal(await page.locator('.verdict.ok').count(), 0);
});

test('two agents on one piece: nitrite and nitrate are each summed, and both are kept with the batch', async (t) => {
  const page = await begin(t);
  await startDemo(page);
  await goTo(page, '#/dose');
  await page.getByLabel('Meat, trimmed').fill('1000');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('grams', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('2.4');
  await page.getByLabel('Yes, another').check();
  assert.match(await page.locator('.verdict').innerText(), /Cannot say yet/);
  await page.getByLabel('How much of the second').fill('0.4');
  await page.getByLabel('Nitrite printed on the second').fill('0');
  await page.getByLabel('Nitrate printed on the second').fill('98');
  assert.match((await texts(page.locator('.verdict')))[0], /^In range.*2\.4 g of cure and 0\.4 g of cure on 1000 g/);
  // 0.35 to 0.45 g of 98 % on 1000 g, half a step of 0.1 g either way, shown outward.
  assert.match((await texts(page.locator('.answered')))[0], /Nitrate going in: 342 – 442 ppm/);
  assert.deepEqual(await violations(page), []);
  await page.getByLabel('How much of the second').fill('0.8');
  assert.match((await texts(page.locator('.verdict')))[0], /^Stop: too much cure/);
  await page.getByLabel('Which batch').selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Save it there' }).click();
  await page.getByText('of a second cure').first().waitFor();
  const [{ data }] = await kept(page, 'batch/');
  assert.deepEqual([data.put_in.amount, data.also.amount, data.also.nitrate], ['2.4 g', '0.8 g', '98 %']);
  assert.match(
    (await texts(page.locator('main')))[0],
    /2\.4 g of cure with 6\.25 % nitrite, and 0\.8 g of a second cure/,
  );
});

test('too much by weight: how much more meat, and what that comes to; of a spoon no weight is told', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  const choose = async (choice) => {
    await page.waitForTimeout(600);
    await page.getByRole('button', { name: choice, exact: true }).tap();
  };
  await page.getByLabel('Meat, trimmed').fill('1480');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('grams', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('17');
  for (const answer of ['Rubbed on the outside', 'Less than 1 hour', 'Yes']) await choose(answer);
  await page.getByText('Spread it over more meat now').waitFor();
  const advice = (await texts(page.locator('.answered > .near')))[0];
  const [, grams, low, high] =
    /^Weigh in (\d+) g more raw meat: then (\d+) to (\d+) ppm, needs 120, limit 200\.$/.exec(advice) ?? [];
  // 17 g of 6.25 % over all of it, half a step of 0.1 g either way.
  const ppm = (cure) => (cure * 62_500) / (1480 + Number(grams));
  assert.ok(Math.abs(ppm(16.95) - low) <= 1 && Math.abs(ppm(17.05) - high) <= 1, `${advice} ${ppm(17)}`);
  assert.ok(low > 150 && high < 170, `half-way between 120 and 200: ${advice}`);

  await page.getByLabel('tablespoon', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('1');
  await page.getByText('By the spoon nobody can say how much. Do not guess.').waitFor();
  assert.equal(await page.getByText('Spread it over more meat now').count(), 0);
  // What may have happened is asked, and nobody is told how near it came.
  await page.getByText('Why / Source').click();
  await page.getByText('Was a tablespoon used where a teaspoon was meant?').first().waitFor();
  assert.equal(await page.getByText(/could be in range/).count(), 0);
  // One step up from an empty field is one spoon; from there half spoons.
  await page.getByLabel('Cure I put in').fill('');
  for (const amount of ['1', '1.5']) {
    await page.getByRole('button', { name: 'More', exact: true }).click();
    assert.equal(await page.getByLabel('Cure I put in').inputValue(), amount);
  }
});

test('a dose that the scale cannot tell apart names both ends', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await page.getByLabel('Meat, trimmed').fill('1480');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('grams', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('4.7');
  // 4.65 to 4.75 g of 6.25 % on 1479.95 to 1480.05 g.
  await page.getByText(/The scale shows steps of 0\.1 g, so the dose is 196 to 201 ppm\./).waitFor();
});

test('what it is judged on stands beside the amount as it is now, and is reached before whom to call', async (t) => {
  const page = await begin(t, { locale: 'en-US', timezoneId: 'America/New_York' });
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  await page.getByRole('link', { name: 'I already put cure on it' }).tap();
  const row = page.locator('.asked summary');
  assert.deepEqual(await texts(row), ['7 lb mallard breast, cure 6.25 % Change']);
  const [under, verdict] = await Promise.all([row.boundingBox(), page.locator('.answered').boundingBox()]);
  assert.ok(under.y + under.height <= verdict.y, 'before the verdict, in plain sight');

  // A friend's meat: a bare number is pounds here, as on the first screen.
  await row.tap();
  await page.getByLabel('Meat, trimmed').fill('5');
  assert.deepEqual(await texts(row), ['5 lb mallard breast, cure 6.25 %']);
  await page.getByLabel('Which cut').selectOption({ label: 'Goose breast' });
  await page.getByLabel('grams', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('5');
  assert.deepEqual(await texts(row), ['5 lb goose breast, cure 6.25 %']);
  // 5 g of 6.25 % on 2268 g.
  assert.match((await texts(page.locator('.verdict')))[0], /^In range 5 g of cure on 5 lb/);
  await page.getByLabel('I do not know').check();
  assert.deepEqual(await texts(row), ['5 lb goose breast, cure not known']);
  await page.getByLabel('Yes, I can read it').check();
  await row.tap();

  // By the keyboard: from the measure to the meat, and only then to whom to call.
  await page.getByLabel('tablespoon', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('2');
  await page.locator('.answered .caution a').first().waitFor();
  await page.getByLabel('tablespoon', { exact: true }).focus();
  await page.keyboard.press('Tab');
  assert.ok(await row.evaluate((at) => at === document.activeElement));
});

test('how it went on is asked once: by the card on too much, or where somebody has said it, not at all', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await page.getByLabel('Meat, trimmed').fill('1480');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('grams', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('17');
  const choice = (name) => page.getByRole('button', { name, exact: true });
  await choice('Rubbed on the outside').waitFor();
  assert.equal(await page.locator('[name=method]').count(), 0);
  await page.waitForTimeout(600);
  await choice('In a brine, injected or mixed in').tap();
  // Which of these is asked then, and none is taken for granted.
  assert.equal(await page.locator('[name=method]:checked').count(), 0);
  await page.getByLabel('Rub', { exact: true }).check();
  await choice('Less than 1 hour').waitFor();
  assert.equal(await page.getByText('How did the cure go on?').count(), 0);
  await page.getByLabel('Mixed into mince').check();
  // Nothing is thrown away by what somebody is still typing.
  assert.equal(await page.locator('.verdict').getByText('Throw it away', { exact: true }).count(), 0);
  await choice('The figures are right. What now?').tap();
  await page.getByText('Throw it away', { exact: true }).waitFor();
  assert.equal(await choice('Rubbed on the outside').count(), 0);
});
