// Labels and tags: every field is on the paper, no word is cut off, and each square is read by another decoder.
import assert from 'node:assert/strict';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import jsqr from 'jsqr';
import { PNG } from 'pngjs';
import { phone, scan } from '../harness.mjs';
import { read } from '../paper.mjs';
import { NOT_HOT, SLOW, finished, putLabels } from './finished.mjs';
import { states } from './states.mjs';
import { begin, goTo, kept, setting, settled, startDemo, texts } from './steps.mjs';

const DPI = 200;

/** Pages of the print, with their sizes in mm, the words on it in all, and what the squares say. */
async function printed(page, name, layout) {
  const pdf = await page.pdf({ preferCSSPageSize: true });
  if (process.env.KEEP_PRINTS) writeFileSync(join(process.env.KEEP_PRINTS, `${name}.pdf`), pdf);
  const pages = await read(pdf, DPI);
  const words = pages
    .map((each) => each.words)
    .join(' ')
    .replace(/\s+/g, ' ');
  return {
    sizes: pages.map(({ size }) => size),
    words,
    squares: squaresOn(
      pages.map(({ picture }) => picture),
      layout,
    ),
  };
}

/** What the square on each of five labels says on the rendered pages, read by a decoder that is not ours. */
function squaresOn(pictures, { margin, across, high, rows }) {
  return Array.from({ length: 5 }, (_, at) => {
    const [row, column] = [Math.floor(at / across) % rows, at % across];
    const page = pictures[Math.floor(at / (across * rows))];
    // The decoder looks for one square, so it is shown one label at a time.
    const left = margin + column * (WIDE + GAP);
    const box = [left, margin + row * (high + GAP), left + WIDE, margin + row * (high + GAP) + high];
    const [x1, y1, x2, y2] = box.map((mm) => Math.round((mm / 25.4) * DPI));
    const cut = new PNG({ width: Math.min(x2, page.width) - x1, height: Math.min(y2, page.height) - y1 });
    PNG.bitblt(page, cut, x1, y1, cut.width, cut.height, 0, 0);
    return jsqr(new Uint8ClampedArray(cut.data), cut.width, cut.height)?.data;
  });
}

/** Labels whose content is wider or higher than the label, or that stand out of the sheet. */
const clipped = (page) =>
  page.evaluate(
    () =>
      [...document.querySelectorAll('.lbl, .lbl *')].filter(
        (part) => !(part instanceof SVGElement) && part.scrollWidth > part.clientWidth + 1 && part.clientWidth > 0,
      ).length,
  );

async function onLabels(t) {
  const page = await begin(t, phone);
  const id = await startDemo(page);
  await goTo(page, `#/batch/${id}/pack`);
  await page.getByRole('link', { name: /Labels and tags/ }).tap();
  await page.locator('.lbl').first().waitFor();
  return page;
}

/** The same of a batch that is done: cooked, chilled, packed. */
async function onFinished(t, how) {
  const page = await begin(t, phone);
  await putLabels(page, finished(how));
  return page;
}

const choose = (page, name) => page.getByLabel(name, { exact: true }).check();

/** How wide a label is, and the gap between two, in mm. */
const WIDE = 90;
const GAP = 4;
/** How many labels stand side by side on each; the margins of the sheets are 10 mm, that of the tape 2 mm. */
const STOCKS = [
  ['A4 sheet', [210, 297], 2],
  ['Letter sheet', [216, 279], 2],
  ['Tape, 62 mm', [62, 240], 1],
];
const MM = 96 / 25.4;

/** Where labels of this height lie on a sheet on which none is cut in two. */
function laidOut([, high], across, height) {
  if (across === 1) return { margin: 2, across, high: height / MM, rows: 1 };
  const rows = Math.floor((high - 20 + GAP) / (height / MM + GAP));
  assert.ok(rows >= 1, 'a label is higher than the sheet');
  return { margin: 10, across, high: height / MM, rows };
}

