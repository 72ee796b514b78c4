// What the benchmarks do with a browser: a profile of their own, when a page was usable, how long a key took.
import { createRequire } from 'node:module';

const { chromium } = createRequire(new URL('../tests/browser/', import.meta.url))('playwright-core');

export const READY = 'html[data-ready]';

/** Starts a browser on the profile in the folder `kept`, calls `work` with it and closes it again. */
export async function withProfile(kept, options, work) {
  const context = await chromium.launchPersistentContext(kept, {
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--no-first-run', '--disable-background-networking', '--disable-component-update'],
    viewport: { width: 390, height: 844 },
    ...options,
  });
  try {
    return await work(context);
  } finally {
    await context.close();
  }
}

/** Before the page is opened: `window.usableAt` will be when it could be used, in ms from its navigation. */
export function noteUsable(page) {
  return page.addInitScript(() => {
    new MutationObserver((_, watch) => {
      if (!document.documentElement?.hasAttribute('data-ready')) return;
      window.usableAt = performance.now();
      watch.disconnect();
    }).observe(document, { attributes: true, subtree: true, childList: true });
  });
}

/** How long each key of a weight takes that is typed into the first field of the dose check at `address`, the CPU slowed. */
export async function keyTimes(context, address, slowed, rounds) {
  const page = await context.newPage();
  await page.goto(`${address}#/dose`);
  await page.locator(READY).waitFor({ state: 'attached' });
  const field = page.locator('input[inputmode="decimal"], input[type="text"]').first();
  if (!(await field.count())) return [];
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  await timePresses(page);
  await field.focus();
  for (let round = 0; round < rounds; round++) {
    for (const key of ['1', '4', '8', '0', 'Backspace', 'Backspace', 'Backspace', 'Backspace']) {
      await page.keyboard.press(key);
      await page.waitForTimeout(30);
    }
  }
  return page.evaluate(() => window.times);
}

/** Notes in `window.times` how long each press takes to the first task after the frame that shows what it led to. */
export async function timePresses(page) {
  await page.evaluate(() => {
    window.times = [];
    addEventListener(
      'keydown',
      () => {
        const from = performance.now();
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => window.times.push(performance.now() - from);
          port2.postMessage(0);
        });
      },
      { capture: true },
    );
  });
}
