// Sizes in bytes and times in a real browser, each beside its budget. The times are this machine's.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { READY, keyTimes, noteUsable, timePresses, withProfile } from './bench-browser.mjs';
import { forecastRows } from './bench-forecast.mjs';
import { serve } from './serve.mjs';
import { BUDGETS, sizes, table } from './sizes.mjs';

// One browser that has never kept a batch, and one that comes to have a thousand.
const [profile, empty] = [1, 2].map(() => mkdtempSync(join(tmpdir(), 'cure-reckoner-bench-')));
const server = await serve('dist');
const address = `http://localhost:${server.address().port}/`;

const measured = sizes();
console.log('Sizes in bytes');
table([
  ['file', 'raw', 'gzip', 'brotli'],
  ...[...measured.files, measured.page, measured.single].map(({ name, ...how }) => [name, ...Object.values(how)]),
]);
console.log();

const rows = BUDGETS.map(({ what, budget, measure }) => [what, `${budget} B`, `${measure(measured)} B`]);
await withBrowser(async (context) => {
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  rows.push([
    'an answer, weigh-out of 12 size classes, 95th percentile',
    '4 ms',
    `${(await answers(page)).toFixed(2)} ms`,
  ]);
  rows.push(['20 batches planned back, median', '50 ms', `${(await planning(page)).toFixed(1)} ms`]);
  rows.push(...(await clockRows(page)));
  const { settings } = (await reckoned(page, { tables: {} })).ok;
  const timed = (request, rounds) => repeated(page, [request], rounds);
  rows.push(...(await forecastRows(timed, (request) => reckoned(page, request), settings)));
});
await withBrowser(async (context) => {
  const page = await context.newPage();
  await page.goto(address);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}, empty);
server.closeAllConnections();
server.close();

// From here on there is no server: all comes from the offline cache.
await withBrowser((context) => store(context, 1000));
// Ten under way and the rest put away, as after years of use; the first start after notes which are which.
await coldStart(profile);
// In turn, since how long a browser takes to come up varies by more than the batches cost.
const starts = [];
for (let n = 0; n < 9; n++) starts.push([await coldStart(empty), await coldStart(profile)]);
const middle = (list) => list.sort((a, b) => a - b)[Math.floor(list.length / 2)];
rows.push([
  'cold start from the offline cache to a usable page, median',
  '300 ms',
  `${middle(starts.map(([bare]) => bare))} ms`,
]);
rows.push([
  'more than that with 1,000 stored batches, 30 readings each, median of pairs',
  '100 ms',
  `${middle(starts.map(([bare, full]) => full - bare))} ms`,
]);
const found = await withBrowser(search);
rows.push([
  'a letter of a search over them to its painted answer, worst of 9',
  '50 ms',
  `${found.worst.toFixed(1)} ms`,
]);
rows.push(['storage used by them', `of ${found.limit} MB`, `${found.used} MB`]);
for (const [slowed, budget] of [
  [1, 16],
  [6, 60],
]) {
  const times = await withBrowser((context) => keyTimes(context, address, slowed, 5));
  rows.push([
    `key press to painted answer, CPU slowed ${slowed} x, median`,
    `${budget} ms`,
    `${middle(times).toFixed(1)} ms`,
  ]);
}
table([['what', 'budget', 'measured'], ...rows]);
for (const made of [profile, empty]) rmSync(made, { recursive: true, force: true });

function withBrowser(work, kept = profile) {
  return withProfile(kept, {}, work);
}

async function answers(page) {
  const times = await timed(page, 500, ({ demo, settings }) => {
    const pieces = Array.from({ length: 12 }, (_, at) => demo.pieces[at % demo.pieces.length]);
    return { weigh_out: { batch: { ...demo, pieces }, settings } };
  });
  return times[Math.floor(times.length * 0.95)];
}

/** Ready in six weeks, asleep for eight hours each night, sharing three places. */
async function planning(page) {
  const times = await timed(page, 30, ({ recipes, demo, settings }) => {
    const day = 86_400_000;
    const [now, days] = [1_794_636_000_000, 42];
    const batches = Array.from({ length: 20 }, (_, n) => ({
      id: `b${n}`,
      batch: { ...demo, recipe: recipes[n % recipes.length] },
    }));
    const rests = Array.from({ length: days + 14 }, (_, n) => ({ from: now + n * day, to: now + n * day + day / 3 }));
    const wish = { ready_by: now + days * day, rests, room: [8, 1, 3] };
    return { plan_back: { batches, wish, now, settings } };
  });
  return times[Math.floor(times.length / 2)];
}

/**
 * Times of one question, the shortest first; `ask` makes it in the page from what the core starts with. In the page
 * itself the core is not in reach, so the built core is loaded once more beside it, both parts.
 */