for (const [paper, kind] of [
  ['Bag, before it closes', 'bag'],
  ['Finished packs', 'pack'],
  ['Gift tag', 'gift'],
]) {
  test(`${paper}: on three stocks, whole, and every square is read`, async (t) => {
    // A tag to give is there when it may be given.
    const page = kind === 'gift' ? await onFinished(t) : await onLabels(t);
    await choose(page, paper);
    await page.getByLabel('How many').fill('5');
    await page.locator('.lbl').nth(4).waitFor();
    for (const [stock, size, across] of STOCKS) {
      await choose(page, stock);
      assert.equal(await page.locator('.lbl').count(), 5);
      const squares = page.locator('.lbl .qr');
      assert.equal(await squares.count(), 5);
      const links = [];
      for (let at = 0; at < 5; at++) links.push(await scan(squares.nth(at)));
      assert.ok(links[0]?.includes('#r1.'), String(links[0]));
      assert.equal(new Set(links).size, 1);
      await page.emulateMedia({ media: 'print' });
      assert.equal(await clipped(page), 0, `${paper} on ${stock}`);
      const { height } = await page.locator('.lbl').first().boundingBox();
      assert.ok(height / MM < size[1] - 4, `${height / MM} mm on ${stock}`);
      const {
        sizes,
        words,
        squares: onPaper,
      } = await printed(page, `${kind}-${stock.slice(0, 4).trim()}`, laidOut(size, across, height));
      await page.emulateMedia({ media: null });
      assert.deepEqual(sizes[0], size);
      assert.deepEqual(onPaper, links, `${paper} on ${stock}: the squares on paper`);
      const { rows } = laidOut(size, across, height);
      assert.equal(sizes.length, Math.ceil(5 / (across * rows)), `${paper} on ${stock}`);
      for (let at = 1; at <= 5; at++) assert.ok(words.includes(`${at} of 5`), `${at} of 5 on ${stock}`);
      // The foot is the last line of each: it is on paper five times.
      assert.equal(words.replace(/-? /g, '').split('Notforsale').length - 1, 5, `${paper} on ${stock}`);
    }
  });
}

test('weights go onto the packs in order, what is left out gets a line, and a wrong one says so', async (t) => {
  const page = await onLabels(t);
  await choose(page, 'Finished packs');
  await page.getByLabel('How many').fill('3');
  await page.getByLabel('Weight of each pack').fill('203, 7 oz');
  const said = await texts(page.locator('.lbl .top2'));
  assert.match(said[0], /Pack 1 of 3, SD-\w{4} 203 g/);
  assert.match(said[1], /198\.4 g|198 g/);
  assert.match(said[2], /Weight$/);
  await page.getByLabel('Weight of each pack').fill('much');
  await page.locator('.err').waitFor();
});

test('packs that lie in the freezer are printed again as frozen, with the day that Stock says', async (t) => {
  const page = await onFinished(t);
  await page.getByLabel('How many packs').fill('2');
  await page.getByLabel('Frozen', { exact: true }).check();
  const until = async () => /Best before ([^]*?) smoked/.exec((await texts(page.locator('.lbl')))[0])?.[1];
  await page.locator('.lbl', { hasText: 'Keep frozen' }).first().waitFor();
  const first = await until();
  assert.match(String(first), /\d{4}$/);
  await page.getByRole('button', { name: 'These 2 packs went into the freezer' }).click();
  await page.getByText('2 packs of this batch are on the list.').waitFor();
  const labels = new URL(page.url()).hash;
  await goTo(page, '#/stock');
  assert.equal(await page.getByText(`Frozen. Best before ${first}.`).count(), 2);
  await goTo(page, labels);
  await page.locator('.lbl').nth(1).waitFor();
  assert.equal(await until(), first, (await texts(page.locator('.lbl')))[0]);

  // Longer than it keeps in the cold, and not as long as in the freezer: no screen of the batch says otherwise than Stock.
  const now = await page.evaluate(() => Date.now());
  await page.clock.setFixedTime(now + 20 * 86_400_000);
  await goTo(page, '#/stock');
  assert.equal(await page.getByText(`Frozen. Best before ${first}.`).count(), 2);
  for (const stage of ['pieces', 'weigh', 'cure', 'fire', 'pack', 'labels']) {
    await goTo(page, `#/batch/done/${stage}`);
    assert.equal(await page.getByText('its keeping time is over').count(), 0, stage);
  }
});

test('a gift of birds has a line to sign under US rules, and under another law none', async (t) => {
  const page = await onFinished(t);
  await choose(page, 'Gift tag');
  assert.match(await page.locator('.lbl').innerText(), /signature/);
  assert.match(await page.locator('.cautions').innerText(), /Check your state/);
  await setting(page, 'Canada');
  await page.goBack();
  await choose(page, 'Gift tag');
  assert.doesNotMatch(await page.locator('.lbl').innerText(), /signature/);
  assert.match(await page.locator('.cautions').innerText(), /Check the law where you live/);
});

