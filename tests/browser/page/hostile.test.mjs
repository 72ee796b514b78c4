// Names that nobody would give, on every screen and on paper: nothing leaves its box, nothing overprints, nothing hides.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { read } from '../paper.mjs';
import { finished } from './finished.mjs';
import { outOfBox } from './in-box.mjs';
import { begin, goTo, kept, put, settled } from './steps.mjs';

const NAMES = {
  'one long word': 'Wildschweinbauchspeckseitenräucherkammerschinkenstück'.slice(0, 60),
  'a long address': 'https://example.org/saltmarsh/a/very/long/path?with=query'.slice(0, 60),
  'marks over marks': `D${'\u0301\u0302\u0303\u0308\u0323'.repeat(7)}uck b${'\u0300\u0316'.repeat(8)}`.slice(0, 60),
  'right to left': 'צלי בט מעושן بط مدخن',
  'a family and flags': '👨‍👩‍👧‍👦🇬🇧🏴‍☠️'.repeat(4),
  'wide letters': 'ＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷＷ',
};
const SCREENS = ['today', 'recipes', 'plan', 'stock', 'past', 'keep'];
const STAGES = ['pieces', 'weigh', 'cure', 'fire', 'pack', 'labels'];

for (const [what, name] of Object.entries(NAMES)) {
  test(`named with ${what}: all screens at 320 px, and its labels on paper`, async (t) => {
    const page = await begin(t, { viewport: { width: 320, height: 640 } });
    const batch = finished();
    batch.name = name;
    batch.notes = `${name} ${name}`;
    batch.recipe = { ...batch.recipe, name, notes: name };
    batch.pieces = batch.pieces.map((piece) => ({ ...piece, name }));
    const at = new Date().toISOString();
    await put(page, [
      { key: 'batch/done', v: 1, at, data: batch },
      { key: 'recipe/one', v: 1, at, data: batch.recipe },
    ]);
    for (const hash of [...SCREENS, 'recipe/one', 'recipe/one/edit', ...STAGES.map((stage) => `batch/done/${stage}`)]) {
      await goTo(page, `#/${hash}`);
      await settled(page);
      assert.ok(await page.locator('h1, h2').first().innerText(), hash);
      assert.deepEqual(await outOfBox(page), [], `${hash}, ${what}`);
    }
    await goTo(page, '#/batch/done/labels');
    await page.locator('.lbl').first().waitFor();
    for (const { size } of await read(await page.pdf({ preferCSSPageSize: true }), 40))
      assert.ok(size[0] <= 216 && size[1] <= 297, `${size}`);
    // Kept whole: nothing was set aside, nothing cut.
    const [one] = (await kept(page, 'batch/')).filter(({ key }) => key === 'batch/done');
    assert.equal(one.data.name, name);
  });
}

test('a name is stored composed, and what shows nothing is no name', async (t) => {
  const page = await begin(t, { at: '#/recipes' });
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Pa\u0302te\u0301 de lie\u0300vre');
  await page.getByLabel('Tag', { exact: true }).focus();
  await page.waitForFunction(() => document.title.includes('\u00e2t\u00e9'));
  const names = (await kept(page, 'recipe/')).map(({ data }) => data.name);
  assert.ok(names.includes('P\u00e2t\u00e9 de li\u00e8vre'), names.join());
  for (const nothing of ['\u3164', '\u200d', '\u2800']) {
    await page.getByLabel('Name', { exact: true }).fill(nothing);
    await page.getByLabel('Tag', { exact: true }).focus();
    await page.locator('.field.bad').first().waitFor();
    const still = (await kept(page, 'recipe/')).map(({ data }) => data.name);
    assert.deepEqual(still.toSorted(), names.toSorted());
  }
});
