// What a portal, a half-uploaded release or a cut line puts in the place of the page: no bytes but the right ones are
// ever stored, the page goes on as it was, and heals when the server is right again.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, readFileSync, readdirSync, writeFileSync, renameSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { test } from 'node:test';
import { dist, open, scratch, usable } from './harness.mjs';

const TYPES = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};
const PORTAL = '<!doctype html><title>Welcome to the guest network</title><p>Accept the terms.';
const html = (response, body = PORTAL, status = 200) =>
  response.writeHead(status, { 'content-type': 'text/html' }).end(body);
const is =
  (kind) =>
  ({ path }) =>
    path.endsWith(kind);
const anything = () => true;

/** What each fault does with a request: true where it has answered. */
const FAULTS = {
  'a portal for everything': [anything, ({ response }) => html(response)],
  'a portal by redirect': [
    anything,
    ({ path, response }) =>
      path === '/login' ? html(response) : response.writeHead(302, { location: '/login' }).end(),
  ],
  'a portal by redirect elsewhere': [
    anything,
    ({ response, elsewhere }) => response.writeHead(302, { location: elsewhere }).end(),
  ],
  'a portal but for the page and the worker': [
    ({ path }) => !/^\/(sw\.js)?$/.test(path),
    ({ response }) => html(response),
  ],
  'a redirect of the page': [
    ({ path }) => path === '/',
    ({ response }) => response.writeHead(302, { location: '/index.html' }).end(),
  ],
  'half uploaded: no core yet': [is('.wasm'), ({ response }) => html(response, 'Not found', 404)],
  'half uploaded, with a page for what is missing': [is('.css'), ({ response, body }) => html(response, body('/'))],
  'half uploaded: the old page': [
    ({ path }) => path === '/',
    ({ response }) => html(response, readFileSync(join(dist, 'index.html')) + '<!-- older -->'),
  ],
  'a cut core': [
    is('.wasm'),
    ({ response, body, path }) =>
      response.writeHead(200, { 'content-type': 'application/wasm' }).end(body(path).subarray(0, 5000)),
  ],
  'a cut script': [
    ({ path }) => /^\/app\./.test(path),
    ({ response, body, path }) =>
      response.writeHead(200, { 'content-type': 'text/javascript' }).end(body(path).subarray(0, 90_000)),
  ],
  'an empty style': [is('.css'), ({ response }) => response.writeHead(200, { 'content-type': 'text/css' }).end()],
  'a line that breaks in the middle': [
    is('.wasm'),
    ({ response, body, path }) => {
      response.writeHead(200, { 'content-type': 'application/wasm', 'content-length': body(path).length });
      response.write(body(path).subarray(0, 5000), () => response.destroy());
    },
  ],
  'a server that has failed': [({ path }) => path !== '/sw.js', ({ response }) => html(response, 'Try later', 503)],
};

test(`${Object.keys(FAULTS).length} faulty updates: the page goes on, online and offline, and the new one comes when the server is right`, async (t) => {
  for (const [what, fault] of Object.entries(FAULTS)) {
    await t.test(what, async (t) => {
      const server = await serve(t);
      const context = await open(t);
      const page = await context.newPage();
      await page.goto(server.address);
      await readyOffline(page);

      server.release();
      server.fault = fault;
      const tried = server.asked();
      await page.reload();
      await usable(page);
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update().catch(() => {}));
      await tried;
      await page.waitForTimeout(400);
      assert.equal(await versionOf(context, server.address), 'old', 'online, in the middle of the fault');
      server.down = true;
      assert.equal(await versionOf(context, server.address), 'old', 'offline');

      server.down = false;
      server.fault = null;
      await page.reload();
      await usable(page);
      await page.getByRole('button', { name: 'Reload', exact: true }).click();
      await page.waitForFunction(() => document.documentElement.dataset.version === 'new');
      await readyOffline(page);
      server.down = true;
      assert.equal(await versionOf(context, server.address), 'new', 'offline, once the server was right');
    });
  }
});

