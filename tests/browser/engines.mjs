// What every engine has to do, once: the main path by the keyboard alone, keep and reload, axe, a narrow page, link and
// square, paper, offline, the single file. Each step goes on where the one before it has ended.
import assert from 'node:assert/strict';
import { setTimeout as pause } from 'node:timers/promises';
import jsqr from 'jsqr';
import { PNG } from 'pngjs';
import { violations } from './barriers.mjs';
import { single } from './harness.mjs';
import { read } from './paper.mjs';

/** A batch under way, the card of a recipe, and what stands by itself. */
const SCREENS = ['#/how-much', '#/today', '#/recipes', '#/more', '#/keep', '#/cards'];
const STAGES = ['pieces', 'weigh', 'cure', 'fire', 'pack', 'labels'];
const NAME = 'Saltmarsh duck breasts';

/** Waits until a function in the page says something. */
async function until(page, work, ...args) {
  const end = Date.now() + 30_000;
  for (;;) {
    // Between two pages there is none to ask.
    const found = await page.run(work, ...args).catch(() => null);
    if (found) return found;
    assert.ok(Date.now() < end, `waited in vain: ${work} ${args}`);
    await pause(50);
  }
}

const started = (page) => until(page, () => document.documentElement.hasAttribute('data-ready'));
const settled = (page) => until(page, () => !document.documentElement.hasAttribute('data-saving'));

async function goTo(page, hash) {
  await settled(page);
  await page.run((to) => (location.hash = to), hash);
  await until(page, () => document.querySelector('h1') && !document.documentElement.hasAttribute('data-saving'));
}

/** Marks the button, link or box of this name, and gives a selector for it. */
async function called(page, name) {
  await until(
    page,
    (name) => {
      document.querySelector('[data-found]')?.removeAttribute('data-found');
      const all = [...document.querySelectorAll('button, a, summary, input, select')];
      const names = (one) => [one.ariaLabel, one.textContent, ...[...(one.labels ?? [])].map((l) => l.textContent)];
      const plain = (text) => text?.replace(/\s+/g, ' ').trim();
      const has = (fits) =>
        all.find((one) => one.checkVisibility() && names(one).some((text) => text && fits(plain(text))));
      const found = has((text) => text === name) ?? has((text) => text.includes(name));
      found?.setAttribute('data-found', '');
      return Boolean(found);
    },
    name,
  );
  return '[data-found]';
}

/** Tabs on until this holds the focus. */
async function tabTo(page, selector) {
  for (let n = 0; n < 150; n += 1) {
    if (await page.run((of) => document.activeElement?.matches(of), selector)) return;
    await page.keys('Tab');
  }
  assert.fail(`the keyboard does not get to ${selector}`);
}

const press = async (page, name) => {
  await tabTo(page, await called(page, name));
  await page.keys('Enter');
};

const batches = (page) =>
  page.run(
    () =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target: { result: db } }) => {
          const range = IDBKeyRange.bound('batch/', 'batch/\uffff');
          db.transaction('records').objectStore('records').getAll(range).onsuccess = (found) => {
            db.close();
            done(found.target.result);
          };
        };
      }),
  );

/**
 * The weight is typed on the first screen, and the grams stand there. 7 lb is 3175.147 g: 150 ppm of it by 6.25 % is
 * 7.620 g, on a 0.1 g scale 7.6 g; the pound is exact by definition (NIST SP 811).
 */
async function answers(page) {
  await goTo(page, '#/how-much');
  await tabTo(page, '#main input');
  await page.keys('7');
  const cure = await until(page, () => {
    const [first] = document.querySelectorAll('.ans');
    return /\d/.test(first?.textContent ?? '') ? first.textContent.replace(/\s+/g, ' ') : null;
  });
  assert.match(cure, /Cure.*\b7\.6 ?g/);
}

