// What the page does when the reckoning core fails.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { barePage } from './bare.mjs';
import { open, visit } from './harness.mjs';

// A module whose one function, `x`, does nothing but trap.
const TRAP = [
  [0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
  [0x01, 0x04, 0x01, 0x60, 0x00, 0x00],
  [0x03, 0x02, 0x01, 0x00],
  [0x07, 0x05, 0x01, 0x01, 0x78, 0x00, 0x00],
  [0x0a, 0x05, 0x01, 0x03, 0x00, 0x00, 0x0b],
].flat();

test('after a trap the answer is a problem without figures, and the next one comes from a fresh instance', async (t) => {
  const context = await open(t);
  const page = await visit(context, (await barePage(t))['from a host']);
  const [first, second, healthy] = await page.evaluate(async (bytes) => {
    const { instance: trap } = await WebAssembly.instantiate(new Uint8Array(bytes));
    const instantiate = WebAssembly.instantiate;
    // The instance that is loaded first traps on every question.
    WebAssembly.instantiate = async (...all) => {
      const { instance, module } = await instantiate(...all);
      return { module, instance: { exports: { ...instance.exports, reckon: trap.exports.x } } };
    };
    await core.whole();
    const request = { no: 'such request' };
    return [core.ask(request), core.ask(request), core.ask(request)];
  }, TRAP);

  assert.equal(first.problems[0].code, 'reckoning-failed');
  assert.match(first.problems[0].message, /taken away/);
  assert.equal(first.ok, undefined);
  assert.notEqual(second.problems?.[0].code, 'reckoning-failed');
  assert.deepEqual(second, healthy);
});
