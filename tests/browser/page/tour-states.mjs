// Every state of a batch that has words of its own, on the screens that say them.
import { states } from './states.mjs';
import { goTo, put, settled } from './steps.mjs';

/** Whose first open box is asked about. */
const ASKED = ['on for long, and in no fridge yet', 'in the cure'];

/** Where the keys of the fire are pressed. */
const PADS = ['two odd readings', 'hot enough, still in'];

/** A reading that is corrected, one of nothing, one that no fire has, one that is taken; and a size that comes out. */
async function throughPad(page, look) {
  const press = async (one) => {
    await one.evaluate((button) => button.click());
    await settled(page);
  };
  const correct = page.locator('.answer .acts .btn').nth(-2);
  if (await correct.count()) {
    await press(correct);
    await look('a reading is corrected');
    await press(page.locator('.correction .btn'));
  }
  await press(page.locator('#pad .when'));
  await look('when it was read');
  for (const digits of ['', '450', '40']) {
    for (const digit of digits) await press(page.locator('#pad-keys button', { hasText: digit }).first());
    await look(`keys ${digits}`);
    await press(
      page
        .locator('.btn', { hasText: digits || /./ })
        .locator('visible=true')
        .and(page.locator('#pad .btn, .pin .btn'))
        .last(),
    );
    await look(`logged ${digits}`);
    while (await page.locator('#pad output', { hasText: /\d/ }).count()) await press(page.locator('#pad-keys .w'));
  }
  const isOut = page.locator('table .btn').first();
  if (await isOut.count()) await press(isOut);
  await look('one is out');
}

/** All of them lie in the store at once; each is opened by its address. */
export async function throughStates(page, look) {
  const all = Object.entries(states(Date.now()));
  const at = new Date().toISOString();
  await put(
    page,
    all.map(([, [data]], n) => ({ key: `batch/s${n}`, v: 1, at, data })),
  );
  for (const [n, [name, [, screens]]] of all.entries()) {
    for (const screen of screens) {
      if (screen === 'today') continue;
      await goTo(page, `#/batch/s${n}/${screen}`);
      await page.locator('main :is(.leaf, .plate)').first().waitFor();
      await look(`${name}: ${screen}`);
      // What is asked before a tick stands behind its box.
      for (const box of await page.locator('.line:not(.done) [data-tick]:not(:disabled)').all()) {
        if (screen !== 'cure' || !ASKED.includes(name)) break;
        if (await box.isChecked()) continue;
        await box.evaluate((input) => input.click());
        await look(`${name}: ${screen}, asked`);
        break;
      }
      if (PADS.includes(name) && screen === 'fire') await throughPad(page, (what) => look(`${name}: ${what}`));
      if (screen === 'cure' && name === 'too warm') {
        await page
          .locator('.readings .btn')
          .nth(1)
          .evaluate((one) => one.click());
        await look(`${name}: an entry is deleted`);
        await goTo(page, '#/cards/warm');
        await look(`${name}: the card`);
      }
      if (screen !== 'labels') continue;
      for (const label of ['Finished packs', 'Gift tag']) {
        await page.getByLabel(label, { exact: true }).check();
        await look(`${name}: ${label}`);
      }
      if (name === 'boar in cold smoke') {
        await page.locator('input[id$="weights"]').first().fill('71 kg');
        await look(`${name}: a pack too heavy`);
      }
    }
  }
  for (const at of ['#/today', '#/past', '#/away', '#/stock']) {
    await goTo(page, at);
    await look(`all states: ${at}`);
  }
}
