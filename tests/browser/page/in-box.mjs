// Whether the words of a screen stay in their boxes and in the window: asked of names that nobody would give, and of a
// language that is longer and runs the other way.

/** What a text belongs in: it may not stand out of the nearest of these. */
const BOXES =
  'button, .btn, .tag, .punch a, .places a, td, th, summary, .box-doubt, .verdict, .leaf, .plate, .lbl, .notice, .doubt';

/** Gives the page what both this and the callers walk by: the texts that are in sight, each with where it lies. */
const teach = (page) =>
  page.evaluate(() => {
    globalThis.textsInSight = function* () {
      const range = document.createRange();
      const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let node = walk.nextNode(); node; node = walk.nextNode()) {
        const part = node.parentElement;
        if (!node.data.trim() || part.closest('.vh, .skip, .sprite, script, style, noscript, svg, option, textarea'))
          continue;
        if (!part.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true })) continue;
        range.selectNodeContents(node);
        const rects = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
        yield { node, part, rects, says: node.data.replace(/\s+/g, ' ').trim().slice(0, 60) };
      }
    };
  });

/** What leaves its box or the window, or is cut off, one line each. */
export async function outOfBox(page) {
  await teach(page);
  return page.evaluate((boxes) => {
    const found = new Set();
    const { scrollWidth } = document.documentElement;
    if (scrollWidth > innerWidth) found.add(`the page is ${scrollWidth - innerWidth} px too wide`);
    for (const { part, rects, says } of textsInSight()) {
      // What may be moved sideways in its own frame is not lost.
      if (moves(part)) continue;
      const box = part.closest(boxes);
      for (const [name, edge] of [
        ['the window', { left: 0, right: innerWidth }],
        [box && `its ${box.tagName.toLowerCase()}.${box.className}`, box?.getBoundingClientRect()],
      ])
        if (edge && rects.some(({ left, right }) => left < edge.left - 1 || right > edge.right + 1))
          found.add(`out of ${name}: ${says}`);
    }
    for (const one of document.querySelectorAll(
      'body *:not(svg, svg *, .vh, .skip, .sprite, option, input, textarea)',
    )) {
      if (one.clientWidth === 0 || one.scrollWidth <= one.clientWidth + 1 || !one.checkVisibility()) continue;
      const { overflowX } = getComputedStyle(one);
      if (['hidden', 'clip'].includes(overflowX)) found.add(`cut off in ${one.tagName.toLowerCase()}.${one.className}`);
    }
    for (const pin of document.querySelectorAll('.pin .btn')) {
      const { left, right } = pin.getBoundingClientRect();
      if (left < 0 || right > innerWidth || right <= left) found.add('the action is out of the window');
    }
    return [...found];

    function moves(element) {
      for (let one = element; one && one !== document.body; one = one.parentElement)
        if (['auto', 'scroll'].includes(getComputedStyle(one).overflowX)) return true;
      return false;
    }
  }, BOXES);
}
