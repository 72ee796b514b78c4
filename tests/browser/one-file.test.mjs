// The single file: what is packed in it comes out as it was, and where it cannot, it says what to do.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { latin } from '../../scripts/one-file.mjs';
import { unlzma } from '../../web/app/unlzma.js';
import { SAVE_FIRST } from '../../web/words/en/unpack.js';
import { dist, host, open, scratch } from './harness.mjs';

const require = createRequire(new URL('../../web/package.json', import.meta.url));
const esbuild = require('esbuild');
const lzma = require('lzma1');
const core = readFileSync(new URL('../../target/glue/core.wasm', import.meta.url));

/** Bytes without an order, the same each time. */
const noise = (length) => {
  let state = 1;
  return Uint8Array.from({ length }, () => (state = (state * 48271) % 0x7fffffff) >> 8);
};

test('every byte, and every two behind each other, come out of a page as they went in', async (t) => {
  const { outputFiles } = await esbuild.build({
    stdin: {
      contents: `import { bytesOf } from './latin.js'; globalThis.bytesOf = bytesOf;`,
      resolveDir: fileURLToPath(new URL('../../web/app/', import.meta.url)),
    },
    bundle: true,
    write: false,
    charset: 'ascii',
  });
  const two = Uint8Array.from({ length: 0x20000 }, (_, at) => (at & 1 ? at >> 1 : at >> 9));
  const bytes = Buffer.concat([
    two,
    Buffer.from('</script></SCRIPT ><!--<script>--><![CDATA[=\r\n\r=\0'),
    noise(0x10000),
  ]);
  const file = join(scratch(t), 'bytes.html');
  const around = [
    '<script type="application/octet-stream" id="packed">',
    `</script><script>${outputFiles[0].text}</script>`,
  ];
  writeFileSync(
    file,
    Buffer.concat([
      Buffer.from(`<!doctype html><meta charset="windows-1252">${around[0]}`),
      latin(bytes),
      Buffer.from(around[1]),
    ]),
  );
  const page = await (await open(t)).newPage();
  await page.goto(pathToFileURL(file).href);
  const found = await page.evaluate(() => Array.from(bytesOf(document.getElementById('packed').textContent)));
  assert.equal(Buffer.compare(Buffer.from(found), bytes), 0);
});

test('what was packed is unpacked: nothing, one byte, no order, one byte many times, the core', () => {
  for (const bytes of [[], [7], noise(100_000), new Uint8Array(300_000), core]) {
    const plain = Uint8Array.from(bytes);
    assert.equal(Buffer.compare(unlzma(lzma.compress(plain, 9)), plain), 0, `${plain.length} bytes`);
  }
});

test('opened on a host that sends it as another character set, it says to save it', async (t) => {
  const { address } = await host(t);
  const page = await (await open(t)).newPage();
  await page.goto(`${address}cure-reckoner.html`);
  assert.equal(await page.evaluate(() => document.characterSet), 'UTF-8');
  await page.getByText(SAVE_FIRST).waitFor();
  // Saved, it is the same file.
  const saved = Buffer.from(await (await page.request.get(`${address}cure-reckoner.html`)).body());
  assert.equal(Buffer.compare(saved, readFileSync(join(dist, 'cure-reckoner.html'))), 0);
});
