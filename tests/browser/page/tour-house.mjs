// What stands around the batches: the house, the packs, paper, the files that are handed out, and settings in every choice.
import { readFile } from 'node:fs/promises';
import { finished, putLabels } from './finished.mjs';
import { addPieces, goTo, openWhy, settled, startBatch, startDemo, tick, weighOut } from './steps.mjs';

/** The file that a press hands out, as text. */
async function handed(page, name) {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  return readFile(await (await waiting).path(), 'utf8');
}

/** What a calendar shows of its file: heads, texts and alarms. Its lines are folded, and its signs stand after a stroke. */
const shown = (file) =>
  [...file.replace(/\r?\n[ \t]/g, '').matchAll(/^(?:SUMMARY|DESCRIPTION):(.*)$/gm)]
    .map(([, text]) => text.replace(/\\n/g, ' ').replace(/\\(.)/g, '$1'))
    .join(' ');

async function onPaper(page, look, name) {
  await page.emulateMedia({ media: 'print' });
  await look(`${name}, on paper`);
  await page.emulateMedia({ media: null });
}

/** Opens what is folded under these words, where it is closed. */
async function unfold(page, words) {
  const fold = page.locator('details:not([open]) > summary', { hasText: words });
  if (await fold.count()) await fold.first().click();
}

const button = (page, name) => page.getByRole('button', { name });

/** Goods, packs and who got what. */
async function stock(page, look) {
  await goTo(page, '#/stock');
  await look('stock, empty');
  await page.getByText('Write down what came in').click();
  await button(page, 'Write it down').click();
  await page.locator('.errsum').waitFor();
  await look('stock, wrong');
  for (const [what, field, amount] of [
    ['Cure no. 1', 'How much', '50 g'],
    ['Fine sea salt', 'How much', '1000 g'],
    ['Bags', 'How many', '30'],
  ]) {
    await unfold(page, 'Write down what came in');
    await page.getByLabel('What', { exact: true }).selectOption({ label: what });
    await page.getByLabel(field, { exact: true }).fill(amount);
    await button(page, 'Write it down').click();
    await settled(page);
    await look(`stock, ${what}`);
  }
  await unfold(page, 'Write down what came in');
  await page.getByLabel('What', { exact: true }).selectOption({ label: 'Something else' });
  await page.getByLabel('How much', { exact: true }).fill('50 g');
  await button(page, 'Write it down').click();
  await look('stock, no name');
  await unfold(page, 'Put another pack in');
  await button(page, 'Put it in the list').click();
  await look('stock, a pack without a name');
  for (const day of ['2020-01-02', '2031-01-02', '']) {
    await unfold(page, 'Put another pack in');
    await page.getByLabel('What is in it').fill('Woodpigeon');
    await page.getByLabel('Weight', { exact: true }).fill(day ? '203 g' : '');
    await page.getByLabel(/^Use by/).fill(day);
    await button(page, 'Put it in the list').click();
    await settled(page);
    await look(`stock, a pack ${day}`);
  }
  await button(page, /^Given away/)
    .first()
    .click();
  await look('stock, given');
  await button(page, 'Write it down').last().click();
  await look('stock, given to nobody');
  await page.getByLabel('Who gets it').fill('Woodpigeon');
  await button(page, 'Write it down').last().click();
  await look('stock, given, nobody said who eats it');
  await page.getByLabel('Yes, or not known').check();
  await look('stock, given to somebody at risk');
  await button(page, 'Write it down').last().click();
  await settled(page);
  await look('stock, gone');
  await button(page, /^Eaten/)
    .first()
    .click();
  await settled(page);
  await look('stock, eaten');
  await button(page, /^Delete the last entry/)
    .first()
    .click();
  await settled(page);
  await look('stock, deleted');
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  await page.waitForFunction(() => document.getElementById('spoken').textContent);
  await look('stock, undone');
}

