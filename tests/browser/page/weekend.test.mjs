// A whole weekend by touch at 390 px with no signal: the bag is planned, three batches are begun and weighed, one is
// held, one freezes by mistake, labels are printed, packs go into the freezer and to friends, and a year later the next
// batch opens with the notes. What is known once is not typed again.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { host, open, phone, scan, storedForOffline, visit } from '../harness.mjs';
import { kept, logReading, settled, texts } from './steps.mjs';

/** With `KEEP_SHOTS` set, every station is kept there as a picture to look at. */
async function look(page, name) {
  const folder = process.env.KEEP_SHOTS;
  if (folder) await page.screenshot({ path: `${folder}/weekend-${name}.png`, fullPage: true });
}

const heading = (page, name) => page.getByRole('heading', { name, exact: true }).waitFor();
const button = (page, name) => page.getByRole('button', { name });
const at = (page, time) => page.clock.setFixedTime(new Date(time));

/** Back to Batches: out of the labels to the batch and out of that by its tag, then by the place. */
async function toToday(page) {
  const back = page.locator('header a').first();
  while ((await page.locator('.places').count()) === 0) {
    const way = await back.getAttribute('href');
    await back.tap();
    await page.waitForFunction((way) => document.querySelector('header a')?.getAttribute('href') !== way, way);
  }
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Batches' }).tap();
  await page.locator('.places [aria-current]', { hasText: 'Batches' }).waitFor();
}

async function door(page, name, place = 'More') {
  await toToday(page);
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: place }).tap();
  await page.locator('main').getByRole('link', { name }).tap();
  await page.locator('main h1').first().waitFor();
}

async function cameIn(page, what, label, amount) {
  await page.getByLabel('What', { exact: true }).selectOption({ label: what });
  await page.getByLabel(label, { exact: true }).fill(amount);
  await button(page, 'Write it down').tap();
  await page.getByText(`${what}: ${amount}`).waitFor();
}

async function toPlan(page, what, hunters, each, recipe) {
  const list = page.locator('.plate .rows').first().locator('> li');
  const before = await list.count();
  await page.getByLabel('What is it').selectOption({ label: what });
  await page.getByLabel('People', { exact: true }).fill(hunters);
  await page.getByLabel('Birds or animals for each').fill(each);
  await button(page, 'Add to the plan').tap();
  await list.nth(before).waitFor();
  const choice = list.nth(before).getByLabel('For which recipe');
  if ((await choice.evaluate((one) => one.selectedOptions[0].text)) !== recipe)
    await choice.selectOption({ label: recipe });
}

/** Puts each size class on the scale in turn. */
async function weighed(page, classes) {
  for (const [name, weight, thickness] of classes) {
    await button(page, `Weigh the ${name}`).tap();
    await heading(page, 'Change this size');
    await page.getByLabel('Weight of all of them').fill(weight);
    await page.getByLabel('Thickest part').fill(thickness);
    await button(page, 'Save the change').tap();
    await page.getByRole('row', { name: new RegExp(`${name}.*${thickness} mm thick`, 's') }).waitFor();
  }
  await page.getByRole('link', { name: 'Go to Weigh' }).tap();
  await heading(page, 'Weigh');
}

/** Ticks what is to be ticked in sight, one after the other; what is early is meant so. */
async function tickAll(page) {
  const boxes = page.locator('.line [data-tick]:not(:checked)');
  // Lines move up under the finger, and the page takes a second tap at one place within half a second for a slip of the
  // hand. So such a tap is made again, as a hand would.
  for (let n = 0; n < 60; n += 1) {
    const left = await boxes.count();
    if (left === 0) return;
    await boxes.first().tap();
    const sure = button(page, 'Yes, now');
    if (await sure.count()) await sure.tap();
    await page
      .waitForFunction((n) => document.querySelectorAll('.line [data-tick]:not(:checked)').length < n, left, {
        timeout: 1000,
      })
      .catch(() => {});
  }
  assert.fail('not all can be ticked');
}

/** All is on: into the fridge, and on to the cure. */
async function toTheCure(page) {
  await button(page, 'It is in the fridge').tap();
  // The way on lies where the button lay: a tap within half a second of another is taken for a slip.
  await page.waitForTimeout(600);
  await page.getByRole('link', { name: 'All in. Go to the cure' }).tap();
}