async function timed(page, count, ask) {
  const parts = ['first.', 'rest.'].map((part) => measured.files.find(({ name }) => name.startsWith(part)).name);
  const { readFile } = await import('node:fs/promises');
  const glue = await readFile(new URL('../target/glue/cure_reckoner.js', import.meta.url), 'utf8');
  return page.evaluate(
    async ([glue, first, rest, count, ask]) => {
      const names = glue
        .replace(/^export (?=function)/gm, '')
        .replace(/^export \{[^}]*\};?$/m, 'return { init: __wbg_init, reckon };');
      // Both at once: after the first pause the page's policy allows no code from text.
      const make = new Function(`return ${ask}`)();
      const { init, reckon } = new Function(names)();
      const exports = await init({ module_or_path: fetch(first) });
      await WebAssembly.instantiateStreaming(fetch(rest), { first: exports });
      const { settings } = reckon({ tables: {} }).ok;
      const request = make({ ...reckon({ starters: {} }).ok, settings });
      if (!reckon(request).ok) throw new Error(JSON.stringify(reckon(request)));
      const times = Array.from({ length: count }, () => {
        const from = performance.now();
        reckon(request);
        return performance.now() - from;
      });
      return times.sort((a, b) => a - b);
    },
    [glue, ...parts, count, String(ask)],
  );
}

/**
 * The cure clock: twelve classes, each of a thickness and weight of its own, with a month of readings; ten
 * and a hundred such batches; and against a general PDE solver in Python, where there is one.
 */
async function clockRows(page) {
  const { demo, settings } = await withCore(page, () => {
    const { demo } = reckon({ starters: {} }).ok;
    return { demo, settings: reckon({ tables: {} }).ok.settings };
  });
  const HOUR = 3_600_000;
  const begun = 500_000 * HOUR;
  // A month of readings, evenly spread: 4 a day, or one each hour.
  const month = (/** @type {number} */ count) =>
    Array.from({ length: count }, (_, n) => ({
      at: begun + (n * 720 * HOUR) / count,
      what: 'read',
      reads: `${(2 + (n % 5) * 0.4).toFixed(1)} °C`,
    }));
  const pieces = Array.from({ length: 12 }, (_, n) => ({
    cut: 'boar-loin',
    count: 1,
    thickness: `${25 + 5 * n} mm`,
    weight: `${400 + 100 * n} g`,
  }));
  const ask = (batch) => ({ cure_clock: { batch, now: begun + 720 * HOUR, settings } });
  const batch = { ...demo, pieces, fridge: month(120), ticks: [{ of: 'rub', at: begun }] };
  const hourly = await repeated(page, [ask({ ...batch, fridge: month(720) })], 300);
  const runs = [];
  for (const [batches, rounds] of [
    [1, 300],
    [10, 40],
    [100, 5],
  ]) {
    runs.push(await repeated(page, Array(batches).fill(ask(batch)), rounds));
  }
  const rows = [
    [
      'the cure clock, 12 size classes and a month of 120 or 720 readings, 95th percentile',
      '4 ms',
      `${runs[0].p95.toFixed(2)} ms, ${hourly.p95.toFixed(2)} ms`,
    ],
    [
      'the same for 12, 120, 1,200 classes, median',
      'linear',
      runs.map(({ median }) => `${median.toFixed(1)} ms`).join(', '),
    ],
  ];
  // One class, a cube at 4 °C, whose rub evens out as a slab's does, and what the Fo of even salt comes to: exact 0.30352.
  const one = {
    ...batch,
    pieces: [{ cut: 'fallow-haunch', count: 1, thickness: '40 mm', weight: '67.2 g' }],
    fridge: [{ at: begun, what: 'read', reads: '4 °C' }],
  };
  const request = { cure_clock: { batch: one, now: begun, settings } };
  const ours = await repeated(page, [request], 200);
  const even = await withCore(page, (request) => reckon(request).ok.classes[0].even.likely, request);
  const fo = (((even - begun) / 1000) * 2e-10) / 0.02 ** 2;
  for (const { solver, fo: theirs, ms } of pythonSolvers()) {
    const off = (value) => `${((value / 0.303_52 - 1) * 100).toFixed(2)} %`;
    rows.push([
      `${solver} over the clock, one class, theirs at 20 cells; off by ${off(theirs)} and ${off(fo)}`,
      'for comparison',
      `${ms.toFixed(1)} ms over ${ours.median.toFixed(2)} ms: ${Math.round(ms / ours.median)} times`,
    ]);
  }
  return rows;
}

function reckoned(page, request) {
  return withCore(page, (request) => reckon(request), request);
}

function pythonSolvers() {
  try {
    const said = execFileSync(process.env.PYTHON ?? 'python3', [new URL('bench-clock.py', import.meta.url).pathname], {
      encoding: 'utf8',
    });
    return said
      .trim()
      .split('\n')
      .filter(Boolean)
      .map((line) => JSON.parse(line));
  } catch {
    return [];
  }
}

