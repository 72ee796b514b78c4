// Beside every file that is shipped lies the same, packed; whoever takes it so gets it so, and nothing else names it.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { get } from 'node:http';
import { join } from 'node:path';
import { test } from 'node:test';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { isPacked } from '../../scripts/packed.mjs';
import { dist, host, open, visit } from './harness.mjs';

const UNPACK = { br: brotliDecompressSync, gzip: gunzipSync };
const shipped = readdirSync(dist, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map(({ parentPath, name }) => join(parentPath, name).slice(dist.length))
  .filter((name) => !isPacked(name));

/** What a server answers to a client that takes these codings; node's fetch would unpack it. */
function answerOf(address, takes) {
  return new Promise((done, failed) => {
    get(address, { headers: { 'accept-encoding': takes } }, async (response) => {
      const parts = [];
      for await (const part of response) parts.push(part);
      done({ status: response.statusCode, headers: response.headers, body: Buffer.concat(parts) });
    }).on('error', failed);
  });
}

test('a client gets each file in the coding that it takes, and the same bytes come out', async (t) => {
  const { address } = await host(t);
  assert.ok(shipped.length > 8, shipped.join());
  for (const name of shipped) {
    const plain = readFileSync(join(dist, name));
    for (const [takes, coding] of [
      ['gzip, deflate, br, zstd', 'br'],
      ['gzip;q=0.8, br;q=0', 'gzip'],
      ['identity', undefined],
    ]) {
      const { status, headers, body } = await answerOf(address + name, takes);
      assert.equal(status, 200);
      assert.equal(headers['content-encoding'], coding, `${name} for ${takes}`);
      assert.equal(headers.vary, 'accept-encoding');
      assert.ok((UNPACK[coding]?.(body) ?? body).equals(plain), `${name} for ${takes}`);
    }
  }
});

test('the browser takes script and core packed, and the worker stores no packed name', async (t) => {
  const { address } = await host(t);
  const page = await visit(await open(t), address);
  const loaded = await page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .filter(({ name }) => /\/(app|first|rest)\.\w+\.(js|wasm)$/.test(name))
      .map(({ name, encodedBodySize, decodedBodySize }) => [name, encodedBodySize / decodedBodySize]),
  );
  assert.ok(loaded.length >= 2, JSON.stringify(loaded));
  for (const [name, share] of loaded) assert.ok(share < 0.5, `${name}: ${share}`);
  assert.doesNotMatch(readFileSync(join(dist, 'sw.js'), 'utf8'), /\.(br|gz)\b/);
});
