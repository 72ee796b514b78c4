// The same request, the same answer: in the browser, and from the command line.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { barePage } from './bare.mjs';
import { open, visit } from './harness.mjs';

const reckon = fileURLToPath(new URL('../../target/release/examples/reckon', import.meta.url));

function natively(requests) {
  const input = requests.map((request) => JSON.stringify(request)).join('\n');
  const lines = execFileSync(reckon, { input, encoding: 'utf8', maxBuffer: 1e8 }).trimEnd().split('\n');
  return lines.map((line) => JSON.parse(line));
}

test('every question has one answer, in the browser and from the command line', async (t) => {
  const [{ ok: tables }, { ok: starters }] = natively([{ tables: {} }, { starters: {} }]);
  const { settings } = tables;
  const { demo, recipes } = starters;
  const now = Date.UTC(2026, 10, 14, 18);
  const links = natively(recipes.map((recipe) => ({ link: { recipe, base: 'https://host.test/' } })));
  const requests = [
    { tables: {} },
    { starters: {} },
    { pieces: { pieces: demo.pieces, settings } },
    { weigh_out: { batch: demo, settings } },
    { weigh_out: { batch: { ...demo, pieces: [] }, settings: { ...settings, scale_step: '5 g' } } },
    { next: { batches: [{ id: 'a', batch: demo }], now, settings } },
    ...recipes.map((recipe) => ({ card: { recipe, weight: '1480 g', settings } })),
    ...recipes.map((recipe) => ({ check: { recipe } })),
    ...links.map(({ ok }) => ({ open_link: { text: ok.link } })),
    { open_link: { text: links[0].ok.link.slice(0, -9) } },
  ];
  const page = await visit(await open(t), (await barePage(t))['from a host']);
  const inBrowser = await page.evaluate(async (requests) => {
    await core.load();
    return requests.map((request) => core.ask(request));
  }, requests);

  for (const [at, answer] of natively(requests).entries()) {
    const { problems, ...rest } = inBrowser[at];
    assert.deepEqual({ ...rest, ...(problems && { problems }) }, answer, JSON.stringify(requests[at]).slice(0, 300));
  }
});