test('only of birds a gift is counted in whole birds', async (t) => {
  const page = await onFinished(t);
  await choose(page, 'Gift tag');
  await page.getByText('Birds, not breasts', { exact: false }).waitFor();
  const done = finished();
  await putLabels(page, { ...done, pieces: done.pieces.map((piece) => ({ ...piece, cut: 'boar-belly' })) });
  await choose(page, 'Gift tag');
  await page.getByLabel('Species and number in the gift').waitFor();
  assert.equal(await page.getByText('Birds, not breasts', { exact: false }).count(), 0);
});

test('at the gift it is asked who eats it; what follows stands beside the button, and what was noted in sight', async (t) => {
  const page = await onFinished(t);
  await choose(page, 'Gift tag');
  const give = page.getByRole('button', { name: /write it down$/ });
  await page.getByLabel('Who gets it').fill('Anna');
  await give.tap();
  await page.getByText('Ask, and say who eats it.').waitFor();
  assert.equal((await kept(page, 'stock/')).length, 0, 'given before it was said who eats it');
  const asked = page.locator('#give');
  await asked.getByLabel('Yes, or not known').check();
  const says = (await texts(asked))[0];
  assert.match(
    says,
    /May contain shot or bullet lead\. None for children of 6 and under, or anyone who is or may become pregnant/,
  );
  assert.match(says, /heat it until it steams/);
  const inSight = (locator) =>
    locator.evaluate((one) => {
      const { top, bottom } = one.getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight;
    });
  await give.scrollIntoViewIfNeeded();
  assert.ok(await inSight(asked.locator('.verdict.stop')), 'what follows, beside the button');
  await give.tap();
  await settled(page);
  const noted = page.locator('main').getByText('Written down: Anna has it.');
  await noted.waitFor();
  assert.ok(await inSight(noted), 'what was noted is out of sight');
  assert.equal((await kept(page, 'stock/'))[0].data.to, 'Anna');
  // Of the next one it is asked anew.
  assert.equal(await asked.getByRole('radio', { checked: true }).count(), 0);
});

test('what is not cooked is not for whoever is at risk, and no heat from the giver is spoken of', async (t) => {
  const page = await begin(t, phone);
  await putLabels(page, states(Date.now())['boar in cold smoke'][0]);
  await choose(page, 'Gift tag');
  await page.locator('#give').getByLabel('Yes, or not known').check();
  const says = (await texts(page.locator('#give')))[0];
  assert.match(says, /Not cooked: none for a child, or anyone pregnant, old or ill/);
  assert.doesNotMatch(says, /until it steams/);
});

/** What forbids it: readings of each class, and what the label then says. */
const BARRED = {
  'taken out at 60 °C and chilled': [NOT_HOT, /DO NOT EAT\./],
  'hot enough, and six hours from 45 to 20 °C': [SLOW, /DO NOT EAT\./],
};

for (const [what, [course, says]] of Object.entries(BARRED)) {
  test(`${what}: no date, no "cooked" and no gift tag on any stock, and what forbids it stands there whole`, async (t) => {
    const page = await onFinished(t, { course });
    await choose(page, 'Gift tag');
    await page.locator('.lbl').first().waitFor({ state: 'detached' });
    assert.equal(await page.locator('.lbl').count(), 0, 'a gift tag of what is barred');
    await page.locator('.doubt.stop').waitFor();
    assert.equal(await page.getByRole('link', { name: 'What now?' }).count(), 0, 'a way on for what is thrown away');
    await choose(page, 'Finished packs');
    await page.getByLabel('How many').fill('5');
    await page.locator('.lbl').nth(4).waitFor();
    for (const [stock, size, across] of STOCKS) {
      await choose(page, stock);
      assert.equal(await page.locator('.lbl').count(), 5);
      await page.emulateMedia({ media: 'print' });
      assert.equal(await clipped(page), 0, stock);
      const { height } = await page.locator('.lbl').first().boundingBox();
      const name = `barred-${what.slice(0, 5).trim()}-${stock.slice(0, 4).trim()}`;
      const { sizes, words } = await printed(page, name, laidOut(size, across, height));
      await page.emulateMedia({ media: null });
      assert.deepEqual(sizes[0], size);
      assert.equal(words.match(new RegExp(says, 'g'))?.length, 5, `${stock}: ${words}`);
      assert.doesNotMatch(words, /Use by|Best before|Cooked: to/i, stock);
    }
  });
}
