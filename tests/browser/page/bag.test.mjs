// Planning the bag by touch, before anything is weighed, and the calendar file of what comes of it.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { test } from 'node:test';
import ical from 'ical.js';
import { addPieces, begin, goTo, kept, startBatch, startDemo, texts, weighOut } from './steps.mjs';

async function add(page, what, hunters, each, weight) {
  await page.getByLabel('What is it').selectOption({ label: what });
  await page.getByLabel('Hunters', { exact: true }).fill(hunters);
  await page.getByLabel('Daily limit, or animals for each').fill(each);
  if (weight) await page.getByLabel(/^Weight of one animal/).fill(weight);
  await page.getByRole('button', { name: 'Add to the plan' }).tap();
}

test('a bag becomes pieces, a shopping list and a batch that is still to be weighed', async (t) => {
  const page = await begin(t);
  await page.getByRole('link', { name: /^Plan the bag/ }).tap();
  await page.getByRole('button', { name: 'Add to the plan' }).tap();
  assert.deepEqual(await texts(page.locator('.errsum li')), ['Choose what it is from the list.']);
  await add(page, 'Mallard breast (from memory)', '3', '4');
  await add(page, 'Green-winged teal breast (from memory)', '3', '2');
  const rows = await texts(page.locator('.plate .rows').first().locator('> li'));
  assert.equal(rows.length, 2);
  assert.match(rows[0], /^24 pieces, Mallard breast 1464 g to 4032 g, likely 2616 g/);
  for (const row of rows) assert.match(row, /From memory, not looked up/);
  assert.match((await texts(page.getByText(/Green weight in all/)))[0], /3024 g/);

  await page.getByLabel('For which recipe').selectOption({ label: 'Saltmarsh duck breasts' });
  assert.match((await texts(page.getByText(/^Cure no\. 1:/)))[0], /g$/);
  await page.reload();
  assert.equal(
    (await texts(page.locator('.plate .rows').first().locator('> li'))).length,
    2,
    'a reload keeps the plan',
  );

  await page.getByRole('button', { name: 'Start a batch with this bag' }).tap();
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
  await add(page, 'Elk cow, boneless lean, by weight field-dressed', '1', '1', '339 lb');
  assert.match((await texts(page.locator('.plate .rows > li')))[0], /likely 76\s?884 g/);
});

test('the calendar file is one that an independent parser takes, with alarms, and again after a tick', async (t) => {
  const page = await begin(t);
  const batch = await startDemo(page);
  await weighOut(page, batch);
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) {
    await page.locator(`[data-tick="${of}"]`).check();
    await page.locator(`[data-tick="${of}"]:checked`).waitFor();
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
  const cure = first.get(`${batch}-step-0@cure-reckoner`);
  const hours = (rinse.startDate.toUnixTime() - cure.startDate.toUnixTime()) / 3600;
  assert.equal(Math.round(hours), 36);

  await goTo(page, `#/batch/${batch}/cure`);
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
