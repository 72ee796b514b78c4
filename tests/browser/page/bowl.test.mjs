// The bowl as a person fills it, in whatever order: the scale's figure is right after each tick.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { begin, goTo, kept, startDemo, texts, tick, weighOut } from './steps.mjs';

const LINES = ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3'];
const ORDERS = [
  [4, 3, 2, 1, 0],
  [2, 0, 4, 1, 3],
  [1, 4, 0, 3, 2],
  [3, 1, 2, 0, 4],
];

const grams = (/** @type {string} */ text) => Math.round(Number(text.replace(/[^\d.]/g, '')) * 10);

for (const order of ORDERS) {
  test(`ticked in the order ${order.map((n) => n + 1).join(' ')}`, async (t) => {
    const page = await begin(t);
    await weighOut(page, await startDemo(page));
    let bowl = 0;
    for (const line of order) {
      const row = page.locator('.line', { has: page.locator(`[data-tick="${LINES[line]}"]`) });
      const [add] = await texts(row.locator('.add'));
      bowl += grams(add);
      await tick(page, LINES[line]);
      // What it showed stands on the printed sheet; what it is to show next, large, with the line in hand.
      assert.equal(grams(await row.locator('.window').textContent()), bowl, `${LINES[line]}: ${add} more`);
      if (await page.locator('.fig.noprint .add').count()) {
        const [next] = await texts(page.locator('.fig.noprint .add'));
        const [shows] = await texts(page.locator('.fig.noprint .window'));
        assert.equal(grams(shows), bowl + grams(next), `after ${LINES[line]}, ${next} more`);
      }
    }
    assert.equal(grams((await texts(page.locator('.sumline .num')))[0]), bowl);
  });
}

test('a size in a bag of its own is weighed out by itself, and each bag is told', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await page.getByRole('button', { name: /^Change .*Teal/ }).click();
  await page.getByRole('button', { name: 'Next bag' }).click();
  await page.getByRole('button', { name: 'Save the change' }).click();
  await page.getByText('The size is changed.').waitFor();
  const { pieces } = (await kept(page, 'batch/'))[0].data;
  assert.deepEqual(
    pieces.map(({ bag }) => bag ?? 0),
    [0, 0, 1],
  );
  await weighOut(page, batch);
  // Common practice, no source: the cure of each bag goes by the meat that lies in it.
  const each = await texts(page.locator('.answer .fig.noprint .add'));
  const heads = await texts(page.locator('.answer .fig.noprint > div:first-child .cap'));
  assert.deepEqual(
    heads.map((text) => text.replace(/,.*/, '')),
    ['Bag 1', 'Bag 2'],
  );
  const meat = heads.map((text) => Number(/, ([\d\s]+)\s?g/.exec(text)[1].replace(/\s/g, '')));
  const [one, two] = each.map(grams);
  // Both are rounded down to a tenth of a gram, so that the small one may lack nearly all of one.
  assert.ok(one / meat[0] >= two / meat[1] && (two + 1) / meat[1] > one / meat[0], `${each} on ${meat}`);
  await tick(page, 'cure:0');
  assert.match(
    await page.locator('.line', { has: page.locator('[data-tick="cure:0"]') }).innerText(),
    /Bag 1:.*Bag 2:/s,
  );
});

test('a bone is no meat: with it in, less cure for the same weight', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  const cure = async () => {
    await weighOut(page, batch);
    return grams((await texts(page.locator('.answer .fig.noprint .add')))[0]);
  };
  const before = await cure();
  await goTo(page, `#/batch/${batch}/pieces`);
  await page
    .getByRole('button', { name: /^Change / })
    .first()
    .click();
  await page.getByLabel('in, and weighed with it').check();
  await page.getByRole('button', { name: 'Save the change' }).click();
  await page.getByText('The size is changed.').waitFor();
  assert.equal((await kept(page, 'batch/'))[0].data.pieces[0].bone_in, true);
  assert.ok((await cure()) < before);
});