test('a weekend on the saltmarsh, from the bag to the gift and to the next year', async (t) => {
  const { address, stop } = await host(t);
  const context = await open(t, phone);
  const page = await visit(context, address);
  await storedForOffline(page);
  await stop();
  await context.setOffline(true);
  await at(page, '2026-11-14T17:00');
  await page.reload();
  await page.locator('html[data-ready]').waitFor({ state: 'attached' });
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

  // What is in the house.
  await door(page, /^Freezer and stock/, 'Batches');
  await page.getByText('Write down what came in').tap();
  await cameIn(page, 'Cure no. 1', 'How much', '20 g');
  await cameIn(page, 'Fine sea salt', 'How much', '1000 g');
  await cameIn(page, 'Bags', 'How many', '30');
  await look(page, '01-stock');

  // The bag: three recipes.
  await door(page, /^Shopping list/);
  await toPlan(page, 'Mallard breast (from memory)', '3', '4', 'Saltmarsh duck breasts');
  await toPlan(page, 'Teal breast, green-winged (from memory)', '3', '2', 'Saltmarsh duck breasts');
  await toPlan(page, 'Wild boar belly (from memory)', '1', '1', 'Wild boar belly, smoked');
  await toPlan(page, 'Brown hare, hind legs', '1', '2', 'Marsh hare, cured and braised');
  await look(page, '02-bag');
  const buy = await texts(page.locator('.plate .rows').nth(1).locator('> li'));
  assert.match(
    buy.find((line) => line.startsWith('Cure no. 1')),
    /20 g in the house: (enough|[\d.]+ g to buy)\./,
  );
  assert.match(
    buy.find((line) => line.startsWith('Fine sea salt')),
    /1000 g in the house: enough\./,
  );
  assert.match(
    buy.find((line) => line.startsWith('Bags')),
    /30 in the house: enough\./,
  );
  assert.ok((await wide()) <= 0);

  await button(page, /^Start a batch: Saltmarsh duck breasts, 36 pieces/).tap();
  await page.getByText('Started from this plan, still to be weighed').waitFor();
  await button(page, /^Start a batch: Wild boar belly/).tap();
  await button(page, /^Start a batch: Wild boar belly/).waitFor({ state: 'detached' });
  await look(page, '03-bag-two-begun');
  await button(page, /^Start a batch: Marsh hare/).tap();
  await page.waitForURL(/#\/today$/);
  assert.equal((await kept(page, 'batch/')).length, 3);
  await look(page, '04-today-three-to-weigh');

  // On the scale, and into the cure.
  await page
    .getByRole('link', { name: /Saltmarsh duck breasts/ })
    .last()
    .tap();
  await heading(page, 'Pieces');
  await weighed(page, [
    ['Mallard breast', '2640', '24'],
    ['Teal breast, green-winged', '420', '14'],
  ]);
  await look(page, '05-weigh-out');
  await tickAll(page);
  await toTheCure(page);
  await heading(page, 'Cure');
  await toToday(page);
  await page
    .getByRole('link', { name: /Wild boar belly, smoked/ })
    .last()
    .tap();
  await heading(page, 'Pieces');
  await weighed(page, [['Wild boar belly', '1150', '32']]);
  await tickAll(page);
  await toTheCure(page);
  await heading(page, 'Cure');

  // The hare: a tablespoon went in for a teaspoon, and nothing goes on.
  await toToday(page);
  await page
    .getByRole('link', { name: /Marsh hare, cured and braised/ })
    .last()
    .tap();
  await heading(page, 'Pieces');
  await weighed(page, [['Brown hare, hind legs', '1490', '45']]);
  await page.getByText('I put in something else').last().tap();
  await page.getByLabel('Cure that went in').fill('1');
  await page.getByLabel('tablespoon', { exact: true }).tap();
  await button(page, 'Judge what went in').tap();
  await page.locator('.verdict.stop').first().waitFor();
  await look(page, '06-held');
  await toToday(page);
  await page.getByRole('link', { name: /Marsh hare, cured and braised is held/ }).waitFor();
  await look(page, '07-today-held');

  // In the night the belly froze in the wrong drawer.
  await at(page, '2026-11-15T08:30');
  await door(page, /^Something went wrong/);
  await page.getByRole('link', { name: /^It froze/ }).tap();
  await button(page, 'In the cure').tap();
  await page.getByText('Go on with care', { exact: true }).waitFor();
  await page.waitForTimeout(600);
  await button(page, /Wild boar belly, smoked/).tap();
  await page.getByRole('link', { name: /Wild boar belly, smoked/ }).waitFor();
  await look(page, '08-card-froze');
  await page.getByRole('link', { name: /Wild boar belly, smoked/ }).tap();
  await heading(page, 'Cure');
  await page.getByLabel('What you saw').selectOption({ label: 'The meat is frozen' });
  await page.locator('#fridge-at').fill('2026-11-14T22:00');
  await button(page, 'Put it in the log').tap();
  await page.locator('.readings li').first().waitFor();
  await look(page, '09-frozen-logged');

  // The ducks go their way: the refrigerator is read in the morning and before they come out.
  const ducks = async (stage) => {
    await toToday(page);
    await page
      .getByRole('link', { name: /Saltmarsh duck breasts/ })
      .last()
      .tap();
    await page.getByRole('navigation', { name: 'Stages of this batch' }).getByRole('link', { name: stage }).tap();
    await heading(page, stage);
  };
  for (const time of ['2026-11-15T09:00', '2026-11-16T05:30']) {
    await at(page, time);
    await ducks('Cure');
    const before = await page.locator('.readings li').count();
    await page.getByLabel('What you saw').selectOption({ label: 'The thermometer reads' });
    await page.getByLabel('Temperature').fill('3');
    await button(page, 'Put it in the log').tap();
    await page.locator('.readings li').nth(before).waitFor({ state: 'attached' });
  }
  await tickAll(page);
  await look(page, '10-cure');

  // Each step is ticked when it begins.
  const begins = async (time, step) => {
    await at(page, time);
    await ducks('Fire');
    const box = page.locator(`[data-tick="step:${step}"]`);
    await box.tap();
    const sure = button(page, 'Yes, now');
    if (await sure.count()) await sure.tap();
    await page.locator('.line', { has: box }).locator('.stamp').waitFor();
  };
  // A day uncovered, then over the fire: every size is read until it is hot all through, and comes out.
  await begins('2026-11-16T06:00', 2);
  await begins('2026-11-17T08:00', 3);
  await page.locator('summary', { hasText: 'Before the fire' }).tap();
  await page.locator('label', { hasText: 'Fan' }).tap();
  await page.locator('label', { hasText: 'Nobody at risk' }).tap();
  await settled(page);
  const sizes = ['Mallard breast', 'Teal breast'];
  const readAll = async (course) => {
    for (const [time, celsius] of course) {
      await at(page, `2026-11-17T${time}`);
      for (const size of sizes) await logReading(page, size, celsius);
    }
  };
  await readAll([
    ['08:00', '3'],
    ['08:30', '22'],
    ['09:00', '45'],
    ['09:30', '62'],
  ]);
  await begins('2026-11-17T09:40', 4);
  await readAll([['10:00', '76']]);
  for (const size of sizes) {
    // What moved under the thumb takes no touch for half a second.
    await page.waitForTimeout(600);
    await button(page, new RegExp(`^Is out ?: ${size}`)).tap();
    await button(page, new RegExp(`^Not out ?: ${size}`)).waitFor();
  }
  await look(page, '10-fire');

  // Down to 21 °C within two hours and to 4 °C in four more, and then into the packs.
  await ducks('Pack');
  await readAll([
    ['10:20', '66'],
    ['11:30', '19'],
    ['13:00', '9'],
    ['15:00', '3'],
  ]);
  await at(page, '2026-11-17T21:00');
  await ducks('Pack');
  await tickAll(page);
  await look(page, '10-pack');

  // From the last tick to the labels, to the list of the freezer, to the gift.
  await page.getByRole('link', { name: 'Label the packs and put them on the list' }).tap();
  await page.getByLabel('How many packs').fill('4');
  await page.getByLabel('Weight of each pack').fill('640, 610, 655, 580');
  await page.getByLabel('Frozen', { exact: true }).tap();
  await page.locator('.lbl').nth(3).waitFor();
  await look(page, '11-labels');
  await page.emulateMedia({ media: 'print' });
  const link = await scan(page.locator('.lbl .qr').first());
  assert.match(String(link), /#r1\./);
  assert.match((await page.pdf({ preferCSSPageSize: true })).toString('latin1', 0, 8), /^%PDF-/);
  await page.emulateMedia({ media: null });
  await button(page, 'These 4 packs went into the freezer').tap();
  await page.getByText('4 packs of this batch are on the list.').waitFor();
  assert.match((await texts(page.locator('.lbl .top2')))[1], /Pack 2 of 4, SD-\w{4} 610 g/, 'printed again, not typed');
  await look(page, '12-packs-on-the-list');

  await button(page, 'Give one away').tap();
  await page.getByLabel('Who gets it').fill('The neighbour');
  await page.getByLabel('Species and number in the gift').fill('6 mallard breast');
  await look(page, '13-gift-tag');
  assert.match(
    await page.locator('.lbl').first().innerText(),
    /6 mallard breast[^]*640 g[^]*Keep frozen[^]*Given to The neighbour, 17 Nov 2026/,
  );
  await page.getByLabel('Nobody', { exact: true }).tap();
  await button(page, 'It was given to The neighbour: write it down').tap();
  await page.locator('main').getByText('Written down: The neighbour has it.').waitFor();
  await door(page, /^Freezer and stock/, 'Batches');
  assert.equal(await page.locator('section').filter({ hasText: 'Freezer and fridge' }).locator('li').count(), 3);
  await button(page, /^Given away/)
    .first()
    .tap();
  await page.getByLabel('Who gets it').fill('The ferryman');
  await page.getByLabel('Nobody', { exact: true }).check();
  await button(page, 'Write it down').last().tap();
  await page.getByText(/The ferryman, 17 Nov 2026/).waitFor();
  await look(page, '14-stock-after-gifts');
  const gone = (await kept(page, 'stock/')).map(({ data }) => data).filter((one) => one.gone);
  assert.deepEqual(gone.map(({ to, weight }) => [to, weight]).sort(), [
    ['The ferryman', '610 g'],
    ['The neighbour', '640 g'],
  ]);

  // For next time; what was packed is noted already.
  await toToday(page);
  await page
    .getByRole('link', { name: /Saltmarsh duck breasts/ })
    .last()
    .tap();
  assert.equal(await page.getByLabel('Weight of all packs').inputValue(), '2485');
  await page.getByLabel('Taste, in three words').fill('salt, smoke, marsh');
  await page.getByLabel('What to change').fill('Less juniper');
  await page.getByLabel('What to change').blur();
  await button(page, 'Close the batch').tap();
  await page.getByText('is closed.').waitFor();
  const [duck] = (await kept(page, 'batch/')).map(({ data }) => data).filter(({ closed }) => closed);
  assert.deepEqual(duck.after, { out: '2485 g', taste: 'salt, smoke, marsh', change: 'Less juniper' });
  assert.equal(duck.killed, '2026-11-14', 'the day of the kill came along from the bag');

  // A year on: the own weights have taken over, and the batch opens with what was to change.
  await at(page, '2027-11-13T16:00');
  await page.reload();
  await page.locator('html[data-ready]').waitFor({ state: 'attached' });
  await door(page, /^Shopping list/);
  await toPlan(page, 'Mallard breast (from memory)', '2', '4', 'Saltmarsh duck breasts');
  const [row] = await texts(page.locator('.plate .rows').first().locator('> li'));
  // 2640 g of 24 breasts: 110 g each, so 16 of them 1760 g.
  assert.match(row, /likely 1760 g.*Your own weights/);
  await look(page, '15-next-year-bag');
  await button(page, /^Start a batch: Saltmarsh duck breasts/).tap();
  await heading(page, 'Pieces');
  assert.match(
    await page.locator('.last-time').innerText(),
    /Last time, 14 Nov 2026[^]*To change: Less juniper[^]*salt, smoke, marsh/,
  );
  await look(page, '16-next-year-pieces');

  // And the year before lies in the book with its weights.
  await door(page, /^All batches/, 'Batches');
  await page
    .getByLabel('Year')
    .selectOption({ label: /2026/ })
    .catch(() => page.getByLabel('Year').selectOption('2026'));
  await page.getByRole('heading', { name: '2026' }).waitFor();
  assert.match((await texts(page.getByText(/^Came out/)))[0], /2485 g of 3060 g, 81.2 %/);
  await look(page, '17-the-year');
  assert.ok((await wide()) <= 0);
});
