// By the keyboard alone: few stops, the focus always on something in sight with a ring around it, and nothing told twice.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { states } from './states.mjs';
import { addPieces, begin, goTo, kept, light, openPiece, put, settled, startDemo } from './steps.mjs';

const DESK = { locale: 'en-US', timezoneId: 'America/New_York', isMobile: false, hasTouch: false };
const SHAPES = {
  phone: { ...DESK, viewport: { width: 390, height: 664 } },
  side: { ...DESK, viewport: { width: 844, height: 390 } },
};

/** What holds the focus, and whether a person sees it: in the window, under nothing that stays there, with a ring. */
const focus = (page) =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (at === document.body) return { is: 'nothing', seen: false, ring: false };
    const shown = at.matches('.pick input, .box input') ? at.closest('label, .box') : at;
    const { left, top, right, bottom } = shown.getBoundingClientRect();
    const over = document.elementFromPoint((left + right) / 2, Math.min((top + bottom) / 2, top + 24));
    const inside = top >= 0 && left >= 0 && right <= innerWidth + 1 && top + Math.min(bottom - top, 40) <= innerHeight;
    const marks = [at, shown, at.closest('.nf, .part')].filter(Boolean).map((one) => getComputedStyle(one));
    const ring = marks.some(
      ({ outlineStyle, outlineWidth, boxShadow }) =>
        (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2) || boxShadow !== 'none',
    );
    const is = at.id || at.getAttribute('aria-label') || at.textContent.replace(/\s+/g, ' ').trim();
    return { is, seen: inside && (shown.contains(over) || over?.contains(shown)), ring, in: at.closest('[id]')?.id };
  });

async function inSight(page, what) {
  const now = await focus(page);
  assert.ok(now.seen && now.ring, `${what}: ${JSON.stringify(now)}`);
  return now.is;
}

/** Opens one of the stored states. */
async function openState(page, name, screen) {
  const [data] = states(Date.now())[name];
  await put(page, [{ key: 'batch/one', v: 1, at: new Date().toISOString(), data }]);
  await goTo(page, `#/batch/one/${screen}`);
  await settled(page);
}

/** With Tab from the top of the page until this holds the focus. */
async function stopsTo(page, part) {
  await page.evaluate(() => (document.activeElement.blur(), scrollTo(0, 0)));
  await page.locator('.skip').focus();
  for (let n = 1; n < 200; n += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((part) => document.activeElement.matches(part), part)) return n;
  }
  return Infinity;
}

test('the keys of the fire are one stop; the arrows go among them, and digits are typed', async (t) => {
  for (const [shape, how] of Object.entries(SHAPES)) {
    const page = await begin(t, how);
    await openState(page, 'fire, on its way', 'fire');
    assert.notEqual(await stopsTo(page, '#pad-keys button'), Infinity);
    assert.equal(await inSight(page, shape), '5');
    const way = shape === 'side' ? ['Decimal point', '9', '5'] : ['9', '8', '5'];
    for (const [n, key] of ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp'].entries()) {
      await page.keyboard.press(key);
      if (n > 0 && shape === 'phone') assert.equal(await inSight(page, key), way[n - 1]);
    }
    await page.keyboard.press('Tab');
    assert.notEqual((await focus(page)).in, 'pad-keys', 'the next stop is another');
    await page.keyboard.press('Shift+Tab');
    assert.equal(await page.evaluate(() => document.activeElement.closest('#pad-keys') !== null), true);
    await page.keyboard.press('6');
    await page.keyboard.press('3');
    assert.match(await page.locator('#pad output').innerText(), /^63/);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Enter');
    assert.match(await page.locator('#pad output').innerText(), /^63./, 'Enter presses the key that was come to');
  }
});

/** What was logged over the fire, and how many are out of it. */
const logOf = async (page) => {
  const [{ data }] = await kept(page, 'batch/one');
  return { read: data.fire.readings.at(-1).temperature, out: data.ticks.filter(({ of }) => /^pull:/.test(of)).length };
};

test('Enter logs what was typed, whatever held the focus before; what was come to since, it presses', async (t) => {
  const page = await begin(t, SHAPES.phone);
  for (const screen of ['fire', 'pack']) {
    await openState(page, screen === 'fire' ? 'hot enough, still in' : 'all out, chilling', screen);
    const { out } = await logOf(page);
    await page.locator('.btn:visible').first().focus();
    await page.keyboard.type('168');
    await page.keyboard.press('Enter');
    await settled(page);
    assert.deepEqual(await logOf(page), { read: '168 °F', out }, screen);
    // Where the probe is was chosen last: it takes no text.
    await page.locator('.probe input').first().focus();
    await page.keyboard.type('169');
    await page.keyboard.press('Enter');
    await settled(page);
    assert.equal((await logOf(page)).read, '169 °F', screen);
    await page.locator('summary').first().focus();
    await page.keyboard.type('170');
    await page.keyboard.press('Tab');
    await page.locator('#pad .when').focus();
    await page.keyboard.press('Enter');
    await page.locator('.timebar').waitFor();
    assert.equal((await logOf(page)).read, '169 °F', screen);
    // The last key was touched, not come to.
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Tab');
    await page.locator('[data-key="1"]').click();
    await page.keyboard.press('Enter');
    await settled(page);
    assert.equal((await logOf(page)).read, '171 °F', screen);
  }
});

