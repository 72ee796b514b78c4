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
    await core.whole();
    return requests.map((request) => core.ask(request));
  }, requests);

  for (const [at, answer] of natively(requests).entries()) {
    const { problems, ...rest } = inBrowser[at];
    assert.deepEqual({ ...rest, ...(problems && { problems }) }, answer, JSON.stringify(requests[at]).slice(0, 300));
  }
});

/** The same value with one thing in it missing, nothing, or of another kind, for each thing in it. */
function spoiled(value) {
  const inside = typeof value === 'object' && value !== null;
  const others = [null, 7, -1.5, true, 'x', [], {}].filter((other) => JSON.stringify(other) !== JSON.stringify(value));
  if (!inside) return others;
  return others.concat(
    Object.keys(value).flatMap((key) => {
      const without = Array.isArray(value) ? value.filter((_, at) => at !== Number(key)) : { ...value };
      if (!Array.isArray(value)) delete without[key];
      const put = (part) => (Array.isArray(value) ? value.with(Number(key), part) : { ...value, [key]: part });
      return [without, ...spoiled(value[key]).map(put)];
    }),
  );
}

test('what is missing, nothing or of another kind is refused in the browser where it is from the command line', async (t) => {
  const [{ ok: tables }, { ok: starters }] = natively([{ tables: {} }, { starters: {} }]);
  const { settings } = tables;
  const { demo, recipes } = starters;
  const put_in = { amount: '1 tsp', nitrite: '6.25 %' };
  const brine = {
    vessel: { shape: 'box', length: '40 cm', width: '30 cm', depth: '10 cm' },
    strength: '5',
    scale: 'percent',
  };
  const sound = [
    { weigh_out: { batch: { ...demo, pieces: demo.pieces.slice(0, 2) }, settings } },
    { check: { recipe: recipes[1] } },
    { check_dose: { method: 'rub', green: '2 kg', put_in, settings } },
    { brine: { ...brine, settings } },
    { turned: { recipe: recipes[0], method: 'cover_brine' } },
  ];
  for (const [at, { ok }] of natively(sound).entries()) assert.ok(ok, JSON.stringify(sound[at]));
  const requests = sound.flatMap(spoiled);
  const page = await visit(await open(t), (await barePage(t))['from a host']);
  const inBrowser = await page.evaluate(async (requests) => {
    await core.whole();
    return requests.map((request) => core.ask(request));
  }, requests);

  const codes = ({ ok, problems }) => ({ ok, codes: problems?.map(({ code }) => code) });
  const both = natively(requests).map((answer, at) => [codes(inBrowser[at]), codes(answer), requests[at]]);
  assert.ok(both.filter(([, { ok }]) => ok).length > 100 && both.filter(([, { codes }]) => codes).length > 1000);
  for (const [here, there, request] of both) assert.deepEqual(here, there, JSON.stringify(request));
});
