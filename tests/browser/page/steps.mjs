// What a person does on the page, in the words of the page.
import assert from 'node:assert/strict';
import { host, open, phone, usable, visit } from '../harness.mjs';

/** A fresh browser with the page open, as on a phone unless told otherwise. */
export async function begin(t, { at = '', ...options } = {}) {
  const { address } = await host(t);
  const context = await open(t, { ...phone, ...options });
  return visit(context, address + at);
}

/** Waits until all that was done is stored and drawn: what a box shows before may still have to reach the store. */
export async function settled(page) {
  await page.locator('html:not([data-saving])').waitFor({ state: 'attached' });
}

/** Presses the light on until it is the one that is wanted. */
export async function light(page, name) {
  const button = page.getByRole('button', { name: /^Screen light/ });
  for (let n = 0; (await button.innerText()).trim() !== name; n += 1) {
    assert.ok(n < 3, `no light of the name ${name}`);
    await button.click();
  }
}

export async function goTo(page, hash) {
  await settled(page);
  await page.evaluate(
    (to) =>
      new Promise((done) => {
        if (location.hash === to) return done();
        // The page's own listener came first, so the screen is drawn by then.
        addEventListener('hashchange', () => done(), { once: true });
        location.hash = to;
      }),
    hash,
  );
  await page.locator('h1').first().waitFor();
}

/** To one of the four places, by its own word. */
export async function place(page, word) {
  await settled(page);
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: word, exact: true }).click();
  await page.locator(`.places [aria-current]`, { hasText: word }).waitFor();
}

export async function startDemo(page) {
  await goTo(page, '#/more');
  await page.getByRole('button', { name: 'Try it with sample meat' }).click();
  await page.getByRole('heading', { name: 'Pieces', exact: true }).waitFor();
  return /batch\/([^/]+)/.exec(page.url())[1];
}

/** Starts a batch by a recipe of this name; the page asks for the pieces then. */
export async function startBatch(page, recipe) {
  await goTo(page, '#/start');
  await page.getByRole('button', { name: recipe }).click();
  await page.getByRole('heading', { name: 'Pieces', exact: true }).waitFor();
  return /batch\/([^/]+)/.exec(page.url())[1];
}

/** Once a size is there the form for another is shut. */
export async function openPiece(page) {
  if (await page.getByRole('button', { name: 'Add to the batch' }).isVisible()) return;
  await page.locator('summary', { hasText: 'Add a size' }).click();
}

export async function addPieces(page, { cut, count, weight, thickness }) {
  await openPiece(page);
  if (cut) await page.getByLabel('What is it').selectOption({ label: cut });
  if (count) await page.getByLabel('How many pieces').fill(count);
  if (weight) await page.getByLabel('Weight of all of them').fill(weight);
  if (thickness) await page.getByLabel('Thickest part').fill(thickness);
  await page.getByRole('button', { name: 'Add to the batch' }).click();
}

export async function weighOut(page, batch) {
  await goTo(page, `#/batch/${batch}/weigh`);
  await page.locator('.tally').first().waitFor();
}

/** Opens what is folded under the answer. */
export async function openWhy(page) {
  await page.getByText('Why / Source', { exact: true }).click();
}

/** A second tap at one place so soon counts as a slip of the hand: lines move up under it once one is ticked. */
const TWICE_MS = 600;
let tapped = 0;

/** Ticks a line, and waits until it is stored: only then has it its time. */
export async function tick(page, of) {
  const box = page.locator(`[data-tick="${of}"]`);
  // On a busy machine two taps may still come too near each other for the page: then it is tapped again, as by a hand.
  for (let taps = 0; taps < 3 && !(await box.isChecked()); taps += 1) {
    await page.waitForTimeout(Math.max(0, tapped + TWICE_MS - Date.now()));
    await box.click();
    tapped = Date.now();
    const checked = (/** @type {string} */ of) => document.querySelector(`[data-tick="${of}"]`)?.checked;
    await page.waitForFunction(checked, of, { timeout: 1500 }).catch(() => {});
  }
  await page.locator('.line', { has: box }).locator('.stamp').waitFor();
}

