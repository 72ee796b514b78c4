// The demo batch from the rub to the rinse by the cure clock, with one warm night and one frozen day.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { violations } from '../harness.mjs';
import { addPieces, begin, goTo, kept, light, startBatch, startDemo, texts, weighOut } from './steps.mjs';

const HOUR = 3_600_000;
const RUB = new Date(2026, 10, 14, 18).getTime();

/** The demo batch in the cure since Saturday 18:00. `pass` moves the clock of the browser on, in hours after the rub. */
async function inTheCure(t, how) {
  const page = await begin(t, how);
  await page.clock.setSystemTime(RUB);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  for (let left = await page.locator('.line:not(.done) [data-tick]').count(); left > 0; left--) {
    await page.locator('.line:not(.done) [data-tick]').first().check();
    await page.waitForFunction((n) => document.querySelectorAll('.line:not(.done)').length === n, left - 1);
  }
  const pass = async (hours) => {
    await page.clock.setSystemTime(RUB + hours * HOUR);
    await goTo(page, '#/today');
    await goTo(page, `#/batch/${batch}/cure`);
    // Reasons stand under the fold, which stays open once it was opened.
    const fold = page.locator('details.why');
    await fold.waitFor();
    if ((await fold.getAttribute('open')) === null) await fold.locator('summary').first().click();
  };
  await pass(1);
  return { page, batch, pass };
}

async function log(page, what, reads = '') {
  const before = await page.locator('.readings li').count();
  await page.getByLabel('What you saw').selectOption({ label: what });
  await page.getByLabel('Temperature').fill(reads);
  await page.getByRole('button', { name: 'Put it in the log' }).click();
  await page.waitForFunction((n) => document.querySelectorAll('.readings li').length === n + 1, before);
}

// There may be none of them.
const words = async (page) => (await page.locator('.verdict .word').allInnerTexts()).map((word) => word.trim());
// The hour of the answer makes way for sleep; the middle one is the clock's own.
const half = async (page) => (await texts(page.locator('.class').first().locator('tbody').first().locator('td')))[1];

test('from the rub to the rinse with one warm night and one frozen day', async (t) => {
  const { page, batch, pass } = await inTheCure(t);
  assert.ok((await words(page)).includes('No reading yet'));
  assert.equal(await page.locator('.class').count(), (await kept(page, 'batch/'))[0].data.pieces.length);
  await log(page, 'The thermometer reads', '3.4');
  assert.ok(!(await words(page)).includes('No reading yet'));
  const first = await half(page);

  await pass(5);
  await log(page, 'The thermometer reads', '8');
  await pass(14);
  await log(page, 'The thermometer reads', '3.4');
  assert.ok((await words(page)).includes('It was too warm'));
  await page.getByText(/^9\s*h above 4\s*°C/).waitFor();
  const warm = await half(page);
  assert.notEqual(warm, first, 'a warm night moves the times');

  await log(page, 'The meat is frozen');
  await pass(38);
  await log(page, 'It is thawed again', '3.4');
  assert.ok((await words(page)).includes('The clock stopped'));
  await page.getByText(/^24\s*h frozen or below/).waitFor();
  assert.notEqual(await half(page), warm, 'a frozen day moves the times');

  // A day that is still to come is refused, and what was typed stays.
  await page.getByLabel('When').fill('2026-12-24T12:00');
  await page.getByLabel('Temperature').fill('3');
  await page.getByRole('button', { name: 'Put it in the log' }).click();
  await page.getByText('1 thing to put right').waitFor();
  assert.equal(await page.getByLabel('Temperature').inputValue(), '3');

  // What is stored is what was typed.
  const stored = (await kept(page, 'batch/'))[0].data.fridge;
  assert.deepEqual(
    stored.map(({ what, reads }) => [what, reads]),
    [
      ['read', '3.4 °C'],
      ['read', '8 °C'],
      ['read', '3.4 °C'],
      ['frozen', undefined],
      ['thawed', '3.4 °C'],
    ],
  );
  // The profile has a table that says the same; the salt outside has come down.
  const depths = await texts(page.locator('.class').first().locator('figure + table tbody th'));
  assert.equal(depths.length, 5);
  assert.match(depths[0], /^0/);
  await page.getByText('7 days per inch').first().waitFor();

  // Nine hours above 4 °C: thrown out, so there is nothing to go on with (FoodSafety.gov, quoted: 2 h).
  await pass(70);
  await page.getByText(/^Do not eat: 9 h above 4 °C/).waitFor();
  assert.equal(await page.locator('[data-tick="step:1"]').count(), 0);
  await page.locator('.line', { hasText: 'In the cure' }).locator('.stamp').waitFor();
  // Nothing of what is thrown out has an hour, on no screen.
  const hours = page.locator('.answer > .big, .answer > .under, .tally .text b');
  for (const stage of ['cure', 'fire', 'pack']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    assert.deepEqual(await hours.allInnerTexts(), [], stage);
  }
});

