// After one visit the page starts with the server gone; a new version announces itself and loses nothing.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { WAYS } from '../../scripts/packed.mjs';
import { dist, host, open, scratch, storedForOffline, usable, visit } from './harness.mjs';

test('after one visit it starts with the server stopped and the browser closed in between', async (t) => {
  const profile = scratch(t);
  const { address, stop } = await host(t);
  const first = await open(t, { profile });
  await storedForOffline(await visit(first, address));
  await first.close();
  await stop();

  const second = await open(t, { profile });
  const page = await visit(second, address);
  assert.match(await page.title(), /Cure Reckoner/);
  // Under its full name and with a recipe behind the hash, too.
  await visit(second, `${address}index.html`);
  await visit(second, `${address}?from=home#anything`);
});

test('the manifest names a page and icons that are there', async (t) => {
  const { address } = await host(t);
  const page = await visit(await open(t), address);
  const devtools = await page.context().newCDPSession(page);
  const { errors, data } = await devtools.send('Page.getAppManifest');
  assert.deepEqual(errors, []);
  const { icons, start_url } = JSON.parse(data);
  for (const { src } of [{ src: start_url }, ...icons]) {
    const response = await fetch(new URL(src, address));
    assert.equal(response.status, 200, src);
  }
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  assert.deepEqual(
    installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito'),
    [],
  );
});

test('a new version waits until it is taken, and then is the page', async (t) => {
  const folder = scratch(t);
  cpSync(dist, folder, { recursive: true });
  const { address } = await host(t, folder);
  const context = await open(t);
  const page = await visit(context, address);
  await storedForOffline(page);

  release(folder);
  await page.reload();
  await usable(page);
  const button = page.getByRole('button', { name: 'Reload', exact: true });
  await button.waitFor();
  assert.equal(await version(page), 'old', 'the old version runs until the new one is taken');

  await Promise.all([page.waitForEvent('load'), button.click()]);
  await usable(page);
  assert.equal(await version(page), 'new');
  // The worker drops it when it is told of the start, which nothing on the page waits for. In time it must be gone.
  const dropped = page.waitForFunction(async () => (await caches.keys()).length === 1);
  await assert.doesNotReject(dropped, 'the old version is dropped');
});

function version(page) {
  return page.evaluate(() => document.documentElement.dataset.version ?? 'old');
}

// Another version of the page on the same host: a mark on it, and a worker that knows of it.
function release(folder) {
  const change = (name, from, to) => {
    const file = join(folder, name);
    const text = readFileSync(file, 'utf8');
    assert.ok(text.includes(from), `${name} holds ${from}`);
    writeFileSync(file, text.replace(from, to));
    // What lies packed beside it is the old one.
    for (const { ending } of WAYS) rmSync(file + ending, { force: true });
  };
  change('index.html', '<html ', '<html data-version="new" ');
  const [version] = readFileSync(join(folder, 'sw.js'), 'utf8').match(/\b[0-9a-f]{16}\b/);
  change('sw.js', version, '0123456789abcdef');
  // The worker takes none but the page of its own version.
  const digest = (name) => createHash('sha256').update(readFileSync(name)).digest('hex');
  change('sw.js', digest(join(dist, 'index.html')), digest(join(folder, 'index.html')));
}
