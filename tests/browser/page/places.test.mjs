// The four places, the old addresses, and how many words a screen has.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { usable, violations } from '../harness.mjs';
import { begin, goTo, kept, place, startBatch, startDemo, texts, tick } from './steps.mjs';

const US = { locale: 'en-US', timezoneId: 'America/New_York' };
const heading = (page, name) => page.getByRole('heading', { name, exact: true, level: 1 }).waitFor();
const MOST = 160;
const MOST_FIRST = 120;
const MOST_EMPTY = 70;

test('four places, from any of them to any other with one tap', async (t) => {
  const page = await begin(t);
  await heading(page, 'How much cure?');
  for (const [word, head] of [
    ['Batches', 'Batches'],
    ['Recipes', 'Recipes'],
    ['More', 'More'],
    ['How much', 'How much cure?'],
  ]) {
    await place(page, word);
    await heading(page, head);
    assert.deepEqual(await texts(page.locator('.places a')), ['How much', 'Batches', 'Recipes', 'More']);
    assert.equal((await texts(page.locator('.places [aria-current]'))).join(), word);
    assert.deepEqual(await violations(page), [], word);
  }
});

test('the places stand at the foot upright, and in the head on the side and on a desk', async (t) => {
  const page = await begin(t);
  const top = () => page.locator('.places').evaluate((nav) => nav.getBoundingClientRect().top / innerHeight);
  assert.ok((await top()) > 0.8);
  await page.setViewportSize({ width: 844, height: 390 });
  assert.ok((await top()) < 0.2);
  await page.setViewportSize({ width: 1280, height: 900 });
  assert.ok((await top()) < 0.2);
});

test('inside a batch the rail takes their room, and its tag leads out', async (t) => {
  const page = await begin(t);
  await startDemo(page);
  assert.equal(await page.locator('.places').count(), 0);
  await page.getByRole('link', { name: /^Batches, from batch/ }).tap();
  await heading(page, 'Batches');
});

test('the page opens on How much, and on Batches once a job is due', async (t) => {
  const page = await begin(t);
  await heading(page, 'How much cure?');
  const demo = await startDemo(page);
  const opened = async () => {
    await page.goto(page.url().split('#')[0]);
    await page.reload();
    await usable(page);
  };
  await opened();
  await heading(page, 'Batches');
  await goTo(page, `#/batch/${demo}/weigh`);
  await tick(page, 'cure:0');
  await opened();
  await heading(page, 'Batches');
});

test('old addresses lead where they led', async (t) => {
  const page = await begin(t);
  for (const [hash, head] of [
    ['#/today', 'Batches'],
    ['#/start', 'Start a batch'],
    ['#/dose', 'I already put cure on it'],
    ['#/cards', 'Something went wrong'],
    ['#/cards/warm', 'It got warm'],
    ['#/cards/dose', 'I already put cure on it'],
    ['#/read', 'Paste a recipe'],
    ['#/keep', 'Settings and backup'],
    ['#/help', 'How the job goes'],
    ['#/nowhere', 'How much cure?'],
  ]) {
    await goTo(page, hash);
    await heading(page, head);
  }
});

test('a texted recipe goes to the reader with its text, from Recipes and from the field for a link', async (t) => {
  const page = await begin(t, US);
  const text = '7 lb duck breasts\n1 1/2 tsp pink cure #1\n1/4 cup kosher salt';
  await goTo(page, '#/open');
  await page.getByLabel('Paste the link or the code').fill(text);
  await heading(page, 'Paste a recipe');
  assert.equal(await page.getByLabel('The recipe, in lines or in prose').inputValue(), text);
  assert.match((await texts(page.locator('.lines-read > li')))[1], /1 1\/2 tsp pink cure #1/);
  await goTo(page, '#/recipes');
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.setData('text/plain', 'Rub for 5 lb meat\n5 g cure no. 1');
    document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
  });
  await heading(page, 'Paste a recipe');
  assert.equal(
    await page.getByLabel('The recipe, in lines or in prose').inputValue(),
    'Rub for 5 lb meat\n5 g cure no. 1',
  );
});

test('who opens a link types a weight before anything is kept', async (t) => {
  const page = await begin(t, US);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  const link = await page.locator('#link-text').innerText();
  await page.getByRole('button', { name: 'Delete it' }).click();
  await page.getByText('is deleted.').waitFor();
  const before = (await kept(page, 'recipe/')).length;
  await page.goto(link);
  await page.getByLabel('How much do you have?, pounds').fill('7');
  // As on the first screen: 7 lb at 150 ppm with 6.25 %, down to the scale's 0.1 g.
  assert.match((await texts(page.locator('.ans')))[0], /^Cure .* 7\.6 ?g$/);
  assert.match((await texts(page.locator('.inrange')))[0], /^In range if weighed\./);
  assert.equal((await kept(page, 'recipe/')).length, before);
  assert.equal((await kept(page, 'batch/')).length, 0);
});

test('what is known of a dose is filled in, from How much and from a batch', async (t) => {
  const page = await begin(t, US);
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByRole('link', { name: 'I already put cure on it' }).tap();
  await page.getByLabel('Cure I put in').tap();
  await page.keyboard.type('1');
  await page.getByLabel('heaping tablespoon', { exact: true }).tap();
  // Four taps and a key from the first screen: the box, what to do, and whom to call in this country.
  const stop = page.locator('.verdict.stop').first();
  assert.deepEqual(await texts(stop.locator('p')), [
    'Do not cook or taste it.',
    'Mark it DO NOT EAT. Keep it cold. Add nothing yet.',
  ]);
  assert.match((await texts(page.locator('.answered .caution').first()))[0], /911, say nitrite.*1-800-222-1222/);
  assert.doesNotMatch(await page.locator('.answered').innerText(), /level/, 'a heap is not told in level spoons');
  const demo = await startDemo(page);
  await goTo(page, `#/dose/${demo}`);
  assert.match((await texts(page.locator('.known summary')))[0], /Saltmarsh duck breasts, cure 6\.25 %/);
});