test('the plan goes by the clock: a window for each class, small pieces first, and a power cut', async (t) => {
  const { page, batch, pass } = await inTheCure(t);
  const windows = page.locator('.size');
  assert.equal(await windows.count(), (await kept(page, 'batch/'))[0].data.pieces.length);
  // The answer is the hour of the thickest, at which nobody sleeps; small ones are out before.
  const [answer] = await texts(page.locator('.answer .big'));
  const [large, , teals] = await texts(page.locator('.size .row-h b'));
  assert.equal(answer, large);
  assert.match(answer, /^\w{3} (0[789]|1\d|2[012]):00$/);
  assert.notEqual(teals, large);
  // The tables under Why have the same hours.
  const sizes = await texts(page.locator('.size .row-h b'));
  const tables = await texts(
    page.locator('.class .times:has(caption:text("forecast")) tbody tr:first-child td:last-child'),
  );
  assert.deepEqual(tables.sort(), sizes.sort());
  await page.getByText(/^By then 9 in 10 pieces this thick are cured to the middle/).waitFor();
  const due = () => texts(page.locator('.line', { hasText: 'Rinse off the cure' }).locator('.text b'));
  const [before] = await due();
  assert.equal(before, answer);
  // The recipe has it otherwise: one line says so and asks nothing; whoever wants to goes by it from then on.
  await page.getByText(/Your recipe says .* That may be too short for pieces this thick/).waitFor();
  assert.equal(await page.locator('.until .ask').count(), 0);
  await page.getByRole('button', { name: /^Go by the recipe/ }).click();
  await page.getByText(/You go by the recipe/).waitFor();
  const [own] = await due();
  assert.notEqual(own, before);
  assert.deepEqual(await texts(page.locator('.answer .big')), [own]);
  assert.equal((await kept(page, 'batch/'))[0].data.by, 'recipe');
  await page.getByRole('button', { name: /^Go by the clock/ }).click();
  await page.getByText(/Your recipe says/).waitFor();
  assert.deepEqual(await due(), [before]);

  // The teal come out first, by a tick of their own, and leave the table.
  await pass(22);
  const teal = page.locator('[data-tick="draw:2"]');
  await teal.check();
  await page
    .getByText(/^It came out/)
    .first()
    .waitFor();
  assert.equal(await windows.count(), 2);

  // Frozen for a day: the rinse falls due a day later, here and under Today.
  await log(page, 'The meat is frozen');
  // It has been in the cure for long: what stands still is held, and not without a clock.
  await goTo(page, `#/batch/${batch}/fire`);
  await page.getByText('Clear the doubt first.').waitFor();
  assert.equal(await page.getByText('No clock yet').count(), 0);
  await pass(40);
  await log(page, 'It is thawed again', '3');
  const [after] = await due();
  assert.notEqual(after, before);
  await goTo(page, '#/today');
  const listed = page.locator('.day', { hasText: 'Rinse off the cure' });
  assert.ok((await texts(listed))[0].includes(after.slice(-5)), 'the same time under Today');

  await goTo(page, `#/batch/${batch}/cure`);
  await log(page, 'The power went');
  await pass(46);
  await log(page, 'The power is back', '9');
  assert.ok((await words(page)).includes('The power was off'));
  await page.getByText(/^6\s*h without power, up to 9\s*°C/).waitFor();
});

