// Every screen, in three lights and two widths: no barrier that axe finds, and no sideways scroll at 320 px.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { phone, violations } from '../harness.mjs';
import { read } from '../paper.mjs';
import { addPieces, begin, goTo, light, startBatch, weighOut } from './steps.mjs';
import { tour } from './tour.mjs';

const WIDTHS = { 390: phone, 1280: { viewport: { width: 1280, height: 900 }, isMobile: false, hasTouch: false } };

for (const [width, shape] of Object.entries(WIDTHS)) {
  for (const lit of ['Day', 'Dark', 'Red']) {
    test(`axe finds nothing at ${width} px in ${lit.toLowerCase()}`, async (t) => {
      const page = await begin(t, shape);
      await light(page, lit);
      // Names, roles and order are the same in every light; what the eye can tell apart is not.
      const rules = lit === 'Day' ? [] : ['color-contrast'];
      await tour(page, async (name) => assert.deepEqual(await violations(page, rules), [], name));
    });
  }
}

test('at 320 px, and at 200 % text, nothing scrolls sideways', async (t) => {
  const page = await begin(t, { viewport: { width: 320, height: 640 } });
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  await tour(page, async (name) => {
    assert.ok((await wide()) <= 0, `${name}, ${await wide()} px too wide`);
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    const more = await wide();
    await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    assert.ok(more <= 0, `${name} at 200 % text, ${more} px too wide`);
  });
});

test('the weigh-out and the card each print on one side of A4 and of Letter, from any light', async (t) => {
  const page = await begin(t);
  await light(page, 'Dark');
  const onePage = async () => {
    for (const [format, size] of Object.entries({ A4: [210, 297], Letter: [216, 279] })) {
      const pages = await read(await page.pdf({ format }), 72);
      assert.deepEqual(
        pages.map((each) => each.size),
        [size],
        format,
      );
    }
  };
  const batch = await startBatch(page, /Fallow/);
  await addPieces(page, { cut: 'Fallow haunch', weight: '2220' });
  await weighOut(page, batch);
  await onePage();
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Fallow/ }).click();
  await page.locator('#link-text').waitFor();
  await onePage();
});