/** The sample batch, from the board to the cure. */
async function weighed(page) {
  await goTo(page, '#/more');
  await press(page, 'Try it with sample meat');
  const batch = await until(page, () => /batch\/([^/]+)\/pieces/.exec(location.hash)?.[1]);
  await goTo(page, `#/batch/${batch}/weigh`);
  await until(page, () => document.querySelector('.line [data-tick]'));
  const left = () => page.run(() => document.querySelectorAll('.line [data-tick]:not(:checked)').length);
  for (let open = await left(); open > 0; open = await left()) {
    const of = await page.run(() => document.querySelector('.line [data-tick]:not(:checked)').dataset.tick);
    await tabTo(page, `[data-tick="${of}"]`);
    await page.keys('Space');
    await until(page, (of) => document.querySelector(`[data-tick="${of}"]:checked`) !== null, of);
    await settled(page);
  }
  return batch;
}

/** Every step by its name. `place` holds what they hand on: the address, the batch, how to stop the server. */
export const STEPS = {
  'the first screen answers': async (page, place) => {
    await page.go(place.address);
    await started(page);
    await answers(page);
  },
  'the sample batch is weighed by the keyboard alone': async (page, place) => {
    place.batch = await weighed(page);
    const [{ data }] = await batches(page);
    assert.ok(data.ticks.some(({ of }) => of === 'rub') && data.ticks.some(({ of }) => of === 'cure:0'));
  },
  'what was ticked is there after a reload': async (page, place) => {
    const before = await batches(page);
    await page.reload();
    await started(page);
    assert.deepEqual(await batches(page), before);
    await goTo(page, `#/batch/${place.batch}/cure`);
    await until(page, () => /In the cure|until/i.test(document.querySelector('main').textContent));
  },
  'axe finds nothing, and at 320 px nothing scrolls sideways': async (page, place) => {
    const screens = [...SCREENS, ...STAGES.map((stage) => `#/batch/${place.batch}/${stage}`)];
    for (const hash of screens) {
      await goTo(page, hash);
      assert.deepEqual(await violations(page), [], hash);
    }
    // 320 px are 1280 px at 400 %.
    const back = await page.narrow(320);
    for (const hash of screens) {
      await goTo(page, hash);
      const over = await page.run(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      assert.ok(over <= 0, `${hash}: ${over} px too wide`);
    }
    await back();
  },
  'a link and its square': async (page, place) => {
    await goTo(page, '#/recipes');
    await page.click(await called(page, NAME));
    place.link = await until(page, () => document.querySelector('#link-text')?.textContent.trim());
    const { data, width, height } = PNG.sync.read(await page.shot('.qr'));
    assert.equal(jsqr(new Uint8ClampedArray(data), width, height)?.data, place.link);
    await page.go('about:blank');
    await page.go(place.link);
    await started(page);
    await until(page, (name) => document.querySelector('h1')?.textContent.includes(name), NAME);
    assert.match(await page.run(() => document.querySelector('.verdict').textContent), /In range/);
  },
  'the list prints on one side': async (page, place) => {
    if (!page.pdf) return 'this driver prints nothing';
    await goTo(page, `#/batch/${place.batch}/weigh`);
    const sides = await read(await page.pdf(), 20);
    assert.deepEqual(
      sides.map(({ size }) => size),
      [[210, 297]],
    );
    assert.match(sides[0].words, /Cure/);
  },
  'with the server gone it starts, and still has the batch': async (page, place) => {
    await page.go(place.address);
    await started(page);
    await until(page, () => navigator.serviceWorker.controller?.state === 'activated');
    const before = await batches(page);
    await place.stop();
    await page.reload();
    await started(page);
    await answers(page);
    assert.deepEqual(await batches(page), before);
  },
  'the single file answers, keeps and starts again': async (page) => {
    await page.go(single);
    await started(page);
    await answers(page);
    await weighed(page);
    const before = await batches(page);
    assert.equal(before.length, 1);
    await page.reload();
    await started(page);
    assert.deepEqual(await batches(page), before);
  },
};

/** Goes through all of it in one browser. */
export async function through(t, page, place) {
  for (const [name, step] of Object.entries(STEPS)) {
    await t.test(name, async (t) => {
      const left = await step(page, place);
      if (left) t.skip(left);
    });
  }
}