test('a cut teaches the clock, and is forgotten again', async (t) => {
  const { page, pass } = await inTheCure(t);
  await pass(36);
  const before = await half(page);
  await page.getByLabel('What it shows').selectOption({ label: 'A middle that has not coloured' });
  await page.getByLabel('How wide the grey middle is').fill('90');
  await page.getByRole('button', { name: 'Save what the cut shows' }).click();
  await page.getByText('1 thing to put right').waitFor();
  await page.getByLabel('How wide the grey middle is').fill('12');
  await page.getByRole('button', { name: 'Save what the cut shows' }).click();
  await page.locator('[data-learnt]').waitFor();
  assert.match(
    (await texts(page.locator('[data-learnt]')))[0],
    /^Birds, 1 cut: Salt goes into it at \d+ % of the usual/,
  );
  assert.notEqual(await half(page), before);
  assert.equal((await kept(page, 'settings'))[0].data.learned.length, 1);
  await page.getByRole('button', { name: 'Forget what the cuts taught' }).click();
  await page.locator('[data-learnt]').waitFor({ state: 'detached' });
  assert.equal(await half(page), before);
});

test('too salty: soaking to a target, with a slice fried as the last word', async (t) => {
  const { page } = await inTheCure(t);
  assert.equal(await page.getByText(/Fry a slice/).count(), 0);
  await page.getByLabel(/Too salty: soak it down to/).fill('1.8');
  await page
    .getByText(/Fry a slice/)
    .first()
    .waitFor();
});

for (const [width, shape] of [
  [390, {}],
  [1280, { viewport: { width: 1280, height: 900 }, isMobile: false, hasTouch: false }],
]) {
  test(`axe finds nothing at ${width} px in three lights, nothing scrolls sideways, and it prints`, async (t) => {
    const { page, pass } = await inTheCure(t, shape);
    await log(page, 'The thermometer reads', '3.4');
    await pass(20);
    await log(page, 'The thermometer reads', '8');
    await pass(24);
    await page.getByLabel(/Too salty: soak it down to/).fill('1.8');
    for (const lit of ['Day', 'Dark', 'Red']) {
      await light(page, lit);
      assert.deepEqual(await violations(page, lit === 'Day' ? [] : ['color-contrast']), [], lit);
      assert.ok((await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)) <= 0, 'too wide');
      if (process.env.SHOTS)
        await page.screenshot({
          path: `${process.env.SHOTS}/clock-${width}-${lit}.png`,
          fullPage: true,
        });
    }
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const sides = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length;
    if (process.env.SHOTS) {
      const { writeFileSync } = await import('node:fs');
      writeFileSync(`${process.env.SHOTS}/clock-${width}.pdf`, pdf);
    }
    assert.ok(sides <= 3, `${sides} sides of paper`);
  });
}

test('a recipe with hours of its own: the cut is asked, and one line says which time holds and why', async (t) => {
  const page = await begin(t);
  await page.clock.setFixedTime(RUB);
  const line = page.locator('.which');
  const holds = /^The recipe says 36 h, the clock \d+ h\. Go by the clock\. By then 9 in 10 pieces this thick/;
  const choose = () => page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByText('Choose your cut: that may be too short').waitFor();
  assert.equal(await line.count(), 0);
  await choose();
  assert.match((await texts(line))[0], holds);
  // A piece twice as thick takes days longer.
  const [usual] = await texts(line);
  for (let mm = 25; mm < 50; mm += mm < 30 ? 1 : 5) await page.getByRole('button', { name: 'Thicker' }).click();
  const [thick] = await texts(line);
  assert.match(thick, /the clock [5-9] days\. Go by the clock/, `after ${usual}`);
  // Whoever opens its link is asked the same, and gets the hour; none before, and a weight in kilograms is asked about.
  await page.goto(await page.locator('#link-text').innerText());
  await page.getByLabel('How much do you have?, grams').fill('1.5');
  await page.getByRole('button', { name: 'It is 1.5 kg' }).click();
  assert.equal(await page.getByLabel('How much do you have?, grams').inputValue(), '1.5 kg');
  assert.equal(await page.locator('.nf.weight .unit').textContent(), '', 'no second unit beside it');
  assert.equal(await page.locator('.ans.time').count(), 0, 'no hour for a piece that nobody has described');
  await choose();
  assert.match((await texts(line))[0], holds);
  assert.match((await texts(page.locator('.ans.time')))[0], /^Leave it in until \w{3} \d\d:00/);
  // In a batch it is asked of what is on the board, and said before the cure is on.
  await startBatch(page, /Saltmarsh/);
  await addPieces(page, { cut: 'Mallard breast', count: '12', weight: '1500' });
  await page.getByRole('button', { name: 'Type the thickness' }).click();
  await page.getByRole('heading', { name: 'Change this size' }).waitFor();
  await page.getByLabel('Thickest part').fill('25');
  await page.getByRole('button', { name: 'Save the change' }).click();
  assert.match((await texts(line))[0], holds);
});

