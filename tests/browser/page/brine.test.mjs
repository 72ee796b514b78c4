// Brines, spoons and premixes on a phone: by touch, and by the keyboard alone.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { violations } from '../harness.mjs';
import { KEYBOARD, TOUCH, begin, goTo, kept, settled, texts } from './steps.mjs';

const HANDS = [
  ['the keyboard alone', KEYBOARD],
  ['touch', TOUCH],
];

/** Goes to a field by its label and types, as with a keyboard. */
async function key(page, label, text) {
  const field = page.getByLabel(label);
  for (let n = 0; n < 80; n += 1) {
    if (await field.evaluate((at) => at === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
}

/** Tabs into a row of choices and goes on with the arrow until this one is chosen. */
async function arrow(page, name, word) {
  const inside = () => page.evaluate((of) => document.activeElement.getAttribute('name') === of, name);
  for (let n = 0; n < 80 && !(await inside()); n += 1) await page.keyboard.press('Tab');
  const wanted = page.getByLabel(word, { exact: true });
  for (let n = 0; n < 10 && !(await wanted.isChecked()); n += 1) await page.keyboard.press('ArrowRight');
  assert.ok(await wanted.isChecked(), word);
}

/** What is judged: on the dose's own screen the word, what to do now, and why. */
async function verdict(page) {
  await settled(page);
  const whole = page.locator('.answered');
  if (!(await whole.count())) return (await texts(page.locator('.verdict')))[0];
  return (await texts(whole))[0].replace(/^Verdict /, '');
}

/** Both figures of the trap, and what follows from them. */
async function refused(page) {
  const says = await verdict(page);
  assert.match(says, /^Stop: too much cure/);
  assert.match(says, /The thinnest piece can be as strong as the brine after 4\.7 h, so the whole brine counts/);
  assert.match(says, /With 10 % of brine taken up: 1\d\d to 1\d\d ppm\. Left until even: 12\d\d to 12\d\d ppm/);
  // What it is counted on stands under the reasons.
  const reasons = page.locator('.answered .why');
  if (!(await reasons.evaluate((fold) => fold.open))) await reasons.locator('summary').first().click();
  assert.match((await texts(page.locator('.src')))[0], /counted on trimmed weight and brine together/);
  assert.deepEqual(await violations(page), []);
}

test('by touch: a bucket of strong brine with teal breasts is refused, with both figures', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await page.getByLabel('Strong brine, short').tap();
  await page.getByLabel('Meat, trimmed').fill('1360');
  await page.getByLabel('Which cut').selectOption({ label: 'Teal breast' });
  await page.getByLabel('How much of the brine goes in').fill('10');
  await page.getByLabel('Water in the brine').fill('3785');
  await page.getByLabel('Salt and sugar in the brine').fill('500');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('grams', { exact: true }).tap();
  await page.getByLabel('Cure I put in').fill('113');
  // Without thickness and time the range holds both.
  assert.match(await verdict(page), /^May be too much.*Without them the whole brine counts/);
  await page.getByLabel('Thickest part of the thinnest piece').fill('15');
  await page.getByLabel('How long in the brine').fill('24');
  await refused(page);
  await page.getByLabel('How long in the brine').fill('4');
  // Four hours are enough for more to diffuse in than the pick-up says; half an hour in a thick piece is not.
  assert.match(await verdict(page), /^(Stop|May be too much).*The larger figure counts/);
  await page.getByLabel('Thickest part of the thinnest piece').fill('120');
  await page.getByLabel('How long in the brine').fill('0.5');
  assert.match(await verdict(page), /^In range.*Take all of it out on time/);
});

test('by the keyboard alone: the same bucket', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await arrow(page, 'method', 'Strong brine, short');
  await key(page, 'Meat, trimmed', '1360');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Teal breast');
  await key(page, 'How much of the brine goes in', '10');
  await key(page, 'Thickest part of the thinnest piece', '15');
  await key(page, 'How long in the brine', '24');
  await key(page, 'Water in the brine', '3785');
  await key(page, 'Salt and sugar in the brine', '500');
  await key(page, 'Nitrite printed on the bag', '6.25');
  await key(page, 'Cure I put in', '113');
  await arrow(page, 'measure', 'grams');
  await refused(page);
});

test('a tablespoon for a teaspoon is named, and so is a heap', async (t) => {
  const page = await begin(t, { at: '#/dose' });
  await page.getByLabel('Meat, trimmed').fill('4990');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('tablespoon', { exact: true }).tap();
  await page.getByLabel('Cure I put in').fill('2');
  assert.match(await verdict(page), /Was a tablespoon used where a teaspoon was meant\?/);
  await page.getByLabel('heaped teaspoon').tap();
  await page.getByLabel('Cure I put in').fill('1');
  assert.match(await verdict(page), /1 heaped tsp of cure \(5\.0 to 24\.9 g, usually 9\.9 g\)/);
  await page.getByLabel('whole bag').tap();
  await page.getByLabel('Cure I put in').fill('25');
  assert.match(await verdict(page), /1 bag of 25 g of cure/);
});

test('the bench works out a pot, and a hydrometer comes with its caution', async (t) => {
  const page = await begin(t);
  await page.getByRole('link', { name: 'More', exact: true }).tap();
  await page.getByRole('link', { name: /^Brine/ }).tap();
  await page.getByLabel('A round pot').tap();
  await page.getByLabel('Inside, across').fill('240');
  await page.getByLabel('Depth of the brine').fill('150');
  await page.getByLabel('Meat, trimmed').fill('2220');
  await page.getByLabel('Work out how much').tap();
  assert.match(await verdict(page), /Cannot say yet/);
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('Aim, going in').fill('150');
  assert.match(await verdict(page), /^In range.*with its brine/);
  const told = async () => (await texts(page.locator('.plate')))[0];
  assert.doesNotMatch(await told(), /counts sugar and cure as salt/);
  await page.getByLabel('Strength in').selectOption('salometer');
  await page.getByLabel('How strong').fill('60');
  assert.match(await told(), /15\.84 %.*counts sugar and cure as salt/);
  await page.getByLabel('How strong').fill('160');
  assert.match(await verdict(page), /No salt brine is that strong/);
});

test('the bench holds a belly to its own limits, with a cure that has nitrate too', async (t) => {
  const page = await begin(t, { at: '#/keep' });
  await page.getByLabel('US, inspected plants (reference)').tap();
  await goTo(page, '#/brine');
  await page.getByLabel('I know the water').tap();
  await page.getByLabel('Water', { exact: true }).fill('1200');
  await page.getByLabel('I know how much').tap();
  await page.getByLabel('Meat, trimmed').fill('2000');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('Cure', { exact: true }).fill('6.5');
  assert.match(await verdict(page), /^In range/);
  await page.getByLabel('Which cut').selectOption({ label: 'Wild boar belly' });
  assert.match(await verdict(page), /^Stop: too much cure/);
  await page.getByLabel('Cure', { exact: true }).fill('6.1');
  assert.match(await verdict(page), /^In range/);
  assert.match((await texts(page.locator('.src')))[0], /Belly, immersed: 120 ppm/);
  await page.getByLabel('Which cut').selectOption({ label: 'Wild boar belly, rind on' });
  assert.match(await verdict(page), /^Stop: too much cure/);
  await page.getByLabel('Which cut').selectOption({ label: 'Wild boar belly' });
  await page.getByLabel('Nitrate printed on the bag').fill('4');
  assert.match(await verdict(page), /^Stop: too much cure/);
  assert.match((await texts(page.locator('.plate')))[0], /nitrate/i);
  assert.deepEqual(await violations(page), []);
});

test('a spoon that was weighed is kept, judges the next dose, and can be removed', async (t) => {
  const page = await begin(t, { at: '#/spoons' });
  await page.getByLabel('Weights, in grams').fill('5.1; 5.3; 5.0; 5.4; 5.2; 5.2; 5.1; 5.3; 5.5; 4.9');
  assert.match(await verdict(page), /4\.70 to 5\.70 g, usually 5\.20 g/);
  await page.getByRole('button', { name: 'Save this spoon' }).tap();
  await page.getByText('Saved spoons').waitFor();
  assert.equal((await kept(page, 'settings'))[0].data.spoons.length, 1);
  await page.reload();
  await goTo(page, '#/dose');
  await page.getByLabel('Meat, trimmed').fill('2200');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByLabel('Cure I put in').fill('1');
  assert.match(await verdict(page), /^In range.*4\.7 to 5\.7 g/);
  await goTo(page, '#/spoons');
  await page.getByRole('button', { name: 'Remove the spoon for Cure no. 1' }).tap();
  await page.getByText('Saved spoons').waitFor({ state: 'detached' });
  await goTo(page, '#/dose');
  assert.match(await verdict(page), /^May be too much/);
});

test('a scale that is off is named, and a cure is thinned with its label', async (t) => {
  const page = await begin(t, { at: '#/spoons' });
  await page.getByLabel('What is on it').fill('100 g');
  await page.getByLabel('What the scale shows').fill('100.1');
  assert.match(await verdict(page), /^Fits/);
  await page.getByLabel('What the scale shows').fill('103');
  assert.match(await verdict(page), /^Does not fit/);
  await page.getByLabel('Meat, trimmed').fill('500');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  const plate = (await texts(page.locator('.plate')))[0];
  assert.match(plate, /Weigh 2\.0 g of cure and 18\.0 g of salt/);
  assert.match(plate, /Cure mix: 1 in 10/);
});

test('a mix and a cure water that are saved are the cure of a card, of its link, and of a dose that is checked', async (t) => {
  const page = await begin(t, { at: '#/spoons' });
  await page.getByLabel('Meat, trimmed').fill('1000');
  await page.getByLabel('Nitrite printed on the bag').fill('6.25');
  await page.getByRole('button', { name: 'Save this mix' }).tap();
  await page.getByLabel('Water: cure water').tap();
  await page.getByRole('button', { name: 'Save this cure water' }).tap();
  await page.getByRole('button', { name: 'Remove My cure water, 0.625 % nitrite' }).waitFor();
  const { mixes } = (await kept(page, 'settings'))[0].data;
  assert.deepEqual(
    mixes.map(({ nitrite, made }) => [nitrite, made.parts, made.in_water]),
    [
      ['0.625 %', 10, false],
      ['0.625 %', 10, true],
    ],
  );
  assert.deepEqual(await violations(page), []);

  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  const choice = page.getByLabel('Cure', { exact: true });
  await choice.selectOption('My cure water, 0.625 % nitrite');
  await page.locator('.plate').getByText('Cure water, 0.625 % nitrite').first().waitFor();
  await choice.selectOption('My 1-in-10 mix, 0.625 % nitrite');
  await page.locator('.plate').getByText('Mix, 0.625 % nitrite').first().waitFor();
  assert.match(await verdict(page), /g of mix \(2\.\d+ g of cure\)/);
  assert.equal(await page.getByLabel('Nitrite in it').inputValue(), '0.625');
  assert.deepEqual(await violations(page), []);
  const card = async () => (await kept(page, 'recipe/')).find(({ data }) => data.tag === 'SD').data;
  assert.deepEqual((await card()).cures[0].made, mixes[0].made);
  // The jar is gone; the card keeps what it was.
  await goTo(page, '#/spoons');
  await page.getByRole('button', { name: 'Remove My 1-in-10 mix, 0.625 % nitrite' }).tap();
  await page.getByRole('button', { name: 'Remove My 1-in-10 mix' }).waitFor({ state: 'detached' });
  await goTo(page, '#/dose');
  await page.getByLabel('My cure water, 0.625 % nitrite').tap();
  await page.getByLabel('Meat, trimmed').fill('1000');
  await page.getByLabel('grams', { exact: true }).tap();
  await page.getByLabel('Cure I put in').fill('24');
  assert.match(await verdict(page), /^In range 24 g of cure water: 2\.4 g of cure/);
  assert.deepEqual(await violations(page), []);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  assert.equal(await choice.inputValue(), 'My 1-in-10 mix, 0.625 % nitrite');
  await choice.selectOption('cure-1');
  await page.locator('.plate').getByText('Cure, 6.25 % nitrite').first().waitFor();
  assert.equal('made' in (await card()).cures[0], false);
});

for (const [name, hand] of HANDS) {
  test(`a premix is made on a 1 g scale, weighed and ticked, and the dose stays in range, by ${name}`, async (t) => {
    const page = await begin(t, { at: '#/start' });
    await hand.press(page, page.getByRole('button', { name: /Saltmarsh/ }));
    await page.getByRole('heading', { name: 'Pieces', exact: true }).waitFor();
    const batch = /batch\/([^/]+)/.exec(page.url())[1];
    await hand.select(page, page.getByLabel('What is it'), 'Mallard breast');
    await hand.write(page, page.getByLabel('How many pieces'), '6');
    await hand.write(page, page.getByLabel('Weight of all of them'), '650');
    await hand.press(page, page.getByRole('button', { name: 'Add to the batch' }));
    await page.locator('.total').waitFor();
    // A second Enter right after the first is taken for a slip; a person takes longer to get to the link.
    await page.waitForTimeout(1000);
    await hand.press(page, page.getByRole('link', { name: 'Go to Weigh' }));
    await page.locator('.tally').first().waitFor();
    await hand.press(page, page.getByText('Another scale here?'));
    await hand.choose(page, page.getByLabel('1 g', { exact: true }));
    await hand.press(page, page.getByRole('button', { name: /^Use a 1-in-10 mix/ }));
    await page.getByRole('heading', { name: 'First make the 1-in-10 mix' }).waitFor();
    assert.match((await texts(page.locator('.steps li')))[0], /Weigh 20 g of cure and 180 g of salt of the same grain/);
    assert.deepEqual(await violations(page), []);
    await hand.tick(page, page.locator('[data-tick="cure:0"]'));
    await page.locator('[data-tick="cure:0"]:checked').waitFor();
    assert.match((await texts(page.locator('.dose-line')))[0], /^In range/);
    await hand.press(page, page.getByText('Why / Source'));
    assert.match((await texts(page.locator('.why')))[0], /of mix \(1\.\d+ g of cure\)/);
    assert.deepEqual(await violations(page), []);
    const [{ data }] = await kept(page, `batch/${batch}`);
    assert.equal(data.ticks[0].nitrite, '0.625 %');
  });
}

test('a recipe turned into a pump asks how much goes in, and refuses more than there is', async (t) => {
  const page = await begin(t);
  await goTo(page, '#/recipes');
  await page.getByRole('link', { name: /Saltmarsh/ }).click();
  await page.getByRole('link', { name: 'Change the recipe' }).click();
  await page.getByLabel('Injected', { exact: true }).check();
  const take = page.getByLabel('How much of the brine goes in');
  await take.waitFor();
  assert.equal(await take.inputValue(), '10');
  await page.locator('.src', { hasText: 'counted on what is injected' }).first().waitFor();
  await take.fill('12');
  await take.blur();
  const pumped = page.locator('.verdict', { hasText: /12\s%\sof\strimmed\sweight\sgoes\sin/ });
  await pumped.waitFor();
  assert.match(await verdict(page), /^In range/);
  await take.fill('70');
  await take.blur();
  await page.locator('.errsum').waitFor();
  assert.match((await texts(page.locator('.err')))[0], /1 to 60 % of trimmed weight/);
  const card = (await kept(page, 'recipe/')).find(({ data }) => data.tag === 'SD').data;
  assert.deepEqual([card.method, card.take], ['pumped', '12 %']);
});
