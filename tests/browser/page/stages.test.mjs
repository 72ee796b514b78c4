// The stages of a batch: the answer and its action in sight, few words, and what is in doubt never out of sight.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { usable, violations } from '../harness.mjs';
import { states } from './states.mjs';
import { finished } from './finished.mjs';
import { begin, goTo, kept, light, put, settled, startDemo } from './steps.mjs';

const HOUR = 3_600_000;
const MINUTE = 60_000;
const RUB = new Date(2026, 10, 14, 17, 30).getTime();
const LIT = RUB + 70 * HOUR;
const VIEWS = [
  [390, 844],
  [390, 664],
  [844, 390],
];
const MOST_WORDS = 160;

/** Words in sight or in reach by scrolling, as a person counts them: not what is folded, spoken or for paper only. */
const words = (page) =>
  page.evaluate(() => {
    let count = 0;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const part = walker.currentNode.parentElement;
      if (part.closest('.vh, .skip, script, style, noscript')) continue;
      if (!part.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true })) continue;
      count += walker.currentNode.textContent.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
    }
    return count;
  });

/** Whether the whole of it is in the window, with nothing over its middle. */
const inSight = (page, part) =>
  page
    .locator(part)
    .first()
    .evaluate((element) => {
      const { left, top, right, bottom } = element.getBoundingClientRect();
      const whole = left >= 0 && top >= 0 && right <= innerWidth && bottom <= innerHeight && bottom > top;
      const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      return whole && (element.contains(over) || over?.contains(element) === true);
    });

/** Changes the stored batch as its record is, and starts the page again at a time of the clock. */
async function stored(page, at, change) {
  await settled(page);
  const [record] = await kept(page, 'batch/');
  change(record.data);
  await page.evaluate(
    (record) =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target: { result: db } }) => {
          const tx = db.transaction('records', 'readwrite');
          tx.objectStore('records').put(record);
          tx.oncomplete = () => (db.close(), done());
        };
      }),
    record,
  );
  await page.clock.setFixedTime(at);
  await page.reload();
  await usable(page);
}

const reading = (minute, place, temperature) => ({
  id: `r${minute}-${place}`,
  temperature: `${temperature} °C`,
  at: LIT + minute * MINUTE,
  ...(place === null ? {} : { class: place }),
});
const FIRE = [
  [0, null, 80],
  [1, 0, 4],
  [2, 1, 4],
  [2, 2, 4],
  [30, 0, 22],
  [60, 0, 36],
  [60, 1, 40],
  [61, 2, 47.5],
  [90, 0, 48],
  [91, 2, 60],
  [92, 1, 53],
];
const OUT = [
  [120, 0, 60],
  [120, 1, 65],
  [121, 2, 74.5],
  [150, 1, 74.5],
  [180, 0, 74.5],
];

/** The demo batch weighed, with all that is weighed ticked; leaves the page at the weigh-out. */
async function weighed(page, batch) {
  await goTo(page, `#/batch/${batch}/weigh`);
  for (let n = 0; n < 7; n += 1) {
    const before = await page.locator('[data-tick]:checked').count();
    await page.locator('.pin .btn').click();
    await page.waitForFunction((n) => document.querySelectorAll('[data-tick]:checked').length > n, before);
  }
}

/** The same, rubbed, rinsed and dried. */
const dried = (data) => {
  data.fridge = [{ at: RUB + HOUR, what: 'read', reads: '3 °C' }];
  for (const [n, of] of ['draw:2', 'step:1', 'step:2'].entries()) data.ticks.push({ of, at: RUB + (40 + n) * HOUR });
};

