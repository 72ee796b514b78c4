// Builds of the page beside each other, in one run and in turn, so that what else the machine does falls on all alike:
// node scripts/bench-beside.mjs before=/some/dist now=dist [rounds]. Prints medians; measures, never fails.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { READY, keyTimes, noteUsable, withProfile } from './bench-browser.mjs';
import { serve } from './serve.mjs';
import { table } from './sizes.mjs';

const HERE = { locale: 'en-GB', timezoneId: 'Europe/London' };
// What the tools of Chromium call slow 4G: 1.6 Mbit/s down with a tenth off, 562.5 ms to and fro.
const SLOW_4G = { offline: false, latency: 562.5, downloadThroughput: 180_000, uploadThroughput: 84_375 };

const given = process.argv.slice(2);
const rounds = Number(given.find((each) => /^\d+$/.test(each)) ?? 9);
const builds = given.filter((each) => each.includes('=')).map((each) => each.split('='));
const made = [];
const sides = [];
for (const [name, folder] of builds) {
  const profile = newProfile();
  const server = await serve(folder);
  const side = { name, profile, server, address: `http://localhost:${server.address().port}/`, rows: new Map() };
  await visitOnce(side);
  sides.push(side);
}

for (let round = 0; round < rounds; round++) {
  // Whoever goes first pays for a cold disk; so each does in its turn.
  for (const side of turned(sides, round)) {
    await firstVisit(side, 'first visit, nothing slowed', 1, null);
    await firstVisit(side, 'first visit, slow 4G and CPU slowed 6 x', 6, SLOW_4G);
    await withProfile(side.profile, HERE, (context) => start(side, context));
    for (const slowed of [1, 6]) {
      const times = await withProfile(side.profile, HERE, (context) => keyTimes(context, side.address, slowed, 3));
      for (const ms of times) note(side, `key to paint, CPU slowed ${slowed} x, ms`, ms);
    }
  }
}

const what = [...new Set(sides.flatMap(({ rows }) => [...rows.keys()]))];
table([
  [`median of ${rounds}`, ...sides.map(({ name }) => name)],
  ...what.map((row) => [row, ...sides.map(({ rows }) => middle(rows.get(row)))]),
]);
for (const { server } of sides) {
  server.closeAllConnections();
  server.close();
}
for (const folder of made) rmSync(folder, { recursive: true, force: true });

function note({ rows }, row, value) {
  rows.set(row, [...(rows.get(row) ?? []), value]);
}

function middle(list) {
  return list ? list.sort((a, b) => a - b)[Math.floor(list.length / 2)].toFixed(1) : '-';
}

function turned(list, by) {
  const from = by % list.length;
  return [...list.slice(from), ...list.slice(0, from)];
}

function newProfile() {
  const folder = mkdtempSync(join(tmpdir(), 'cure-reckoner-beside-'));
  made.push(folder);
  return folder;
}

/** Fills the offline cache, where the page has one. */
function visitOnce({ profile, address }) {
  return withProfile(profile, HERE, async (context) => {
    const page = await context.newPage();
    await page.goto(address);
    await page.locator(READY).waitFor({ state: 'attached' });
    await page.waitForTimeout(3000);
  });
}

/** To a usable page and, where the first screen has a field for the meat, to grams typed at once; and what came. */
async function firstVisit(side, row, slowed, network) {
  const profile = newProfile();
  await withProfile(profile, HERE, async (context) => {
    const page = await context.newPage();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Network.enable');
    let bytes = 0;
    devtools.on('Network.loadingFinished', ({ encodedDataLength }) => (bytes += encodedDataLength));
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    if (network) await devtools.send('Network.emulateNetworkConditions', network);
    const from = performance.now();
    await page.goto(side.address, { waitUntil: 'commit' });
    await page.locator(READY).waitFor({ state: 'attached' });
    note(side, `${row}: usable, ms`, performance.now() - from);
    note(side, `${row}: kB till then`, bytes / 1000);
    const meat = page.getByLabel(/^Meat, trimmed/).first();
    if (await meat.count()) {
      await meat.fill('3200');
      await page
        .locator('.ans', { hasText: /\d\s?g\b/ })
        .first()
        .waitFor();
      note(side, `${row}: grams, ms`, performance.now() - from);
    }
  });
  rmSync(profile, { recursive: true, force: true });
}

/** A browser that has just been started opens the page out of its offline cache: by the page's own clock. */
async function start(side, context) {
  await context.setOffline(true);
  const page = await context.newPage();
  await noteUsable(page);
  const opened = await page.goto(side.address).catch(() => null);
  if (!opened) return;
  await page.locator(READY).waitFor({ state: 'attached' });
  note(side, 'cold start offline: usable, ms', await page.evaluate(() => window.usableAt));
}
