// The page in WebKit, as Debian has it.
import { test } from 'node:test';
import { through } from './engines.mjs';
import { host } from './harness.mjs';
import { webkit } from './webdriver.mjs';

test('WebKit', async (t) => {
  const place = await host(t);
  const page = await webkit();
  t.after(() => page.end());
  await through(t, page, place);
});