test(`${Object.keys(FAULTS).length} faulty first visits: nothing wrong is stored, and the page heals with the next visit`, async (t) => {
  for (const [what, fault] of Object.entries(FAULTS)) {
    await t.test(what, async (t) => {
      const server = await serve(t);
      const context = await open(t);
      const page = await context.newPage();
      // The fault begins with the first request, or once the page itself has come and only its worker is to store it.
      for (const later of [false, true]) {
        server.fault = later ? null : fault;
        await page.goto(server.address, { waitUntil: 'commit' }).catch(() => {});
        if (later) {
          await usable(page);
          server.fault = fault;
          await page.evaluate(async () => {
            for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
            for (const name of await caches.keys()) await caches.delete(name);
          });
          await page.reload({ waitUntil: 'commit' }).catch(() => {});
        }
        await page.waitForTimeout(500);
        assert.doesNotMatch(
          (await page
            .locator('body')
            .innerText()
            .catch(() => '')) ?? '',
          /Ready offline/,
        );
        server.fault = null;
        await page.goto('about:blank');
        await page.goto(server.address);
        await readyOffline(page);
        server.down = true;
        assert.equal(await versionOf(context, server.address), 'old', 'offline');
        server.down = false;
        assert.deepEqual(await wrongBytes(page), []);
      }
    });
  }
});

test('a first visit that could not be stored is stored once the server is right, with no touch', async (t) => {
  const server = await serve(t);
  const context = await open(t);
  const page = await context.newPage();
  let asked = 0;
  server.fault = [({ path }) => path === '/manifest.webmanifest' && ++asked, ({ response }) => html(response)];
  await page.goto(server.address);
  await usable(page);
  await page.waitForTimeout(500);
  assert.ok(asked, 'the worker has met the fault');
  assert.equal(await page.getByText('Ready offline').count(), 0);
  server.fault = null;
  await readyOffline(page);
  server.down = true;
  assert.equal(await versionOf(context, server.address), 'old', 'offline');
});

test('a new version that does not start gives way to the old one, which is kept until then', async (t) => {
  const server = await serve(t);
  const context = await open(t);
  const page = await context.newPage();
  await page.goto(server.address);
  await readyOffline(page);
  // Every byte is as released; the release itself is broken.
  const script = readdirSync(server.folder).find((name) => /^app\.\w+\.js$/.test(name));
  server.release({ [script]: 'throw new Error("broken")' }, { [script]: 'app.BROKEN00.js' });
  await page.reload();
  await page.getByRole('button', { name: 'Reload', exact: true }).click();
  await page.waitForTimeout(500);
  let version = null;
  for (let n = 0; n < 4 && version === null; n++)
    version = await versionOf(context, server.address, 3000).catch(() => null);
  assert.equal(version, 'old');
  server.down = true;
  assert.equal(await versionOf(context, server.address), 'old', 'offline too');
});

test('a file that the browser has thrown away comes again, the right one only', async (t) => {
  const server = await serve(t);
  const context = await open(t);
  const page = await context.newPage();
  await page.goto(server.address);
  await readyOffline(page);
  await page.evaluate(async () => {
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const { url } of await cache.keys()) if (url.endsWith('.css')) await cache.delete(url);
    }
  });
  server.fault = FAULTS['a portal for everything'];
  await versionOf(context, server.address);
  server.fault = null;
  await versionOf(context, server.address);
  await page.waitForTimeout(300);
  server.down = true;
  const again = await context.newPage();
  await again.goto(server.address);
  await usable(again);
  assert.ok(await again.evaluate(() => document.styleSheets[0].cssRules.length > 50));
});

