// Planning the bag by touch, before anything is weighed, and the calendar file of what comes of it.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import ical from 'ical.js';
import { GAME } from '../../../web/words/en/game.js';
import { addPieces, begin, goTo, kept, place, startBatch, startDemo, texts, tick, weighOut } from './steps.mjs';

async function add(page, what, hunters, each, weight) {
  await page.getByLabel('What is it').selectOption({ label: what });
  await page.getByLabel('People', { exact: true }).fill(hunters);
  await page.getByLabel('Birds or animals for each').fill(each);
  if (weight) await page.getByLabel(/^Weight of one animal/).fill(weight);
  await page.getByRole('button', { name: 'Add to the plan' }).tap();
}

test('a bag becomes pieces, a shopping list and a batch that is still to be weighed', async (t) => {
  const page = await begin(t);
  await place(page, 'More');
  await page.getByRole('link', { name: /^Shopping list/ }).tap();
  await page.getByRole('button', { name: 'Add to the plan' }).tap();
  assert.deepEqual(await texts(page.locator('.errsum li')), ['Choose what it is from the list.']);
  await add(page, 'Mallard breast (from memory)', '3', '4');
  await add(page, 'Teal breast, green-winged (from memory)', '3', '2');
  const rows = await texts(page.locator('.plate .rows').first().locator('> li'));
  assert.equal(rows.length, 2);
  assert.match(rows[0], /^24 pieces, Mallard breast 1469 g to 4032 g, likely 2622 g/);
  for (const row of rows) assert.match(row, /From memory/);
  assert.match((await texts(page.getByText(/Trimmed weight in all/)))[0], /3098 g/);

  for (const n of [0, 1]) {
    await page.getByLabel('For which recipe').nth(n).selectOption({ label: 'Saltmarsh duck breasts' });
  }
  assert.match((await texts(page.getByText(/^Cure no\. 1:/)))[0], /g$/);
  await page.reload();
  assert.equal(
    (await texts(page.locator('.plate .rows').first().locator('> li'))).length,
    2,
    'a reload keeps the plan',
  );

  await page.getByRole('button', { name: /^Start a batch: Saltmarsh duck breasts, 36 pieces/ }).tap();
  await page.getByRole('heading', { name: 'Pieces', exact: true }).waitFor();
  const [{ data }] = await kept(page, 'batch/');
  assert.deepEqual(
    data.pieces.map(({ cut, count, weight }) => [cut, count, weight]),
    [
      ['mallard-breast', 24, undefined],
      ['teal-breast', 12, undefined],
    ],
  );
});

test('what was weighed before takes over, and an animal goes by its dressed weight', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  await addPieces(page, { cut: 'Mallard breast', count: '8', weight: '1040' });
  await page.locator('.total').waitFor();
  await goTo(page, '#/bag');
  await add(page, 'Mallard breast (from memory)', '1', '6');
  const row = page.locator('.plate .rows > li').first();
  assert.match((await texts(row))[0], /12 pieces, Mallard breast 1326 g to 1794 g, likely 1560 g/);
  assert.match((await texts(row))[0], /Your own weights By 8 pieces you have weighed/);
  await row.getByRole('button', { name: /Take off the plan/ }).tap();
  await add(page, 'Elk cow, boneless lean', '1', '1', '339 lb');
  assert.match((await texts(page.locator('.plate .rows > li')))[0], /likely 76\s?884 g/);
  // Seven birds of two hunters are seven in all.
  await page.getByLabel('In all', { exact: true }).tap();
  await page.getByLabel('What is it').selectOption({ label: 'Gadwall breast (from memory)' });
  await page.getByLabel('How many in all').fill('7');
  await page.getByRole('button', { name: 'Add to the plan' }).tap();
  await page.getByText('14 pieces, Gadwall breast').waitFor();
});

