// Two tabs at one instant, a double click, an Undo after somebody else: every change is the one that was meant.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cutPower, host, open, pause, scratch, usable, visit } from '../harness.mjs';
import { begin, goTo, kept, openPiece, startBatch, startDemo } from './steps.mjs';

const TIMES = Number(process.env.TIMES ?? 8);
const only = async (page) => (await kept(page, 'batch/'))[0].data;

/** The page with a batch, open in two tabs. */
async function twoTabs(t, part = 'pieces', more = {}) {
  const { address } = await host(t);
  const context = await open(t, more);
  const one = await visit(context, address);
  const batch = await startBatch(one, /Saltmarsh duck breasts/);
  const two = await visit(context, `${address}#/batch/${batch}/${part}`);
  return { address, context, batch, tabs: [one, two] };
}

/** In the page: sends the form at a moment of the clock, so that two tabs do it at one instant. */
async function sendAt(moment) {
  const button = [...document.querySelectorAll('button')].find((one) => one.textContent.includes('Add to the batch'));
  await new Promise((done) => setTimeout(done, moment - Date.now() - 20));
  while (Date.now() < moment);
  button.click();
}

async function fillPiece(page, word) {
  await openPiece(page);
  await page.getByLabel('What is it').selectOption({ label: 'Mallard breast' });
  await page.getByLabel('Your own word for it').fill(word);
  await page.getByLabel('Weight of all of them').fill('400');
}

test(`${TIMES * 2} size classes sent from two tabs, two at each instant, are all there`, async (t) => {
  const { tabs } = await twoTabs(t);
  const words = [];
  for (let n = 0; n < TIMES; n++) {
    for (const [tab, page] of tabs.entries()) {
      words.push(`breast ${n} ${tab}`);
      await fillPiece(page, words.at(-1));
    }
    const moment = Date.now() + 400;
    await Promise.all(tabs.map((page) => page.evaluate(sendAt, moment)));
    for (const page of tabs) await page.getByText(words.at(-1)).first().waitFor();
  }
  const { pieces } = await only(tabs[0]);
  assert.deepEqual(pieces.map(({ name }) => name).sort(), words.sort());
});

test('a double click, a second Enter and two clicks at once add one size class each', async (t) => {
  const page = await begin(t);
  await startBatch(page, /Saltmarsh duck breasts/);
  const ways = {
    'double click': () => page.getByRole('button', { name: 'Add to the batch' }).dblclick(),
    Enter: async () => {
      await page.getByLabel('Weight of all of them').focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('Enter');
    },
    'two at once': () =>
      page.evaluate(() => {
        const button = [...document.querySelectorAll('button')].find((one) =>
          one.textContent.includes('Add to the batch'),
        );
        button.click();
        button.click();
      }),
  };
  const words = [];
  for (let n = 0; n < TIMES; n++) {
    for (const [way, send] of Object.entries(ways)) {
      const word = `${way} ${n}`;
      words.push(word);
      await fillPiece(page, word);
      await send();
      await page.getByText(word).first().waitFor();
      assert.equal((await only(page)).pieces.length, words.length, way);
    }
  }
  assert.deepEqual(
    (await only(page)).pieces.map(({ name }) => name),
    words,
  );
});

test('a double click makes one batch, one copy of a recipe', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/more');
  await page.getByRole('button', { name: 'Try it with sample meat' }).dblclick();
  await page.getByRole('heading', { name: 'Pieces', exact: true }).waitFor();
  assert.equal((await kept(page, 'batch/')).length, 1);
  assert.match(page.url(), /pieces$/, 'the second click has pressed nothing on the next screen');
});

test('Undo takes back its own size class, and leaves what another tab has added since', async (t) => {
  const { tabs } = await twoTabs(t);
  const [one, two] = tabs;
  await fillPiece(one, 'first');
  await one.getByRole('button', { name: 'Add to the batch' }).click();
  await two.getByText('first').first().waitFor();
  await fillPiece(two, 'second');
  await two.getByRole('button', { name: 'Add to the batch' }).click();
  await one.getByText('second').first().waitFor();
  await one.getByRole('button', { name: 'Undo', exact: true }).click();
  await two.getByText('first').first().waitFor({ state: 'detached' });
  assert.deepEqual(
    (await only(one)).pieces.map(({ name }) => name),
    ['second'],
  );
});

test('a class that is being changed stays itself when the one before it is removed in another tab', async (t) => {
  const { tabs } = await twoTabs(t);
  const [one, two] = tabs;
  for (const word of ['first', 'second', 'third']) {
    await fillPiece(one, word);
    await one.getByRole('button', { name: 'Add to the batch' }).click();
    await two.getByText(word).first().waitFor();
  }
  await two.getByRole('button', { name: /^Change .*second/ }).click();
  await two.getByLabel('Weight of all of them').fill('777');
  await one.getByRole('button', { name: /^Change .*first/ }).click();
  await one.getByRole('button', { name: 'Remove it' }).click();
  await two.getByText('first').first().waitFor({ state: 'detached' });
  await two.getByRole('button', { name: 'Save the change' }).click();
  await two.getByText('777').first().waitFor();
  assert.deepEqual(
    (await only(one)).pieces.map(({ name, weight }) => [name, weight]),
    [
      ['second', '777 g'],
      ['third', '400 g'],
    ],
  );
});

test('remarks that are being typed are not replaced by those of another tab, and both are kept', async (t) => {
  const { tabs } = await twoTabs(t);
  for (const page of tabs) await page.getByText('About this batch').click();
  const [one, two] = tabs;
  await two.getByLabel('Notes').pressSequentially('Geese over the flats.');
  await one.getByLabel('Notes').fill('Wind from the north.');
  await one.getByLabel('Notes').blur();
  await one.waitForFunction(() => document.activeElement?.id !== 'about-notes');
  await two.waitForTimeout(300);
  assert.equal(await two.getByLabel('Notes').inputValue(), 'Geese over the flats.');
  await two.getByLabel('Notes').blur();
  await one.waitForFunction(() => document.getElementById('about-notes').value.includes('Geese'));
  assert.deepEqual((await only(one)).notes.split('\n').sort(), ['Geese over the flats.', 'Wind from the north.']);
});

test('what is being typed survives a reload and a kill, and no other tab has it', async (t) => {
  const profile = scratch(t);
  const { address, batch, context, tabs } = await twoTabs(t, 'pieces', { profile });
  const [one, two] = tabs;
  await one.getByLabel('Weight of all of them').fill('1 480,5');
  await one.reload();
  await usable(one);
  assert.equal(await one.getByLabel('Weight of all of them').inputValue(), '1 480,5');
  await two.reload();
  await usable(two);
  assert.equal(await two.getByLabel('Weight of all of them').inputValue(), '');

  await one.getByText('About this batch').click();
  await one.getByLabel('Notes').pressSequentially('Half a sen');
  while (!JSON.stringify(await kept(one, 'meta/draft-')).includes('Half a sen')) await pause(10);
  await cutPower(context, profile);
  const after = await visit(await open(t, { profile }), `${address}#/batch/${batch}/pieces`);
  assert.equal(await after.getByLabel('Weight of all of them').inputValue(), '1 480,5');
  assert.equal(await after.getByLabel('Notes').inputValue(), 'Half a sen');
  await goTo(after, '#/today');
});