test('on every stage the figure and the action are in sight, in few words, and axe finds nothing', async (t) => {
  const page = await begin(t);
  await page.clock.setFixedTime(RUB);
  const batch = await startDemo(page);

  /** Looks at a stage in three shapes of a phone and three lights. */
  const look = async (name, figure, parts = []) => {
    const count = await words(page);
    t.diagnostic(`${name}: ${count} words`);
    assert.ok(count <= MOST_WORDS, `${name}: ${count} words`);
    for (const [width, height] of VIEWS) {
      await page.setViewportSize({ width, height });
      await page.evaluate(() => scrollTo(0, 0));
      for (const part of [figure, '.pin .btn.main', ...parts])
        assert.ok(await inSight(page, part), `${name}: ${part} at ${width} by ${height}`);
      assert.equal(await page.locator('.btn.main').count(), 1, `${name}: one filled button`);
    }
    await page.setViewportSize({ width: 390, height: 844 });
    for (const lit of ['Dark', 'Red', 'Day']) {
      await light(page, lit);
      assert.deepEqual(await violations(page, lit === 'Day' ? [] : ['color-contrast']), [], `${name}, ${lit}`);
    }
  };

  await goTo(page, '#/today');
  await goTo(page, `#/batch/${batch}/pieces`);
  await look('pieces', '.answer .total .num');
  await goTo(page, `#/batch/${batch}/weigh`);
  await look('weigh, the cure', '.answer .add', ['.answer .window', '.dose-line']);
  await weighed(page, batch);
  await look('weigh, all in', '.answer .what');

  await goTo(page, `#/batch/${batch}/fire`);
  await stored(page, LIT, dried);
  await look('fire, not read', '.answer .say', ['.probe', '#pad-keys']);
  await stored(page, LIT + 95 * MINUTE, (data) => {
    data.fire = { fan: false, cover: 'dry', at_risk: false, readings: FIRE.map((one) => reading(...one)) };
  });
  await look('fire', '.answer .say', ['.probe', '.show output', '#pad-keys']);
  await stored(page, LIT + 185 * MINUTE, (data) => {
    data.fire.readings.push(...OUT.map((one) => reading(...one)));
    for (const [place, minute] of [
      [2, 122],
      [1, 152],
      [0, 182],
    ])
      data.ticks.push({ of: `pull:${place}`, at: LIT + minute * MINUTE });
  });
  // Nobody ticked that it smokes or chills: the log says both, and nothing of it is asked again.
  await goTo(page, `#/batch/${batch}/fire`);
  await page.getByText('All are out').waitFor();
  assert.doesNotMatch(await page.locator('main').innerText(), /started just now|Chill Due/);
  await goTo(page, `#/batch/${batch}/pack`);
  await look('pack, the chill', '.answer .big', ['.stepper']);
  // A reading near the last one is made by the steps: the teal read 74.5 °C.
  await page.locator('.stepper button', { hasText: '−10' }).tap();
  await page.locator('.stepper button', { hasText: '−1' }).nth(1).tap();
  await page.locator('.pin').getByRole('button', { name: 'Log 63.5 °C, Teal' }).tap();
  await settled(page);
  assert.equal((await kept(page, 'batch/'))[0].data.fire.readings.at(-1).temperature, '63.5 °C');
});

test('what reads cold is packed now, whatever hour the recipe gave it', async (t) => {
  const page = await begin(t);
  // Read at 3 °C seven hours after it was lit; by the recipe the chill goes on for an hour.
  const data = finished({ now: Date.now() + 115 * MINUTE });
  data.ticks = data.ticks.filter(({ of }) => !['step:5', 'step:6'].includes(of));
  await put(page, [{ key: 'batch/cold', v: 1, at: new Date().toISOString(), data }]);
  await goTo(page, '#/batch/cold/pack');
  assert.doesNotMatch(await page.locator('main').innerText(), /^Due/m);
  await page.locator('.pin .btn.main').tap();
  await settled(page);
  assert.equal(await page.getByText('It is due in').count(), 0);
  assert.ok((await kept(page, 'batch/'))[0].data.ticks.some(({ of }) => of === 'step:6'));
});

test('what is in doubt stays in sight, no disc beside it, and the filled button is the way to clear it', async (t) => {
  const page = await begin(t);
  await page.clock.setFixedTime(RUB);
  const batch = await startDemo(page);
  await weighed(page, batch);
  // The fridge read 8 °C and nobody has looked since.
  await stored(page, RUB + 3 * HOUR, (data) => {
    data.fridge = [
      { at: RUB + HOUR, what: 'read', reads: '3 °C' },
      { at: RUB + 2.5 * HOUR, what: 'read', reads: '8 °C' },
    ];
  });
  for (const stage of ['pieces', 'weigh', 'fire', 'pack']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    await page.locator('.masthead .doubt').waitFor();
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    assert.ok(await inSight(page, '.masthead .doubt'), `${stage}: the strip at the foot of the page`);
    const discs = await page.evaluate(
      () =>
        [...document.querySelectorAll('use')].filter(
          (use) =>
            (use.getAttribute('href') === '#s-ok' || use.closest('.hole')) &&
            use.closest('svg').checkVisibility({ visibilityProperty: true }),
        ).length,
    );
    assert.equal(discs, 0, `${stage}: discs with a tick`);
    const filled = page.locator('.btn.main');
    assert.deepEqual(
      (await filled.allInnerTexts()).map((text) => text.trim()),
      ['Clear the doubt'],
      stage,
    );
    assert.equal(await filled.getAttribute('href'), `#/batch/${batch}/cure/fridge`);
  }

  // A day above 4 °C cannot be mended: nothing is filled on any stage.
  await stored(page, RUB + 30 * HOUR, (data) => {
    data.fridge.push({ at: RUB + 29 * HOUR, what: 'read', reads: '9 °C' });
  });
  for (const stage of ['pieces', 'weigh', 'fire', 'pack']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    await page.locator('.masthead .doubt.stop', { hasText: 'Do not eat' }).waitFor();
    assert.equal(await page.locator('.btn.main').count(), 0, `${stage}: past mending`);
  }
});

