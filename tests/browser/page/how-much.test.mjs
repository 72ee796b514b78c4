// The first screen: from a weight to the grams, by touch, as an American and as a Briton.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { phone, usable, violations } from '../harness.mjs';
import { begin, goTo, kept, light, settled, texts } from './steps.mjs';

const US = { locale: 'en-US', timezoneId: 'America/New_York' };
const GB = { locale: 'en-GB', timezoneId: 'Europe/London' };
const SIZES = [
  [390, 844],
  [390, 664],
  [844, 390],
];

const figures = async (page) => {
  const rows = await texts(page.locator('.ans'));
  return rows.map((row) => row.replace(/\s*looks like.*?(?=[\d.]+ ?g$|$)/, ' '));
};

/** All of it lies in the window as it stands, and nothing else lies over its middle. */
async function inView(page, locator, name) {
  const seen = await locator.evaluate((element) => {
    const { left, top, right, bottom, width, height } = element.getBoundingClientRect();
    const over = document.elementFromPoint(left + width / 2, top + height / 2);
    return {
      inside: left >= 0 && top >= 0 && right <= innerWidth + 0.5 && bottom <= innerHeight + 0.5,
      free: element === over || element.contains(over) || over?.contains(element),
      box: [left, top, right, bottom].map(Math.round).join(),
    };
  });
  assert.ok(seen.inside && seen.free, `${name}: ${JSON.stringify(seen)}`);
}

test('an American types 7 lb and has grams of cure and salt and an hour, with nothing saved', async (t) => {
  const page = await begin(t, US);
  const before = (await kept(page, '')).length;
  await page.getByLabel('Meat, trimmed, pounds').tap();
  await page.keyboard.type('7');
  // 7 lb is 3175.147 g: 150 ppm of it with 6.25 % is 7.620 g, on a 0.1 g scale 7.6 g; 2.2 % salt is 69.853 g, less the
  // 93.75 % salt in 7.6 g, 7.125 g: 62.7 g. Plain arithmetic; the pound is exact by definition (NIST SP 811).
  const [cure, salt, until] = await texts(page.locator('.ans'));
  assert.match(cure, /^Cure .* 7\.6 ?g$/);
  assert.match(salt, /62\.7 ?g$/);
  assert.match(until, /^Leave it in until/);
  assert.doesNotMatch(until, /\d/, 'no hour without a cut');
  // 7.6 g of 6.25 % on 3175 g is 149.6 ppm; 21 CFR 172.175: 200 ppm (published).
  assert.match((await texts(page.locator('.inrange')))[0], /^In range if weighed\. (149|150) ppm, limit 200\.$/);
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  assert.match(
    (await texts(page.locator('.ans')))[2],
    /^Leave it in until \w{3} \d{1,2}:00 [AP]M If the thickest is 1 in: measure it\. \w{3} \d{1,2}, about \d+ h in all at 36–40 °F, then cook to 165 °F(\. Your night is kept free\.)?$/,
  );
  assert.equal(await page.getByRole('textbox', { name: 'Thickest piece' }).inputValue(), '1 in');
  assert.equal((await kept(page, 'batch/')).length, 0, 'nothing is a batch before it is saved');
  assert.equal((await kept(page, 'settings')).length, 0);
  t.diagnostic(`records before ${before}, now ${(await kept(page, '')).length}`);
});

test('a Briton has one box in grams, the British limit and the 24-hour clock', async (t) => {
  const page = await begin(t, GB);
  await page.getByLabel('Meat, trimmed, grams').tap();
  await page.keyboard.type('3200');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  // The rule of 2008 for cured meat: 150 mg a kg (Regulation (EC) No 1333/2008, retained); the aim keeps below it.
  assert.match(
    (await texts(page.locator('.inrange')))[0],
    /^In range if weighed to 0\.1 g\. 1[2-4]\d ppm, limit 150\.$/,
  );
  assert.match(
    (await texts(page.locator('.ans')))[2],
    /^Leave it in until \w{3} \d\d:00 If the thickest is 25 mm: measure it\. \d{1,2} \w{3}, about \d+ h in all at 2–4 °C, then cook to 73\.9 °C(\. Your night is kept free\.)?$/,
  );
  assert.equal(await page.getByRole('textbox', { name: 'Thickest piece' }).inputValue(), '25 mm');
  await goTo(page, '#/keep');
  assert.ok(await page.getByLabel('Metric').isChecked());
  assert.ok(await page.getByLabel(/^United Kingdom/).isChecked());
});

