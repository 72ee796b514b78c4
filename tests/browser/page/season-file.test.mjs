// A season goes out as one file: into a browser that has seen nothing, into one in use, and twice. All of it is there, the
// settings too, and nothing is there twice.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { host, open, stored, usable, visit } from '../harness.mjs';
import { begin, goTo, kept, setting, settled, startDemo } from './steps.mjs';

const read = (name) => JSON.parse(readFileSync(new URL(`../../data/records/${name}.json`, import.meta.url), 'utf8'));
const STORED = [...read(1), ...read(3)].filter(({ key }) => !key.startsWith('meta/') || key === 'meta/begun');
// One pack of it was given away.
const gift = STORED.find(({ data }) => data.item === 'pack');
gift.data = { ...gift.data, to: 'The neighbour', gone: gift.data.at + 86_400_000 };
// What a browser has of its own does not travel.
const SEASON = STORED.filter(({ key }) => !key.startsWith('meta/'));
const TRAVELS = ['batch/', 'recipe/', 'settings', 'stock/'];

/** A browser in which a season lies. */
async function ofTheSeason(t) {
  const { address } = await host(t);
  const context = await open(t);
  await stored(context, address, STORED);
  return visit(context, `${address}#/keep`);
}

/** All that travels, by key; without the ids that readings of an early form get when they are first read. */
async function all(page) {
  const lists = await Promise.all(TRAVELS.map((prefix) => kept(page, prefix)));
  const bare = (data) => JSON.parse(JSON.stringify(data, (key, value) => (key === 'id' ? undefined : value)));
  return new Map(lists.flat().map(({ key, data }) => [key, bare(data)]));
}

async function exported(page) {
  await goTo(page, '#/keep');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export everything' }).click(),
  ]);
  return {
    name: download.suggestedFilename(),
    mimeType: 'application/json',
    buffer: readFileSync(await download.path()),
  };
}

async function imported(page, file) {
  await goTo(page, '#/keep');
  await page.getByLabel('Import a file').setInputFiles(file);
  await page.getByRole('heading', { name: 'What is in the file' }).waitFor();
}

test('a season into a fresh browser, twice, and into one in use', async (t) => {
  const page = await ofTheSeason(t);
  await usable(page);
  const file = await exported(page);
  const season = await all(page);
  assert.equal(season.size, SEASON.length, 'all of it is in the browser it comes from');

  const fresh = await begin(t, { at: '#/keep' });
  await imported(fresh, file);
  await fresh.getByRole('button', { name: 'Save what is chosen' }).click();
  await fresh.getByText('and 3 batches').waitFor();
  assert.deepEqual(await all(fresh), season, 'record by record, settings included');
  await imported(fresh, file);
  await settled(fresh);
  assert.equal(await fresh.getByRole('button', { name: 'Save what is chosen' }).count(), 0, 'nothing left to store');
  assert.deepEqual(await all(fresh), season, 'the second time changes nothing');

  const used = await begin(t);
  await startDemo(used);
  await setting(used, '5 g');
  const own = await all(used);
  await imported(used, file);
  if (process.env.SHOTS) await used.screenshot({ path: `${process.env.SHOTS}/import-used.png`, fullPage: true });
  for (const radio of await used.getByRole('radio', { name: /file/i }).all()) await radio.check();
  await used.getByRole('button', { name: 'Save what is chosen' }).click();
  await used.getByText('and 4 batches').waitFor();
  const both = await all(used);
  for (const [key, data] of season) assert.deepEqual(both.get(key), data, key);
  const names = (all) => [...all].filter(([key]) => key.startsWith('recipe/')).map(([, { name }]) => name);
  assert.deepEqual(names(both).sort(), names(season).sort(), 'the starters here have made way, none is there twice');
  await goTo(used, '#/past');
  await used.getByLabel('Search').fill('neighbour');
  await used.getByText('1 batch', { exact: true }).waitFor();

  for (const [key] of own) assert.ok(both.has(key) || key.startsWith('recipe/'), `${key} is still there`);
});