/** Words that stand on the screen: of a list to choose from the chosen one, nothing that is folded or for a reader only. */
function words(page) {
  return page.evaluate(() => {
    const seen = (element) => {
      if (element.matches('.vh, .skip, .sprite, script, style, [hidden]') || !element.checkVisibility()) return '';
      if (element instanceof HTMLSelectElement) return element.selectedOptions[0]?.text ?? '';
      if (element instanceof HTMLInputElement) return element.type === 'text' ? element.value : '';
      return [...element.childNodes]
        .map((node) => (node.nodeType === Node.TEXT_NODE ? node.data : node instanceof Element ? seen(node) : ''))
        .join(' ');
    };
    return seen(document.body)
      .split(/\s+/)
      .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
  });
}

test('no screen has more words than a tired person reads', async (t) => {
  const page = await begin(t, US);
  const counted = [];
  const count = async (name, most) => {
    const n = await words(page);
    counted.push([name, n, most]);
    t.diagnostic(`${name}: ${n} words, at most ${most}`);
  };
  await count('how much, empty', MOST_EMPTY);
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  await count('how much, answered', MOST_FIRST);
  await goTo(page, '#/dose');
  await count('cure already on, meat known', MOST);
  await page.getByLabel('heaping tablespoon', { exact: true }).check();
  await page.getByLabel('Cure I put in').fill('1');
  await count('cure already on, too much', MOST);
  await goTo(page, '#/today');
  await count('batches, none', MOST);
  for (const at of ['#/recipes', '#/more', '#/read', '#/open', '#/cards/warm']) {
    await goTo(page, at);
    await count(at, MOST);
  }
  await startBatch(page, /Saltmarsh/);
  await startBatch(page, /Marsh hare/);
  await goTo(page, '#/today');
  await count('batches, two', MOST);
  assert.deepEqual(
    counted.filter(([, n, most]) => n > most),
    [],
  );
});

test('by the keyboard: past the head to the first field or the action, a ring on what is in hand, and back to where one was', async (t) => {
  const page = await begin(t, { ...US, isMobile: false, hasTouch: false });
  const held = () => page.evaluate(() => document.activeElement.id || document.activeElement.textContent.trim());
  const ring = (part) =>
    page.locator(part).evaluate((element) => {
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
      return (outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2) || boxShadow !== 'none';
    });
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  assert.equal(await held(), 'f-weight');
  // Pounds and ounces each have a ring of their own.
  assert.ok(await ring('.weight .part:nth-of-type(1)'));
  assert.ok(!(await ring('.weight .part:nth-of-type(2)')) && !(await ring('.nf.weight')));
  await page.keyboard.press('Tab');
  assert.ok(await ring('.weight .part:nth-of-type(2)'));
  assert.ok(!(await ring('.weight .part:nth-of-type(1)')));

  const demo = await startDemo(page);
  await goTo(page, `#/batch/${demo}/weigh`);
  await page.locator('.skip').focus();
  await page.keyboard.press('Enter');
  assert.equal(await held(), '3.5 g is in the bowl');

  // A title that takes the focus shows it.
  await goTo(page, '#/today');
  await page.keyboard.press('Tab');
  await page.getByRole('link', { name: /^Something went wrong/ }).focus();
  await page.keyboard.press('Enter');
  await heading(page, 'Something went wrong');
  assert.equal(await held(), 'Something went wrong');
  assert.ok(await ring('h1'));
  await page.getByRole('link', { name: 'Batches', exact: true }).first().click();
  await heading(page, 'Batches');
  await goTo(page, '#/how-much');
  await page.getByRole('link', { name: 'I already put cure on it' }).click();
  await heading(page, 'I already put cure on it');
  assert.deepEqual(await texts(page.locator('header .back')), ['How much']);
});

for (const locale of ['en-US', 'en-GB']) {
  test(`the days of the week stand whole and apart on a desk, ${locale}`, async (t) => {
    const page = await begin(t, { locale, viewport: { width: 1280, height: 800 }, isMobile: false, hasTouch: false });
    await page.clock.setFixedTime(new Date(2026, 10, 14, 18));
    const batch = await startDemo(page);
    await goTo(page, `#/batch/${batch}/weigh`);
    for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) await tick(page, of);
    // Each job in turn is the one that is named under its lane.
    for (const hours of [1, 20, 40, 60, 80]) {
      await page.clock.setFixedTime(new Date(2026, 10, 14, 18 + hours));
      await goTo(page, '#/more');
      await goTo(page, '#/today');
      const rows = await page.locator('svg.week').evaluate((week) => {
        const box = week.getBoundingClientRect();
        const all = [...week.querySelectorAll('text')].map((text) => {
          const { left, right, top } = text.getBoundingClientRect();
          return { text: text.textContent, left: left - box.left, right: right - box.left, top: Math.round(top) };
        });
        return { width: box.width, all };
      });
      const days = rows.all.slice(0, 7);
      assert.deepEqual(
        days.filter(({ text }) => !/^(Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d{1,2}$/.test(text)),
        [],
      );
      for (const [n, { text, right }] of days.entries())
        assert.ok(right < (days[n + 1]?.left ?? rows.width), `${text} runs into the next`);
      for (const { text, left, right } of rows.all)
        assert.ok(left >= 0 && right <= rows.width, `${text}: ${left} to ${right} of ${rows.width}`);
    }
  });
}
