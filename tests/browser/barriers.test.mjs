// Nothing stands in anybody's way, in three engines, at 320 px and with all that is folded unfolded: axe finds nothing, and
// no page scrolls sideways. Every state of a batch, every screen with nothing stored and with all of it, every card to its
// end, and the stops of the tour as they stood in Chromium. Axe is asked in
// day, where something is of a make that stood nowhere before; with `EVERY=1` at each stop, on all screens of each state, in
// every light, and along all tours. `ENGINE=webkit` takes one engine.
import assert from 'node:assert/strict';
import { copyFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { PARTS, SCREENS } from '../../web/app/router.js';
import { LIGHTS, arrive, put, show, started, still, violations, watch } from './barriers.mjs';
import { acts, context as firefox } from './firefox.mjs';
import { dist, host, open, phone, scratch, visit } from './harness.mjs';
import { states } from './page/states.mjs';
import { settled } from './page/steps.mjs';
import { TOURS } from './page/tours.mjs';
import { webkit } from './webdriver.mjs';

const EVERY = process.env.EVERY === '1';
const NARROW = 320;

const played = (start) => async (t) => acts(await (await start(t)).newPage());
/** In the English of the States: with the half of the day behind it an hour is at its longest. */
const ENGINES = {
  chromium: played((t) => open(t, { viewport: { width: NARROW, height: 640 }, locale: 'en-US' })),
  firefox: played(firefox),
  webkit: async (t) => {
    const page = await webkit();
    t.after(() => page.end());
    return page;
  },
};

/** All that the page has an address for, and two for what is not there. */
const PLACES = [...SCREENS, 'cards', 'batch/nowhere/weigh', 'recipe/nowhere'];

/** Every card by every answer to its end. A question that was seen is not gone through again. */
async function cards(page, look) {
  await arrive(page, '#/cards');
  const doors = await page.run(() => [...document.querySelectorAll('.doors a')].map((one) => one.hash));
  const keys = doors.filter((hash) => /^#\/cards\/(?!dose)./.test(hash));
  assert.ok(keys.length > 10, doors.join());
  for (const hash of keys) {
    const seen = new Set();
    const ways = [[]];
    for (let way = ways.pop(); way; way = ways.pop()) {
      await arrive(page, hash, { by: '#/more', presses: way });
      await look(`${hash}: ${way}`);
      const { says, answers } = await page.run(() => ({
        says: document.querySelector('#question')?.textContent,
        answers: document.querySelectorAll('.choices button').length,
      }));
      if (answers === 0 || seen.has(says)) continue;
      seen.add(says);
      for (let answer = 0; answer < answers; answer += 1) ways.push([...way, answer]);
    }
  }
}

async function everywhere(page, look) {
  const all = Object.entries(states(Date.now()));
  const at = new Date().toISOString();
  const records = all.map(([, [data]], n) => ({ key: `batch/s${n}`, v: 1, at, data }));
  const go = async (hash, name) => {
    await arrive(page, hash);
    await look(name);
  };
  await put(page, []);
  for (const screen of PLACES) await go(`#/${screen}`, `${screen}, nothing stored`);
  await cards(page, look);
  await arrive(page, '#/recipes');
  const recipes = await page.run(() =>
    [...document.querySelectorAll('main a[href^="#/recipe/"]')].map(({ hash }) => hash),
  );
  assert.ok(recipes.length > 0, 'no recipes');
  for (const hash of recipes) for (const way of [hash, `${hash}/edit`]) await go(way, way);
  await put(page, records);
  for (const screen of PLACES) await go(`#/${screen}`, `${screen}, all stored`);
  for (const [n, [name, [, screens]]] of all.entries())
    for (const part of EVERY ? PARTS : screens)
      if (part !== 'today') await go(`#/batch/s${n}/${part}`, `${name}: ${part}`);
  for (const [n, [name, [, screens]]] of all.entries()) {
    if (!EVERY && !screens.includes('today')) continue;
    await put(page, [records[n]]);
    await go('#/today', `${name}: today`);
  }
}

/** The stops of the tours as they stand in Chromium, each once, and a page to show them on. */
async function stills(t) {
  const { address } = await host(t);
  const found = new Map();
  for (const name of EVERY ? Object.keys(TOURS) : ['screens']) {
    const fresh = async (before = () => {}) => {
      const context = await open(t, phone);
      await before(context);
      return visit(context, address);
    };
    const page = await fresh();
    await TOURS[name](
      page,
      async (screen, more, shown = page) => {
        // Paper is not read out, and scrolls nowhere.
        if (screen.endsWith('on paper')) return;
        await settled(shown);
        const one = await shown.evaluate(still);
        const key = JSON.stringify(one);
        if (!found.has(key)) found.set(key, { screen: `${name}, ${screen}`, one });
      },
      { fresh },
    );
    await page.context().close();
  }
  const folder = scratch(t);
  const style = readdirSync(dist).find((name) => name.endsWith('.css'));
  copyFileSync(join(dist, style), join(folder, style));
  const head = `<!doctype html><html><meta charset="utf-8"><meta name="viewport" content="width=device-width">`;
  writeFileSync(join(folder, 'index.html'), `${head}<link rel="stylesheet" href="${style}"><title>None</title><p>None`);
  return { all: [...found.values()], address: (await host(t, folder)).address };
}

/** What cannot find a fault that is there says nothing by finding none. */
async function planted(page) {
  await page.run(() => {
    const main = document.querySelector('main');
    main.append(document.createElement('button'));
    main.append(Object.assign(document.createElement('p'), { textContent: 'Pale', id: 'pale' }));
    Object.assign(document.querySelector('#pale').style, { color: '#777', background: '#888', width: '999px' });
  });
  const { told, look } = watch(page, ['day'], true);
  await look('planted');
  for (const fault of ['button-name: ', 'color-contrast: #pale', ' px too wide'])
    assert.ok(told.wrong.join('\n').includes(fault), `${fault}is not found among ${told.wrong}`);
  const colours = await violations(page, 'dark');
  assert.deepEqual(
    colours.map((one) => one.split(':').slice(0, 2).join(':')),
    ['color-contrast: #pale'],
  );
}

test('nothing stands in anybody’s way', async (t) => {
  const shown = await stills(t);
  assert.ok(shown.all.length > 40, `${shown.all.length} stops`);
  for (const [engine, start] of Object.entries(ENGINES)) {
    if (process.env.ENGINE && engine !== process.env.ENGINE) continue;
    await t.test(engine, async (t) => {
      const { address } = await host(t);
      const page = await start(t);
      await page.narrow(NARROW);
      const { told, look } = watch(page, EVERY ? Object.keys(LIGHTS) : ['day'], EVERY);
      await page.go(address);
      await started(page);
      await everywhere(page, look);
      const visited = told.looks;
      await planted(page);
      await page.go(shown.address);
      for (const { screen, one } of shown.all) {
        await show(page, one);
        await look(screen);
      }
      t.diagnostic(`${visited} screens and ${told.looks - visited} stops, axe was asked at ${told.asked}`);
      assert.deepEqual(told.wrong, []);
    });
  }
});
