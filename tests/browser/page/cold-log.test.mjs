// The log of the cold: what no fridge reads is asked about, what bears a doubt is not deleted without a word, and the card
// on warmth asks only what the log does not know.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { violations } from '../harness.mjs';
import { begin, goTo, kept, put, settled, texts } from './steps.mjs';
import { states } from './states.mjs';

/** The batch of a state, open at its cure. */
async function shown(t, name, at = '#/batch/cold/cure') {
  const page = await begin(t);
  const [data] = states(Date.now())[name];
  await put(page, [{ key: 'batch/cold', v: 1, at: new Date().toISOString(), data }]);
  await goTo(page, '#/batch/cold/cure');
  if (at !== '#/batch/cold/cure') await goTo(page, at);
  return page;
}

const stored = async (page) => (await kept(page, 'batch/cold'))[0].data;

test('a reading that no fridge has is one question, and nothing goes on before it is answered', async (t) => {
  const page = await shown(t, 'a fridge reading hardly right');
  await page.locator('.doubt', { hasText: 'In doubt: the fridge log says 38' }).waitFor();
  const question = page.locator('.verdict.ask', { hasText: '38 °C or 38 °F or 3.8 °C?' });
  assert.equal(await question.getByRole('button').count(), 3);
  assert.deepEqual(await violations(page), []);
  await question.getByRole('button', { name: 'It was 38 °F' }).click();
  await settled(page);
  assert.equal(await question.count(), 0);
  assert.equal(await page.locator('.doubt').count(), 0);
  assert.deepEqual(
    (await stored(page)).fridge.map(({ reads }) => reads),
    ['3 °C', '38 °F'],
  );
  // Whoever stays with it is believed.
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  await question.getByRole('button', { name: '38 °C is right' }).click();
  await settled(page);
  assert.equal((await stored(page)).fridge[1].sure, true);
  await page.locator('.doubt.stop').waitFor();
});

test('an entry that bears a doubt is deleted after one question, which says what goes with it', async (t) => {
  const page = await shown(t, 'too warm');
  const entries = page.locator('.readings li');
  const [, warm] = await texts(entries);
  assert.match(warm, /9 °C/);
  await entries
    .nth(1)
    .getByRole('button', { name: /^Delete/ })
    .click();
  const asks = page.locator('.readings .asks');
  await asks.getByText('Do not eat: 10 h above 4 °C.').waitFor();
  await asks.getByRole('button', { name: 'Keep it' }).click();
  assert.equal(await asks.count(), 0);
  assert.equal((await stored(page)).fridge.length, 3);
  await entries
    .nth(1)
    .getByRole('button', { name: /^Delete/ })
    .click();
  await asks.getByRole('button', { name: /delete it$/ }).click();
  await settled(page);
  assert.equal((await stored(page)).fridge.length, 2);
  // One that bears nothing goes at once.
  await entries
    .first()
    .getByRole('button', { name: /^Delete/ })
    .click();
  await settled(page);
  assert.equal((await stored(page)).fridge.length, 1);
});

test('what nobody saw is said once, and no tick says that it was kept cold', async (t) => {
  const page = await shown(t, 'nobody saw the cold');
  // Raw meat that long stands first; this is the other of two.
  await page.locator('.doubt summary', { hasText: 'and 1 more' }).click();
  await page.getByText('No fridge reading in 26 days.').first().waitFor();
  const words = await page.locator('main').innerText();
  assert.doesNotMatch(words, /Keep cold in the cure/);
  assert.match(words, /52 of 52 turns are not marked/);
});

test('the card on warmth begins with the log', async (t) => {
  const page = await shown(t, 'warm now', '#/cards/warm');
  await page.getByText(/by its fridge log: .*above 4 °C, since .*, 9 °C at the warmest\./).waitFor();
  await page.getByText('Was it hotter than 32 °C around it?').waitFor();
  assert.equal(await page.getByRole('button', { name: '4 °C or colder' }).count(), 0);
});

test('what the fridge log clears leads to its field, from any stage and from its own', async (t) => {
  const at = (page, part) =>
    page.waitForFunction((part) => {
      const one = document.activeElement;
      const { top, bottom } = one.getBoundingClientRect();
      return one.matches(part) && top >= document.querySelector('.masthead').offsetHeight && bottom <= innerHeight;
    }, part);
  const page = await shown(t, 'warm and not read before');
  await page.locator('.doubt', { hasText: 'Type when it last read cold.' }).waitFor();
  // As often as it is pressed.
  for (let n = 0; n < 2; n += 1) {
    await page.evaluate(() => scrollTo(0, 0));
    await page.getByRole('link', { name: 'Clear it' }).click();
    await at(page, '#fridge-reads');
  }
  for (const way of ['Clear it', 'Clear the doubt']) {
    await goTo(page, '#/batch/cold/fire');
    await page.getByRole('link', { name: way }).click();
    await at(page, '#fridge-reads');
  }
  // What is asked of an entry comes before another.
  const odd = await shown(t, 'a fridge reading hardly right', '#/batch/cold/fire');
  await odd.getByRole('link', { name: 'Clear it' }).click();
  await at(odd, '.verdict.ask button');
});
