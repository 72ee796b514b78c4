// The page in Firefox, as Debian has it.
import { test } from 'node:test';
import { through } from './engines.mjs';
import { firefox } from './firefox.mjs';
import { host } from './harness.mjs';

test('Firefox', async (t) => {
  const place = await host(t);
  const page = await firefox(t);
  await through(t, page, place);
});