/** A batch from its weigh-out to its label, on paper and in the calendar. */
async function paper(page, look) {
  const demo = await startDemo(page);
  await look('started, with a way back');
  await weighOut(page, demo);
  await openWhy(page);
  await onPaper(page, look, 'weigh-out');
  for (const of of ['cure:0', 'line:0', 'line:1', 'line:2', 'line:3', 'rub', 'label']) {
    await tick(page, of);
    await look(`weigh-out, ${of} is ticked`);
  }
  await goTo(page, `#/batch/${demo}/cure`);
  await onPaper(page, look, 'cure');
  await look('the calendar of one', shown(await handed(page, /in the calendar$/)));
  await goTo(page, '#/today');
  await look('the calendar of all', shown(await handed(page, /in the calendar$/)));
  await goTo(page, `#/batch/${demo}/pieces`);
  await page.getByText('About this batch').click();
  await page.getByLabel('Tag', { exact: true }).fill('much');
  await page.getByLabel('Name', { exact: true }).fill('');
  await page.getByLabel('Name', { exact: true }).blur();
  await look('about the batch, wrong');
  await button(page, 'Delete this batch').click();
  await settled(page);
  await goTo(page, '#/today');
  await look('off the calendar');
  await look('the calendar, cancelled', shown(await handed(page, /off the calendar$/)));
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.locator('#link-text').waitFor();
  await onPaper(page, look, 'recipe card');
  for (const name of ['Show the QR code: it is bright', 'Show it red', 'Show it white', 'Hide it']) {
    if (await button(page, name).count()) await button(page, name).click();
    await look(`recipe card, ${name}`);
  }
  await button(page, 'Copy the link').first().click();
  await page.getByRole('button', { name: 'Copied. Copy again' }).first().waitFor();
  await look('recipe card, copied');
  for (const name of ['Duplicate it', 'Delete it']) {
    await goTo(page, '#/recipes');
    await page
      .getByRole('link', { name: /Saltmarsh/ })
      .first()
      .click();
    await page.locator('#link-text').waitFor();
    await button(page, name).click();
    await settled(page);
    await look(`recipe card, ${name}`);
  }
  await goTo(page, '#/recipes');
  await button(page, 'New recipe').click();
  await settled(page);
  await look('a new recipe');
  await goTo(page, '#/recipes');
  await page.getByLabel('Find a recipe').fill('nothing');
  await look('recipes, none found');
}

/** Labels of each kind on each stock, packs on their way to the list, and one that is given. */
async function labels(page, look) {
  const id = await putLabels(page, finished());
  const choose = (name) => page.getByLabel(name, { exact: true }).check();
  for (const kind of ['Bag, before it closes', 'Finished packs', 'Gift tag']) {
    await choose(kind);
    for (const paper of ['A4 sheet', 'Letter sheet', 'Tape, 62 mm']) {
      await choose(paper);
      await onPaper(page, look, `${kind} on ${paper}`);
    }
    await look(kind);
  }
  await choose('Finished packs');
  for (const how of ['Frozen', 'Vacuum bag', 'Cold']) {
    await choose(how);
    await look(`labels, ${how}`);
  }
  await page.getByLabel('How many packs').fill('2');
  await page.getByLabel('Weight of each pack').fill('much');
  await page.locator('.err').waitFor();
  await look('labels, wrong');
  await page.getByLabel('Weight of each pack').fill('203, 7 oz');
  await choose('Frozen');
  await look('labels, weighed');
  await button(page, /^These .* packs went into the/).click();
  await settled(page);
  await look('labels, on the list');
  await button(page, 'Give one away').click();
  await look('labels, to give');
  await button(page, /write it down$/).click();
  await look('labels, given to nobody');
  await page.getByLabel('Who gets it').fill('Woodpigeon');
  await button(page, /write it down$/).click();
  await look('labels, given, and who eats it not said');
  await choose('Yes, or not known');
  await look('labels, given to somebody');
  await button(page, /write it down$/).click();
  await settled(page);
  await look('labels, given');
  await goTo(page, `#/batch/${id}/pack`);
  await unfold(page, 'What came out, for next time');
  await page.getByLabel('Weight of all packs').fill('1190');
  await page.getByLabel('Taste, in three words').fill('salt, smoke');
  await page.getByLabel('What to change').fill('Less juniper');
  await page.getByLabel('What to change').blur();
  await settled(page);
  await look('came out');
  await startBatch(page, /Saltmarsh/);
  await look('last time');
  await goTo(page, '#/past');
  await look('past');
  for (const n of [0, 0]) {
    await button(page, /^Side by side/)
      .nth(n)
      .evaluate((one) => one.click());
    await look('past, side by side');
  }
  await page.getByText('A bag without a label').click();
  await page.getByLabel('What it weighs').fill('203 g');
  await page.getByLabel('Thickest part').fill('16 mm');
  await look('past, a bag');
  await page.getByLabel('What it weighs').fill('1480 g');
  await look('past, a heavy bag');
}

