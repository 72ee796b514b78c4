// What the root element says of the page: the English of the person's country, and which way it runs.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { dist, host, open, phone, visit } from '../harness.mjs';
import { begin, goTo } from './steps.mjs';

/** What the browser speaks, what the page says that it speaks, and how it spells there. */
const SPOKEN = [
  ['en-US', 'en-US', 'Color'],
  ['en-GB', 'en-GB', 'Colour'],
  ['en', 'en-US', 'Color'],
  ['en-ZA', 'en-ZA', 'Colour'],
  ['de-DE', 'en-GB', 'Colour'],
  // An American whose browser speaks Spanish.
  ['es-US', 'en-US', 'Color'],
];

for (const [locale, lang, colour] of SPOKEN) {
  test(`a browser that speaks ${locale} gets a page in ${lang}`, async (t) => {
    const page = await begin(t, { locale });
    const root = page.locator('html');
    assert.equal(await root.getAttribute('lang'), lang);
    assert.equal(await root.getAttribute('dir'), 'ltr');
    await goTo(page, '#/sources');
    const words = await page.locator('main').textContent();
    assert.ok(new RegExp(`\\b${colour}`, 'i').test(words), `${colour} on the page`);
  });
}

test('before any script has run it says its language too, and so does the manifest', () => {
  const html = readFileSync(`${dist}index.html`, 'utf8');
  assert.match(html, /<html lang="en-GB" dir="ltr">/);
  assert.match(html, /<meta name="description" content="Weighs cure for exactly this weight[^"]+">/);
  assert.match(html, /<noscript><p class="waiting">Cure Reckoner needs JavaScript[^<]+<\/p><\/noscript>/);
  const { lang, dir, description } = JSON.parse(readFileSync(`${dist}manifest.webmanifest`, 'utf8'));
  assert.deepEqual([lang, dir], ['en-GB', 'ltr']);
  assert.ok(html.includes(description));
});

test('a browser that speaks no language still has the page', async (t) => {
  const context = await open(t, phone);
  // As WebKit has it where the machine's place is C; and what is no tag at all.
  await context.addInitScript(() => Object.defineProperty(navigator, 'language', { get: () => 'C' }));
  const page = await visit(context, (await host(t)).address);
  await page.getByLabel('Meat, trimmed, grams').waitFor();
  assert.equal(await page.locator('html').getAttribute('lang'), 'en-GB');
});
