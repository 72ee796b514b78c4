// Nothing leaves the page, and nothing runs in it but what was built.
import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { describe, test } from 'node:test';
import { dist, host, open, pause, single, visit } from './harness.mjs';

const start = {
  hosted: async (t) => {
    const { address } = await host(t);
    return { address, mayAsk: (url) => url.startsWith(address) };
  },
  'the single file': async () => ({ address: single, mayAsk: (url) => url === single || url.startsWith('data:') }),
};

// Each is what a hostile recipe might try if a text of it ever came into the page as HTML or code.
const attempts = {
  'a script': () => {
    document.body.append(Object.assign(document.createElement('script'), { textContent: 'window.ran = true' }));
  },
  'a handler': () => {
    document.body.insertAdjacentHTML('beforeend', '<i id="hostile" onclick="window.ran = true"></i>');
    document.getElementById('hostile').click();
  },
  // In a turn of its own, since code that the test itself runs may do this.
  'code made from text': () => void setTimeout(() => new Function('window.ran = true')()),
  'a request': () =>
    void fetch('https://example.com/')
      .then(() => (window.ran = true))
      .catch(() => {}),
  'a picture': (elsewhere) => void Object.assign(new Image(), { src: elsewhere }),
  'a form': (elsewhere) => {
    document.body.insertAdjacentHTML('beforeend', `<form id="hostile" action="${elsewhere}"></form>`);
    document.getElementById('hostile').submit();
  },
};

for (const [build, begin] of Object.entries(start)) {
  describe(`the page, ${build}`, () => {
    test('asks nobody for anything, and breaks no rule of its own', async (t) => {
      const { address, mayAsk } = await begin(t);
      const context = await open(t);
      const asked = [];
      const said = [];
      context.on('request', (request) => asked.push(request.url()));
      context.on('console', (message) => ['error', 'warning'].includes(message.type()) && said.push(message.text()));
      context.on('weberror', (error) => said.push(String(error.error())));
      await visit(context, address);
      await pause(500);
      assert.ok(asked.length > 0);
      assert.deepEqual(
        asked.filter((url) => !mayAsk(url)),
        [],
      );
      assert.deepEqual(said, []);
    });

    test('what is smuggled in does not run and does not leave', async (t) => {
      const { address } = await begin(t);
      const elsewhere = await sink(t);
      const context = await open(t);
      for (const [what, attempt] of Object.entries(attempts)) {
        const page = await visit(context, address);
        await page.evaluate(() => {
          window.refused = [];
          document.addEventListener('securitypolicyviolation', (event) => refused.push(event.violatedDirective));
        });
        // Where the browser makes nothing of the text, the attempt itself fails; that it was refused is heard all the same.
        await page.evaluate(attempt, elsewhere.address).catch(() => {});
        await page.waitForFunction(() => refused.length > 0, null, { timeout: 5000 }).catch(() => assert.fail(what));
        assert.equal(await page.evaluate(() => window.ran), undefined, what);
      }
      assert.deepEqual(elsewhere.heard, []);
    });
  });
}

/** A server that hears what it is asked. */
async function sink(t) {
  const heard = [];
  const server = createServer((request, response) => (heard.push(request.url), response.end()));
  await new Promise((done) => server.listen(0, 'localhost', done));
  t.after(() => server.close());
  return { heard, address: `http://localhost:${server.address().port}/` };
}

test('the hosted page has no script or style inside it', () => {
  const html = readFileSync(join(dist, 'index.html'), 'utf8');
  for (const [, attributes, inside] of html.matchAll(/<script([^>]*)>([^]*?)<\/script>/g)) {
    assert.match(attributes, /src="/);
    assert.equal(inside, '');
  }
  assert.doesNotMatch(html, /<style|\sstyle=|\son\w+=|javascript:/i);
});

test('the rules allow no code by its mere presence', () => {
  for (const file of ['index.html', 'cure-reckoner.html']) {
    const rules = readFileSync(join(dist, file), 'utf8').match(/Content-Security-Policy" content="([^"]+)"/)[1];
    assert.doesNotMatch(rules, /unsafe-inline|'unsafe-eval'|\*|https?:/);
    assert.match(rules, /default-src 'none'/);
    // No text becomes markup or the address of code but by these two.
    assert.match(rules, /require-trusted-types-for 'script'; trusted-types lit-html cure-reckoner$/);
  }
});

test('inside another page it does not start, on a host that says so and on one that cannot', async (t) => {
  const files = await host(t);
  const plain = createServer((request, response) => {
    const path = new URL(request.url, 'http://x').pathname;
    if (path === '/around') {
      const frame = (address) => `<iframe src="${address}"></iframe>`;
      return response.writeHead(200, { 'content-type': 'text/html' }).end(frame('/') + frame(files.address));
    }
    const file = join(dist, path === '/' ? 'index.html' : path);
    if (!existsSync(file)) return response.writeHead(404).end();
    const type = { js: 'text/javascript', css: 'text/css', wasm: 'application/wasm' }[path.split('.').at(-1)];
    response.writeHead(200, { 'content-type': type ?? 'text/html' });
    response.end(readFileSync(file));
  });
  await new Promise((done) => plain.listen(0, 'localhost', done));
  t.after(() => (plain.close(), plain.closeAllConnections()));
  const page = await (await open(t)).newPage();
  await page.goto(`http://localhost:${plain.address().port}/around`);
  const [inner, refused] = page.frames().slice(1);
  await inner.getByRole('heading', { name: 'opens by itself only' }).waitFor();
  assert.equal(await inner.locator('html[data-ready]').count(), 0);
  assert.equal(await refused.locator('html[data-ready]').count(), 0);
  assert.doesNotMatch(refused.url(), /^http:\/\/localhost/);
});

test('the one file tells that other files may read its records, the hosted page has no need to', async (t) => {
  const { address } = await host(t);
  const context = await open(t);
  const one = await visit(context, `${single}#/keep`);
  await one.locator('[data-one-file]', { hasText: 'can read what this one saves' }).waitFor();
  const hosted = await visit(context, `${address}#/keep`);
  await hosted.getByText('Ready offline').waitFor();
  assert.match(await hosted.locator('[data-release]').innerText(), /^Version \d+\.\d+\.\d+-[0-9a-f]{8}$/);
  assert.equal(await hosted.locator('[data-one-file]').count(), 0);
});