test('while something holds the batch, no hour stands in large type: what clears it is the answer', async (t) => {
  const page = await begin(t);
  const now = Date.now();
  const kinds = states(now);
  const shown = async (name, stage) => {
    const [data] = kinds[name];
    await put(page, [{ key: 'batch/held', v: 1, at: new Date(now).toISOString(), data }]);
    await goTo(page, `#/batch/held/${stage}`);
    await page.locator('.masthead .doubt').waitFor();
  };
  // Each line of the answer that tells an hour, and its size.
  const hours = () =>
    page
      .locator('.answer :is(.say, .big, .under, .small, .reason)')
      .evaluateAll((all) =>
        all
          .filter((one) => /\b\d?\d:\d\d\b/.test(one.innerText) && one.checkVisibility())
          .map((one) => [one.innerText.trim(), Number.parseFloat(getComputedStyle(one).fontSize)]),
      );
  const large = async () => (await hours()).filter(([, size]) => size > 18).map(([text]) => text);
  for (const stage of ['cure', 'fire', 'pack']) {
    await shown('warm and not read before', stage);
    assert.deepEqual(await large(), [], stage);
    assert.match(await page.locator('.answer .say').first().innerText(), /^Type when it last read cold/, stage);
  }
  assert.ok((await hours()).length, 'the hour is set back, not gone');
  // Over the fire and in the chill the same.
  for (const [name, stage] of [
    ['fire, on its way', 'fire'],
    ['all out, chilling', 'pack'],
  ]) {
    const [data] = kinds[name];
    const rub = data.ticks.find(({ of }) => of === 'rub').at;
    data.fridge = [
      { at: rub + 30 * HOUR, what: 'read', reads: '9 °C' },
      { at: rub + 31 * HOUR, what: 'read', reads: '3 °C' },
    ];
    await shown(name, stage);
    assert.deepEqual(await large(), [], name);
    assert.match(await page.locator('.answer .say').first().innerText(), /^Type when it last read cold/, name);
    // Past mending there is no hour at all.
    data.fridge.pop();
    data.fridge.push({ at: rub + 50 * HOUR, what: 'read', reads: '9 °C' });
    await shown(name, stage);
    await page.locator('.masthead .doubt.stop').waitFor();
    assert.deepEqual(await hours(), [], `${name}, past mending`);
  }
});

test('at 320 px and with text of twice the size nothing is pinned or cut off; the focus stays clear', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  const devtools = await page.context().newCDPSession(page);
  const pinned = () => page.locator('.pin').evaluate((pin) => getComputedStyle(pin).position);
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  for (const stage of ['pieces', 'weigh']) {
    await goTo(page, `#/batch/${batch}/${stage}`);
    await page.setViewportSize({ width: 390, height: 664 });
    assert.equal(await pinned(), 'fixed', stage);
    // Whatever takes the focus is not under the head or the action.
    for (let n = 0; n < 40; n += 1) {
      await page.keyboard.press('Tab');
      const clear = await page.evaluate(() => {
        const { activeElement: at } = document;
        if (at === document.body || at.closest('.masthead, .pin, .skip')) return true;
        const { top, bottom } = at.getBoundingClientRect();
        const head = document.querySelector('.masthead').getBoundingClientRect().bottom;
        const foot = document.querySelector('.pin').getBoundingClientRect().top;
        return top >= head - 1 && bottom <= foot + 1;
      });
      assert.ok(clear, `${stage}: the focus, ${n + 1} tabs in`);
    }
    await page.setViewportSize({ width: 320, height: 640 });
    assert.equal(await pinned(), 'static', `${stage} at 320 px`);
    assert.ok((await wide()) <= 0, `${stage} at 320 px`);
    await page.setViewportSize({ width: 390, height: 844 });
    await devtools.send('Page.setFontSizes', { fontSizes: { standard: 32 } });
    assert.equal(await pinned(), 'static', `${stage} at twice the text`);
    assert.ok((await wide()) <= 0, `${stage} at twice the text`);
    await devtools.send('Page.setFontSizes', { fontSizes: { standard: 16 } });
  }
});
