// A recipe that somebody wrote is read, settled, kept, scaled and handed on, on a phone's width.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { visit, violations } from '../harness.mjs';
import { KEYBOARD, TOUCH, begin, goTo, kept, put, settled, texts } from './steps.mjs';

const PROSE =
  'For 10 lb of boar belly mix 4 oz salt, 2 tbsp of brown sugar, two level teaspoons of pink salt and a heaping ' +
  'tablespoon of cracked pepper. Rub it in well, leave 7 days in the refrigerator and turn every day.';

const HANDS = [
  ['the keyboard alone', KEYBOARD],
  ['touch', TOUCH],
];

for (const [name, hand] of HANDS) {
  test(`prose with two ambiguities: settled, kept, scaled to 2.3 kg and handed on, by ${name}`, async (t) => {
    const page = await begin(t);
    await hand.press(page, page.getByRole('link', { name: 'Paste a recipe' }));
    await page.getByRole('heading', { name: 'Paste a recipe' }).waitFor();
    await hand.write(page, page.getByLabel('The recipe, in lines or in prose'), PROSE);

    const lines = await texts(page.locator('.lines-read > li'));
    assert.equal(lines.length, 5, 'four things and the steps');
    assert.match(lines[0], /4 oz salt.*Table salt 113.4 g/);
    assert.match(lines[2], /Not settled: Cure no. 1/);
    assert.match(lines[4], /In the recipe: Keep cold in the cure/);
    await page.getByText('2 things to settle first').waitFor();
    assert.equal(await page.getByRole('button', { name: 'Save as a recipe' }).count(), 0);

    await hand.choose(page, page.getByLabel('Packed', { exact: true }));
    await page.getByText('One thing to settle first').waitFor();
    await hand.choose(page, page.getByLabel(/^Cure no. 1,/));
    // By the spoons it may be too much, and in the grams that are kept it is in range: one strip tells both.
    assert.match(
      (await texts(page.locator('.verdict')))[0],
      /^Weigh the cure In range as the recipe has it in grams: 1\d\d to 1\d\d ppm\. By the spoon it may be \d+ to \d+ ppm, limit 200\.$/,
    );
    assert.equal(await page.getByText('Do not weigh this out').count(), 0);
    assert.deepEqual(await violations(page), []);

    await hand.write(page, page.getByLabel('What it is called'), 'Boar belly from a friend');
    await hand.press(page, page.getByRole('button', { name: 'Save as a recipe' }));
    await page.getByRole('heading', { name: 'Boar belly from a friend' }).waitFor();
    const [card] = (await kept(page, 'recipe/')).map(({ data }) => data).filter(({ name }) => /friend/.test(name));
    assert.match(card.tag, /^B[A-Z]$/);
    assert.deepEqual(
      card.steps.map(({ do: act, lasts, turn_every: every }) => [act, lasts, every]),
      [['cure', '7 d', '1 d']],
    );

    await hand.write(page, page.getByLabel('For how much meat'), '2.3 kg');
    // 11.34 g of cure on 4535.9 g is 5.75 g on 2300 g; the 0.1 g scale takes it down to 5.7 g.
    await page.getByRole('cell', { name: '5.7 g', exact: true }).waitFor();
    assert.deepEqual(await violations(page), []);

    // The link as it is handed on, opened in another tab: the whole recipe with its verdict, reckoned there.
    const link = (await page.locator('#link-text').innerText()).trim();
    assert.match(link, /^http.*#r1\./);
    const other = await visit(page.context(), link);
    await other.getByRole('heading', { name: 'Boar belly from a friend' }).waitFor();
    assert.match((await texts(other.locator('.verdict')))[0], /^In range/);
    // For 1 kg: 2.5 g of 6.25 %, half a step of 0.1 g either way, is 153.1 to 159.4 ppm, shown outward.
    assert.match((await texts(other.locator('.plate')))[0], /153 to 160\s*ppm/);
    assert.deepEqual(await violations(other), []);
  });
}

test('a recipe whose spoons come to too much is kept with an aim that does; as it is, it is held, with the way out', async (t) => {
  const page = await begin(t);
  const paste = async () => {
    await goTo(page, '#/read');
    await page
      .getByLabel('The recipe, in lines or in prose')
      .fill('Rub for 10 lb of breasts\n1/2 cup fine sea salt\n17 g cure no. 1\n1 cup brown sugar');
    await page
      .getByRole('button', { name: 'Packed', exact: true })
      .or(page.getByLabel('Packed', { exact: true }))
      .check();
  };
  await paste();
  // 17 g of 6.25 % on 4536 g is 234 ppm.
  // One dose is told, once: that of what would be kept; the text's own lies under Why.
  await page.getByRole('button', { name: 'Save it with the cure at 150 ppm' }).waitFor();
  const ppm = (await texts(page.locator('main')))[0].match(/\d+ (?:to \d+ )?ppm/g);
  assert.deepEqual([...new Set(ppm)], ['232 to 234 ppm', '150 ppm']);
  assert.deepEqual(await violations(page), []);
  await page.getByRole('button', { name: 'Save it with the cure at 150 ppm' }).click();
  await page.locator('#link-text').waitFor();
  assert.match((await texts(page.locator('.plate .verdict')))[0], /^In range/);
  // It came without steps: those of another card are a touch away.
  await page.getByText('No steps in this recipe').waitFor();
  await page.getByRole('button', { name: 'As for Saltmarsh duck breasts' }).click();
  await page.getByText('No steps in this recipe').waitFor({ state: 'detached' });
  await page.getByText('Rinse off the cure').waitFor();

  await paste();
  await page.getByRole('button', { name: /^Save it as it is: as a batch of 4536\s*g it is held$/ }).click();
  await page.locator('#link-text').waitFor();
  assert.match((await texts(page.locator('.verdict')))[0], /^Stop: too much cure.*Nothing of it is on the meat yet/);
  await page.getByRole('button', { name: 'Set the recipe to 150 ppm' }).waitFor();
  await page.getByRole('button', { name: 'Start a batch of it' }).click();
  // The weight of the text is that of the batch.
  await page.locator('.verdict.stop').waitFor();
  assert.equal(await page.getByRole('button', { name: 'I threw it away' }).count(), 0, 'nothing is on the meat');
  await page.getByRole('button', { name: 'Weigh for 150 ppm in this batch' }).click();
  // 10 lb at 150 ppm is 10.886 g of 6.25 %; the 0.1 g scale takes it down to 10.8 g.
  await page.getByRole('button', { name: '10.8 g is in the bowl' }).waitFor();
  assert.match((await texts(page.locator('.dose-line')))[0], /^In range/);
});

test('another text is not settled by the answers to the first', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/read');
  const box = page.getByLabel('The recipe, in lines or in prose');
  await box.fill('Rub for 5 lb meat\n1 tsp pink salt');
  await page.getByLabel(/^Cure no. 1,/).check();
  await page.getByRole('button', { name: 'Save as a recipe' }).waitFor();
  await box.fill('Rub for 5 lb meat\n1 tbsp pink salt');
  await page.getByText('One thing to settle first').waitFor();
  await box.fill('Rub for 5 lb meat\nno salt at all\n1 tsp cure no. 1');
  const lines = await texts(page.locator('.lines-read > li'));
  assert.match(lines[1], /no salt at all A remark: kept as a note/);
});

