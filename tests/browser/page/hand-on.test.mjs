// A recipe goes from hand to hand: as a link, as a square, cut short, and twice under one name.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { scan } from '../harness.mjs';
import { begin, goTo, kept, settled, texts } from './steps.mjs';

const NAME = 'Saltmarsh duck breasts';
const recipes = async (page) => (await kept(page, 'recipe/')).map(({ data }) => data);

async function openCard(page, name = NAME) {
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name }).click();
  await page.locator('#link-text').waitFor();
}

/** Deletes the card and gives its link. */
async function linkOfDeleted(page) {
  await openCard(page);
  const link = await page.locator('#link-text').innerText();
  await page.getByRole('button', { name: 'Delete it' }).click();
  await page.getByText('is deleted.').waitFor();
  return link;
}

test('the square on the screen reads as the link beside it', async (t) => {
  const page = await begin(t);
  await openCard(page);
  assert.deepEqual((await texts(page.locator('.tbl thead th'))).slice(0, 2), ['On trimmed weight', '%']);
  const link = await page.locator('#link-text').innerText();
  assert.match(link, /^http:\/\/localhost:\d+\/#r1\.[\w-]+$/);
  assert.equal(await scan(page.locator('.qr')), link);
});

test('a link shows the card with its verdict, and keeps it only when told to', async (t) => {
  const page = await begin(t);
  const link = await linkOfDeleted(page);
  await page.goto(link);
  await page.getByRole('heading', { name: NAME }).waitFor();
  assert.match(await page.locator('.verdict').innerText(), /In range/);
  assert.equal((await recipes(page)).length, 4);

  await page.getByRole('link', { name: 'Not now' }).click();
  await page.getByRole('heading', { name: 'Recipes' }).waitFor();
  assert.equal((await recipes(page)).length, 4);

  await page.goto(link);
  await page.getByRole('button', { name: 'Save this recipe' }).click();
  await page.getByText(`${NAME} is saved.`).waitFor();
  assert.equal((await recipes(page)).filter(({ name }) => name === NAME).length, 1);
  assert.match(page.url(), /#\/recipe\//);
});

test('a card of the same name is never replaced without a word', async (t) => {
  const page = await begin(t);
  await openCard(page);
  const link = await page.locator('#link-text').innerText();
  await page.goto(link);
  await page.getByText('You already have this recipe.').waitFor();

  await openCard(page);
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await page.getByLabel('Notes for next time').fill('Less juniper.');
  await page.getByLabel('Name').focus();
  await settled(page);
  await page.goto(link);
  await page.getByText('You have another recipe called').waitFor();
  await page.getByRole('button', { name: 'Save both' }).click();
  await page.getByText('is saved.').waitFor();
  const two = (await recipes(page)).filter(({ name }) => name.startsWith(NAME));
  assert.deepEqual(two.map(({ name }) => name).sort(), [NAME, `${NAME}, copy`]);
  assert.equal(two.find(({ name }) => name === NAME).notes, 'Less juniper.');
});

for (const [what, harm] of [
  ['cut', (link) => link.slice(0, -30)],
  ['altered', (link) => link.slice(0, -12) + (link.at(-12) === 'A' ? 'B' : 'A') + link.slice(-11)],
]) {
  test(`a link that was ${what} says so and keeps nothing`, async (t) => {
    const page = await begin(t);
    const link = await linkOfDeleted(page);
    await page.goto(harm(link));
    await page.getByRole('heading', { name: 'This link cannot be opened' }).waitFor();
    assert.match(await page.locator('.verdict').innerText(), what === 'cut' ? /cut/ : /altered|changed|damaged/);
    assert.equal((await recipes(page)).length, 4);
  });
}

test('a code that is pasted is opened as the link is', async (t) => {
  const page = await begin(t);
  const link = await linkOfDeleted(page);
  await page.getByRole('link', { name: 'Open a link from a friend' }).click();
  await page.getByLabel('Paste the link or the code').fill(link.split('#')[1]);
  await page.getByRole('button', { name: 'Look at it' }).click();
  await page.getByRole('button', { name: 'Save this recipe' }).click();
  await page.getByText(`${NAME} is saved.`).waitFor();
});

test('a recipe name is text, whatever is in it', async (t) => {
  const page = await begin(t);
  await openCard(page);
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  const hostile = '<img src=x onerror=alert(1)>';
  await page.getByLabel('Name').fill(hostile);
  await page.getByLabel('Tag').focus();
  await page.locator('h1').waitFor();
  await page.getByRole('link', { name: 'Done' }).click();
  await page.getByRole('heading', { name: hostile }).waitFor();
  assert.equal(await page.locator('main img').count(), 0);
  await page.goto(await page.locator('#link-text').innerText());
  assert.deepEqual(await texts(page.locator('h1')), [hostile]);
});

test('a link is found in what was pasted around it', async (t) => {
  const page = await begin(t);
  await openCard(page);
  const link = await page.locator('#link-text').innerText();
  for (const text of [`See ${link} thanks`, `<${link}>.`, `Duck:\n${link}, try it`]) {
    await goTo(page, '#/open');
    await page.getByLabel('Paste the link or the code').fill(text);
    await page.getByRole('button', { name: 'Look at it' }).click();
    await page.getByRole('heading', { name: 'Saltmarsh duck breasts' }).waitFor();
    await goTo(page, '#/today');
  }
});

test('a recipe for duck warns of duck: boar is named once boar is chosen', async (t) => {
  const page = await begin(t);
  await openCard(page);
  const care = () => page.locator('.cautions').innerText();
  assert.doesNotMatch(await care(), /boar|bear|Cold smoke/i);
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  assert.match(await care(), /every bird, wild ones too/);
  assert.doesNotMatch(await care(), /boar|bear|Cold smoke/i);
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Wild boar belly' });
  assert.match(await care(), /Wild boar, bear and their kin/);
});

test('from a recipe its link is one tap away, and only a link is copied; the QR code is one tap too', async (t) => {
  const page = await begin(t);
  await openCard(page);
  const copy = page.getByRole('button', { name: 'Copy the link' }).first();
  const { top, bottom } = await copy.evaluate((button) => button.getBoundingClientRect());
  assert.ok(top > 0 && bottom < 844, `${top} to ${bottom}`);
  await copy.tap();
  await page.getByRole('button', { name: 'Copied. Copy again' }).first().waitFor();
  assert.equal(await page.getByRole('button', { name: /^Copy/ }).count(), 0);
  await page.getByRole('button', { name: 'QR code, paper' }).tap();
  assert.ok(await page.getByRole('heading', { name: 'Send it' }).evaluate((h) => h === document.activeElement));
  await page.getByRole('button', { name: 'Duplicate it' }).waitFor();
});

test('a link whose recipe has too much cure says so first; “Open mine” takes the weight along', async (t) => {
  const page = await begin(t);
  await openCard(page);
  const good = await page.locator('#link-text').innerText();
  await page.goto(good);
  await page.getByLabel('How much do you have?, grams').fill('2300');
  await page.getByRole('button', { name: 'Open mine' }).click();
  await page.getByRole('button', { name: 'Start a batch of it' }).waitFor();
  assert.equal(await page.getByLabel('For how much meat').inputValue(), '2300 g');

  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await page.getByLabel('Aim, going in').fill('400');
  await page.getByLabel('Name').focus();
  await settled(page);
  await page.getByRole('link', { name: 'Done' }).click();
  const bad = await page.locator('#link-text').innerText();
  await page.getByRole('button', { name: 'Delete it' }).click();
  await page.getByText('is deleted.').waitFor();
  await page.goto(bad);
  await page.getByRole('heading', { name: NAME }).waitFor();
  const first = await page.locator('.leaf').evaluate((leaf) => {
    const [stop, meat, table] = ['.verdict.stop', '.weight', '.tbl'].map((of) => leaf.querySelector(of));
    return Boolean(stop && stop.compareDocumentPosition(meat) & 4 && stop.compareDocumentPosition(table) & 4);
  });
  assert.ok(first, 'before what could be weighed');
  assert.equal(await page.locator('.verdict.stop').count(), 1, 'and once');
});