/** Names of the rows by the status that the table gives them, which is read apart from the page. */
function byStatus() {
  const table = readFileSync(new URL('../../../crate/tables/game.csv', import.meta.url), 'utf8');
  const rows = table.split('\n').filter((line) => line && !/^#|,finish,/.test(line));
  const keys = rows.slice(1).map((line) => line.split(',', 1)[0]);
  const memory = keys.filter((_, at) => rows[at + 1].endsWith(',memory')).map((key) => GAME[key]);
  return { memory, all: keys.map((key) => GAME[key]), keys };
}

test('every row from memory is marked, in the list and in the plan, and no other', async (t) => {
  const page = await begin(t, { at: '#/bag' });
  const { memory, all, keys } = byStatus();
  assert.ok(memory.length > 40 && all.length > memory.length + 15);
  const options = await page.getByLabel('What is it').locator('option').allTextContents();
  const named = (name, option) =>
    option.replace(/, by weight .*?(?= \(from memory\)|$)/, '').replace(' (from memory)', '') === name;
  assert.equal(options.length, all.length + 1);
  for (const option of options.slice(1)) {
    const [name] = all.filter((one) => named(one, option));
    assert.ok(name, option);
    assert.equal(option.endsWith('(from memory)'), memory.includes(name), option);
  }
  // All of them in the plan, in as many goes as it takes, since a plan has 40 rows at most.
  for (let from = 0; from < keys.length; from += 40) {
    const part = keys.slice(from, from + 40);
    // As it was left half typed in this tab: what is typed lies with the records.
    await page.evaluate((part) => {
      const rows = part.map((of) => ({ of, hunters: 1, each: 1, weight: '2 kg' }));
      const key = `meta/draft-${sessionStorage.getItem('cure-reckoner.tab')}-bag`;
      const record = { key, v: 1, at: new Date().toISOString(), data: { texts: [['rows', JSON.stringify(rows)]] } };
      return new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target }) => {
          const tx = target.result.transaction('records', 'readwrite');
          tx.objectStore('records').put(record);
          tx.oncomplete = () => (target.result.close(), done());
        };
      });
    }, part);
    await page.reload();
    const rows = await texts(page.locator('.plate .rows').first().locator('> li'));
    assert.equal(rows.length, part.length);
    for (const row of rows) {
      const name = all.find((one) => row.startsWith(`1 piece, ${one} `) || row.startsWith(`2 pieces, ${one} `));
      assert.ok(name, row);
      assert.equal(row.includes('From memory'), memory.includes(name), row);
    }
  }
});

test('the calendar file is one that an independent parser takes, with alarms, and again after a tick', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) {
    await tick(page, of);
  }
  await goTo(page, '#/today');
  const first = await exported(page);
  const live = [...first.values()].filter((event) => event.component.getFirstPropertyValue('status') === 'CONFIRMED');
  assert.ok(live.length > 5);
  const alarms = (event) => event.component.getAllSubcomponents('valarm');
  const rinse = first.get(`${batch}-step-1@cure-reckoner`);
  assert.match(rinse.summary, /^SD Rinse off the cure$/);
  assert.match(rinse.description, /Teal out first\. Pat dry\./);
  assert.equal(alarms(rinse).length, 1);
  assert.equal(alarms(rinse)[0].getFirstPropertyValue('trigger').toSeconds(), 0);

  // It is rinsed at the hour that the screen of the cure says.
  await goTo(page, `#/batch/${batch}/cure`);
  const until = await page.locator('.until .big').innerText();
  const at = new Date(rinse.startDate.toUnixTime() * 1000);
  const said = await page.evaluate(
    (at) => new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(at),
    at.getTime(),
  );
  assert.ok(until.includes(said), `${until}, and ${said} in the calendar`);
  const again = await exported(page);
  assert.deepEqual([...again.keys()].sort(), [...first.keys()].sort());
  assert.ok(again.get(rinse.uid).sequence >= rinse.sequence);
});

/** Events by UID of the file that the button gives. */
async function exported(page) {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: /in the calendar$/ }).tap();
  const download = await waiting;
  assert.match(download.suggestedFilename(), /^cure-reckoner(-SD)?\.ics$/);
  const calendar = new ical.Component(ical.parse(await readFile(await download.path(), 'utf8')));
  return new Map(
    calendar
      .getAllSubcomponents('vevent')
      .map((c) => new ical.Event(c))
      .map((e) => [e.uid, e]),
  );
}
