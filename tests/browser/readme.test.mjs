// What the README prints of the demo batch is what the program prints.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

test('the demo in the README is what the program prints', () => {
  const printed = execFileSync(`${root}/target/release/examples/reckon`, ['--demo'], { encoding: 'utf8' });
  const readme = readFileSync(`${root}/README.md`, 'utf8');
  const [, shown] = readme.split('The demo batch')[1].match(/```\n([^`]*)```/) ?? [];
  assert.equal(shown, printed);
});