test('the switch at the end of the field weighs the same meat the other way', async (t) => {
  const page = await begin(t, US);
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Meat, trimmed, ounces').fill('3');
  const before = await figures(page);
  await page.getByRole('button', { name: 'g, weigh in grams' }).tap();
  // 7 lb 3 oz: 115 ounces of 28.349523 g.
  assert.equal(await page.getByLabel('Meat, trimmed, grams').inputValue(), '3260');
  assert.deepEqual(await figures(page), before);
  await page.getByRole('button', { name: 'lb, weigh in pounds and ounces' }).tap();
  assert.equal(await page.getByLabel('Meat, trimmed, pounds').inputValue(), '7');
  assert.equal(await page.getByLabel('Meat, trimmed, ounces').inputValue(), '3');
});

test('more ounces than a pound has are carried over in words, and counted so', async (t) => {
  const page = await begin(t, US);
  await page.getByLabel('Meat, trimmed, pounds').fill('8');
  await page.getByLabel('Meat, trimmed, ounces').fill('4');
  const before = await figures(page);
  const told = page.getByText('That is 8 lb 4 oz.', { exact: true });
  assert.equal(await told.count(), 0);
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Meat, trimmed, ounces').fill('20');
  await told.waitFor();
  assert.deepEqual(await figures(page), before);
  const box = page.getByLabel('Meat, trimmed, ounces');
  assert.equal(await box.getAttribute('aria-describedby'), await told.getAttribute('id'));
  await box.fill('15.9');
  assert.equal(await page.getByText(/^That is/).count(), 0);
});

test('a thicker piece stays in longer, and its steps are those of the rule', async (t) => {
  const page = await begin(t, US);
  // An hour of its own: what would end in the night ends later, and from three days on it is told in days.
  await page.clock.setFixedTime(new Date('2026-11-14T12:00'));
  await page.reload();
  await usable(page);
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  const hours = async () => {
    const [, much, unit] = /about (\d+) (h|days)/i.exec((await texts(page.locator('.ans')))[2]);
    return much * { h: 1, days: 24 }[unit];
  };
  const usual = await hours();
  await page.getByRole('button', { name: 'Thicker' }).tap();
  assert.equal(await page.getByRole('textbox', { name: 'Thickest piece' }).inputValue(), '1⅛ in');
  assert.ok((await hours()) > usual);
});

test('a thickness counts as it is typed, and while it cannot be read there is no hour', async (t) => {
  const page = await begin(t, GB);
  await page.getByLabel('Meat, trimmed, grams').fill('3200');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  const hour = async () => (await texts(page.locator('.ans')))[2];
  const usual = await hour();
  const thick = page.getByRole('textbox', { name: 'Thickest piece' });
  await thick.fill('50');
  assert.notEqual(await hour(), usual, 'before the field is left');
  assert.match(await hour(), /about \d+ days in all/i);
  await thick.fill('thick');
  assert.match(await hour(), /^Leave it in until not known yet/);
  await thick.fill('50 mm');
  await thick.press('Enter');
  assert.match(await hour(), /about \d+ days in all/i);
  await thick.fill('25');
  // The same hour, and no word any more that nobody has measured.
  assert.equal(await hour(), usual.replace('If the thickest is 25 mm: measure it. ', ''));
});

