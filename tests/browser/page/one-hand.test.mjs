// A phone on its side and a small one upright, in one hand: whatever stands in doubt, is asked or was just done, figure,
// keys and action lie free; and what a thumb presses twice at one spot is done once.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { states } from './states.mjs';
import { begin, goTo, kept, put, settled, startDemo } from './steps.mjs';

const US = { locale: 'en-US', timezoneId: 'America/New_York' };
const GB = { locale: 'en-GB', timezoneId: 'Europe/London' };
const SIDE = { width: 844, height: 390 };
const UPRIGHT = [
  { width: 390, height: 844 },
  { width: 390, height: 664 },
  { width: 320, height: 640 },
];

/** What of these lies under something else or out of the window, one line each. */
const covered = (page, parts) =>
  page.evaluate((parts) => {
    const found = [];
    for (const part of parts)
      for (const one of document.querySelectorAll(part)) {
        const { left, top, right, bottom } = one.getBoundingClientRect();
        const name = `${part} ${one.textContent.trim().slice(0, 20)}`;
        if (left < 0 || top < 0 || right > innerWidth || bottom > innerHeight)
          found.push(`${name} is out of the window`);
        else
          for (const [x, y] of [
            [left + 4, top + 4],
            [right - 4, bottom - 4],
          ]) {
            const over = document.elementFromPoint(x, y);
            if (!one.contains(over) && !over?.contains(one)) found.push(`${name} lies under ${over?.className}`);
          }
      }
    return found;
  }, parts);

/** The states in which there are keys, each with its address. */
async function withKeys(page) {
  const all = Object.entries(states(Date.now()));
  const at = new Date().toISOString();
  await put(
    page,
    all.map(([, [data]], n) => ({ key: `batch/s${n}`, v: 1, at, data })),
  );
  return all.flatMap(([name, [, screens]], n) =>
    screens
      .filter((screen) => screen === 'fire' || screen === 'pack')
      .map((screen) => ({ name: `${name}: ${screen}`, hash: `#/batch/s${n}/${screen}` })),
  );
}

for (const [place, where] of Object.entries({ US, GB })) {
  test(`on its side, in every state of fire and chill, keys and action lie free (${place})`, async (t) => {
    const page = await begin(t, { viewport: SIDE, ...where });
    let keys = 0;
    for (const { name, hash } of await withKeys(page)) {
      await goTo(page, hash);
      await settled(page);
      if (!(await page.locator('#pad-keys').count())) continue;
      keys += 1;
      const parts = ['#pad .show', '#pad-keys button', '.pin .btn', '.pin .stepper button', '.masthead .light'];
      assert.deepEqual(await covered(page, parts), [], name);
      // A reading that is typed, and the steps of its hour, move none of them.
      await page.locator('#pad .when').evaluate((button) => button.click());
      await page.keyboard.press('7');
      assert.deepEqual(await covered(page, [...parts, '.timebar button']), [], `${name}, typed`);
    }
    assert.ok(keys > 30, `${keys} screens with keys`);
  });
}

test('upright, display, keys and action are in sight together once they are scrolled to', async (t) => {
  const page = await begin(t, US);
  const all = await withKeys(page);
  for (const viewport of UPRIGHT) {
    await page.setViewportSize(viewport);
    for (const { name, hash } of all) {
      await goTo(page, hash);
      await settled(page);
      if (!(await page.locator('#pad-keys').count())) continue;
      await page.locator('#pad .show').evaluate((show) => show.scrollIntoView({ block: 'start' }));
      const parts = ['#pad .show', '#pad-keys button'];
      const pinned = await page.evaluate(() =>
        [...document.querySelectorAll('.pin')].some((pin) => getComputedStyle(pin).position === 'fixed'),
      );
      if (pinned) parts.push('.pin .btn');
      assert.deepEqual(await covered(page, parts), [], `${name} at ${viewport.width} by ${viewport.height}`);
    }
  }
});