test('in the cure without a thickness: it is asked first, and the hour of the recipe is not said big', async (t) => {
  const page = await begin(t);
  const batch = await startBatch(page, /Saltmarsh/);
  await addPieces(page, { cut: 'Mallard breast', count: '12', weight: '1500' });
  await page.locator('.total').waitFor();
  await weighOut(page, batch);
  for (let left = await page.locator('.line:not(.done) [data-tick]').count(); left > 0; left--) {
    await page.locator('.line:not(.done) [data-tick]').first().check();
    await page.waitForFunction((n) => document.querySelectorAll('.line:not(.done)').length === n, left - 1);
  }
  await goTo(page, `#/batch/${batch}/cure`);
  const until = page.locator('.until');
  assert.match((await texts(until))[0], /^How thick is it\?.*By the recipe: /);
  assert.equal(await until.locator('.big').count(), 0);
});

test('a recipe for so much meat begins a batch with it, its cut and its thickness, at the scale', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByLabel('For how much meat').fill('1500');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  await page.getByRole('textbox', { name: 'Thickest piece' }).fill('31');
  await page.getByRole('button', { name: 'Start a batch of it' }).click();
  await page.waitForURL(/#\/batch\/.*\/weigh$/);
  const [{ data }] = await kept(page, 'batch/');
  const [{ cut, weight, thickness }] = data.pieces;
  assert.deepEqual({ cut, weight, thickness }, { cut: 'mallard-breast', weight: '1500 g', thickness: '31 mm' });
});

test('what is in the cold hours after the rub is asked when it went in: right after, or held until somebody says it was cold', async (t) => {
  const { page, batch, pass } = await inTheCure(t);
  await pass(9);
  const told = async () => (await kept(page, 'batch/'))[0].data.ticks.find(({ of }) => of === 'fridge');
  await page.getByRole('button', { name: 'It is in the fridge' }).click();
  await page.getByText('All of it has been on for 9 h. When did it go into the fridge?').waitFor();
  assert.equal(await told(), undefined, 'asked first');
  await page.getByRole('button', { name: 'Right after' }).click();
  await page.getByRole('button', { name: 'It is in the fridge' }).waitFor({ state: 'detached' });
  const rub = (await kept(page, 'batch/'))[0].data.ticks.find(({ of }) => of === 'rub').at;
  assert.equal((await told()).at, rub);
  assert.equal(await page.locator('.doubt').count(), 0);

  await page.getByRole('button', { name: /^Undo: Put it in the fridge/ }).click();
  await page.getByRole('button', { name: 'It is in the fridge' }).click();
  await page.getByRole('button', { name: 'Only now' }).click();
  await page.locator('.doubt').getByText('perhaps 9 h above 4 °C, not read').waitFor();
  await page.getByRole('link', { name: 'Clear it' }).click();
  assert.equal(await page.locator('#fridge-reads:focus').count(), 1);
  // Meat that reads cold so soon was never warm.
  await page.getByLabel('Where the thermometer was').selectOption({ label: 'In the meat' });
  await log(page, 'The thermometer reads', '4');
  await page.locator('.doubt').waitFor({ state: 'detached' });
});
