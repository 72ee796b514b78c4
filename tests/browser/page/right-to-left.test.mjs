// The page in a language that runs right to left and is longer by a third: nothing leaves its box, and a figure is read
// as it was meant.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { host, open, phone, visit } from '../harness.mjs';
import { built, speaking } from './dialect.mjs';
import { TOURS } from './tours.mjs';

/** What is wrong on the screen that is shown, one line each. */
const wrongs = (page) =>
  page.evaluate(() => {
    const found = new Set();
    const root = document.documentElement;
    if (root.scrollWidth > innerWidth) found.add(`the page is ${root.scrollWidth - innerWidth} px too wide`);
    if (getComputedStyle(document.body).direction !== 'rtl') found.add('the page runs left to right');
    // A sign, both ends of a range and a unit are read in this order.
    const figures =
      /(?<![\p{L}\d#/.:_-])[−+-]?\d[\d.,:]*(?:\s?[–−-]\s?\d[\d.,:]*)?(?:[ \u00a0]?(?:°[CF]?|%|kg|g|oz|lb|mm|ppm)(?!\p{L}))?/gu;
    const range = document.createRange();
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node; node = walk.nextNode()) {
      const part = node.parentElement;
      if (!node.data.trim() || part.closest('.vh, .skip, .sprite, script, style, noscript, svg, option, textarea'))
        continue;
      if (!part.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true })) continue;
      const says = node.data.replace(/\s+/g, ' ').trim().slice(0, 60);
      range.selectNodeContents(node);
      const rects = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
      // What may be moved sideways in its own frame is not lost.
      const frame = [...ancestors(part)].find((one) => ['auto', 'scroll'].includes(getComputedStyle(one).overflowX));
      const box = part.closest(
        'button, .btn, .tag, .punch a, .places a, td, th, summary, .box-doubt, .verdict, .leaf, .plate',
      );
      for (const [name, edge] of [
        ['the window', { left: 0, right: innerWidth }],
        [box && `its ${box.tagName.toLowerCase()}.${box.className}`, box?.getBoundingClientRect()],
      ]) {
        if (!edge || frame) continue;
        if (rects.some(({ left, right }) => left < edge.left - 1 || right > edge.right + 1))
          found.add(`out of ${name}: ${says}`);
      }
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
    for (const one of document.querySelectorAll(
      'body *:not(svg, svg *, .vh, .skip, .sprite, option, input, textarea)',
    )) {
      if (one.clientWidth === 0 || one.scrollWidth <= one.clientWidth + 1 || !one.checkVisibility()) continue;
      const { overflowX } = getComputedStyle(one);
      if (['hidden', 'clip'].includes(overflowX)) found.add(`cut off in ${one.tagName.toLowerCase()}.${one.className}`);
    }
    // The way on: the places or the stages, from right to left.
    const rail = [...document.querySelectorAll('.places a, .punch a')].map((one) => one.getBoundingClientRect());
    if (rail.length < 4) found.add('no rail');
    if (rail.some(({ right, top }, at) => at > 0 && top === rail[at - 1].top && right > rail[at - 1].right))
      found.add('the rail runs left to right');
    for (const pin of document.querySelectorAll('.pin .btn')) {
      const { left, right } = pin.getBoundingClientRect();
      if (left < 0 || right > innerWidth || right <= left) found.add('the action is out of the window');
    }
    return [...found];

    function* ancestors(element) {
      for (let one = element; one; one = one.parentElement) yield one;
    }
  });

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