test('upright, before anything is scrolled, no key lies under the action, with a line of doubt too', async (t) => {
  const page = await begin(t, US);
  const all = await withKeys(page);
  // In a short window a line of doubt takes what is left.
  for (const [viewport, most] of [
    [{ width: 390, height: 844 }, 200],
    [{ width: 390, height: 664 }, 120],
  ]) {
    await page.setViewportSize(viewport);
    let looked = 0;
    for (const { name, hash } of all) {
      await goTo(page, hash);
      await settled(page);
      if (!(await page.locator('#pad-keys').count())) continue;
      // What is asked of a reading, and a caution of the job, come before the keys.
      const asked = await page.locator('.answer :is(.verdict, .caution)').count();
      const head = await page.evaluate(() => (scrollTo(0, 0), document.querySelector('.masthead').offsetHeight));
      const fixed = await page.evaluate(() => {
        const pin = document.querySelector('.pin');
        return Boolean(pin) && getComputedStyle(pin).position === 'fixed';
      });
      if (asked || head > most || !fixed) continue;
      looked += 1;
      const parts = ['#pad .show', '#pad-keys button', '.pin .btn', '.pin .stepper button'];
      assert.deepEqual(await covered(page, parts), [], `${name} at ${viewport.height}`);
    }
    assert.ok(looked > 15, `${looked} screens at ${viewport.height}`);
  }
});

test('on its side what was just done is told beside the action, over neither keys nor button', async (t) => {
  const page = await begin(t, { viewport: SIDE, ...US });
  const { hash } = (await withKeys(page)).find(({ name }) => name === 'hot enough, still in: fire');
  await goTo(page, hash);
  const before = await page.locator('#pad-keys').boundingBox();
  await page.locator('.pin .btn').click();
  await page.locator('.bars .notice').waitFor();
  await settled(page);
  assert.deepEqual(await page.locator('#pad-keys').boundingBox(), before);
  assert.deepEqual(await covered(page, ['#pad-keys button', '.pin .btn', '.bars .btn', '.answer .say']), []);
  // What lies under the bar scrolls clear of it.
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  const foot = await page.evaluate(() => {
    const last = document.querySelector('main').lastElementChild.getBoundingClientRect();
    return last.bottom - document.querySelector('.bars').getBoundingClientRect().top;
  });
  assert.ok(foot <= 1, `${foot} px under the bar`);
});

test('a second tap at the spot of the action does nothing while it has just become another', async (t) => {
  const page = await begin(t, US);
  const batch = await startDemo(page);
  await goTo(page, `#/batch/${batch}/weigh`);
  const button = page.locator('.pin .btn');
  const { x, y, width, height } = await button.boundingBox();
  const tap = () => page.mouse.click(x + width / 2, y + height / 2);
  const ticks = async () => (await kept(page, 'batch/'))[0].data.ticks.length;
  const first = await button.innerText();
  await tap();
  // The store takes its time: the label changes long after the tap.
  await page.waitForFunction((label) => document.querySelector('.pin .btn').innerText !== label, first);
  await tap();
  assert.equal(await ticks(), 1);
  // Somebody who has read what it says now.
  await page.waitForTimeout(600);
  await tap();
  await page.waitForFunction(() => document.querySelectorAll('[data-tick]:checked').length === 2);
  assert.equal(await ticks(), 2);
});

test('what has come out takes the probe along to the next one', async (t) => {
  const page = await begin(t, US);
  const all = await withKeys(page);
  const at = async (wanted) => {
    await goTo(page, all.find(({ name }) => name === wanted).hash);
    await settled(page);
  };
  await at('hot enough, still in: fire');
  const held = () => page.locator('.probe label:has(:checked)').innerText();
  const button = page.locator('.pin .btn');
  const name = (await button.innerText()).replace(/ is out$/, '');
  assert.equal((await held()).trim(), name);
  await button.click();
  await page.locator('.bars .notice').waitFor();
  await settled(page);
  assert.notEqual((await held()).trim(), name, 'the next reading would go to what is out');
  assert.doesNotMatch(await held(), /Smoker/);
});

test('of several sizes none is called the first out while no heat is known', async (t) => {
  const page = await begin(t, US);
  const [data] = states(Date.now())['fire, nothing read'];
  for (const step of data.recipe.steps) if (step.do === 'smoke') delete step.at;
  await put(page, [{ key: 'batch/cold', v: 1, at: new Date().toISOString(), data }]);
  await goTo(page, '#/batch/cold/fire');
  const answer = page.locator('.answer');
  assert.doesNotMatch(await answer.innerText(), /First out/);
  await answer.getByText('Log the smoker', { exact: true }).waitFor();
});
