// A recipe that somebody wrote is read, settled, kept, scaled and handed on, by keyboard alone on a phone's width.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, goTo, kept, texts } from './steps.mjs';

const PROSE =
  'For 10 lb of boar belly mix 4 oz salt, 2 tbsp of brown sugar, two level teaspoons of pink salt and a heaping ' +
  'tablespoon of cracked pepper. Rub it in well, leave 7 days in the refrigerator and turn every day.';

/** Tabs on until this holds the focus. */
async function tabTo(page, locator) {
  for (let n = 0; n < 80; n += 1) {
    if (await locator.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  assert.fail('the keyboard does not get there');
}

test('prose with two ambiguities: settled, kept, scaled to 2.3 kg and shared, by keyboard', async (t) => {
  const page = await begin(t);
  await tabTo(page, page.getByRole('link', { name: /^Read a recipe/ }));
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Read a recipe' }).waitFor();
  await tabTo(page, page.getByLabel('The recipe, in lines or in prose'));
  await page.keyboard.insertText(PROSE);

  const lines = await texts(page.locator('.lines-read > li'));
  assert.equal(lines.length, 5, 'four things and the steps');
  assert.match(lines[0], /4 oz salt.*Table salt 113.4 g/);
  assert.match(lines[2], /Not settled: Cure no. 1/);
  assert.match(lines[4], /A step/);
  await page.getByText('2 things to settle first').waitFor();
  assert.equal(await page.getByRole('button', { name: 'Keep as a card' }).count(), 0);

  // A group of radio buttons is entered by its first, and chosen with the space bar.
  await tabTo(page, page.getByLabel('Packed', { exact: true }));
  await page.keyboard.press('Space');
  await page.getByText('One thing to settle first').waitFor();
  await tabTo(page, page.getByLabel(/^Cure no. 1,/));
  await page.keyboard.press('Space');
  assert.match(await page.locator('.verdict').innerText(), /May be over/);

  await tabTo(page, page.getByLabel('What it is called'));
  await page.keyboard.press('Control+A');
  await page.keyboard.insertText('Boar belly from a friend');
  await tabTo(page, page.getByRole('button', { name: 'Keep as a card' }));
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Boar belly from a friend' }).waitFor();
  const [card] = (await kept(page, 'recipe/')).map(({ data }) => data).filter(({ name }) => /friend/.test(name));
  assert.match(card.tag, /^B[A-Z]$/);
  assert.match(card.notes, /leave 7 days/);

  const weight = page.getByLabel('For how much meat');
  await tabTo(page, weight);
  await page.keyboard.press('Control+A');
  await page.keyboard.insertText('2.3 kg');
  await page.keyboard.press('Tab');
  // 11.34 g of cure on 4535.9 g is 5.75 g on 2300 g; the 0.1 g scale takes it down to 5.7 g.
  await page.getByRole('cell', { name: '5.7 g', exact: true }).waitFor();
  assert.match(await page.locator('#link-text').innerText(), /#r1\./);
});

test('another text is not settled by the answers to the first', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/read');
  const box = page.getByLabel('The recipe, in lines or in prose');
  await box.fill('Rub for 5 lb meat\n1 tsp pink salt');
  await page.getByLabel(/^Cure no. 1,/).check();
  await page.getByRole('button', { name: 'Keep as a card' }).waitFor();
  await box.fill('Rub for 5 lb meat\n1 tbsp pink salt');
  await page.getByText('One thing to settle first').waitFor();
  await box.fill('Rub for 5 lb meat\nno salt at all\n1 tsp cure no. 1');
  const lines = await texts(page.locator('.lines-read > li'));
  assert.match(lines[1], /no salt at all.*Not read/);
});

test('something of my own is read by my own spoon', async (t) => {
  const page = await begin(t, { at: '#/spoons' });
  await page.getByLabel('What is in the spoon').selectOption({ label: 'Something of my own' });
  await page.getByLabel('What it is called').fill('Marsh seed mix');
  await page.getByLabel(/^The weights|^Weights/).fill('2; 2.2; 2.4');
  await page.getByRole('button', { name: /Keep/ }).first().click();
  await page.getByText('Your spoon is kept.').first().waitFor();
  await goTo(page, '#/read');
  await page.getByLabel('The recipe, in lines or in prose').fill('Rub for 1 kg of meat\n2 tsp marsh seed mix');
  const lines = await texts(page.locator('.lines-read > li'));
  // A quarter of the distance beyond each end, and half a step of the 0.1 g scale: 1.85 to 2.55 g, twice.
  assert.match(lines[1], /3.7 to 5.1 g Usually 4.4 g/);
});