/** Median and 95th percentile of answering all requests, in milliseconds. */
function repeated(page, requests, rounds) {
  return withCore(
    page,
    ([requests, rounds]) => {
      for (const request of requests) if (!reckon(request).ok) throw new Error(JSON.stringify(reckon(request)));
      const times = Array.from({ length: rounds }, () => {
        const from = performance.now();
        for (const request of requests) reckon(request);
        return performance.now() - from;
      }).sort((a, b) => a - b);
      return { median: times[Math.floor(rounds / 2)], p95: times[Math.floor(rounds * 0.95)] };
    },
    [requests, rounds],
  );
}

/** Calls back in the page with `reckon` in reach: the page keeps its core to itself, so it is loaded once more. */
async function withCore(page, work, given = null) {
  const parts = ['first.', 'rest.'].map((part) => measured.files.find(({ name }) => name.startsWith(part)).name);
  const { readFile } = await import('node:fs/promises');
  const glue = await readFile(new URL('../target/glue/cure_reckoner.js', import.meta.url), 'utf8');
  await page.evaluate(
    async ([glue, first, rest]) => {
      if (window.reckon) return;
      const names = glue
        .replace(/^export (?=function)/gm, '')
        .replace(/^export \{[^}]*\};?$/m, 'return { init: __wbg_init, reckon };');
      const { init, reckon } = new Function(names)();
      const exports = await init({ module_or_path: fetch(first) });
      await WebAssembly.instantiateStreaming(fetch(rest), { first: exports });
      window.reckon = reckon;
    },
    [glue, ...parts],
  );
  return page.evaluate(work, given);
}

/** A browser that has just been started opens the page; the time is from navigation to usable, by its own clock. */
async function coldStart(kept) {
  return withBrowser(async (context) => {
    const page = await context.newPage();
    await noteUsable(page);
    await page.goto(address);
    await page.locator(READY).waitFor({ state: 'attached' });
    // What was left for later is read before the browser is closed, as in a page that somebody looks at.
    await page.waitForTimeout(1500);
    return Math.round(await page.evaluate(() => window.usableAt));
  }, kept);
}

async function store(context, count) {
  const page = await context.newPage();
  await page.goto(address);
  await page.locator(READY).waitFor({ state: 'attached' });
  await page.locator('a[href="#/start"]').first().click();
  await page.locator('button.tagged').first().click();
  await page.waitForFunction(() => location.hash.includes('/pieces'));
  await page.evaluate(async (count) => {
    const wait = (request) => new Promise((done) => (request.onsuccess = () => done(request.result)));
    const db = await wait(indexedDB.open('cure-reckoner'));
    const tx = db.transaction('records', 'readwrite');
    const all = await wait(tx.objectStore('records').getAll(IDBKeyRange.bound('batch/', 'batch/~')));
    const ticks = Array.from({ length: 60 }, (_, n) => ({ of: `turn:0:${n}`, at: 1.79e12 + n * 3.6e6 }));
    const pieces = [
      { cut: 'mallard-breast', count: 12, weight: '1328 g', thickness: '26 mm' },
      { cut: 'teal-breast', count: 4, weight: '152 g', thickness: '15 mm' },
    ];
    const readings = Array.from({ length: 30 }, (_, n) => ({
      class: n % 2,
      temperature: `${5 + 2 * n} °C`,
      at: 1.7901e12 + n * 6e5,
    }));
    for (let n = 1; n < count; n++) {
      const after = { out: '1190 g', taste: 'salt, smoke, marsh', change: `Batch ${n}: less juniper` };
      const data = { ...all[0].data, pieces, ticks, fire: { readings }, after, closed: n > 9 };
      tx.objectStore('records').put({ ...all[0], data, key: `batch/bench-${n}` });
    }
    await new Promise((done) => (tx.oncomplete = done));
    db.close();
  }, count);
}

/** From a letter to the frame that shows what it found, once all batches are read; and what they take, in MB. */
async function search(context) {
  const page = await context.newPage();
  await page.goto(`${address}#/past`);
  await page.locator(READY).waitFor({ state: 'attached' });
  await page.getByText('still being read').waitFor({ state: 'detached' });
  await timePresses(page);
  await page.getByLabel('Search').focus();
  for (const key of 'mallard x') {
    await page.keyboard.press(key);
    await page.waitForTimeout(60);
  }
  const { usage, quota } = await page.evaluate(() => navigator.storage.estimate());
  const [used, limit] = [usage, quota].map((bytes) => Math.round(bytes / 1e6));
  return { worst: Math.max(...(await page.evaluate(() => window.times))), used, limit };
}
