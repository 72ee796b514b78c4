// What a browser, another tab and a newer page can do to the records and to the page, as far as it is told on a screen.
import { harm, trapped } from '../faults.mjs';
import { finished } from './finished.mjs';
import { goTo, put, settled, startDemo, weighOut } from './steps.mjs';

/** Changes a batch, so that the page learns what has become of the store. */
async function change(page, batch) {
  await goTo(page, `#/batch/${batch}/pieces`);
  await page.locator('summary', { hasText: 'About this batch' }).click();
  await page.getByLabel('Notes').fill('much');
  await page.getByLabel('Name', { exact: true }).focus();
}

/** `fresh` opens the page in a browser of its own, with what is to be done to it before any script of the page. */
export async function throughFaults(page, look, { fresh }) {
  // Records that no page can read, and one of a newer page.
  const at = new Date().toISOString();
  const good = { key: 'batch/good', v: 1, at, data: finished() };
  await put(page, [
    { ...good, key: 'batch/none', data: 3 },
    { ...good, key: 'batch/form', data: { ...good.data, pieces: 'much' } },
    { ...good, key: 'batch/new', v: 99 },
    { ...good, key: 'recipe/none', data: {} },
    { ...good, key: 'stock/none', data: { item: 'much' } },
    { ...good, key: 'batch/date', at: 'much' },
    { key: 'batch/empty', v: 1, at },
    { key: 'batch/version', at, data: {} },
  ]);
  for (const where of ['#/today', '#/keep', '#/batch/form/pieces']) {
    await goTo(page, where);
    await page.locator('main :is(.leaf, .plate)').first().waitFor();
    await look(`records that cannot be read: ${where}`);
  }
  for (const what of ['delete', 'clear', 'raise']) {
    const other = await fresh();
    const batch = await startDemo(other);
    await other.evaluate(harm, what);
    await change(other, batch);
    await other.locator('.notice.stop').first().waitFor();
    await look(`the records: ${what}`, '', other);
    await goTo(other, '#/keep');
    await look(`the records: ${what}, settings`, '', other);
    await other.getByRole('button', { name: 'Export everything' }).click();
    await other.waitForTimeout(300);
    await look(`the records: ${what}, exported`, '', other);
    await other.context().close();
  }
  // A browser without a store, and one that forbids it.
  for (const [name, before] of [
    ['none', () => Object.defineProperty(globalThis, 'indexedDB', { value: undefined })],
    [
      'forbidden',
      () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('denied', 'SecurityError');
        };
      },
    ],
    [
      'broken',
      () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('broken', 'UnknownError');
        };
      },
    ],
  ]) {
    const other = await fresh((context) => context.addInitScript(before));
    await startDemo(other);
    await look(`store: ${name}`, '', other);
    await other.context().close();
  }
  // The core fails at every question.
  const failing = await fresh((context) => context.addInitScript(trapped));
  const batch = await startDemo(failing);
  await weighOut(failing, batch);
  await failing.evaluate(() => (globalThis.trap = true));
  await failing.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await failing.getByText('No figures').waitFor();
  await look('no figures', '', failing);
  await settled(failing);
  await failing.context().close();
}