/** A server whose answers can be spoilt, whose folder can get a new release, and that can be gone. */
async function serve(t) {
  const folder = scratch(t);
  cpSync(dist, folder, { recursive: true });
  let heard = () => {};
  const state = { folder, fault: null, down: false };
  const body = (path) => readFileSync(join(folder, path === '/' ? 'index.html' : path));
  const handle = (request, response) => {
    const path = new URL(request.url, 'http://x').pathname;
    if (path !== '/sw.js') heard();
    if (state.down) return request.socket.destroy();
    const [when, then] = state.fault ?? [];
    if (when?.({ path })) return then({ path, request, response, body, elsewhere: state.elsewhere });
    const file = join(folder, path === '/' ? 'index.html' : path);
    if (!existsSync(file)) return html(response, 'Not found', 404);
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'text/plain' }).end(readFileSync(file));
  };
  const servers = [createServer(handle), createServer((_, response) => html(response))];
  for (const server of servers) {
    await new Promise((done) => server.listen(0, 'localhost', done));
    t.after(() => (server.close(), server.closeAllConnections()));
  }
  const [address, elsewhere] = servers.map((server) => `http://localhost:${server.address().port}/`);
  return Object.assign(state, {
    address,
    elsewhere,
    /** Settles when anything but the worker is asked for, or after a while. */
    asked: () => Promise.race([new Promise((done) => (heard = done)), new Promise((done) => setTimeout(done, 3000))]),
    /** Another version: a mark on the page, other files where wanted, and a worker that knows them. */
    release(files = {}, renamed = {}) {
      const worker = join(folder, 'sw.js');
      const put = (name, text) => {
        const digest = () =>
          createHash('sha256')
            .update(readFileSync(join(folder, name)))
            .digest('hex');
        const before = digest();
        writeFileSync(join(folder, name), text);
        writeFileSync(worker, readFileSync(worker, 'utf8').replace(before, digest()));
      };
      put(
        'index.html',
        readFileSync(join(folder, 'index.html'), 'utf8').replace('<html ', '<html data-version="new" '),
      );
      for (const [name, text] of Object.entries(files)) put(name, text);
      // A file's name goes by its bytes, so what is changed has another.
      for (const [name, to] of Object.entries(renamed)) {
        renameSync(join(folder, name), join(folder, to));
        put('index.html', readFileSync(join(folder, 'index.html'), 'utf8').replaceAll(name, to));
        writeFileSync(worker, readFileSync(worker, 'utf8').replaceAll(name, to));
      }
      writeFileSync(worker, readFileSync(worker, 'utf8').replace(/\b[0-9a-f]{16}\b/, '0123456789abcdef'));
    },
  });
}

async function readyOffline(page) {
  await usable(page);
  await page.getByText('Ready offline').waitFor();
}

/** Opens the page anew and says which version starts. */
async function versionOf(context, address, timeout = 15_000) {
  const page = await context.newPage();
  try {
    await page.goto(address, { timeout });
    await page.locator('html[data-ready]').waitFor({ state: 'attached', timeout });
    return await page.evaluate(() => document.documentElement.dataset.version ?? 'old');
  } finally {
    await page.close();
  }
}

/** What lies in the page's caches and is not what was built. */
async function wrongBytes(page) {
  const stored = await page.evaluate(async () => {
    const found = [];
    for (const name of await caches.keys()) {
      // Whether there is room is tried in a cache of its own.
      if (name === 'cure-reckoner-log') continue;
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        const bytes = await (await cache.match(request)).arrayBuffer();
        const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
        found.push([
          new URL(request.url).pathname,
          Array.from(digest, (one) => one.toString(16).padStart(2, '0')).join(''),
        ]);
      }
    }
    return found;
  });
  assert.ok(stored.length > 4);
  const digest = (path) =>
    createHash('sha256')
      .update(readFileSync(join(dist, path === '/' ? 'index.html' : path)))
      .digest('hex');
  return stored.filter(([path, found]) => digest(path) !== found).map(([path]) => path);
}