/** Says that another amount of cure went in. */
export async function putIn(page, amount, measure) {
  await page
    .getByText(/^(I put in something else|Change what was put in)$/)
    .last()
    .click();
  await page.getByLabel('Cure that went in').fill(amount);
  await page.getByLabel(measure, { exact: true }).check();
  await page.getByRole('button', { name: 'Judge what went in' }).click();
}

/** What was logged over the fire and in the chill. */
export const readingRows = (page) => page.locator('table:has(caption:text("Every reading")) tbody tr');

/** Types a reading of one piece on the pad, and logs it. */
export async function logReading(page, piece, digits) {
  const rows = readingRows(page);
  const before = await rows.count();
  await page.locator('.probe label').filter({ hasText: piece }).tap();
  for (const key of digits) {
    await page
      .locator('#pad-keys')
      .getByRole('button', { name: key === '.' ? 'Decimal point' : key, exact: true })
      .tap();
  }
  await page.getByRole('button', { name: `Log ${digits} °C` }).tap();
  await rows.nth(before).waitFor({ state: 'attached' });
}

export const setting = async (page, name) => {
  await goTo(page, '#/keep');
  await page.getByLabel(name, { exact: true }).check();
  await settled(page);
};

/** Text of all that matches, spaces made plain; waits until something does. */
export async function texts(locator) {
  await settled(locator.page());
  await locator.first().waitFor();
  return (await locator.allInnerTexts()).map((text) => text.replace(/\s+/g, ' ').trim());
}

/** What is kept under keys of this beginning, once all that was done is stored. */
export async function kept(page, prefix) {
  await settled(page);
  return page.evaluate(
    (from) =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target }) => {
          const range = IDBKeyRange.bound(from, from + '\uffff');
          target.result.transaction('records').objectStore('records').getAll(range).onsuccess = (found) => {
            target.result.close();
            done(found.target.result);
          };
        };
      }),
    prefix,
  );
}

/** Puts records into the store under the open page, and opens it anew. */
export async function put(page, records) {
  await settled(page);
  await page.evaluate(
    (records) =>
      new Promise((done) => {
        indexedDB.open('cure-reckoner').onsuccess = ({ target: { result: db } }) => {
          const tx = db.transaction('records', 'readwrite', { durability: 'strict' });
          for (const record of records) tx.objectStore('records').put(record);
          tx.oncomplete = () => (db.close(), done());
        };
      }),
    records,
  );
  await page.reload();
  await usable(page);
}

/** Tabs on until this holds the focus. */
async function tabTo(page, locator) {
  await locator.waitFor();
  for (let n = 0; n < 120; n += 1) {
    if (await locator.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  assert.fail('the keyboard does not get there');
}

/** The same acts by the keyboard alone. A row of choices is entered by its first, or by the one that is chosen. */
export const KEYBOARD = {
  press: async (page, locator) => {
    await tabTo(page, locator);
    await page.keyboard.press('Enter');
  },
  choose: async (page, locator) => {
    const name = await locator.getAttribute('name');
    const inside = () => page.evaluate((of) => document.activeElement.getAttribute('name') === of, name);
    for (let n = 0; n < 120 && !(await inside()); n += 1) await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    // The short way, so that none is chosen on it that redraws the row.
    const off = await locator.evaluate((to) => {
      const row = [...document.querySelectorAll(`[name="${to.name}"]`)];
      return row.indexOf(to) - row.indexOf(document.activeElement);
    });
    for (let n = 0; n < Math.abs(off); n += 1) await page.keyboard.press(off > 0 ? 'ArrowRight' : 'ArrowLeft');
    assert.ok(await locator.isChecked());
  },
  tick: async (page, locator) => {
    await tabTo(page, locator);
    await page.keyboard.press('Space');
  },
  select: async (page, locator, label) => {
    await tabTo(page, locator);
    await page.keyboard.type(label);
  },
  write: async (page, locator, text) => {
    await tabTo(page, locator);
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.insertText(text);
  },
};

/** And by touch. */
export const TOUCH = {
  press: (page, locator) => locator.tap(),
  choose: (page, locator) => locator.tap(),
  tick: (page, locator) => locator.tap(),
  select: (page, locator, label) => locator.selectOption({ label }),
  write: async (page, locator, text) => {
    await locator.tap();
    await locator.fill(text);
  },
};
