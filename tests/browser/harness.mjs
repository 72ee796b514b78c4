// A real browser, the built page, and a server that can be stopped.
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import axe from 'axe-core';
import jsqr from 'jsqr';
import { chromium } from 'playwright-core';
import { PNG } from 'pngjs';
import { serve } from '../../scripts/serve.mjs';

export const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
export const single = pathToFileURL(join(dist, 'cure-reckoner.html')).href;
/** A place with grams and the 24-hour clock, whose own rule is not in the table, so that the default one judges. */
const LOCALE = 'en-ZA';
export const phone = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
  locale: LOCALE,
};
export { pause };

const QUIET = [
  '--no-sandbox',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const endings = new WeakMap();

/** Tidies up when the test is over, last opened first closed: node's own hooks run the other way round. */
function atEnd(t, ending) {
  if (!endings.has(t)) {
    endings.set(t, []);
    t.after(async () => {
      for (const end of endings.get(t).reverse()) await end();
    });
  }
  endings.get(t).push(ending);
}

/** A folder that is gone when the test is over. */
export function scratch(t) {
  const folder = mkdtempSync(join(tmpdir(), 'cure-reckoner-'));
  atEnd(t, () => rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 }));
  return folder;
}

/** Serves a folder until the test is over or `stop` is called. The same `port` may be served again afterwards. */
export async function host(t, folder = dist, port = 0) {
  const server = await serve(folder, port);
  const stop = () => new Promise((done) => (server.close(done), server.closeAllConnections()));
  atEnd(t, stop);
  return { port: server.address().port, address: `http://localhost:${server.address().port}/`, stop };
}

/** Opens a browser that keeps its data in `profile`; open it again with the same one for what a reopening shows. */
export async function open(t, { profile = scratch(t), ...options } = {}) {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: '/usr/bin/chromium',
    args: QUIET,
    ...phone,
    ...options,
  });
  atEnd(t, () => context.close());
  return context;
}

/** The browser loses its power: SIGKILL to every process that works in `profile`. */
export async function cutPower(context, profile) {
  const closed = new Promise((done) => context.once('close', done));
  const pids = browsersOf(profile);
  if (pids.length === 0) throw new Error(`no browser works in ${profile}`);
  for (const pid of pids) {
    try {
      process.kill(Number(pid), 'SIGKILL');
    } catch (error) {
      if (error.code !== 'ESRCH') throw error; // It has ended with the one before it.
    }
  }
  await closed;
  while (browsersOf(profile).length > 0) await pause(10);
}

function browsersOf(profile) {
  return readdirSync('/proc').filter((pid) => {
    if (!/^\d+$/.test(pid)) return false;
    try {
      return readFileSync(`/proc/${pid}/cmdline`, 'utf8')
        .split('\0')
        .some((word) => word === profile || word === `--user-data-dir=${profile}`);
    } catch {
      return false; // It has ended in the meantime.
    }
  });
}

/** Goes to an address and waits until the page is usable. */
export async function visit(context, address) {
  const page = await context.newPage();
  await page.goto(address);
  await usable(page);
  return page;
}

export async function usable(page) {
  await page.locator('html[data-ready]').waitFor({ state: 'attached' });
}

/** Waits until the worker has stored the page and answers for it. */
export async function storedForOffline(page) {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}

/**
 * What axe finds wrong, one line each: the rule, and where. `rules`: these alone, such as the one that goes by the colours
 * where all the others were asked in another light.
 */
export async function violations(page, rules = []) {
  await page.evaluate(axe.source);
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const asked = rules.length ? { type: 'rule', values: rules } : { type: 'tag', values: tags };
  const found = await page.evaluate(async (asked) => {
    // What happens to lie under a bar that stays on the screen axe takes for covered, though it scrolls clear of it.
    const bars = [...document.querySelectorAll('.pin, .masthead, .places')];
    for (const bar of bars) bar.style.position = 'static';
    const found = await axe.run(document, { runOnly: asked });
    for (const bar of bars) bar.style.position = '';
    return found;
  }, asked);
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary}`),
  );
}

/** The text in the QR code that `locator` shows, read from its picture; null when there is none. */
export async function scan(locator) {
  const { data, width, height } = PNG.sync.read(await locator.screenshot());
  return jsqr(new Uint8ClampedArray(data), width, height)?.data ?? null;
}

/** Puts records into the store of a browser before the page is opened in it. */
export async function stored(context, address, records) {
  const other = await context.newPage();
  await other.goto(`${address}manifest.webmanifest`);
  await other.evaluate(
    (records) =>
      new Promise((done) => {
        const request = indexedDB.open('cure-reckoner', 1);
        request.onupgradeneeded = ({ target }) => {
          target.result.createObjectStore('records', { keyPath: 'key' });
          target.result.createObjectStore('aside', { keyPath: 'id', autoIncrement: true });
        };
        request.onsuccess = ({ target }) => {
          const tx = target.result.transaction('records', 'readwrite');
          for (const record of records) tx.objectStore('records').put(record);
          tx.oncomplete = () => (target.result.close(), done());
        };
      }),
    records,
  );
  await other.close();
}
