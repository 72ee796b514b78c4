// Firefox by WebDriver BiDi, with the acts that the tests of the engines know.
import { firefox as engine } from 'playwright-firefox';
import { scratch } from './harness.mjs';

/** Starts it with what a profile keeps; it ends with the test. */
export async function context(t, profile = scratch(t)) {
  const context = await engine.launchPersistentContext(profile, {
    channel: 'moz-firefox',
    executablePath: '/usr/bin/firefox-esr',
    headless: true,
    viewport: { width: 1024, height: 800 },
    locale: 'en-US',
  });
  t.after(() => context.close());
  return context;
}

/** A page in it. */
export async function firefox(t) {
  return acts(await (await context(t)).newPage());
}

/** What a test of an engine does in a page, whoever drives it. */
export function acts(page) {
  return {
    page,
    go: (url) => page.goto(url),
    reload: () => page.reload(),
    run: (work, ...args) => page.evaluate(`(${work})(...${JSON.stringify(args)})`),
    script: (text) => page.evaluate(text),
    click: (selector) => page.locator(selector).click(),
    shot: (selector) => page.locator(selector).screenshot(),
    keys: async (...all) => {
      for (const key of all) await page.keyboard.press(key);
    },
    // A4: what is told in inches this version hands on as so many centimetres.
    pdf: () => page.pdf({ width: '21in', height: '29.7in' }),
    narrow: async (width) => {
      const before = page.viewportSize();
      await page.setViewportSize({ width, height: 640 });
      return () => page.setViewportSize(before);
    },
  };
}