test('something of my own is read by my own spoon', async (t) => {
  const page = await begin(t, { at: '#/spoons' });
  await page.getByLabel('What is in the spoon').selectOption({ label: 'Something of my own' });
  await page.getByLabel('What it is called').fill('Marsh seed mix');
  await page.getByLabel(/^The weights|^Weights/).fill('2; 2.2; 2.4');
  await page.getByRole('button', { name: /Save/ }).first().click();
  await page.getByText('Your spoon is saved.').first().waitFor();
  await goTo(page, '#/read');
  await page.getByLabel('The recipe, in lines or in prose').fill('Rub for 1 kg of meat\n2 tsp marsh seed mix');
  const lines = await texts(page.locator('.lines-read > li'));
  // A quarter of the distance beyond each end, and half a step of the 0.1 g scale: 1.85 to 2.55 g, twice.
  assert.match(lines[1], /3.7 to 5.1 g Usually 4.4 g/);
});

test('who does not know which salt, sugar or pepper it was says so, and the grams stay a range', async (t) => {
  const page = await begin(t, { at: '#/read' });
  await page
    .getByLabel('The recipe, in lines or in prose')
    .fill('Rub for 5 lb meat\n5 g cure no. 1, 6.25 %\n1/4 cup kosher salt\n2 tbsp brown sugar\n1 tbsp pepper');
  await page.getByText(/^3 things to settle first/).waitFor();
  for (let left = 3; left > 0; left -= 1) {
    const open = page.getByRole('group').filter({ hasNot: page.locator('input:checked') });
    await open.filter({ hasText: 'Not sure' }).first().getByLabel('Not sure').check();
  }
  await page.getByRole('button', { name: 'Save as a recipe' }).waitFor();
  const lines = await texts(page.locator('.lines-read > li'));
  for (const line of lines.slice(2)) assert.match(line, / to [\d.]+ g Usually [\d.]+ g\./);
  // Whether pink salt is a cure nobody may pass over.
  await page.getByLabel('The recipe, in lines or in prose').fill('Rub for 5 lb meat\n1 tsp pink salt');
  await page.getByText('Which pink salt?').waitFor();
  assert.equal(await page.getByLabel('Not sure').count(), 0);
});

