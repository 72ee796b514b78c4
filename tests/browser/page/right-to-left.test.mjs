// The page in a language that runs right to left and is longer by a third: nothing leaves its box, and a figure is read
// as it was meant.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { host, open, phone, visit } from '../harness.mjs';
import { built, speaking } from './dialect.mjs';
import { outOfBox } from './in-box.mjs';
import { TOURS } from './tours.mjs';

/** What is wrong on the screen that is shown, one line each. */
async function wrongs(page) {
  const out = await outOfBox(page);
  const order = await page.evaluate(() => {
    const found = new Set();
    if (getComputedStyle(document.body).direction !== 'rtl') found.add('the page runs left to right');
    // A sign, both ends of a range and a unit are read in this order.
    const figures =
      /(?<![\p{L}\d#/.:_-])[−+-]?\d[\d.,:]*(?:\s?[–−-]\s?\d[\d.,:]*)?(?:[ \u00a0]?(?:°[CF]?|%|kg|g|oz|lb|mm|ppm)(?!\p{L}))?/gu;
    const range = document.createRange();
    for (const { node, says } of textsInSight()) {
      for (const { 0: figure, index } of node.data.matchAll(figures)) {
        const places = [...figure].flatMap((letter, at) => {
          if (/\s/.test(letter)) return [];
          range.setStart(node, index + at);
          range.setEnd(node, index + at + 1);
          const { left, top, width } = range.getBoundingClientRect();
          return width ? [{ left, top }] : [];
        });
        // A line may end within it.
        if (places.some(({ left, top }, at) => at > 0 && top === places[at - 1].top && left < places[at - 1].left))
          found.add(`in another order: ${figure} in ${says}`);
      }
    }
    // The way on: the places or the stages, from right to left.
    const rail = [...document.querySelectorAll('.places a, .punch a')].map((one) => one.getBoundingClientRect());
    if (rail.length < 4) found.add('no rail');
    if (rail.some(({ right, top }, at) => at > 0 && top === rail[at - 1].top && right > rail[at - 1].right))
      found.add('the rail runs left to right');
    return [...found];
  });
  return [...out, ...order];
}

for (const [width, name] of [
  [390, 'screens'],
  [390, 'states'],
  [320, 'screens'],
]) {
  test(`right to left at ${width} px, ${name}: nothing leaves its box, and figures keep their order`, async (t) => {
    const { address } = await host(t, built(t, 'rtl'));
    const context = await open(t, { ...phone, viewport: { width, height: 844 } });
    const page = speaking(await visit(context, address), 'rtl');
    const all = [];
    await TOURS[name](page, async (screen) => {
      for (const wrong of await wrongs(page)) all.push(`${screen}: ${wrong}`);
      if (process.env.KEEP_SHOTS) {
        const shot = `${width}-${screen.replace(/[^\w]+/g, '-')}`;
        await page.screenshot({ path: `${process.env.KEEP_SHOTS}/${shot}.png`, fullPage: true });
      }
    });
    assert.deepEqual(all, []);
  });
}
