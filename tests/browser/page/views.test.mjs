// Every screen, in three lights and two widths: no barrier that axe finds, and no sideways scroll at 320 px.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { phone, violations } from '../harness.mjs';
import { addPieces, begin, goTo, light, startBatch, weighOut } from './steps.mjs';
import { tour } from './tour.mjs';

const WIDTHS = { 390: phone, 1280: { viewport: { width: 1280, height: 900 }, isMobile: false, hasTouch: false } };

for (const [width, shape] of Object.entries(WIDTHS)) {
  for (const lit of ['Day', 'Dark', 'Red']) {
    test(`axe finds nothing at ${width} px in ${lit.toLowerCase()}`, async (t) => {
      const page = await begin(t, shape);
      await light(page, lit);
      await tour(page, async (name) => assert.deepEqual(await violations(page), [], name));
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

test('the weigh-out and the card each print on one A4 side, from any light', async (t) => {
  const page = await begin(t);
  await light(page, 'Dark');
  const sides = async () => {
    const pdf = await page.pdf({ preferCSSPageSize: true });
    return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length;
  };
  const batch = await startBatch(page, /Fallow/);
  await addPieces(page, { cut: 'Fallow haunch', weight: '2220' });
  await weighOut(page, batch);
  assert.equal(await sides(), 1);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Fallow/ }).click();
  await page.locator('#link-text').waitFor();
  assert.equal(await sides(), 1);
});