test('a recipe out of a message is kept and sent in six taps, two questions among them', async (t) => {
  const page = await begin(t, { permissions: ['clipboard-read', 'clipboard-write'] });
  const message =
    'For 3 lb mallard breasts: 1 tbsp brown sugar, 30 g sea salt, 3 g cure #1. Fridge 2 days, then smoke to 165';
  await page.evaluate((text) => navigator.clipboard.writeText(text), message);
  let taps = 0;
  const tap = async (what) => {
    taps += 1;
    await what.tap();
  };
  await tap(page.getByRole('link', { name: 'Paste a recipe' }));
  await tap(page.getByRole('button', { name: 'Paste', exact: true }));
  await page.locator('.lines-read').waitFor();
  for (const answer of ['Rub', 'Packed']) await tap(page.getByLabel(answer, { exact: true }));
  await tap(page.getByRole('button', { name: 'Save as a recipe' }));
  await tap(page.getByRole('button', { name: 'Copy the link' }).first());
  await page.getByRole('button', { name: 'Copied. Copy again' }).first().waitFor();
  assert.match(await page.evaluate(() => navigator.clipboard.readText()), /^http.*#r1\./);
  assert.equal(taps, 6);
});

test('a question names the lines that it settles, that of a unit too', async (t) => {
  const page = await begin(t, { locale: 'en-US', timezoneId: 'America/New_York' });
  await goTo(page, '#/read');
  await page
    .getByLabel('The recipe, in lines or in prose')
    .fill('4 lb duck breasts\n1/4 cup coarse sea salt\n2 T brown sugar\n1 t pink salt no 1\n1 t cure no 2\nT pepper');
  // The unit of the cure is asked about, and of nothing else: it must not be taken for that of the pepper.
  const asked = page.locator('fieldset', { hasText: 'Which measure is meant?' });
  assert.match(await asked.innerText(), /“1 t pink salt no 1”, “1 t cure no 2”/);
  assert.doesNotMatch(await asked.innerText(), /pepper|sugar/);
});

test('where the clipboard is not to be read, the field waits for what is pasted', async (t) => {
  const page = await begin(t);
  await page.getByRole('link', { name: 'Paste a recipe' }).tap();
  await page.getByRole('button', { name: 'Paste', exact: true }).tap();
  await page.waitForFunction(() => document.activeElement?.id === 'f-text');
  await page.getByLabel('The recipe, in lines or in prose').fill('30 g salt to 1 kg venison');
  assert.equal(await page.getByRole('button', { name: 'Paste', exact: true }).count(), 0);
});

test('heat that is too low for its meat is raised in the kept step, and the recipe says so', async (t) => {
  const page = await begin(t, { at: '#/read' });
  await page
    .getByLabel('The recipe, in lines or in prose')
    .fill(
      'For 2 kg mallard breasts: 40 g salt, 4 g cure no. 1. Rub it on. Fridge 2 days. Smoke at 95 °C until 68 °C inside.',
    );
  await page.getByText('68 °C is under 73.9 °C for this meat').waitFor();
  await page.getByRole('button', { name: 'Save as a recipe' }).click();
  await page.getByText('The text said 68 °C: this meat needs 73.9 °C, and the step says so.').waitFor();
  const [card] = (await kept(page, 'recipe/'))
    .map(({ data }) => data)
    .filter(({ notes }) => /The text said/.test(notes));
  assert.equal(card.steps.find(({ do: act }) => act === 'smoke').until, '165 °F');
});

test('a text without a title is called by its meat, and the name can be typed over', async (t) => {
  const page = await begin(t, { at: '#/read' });
  const name = page.getByLabel('What it is called');
  for (const [text, called] of [
    ['For 3 lb duck breasts: 30 g sea salt, 3 g cure #1. Rub it on. Fridge 2 days.', 'Duck breasts, from a message'],
    ['For 5 lb of meat: 5 g cure no. 1, 6.25 %, 50 g sea salt. Rub it on. Fridge 2 days.', 'Recipe as read'],
    ["Pete's ham\n\nRub for 5 lb wild boar\n5 g cure no. 1, 6.25 %\n50 g sea salt", "Pete's ham"],
  ]) {
    await page.getByLabel('The recipe, in lines or in prose').fill(text);
    await page.waitForFunction((is) => document.getElementById('f-name')?.value === is, called);
  }
  await page
    .getByLabel('The recipe, in lines or in prose')
    .fill('For 3 lb duck breasts: 30 g sea salt, 3 g cure #1. Rub it on. Fridge 2 days.');
  await name.fill('Duck as Ann has it');
  await page.getByRole('button', { name: 'Save as a recipe' }).click();
  await page.getByRole('heading', { name: 'Duck as Ann has it' }).waitFor();
});

test('where the strength of a cure is not known, one touch marks its line in the text', async (t) => {
  const page = await begin(t, { at: '#/read' });
  await page.getByLabel('The recipe, in lines or in prose').fill('Rub for 5 lb meat\n50 g sea salt\n5 g celery powder');
  await page.getByLabel('What % nitrite does the bag of “5 g celery powder” say?').fill('0');
  await page.getByRole('button', { name: 'Go to this line' }).click();
  const marked = () => {
    const { value, selectionStart: from, selectionEnd: to } = document.activeElement;
    return value.slice(from, to);
  };
  assert.equal(await page.evaluate(marked), '5 g celery powder');
});

const HELD = {
  name: 'Haunch from a friend',
  tag: 'HF',
  method: 'rub',
  eaten: 'cooked',
  cures: [{ item: 'cure-1', nitrite: '6.25 %', nitrate: '0 %', aim: '150 ppm' }],
  lines: [
    { item: 'salt-sea-fine', share: { of: 'green_weight', amount: '2 %' } },
    { item: 'own', name: 'Ham mix', agent: 'yes', share: { of: 'green_weight', amount: '1 %' } },
  ],
  steps: [{ do: 'cure', lasts: '7 d' }],
  unread: ['a pinch of pink salt as well', 'a pinch of love'],
};

test('what holds a recipe is mended from where it is told: a line that was not read, and one that holds nitrite', async (t) => {
  const page = await begin(t);
  await put(page, [{ key: 'recipe/held', v: 1, at: '2026-11-01T08:00:00.000Z', data: HELD }]);
  await goTo(page, '#/recipe/held');
  const about = (name) => page.getByRole('group', { name, exact: true });
  // A text that names a cure is not called free of it by a touch: it goes to the cures, or it is left out.
  assert.equal(await about(HELD.unread[0]).getByRole('button', { name: /No/ }).count(), 0);
  await about(HELD.unread[0]).getByRole('button', { name: 'Put it under Cure' }).click();
  await page.waitForFunction(() => document.activeElement?.closest('.cures'));
  await page.getByRole('link', { name: 'Done' }).click();
  await about(HELD.unread[0]).getByRole('button', { name: 'Leave it out' }).click();
  await about(HELD.unread[1]).getByRole('button', { name: 'No cure in this line' }).click();
  await about(HELD.unread[1]).waitFor({ state: 'detached' });
  await about('Ham mix').getByRole('button', { name: 'Go to this line' }).click();
  await page.waitForFunction(() => /Ham mix/.test(document.activeElement?.closest('.line-group')?.textContent ?? ''));
  await page.getByRole('link', { name: 'Done' }).click();
  await about('Ham mix').getByRole('button', { name: 'Leave it out' }).click();
  assert.match((await texts(page.locator('.plate .verdict')))[0], /^In range/);
});

test('a recipe and a dose that are too fine for the scale lead to the mix', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/keep');
  await page.getByLabel('1 g', { exact: true }).click();
  await settled(page);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByLabel('For how much meat').fill('700 g');
  await page.getByRole('button', { name: 'Start a batch with a 1-in-10 mix' }).click();
  await page.getByText('First make the 1-in-10 mix').waitFor();
  assert.equal((await kept(page, 'batch/'))[0].data.premix, true);
  await goTo(page, '#/dose');
  await page.getByLabel('Meat, trimmed').fill('700');
  await page.getByLabel('grams').check();
  await page.getByLabel('Cure I put in').fill('1');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByRole('link', { name: /a 1-in-10 mix/ }).click();
  await page.getByRole('heading', { name: 'Spoons, scale, 1-in-10 mix' }).waitFor();
});

test('a recipe whose cure was read off a spoon says so on its card', async (t) => {
  const page = await begin(t, { at: '#/read' });
  await page
    .getByLabel('The recipe, in lines or in prose')
    .fill('Rub for 4 lb duck breasts\n60 g salt\n1 tsp cure no. 1');
  await page.getByRole('button', { name: /^Save/ }).first().click();
  await page.getByText('Cure in grams guessed from a spoon, “1 tsp cure no. 1”. Weigh it').first().waitFor();
  const [{ data }] = (await kept(page, 'recipe/')).filter(({ data }) => data.notes?.includes('a spoon'));
  assert.ok(data.cures.length === 1);
});
