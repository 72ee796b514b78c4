// Two tabs of one profile in an engine by its name, and the end of its power: what the test against a plain list needs.
import { setTimeout as pause } from 'node:timers/promises';
import { acts, context as firefoxContext } from './firefox.mjs';
import { cutPower, open } from './harness.mjs';
import { webkit } from './webdriver.mjs';

/** A browser that Playwright speaks to. */
const played = (start) => async (t, profile) => {
  const context = await start(t, profile);
  const tabs = [acts(await context.newPage()), acts(await context.newPage())];
  return { tabs, cut: () => cutPower(context, profile) };
};

/** What a profile of it keeps is gone with it once a driver leads it, so its power is never cut: its tabs are opened anew. */
async function webkitTabs(t) {
  const driver = await webkit();
  t.after(() => driver.end());
  const first = await driver.command('GET', '/window');
  const { handle } = await driver.command('POST', '/window/new', { type: 'window' });
  let last = Promise.resolve();
  // One command at a time, each in its own window.
  const within = (window, work) =>
    (last = last
      .catch(() => {})
      .then(async () => {
        await driver.command('POST', '/window', { handle: window });
        return work();
      }));
  return { tabs: [first, handle].map((window) => windowOf(driver, window, within)), cut: null };
}

let asked = 0;

function windowOf(driver, window, within) {
  const sync = (script, ...args) => within(window, () => driver.command('POST', '/execute/sync', { script, args }));
  return {
    go: (url) => within(window, () => driver.go(url)),
    reload: () => within(window, () => driver.reload()),
    // Begun here and looked for afterwards, so that another window can be at it meanwhile.
    run: async (work, ...args) => {
      const id = `n${(asked += 1)}`;
      const begin = `const told = (window.told ??= {}); const [id, ...args] = arguments;
        Promise.resolve().then(() => (${work})(...args))
          .then((ok) => (told[id] = { ok }), (error) => (told[id] = { error: String(error) + error.stack }));`;
      await sync(begin, id, ...args);
      for (;;) {
        const told = await sync('return window.told?.[arguments[0]] ?? null', id);
        if (told?.error) throw new Error(told.error);
        if (told) return told.ok;
        await pause(2);
      }
    },
  };
}

export const ENGINES = {
  chromium: played((t, profile) => open(t, { profile })),
  firefox: played(firefoxContext),
  webkit: webkitTabs,
};