test('a reading that is asked about brings the focus to its question', async (t) => {
  for (const [shape, how] of Object.entries(SHAPES)) {
    const page = await begin(t, how);
    await openState(page, 'fire, on its way', 'fire');
    const asks = page.getByRole('button', { name: 'It is right' });
    assert.equal(await asks.count(), 0);
    await page.keyboard.type('99');
    const button = page.getByRole('button', { name: /^Log 99/ });
    await button.scrollIntoViewIfNeeded();
    await button.press('Enter');
    await asks.waitFor();
    await settled(page);
    assert.match(await page.evaluate(() => document.activeElement.textContent), /99 °F at .*It is right/s);
    await inSight(page, shape);
    // Nothing there is pressed by one Enter too many, and the keys go on.
    await page.keyboard.press('Enter');
    await settled(page);
    assert.equal(await asks.count(), 1);
    await page.keyboard.press('Tab');
    assert.ok(await page.evaluate(() => document.activeElement.matches('#odd button')));
  }
});

test('a cure of weeks has few stops before the fridge, and all of its turns at a touch', async (t) => {
  const page = await begin(t, SHAPES.phone);
  await openState(page, 'hung for months', 'cure');
  const stops = await stopsTo(page, '#fridge-what');
  assert.ok(stops < 30, `${stops} stops`);
  const rows = await page.locator('.tally .line').count();
  await page.getByRole('button', { name: /^Show all \d+ turns/ }).press('Enter');
  await inSight(page, 'after all are shown');
  assert.equal(
    await page.locator('.tally .line').evaluateAll((all) => all.filter((one) => one.checkVisibility()).length),
    rows,
  );
});

for (const [shape, how] of Object.entries(SHAPES)) {
  test(`after whatever takes away what had the focus it is on something in sight (${shape})`, async (t) => {
    const page = await begin(t, how);
    const press = async (name, what = name) => {
      await page
        .getByRole('button', { name, exact: typeof name === 'string' })
        .first()
        .press('Enter');
      await settled(page);
      return inSight(page, what);
    };
    await openState(page, 'two odd readings', 'fire');
    assert.equal(await press('Correct it'), 'pad-corrects');
    await press('Leave it as it was');
    await press('Cross it out');
    await press('Cross it out');
    // A reading of the fridge is taken out: the next one has its place, not the action at the thumb.
    await openState(page, 'in the cure', 'cure');
    const out = page.getByRole('button', { name: /^Delete/ });
    const all = await out.count();
    for (let left = all; left > 0; left -= 1) {
      await out.last().press('Enter');
      await settled(page);
      assert.equal(await out.count(), left - 1);
      const on = await inSight(page, `${left - 1} readings left`);
      assert.ok(!(await page.evaluate(() => document.activeElement.closest('.pin'))), on);
    }
    // A size is changed, left as it was, and removed.
    const demo = await startDemo(page);
    await press(/^Change .*Teal/);
    await press('Leave as it was');
    await press(/^Change .*Teal/);
    await press('Remove it');
    await press('Undo');
    await goTo(page, `#/batch/${demo}/weigh`);
    await press('3.5 g is in the bowl');
    await goTo(page, '#/today');
    await press('Undo').catch(() => {});
  });
}

for (const lit of ['Day', 'Dark', 'Red'])
  test(`what holds the focus is in sight and has a ring, ${lit.toLowerCase()}`, async (t) => {
    const page = await begin(t, SHAPES.phone);
    await light(page, lit);
    const demo = await startDemo(page);
    const at = [
      'how-much',
      'today',
      'recipes',
      'more',
      'dose',
      'brine',
      'keep',
      `batch/${demo}/pieces`,
      `batch/${demo}/fire`,
    ];
    for (const hash of at) {
      await goTo(page, `#/${hash}`);
      await page.evaluate(() => document.activeElement.blur());
      for (let n = 0; n < 40; n += 1) {
        await page.keyboard.press('Tab');
        if (
          await page.evaluate(() => document.activeElement === document.body || document.activeElement.matches('.skip'))
        )
          continue;
        await inSight(page, `${hash}, ${n + 1} tabs`);
      }
    }
  });

test('what was said is gone from the page once it is said, and what stands there is said once', async (t) => {
  const page = await begin(t, DESK);
  const demo = await startDemo(page);
  const said = () => page.locator('#spoken').innerText();
  await openPiece(page);
  await addPieces(page, { cut: 'Mallard breast', count: '1', weight: '1 lb', thickness: '1 in' });
  await page.waitForFunction(() => document.getElementById('spoken').textContent);
  const first = await said();
  await page.waitForFunction(() => !document.getElementById('spoken').textContent, null, { timeout: 8000 });
  assert.match(first, /added/i);
  await goTo(page, `#/batch/${demo}/weigh`);
  // The next screen may say its own, and never what was said before.
  assert.doesNotMatch(await said(), /added/i);
});