/** Settings in every choice, and the file with everything. */
async function settings(page, look) {
  await startBatch(page, /Marsh hare/);
  await addPieces(page, { cut: 'Hare hind leg', count: '4', weight: '1200 g', thickness: '40 mm' });
  const hare = new URL(page.url()).hash.replace('pieces', 'weigh');
  await goTo(page, '#/keep');
  for (const group of ['profile', 'scale', 'units', 'light']) {
    const many = await page.locator(`input[name="${group}"]`).count();
    for (let n = 0; n < many; n += 1) {
      await goTo(page, '#/keep');
      await page
        .locator(`input[name="${group}"]`)
        .nth(n)
        .evaluate((one) => one.click());
      await settled(page);
      await look(`settings, ${group} ${n}`);
      await goTo(page, hare);
      await look(`weigh-out, ${group} ${n}`);
      await goTo(page, '#/how-much');
      await look(`how much, ${group} ${n}`);
    }
  }
  await goTo(page, '#/keep');
  const file = await handed(page, 'Export everything');
  await settled(page);
  await look('exported', file.match(/Eaten here/)?.[0]);
  const all = JSON.parse(file);
  const at = '2026-11-14T18:20:00.000Z';
  const [card] = all.records.filter(({ key }) => key.startsWith('recipe/'));
  for (const [name, text] of [
    ['the same', file],
    [
      'changed',
      JSON.stringify({
        ...all,
        records: all.records.map((one) => ({
          ...one,
          at,
          data: one.data.name ? { ...one.data, notes: 'much' } : one.data,
        })),
      }),
    ],
    [
      'of another browser',
      JSON.stringify({
        ...all,
        sum: null,
        records: [
          { ...card, key: 'recipe/x', data: { ...card.data, name: 'Woodpigeon' } },
          { key: 'batch/y', v: 1, at, data: {} },
          { key: 'much', v: 1, at, data: {} },
          { key: 'batch/z', v: 99, at, data: {} },
          { key: 'batch/u', v: 1, at },
          { key: 'batch/v', v: 1, data: {} },
          { key: 'batch/w', at, data: {} },
          { ...card, key: 'recipe/x' },
          3,
          { key: 'meta/mark', v: 1, at, data: {} },
        ],
      }),
    ],
    ['cut', file.slice(0, -20)],
    ['another', '{}'],
    ['newer', JSON.stringify({ ...all, v: 99 })],
  ]) {
    await page
      .getByLabel('Import a file')
      .setInputFiles({ name: 'cure-reckoner.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.locator('.strip, .verdict, .rows').last().waitFor();
    await page.waitForTimeout(300);
    await look(`import, ${name}`);
    const mine = page.locator('.plate input[type=radio]');
    if (await mine.count()) await mine.last().evaluate((one) => one.click());
    const store = button(page, 'Save what is chosen');
    if (await store.count()) {
      await store.click();
      await settled(page);
      await page.waitForTimeout(300);
      await look(`import, ${name}, stored`);
    }
  }
}

export async function throughHouse(page, look) {
  for (const at of ['#/help', '#/sources', '#/plan', '#/past']) {
    await goTo(page, at);
    await look(`${at}, of nothing`);
  }
  await stock(page, look);
  await paper(page, look);
  await labels(page, look);
  await settings(page, look);
}