test('what is typed is there again after a reload, and saving makes the batch with the same figures', async (t) => {
  const page = await begin(t, US);
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  const before = await figures(page);
  await page.reload();
  await usable(page);
  assert.equal(await page.getByLabel('Meat, trimmed, pounds').inputValue(), '7');
  assert.deepEqual(await figures(page), before);
  await page.getByRole('button', { name: 'Save as a batch' }).tap();
  await page.waitForURL(/#\/batch\/.*\/weigh$/);
  const [{ data }] = await kept(page, 'batch/');
  assert.equal(data.pieces[0].weight, '7 lb');
  assert.equal(data.recipe.cures[0].nitrite, '6.25 %');
  await page.getByText('7.6', { exact: false }).first().waitFor();
  await page.getByText('62.7', { exact: false }).first().waitFor();
  // Undo puts what was typed back, figures and all, and leaves nobody on an empty page.
  await page.getByRole('button', { name: 'Undo' }).tap();
  await page.waitForURL(/#\/how-much$/);
  assert.deepEqual(await figures(page), before);
  assert.equal((await kept(page, 'batch/')).length, 0);
});

test('a weight that cannot be read says what to type, beside its field', async (t) => {
  const page = await begin(t, US);
  await page.getByLabel('Meat, trimmed, pounds').fill('much');
  await page.getByLabel('Meat, trimmed, pounds').blur();
  await page.locator('.field.bad .err').waitFor();
  assert.equal(await page.getByRole('button', { name: 'Save as a batch' }).count(), 0);
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.getByLabel('Cure bag says').fill('62.5');
  await page.getByLabel('Cure bag says').blur();
  await page.locator('.field.bad .err').waitFor();
  assert.equal(await page.locator('.inrange').count(), 0);
  assert.deepEqual(await violations(page), []);
});

test('on a coarse scale the filled button is the mix, and the mix is weighed in range', async (t) => {
  const page = await begin(t, US);
  await goTo(page, '#/keep');
  await page.getByLabel('1 g', { exact: true }).click();
  await page.getByLabel('1 g', { exact: true }).and(page.locator(':checked')).waitFor();
  await settled(page);
  await goTo(page, '#/how-much');
  await page.getByLabel('Meat, trimmed, pounds').fill('1');
  await page.getByLabel('Meat, trimmed, ounces').fill('8');
  await page.locator('.verdict.care').waitFor();
  assert.equal(await page.locator('.inrange').count(), 0);
  await page.getByRole('button', { name: 'Use a 1-in-10 mix' }).tap();
  await page.locator('.inrange').waitFor();
  await page.getByRole('button', { name: 'Save as a batch' }).waitFor();
  // Nobody weighs the figure of the mix as cure: with it stands how it is made, before anything is saved.
  await page.getByRole('heading', { name: 'First make the 1-in-10 mix' }).waitFor();
  await page.getByText('Label it: 1-in-10 cure mix').waitFor();
});

for (const [name, place] of [
  ['US', US],
  ['GB', GB],
]) {
  for (const [width, height] of SIZES) {
    test(`figures and action are in view at ${width} x ${height}, ${name}`, async (t) => {
      const page = await begin(t, { ...place, viewport: { width, height } });
      await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
      await page.getByLabel(/^Meat, trimmed, (pounds|grams)/).fill(name === 'US' ? '7' : '3200');
      await page.getByRole('button', { name: 'Save as a batch' }).waitFor();
      await page.evaluate(() => (document.activeElement.blur(), scrollTo(0, 0)));
      await inView(page, page.locator('.ans .window').first(), 'cure');
      await inView(page, page.getByRole('button', { name: 'Save as a batch' }), 'action');
      if (height > 700 || width > height) {
        await inView(page, page.locator('.ans .until'), 'hour');
        await inView(page, page.locator('.ans .window').nth(1), 'salt');
      }
      assert.ok((await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)) <= 0);
    });
  }
}

for (const look of ['Day', 'Dark', 'Red']) {
  test(`axe finds nothing on the first screen in ${look.toLowerCase()}`, async (t) => {
    const page = await begin(t, US);
    await light(page, look);
    assert.deepEqual(await violations(page), [], 'empty');
    await page.getByLabel('Meat, trimmed, pounds').fill('7');
    await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
    assert.deepEqual(await violations(page), [], 'answered');
    await page.getByText('Why / Source').tap();
    assert.deepEqual(await violations(page), [], 'Why');
  });
}

test('a thickness is typed as well as stepped, and one that may be in cm is asked about', async (t) => {
  const page = await begin(t, GB);
  await page.getByLabel('Meat, trimmed, grams').fill('3200');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Wild boar belly' });
  const thick = page.getByRole('textbox', { name: 'Thickest piece' });
  const type = async (text) => {
    await thick.fill(text);
    await thick.press('Tab');
  };
  await type('45');
  assert.equal(await thick.inputValue(), '45 mm');
  await type('4.5');
  await page.getByText('as thin as a strip').waitFor();
  await type('4.5 cm');
  assert.equal(await thick.inputValue(), '45 mm');
  assert.equal(await page.getByText('as thin as a strip').count(), 0);
  await type('thick');
  await page.locator('#f-thick-err').waitFor();
  assert.equal(await thick.inputValue(), 'thick', 'what was typed stands beside what is wrong with it');
  assert.match((await texts(page.locator('.ans')))[2], /not known yet/, 'no hour by what cannot be read');
  // What is drawn meanwhile takes nothing away that is being typed.
  await thick.fill('38');
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  assert.equal(await thick.inputValue(), '38');
  await thick.fill('thick');
  await thick.press('Tab');
  await page.locator('#f-thick-err').waitFor();
  assert.equal(await thick.getAttribute('aria-invalid'), 'true');
});

test('so little meat that kilograms were meant is asked about, and taken as kilograms with one touch', async (t) => {
  const page = await begin(t, GB);
  const meat = page.getByLabel('Meat, trimmed, grams');
  await meat.fill('1.8');
  await page.getByRole('button', { name: 'It is 1.8 lb' }).waitFor();
  assert.equal(await page.locator('.inrange').count(), 0, 'what is asked about is not assured');
  await page.getByRole('button', { name: 'It is 1.8 kg' }).tap();
  assert.equal(await meat.inputValue(), '1.8 kg');
  assert.equal(await page.getByText('Check the weight.').count(), 0);
  await meat.fill('700 lb');
  await page.getByText('Check the weight.').waitFor();
  // Who typed 7 and then turned to pounds meant 7 of them.
  await meat.fill('7');
  await page.getByText('Check the weight.').waitFor();
  await page.getByRole('button', { name: /pounds/i }).tap();
  assert.equal(await page.getByLabel('Meat, trimmed, pounds').inputValue(), '7');
  assert.equal(await page.getByText('Check the weight.').count(), 0);
});

test('a dose that may be too much has no hour beside it', async (t) => {
  const page = await begin(t, GB);
  await page.getByLabel('Meat, trimmed, grams').tap();
  await page.keyboard.type('1480');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  const until = page.locator('.ans.time');
  assert.match(await until.innerText(), /\d\d:00/);
  // A tenth of a gram more or less is half of the dose.
  await page.getByLabel('Meat, trimmed, grams').fill('10');
  await settled(page);
  assert.doesNotMatch(await until.innerText(), /\d/);
});

test('a bag that says a tenth of the usual blesses nothing until it is read once more', async (t) => {
  const page = await begin(t);
  await page.locator('#f-weight').fill('3175');
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  await page.getByLabel('Cure bag says').fill('0.625');
  await page.getByText('Read the bag once more.').waitFor();
  const blessed = async () => [
    await page.locator('.inrange').count(),
    await page.getByRole('button', { name: 'Save as a batch' }).count(),
  ];
  assert.deepEqual(await blessed(), [0, 0]);
  assert.doesNotMatch((await figures(page)).join(' '), /\d/, 'no grams that would be ten times the dose');
  assert.doesNotMatch(await page.locator('.masthead').innerText(), /false|g\b/);
  await page.getByRole('button', { name: 'It says 0.625 %' }).click();
  await page.locator('.inrange').waitFor();
  assert.deepEqual(await blessed(), [1, 1]);
  await page.getByLabel('Cure bag says').fill('0.0625');
  await page.getByText('Read the bag once more.').waitFor();
  assert.deepEqual(await blessed(), [0, 0]);
  await page.getByRole('button', { name: 'It says 6.25 %' }).click();
  await page.locator('.inrange').waitFor();
});

test('the hour comes with one answer: by what is usual of the cut, which stands beside it, or by one touch', async (t) => {
  const page = await begin(t, US);
  await page.getByLabel('Meat, trimmed, pounds').tap();
  await page.keyboard.type('7');
  const hour = async () => (await texts(page.locator('.ans')))[2];
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Mallard breast' });
  assert.match(await hour(), /If the thickest is 1 in: measure it\./);
  // What is measured holds, and nothing is said beside it any more.
  await page.getByRole('textbox', { name: 'Thickest piece' }).fill('1');
  assert.doesNotMatch(await hour(), /If the thickest/);
  assert.match(await hour(), /about \d+ h in all/);
  // Of what is in no row nothing is usual: no hour before somebody has said how thick it is.
  await page.getByLabel('Cut', { exact: true }).selectOption({ label: 'Something else' });
  assert.match(await hour(), /^Leave it in until not known yet/);
  await page.getByRole('button', { name: 'Up to 2 in' }).tap();
  assert.match(await hour(), /About \d+ days in all/);
  assert.equal(await page.getByRole('textbox', { name: 'Thickest piece' }).inputValue(), '2 in');
});

for (const [place, locale, weak] of [
  ['America', 'en-US', false],
  ['Britain', 'en-GB', false],
  ['Germany', 'en-DE', true],
]) {
  test(`a bag of 0.6 % is ${weak ? 'taken as it is' : 'asked about'} in ${place}`, async (t) => {
    const page = await begin(t, { locale });
    await page.locator('#f-weight').fill(locale === 'en-US' ? '7' : '3175');
    const bag = page.getByLabel('Cure bag says');
    for (const [says, asks] of [
      ['0.6', !weak],
      ['0,6', !weak],
      ['0.625', true],
      ['0.3', true],
      ['6.25', false],
    ]) {
      await bag.fill(says);
      const asked = page.getByText('Read the bag once more.');
      await (asks ? asked : page.locator('.inrange')).waitFor();
      assert.deepEqual([await asked.count(), await page.locator('.inrange').count()], asks ? [1, 0] : [0, 1], says);
    }
    await bag.fill('0.6');
    if (weak) return;
    await page.getByRole('button', { name: 'It says 0.6 %' }).click();
    await page.locator('.inrange').waitFor();
  });
}

test('so little cure says which scale it takes for granted, and one touch changes it', async (t) => {
  const page = await begin(t, US);
  const asked = page.getByRole('group', { name: 'Scale shows steps of' });
  await page.getByLabel('Meat, trimmed, pounds').fill('7');
  await page.locator('.inrange').waitFor();
  assert.equal(await asked.count(), 0, 'for so much it does not matter');
  await page.getByLabel('Meat, trimmed, pounds').fill('1');
  await asked.waitFor();
  assert.match((await texts(page.locator('.inrange')))[0], /^In range if weighed to 0\.1 g\./);
  assert.ok(await asked.getByLabel('0.1 g', { exact: true }).isChecked());
  await asked.getByLabel('1 g', { exact: true }).click();
  await page.getByRole('button', { name: 'Use a 1-in-10 mix' }).waitFor();
  assert.equal(await page.locator('.inrange').count(), 0);
});

test('on a short phone the cut is chosen, and cure, salt and hour stand above what is pinned', async (t) => {
  const page = await begin(t, { ...phone, viewport: { width: 390, height: 664 } });
  await page.locator('#main input').first().fill('2400');
  await page.locator('#main select').first().selectOption({ label: 'Fallow haunch' });
  const pin = page.locator('.pin');
  await pin.waitFor();
  const until = page.locator('.ans .until');
  await until.waitFor();
  await settled(page);
  const [figure, bar] = [await until.boundingBox(), await pin.boundingBox()];
  assert.ok(figure.y + figure.height <= bar.y, `${figure.y + figure.height} under ${bar.y}`);
});
