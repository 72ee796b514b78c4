// What is shipped and is not ours goes with its licence.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { dist } from './harness.mjs';

test('the licence of each part that is shipped lies beside the page', () => {
  const text = readFileSync(`${dist}licences.txt`, 'utf8');
  const pages = JSON.parse(readFileSync(new URL('../../web/package.json', import.meta.url), 'utf8')).dependencies;
  const crates = ['rust_decimal', 'serde', 'serde-wasm-bindgen', 'wasm-bindgen', 'js-sys', 'web-sys'];
  for (const name of [...crates, ...Object.keys(pages)])
    assert.match(text, new RegExp(`^${name} \\d+\\.\\d+\\.\\d+\\S*: `, 'm'));
  assert.ok(text.split('Permission is hereby granted').length > 20);
});
